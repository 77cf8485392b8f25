/** Which table of the workbook is which of ours: by its name, or by the grower's own match of a range. */
import type { RawTable, WorkbookContent } from "./cell";
import { matchedRanges } from "./matches";
import type { Problem } from "./problem";
import { matchesTable, tableNames, type TableName } from "./tableNames";
import { plain } from "./words";

export { matchesTable, tableNames, type TableName } from "./tableNames";

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
    else tables.set(name, raw);
  };
  for (const raw of content.tables) {
    const name = tableNames.find((each) => plain(each) === plain(raw.name));
    if (name !== undefined) add(name, raw, raw.name);
  }
  for (const { name, why } of content.unreadable ?? []) {
    problems.push({ code: "table-unreadable", at: { table: tableNames.find((each) => plain(each) === plain(name)) ?? name }, found: why, touches: [{ of: "farm" }] });
  }
  // A real table of ours comes before a match.
  const matched = matchedRanges(content);
  for (const { table, range, raw } of matched.ranges) add(table, raw, range);
  const own = content.tables.filter((raw) => ![...tableNames, matchesTable].some((name) => plain(name) === plain(raw.name)));
  return { tables, own: [...own, ...matched.own], problems: [...problems, ...matched.problems] };
}
