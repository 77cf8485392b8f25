/** Our tables, as they are named to people, and which tables of a workbook need to be read. */
import type { Cell } from "./cell";
import { nearest, plain } from "./words";

export const tableNames = [
  "Season",
  "Crops",
  "Fields",
  "Budget",
  "Items",
  "Purchases",
  "Applications",
  "Operations",
  "Machines",
  "Other costs",
  "Loans",
  "Insurance",
  "Stand counts",
  "Weather",
  "Hybrids",
  "Hybrid trials",
  "Weeds",
  "Planter checks",
  "Sales",
  "Harvest",
  "Changes",
  "Past seasons",
] as const;
export type TableName = (typeof tableNames)[number];

/** The table that keeps which range and heading stands for which of our tables and columns. */
export const matchesTable = "Matches";

/**
 * The tables of a workbook whose cells may matter: ours, those that are nearly named so (which is told) or that Matches names,
 * and those that a cell of
 * the table Season names.
 *
 * @param matched what the table Matches names in its column Range: a range, or a table of the grower's own
 * @param season all cells of the table Season; `null` where there is none, so that nobody knows what its range names: all are read
 */
export function tablesToRead(
  names: readonly string[],
  season: readonly (readonly Cell[])[] | null,
  matched: readonly string[] = [],
): readonly string[] {
  if (season === null) return names;
  const isMatched = new Set(matched.map(plain));
  const ours = [...tableNames, matchesTable];
  const named = season.flat().map((cell) => plain(String(cell)));
  return names.filter(
    (name) =>
      isMatched.has(plain(name)) ||
      ours.some((each) => plain(name).includes(plain(each))) ||
      nearest(name, ours) !== null ||
      named.some((words) => words.includes(plain(name))),
  );
}
