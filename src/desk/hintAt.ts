import type { At } from "../host/address";
import { columnHint } from "../workbook/columnHints";
import type { GridBook, DeskSheet } from "./gridBook";
import { tableAt } from "./tableAt";

/** What to enter in a cell of one of our tables, or right under one, where its next row is begun; empty elsewhere. */
export function hintAt(book: GridBook, sheet: DeskSheet, at: At): string {
  const table = tableAt(sheet, at);
  if (table === undefined || table.headingRow === null) return "";
  return columnHint(table.name, book.cell(sheet.name, { row: table.headingRow, column: at.column }).text);
}
