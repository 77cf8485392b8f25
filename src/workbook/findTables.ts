/** Which table of the workbook is which of ours: by its name, or by the grower's own match of a range. */
import type { RawTable, WorkbookContent } from "./cell";
import type { Problem } from "./problem";
import { plain, plainHeading } from "./words";

/** Our tables, as they are named to people. */
export const tableNames = [
  "Season", "Crops", "Fields", "Items", "Purchases", "Applications", "Operations", "Machines", "Other costs", "Loans", "Insurance",
  "Stand counts", "Sales", "Harvest", "Changes",
] as const;
export type TableName = (typeof tableNames)[number];

/** The table that keeps which range and heading stands for which of our tables and columns. */
export const matchesTable = "Matches";

export type FoundTables = { readonly tables: ReadonlyMap<TableName, RawTable>; readonly problems: readonly Problem[] };

export function findTables(content: WorkbookContent): FoundTables {
  const tables = new Map<TableName, RawTable>();
  const problems: Problem[] = [];
  for (const raw of content.tables) {
    const name = tableNames.find((each) => plain(each) === plain(raw.name));
    if (name === undefined) continue;
    if (tables.has(name)) problems.push({ code: "table-twice", at: { table: name }, found: raw.name, touches: [{ of: "farm" }] });
    else tables.set(name, raw);
  }
  const matched = matchedTables(content);
  // A real table of ours comes before a match.
  for (const [name, raw] of matched.tables) if (!tables.has(name)) tables.set(name, raw);
  return { tables, problems: [...problems, ...matched.problems] };
}

type Match = { readonly table: TableName; readonly range: string; readonly headings: Map<string, string> };

/** The ranges that the table Matches points at, their headings replaced by ours. */
function matchedTables(content: WorkbookContent): FoundTables {
  const raw = content.tables.find((each) => plain(each.name) === plain(matchesTable));
  if (raw === undefined) return { tables: new Map(), problems: [] };
  const column = (heading: string) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
  const [table, range, ours, theirs] = [column("Table"), column("Range"), column("Column"), column("Heading")];
  const text = (row: RawTable["rows"][number], at: number) => String(row[at] ?? "").trim();
  const matches = new Map<TableName, Match>();
  const problems: Problem[] = [];
  raw.rows.forEach((row, index) => {
    const name = tableNames.find((each) => plain(each) === plain(text(row, table)));
    const address = text(row, range);
    if (row.every((cell) => String(cell).trim() === "")) return;
    const at = { table: matchesTable, row: index + 1 };
    if (name === undefined) problems.push({ code: "not-in-list", at: { ...at, column: "Table" }, found: text(row, table), choices: tableNames, touches: [{ of: "farm" }] });
    else if (!content.ranges.has(address)) problems.push({ code: "range-missing", at: { ...at, column: "Range" }, found: address, touches: [{ of: "farm" }] });
    else {
      const match = matches.get(name) ?? { table: name, range: address, headings: new Map<string, string>() };
      match.headings.set(plainHeading(text(row, theirs)), text(row, ours));
      matches.set(name, match);
    }
  });
  const tables = new Map([...matches.values()].map((match) => {
    const found = content.ranges.get(match.range)!;
    return [match.table, { ...found, name: match.table, headers: found.headers.map((heading) => match.headings.get(plainHeading(heading)) ?? "") }] as const;
  }));
  return { tables, problems };
}
