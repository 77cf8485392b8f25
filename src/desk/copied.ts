/** What was copied in this page, so that pasting it here keeps formulas and every digit, which a text of what is shown does not. */
import type { Block, At } from "../host/address";
import type { GridBook } from "./gridBook";
import { moveFormula } from "../host/embedded/formula/moveFormula";
import { writeTsv } from "./tsv";

/** `text` is what other programs get: the cells as shown. `entriesAt` is what goes into cells from a place of this workbook on. */
export type Copied = { readonly text: string; readonly entriesAt: (to: At) => string[][] };

/** A block as it is now, without rows that are out of sight; later changes to its cells do not change what was copied. */
export function copied(book: GridBook, sheet: string, block: Block, isInSight: (row: number) => boolean = () => true): Copied {
  const numbers = Array.from({ length: block.bottom - block.top + 1 }, (_, index) => block.top + index).filter(isInSight);
  const rows = numbers.map((row) =>
    Array.from({ length: block.right - block.left + 1 }, (_, column) => book.cell(sheet, { row, column: block.left + column })),
  );
  return {
    text: writeTsv(rows.map((row) => row.map(({ text }) => text))),
    entriesAt: (to) => {
      const columns = to.column - block.left;
      return rows.map((row, index) =>
        row.map(({ entry, isFormula }) => (isFormula ? moveFormula(entry, { rows: to.row + index - numbers[index]!, columns }) : entry)),
      );
    },
  };
}
