import { describe, expect, it } from "vitest";
import type { Cell } from "../workbook/cell";
import { areaName, parseArea } from "./address";
import { blockOf } from "./blockOf";

/** A sheet with bills under two lines of title, a gap beside them, and a reckoning further down. */
const cells: readonly (readonly Cell[])[] = [
  ["North farm", "", "", "", ""],
  ["Bills of 2026", "", "", "", ""],
  ["Inv. date", "Product", "Qty", "", "other"],
  [46000, "Urea", 12, "", ""],
  [46010, "Seed", "", "", "text"],
  [46020, "", 3, "", ""],
  ["", "", "", "", ""],
  ["Total", "", 15, "", ""],
];
const block = (picked: string, of: readonly (readonly Cell[])[] = cells) =>
  areaName(blockOf(parseArea(picked)!, { top: 0, left: 0, bottom: of.length - 1, right: 4 }, ({ row, column }) => of[row]?.[column] ?? ""));

describe("blockOf", () => {
  it("begins at the headings where the selection begins at a title", () => {
    expect(block("A1:C6")).toBe("A3:C6");
    expect(block("A2:C6")).toBe("A3:C6");
    expect(block("A3:C6")).toBe("A3:C6");
  });

  it("is all that hangs together around one selected cell", () => {
    for (const cell of ["A1", "B4", "C6", "A3"]) expect(block(cell)).toBe("A3:C6");
  });

  it("goes on after a blank column where its headings do, with numbers under them, from either side", () => {
    const costs: readonly (readonly Cell[])[] = [
      ["", "", "", "", ""],
      ["Field", "Seed", "", "Fuel", "Rent"],
      ["Alder", 110, "", 18, 200],
      ["Birch", 115, "", "$19.00", ""],
    ];
    for (const cell of ["A3", "B4", "D3", "E2"]) expect(block(cell, costs)).toBe("A2:E4");
    // Another table beside it has its own names; a column of words alone is a remark.
    expect(
      block(
        "A3",
        costs.map((row, index) => (index === 1 ? ["Field", "Seed", "", "field", "Rent"] : row)),
      ),
    ).toBe("A2:B4");
    expect(
      block(
        "A3",
        costs.map(([field, seed, gap], index) => [field!, seed!, gap!, index === 1 ? "To do" : "call", ""]),
      ),
    ).toBe("A2:B4");
  });

  it("begins at the fullest row of words above the numbers, under a title in two cells and a line that groups the headings", () => {
    const costs: readonly (readonly Cell[])[] = [
      ["Costs 2026", "", "dollars", ""],
      ["", "Inputs", "", "Machine"],
      ["Field", "Seed", "Fert", "Fuel"],
      ["Alder", 110, 90, 18],
    ];
    expect([block("B4", costs), block("A1:D4", costs)]).toEqual(["A3:D4", "A3:D4"]);
    expect(
      block("A2", [
        ["Field", "Weed", ""],
        ["Alder", "thistle", "east"],
      ]),
    ).toBe("A1:C2");
  });

  it("is the selection where there are no headings to be found", () => {
    expect(block("A4:C6")).toBe("A4:C6");
    expect(block("E5")).toBe("E5");
    expect(areaName(blockOf(parseArea("B2:C3")!, null, () => ""))).toBe("B2:C3");
  });
});
