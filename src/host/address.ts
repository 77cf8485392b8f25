/** A1 addresses. Rows and columns count from 0 here. */
import { cellName, columnName, columnNumber } from "../workbook/cellName";

export { cellName, columnName, columnNumber };

/** A cell of a sheet. */
export type At = { readonly row: number; readonly column: number };
/** A block of cells, its corners included. */
export type Block = { readonly top: number; readonly left: number; readonly bottom: number; readonly right: number };

export const lastRow = 1_048_575;
export const lastColumn = 16_383;

/** `B4` for one cell, `B4:D9` for a block of more. */
export const areaName = ({ top, left, bottom, right }: Block): string =>
  top === bottom && left === right
    ? cellName({ row: top, column: left })
    : `${cellName({ row: top, column: left })}:${cellName({ row: bottom, column: right })}`;

/** `A1`, `$B$2:C9`, `B:C` or `2:5`; `null` where it is none of them. Whole columns and rows run to the end of the sheet. */
export function parseArea(text: string): Block | null {
  const bare = text.replaceAll("$", "").trim();
  const cells = /^([A-Za-z]{1,3})(\d{1,7})(?::([A-Za-z]{1,3})(\d{1,7}))?$/.exec(bare);
  if (cells) {
    const [, fromColumn, fromRow, toColumn = fromColumn, toRow = fromRow] = cells as unknown as [string, string, string, string?, string?];
    return ordered(Number(fromRow) - 1, columnNumber(fromColumn), Number(toRow) - 1, columnNumber(toColumn!));
  }
  const columns = /^([A-Za-z]{1,3}):([A-Za-z]{1,3})$/.exec(bare);
  if (columns) return ordered(0, columnNumber(columns[1]!), lastRow, columnNumber(columns[2]!));
  const rows = /^(\d{1,7}):(\d{1,7})$/.exec(bare);
  return rows ? ordered(Number(rows[1]) - 1, 0, Number(rows[2]) - 1, lastColumn) : null;
}

function ordered(top: number, left: number, bottom: number, right: number): Block | null {
  const area = { top: Math.min(top, bottom), left: Math.min(left, right), bottom: Math.max(top, bottom), right: Math.max(left, right) };
  return area.top >= 0 && area.left >= 0 && area.bottom <= lastRow && area.right <= lastColumn ? area : null;
}

/** `'My counts'!B2:C4` in its sheet and its area; the sheet is `null` where none is named. */
export function splitSheet(text: string): { readonly sheet: string | null; readonly area: string } {
  const quoted = /^'((?:[^']|'')+)'!(.+)$/.exec(text.trim());
  if (quoted) return { sheet: quoted[1]!.replaceAll("''", "'"), area: quoted[2]! };
  const plain = /^([^'!]+)!(.+)$/.exec(text.trim());
  return plain ? { sheet: plain[1]!, area: plain[2]! } : { sheet: null, area: text.trim() };
}

/**
 * Sheet and range of an address such as `'My counts'!B2:C40`, `Sheet1!B:C` or `Sheet1!$A$1`, the range without dollars.
 *
 * @returns null where it is no such address, or lies outside what a sheet has, because Excel fails the whole batch for it
 */
export function rangeOnSheet(address: string): { readonly sheet: string; readonly range: string } | null {
  const { sheet, area } = splitSheet(address);
  return sheet === null || parseArea(area) === null ? null : { sheet, range: area.replaceAll("$", "").trim().toUpperCase() };
}

/** The smallest area that holds both cells. */
export const areaOf = (one: At, other: At): Block => ({
  top: Math.min(one.row, other.row),
  left: Math.min(one.column, other.column),
  bottom: Math.max(one.row, other.row),
  right: Math.max(one.column, other.column),
});

/** A sheet's name as formulas and addresses write it. */
export const quotedSheet = (name: string): string =>
  /^[A-Za-z_][A-Za-z0-9_.]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name) && !/^[RrCc]\d*$/.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;

/** Whether the cell lies in the area. */
export const contains = ({ top, left, bottom, right }: Block, { row, column }: At): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;
