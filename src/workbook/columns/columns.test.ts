import { describe, expect, it, vi } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";
import { TableReader } from "../tableReader";
import { matchesTable } from "../tableNames";
import { plain, plainHeading } from "../words";
import { declaredTables } from "./all";
import type { Declared } from "./column";

/** Columns that are there for the grower alone, and say nothing that is counted. */
const notes: readonly string[] = ["Season: Note"];

/** What a row needs so that its reader comes to every column; 1 under all other headings. */
const filled: Readonly<Record<string, string>> = {
  Crop: "Corn",
  Field: "Alder",
  Item: "Urea",
  Machine: "Drill",
  "Field or Crop": "Alder",
  Tractor: "Tractor",
  Date: "2031-05-01",
  Status: "plan",
  Unit: "lb",
  "Rate unit": "lb/ac",
  "Pack unit": "lb",
  Operation: "Pass",
  Quadrant: "added costs",
  Change: "A",
  Name: "A",
  Setting: "Farm",
  Value: "A",
};
/** Further rows of some tables, where one column is read only if others are blank, or two rows are alike. */
const byField = { "Field or Crop": "" };
const byCrop = { ...byField, Field: "" };
const ofThisSeason = { "For season": "" };
const further: Readonly<Record<string, readonly Readonly<Record<string, string>>[]>> = {
  "Stand counts": [{ "Hoop diameter": "" }],
  Operations: [{ Machine: "", Basis: "per hour" }, byField, byCrop],
  Applications: [byField, byCrop],
  Changes: [byField, byCrop],
  Weeds: [byField, byCrop],
  Purchases: [ofThisSeason, ofThisSeason],
};
const kindOf: Readonly<Record<string, string>> = { Items: "fertilizer", "Other costs": "overhead", Loans: "term" };

const headingsOf = (columns: Declared["columns"]): readonly string[] => Object.values(columns).map(({ heading }) => heading);

describe("the columns that are declared", () => {
  it("are read, all that a new table has and those besides, but for notes", () => {
    const text = declaredTables.map(({ table, columns }) => {
      const headings = headingsOf(columns);
      const row = (own: Readonly<Record<string, string>>) =>
        `| ${headings.map((heading) => own[heading] ?? (heading === "Kind" ? (kindOf[table] ?? "") : (filled[heading] ?? "1"))).join(" | ")} |`;
      return [table, `| ${headings.join(" | ")} |`, row({}), ...(further[table] ?? []).map(row)].join("\n");
    });
    const indexOf = vi.spyOn(TableReader.prototype, "indexOf");
    readSeason(contentFromText(text.join("\n")));
    const asked = new Set(
      indexOf.mock.calls.map(([column], call) => `${(indexOf.mock.contexts[call] as TableReader).name}: ${plainHeading(column)}`),
    );
    indexOf.mockRestore();
    // The reader of Matches looks for all of its columns before it reads a row.
    const unread = declaredTables
      .filter(({ table }) => table !== matchesTable)
      .flatMap(({ table, columns }) =>
        headingsOf(columns)
          .filter((heading) => !asked.has(`${table}: ${plainHeading(heading)}`))
          .map((heading) => `${table}: ${heading}`),
      );
    expect(unread).toEqual(notes);
  });

  it("have one heading each, and none is an older one of another column", () => {
    for (const { columns } of declaredTables) {
      const headings = Object.values(columns)
        .flatMap(({ heading, was = [] }) => [heading, ...was])
        .map(plain);
      expect(new Set(headings).size).toBe(headings.length);
    }
  });
});
