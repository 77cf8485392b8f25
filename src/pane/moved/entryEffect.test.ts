import { describe, expect, it } from "vitest";
import { paneContent } from "../../../tests/support/paneWorkbook";
import type { Cell, WorkbookContent } from "../../workbook/cell";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { changedRow, type ChangedRow } from "./changedRow";
import { entryEffect } from "./entryEffect";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const withRows = (name: string, rows: (old: readonly (readonly Cell[])[]) => readonly (readonly Cell[])[]): WorkbookContent => ({
  ...paneContent,
  tables: paneContent.tables.map((table) => (table.name === name ? { ...table, rows: rows(table.rows) } : table)),
});
const cell = (name: string, row: number, heading: string, value: Cell) => {
  const at = paneContent.tables.find((table) => table.name === name)!.headers.indexOf(heading);
  return withRows(name, (rows) =>
    rows.map((cells, index) => (index === row ? cells.map((old, column) => (column === at ? value : old)) : cells)),
  );
};
const effect = (after: WorkbookContent, layer: "cash" | "operating" = "cash") =>
  entryEffect(changedRow(paneContent, after) as ChangedRow, seasonReport(paneContent, true), seasonReport(after, true), layer, format);
const bill = ["2031-05-20", "Urea", 1000, "lb", 0.9];

describe("the row that changed", () => {
  it("is found whether it was changed, added, put in between or taken out", () => {
    expect(changedRow(paneContent, cell("Purchases", 0, "Unit price", 300))).toMatchObject({
      table: "Purchases",
      was: expect.arrayContaining([266]),
      is: expect.arrayContaining([300]),
    });
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => [...rows, bill]),
      ),
    ).toMatchObject({ was: null, is: bill });
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => [rows[0]!, bill, ...rows.slice(1)]),
      ),
    ).toMatchObject({ was: null, is: bill });
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => rows.slice(1)),
      ),
    ).toMatchObject({ was: expect.arrayContaining(["Corn seed A"]), is: null });
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => [...rows, ["", ""]]),
      ),
    ).toBe("none");
  });

  it("is none where more than one did, or a table came or went", () => {
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => [...rows, bill, bill]),
      ),
    ).toBe("several");
    expect(
      changedRow(
        paneContent,
        withRows("Purchases", (rows) => [...rows].reverse()),
      ),
    ).toBe("several");
    expect(changedRow(paneContent, { ...paneContent, tables: paneContent.tables.slice(1) })).toBe("several");
    const two = cell("Purchases", 0, "Unit price", 300);
    expect(
      changedRow(paneContent, {
        ...two,
        tables: two.tables.map((table) => (table.name === "Items" ? { ...table, rows: table.rows.slice(1) } : table)),
      }),
    ).toBe("several");
  });
});

describe("what an entry did", () => {
  it("names the item against its plan, and parts that add up to the difference as shown", () => {
    // 0.285 a lb becomes 9,450 ÷ 31,000 = 0.3048; 30,975 lb on 198.5 ac: 425.69 → 428.79.
    const words = effect(withRows("Purchases", (rows) => [...rows, bill]));
    expect(words).toMatch(/^Urea 0\.30 a lb against plan 0\.26: Corn \+3\.10 an acre \(/);
    const parts = /\(([^)]*)\)/
      .exec(words)![1]!
      .split(", ")
      .map((part) => Number(/[+−][\d.]+$/.exec(part)?.[0].replace("−", "-") ?? "3.10"));
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(3.1, 9);
  });

  it("names the cell with what it said before, and the net where a price moves no cost", () => {
    expect(effect(cell("Crops", 0, "Expected price", 4.5))).toMatch(
      /^Crops: Corn, Expected price 4\.35 → 4\.5: Corn net \+\d+\.\d\d \(cash cost\)\.$/,
    );
  });

  it("shows a year as a year, and what a row is about by its name and not by the day or year in front of it", () => {
    const year = paneContent.tables.find(({ name }) => name === "Season")!.rows.findIndex(([setting]) => setting === "Season year");
    expect(effect(cell("Season", year, "Value", 2032))).toContain("Season: Season year, Value 2031 → 2032: ");
    expect(effect(withRows("Purchases", (rows) => [...rows, ["2031-05-20", "Bolts", 3, "each", 2]]))).toMatch(/^Purchases: /);
    const days = withRows("Purchases", (rows) => [...rows, [48000, "Bolts", 3, "each", 2]]);
    expect(effect(days)).toMatch(/^Purchases: Bolts, new/);
  });

  it("says so where nothing moved, and where what moved is incomplete", () => {
    expect(effect(cell("Purchases", 0, "Note", "by the gate"))).toMatch(/: no cost per acre and no net moved by a cent\.$/);
    expect(effect(cell("Applications", 2, "Rate", "1 60"))).toContain("incomplete");
  });
});
