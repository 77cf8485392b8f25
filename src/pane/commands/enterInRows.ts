import type { WorkbookHost } from "../../host/workbookHost";
import type { Cell } from "../../workbook/cell";
import { plain, plainHeading } from "../../workbook/words";
import { outcome, type Failure, type Outcome } from "../failure";
import { tableNamed } from "./tableNamed";

/** Which rows: those of `table` whose column `named` says `name`; and what goes into their column `column`. */
export type RowsEntry = { readonly table: string; readonly named: string; readonly name: string; readonly column: string; readonly value: Cell };

/**
 * Puts a value into one column of every row that bears a name, as one step; answers how many rows.
 *
 * The rows are looked for anew, because the grower may have sorted or added to the table since it was read last.
 */
export async function enterInRows(host: WorkbookHost, { table: ours, named, name, column, value }: RowsEntry): Promise<Outcome<number>> {
  const read = await outcome(() => host.read());
  if (!read.ok) return read;
  const table = tableNamed(read.value, ours);
  if (table === null) {
    return failed({ what: `The workbook has no table ${ours}; it is read from a range of your own, which Pennyacre does not write to.`, remedy: `Enter it there, in the column ${column}.`, again: false });
  }
  const headingOf = (wanted: string) => table.headers.find((each) => plainHeading(each) === plainHeading(wanted));
  const [nameHeading, heading] = [headingOf(named), headingOf(column)];
  if (heading === undefined || nameHeading === undefined) {
    return failed({ what: `The table ${table.name} has no column ${heading === undefined ? column : named}.`, remedy: "Add a column with that heading to the table, then try again.", again: true });
  }
  const at = table.headers.indexOf(nameHeading);
  const rows = table.rows.flatMap((cells, index) => (plain(String(cells[at] ?? "").trim()) === plain(name) ? [index + 1] : []));
  if (rows.length === 0) return failed({ what: `The table ${table.name} no longer has a row for ${name}.`, remedy: "Read the workbook again.", again: true });
  return outcome(async () => {
    await host.changeCells(rows.map((row) => ({ table: table.name, row, column: heading, value })));
    return rows.length;
  });
}

const failed = (failure: Failure): { readonly ok: false; readonly failure: Failure } => ({ ok: false, failure });
