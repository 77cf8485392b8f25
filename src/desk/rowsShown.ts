/** Which entries of a table are shown: a filter hides some from sight and changes no figure. */
import type { At } from "../host/address";
import type { GridBook } from "./gridBook";
import { extentOf, type View } from "./views";

/** Entries that hold the text, in one column or in any. Entries typed after the filter was set stay in sight. */
export type Filter = { readonly text: string; readonly column: number | null; readonly lastRow: number };

/** The rows in sight, in order, with the one to go on with; `null` where all are. */
export function rowsShown(book: GridBook, view: View, filter: Filter | undefined, active: At): readonly number[] | null {
  const { table, first, name } = view;
  if (table === null || filter === undefined) return null;
  const wanted = filter.text.toLowerCase();
  const columns =
    filter.column === null
      ? Array.from({ length: table.block.right - table.block.left + 1 }, (_, index) => table.block.left + index)
      : [filter.column];
  const holds = (row: number) => columns.some((column) => book.cell(name, { row, column }).text.toLowerCase().includes(wanted));
  const rows = [];
  for (let row = first.row; row < extentOf(view, [active]).rows; row += 1) {
    if (row > Math.min(filter.lastRow, table.block.bottom) || row === active.row || holds(row)) rows.push(row);
  }
  return rows;
}

/** How many entries of the table are in sight and hidden. */
export function countShown({ table, first }: View, rows: readonly number[]): { readonly shown: number; readonly hidden: number } {
  const all = table === null ? 0 : table.block.bottom - first.row + 1;
  const shown = rows.filter((row) => table !== null && row <= table.block.bottom).length;
  return { shown, hidden: all - shown };
}
