import type { Cell } from "../../workbook/cell";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import { asTyped } from "./typed";

/**
 * Adds rows under the last body row of a table, in one round trip after one that reads. Excel moves a totals row and
 * whatever is below down, and fills calculated columns that are left out.
 *
 * @throws HostError `missing` for a table or a heading that is not there, `protected` where the sheet is locked
 */
export async function addRows(
  context: Excel.RequestContext, name: string, rows: readonly ReadonlyMap<string, Cell>[], goOn: () => void,
): Promise<void> {
  const tables = context.workbook.tables.load("items/name");
  await context.sync();
  const table = tables.items.find((each) => sameName(each.name, name));
  if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
  const columns = table.columns.load("items/name");
  const sheet = table.worksheet.load("name,protection/protected");
  await context.sync();
  if (sheet.protection.protected) {
    throw new HostError("protected", `The sheet ${sheet.name} is protected, so no row can be added to ${name}. Unprotect it, then try again.`);
  }
  const headings = columns.items.map((column) => column.name);
  const values = rows.map((row) => rowValues(name, headings, row));
  if (values.length === 0) return;
  goOn();
  table.rows.add(undefined, values as Cell[][]); // its type leaves out null, which Excel takes for "as it would be"
  await context.sync();
}

/** A row in the order of the columns; null leaves a cell to Excel, which fills it where the column is calculated. */
function rowValues(table: string, headings: readonly string[], row: ReadonlyMap<string, Cell>): (Cell | null)[] {
  const values: (Cell | null)[] = headings.map(() => null);
  for (const [heading, cell] of row) {
    const column = headings.findIndex((each) => sameName(each, heading));
    if (column < 0) throw new HostError("missing", `The table ${table} has no column ${heading}.`);
    values[column] = asTyped(cell);
  }
  return values;
}
