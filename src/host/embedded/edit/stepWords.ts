/** What a step to undo was, in words, and where. */
import type { SheetPlace } from "../../../workbook/cell";
import type { At } from "../../address";
import { cellName, contains } from "../../address";
import { tablesOf } from "../book";
import { dataOf, sheetNamed, valueIn, type State } from "../state";

/** E.g. `Purchases, row 15, Unit price`, and the cell to go to; `null` where it has no place. */
export type StepWords = { readonly words: string; readonly place: SheetPlace | null };

/** The words for entries in cells of a sheet. */
export function entryWords(state: State, sheet: string, cells: readonly At[]): StepWords {
  const first = cells[0]!;
  const { name, part } = sheetNamed(state, sheet);
  const place = { sheet: name, row: first.row, column: first.column };
  const table = tablesOf(state.parts).find(
    (each) => each.sheet === name && contains({ ...each.area, bottom: each.area.bottom + 1 }, first),
  );
  const on = table === undefined ? name : table.name.replaceAll("_", " ");
  const rows = cells.map(({ row }) => row);
  const [top, bottom] = [rows.reduce((one, other) => Math.min(one, other)), rows.reduce((one, other) => Math.max(one, other))];
  if (cells.length > 1)
    return {
      words:
        `${cells.length.toLocaleString("en-US")} cells of ${on}, ` +
        `${top === bottom ? `row ${top + 1}` : `rows ${top + 1} to ${bottom + 1}`}`,
      place,
    };
  if (table === undefined) return { words: `${name}, ${cellName(first)}`, place };
  const heading = String(valueIn(dataOf(state, part), { row: table.area.top, column: first.column }));
  return { words: `${on}, row ${first.row + 1}${heading === "" ? "" : `, ${heading}`}`, place };
}
