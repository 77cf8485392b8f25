import { describe, expect, it } from "vitest";
import { moved, selectBlock, selectCell, selectedBlock, type Extent, type KeyStroke, type Selection } from "./gridSelection";

/** A sheet of ten by six cells on screen, of which the marked ones are filled. */
const picture = ["x x x . . .", "x x x . . .", ". . . . . .", "x . x . . ."];
const extent: Extent = {
  first: { row: 0, column: 0 },
  rows: 10,
  columns: 6,
  used: { rows: 4, columns: 3 },
  pageRows: 4,
  isFilled: ({ row, column }) => picture[row]?.split(" ")[column] === "x",
};
const press = (key: string, held: Partial<KeyStroke> = {}): KeyStroke => ({ key, shift: false, ctrl: false, ...held });
const from = (row: number, column: number): Selection => selectCell({ row, column });
const after = (selection: Selection, ...strokes: KeyStroke[]): Selection =>
  strokes.reduce((at, stroke) => moved(at, stroke, extent) ?? at, selection);

describe("moved", () => {
  it.each([
    ["ArrowDown", false, [1, 1], [2, 1]],
    ["ArrowUp", false, [0, 1], [0, 1]],
    ["ArrowLeft", false, [0, 0], [0, 0]],
    ["ArrowRight", false, [0, 5], [0, 5]],
    ["PageDown", false, [1, 1], [5, 1]],
    ["PageDown", false, [8, 1], [9, 1]],
    ["PageUp", false, [2, 1], [0, 1]],
    ["Home", false, [1, 2], [1, 0]],
    ["Home", true, [3, 2], [0, 0]],
    ["End", false, [0, 0], [0, 2]],
    ["End", false, [2, 2], [2, 0]],
    ["End", true, [0, 0], [3, 2]],
    ["ArrowDown", true, [0, 0], [1, 0]],
    ["ArrowDown", true, [1, 0], [3, 0]],
    ["ArrowDown", true, [1, 1], [3, 1]],
    ["ArrowDown", true, [7, 1], [7, 1]],
    ["ArrowUp", true, [7, 0], [3, 0]],
    ["ArrowRight", true, [0, 0], [0, 2]],
    ["ArrowRight", true, [3, 0], [3, 2]],
    ["ArrowLeft", true, [0, 5], [0, 2]],
    ["Enter", false, [1, 1], [2, 1]],
    ["Tab", false, [1, 1], [1, 2]],
  ] as const)("takes %s (Ctrl %s) from %j to %j", (key, ctrl, [row, column], [toRow, toColumn]) => {
    expect(after(from(row, column), press(key, { ctrl })).active).toEqual({ row: toRow, column: toColumn });
  });

  it("says that a key moves nothing", () => expect(moved(from(0, 0), press("x"), extent)).toBeNull());

  it("extends with Shift and leaves the active cell where it is", () => {
    const selection = after(from(1, 1), press("ArrowDown", { shift: true }), press("ArrowLeft", { shift: true }));
    expect(selection.active).toEqual({ row: 1, column: 1 });
    expect(selectedBlock(selection)).toEqual({ top: 1, left: 0, bottom: 2, right: 1 });
  });

  it("goes back to one cell at the next plain arrow", () => {
    expect(selectedBlock(after(from(1, 1), press("ArrowDown", { shift: true }), press("ArrowUp")))).toEqual({
      top: 0,
      left: 1,
      bottom: 0,
      right: 1,
    });
  });

  it("returns with Enter to the column where a run of Tabs began", () => {
    expect(after(from(1, 1), press("Tab"), press("Tab"), press("Tab"), press("Enter")).active).toEqual({ row: 2, column: 1 });
  });

  it("forgets where Tabs began once an arrow is pressed", () => {
    expect(after(from(1, 1), press("Tab"), press("ArrowRight"), press("Enter")).active).toEqual({ row: 2, column: 3 });
  });

  it("walks through a block: down with Enter, right with Tab, round at the end, the block kept", () => {
    const block = selectBlock({ top: 1, left: 1, bottom: 2, right: 3 });
    expect(after(block, press("Enter"), press("Enter")).active).toEqual({ row: 1, column: 2 });
    expect(after(block, press("Tab"), press("Tab"), press("Tab")).active).toEqual({ row: 2, column: 1 });
    const before = after(block, press("Tab", { shift: true }));
    expect(before.active).toEqual({ row: 2, column: 3 });
    expect(selectedBlock(before)).toEqual({ top: 1, left: 1, bottom: 2, right: 3 });
  });

  it("selects what is used, whole rows and whole columns", () => {
    expect(selectedBlock(after(from(1, 1), press("a", { ctrl: true })))).toEqual({ top: 0, left: 0, bottom: 3, right: 2 });
    expect(selectedBlock(after(from(1, 1), press(" ", { shift: true })))).toEqual({ top: 1, left: 0, bottom: 1, right: 2 });
    expect(selectedBlock(after(from(1, 1), press(" ", { ctrl: true })))).toEqual({ top: 0, left: 1, bottom: 3, right: 1 });
  });
});
