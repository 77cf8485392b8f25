// @vitest-environment jsdom
import { act } from "react";
import { createRoot } from "react-dom/client";
import { afterEach, describe, expect, it, vi } from "vitest";
import { HostError, type HostState, type WorkbookHost } from "../host/workbookHost";
import { HostLine } from "./HostLine";

(globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = true;
let root: ReturnType<typeof createRoot> | null = null;
afterEach(() => act(() => root?.unmount()));

/** The line beside a host whose state the test tells. */
async function line() {
  const element = document.body.appendChild(document.createElement("div"));
  let told: (state: HostState) => void = () => undefined;
  const host = {
    follow: (listener: typeof told) => {
      told = listener;
      return () => undefined;
    },
  } as unknown as WorkbookHost;
  const refresh = vi.fn();
  root = createRoot(element);
  await act(async () =>
    root!.render(
      <HostLine
        host={host}
        refresh={refresh}
        fault={(fault) => {
          throw fault;
        }}
      />,
    ),
  );
  return {
    refresh,
    text: () => element.textContent ?? "",
    tell: (state: Partial<HostState>) => act(async () => told({ waiting: null, late: null, lastEntry: null, ...state })),
    press: (name: string) =>
      act(async () => [...element.querySelectorAll("button")].find(({ textContent }) => textContent === name)!.click()),
  };
}

describe("what the workbook program is at", () => {
  it("is said while it is not known what became of an entry, and when one came late", async () => {
    const { tell, text, press } = await line();
    expect(text()).toBe("");
    await tell({ waiting: "Excel has not answered. Do not enter it again before." });
    expect(text()).toContain("Do not enter it again before.");
    await tell({ late: "Excel has now done what it had not answered for: an entry in Purchases." });
    expect(text()).toContain("an entry in Purchases");
    await press("Dismiss");
    expect(text()).toBe("");
  });

  it("offers to take the last entry back, says why that could not be, and reads again once it is", async () => {
    const { tell, text, press, refresh } = await line();
    const takeBack = vi.fn<() => Promise<void>>(() => Promise.resolve());
    takeBack.mockRejectedValueOnce(new HostError("moved", "No rows of Purchases say any more what was entered."));
    await tell({ lastEntry: { words: "an entry in Purchases", takeBack } });
    await press("Take back");
    expect(text()).toContain("Nothing was taken back. No rows of Purchases say any more what was entered.");
    expect(refresh).not.toHaveBeenCalled();
    await press("Take back");
    expect(refresh).toHaveBeenCalledOnce();
  });
});
