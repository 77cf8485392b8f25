/** Cells of a sheet by row and column, both counted from 0, and the names people know them by. */

/** A cell of a sheet; rows and columns count from 0. */
export type CellAt = { readonly row: number; readonly column: number };

/** A block of cells, its edges included. */
export type Block = { readonly top: number; readonly left: number; readonly bottom: number; readonly right: number };

/** `A` for 0, `Z` for 25, `AA` for 26. */
export function columnName(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnName(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
}

/** `B4` for row 3, column 1. */
export const cellName = ({ row, column }: CellAt): string => `${columnName(column)}${row + 1}`;

/** `B4` for one cell, `B4:D9` for a block of more. */
export function blockName({ top, left, bottom, right }: Block): string {
  const first = cellName({ row: top, column: left });
  return top === bottom && left === right ? first : `${first}:${cellName({ row: bottom, column: right })}`;
}

/** The smallest block that holds both cells. */
export const blockOf = (one: CellAt, other: CellAt): Block => ({
  top: Math.min(one.row, other.row), left: Math.min(one.column, other.column),
  bottom: Math.max(one.row, other.row), right: Math.max(one.column, other.column),
});

/** Whether the cell lies in the block. */
export const isIn = ({ row, column }: CellAt, block: Block): boolean =>
  row >= block.top && row <= block.bottom && column >= block.left && column <= block.right;
