import { afterEach, beforeEach, expect, it, vi } from "vitest";

beforeEach(() => vi.resetModules());
afterEach(() => vi.doUnmock("./writing"));

it("what writes is fetched once", async () => {
  const { writing } = await import("./writingPart");
  expect(await writing()).toBe(await writing());
  expect(Object.keys(await writing())).toContain("addRows");
});

it("says that nothing was written where it does not come, and asks for it again", async () => {
  vi.doMock("./writing", () => {
    throw new Error("no line");
  });
  const { writing } = await import("./writingPart");
  await expect(writing()).rejects.toMatchObject({
    reason: "failed",
    written: "no",
    message: "What writes into the workbook did not arrive from where the pane came from.",
  });
  vi.doUnmock("./writing");
  expect(Object.keys(await writing())).toContain("addRows");
});
