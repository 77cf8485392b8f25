/** The table Matches: which range of the grower's own stands for which of our tables, and which heading for which column. */
import type { RawTable, WorkbookContent } from "./cell";
import type { Named } from "./columns/column";
import { matchColumns } from "./columns/matches";
import { seasonColumns } from "./columns/season";
import { headingsOf, ourHeading } from "./headings";
import type { Place, Problem } from "./problem";
import { cellBeside, constantHeading, constantSaid, withConstants, type Constant } from "./matchConstants";
import { joined, overlap, type Missed, type JoinedPart } from "./joinedRanges";
import { grown, problemsBelow, rowsBelow } from "./rowsBelow";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { withoutSections } from "./sectionRows";
import { inputTables } from "./templates";
import { standResponseNames } from "./tables/ownStandTables";
import { ownHeading, wideColumnSaid, wideColumnWords } from "./wideColumns";
import { wideRange } from "./wideRange";
import { nearest, plain, plainHeading } from "./words";

const { columns } = matchColumns;

/** The ranges that stand for one table, put together as one. */
type Matched = Pick<JoinedPart, "raw" | "told"> & { readonly table: TableName; readonly parts: readonly MatchedPart[] };
type MatchedPart = JoinedPart & { readonly range: string };

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
  const fault = (problem: Omit<Problem, "touches">) => {
    problems.push({ ...problem, touches: [{ of: "farm" }] });
  };
  const indexOf = (heading: string) => raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading));
  const places = [columns.table, columns.range, columns.column, columns.heading].map(({ heading }) => ({
    heading,
    index: indexOf(heading),
  }));
  const lacking = places.filter(({ index }) => index < 0);
  for (const { heading } of lacking) fault({ code: "column-missing", at: { table: matchesTable, column: heading }, found: "" });
  if (lacking.length > 0) return { ranges: [], own: [], problems };

  const responses = standResponses(content);
  const own: RawTable[] = [];
  const matches = new Map<string, Match>();
  raw.rows.forEach((row, index) => {
    const [table, range, ours, theirs] = places.map((place) => String(row[place.index] ?? "").trim()) as [string, string, string, string];
    if (table === "" && range === "" && ours === "" && theirs === "") return;
    const at = ({ heading: column }: Named) => ({ table: matchesTable, row: index + 1, column });
    const name = tableNames.find((each) => plain(each) === plain(table));
    const found = content.ranges.get(range) ?? tableMatched(content, range);
    const response = name === undefined ? responses.find((each) => plain(each) === plain(table)) : undefined;
    if (name === undefined && response === undefined)
      return fault({ code: "not-in-list", at: at(columns.table), found: table, choices: tableNames });
    if (found === undefined) return fault({ code: "range-missing", at: at(columns.range), found: range });
    if (name === undefined) return void own.push({ ...found, name: response! });
    const constant = constantSaid(theirs);
    const heading = found.headers.map(plainHeading).indexOf(plainHeading(theirs));
    if (heading < 0 && constant === null)
      return fault({ code: "match-missing", at: at(columns.heading), found: theirs, ...likeOf(nearest(theirs, found.headers)) });
    const wide = name === "Budget" ? wideColumnSaid(ours) : null;
    const column = wide === null ? ourHeading(name, ours) : wideColumnWords(wide);
    if (column === undefined)
      return fault({ code: "match-missing", at: at(columns.column), found: ours, ...likeOf(nearest(ours, headingsOf(name))) });
    const match = matches.get(`${name} ${range}`) ?? {
      table: name,
      range,
      found,
      at: at(columns.range),
      headings: new Map(),
      own: new Map(),
      constants: new Map(),
    };
    if (constant === null) {
      match.headings.set(plainHeading(theirs), column);
      match.own.set(ownHeading(theirs), column);
    } else match.constants.set(column, constant);
    matches.set(`${name} ${range}`, match);
  });
  const ofTable = new Map<TableName, { readonly match: Match; readonly part: JoinedPart }[]>();
  for (const match of matches.values()) {
    const part = partOf(match, content, fault);
    const others = ofTable.get(match.table) ?? [];
    if (others.some((each) => overlap(each.match.found, match.found)))
      fault({ code: "table-twice", at: { table: match.table }, found: match.range });
    else ofTable.set(match.table, [...others, { match, part }]);
  }
  const ranges = [...ofTable].map(([table, all]): Matched => {
    const [first, ...others] = all.map(({ part }) => part);
    return { table, parts: all.map(({ match, part }) => ({ range: match.range, ...part })), ...joined([first!, ...others]) };
  });
  return { ranges, own, problems };
}

