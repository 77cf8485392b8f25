import { Decimal } from "../../core/decimal";
import { HostError, type WorkbookHost } from "../../host/workbookHost";
import type { Cell, DateSystem, WorkbookContent } from "../../workbook/cell";
import { findTables } from "../../workbook/findTables";
import { inputTables } from "../../workbook/templates";
import { plainHeading } from "../../workbook/words";
import { outcome, type Outcome } from "../failure";
import type { Entry, EntryRow } from "./entryRow";
import { sameName, tableNamed } from "./tableNamed";

/**
 * Adds rows to one of our tables as one step, under the workbook's own spelling of the headings. A table that the
 * workbook lacks is made first, with the first of them as its first row.
 *
 * A value whose column the table lacks cannot be written; the names of those come back, so that nothing is lost unsaid.
 */
export function addEntries(host: WorkbookHost, content: WorkbookContent, name: string, rows: readonly EntryRow[]): Promise<Outcome<readonly string[]>> {
  const there = tableNamed(content, name);
  if (there === null && [...findTables(content).tables.keys()].some((each) => sameName(each, name))) {
    return Promise.resolve({ ok: false, failure: { what: `${name} is read from a range of your own, which Pennyacre does not write to.`, remedy: "Add the rows there.", again: false } });
  }
  const cellsOf = (row: EntryRow, headings: readonly string[]) => new Map([...row].flatMap(([heading, value]): readonly (readonly [string, Cell])[] => {
    const own = headings.find((each) => plainHeading(each) === plainHeading(heading));
    return own === undefined ? [] : [[own, cellOf(value, content.dateSystem)]];
  }));
  const template = inputTables.find((each) => sameName(each.name, name));
  const headings = there?.headers ?? template?.columns.map(({ heading }) => heading) ?? [];
  const cells = rows.map((row) => cellsOf(row, headings));
  const lost = [...new Set(rows.flatMap((row) => [...row.keys()]))].filter((heading) => !headings.some((each) => plainHeading(each) === plainHeading(heading)));
  return outcome(async () => {
    if (there !== null) await host.addRows(there.name, cells);
    else {
      if (template === undefined) throw new RangeError(`there is no table ${name}`);
      const [first = new Map<string, Cell>(), ...rest] = cells;
      const made = await host.makeTables([{ ...template, rows: [headings.map((heading) => first.get(heading) ?? "")] }]);
      // A table that somebody else has made meanwhile has none of our rows.
      const left = made.length === 0 ? cells : rest;
      if (left.length > 0) await host.addRows(template.name, left).catch((error: unknown) => { throw made.length === 0 ? error : partlyAdded(template.name, error); });
    }
    return lost;
  });
}

/** The refusal of the other rows, once the table was made with the first. */
const partlyAdded = (table: string, error: unknown): unknown => (error instanceof HostError
  ? new HostError(error.reason, `${error.message} The new table ${table} has the first row already: delete it there before you try again.`, { cause: error, written: "partly" })
  : error);

export const cellOf = (value: Entry, system: DateSystem): Cell =>
  typeof value === "string" ? value : value instanceof Decimal ? Number(value.toFixed()) : serialOf((value as { readonly day: string }).day, system);

const dayLength = 86_400_000;
const firstDays: Record<DateSystem, number> = { "1900": Date.UTC(1899, 11, 30), "1904": Date.UTC(1904, 0, 1) };

/** The serial number of a day as Excel counts it; right from March 1900 on, where the 1900 system's false leap day is past. */
export const serialOf = (day: string, system: DateSystem): number => (Date.parse(`${day}T00:00:00Z`) - firstDays[system]) / dayLength;
