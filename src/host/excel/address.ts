/** Addresses of ranges as Excel writes them. Rows and columns count from 0. */

const lastRow = 1_048_576;
const lastColumn = 16_384;

/** `A` for 0, `AA` for 26. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? columnLetters(rest - 1) : "") + String.fromCharCode(65 + (column % 26));
}

/** `B3` for row 2, column 1. */
export const cellAddress = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/**
 * Sheet and range of an address such as `'My counts'!B2:C40`, `Sheet1!B:C` or `Sheet1!$A$1`.
 *
 * @returns null where it is no such address, or lies outside what a sheet has, because Excel fails the whole batch for it
 */
export function splitAddress(address: string): { readonly sheet: string; readonly range: string } | null {
  const found = /^\s*(?:'((?:[^']|'')+)'|([^'!]+))!\s*(\S+)\s*$/.exec(address);
  const sheet = found?.[1]?.replaceAll("''", "'") ?? found?.[2];
  const range = found?.[3]?.replaceAll("$", "").toUpperCase();
  if (sheet === undefined || range === undefined || !isRange(range)) return null;
  return { sheet, range };
}

function isRange(range: string): boolean {
  const corners = range.split(":");
  const shapes = [/^[A-Z]{1,3}\d{1,7}$/, ...(corners.length === 2 ? [/^[A-Z]{1,3}$/, /^\d{1,7}$/] : [])];
  return corners.length <= 2 && shapes.some((shape) => corners.every((corner) => shape.test(corner) && isInside(corner)));
}

function isInside(corner: string): boolean {
  const letters = /^[A-Z]*/.exec(corner)?.[0] ?? "";
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  const row = Number(corner.slice(letters.length) || "1");
  return column <= lastColumn && row >= 1 && row <= lastRow;
}