/** One matched range with our headings, and what is told of the rows below it. */
function partOf(
  { table, range, found: picked, headings, own, constants, at }: Match,
  content: WorkbookContent,
  fault: (problem: Omit<Problem, "touches">) => void,
): JoinedPart {
  const isWide = table === "Budget" && [...own.values()].some((each) => wideColumnSaid(each) !== null);
  const needed = neededOf(table).filter((column) => [...headings.values()].some((each) => plainHeading(each) === plainHeading(column)));
  const found = withConstants(
    isWide ? picked : withoutSections(picked, needed.length),
    constants,
    (cell) => content.ranges.get(cellBeside(range, cell))?.headers[0] ?? "",
  );
  const said = new Map([...own, ...[...constants.keys()].map((column) => [ownHeading(constantHeading(column)), column] as const)]);
  if (!isWide) {
    const ours = new Map([...headings, ...[...constants.keys()].map((column) => [plainHeading(constantHeading(column)), column] as const)]);
    const raw = {
      ...found,
      name: table,
      called: found.headers,
      headers: found.headers.map((heading) => ours.get(plainHeading(heading)) ?? ""),
    };
    // A table of the grower's own has an end of its own, at which rows below it are told.
    const whole = content.ranges.has(range) ? grown(raw) : raw;
    const { entries } = rowsBelow(whole);
    return {
      raw: whole,
      told: problemsBelow(whole, table, [{ of: "farm" }]),
      missed: missedBelow(entries.length, whole.body.row + whole.rows.length - 1 + (entries.at(-1)?.by ?? 0)),
    };
  }
  const { raw, unsaid, missed, sums } = wideRange(found, said);
  for (const heading of unsaid) fault({ code: "wide-column-unsaid", at, found: heading });
  const told = [
    ...missed
      .slice(0, 1)
      .map(({ row, by }): Problem => ({
        code: "rows-below",
        at: { table, row },
        found: String(missed.length),
        like: `${by} rows below`,
        touches: [{ of: "farm" }],
      })),
    ...sums.map(({ row, found: says, others }): Problem => ({
      code: "sum-left",
      at: { table, row },
      found: says,
      like: String(others),
      touches: [{ of: "farm" }],
    })),
  ];
  return {
    raw: { ...raw, name: table },
    told,
    missed: missedBelow(missed.length, raw.origins?.[raw.rows.length + missed.length - 1]?.row ?? 0),
  };
}

/** The columns of a table that an entry cannot do without. */
const neededOf = (table: TableName): readonly string[] =>
  inputTables
    .filter(({ name }) => plain(name) === plain(table))
    .flatMap(({ columns }) => columns.filter(({ required }) => required).map(({ heading }) => heading));

const missedBelow = (entries: number, bottom: number): Missed | null => (entries === 0 ? null : { entries, bottom });

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
  /** Our columns that the same text fills in every row. */
  readonly constants: Map<string, Constant>;
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
  const [name, at] = [setting.heading, value.heading].map((heading) =>
    raw.headers.findIndex((each) => plainHeading(each) === plainHeading(heading)),
  ) as [number, number];
  return raw.rows
    .filter((row) => ["standresponse", "testweightdock"].includes(plain(String(row[name] ?? ""))))
    .flatMap((row) => standResponseNames(String(row[at] ?? "")));
}
