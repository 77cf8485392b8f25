import { describe, expect, it } from "vitest";
import type { RawTable } from "./cell";
import { tableNames } from "./tableNames";
import { columnHint } from "./columnHints";
import { hintWords } from "./inputTable";
import { readSeason } from "./readSeason";
import { seasonReport } from "./report";
import { inputTables } from "./templates";
import { plain } from "./words";

const made = (): readonly RawTable[] =>
  inputTables.map(({ name, columns }) => ({
    name,
    headers: columns.map(({ heading }) => heading),
    rows: [columns.map(() => "")],
    body: { sheet: name, row: 1, column: 0 },
  }));

describe("the input tables", () => {
  it("are all that we read, and Matches", () => {
    expect(inputTables.map(({ name }) => plain(name)).sort()).toEqual([...tableNames, "Matches"].map(plain).sort());
  });

  it("have names that Excel allows, no heading twice, and a hint for each column that fits into Excel's 255 characters", () => {
    for (const { name, columns } of inputTables) {
      expect(name).toMatch(/^[A-Za-z_]+$/);
      expect(new Set(columns.map(({ heading }) => plain(heading))).size).toBe(columns.length);
      expect(columns.filter((column) => column.hint === "" || hintWords(column).length > 255).map(({ heading }) => heading)).toEqual([]);
    }
  });

  it("hold no row that the grower did not type, so that a first look has neither figures nor faults", () => {
    expect(inputTables.filter(({ rows }) => rows !== undefined)).toEqual([]);
    const { figures, problems } = seasonReport({ dateSystem: "1900", tables: made(), ranges: new Map() });
    expect([figures.crops, figures.items, figures.changes, problems]).toEqual([[], [], [], []]);
  });

  it("tell the hint of a column by the table's and the column's name as they are in the workbook", () => {
    expect(columnHint("other_costs", "Amount (USD)")).toBe("Money by the basis. Needed.");
    expect([columnHint("Fields", "My own column"), columnHint("Costs", "Amount")]).toEqual(["", ""]);
  });

  it("let Purchases be without Item, Quantity and Unit where it has Kind and For, and not else", () => {
    const missing = (headers: readonly string[]) =>
      readSeason({
        dateSystem: "1900",
        ranges: new Map(),
        tables: [
          ...made().filter(({ name }) => name !== "Purchases"),
          { ...made().find(({ name }) => name === "Purchases")!, headers, rows: [] },
        ],
      })
        .problems.filter(({ code }) => code === "column-missing")
        .map(({ at }) => at.column);
    expect(missing(["Date", "Amount", "Kind", "For"])).toEqual([]);
    expect(missing(["Amount", "Kind", "For"])).toEqual(["Date"]);
    expect(missing(["Date", "Amount", "Kind"])).toEqual(["Item", "Quantity", "Unit"]);
  });

  it("mark every column that a reader cannot do without", () => {
    const required = (table: string) =>
      inputTables
        .find(({ name }) => name === table)!
        .columns.filter((column) => column.required)
        .map(({ heading }) => heading);
    for (const { name } of inputTables.filter((each) => each.name !== "Matches")) {
      for (const heading of required(name)) {
        // A table of bills charged directly need not have them.
        if (name === "Purchases" && heading !== "Date") continue;
        // Nor a table of loads with the scale's two weights a net one.
        if (name === "Harvest" && heading === "Weight or bushels") continue;
        const without = made().map((table) =>
          table.name !== name ? table : { ...table, headers: table.headers.map((each) => (each === heading ? "Other" : each)) },
        );
        const { problems } = readSeason({ dateSystem: "1900", tables: without, ranges: new Map() });
        expect(
          problems.some(
            ({ code, at }) => code === "column-missing" && at.column !== undefined && plain(heading).startsWith(plain(at.column)),
          ),
          `${name} ${heading}`,
        ).toBe(true);
      }
    }
  });
});
