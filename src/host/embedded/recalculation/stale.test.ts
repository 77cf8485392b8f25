import { expect, it } from "vitest";
import { readersOf } from "./stale";
import type { KnownFormula } from "./understood";

/** A formula in column A that reads cells of column A. */
const reading = (row: number, top: number, bottom = top): KnownFormula => ({
  cell: { sheet: 0, row, column: 0, formula: "", value: 0 },
  understood: {
    engineFormula: "",
    reads: [{ sheet: 0, area: { top, bottom, left: 0, right: 0 } }],
    readsAnything: false,
    isVolatile: false,
  },
});
const rows = (found: readonly KnownFormula[]) => found.map(({ cell }) => cell.row);

it("follows a chain of 100,000 formulas each of which reads the cell below, and one in no order", { timeout: 20_000 }, () => {
  const length = 100_000;
  const upward = Array.from({ length }, (_, row) => reading(row, row + 1));
  expect(readersOf(upward, [{ sheet: 0, row: length, column: 0 }])).toHaveLength(length);
  const step = 61_803; // shares no factor with the length, so that every row comes once
  const mixed = Array.from({ length }, (_, index) => upward[(index * step) % length]!);
  expect(readersOf(mixed, [{ sheet: 0, row: length, column: 0 }])).toHaveLength(length);
});

it("goes through areas too, and names readers in the order of the formulas", () => {
  const formulas = [reading(0, 5), reading(5, 7, 9), reading(8, 20), reading(30, 40), reading(50, 0)];
  expect(rows(readersOf(formulas, [{ sheet: 0, row: 20, column: 0 }]))).toEqual([0, 5, 8, 50]);
  expect(rows(readersOf(formulas, [{ sheet: 1, row: 20, column: 0 }]))).toEqual([]);
  expect(readersOf(formulas, [])).toEqual([]);
});

it("reaches what reads any cell that an array formula fills", () => {
  const filling: KnownFormula = {
    ...reading(0, 20),
    cell: { sheet: 0, row: 0, column: 0, formula: "", value: 0, fills: { top: 0, bottom: 2, left: 0, right: 0 } },
  };
  const formulas = [filling, reading(5, 2), reading(6, 1, 3), reading(7, 3)];
  expect(rows(readersOf(formulas, [{ sheet: 0, row: 20, column: 0 }]))).toEqual([0, 5, 6]);
});
