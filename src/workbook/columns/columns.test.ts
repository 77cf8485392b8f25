import { describe, expect, it, vi } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { readSeason } from "../readSeason";
import { TableReader } from "../tableReader";
import { inputTables } from "../templates";
import { plain, plainHeading } from "../words";
import { declaredTables } from "./all";

/** Columns that are there for the grower alone, and say nothing that is counted. */
const notes: readonly string[] = ["Season: Note"];

/** What a row needs so that its reader comes to every column; 1 under all other headings. */
const filled: Readonly<Record<string, string>> = {
  Crop: "Corn", Field: "Alder", Item: "Urea", Machine: "Drill", "Field or Crop": "Alder", Tractor: "Tractor", Date: "2031-05-01", Status: "plan", Unit: "lb",
  "Rate unit": "lb/ac", "Pack unit": "lb", Operation: "Pass", Quadrant: "added costs", Change: "A", Name: "A", Setting: "Farm", Value: "A",
};
/** A second row of some tables, where one column is read only if another is blank. */
const second: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "Stand counts": { "Hoop diameter": "" }, Operations: { Machine: "", Basis: "per hour" },
};
const kindOf: Readonly<Record<string, string>> = { Items: "fertilizer", "Other costs": "overhead", Loans: "term" };

describe("the columns of new tables", () => {
  it("are read, all of them but those for notes", () => {
    const text = inputTables.map(({ sheet, columns }) => {
      const row = (own: Readonly<Record<string, string>>) =>
        `| ${columns.map(({ heading }) => own[heading] ?? (heading === "Kind" ? kindOf[sheet] ?? "" : filled[heading] ?? "1")).join(" | ")} |`;
      return [sheet, `| ${columns.map(({ heading }) => heading).join(" | ")} |`, row({}), row(second[sheet] ?? {})].join("\n");
    });
    const indexOf = vi.spyOn(TableReader.prototype, "indexOf");
    readSeason(contentFromText(text.join("\n")));
    const asked = new Set(indexOf.mock.calls.map(([column], call) => `${(indexOf.mock.contexts[call] as TableReader).name}: ${plainHeading(column)}`));
    indexOf.mockRestore();
    const unread = inputTables.filter(({ sheet }) => sheet !== "Matches").flatMap(({ sheet, columns }) =>
      columns.filter(({ heading }) => !asked.has(`${sheet}: ${plainHeading(heading)}`)).map(({ heading }) => `${sheet}: ${heading}`));
    expect(unread).toEqual(notes);
  });

  it("have one heading each, and no heading of a declared table is an older one of another", () => {
    for (const { columns } of declaredTables) {
      const headings = Object.values(columns).flatMap(({ heading, was = [] }) => [heading, ...was]).map(plain);
      expect(new Set(headings).size).toBe(headings.length);
    }
  });
});
