/** The table Matches: which range of the grower's own stands for which of our tables, and which heading for which column. */
import type { RawTable, WorkbookContent } from "./cell";
import { seasonColumns } from "./columns/season";
import { headingsOf, ourHeading } from "./headings";
import type { Place, Problem } from "./problem";
import { grown } from "./rowsBelow";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { standResponseNames } from "./tables/ownStandTables";
import { ownHeading, wideColumnSaid, wideColumnWords } from "./wideColumns";
import { wideRange } from "./wideRange";
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
  const matches = new Map<string, Match>();
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
    const wide = name === "Budget" ? wideColumnSaid(ours) : null;
    const column = wide === null ? ourHeading(name, ours) : wideColumnWords(wide);
    if (column === undefined) return fault({ code: "match-missing", at: at("Column"), found: ours, ...likeOf(nearest(ours, headingsOf(name))) });
    const match = matches.get(`${name} ${range}`) ?? { table: name, range, found, at: at("Range"), headings: new Map(), own: new Map() };
    match.headings.set(plainHeading(theirs), column);
    match.own.set(ownHeading(theirs), column);
    matches.set(`${name} ${range}`, match);
  });
  const ranges = [...matches.values()].map((match): Matched => {
    const { table, range, found, headings, own: said } = match;
    if (![...said.values()].some((each) => table === "Budget" && wideColumnSaid(each) !== null)) {
      const raw = { ...found, name: table, called: found.headers, headers: found.headers.map((heading) => headings.get(plainHeading(heading)) ?? "") };
      // A table of the grower's own has an end of its own, at which rows below it are told.
      return { table, range, raw: content.ranges.has(range) ? grown(raw) : raw };
    }
    const { raw: lines, unsaid, missed } = wideRange(found, said);
    const [first] = missed;
    if (first !== undefined) fault({ code: "rows-below", at: { table, row: first.row }, found: String(missed.length), like: `${first.by} rows below` });
    for (const heading of unsaid) fault({ code: "wide-column-unsaid", at: match.at, found: heading });
    return { table, range, raw: { ...lines, name: table } };
  });
  return { ranges, own, problems };
}

/** What the rows of the table Matches say of one range. */
type Match = {
  readonly table: TableName;
  readonly range: string;
  readonly found: RawTable;
  /** Its first row in Matches. */
  readonly at: Place;
  /** Our columns by plain headings of the range; and the same by headings with their brackets, which wide sheets need. */
  readonly headings: Map<string, string>;
  readonly own: Map<string, string>;
};

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
