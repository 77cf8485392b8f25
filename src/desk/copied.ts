/** What was copied in this page, so that pasting it here keeps formulas and every digit, which a text of what is shown does not. */
import type { Area, At } from "../host/address";
import type { GridBook } from "./gridBook";
import { moveFormula } from "../host/embedded/moveFormula";
import { writeTsv } from "./tsv";

/** `text` is what other programs get: the cells as shown. `entriesAt` is what goes into cells from a place of this workbook on. */
export type Copied = { readonly text: string; readonly entriesAt: (to: At) => string[][] };

/** A block as it is now; later changes to its cells do not change what was copied. */
export function copied(book: GridBook, sheet: string, block: Area): Copied {
  const rows = Array.from({ length: block.bottom - block.top + 1 }, (_, row) =>
    Array.from({ length: block.right - block.left + 1 }, (_, column) => book.cell(sheet, { row: block.top + row, column: block.left + column })));
  return {
    text: writeTsv(rows.map((row) => row.map(({ text }) => text))),
    entriesAt: (to) => {
      const by = { rows: to.row - block.top, columns: to.column - block.left };
      return rows.map((row) => row.map(({ entry, isFormula }) => (isFormula ? moveFormula(entry, by) : entry)));
    },
  };
}
