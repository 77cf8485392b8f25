/** Which table of the workbook is which of ours: by its name, or by the grower's own match of a range. */
import type { RawTable, WorkbookContent } from "./cell";
import { matchedRanges } from "./matchedRanges";
import { underTodaysHeadings } from "./oldHeadings";
import type { Problem } from "./problem";
import { problemsBelow } from "./rowsBelow";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { editDistance, plain } from "./words";

export type FoundTables = {
  readonly tables: ReadonlyMap<TableName, RawTable>;
  /** Tables and matched ranges of the grower's own that are none of ours. */
  readonly own: readonly RawTable[];
  readonly problems: readonly Problem[];
};

export function findTables(content: WorkbookContent): FoundTables {
  const tables = new Map<TableName, RawTable>();
  const problems: Problem[] = [];
  const add = (name: TableName, raw: RawTable, called: string) => {
    if (tables.has(name)) problems.push({ code: "table-twice", at: { table: name }, found: called, touches: [{ of: "farm" }] });
    else tables.set(name, underTodaysHeadings(name, raw));
  };
  for (const raw of content.tables) {
    const name = tableNames.find((each) => plain(each) === plain(raw.name));
    if (name !== undefined) add(name, raw, raw.name);
  }
  for (const { name, why } of content.unreadable ?? []) {
    problems.push({
      code: "table-unreadable",
      at: { table: tableNames.find((each) => plain(each) === plain(name)) ?? name },
      found: why,
      touches: [{ of: "farm" }],
    });
  }
  // A real table of ours comes before a match.
  const matched = matchedRanges(content);
  for (const [name, raw] of tables) problems.push(...problemsBelow(raw, name, [{ of: "farm" }]));
  for (const { table, parts, raw, told } of matched.ranges) {
    if (!tables.has(table)) problems.push(...told);
    add(table, raw, parts.map(({ range }) => range).join(", "));
  }
  const isMatched = new Set(matched.ranges.flatMap(({ parts }) => parts.map(({ range }) => plain(range))));
  const called = [...content.tables.map(({ name }) => name), ...(content.others ?? [])];
  for (const name of called) {
    const like = isMatched.has(plain(name)) ? null : almostNamed(name);
    if (like === null) continue;
    problems.push({
      code: tables.has(like) ? "table-beside" : "table-almost",
      at: { table: like },
      found: name,
      touches: [{ of: "farm" }],
    });
  }
  const own = content.tables.filter((raw) => ![...tableNames, matchesTable].some((name) => plain(name) === plain(raw.name)));
  return { tables, own: [...own, ...matched.own], problems: [...problems, ...matched.problems] };
}

/** Letters from which a slip in a name can be told from another word. */
const shortestWithSlip = 6;

/**
 * The table of ours that a name is almost, such as `Purchases2`, `tblOperations` or `OtherCost`; `null` for a name of ours and
 * any other.
 */
function almostNamed(name: string): TableName | null {
  const written = plain(name);
  if ([...tableNames, matchesTable].some((each) => plain(each) === written)) return null;
  const bare = written.replace(/^(tbl|table|tab|my)[.-]?|[.-]?\(?\d+\)?$|[.-]?(table|tbl)$/g, "");
  return (
    tableNames.find((each) => {
      const ours = plain(each);
      return (
        ours === bare ||
        `${bare}s` === ours ||
        bare === `${ours}s` ||
        (bare.length >= shortestWithSlip && ours.length >= shortestWithSlip && editDistance(bare, ours) <= 1)
      );
    }) ?? null
  );
}
