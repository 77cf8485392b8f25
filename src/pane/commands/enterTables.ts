import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { findTables } from "../../workbook/findTables";
import { inputTables } from "../../workbook/templates";
import { plainHeading } from "../../workbook/words";
import { outcome, type Outcome } from "../failure";
import { cellOf } from "./addEntries";
import type { EntryRow } from "./entryRow";
import { sameName, tableNamed } from "./tableNamed";

/**
 * Adds rows to several of our tables as one step, under the workbook's own spelling of the headings; those that it lacks are made.
 * Nothing is written where a table is read from a range of the grower's own, or lacks a column that something is entered in.
 */
export function enterTables(host: WorkbookHost, content: WorkbookContent, entries: readonly { readonly table: string; readonly rows: readonly EntryRow[] }[]): Promise<Outcome<void>> {
  const tables = entries.map(({ table: name, rows }) => {
    const there = tableNamed(content, name);
    const template = inputTables.find((each) => sameName(each.name, name));
    if (template === undefined) throw new RangeError(`there is no table ${name}`);
    const headings = there?.headers ?? template.columns.map(({ heading }) => heading);
    const own = (heading: string) => headings.find((each) => plainHeading(each) === plainHeading(heading));
    const lacks = [...new Set(rows.flatMap((row) => [...row.keys()]))].filter((heading) => own(heading) === undefined);
    return {
      name, lacks, isMatched: there === null && [...findTables(content).tables.keys()].some((each) => sameName(each, name)),
      entry: { table: there === null ? template : { ...template, name: there.name }, rows: rows.map((row) => new Map([...row].map(([heading, value]) => [own(heading) ?? heading, cellOf(value, content.dateSystem)] as const))) },
    };
  });
  const matched = tables.find(({ isMatched }) => isMatched);
  if (matched !== undefined) {
    return Promise.resolve({ ok: false, failure: { what: `${matched.name} is read from a range of your own, which Pennyacre does not write to. Nothing was written.`, remedy: "Add the entries there.", again: false } });
  }
  const without = tables.find(({ lacks }) => lacks.length > 0);
  if (without !== undefined) {
    return Promise.resolve({ ok: false, failure: { what: `The table ${without.name} has no column ${without.lacks.join(", ")}. Nothing was written.`, remedy: "Add the column to the table, then try again.", again: true } });
  }
  return outcome(() => host.enterRows(tables.map(({ entry }) => entry)));
}
