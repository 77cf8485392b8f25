/** Matching a range of the grower's own to one of our tables: which heading stands for which column. */
import { matchColumns } from "../../workbook/columns/matches";
import type { InputTable } from "../../workbook/inputTable";
import { headingThere } from "../../workbook/oldHeadings";
import { nameMissing } from "./nameChoice";

const { columns } = matchColumns;

/** The heading of the own range for each column of ours; `""` where the range has none for it. */
export type Matching = ReadonlyMap<string, string>;

/** The headings that are alike, matched at once. */
export const firstMatching = (table: InputTable, headings: readonly string[]): Matching =>
  new Map(table.columns.map(({ heading }) => [heading, headingThere(table.sheet, headings, heading) ?? ""]));

/** The row of Matches by which a heading of a range stands for a column of ours. */
export const matchRow = (table: string, range: string, column: string, heading: string): ReadonlyMap<string, string> =>
  new Map([
    [columns.table.heading, table],
    [columns.range.heading, range],
    [columns.column.heading, column],
    [columns.heading.heading, heading],
  ]);

export type MatchView = {
  /** Why the match cannot be kept yet; empty where it can. */
  readonly missing: string;
  /** One row of the table Matches for each matched column. */
  readonly rows: readonly ReadonlyMap<string, string>[];
};

/** What an entry of a table can do without, once other columns are matched: a bill for a field and a kind needs no item and quantity. */
const spared = (table: InputTable, matching: Matching): ReadonlySet<string> =>
  new Set(
    table.sheet === "Purchases" && ["Kind", "For"].every((heading) => (matching.get(heading) ?? "") !== "")
      ? ["Item", "Quantity", "Unit"]
      : [],
  );

export function matchView(table: InputTable, address: string, matching: Matching): MatchView {
  const free = spared(table, matching);
  const without = table.columns
    .filter(({ heading, required }) => required && !free.has(heading) && (matching.get(heading) ?? "") === "")
    .map(({ heading }) => heading);
  const matched = table.columns.flatMap(({ heading }) => {
    const own = matching.get(heading) ?? "";
    return own === "" ? [] : [{ heading, own }];
  });
  const twice = matched.find(({ own }, index) => matched.findIndex((other) => other.own === own) !== index);
  const named = table.columns.map(({ heading }) => nameMissing(matching.get(heading) ?? "")).find((words) => words !== "");
  return {
    missing:
      named !== undefined
        ? named
        : without.length > 0
          ? `Match ${without.join(", ")} as well: an entry of ${table.sheet} needs ` +
            `${without.length === 1 ? "it" : "them"}${table.sheet === "Purchases" && free.size === 0 ? ", or Kind and For in their place" : ""}.`
          : twice === undefined
            ? ""
            : `“${twice.own}” is matched twice.`,
    rows: matched.map(({ heading, own }) => matchRow(table.sheet, address, heading, own)),
  };
}
