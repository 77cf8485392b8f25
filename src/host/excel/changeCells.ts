import { sameName } from "../sheetNames";
import { HostError, type CellChange } from "../workbookHost";
import { asTyped } from "./typed";

/**
 * Puts values into cells of tables, in one round trip after three that read: the tables, their headings, the cells. A value
 * takes nothing of a cell but what stands in it, so its number format stays. On a protected sheet the cells that are not
 * locked may be changed.
 *
 * @throws HostError before anything is written: `missing` for a place that is not there, `formula`, `protected`
 */
export async function changeCells(context: Excel.RequestContext, changes: readonly CellChange[], goOn: () => void): Promise<void> {
  if (changes.length === 0) return;
  const tables = context.workbook.tables.load("items/name");
  await context.sync();
  const named = (name: string): Excel.Table => {
    const table = tables.items.find((each) => sameName(each.name, name));
    if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    return table;
  };
  const asked = new Map([...new Set(changes.map(({ table }) => table))].map((name) => [name, askTable(named(name))] as const));
  await context.sync();
  const cells = changes.map((change) => ({ change, cell: cellOf(asked.get(change.table)!, change).load("formulas,format/protection/locked") }));
  await context.sync();
  for (const { change: { table, row, column }, cell } of cells) {
    const { sheet } = asked.get(table)!;
    const [[found] = []] = cell.formulas as unknown[][];
    if (typeof found === "string" && found.startsWith("=")) {
      throw new HostError("formula", `${table}, row ${row}, ${column} holds a formula, which is not written over.`);
    }
    if (sheet.protection.protected && cell.format.protection.locked) {
      throw new HostError("protected", `The sheet ${sheet.name} is protected, so ${table}, row ${row}, ${column} cannot be changed. Unprotect it, then try again.`);
    }
  }
  goOn();
  for (const { change, cell } of cells) cell.values = [[asTyped(change.value)]];
  await context.sync();
}

const askTable = (table: Excel.Table) => ({
  columns: table.columns.load("items/name"), body: table.getDataBodyRange().load("rowCount"), sheet: table.worksheet.load("name,protection/protected"),
});

function cellOf({ columns, body }: ReturnType<typeof askTable>, { table, row, column }: CellChange): Excel.Range {
  const index = columns.items.findIndex(({ name }) => sameName(name, column));
  if (index < 0) throw new HostError("missing", `The table ${table} has no column ${column}.`);
  if (row < 1 || row > body.rowCount) throw new HostError("missing", `The table ${table} has no row ${row}.`);
  return body.getCell(row - 1, index);
}
