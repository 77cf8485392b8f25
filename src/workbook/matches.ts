/** The table Matches: which range of the grower's own stands for which of our tables, and which heading for which column. */
import type { RawTable, WorkbookContent } from "./cell";
import { seasonColumns } from "./columns/season";
import { headingsOf } from "./headings";
import type { Problem } from "./problem";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { standResponseNames } from "./tables/ownStandTables";
import { nearest, plain, plainHeading } from "./words";

export type Matched = { readonly table: TableName; readonly range: string; readonly raw: RawTable };

export type MatchedRanges = {
  readonly ranges: readonly Matched[];
  /** Ranges that stand for a table of yields of the grower's own, by its name. */
  readonly own: readonly RawTable[];
  readonly problems: readonly Problem[];
};

/** The ranges that the table Matches points at, their headings replaced by ours. */
export function matchedRanges(content: WorkbookContent): MatchedRanges {
  const raw = content.tables.find((each) => plain(each.name) === plain(matchesTable));
  if (raw === undefined) return { ranges: [], own: [], problems: [] };
  const problems: Problem[] = [];
  const fault = (problem: Omit<Problem, "touches">) => { problems.push({ ...problem, touches: [{ of: "farm" }] }); };
  const indexOf = (heading: string) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
  const places = ["Table", "Range", "Column", "Heading"].map((heading) => ({ heading, index: indexOf(heading) }));
  const lacking = places.filter(({ index }) => index < 0);
  for (const { heading } of lacking) fault({ code: "column-missing", at: { table: matchesTable, column: heading }, found: "" });
  if (lacking.length > 0) return { ranges: [], own: [], problems };

  const responses = standResponses(content);
  const own: RawTable[] = [];
  const matches = new Map<string, { table: TableName; range: string; headings: Map<string, string> }>();
  raw.rows.forEach((row, index) => {
    const [table, range, ours, theirs] = places.map((place) => String(row[place.index] ?? "").trim()) as [string, string, string, string];
    if (table === "" && range === "" && ours === "" && theirs === "") return;
    const at = (of: string) => ({ table: matchesTable, row: index + 1, column: of });
    const name = tableNames.find((each) => plain(each) === plain(table));
    const found = content.ranges.get(range) ?? tableMatched(content, range);
    const response = name === undefined ? responses.find((each) => plain(each) === plain(table)) : undefined;
    if (name === undefined && response === undefined) return fault({ code: "not-in-list", at: at("Table"), found: table, choices: tableNames });
    if (found === undefined) return fault({ code: "range-missing", at: at("Range"), found: range });
    if (name === undefined) return void own.push({ ...found, name: response! });
    const heading = found.headers.map(plainHeading).indexOf(plainHeading(theirs));
    if (heading < 0) return fault({ code: "match-missing", at: at("Heading"), found: theirs, ...likeOf(nearest(theirs, found.headers)) });
    const column = headingsOf(name).find((each) => plainHeading(each) === plainHeading(ours));
    if (column === undefined) return fault({ code: "match-missing", at: at("Column"), found: ours, ...likeOf(nearest(ours, headingsOf(name))) });
    const match = matches.get(`${name} ${range}`) ?? { table: name, range, headings: new Map<string, string>() };
    match.headings.set(plainHeading(theirs), column);
    matches.set(`${name} ${range}`, match);
  });
  const ranges = [...matches.values()].map(({ table, range, headings }): Matched => {
    const found = (content.ranges.get(range) ?? tableMatched(content, range))!;
    return { table, range, raw: { ...found, name: table, called: found.headers, headers: found.headers.map((heading) => headings.get(plainHeading(heading)) ?? "") } };
  });
  return { ranges, own, problems };
}

/** The table of the grower's own that a match names instead of a range: it grows with its rows. One of ours stands for itself. */
const tableMatched = ({ tables }: WorkbookContent, name: string): RawTable | undefined =>
  tables.find((each) => plain(each.name) === plain(name) && ![...tableNames, matchesTable].some((ours) => plain(ours) === plain(name)));

const likeOf = (like: string | null): Pick<Problem, "like"> => (like === null ? {} : { like });

/** The tables of the grower's own that the settings Stand response and Test weight dock name: a range may be matched to any of them. */
function standResponses({ tables }: WorkbookContent): readonly string[] {
  const { setting, value } = seasonColumns.columns;
  const raw = tables.find((each) => plain(each.name) === "season");
  if (raw === undefined) return [];
  const [name, at] = [setting.heading, value.heading].map((heading) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading))) as [number, number];
  return raw.rows.filter((row) => ["standresponse", "testweightdock"].includes(plain(String(row[name] ?? "")))).flatMap((row) => standResponseNames(String(row[at] ?? "")));
}
