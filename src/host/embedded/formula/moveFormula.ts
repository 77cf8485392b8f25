/** Formulas copied from one cell to another. */
import { columnName, columnNumber } from "../../../workbook/cellName";

/** Rows and columns from the cell a formula was copied from to the one it goes to. */
export type Moved = { readonly rows: number; readonly columns: number };

/**
 * The formula with its relative cell references moved along, those with `$` left alone, as pasting does. A reference that
 * would leave the sheet becomes `#REF!`. Texts, sheet names in quotes, table references in brackets, functions and names stay.
 */
export function moveFormula(formula: string, by: Moved): string {
  return formula.replace(parts, (part: string, column?: string, row?: string) => {
    if (column === undefined || row === undefined) return part;
    const movedColumn = column.startsWith("$") ? column : columnMoved(column, by.columns);
    const movedRow = row.startsWith("$") ? row : rowMoved(row, by.rows);
    return movedColumn === null || movedRow === null ? "#REF!" : movedColumn + movedRow;
  });
}

/** Texts, quoted sheet names, bracketed table references (one level within another), words that only contain a reference, references. */
const parts = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:[^[\]]|\[[^\]]*\])*\]|(\$?[A-Za-z]{1,3})(\$?\d{1,7})(?![\w.(!])|[\w.$]+/g;

function columnMoved(name: string, by: number): string | null {
  const column = columnNumber(name) + by;
  return column < 0 || column >= 16_384 ? null : columnName(column);
}

function rowMoved(row: string, by: number): string | null {
  const moved = Number(row) + by;
  return moved < 1 || moved > 1_048_576 ? null : String(moved);
}
