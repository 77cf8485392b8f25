import type { Cell } from "../../workbook/cell";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import { sameCell } from "../rowSays";
import type { Command, Found } from "./command";
import { isFormula } from "./formulaCell";
import { asTyped } from "./typedCells";

/** Rows as they were added: body rows from `first` on, counted from 0, with `null` for cells that were left to Excel. */
export type AddedRows = { readonly table: string; readonly first: number; readonly cells: readonly (readonly (Cell | null)[])[] };

/**
 * Adds rows under the last body row of a table, in one round trip after two that read; answers what was added. Excel moves a
 * totals row and whatever is below down, and fills calculated columns that are left out.
 *
 * @throws HostError `missing` for a table or a heading that is not there, `protected` where the sheet is locked
 */
export const addRows =
  (name: string, rows: readonly ReadonlyMap<string, Cell>[]): Command<AddedRows> =>
  async (context) => {
    const tables = context.workbook.tables.load("items/name");
    await context.sync();
    const table = tables.items.find((each) => sameName(each.name, name));
    if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
    const columns = table.columns.load("items/name");
    const body = table.getDataBodyRange().load("rowCount");
    const firstRow = body.getRow(0).load("values,formulas");
    const sheet = table.worksheet.load("name,protection/protected");
    await context.sync();
    if (sheet.protection.protected) {
      throw new HostError(
        "protected",
        `The sheet ${sheet.name} is protected, so no entry can be added to ${name}. Unprotect it, then try again.`,
      );
    }
    const headings = columns.items.map((column) => column.name);
    const cells = rows.map((row) => rowCells(name, headings, row));
    // A new table has one blank row, which is the first to be filled.
    const isNew = body.rowCount === 1 && (enteredIn(firstRow)[0] ?? []).every((cell) => cell === null || cell === "");
    const value: AddedRows = { table: table.name, first: isNew ? 0 : body.rowCount, cells };
    if (cells.length === 0) return { done: value };
    return {
      value,
      write: () => {
        // The type of values leaves out null, which Excel takes for "as it would be".
        const typed = cells.map((row) => row.map((cell) => (cell === null ? null : asTyped(cell)))) as Cell[][];
        if (isNew && typed.length === 1) return void (firstRow.values = typed);
        table.rows.add(undefined, typed);
        if (isNew) table.rows.getItemAt(0).delete();
      },
      look: (looking) => lookForRows(looking, value, body.rowCount),
    };
  };

/** A row in the order of the columns; null leaves a cell to Excel, which fills it where the column is calculated. */
function rowCells(table: string, headings: readonly string[], row: ReadonlyMap<string, Cell>): (Cell | null)[] {
  const cells: (Cell | null)[] = headings.map(() => null);
  for (const [heading, cell] of row) {
    const column = headings.findIndex((each) => sameName(each, heading));
    if (column < 0) throw new HostError("missing", `The table ${table} has no column ${heading}.`);
    cells[column] = cell;
  }
  return cells;
}

/** Whether the rows are in the table, which had `before` rows. */
async function lookForRows(context: Excel.RequestContext, { table, first, cells }: AddedRows, before: number): Promise<Found> {
  const body = context.workbook.tables.getItemOrNullObject(table).getDataBodyRange().load("rowCount,columnCount");
  await context.sync();
  if (body.isNullObject) return "not there";
  if (body.rowCount < before) return "unclear";
  if (body.rowCount > first) {
    const added = body
      .getCell(first, 0)
      .getResizedRange(body.rowCount - first - 1, body.columnCount - 1)
      .load("values,formulas");
    await context.sync();
    if (placeOfRows(enteredIn(added), cells) !== null) return "there";
  }
  return body.rowCount === before ? "not there" : "unclear";
}

/** Whether the last rows of a table are these. */
export async function endsWith(context: Excel.RequestContext, name: string, rows: readonly ReadonlyMap<string, Cell>[]): Promise<boolean> {
  const tables = context.workbook.tables.load("items/name");
  await context.sync();
  const table = tables.items.find((each) => sameName(each.name, name));
  if (table === undefined) return false;
  const columns = table.columns.load("items/name");
  const body = table.getDataBodyRange().load("values,formulas");
  await context.sync();
  const cells = rows.map((row) =>
    rowCells(
      name,
      columns.items.map((column) => column.name),
      row,
    ),
  );
  return cells.length > 0 && placeOfRows(enteredIn(body).slice(-cells.length), cells) === 0;
}

/** The cells of a block, `null` where Excel works out a formula. */
export const enteredIn = ({ values, formulas }: Excel.Range): (Cell | null)[][] =>
  (values as Cell[][]).map((row, down) => row.map((value, across) => (isFormula(formulas[down]?.[across], value) ? null : value)));

/** Where some rows stand together among others, counted from 0; `null` where they do not. What was left to Excel is blank or a formula. */
export function placeOfRows(among: readonly (readonly (Cell | null)[])[], rows: AddedRows["cells"]): number | null {
  const isSame = (found: Cell | null, cell: Cell | null) =>
    cell === null ? found === null || found === "" : found !== null && sameCell(found, cell);
  const stands = (at: number) => rows.every((row, index) => row.every((cell, column) => isSame(among[at + index]?.[column] ?? null, cell)));
  const place = Array.from({ length: Math.max(0, among.length - rows.length + 1) }, (_, at) => at).find(stands);
  return place ?? null;
}
