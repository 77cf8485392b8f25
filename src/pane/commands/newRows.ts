/** Rows as the workbook's own tables take them. */
import { serialOfDay } from "../../workbook/daySerial";
import { Decimal } from "../../core/numbers/decimal";
import type { TableRows } from "../../host/workbookHost";
import type { Cell, DateSystem, WorkbookContent } from "../../workbook/cell";
import { findTables } from "../../workbook/findTables";
import { headingThere } from "../../workbook/oldHeadings";
import { inputTables } from "../../workbook/templates";
import type { Outcome } from "../failure";
import type { Entry, EntryRow } from "./entryRow";
import { sameName, tableNamed } from "./tableNamed";

/** Rows under the workbook's own spelling of a table and its headings. */
export type RowsForTable = TableRows & {
  readonly isThere: boolean;
  /** Headings of what is entered and has no column: those entries are not among the rows. */
  readonly lost: readonly string[];
};

/** @returns a failure where the table is read from a range of the grower's own, which is never written to */
export function rowsForTable(content: WorkbookContent, name: string, rows: readonly EntryRow[]): Outcome<RowsForTable> {
  const there = tableNamed(content, name);
  const template = inputTables.find((each) => sameName(each.name, name));
  if (template === undefined) throw new RangeError(`there is no table ${name}`);
  if (there === null && [...findTables(content).tables.keys()].some((each) => sameName(each, name))) {
    return {
      ok: false,
      failure: {
        what: `${name} is read from a range of your own, which Pennyacre does not write to.`,
        remedy: "Add the entries there.",
        again: false,
      },
    };
  }
  const headings = there?.headers ?? template.columns.map(({ heading }) => heading);
  const own = (heading: string) => headingThere(name, headings, heading);
  return {
    ok: true,
    value: {
      table: there === null ? template : { ...template, name: there.name },
      isThere: there !== null,
      rows: rows.map(
        (row) =>
          new Map(
            [...row].flatMap(([heading, value]): readonly (readonly [string, Cell])[] => {
              const column = own(heading);
              return column === undefined ? [] : [[column, cellOf(value, content.dateSystem)]];
            }),
          ),
      ),
      lost: [...new Set(rows.flatMap((row) => [...row.keys()]))].filter((heading) => own(heading) === undefined),
    },
  };
}

export const cellOf = (value: Entry, system: DateSystem): Cell =>
  typeof value === "string"
    ? value
    : value instanceof Decimal
      ? Number(value.toFixed())
      : serialOfDay((value as { readonly day: string }).day, system);
