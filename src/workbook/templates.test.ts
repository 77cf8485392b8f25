import { describe, expect, it } from "vitest";
import type { RawTable } from "./cell";
import { tableNames } from "./tableNames";
import { readSeason } from "./readSeason";
import { seasonReport } from "./report";
import { inputTables } from "./templates";
import { plain } from "./words";

const made = (): readonly RawTable[] => inputTables.map(({ name, columns, example }) => ({
  name, headers: columns.map(({ heading }) => heading), rows: [example], body: { sheet: name, row: 1, column: 0 },
}));

describe("the input tables", () => {
  it("are all that we read, and Matches", () => {
    expect(inputTables.map(({ name }) => plain(name)).sort()).toEqual([...tableNames, "Matches"].map(plain).sort());
  });

  it("have as many examples as columns, names that Excel allows, and a date of May where they mean one", () => {
    for (const { name, columns, example } of inputTables) {
      expect(example).toHaveLength(columns.length);
      expect(name).toMatch(/^[A-Za-z_]+$/);
      expect(new Set(columns.map(({ heading }) => plain(heading))).size).toBe(columns.length);
    }
  });

  it("read back without a fault but for the fields that an example cannot name, so that a first look is not a list of faults", () => {
    const reading = readSeason({ dateSystem: "1900", tables: made().filter(({ name }) => name !== "Matches"), ranges: new Map() });
    expect(reading.problems.map(({ code, at }) => `${code} ${at.table} ${at.column}`)).toEqual([]);
    expect(reading.season.fields[0]).toMatchObject({ name: "Example: replace", plannedPlanting: "2031-05-01" });
  });

  it("make a first look that a grower can believe: a season that is planned and not harvested, a little off its plan", () => {
    const { figures } = seasonReport({ dateSystem: "1900", tables: made().filter(({ name }) => name !== "Matches"), ranges: new Map() });
    const [corn, ...others] = figures.crops;
    expect([others, corn!.final]).toEqual([[], null]);
    expect(corn!.outlook.yields.used.minus(corn!.plan.yields.used).abs().lt("5")).toBe(true);
    expect(corn!.outlook.costPerArea.layers.cash.minus(corn!.plan.costPerArea.layers.cash).abs().lt("10")).toBe(true);
  });

  it("mark every column that a reader cannot do without", () => {
    const required = (table: string) => inputTables.find(({ name }) => name === table)!.columns.filter((column) => column.required).map(({ heading }) => heading);
    for (const { name } of inputTables.filter((each) => each.name !== "Matches")) {
      for (const heading of required(name)) {
        const without = made().map((table) => table.name !== name ? table : { ...table, headers: table.headers.map((each) => (each === heading ? "Other" : each)) });
        const { problems } = readSeason({ dateSystem: "1900", tables: without, ranges: new Map() });
        expect(problems.some(({ code, at }) => code === "column-missing" && at.column !== undefined && plain(heading).startsWith(plain(at.column))), `${name} ${heading}`).toBe(true);
      }
    }
  });
});
