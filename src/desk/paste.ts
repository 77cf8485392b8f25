/** Where the cells of a pasted block go. */
import type { Block } from "../host/address";
import type { GridEntry } from "./gridBook";

/**
 * The entries that pasting makes: from the selection's first cell on, or over the whole selection, again and again,
 * where it is a multiple of what is pasted (one price pasted over a column of them).
 */
export function pasted(rows: readonly (readonly string[])[], over: Block): GridEntry[] {
  const height = rows.length;
  const width = rows[0]?.length ?? 0;
  if (height === 0 || width === 0) return [];
  const selectedRows = over.bottom - over.top + 1;
  const selectedColumns = over.right - over.left + 1;
  const repeats = selectedRows % height === 0 && selectedColumns % width === 0;
  const down = repeats ? selectedRows : height;
  const across = repeats ? selectedColumns : width;
  return Array.from({ length: down * across }, (_, index) => {
    const row = Math.floor(index / across);
    const column = index % across;
    return { at: { row: over.top + row, column: over.left + column }, text: rows[row % height]?.[column % width] ?? "" };
  });
}

/** The block that entries fill; `null` for none. */
export function areaOfEntries(entries: readonly GridEntry[]): Block | null {
  const first = entries[0];
  const last = entries.at(-1);
  if (first === undefined || last === undefined) return null;
  return { top: first.at.row, left: first.at.column, bottom: last.at.row, right: last.at.column };
}
