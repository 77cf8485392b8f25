/** Which table of the workbook is which of ours: by its name, or by the grower's own match of a range. */
import type { RawTable, WorkbookContent } from "./cell";
import type { Problem } from "./problem";
import { standResponseNames } from "./tables/ownStandTables";
import { plain, plainHeading } from "./words";

/** Our tables, as they are named to people. */
export const tableNames = [
  "Season", "Crops", "Fields", "Items", "Purchases", "Applications", "Operations", "Machines", "Other costs", "Loans", "Insurance",
  "Stand counts", "Sales", "Harvest", "Changes",
] as const;
export type TableName = (typeof tableNames)[number];

/** The table that keeps which range and heading stands for which of our tables and columns. */
export const matchesTable = "Matches";

export type FoundTables = {
  readonly tables: ReadonlyMap<TableName, RawTable>;
  /** Tables and matched ranges of the grower's own that are none of ours. */
  readonly own: readonly RawTable[];
  readonly problems: readonly Problem[];
};

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
  const own = content.tables.filter((raw) => ![...tableNames, matchesTable].some((name) => plain(name) === plain(raw.name)));
  return { tables, own: [...own, ...matched.own], problems: [...problems, ...matched.problems] };
}

type Match = { readonly table: TableName; readonly range: string; readonly headings: Map<string, string> };

/** The ranges that the table Matches points at, their headings replaced by ours. */
function matchedTables(content: WorkbookContent): FoundTables {
  const raw = content.tables.find((each) => plain(each.name) === plain(matchesTable));
  if (raw === undefined) return { tables: new Map(), own: [], problems: [] };
  const responses = standResponses(content);
  const own: RawTable[] = [];
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
    const response = name === undefined ? responses.find((each) => plain(each) === plain(text(row, table))) : undefined;
    if (response !== undefined && content.ranges.has(address)) own.push({ ...content.ranges.get(address)!, name: response });
    else if (name === undefined && response === undefined) problems.push({ code: "not-in-list", at: { ...at, column: "Table" }, found: text(row, table), choices: tableNames, touches: [{ of: "farm" }] });
    else if (!content.ranges.has(address)) problems.push({ code: "range-missing", at: { ...at, column: "Range" }, found: address, touches: [{ of: "farm" }] });
    else if (name !== undefined) {
      const match = matches.get(name) ?? { table: name, range: address, headings: new Map<string, string>() };
      match.headings.set(plainHeading(text(row, theirs)), text(row, ours));
      matches.set(name, match);
    }
  });
  const tables = new Map([...matches.values()].map((match) => {
    const found = content.ranges.get(match.range)!;
    return [match.table, { ...found, name: match.table, headers: found.headers.map((heading) => match.headings.get(plainHeading(heading)) ?? "") }] as const;
  }));
  return { tables, own, problems };
}

/** The tables of yield that the setting Stand response names: a range may be matched to any of them. */
function standResponses({ tables }: WorkbookContent): readonly string[] {
  const raw = tables.find((each) => plain(each.name) === "season");
  if (raw === undefined) return [];
  const [setting, value] = ["Setting", "Value"].map((heading) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading))) as [number, number];
  return raw.rows.filter((row) => plain(String(row[setting] ?? "")) === "standresponse").flatMap((row) => standResponseNames(String(row[value] ?? "")));
}
