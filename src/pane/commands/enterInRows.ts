import type { WorkbookHost } from "../../host/workbookHost";
import type { Cell } from "../../workbook/cell";
import type { Named } from "../../workbook/columns/column";
import { headingThere } from "../../workbook/oldHeadings";
import type { TableName } from "../../workbook/tableNames";
import { plain } from "../../workbook/words";
import { inputTables } from "../../workbook/templates";
import { outcome, type Failure } from "../failure";
import { sameName, tableNamed } from "./tableNamed";

/** Which rows: those of `table` whose column `named` says `name`; and what goes into their column `column`. */
export type RowsEntry = {
  readonly table: TableName;
  readonly named: Named;
  readonly name: string;
  readonly column: Named;
  readonly value: Cell;
};

/** How many rows; or what was in the way. `lacks`: the table's own name, where all that is missing is the column. */
export type Entered =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly failure: Failure; readonly lacks?: string };

/**
 * Puts a value into one column of every row that bears a name, as one step; answers how many rows.
 *
 * The rows are looked for anew, because the grower may have sorted or added to the table since it was read last; and each change
 * carries what its row said.
 *
 * @param addsColumn a column that the table lacks is added at its right end, as the grower asked
 */
export async function enterInRows(
  host: WorkbookHost,
  { table: ours, named: { heading: named }, name, column: { heading: column }, value }: RowsEntry,
  addsColumn = false,
): Promise<Entered> {
  const read = await outcome(() => host.read());
  if (!read.ok) return read;
  const table = tableNamed(read.value, ours);
  if (table === null) {
    return failed({
      what: `The workbook has no table ${ours}; it is read from a range of your own, which Pennyacre does not write to.`,
      remedy: `Enter it there, in the column ${column}.`,
      again: false,
    });
  }
  const headingOf = (wanted: string) => headingThere(ours, table.headers, wanted);
  const [nameHeading, heading] = [headingOf(named), headingOf(column)];
  const without = (missing: string): Failure => ({
    what: `The table ${table.name} has no column ${missing}.`,
    remedy: "Add a column with that heading to the table, then try again.",
    again: true,
  });
  if (nameHeading === undefined) return failed(without(named));
  if (heading === undefined && !addsColumn) return { ...failed(without(column)), lacks: table.name };
  const at = table.headers.indexOf(nameHeading);
  const rows = table.rows.flatMap((cells, index) => (plain(String(cells[at] ?? "").trim()) === plain(name) ? [index + 1] : []));
  if (rows.length === 0)
    return failed({ what: `The table ${table.name} no longer has an entry for ${name}.`, remedy: "Read the workbook again.", again: true });
  return outcome(async () => {
    const saysOf = (row: number) => new Map(table.headers.map((each, index) => [each, table.rows[row - 1]?.[index] ?? ""]));
    if (heading !== undefined)
      await host.changeCells(rows.map((row) => ({ table: table.name, row, column: heading, value, says: saysOf(row) })));
    else
      await host.addColumn({
        table: table.name,
        heading: column,
        ...formatOf(ours, column),
        cells: new Map(rows.map((row) => [row, value])),
      });
    return rows.length;
  });
}

/** The number format that the column has in a table of ours. */
function formatOf(table: string, column: string): { readonly numberFormat?: string } {
  const numberFormat = inputTables
    .find(({ name }) => sameName(name, table))
    ?.columns.find(({ heading }) => heading === column)?.numberFormat;
  return numberFormat === undefined ? {} : { numberFormat };
}

const failed = (failure: Failure): { readonly ok: false; readonly failure: Failure } => ({ ok: false, failure });
