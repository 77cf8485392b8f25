/** What is selected, as the table Matches wants it. */
import { areaName, columnName, lastColumn, lastRow, quotedSheet, type Block } from "../../address";
import { blockOf } from "../../blockOf";
import { sameName } from "../../sheetNames";
import { bookOf } from "../book";
import { usedPart } from "./content";
import { dataOf, sheetNamed, valueIn, type State } from "../state";

export type Picked = { readonly sheet: string; readonly area: Block };

/** `'My counts'!B2:C40`, `Sheet1!B:C` for whole columns, `Sheet1!2:9` for whole rows. */
export function addressOf({ sheet, area }: Picked): string {
  const { top, left, bottom, right } = area;
  const isWholeColumns = top === 0 && bottom === lastRow;
  const isWholeRows = left === 0 && right === lastColumn;
  const cells = isWholeColumns ? `${columnName(left)}:${columnName(right)}` : isWholeRows ? `${top + 1}:${bottom + 1}` : areaName(area);
  return `${quotedSheet(sheet)}!${cells}`;
}

/** The block that is meant by what is selected: whole columns and rows as they are, else with its headings in the first row. */
export function blockPicked(state: State, picked: Picked): Picked {
  const { sheet, area } = picked;
  if (area.bottom === lastRow || area.right === lastColumn) return picked;
  const data = dataOf(state, sheetNamed(state, sheet).part);
  return { sheet, area: blockOf(area, data.rows.used(), (at) => valueIn(data, at)) };
}

/** The first row of the selected part that is in use. */
export function headingsOf(state: State, { sheet, area }: Picked): readonly string[] {
  const data = dataOf(state, sheetNamed(state, sheet).part);
  const used = usedPart(data, area);
  return used === null
    ? []
    : Array.from({ length: used.right - used.left + 1 }, (_, index) => String(valueIn(data, { row: used.top, column: used.left + index })));
}

/** The same cells of other sheets that can be seen, where their first row in use stands at the same place and says the same. */
export function alikeRanges(state: State, { sheet, area }: Picked): readonly string[] {
  const says = (name: string): string | null => {
    const data = dataOf(state, sheetNamed(state, name).part);
    const used = usedPart(data, area);
    if (used === null) return null;
    const cells = Array.from({ length: used.right - used.left + 1 }, (_, index) =>
      String(valueIn(data, { row: used.top, column: used.left + index })).trim(),
    );
    return JSON.stringify([used.top, used.left, ...cells]);
  };
  const { sheets } = bookOf(state.parts);
  const wanted = sheets.some(({ name }) => sameName(name, sheet)) ? says(sheet) : null;
  return sheets
    .filter(({ name, hidden }) => !hidden && !sameName(name, sheet) && wanted !== null && says(name) === wanted)
    .map(({ name }) => addressOf({ sheet: name, area }));
}
