/** Cell addresses of the test workbook. Written apart from the product's own, so that one mistake cannot hide in both. */
import { HostRefusal } from "./hostRefusal";
import type { Block, SheetModel } from "./workbookModel";

const allRows = 1_048_576;
const allColumns = 16_384;

export function letters(column: number): string {
  let text = "";
  for (let left = column + 1; left > 0; left = Math.floor((left - 1) / 26)) text = String.fromCharCode(65 + ((left - 1) % 26)) + text;
  return text;
}

const columnNumber = (text: string) => [...text.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** A block from `B2`, `B2:D9`, `B:D` or `2:9`, with or without dollar signs. */
export function blockAt(sheet: SheetModel, address: string): Block {
  const found = /^([A-Z]{0,3})(\d*)(?::([A-Z]{0,3})(\d*))?$/i.exec(address.replaceAll("$", ""));
  if (!found || found[0] === "") throw new HostRefusal("InvalidArgument", `${address} is not the address of a range`);
  const [, left = "", top = "", right = left, bottom = top] = found;
  const row = top === "" ? 0 : Number(top) - 1;
  const column = left === "" ? 0 : columnNumber(left);
  const lastRow = bottom === "" ? allRows - 1 : Number(bottom) - 1;
  const lastColumn = right === "" ? allColumns - 1 : columnNumber(right);
  if (row < 0 || lastRow >= allRows || lastColumn >= allColumns)
    throw new HostRefusal("InvalidArgument", `${address} is outside the sheet`);
  return { sheet, row, column, rows: lastRow - row + 1, columns: lastColumn - column + 1 };
}

/** `B2:D9` or, for one cell, `B2`; whole columns `B:D`. */
export function rangeAddress({ row, column, rows, columns }: Omit<Block, "sheet">): string {
  if (rows === allRows) return `${letters(column)}:${letters(column + columns - 1)}`;
  if (columns === allColumns) return `${row + 1}:${row + rows}`;
  const first = letters(column) + String(row + 1);
  return rows === 1 && columns === 1 ? first : `${first}:${letters(column + columns - 1)}${row + rows}`;
}

/** With its sheet, quoted where Excel quotes: `'My counts'!B2`. */
export function fullAddress(block: Block): string {
  const { name } = block.sheet;
  const sheet = /^[A-Za-z_][\w.]*$/.test(name) ? name : `'${name.replaceAll("'", "''")}'`;
  return `${sheet}!${rangeAddress(block)}`;
}
