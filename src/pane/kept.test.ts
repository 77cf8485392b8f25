import { describe, expect, it } from "vitest";
import { keptInPage, keptInSession, keptNowhere } from "./kept";

function storage() {
  const items = new Map<string, string>();
  return {
    items,
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, text: string) => void items.set(key, text),
    removeItem: (key: string) => void items.delete(key),
  };
}

describe("what is kept in the session", () => {
  it("comes back in the pane of the same workbook, and is gone when it is let go", () => {
    const store = storage();
    keptInSession(() => store, "season.xlsx 0.1.0").write("purchase", { item: "Urea" });
    const again = keptInSession(() => store, "season.xlsx 0.1.0");
    expect(again.read("purchase")).toEqual({ item: "Urea" });
    again.write("purchase", undefined);
    expect(again.read("purchase")).toBeUndefined();
    expect(store.items.size).toBe(0);
  });

  it("is never shown in another workbook, nor in another version", () => {
    const store = storage();
    keptInSession(() => store, "season.xlsx 0.1.0").write("purchase", { item: "Urea" });
    expect(keptInSession(() => store, "neighbour.xlsx 0.1.0").read("purchase")).toBeUndefined();
    expect(keptInSession(() => store, "season.xlsx 0.2.0").read("purchase")).toBeUndefined();
  });

  it("is nothing where the browser refuses its storage, and typing goes on", () => {
    const refusing = keptInSession(() => {
      throw new DOMException("denied", "SecurityError");
    }, "season.xlsx");
    refusing.write("purchase", { item: "Urea" });
    expect(refusing.read("purchase")).toBeUndefined();
    expect(() =>
      keptInSession(() => {
        throw new TypeError("a fault of ours");
      }, "season.xlsx").read("purchase"),
    ).toThrow("a fault of ours");
  });

  it("is nothing beside the embedded workbook, whose page is not loaded anew", () => {
    keptNowhere.write("purchase", { item: "Urea" });
    expect(keptNowhere.read("purchase")).toBeUndefined();
  });
});

describe("what is kept in a page that may open another workbook", () => {
  it("is typed until it is let go or begun anew, and a choice never is", () => {
    const kept = keptInPage();
    kept.write("where", "North 40", false);
    expect(kept.holdsTyped()).toBe(false);
    kept.write("purchase", { item: "Urea" }, true);
    expect(kept.holdsTyped()).toBe(true);
    expect(kept.read("purchase")).toEqual({ item: "Urea" });
    kept.write("purchase", { item: "" }, false);
    expect(kept.holdsTyped()).toBe(false);
    kept.write("purchase", { item: "Urea" }, true);
    kept.write("purchase", undefined);
    expect(kept.holdsTyped()).toBe(false);
    expect(kept.read("purchase")).toBeUndefined();
  });
});
