import { describe, expect, it } from "vitest";
import type { KnownFormula } from "./understood";
import { stagesOf } from "./stages";

/** A formula in a row of the first column that reads the rows of its area. */
const reading = (row: number, top: number, bottom: number): KnownFormula => ({
  cell: { sheet: 0, row, column: 0, formula: "", value: null },
  understood: {
    engineFormula: "",
    reads: [{ sheet: 0, area: { top, bottom, left: 0, right: 0 } }],
    readsAnything: false,
    isVolatile: false,
  },
});
const chain = (length: number) => Array.from({ length }, (_, index) => reading(index + 1, index, index));
const rowsOf = (stages: readonly (readonly KnownFormula[])[]) => stages.map((stage) => stage.map(({ cell }) => cell.row));

describe("stages of formulas", () => {
  it("are one where no chain is longer than is asked at once", () => {
    expect(rowsOf(stagesOf(chain(4), 4))).toEqual([[1, 2, 3, 4]]);
  });
  it("cut a chain in pieces, in whatever order its formulas stand", () => {
    expect(rowsOf(stagesOf(chain(5), 2))).toEqual([[1, 2], [3, 4], [5]]);
    expect(rowsOf(stagesOf(chain(5).reverse(), 2))).toEqual([[2, 1], [4, 3], [5]]);
  });
  it("follow a range as each of its cells", () => {
    expect(rowsOf(stagesOf([...chain(3), reading(9, 0, 3), reading(10, 9, 9)], 3))).toEqual([
      [1, 2, 3],
      [9, 10],
    ]);
  });
  it("show a short ring whole, with what reads it, and leave out a long one", () => {
    const ring = [reading(11, 12, 12), reading(12, 11, 11), reading(13, 12, 12)];
    expect(rowsOf(stagesOf([...chain(4), ...ring], 3))).toEqual([[1, 2, 3], [4], [11, 12, 13]]);
    expect(rowsOf(stagesOf([reading(1, 3, 3), reading(2, 1, 1), reading(3, 2, 2)], 2))).toEqual([]);
  });
});
