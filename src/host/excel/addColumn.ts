import { cellName } from "../address";
import { sameName } from "../sheetNames";
import { HostError, type NewColumn } from "../workbookHost";
import type { Supports } from "./supports";
import { asTyped } from "./typed";

/**
 * Adds a column at the right end of a table, in one round trip after three that read. The cells are filled first and the table
 * is then drawn over them (ExcelApi 1.13): what Excel inserts would push aside what stands further right.
 *
 * @throws HostError before anything is written: `unsupported` before ExcelApi 1.13, `missing` for a table or row that is not
 * there, `protected`, `failed` where something stands in the way
 */
export async function addColumn(context: Excel.RequestContext, { table: name, heading, numberFormat = "General", cells }: NewColumn, supports: Supports, goOn: () => void): Promise<void> {
  const tables = context.workbook.tables.load("items/name,items/showHeaders");
  await context.sync();
  const table = tables.items.find((each) => sameName(each.name, name));
  if (table === undefined) throw new HostError("missing", `There is no table named ${name} in this workbook.`);
  if (!supports("1.13")) throw new HostError("unsupported", `This version of Excel cannot widen a table for us. Type ${heading} right beside the last heading of ${name}.`);
  if (!table.showHeaders) throw new HostError("failed", `The table ${name} shows no headings. Turn its header row on first.`);
  const columns = table.columns.load("items/name");
  const area = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  const body = table.getDataBodyRange().load("rowCount");
  const sheet = table.worksheet.load("name,protection/protected");
  await context.sync();
  if (columns.items.some((each) => sameName(each.name, heading))) throw new HostError("failed", `The table ${name} has a column ${heading} already.`);
  for (const row of cells.keys()) if (row < 1 || row > body.rowCount) throw new HostError("missing", `The table ${name} has no row ${row}.`);
  if (sheet.protection.protected) throw new HostError("protected", `The sheet ${sheet.name} is protected, so no column can be added to ${name}. Unprotect it, then try again.`);
  const { rowIndex: top, columnIndex: left, rowCount, columnCount } = area;
  const beside = sheet.getRangeByIndexes(top, left + columnCount, rowCount, 1).load("formulas");
  await context.sync();
  const taken = (beside.formulas as unknown[][]).findIndex(([cell]) => cell !== "");
  if (taken >= 0) throw new HostError("failed", `Something stands right of the table ${name} (${cellName({ row: top + taken, column: left + columnCount })}). Move it, so that the table can have another column.`);
  goOn();
  sheet.getRangeByIndexes(top, left + columnCount, 1, 1).values = [[asTyped(heading)]];
  const rows = sheet.getRangeByIndexes(top + 1, left + columnCount, body.rowCount, 1);
  rows.numberFormat = Array.from({ length: body.rowCount }, () => [numberFormat]);
  if (cells.size > 0) rows.values = Array.from({ length: body.rowCount }, (_, index) => [asTyped(cells.get(index + 1) ?? "")]);
  table.resize(`${cellName({ row: top, column: left })}:${cellName({ row: top + rowCount - 1, column: left + columnCount })}`);
  await context.sync();
}
