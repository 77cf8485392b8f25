/** What a cell offers while somebody types into it. */
import type { At } from "../host/address";
import type { GridBook, DeskSheet, GridTable } from "./gridBook";
import { tableAt } from "./tableAt";

/**
 * `list`: the cell's own drop-down list, and what is not in it gets a remark. `names`: the names that another table of
 * the workbook gives, such as the items in *Items*. `earlier`: words of the same column. A list and names complete what
 * can only mean one of them; earlier words must be picked.
 */
export type Offer = { readonly kind: "list" | "names" | "earlier"; readonly words: readonly string[] };

/** More of a column is not looked through. */
const mostRows = 2_000;

/** What the cell offers; no words where there is nothing to offer. */
export function offerAt(book: GridBook, sheet: DeskSheet, at: At): Offer {
  const listed = book.choices(sheet.name, at);
  if (listed.length > 0) return { kind: "list", words: listed };
  const table = tableAt(sheet, at);
  if (table === undefined || table.headingRow === null || at.row === table.headingRow) return { kind: "earlier", words: [] };
  const heading = headingAt(book, sheet, table, at.column);
  const names = distinct(heading.split(/\s+or\s+/).flatMap((word) => namesOf(book, word, table)));
  if (names.length > 0) return { kind: "names", words: names };
  return { kind: "earlier", words: distinct(columnTexts(book, sheet.name, table, at.column, at.row)) };
}

const headingAt = (book: GridBook, sheet: DeskSheet, { headingRow }: GridTable, column: number): string =>
  headingRow === null ? "" : book.cell(sheet.name, { row: headingRow, column }).text.trim().toLowerCase();

/** The names in the column *Item* of a table *Items*, and likewise for fields, crops and machines; none in that table itself. */
function namesOf(book: GridBook, word: string, from: GridTable): string[] {
  for (const sheet of book.sheets()) {
    const table = sheet.tables.find(({ name }) => name !== from.name && name.toLowerCase() === `${word}s`);
    if (table === undefined) continue;
    const { left, right } = table.block;
    for (let column = left; column <= right; column += 1) {
      if (headingAt(book, sheet, table, column) === word) return columnTexts(book, sheet.name, table, column, null);
    }
  }
  return [];
}

/** The texts of a column, newest first for one's own column (`except` is the row being typed in), else in order. */
function columnTexts(book: GridBook, sheet: string, { block, headingRow }: GridTable, column: number, except: number | null): string[] {
  const first = Math.max((headingRow ?? block.top - 1) + 1, block.bottom - mostRows);
  const texts: string[] = [];
  for (let row = first; row <= block.bottom; row += 1) {
    const cell = row === except ? null : book.cell(sheet, { row, column });
    if (cell?.kind === "text" && !cell.isFormula) texts.push(cell.text.trim());
  }
  return except === null ? texts : texts.reverse();
}

const distinct = (words: readonly string[]): string[] => [...new Map(words.map((word) => [word.toLowerCase(), word])).values()];
