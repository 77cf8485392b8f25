/** What stands below tables and matched ranges, which a host hands over beside their own rows. */
import type { Cell, RowBelow } from "../workbook/cell";
import type { Block } from "./address";

/** So many rows are looked at below a block: a sheet that goes on further holds something else. */
const rowsLookedAt = 2_000;

/**
 * The last row that belongs to nothing else, at most so many rows below a block: where another table or range begins in its
 * columns, or goes on past its end, that one has the rows.
 */
export function lastRowBelow(block: Block, others: readonly Block[]): number {
  // A cell alone is what names a field beside a range, and no block that goes on.
  const beside = others.filter(
    ({ top, left, right, bottom }) =>
      (top !== bottom || left !== right) && left <= block.right && right >= block.left && bottom > block.bottom,
  );
  return Math.min(block.bottom + rowsLookedAt, ...beside.map(({ top }) => Math.max(top, block.bottom + 1) - 1));
}

/**
 * Rows with something in them, counted from the last body row.
 *
 * @param first by how many rows the first of them lies below the last body row
 */
export const filledRows = (cells: readonly (readonly Cell[])[], first: number): readonly RowBelow[] =>
  cells.flatMap((row, index) => (row.every((cell) => cell === "") ? [] : [{ by: first + index, cells: row }]));

/** Why a table with a totals row is not drawn over what stands below that. */
export const totalsInTheWay = (table: string): string =>
  `The table ${table} has a totals row, which stands between it and the rows below. Switch the totals row off (or move the rows above ` +
  "it), then try again.";
