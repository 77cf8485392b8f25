import type { Cell } from "../../workbook/cell";
import { sameName } from "../sheetNames";
import { HostError, type CellChange } from "../workbookHost";
import { refuseOtherRow, sameCell } from "../rowSays";
import type { Command, Found } from "./command";
import { isFormula } from "./formulaCell";
import { asTyped } from "./typedCells";

/** Cells as they were changed, with what they held before. */
export type ChangedCells = readonly {
  readonly table: string;
  readonly row: number;
  readonly column: string;
  readonly before: Cell;
  readonly value: Cell;
}[];

/**
 * Puts values into cells of tables, in one round trip after three that read: the tables, their headings, the rows. A value
 * takes nothing of a cell but what stands in it, so its number format stays. On a protected sheet the cells that are not
 * locked may be changed. Answers what was changed.
 *
 * @throws HostError before anything is written: `missing` for a place that is not there, `moved` for a row that says something
 * else than the change expects, `formula`, `protected`
 */
export const changeCells =
  (changes: readonly CellChange[]): Command<ChangedCells> =>
  async (context) => {
    if (changes.length === 0) return { done: [] };
    const cells = await askCells(context, changes);
    for (const { change, cell, sheet } of cells) {
      const { table, row, column } = change;
      if (isFormula(cell.formulas[0]?.[0], cell.values[0]?.[0])) {
        throw new HostError("formula", `${table}, entry ${row}, ${column} holds a formula, which is not written over.`);
      }
      if (sheet.protection.protected && cell.format.protection.locked) {
        throw new HostError(
          "protected",
          `The sheet ${sheet.name} is protected, so ${table}, entry ${row}, ${column} cannot be changed. Unprotect it, then try again.`,
        );
      }
    }
    const value = cells.map(({ change, table, column, cell }) => ({
      table,
      row: change.row,
      column,
      before: (cell.values[0]?.[0] ?? "") as Cell,
      value: change.value,
    }));
    return {
      value,
      write: () => {
        for (const { change, cell } of cells) cell.values = [[asTyped(change.value)]];
      },
      look: (looking) => lookForCells(looking, value),
    };
  };

/** A change, with the names of its table and column as Excel has them, and the cell. */
type AskedCell = {
  readonly change: CellChange;
  readonly table: string;
  readonly column: string;
  readonly cell: Excel.Range;
  readonly sheet: Excel.Worksheet;
};

/** The cells of the changes, in rows that say what the changes expect. */
async function askCells(context: Excel.RequestContext, changes: readonly CellChange[]): Promise<readonly AskedCell[]> {
  const tables = context.workbook.tables.load("items/name");
  await context.sync();
  const named = (name: string): Excel.Table => {
    const table = tables.items.find((each) => sameName(each.name, name));
    if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    return table;
  };
  const asked = new Map([...new Set(changes.map(({ table }) => table))].map((name) => [name, askTable(named(name))] as const));
  await context.sync();
  const cells = changes.map((change) => {
    const { table, columns, body, sheet } = asked.get(change.table)!;
    const index = columns.items.findIndex(({ name }) => sameName(name, change.column));
    if (index < 0) throw new HostError("missing", `The table ${change.table} has no column ${change.column}.`);
    if (change.row < 1 || change.row > body.rowCount)
      throw new HostError("missing", `The table ${change.table} has no entry ${change.row}.`);
    const cell = body.getCell(change.row - 1, index).load("values,formulas,format/protection/locked");
    const row = change.says === undefined ? null : body.getRow(change.row - 1).load("values");
    const headings = columns.items.map(({ name }) => name);
    return { change, table, column: headings[index]!, cell, sheet, row, headings };
  });
  await context.sync();
  for (const { change, row, headings } of cells) if (row !== null) refuseOtherRow(change, headings, (row.values[0] ?? []) as Cell[]);
  return cells;
}

const askTable = (table: Excel.Table) => ({
  table: table.name,
  columns: table.columns.load("items/name"),
  body: table.getDataBodyRange().load("rowCount"),
  sheet: table.worksheet.load("name,protection/protected"),
});

async function lookForCells(context: Excel.RequestContext, changed: ChangedCells): Promise<Found> {
  const asked = changed.map((each) => {
    const column = context.workbook.tables.getItemOrNullObject(each.table).columns.getItemOrNullObject(each.column);
    return {
      each,
      cells: column
        .getDataBodyRange()
        .getCell(each.row - 1, 0)
        .load("values"),
    };
  });
  await context.sync();
  const now = asked.map(({ each, cells }) => ({ each, found: cells.isNullObject ? null : ((cells.values[0]?.[0] ?? "") as Cell) }));
  if (now.every(({ each, found }) => found !== null && sameCell(found, each.value))) return "there";
  if (now.every(({ each, found }) => found !== null && sameCell(found, each.before))) return "not there";
  return now.every(({ each, found }) => found !== null && (sameCell(found, each.before) || sameCell(found, each.value)))
    ? "partly"
    : "unclear";
}
