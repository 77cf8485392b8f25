/**
 * What fills a column of a matched range in every row, such as the field that a sheet is about: the sheet's name, or a cell
 * beside the range.
 */
import type { RawTable } from "./cell";
import { plain } from "./words";

/** A text of the match itself; else the address of a cell on the sheet, `null` for the name of the sheet. */
export type Constant = { readonly text: string } | { readonly cell: string | null };

export const sheetNameWords = "(sheet name)";
const alwaysPattern = /^\(always\s+(.*\S)\s*\)$/i;
const cellPattern = /^\(cell \$?([a-z]{1,3})\$?(\d{1,7})\)$/i;

/** What the table Matches says in its column Heading: `(sheet name)`, `(cell B1)`, `(always whole)`; `null` for a heading. */
export function constantSaid(typed: string): Constant | null {
  if (plain(typed) === plain(sheetNameWords)) return { cell: null };
  const text = alwaysPattern.exec(typed.trim())?.[1];
  if (text !== undefined) return { text };
  const [, column, row] = cellPattern.exec(typed.trim()) ?? [];
  return column === undefined ? null : { cell: `${column.toUpperCase()}${row}` };
}

export const alwaysWords = (text: string): string => `(always ${text})`;

export const cellWords = (cell: string): string => `(cell ${cell})`;

/** The heading under which the text stands among those of the range; nobody's own. */
export const constantHeading = (column: string): string => `the sheet says: ${column}`;

/** The address of a cell on the sheet of a range; a range without one has none beside it. */
export const cellBeside = (range: string, cell: string): string => {
  const end = range.lastIndexOf("!");
  return end < 0 ? "" : `${range.slice(0, end)}!${cell}`;
};

/** What a workbook has to be asked for besides its matched ranges: the cells beside them. */
export const cellsBeside = (rows: readonly { readonly range: string; readonly heading: string }[]): readonly string[] =>
  rows.flatMap(({ range, heading }) => {
    const constant = constantSaid(heading);
    const cell = constant !== null && "cell" in constant ? constant.cell : null;
    return cell === null || cellBeside(range, cell) === "" ? [] : [cellBeside(range, cell)];
  });

/** @param said what a cell beside the range says */
export function withConstants(found: RawTable, constants: ReadonlyMap<string, Constant>, said: (cell: string) => string): RawTable {
  if (constants.size === 0) return found;
  const texts = [...constants.values()].map((constant) =>
    "text" in constant ? constant.text : constant.cell === null ? found.body.sheet : said(constant.cell),
  );
  const add = <Row extends { readonly cells: RawTable["rows"][number] }>(row: Row): Row => ({ ...row, cells: [...row.cells, ...texts] });
  return {
    ...found,
    headers: [...found.headers, ...[...constants.keys()].map(constantHeading)],
    rows: found.rows.map((cells) => (cells.every((cell) => cell === "") ? cells : [...cells, ...texts])),
    made: texts.map((_, index) => found.headers.length + index),
    ...(found.below !== undefined && { below: found.below.map(add) }),
  };
}
