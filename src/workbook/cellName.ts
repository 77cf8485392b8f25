/** Cells as a sheet names them. Rows and columns count from 0 here. */
import type { EntryRef } from "../core/row";
import type { SheetPlace } from "./cell";
import type { Place } from "./problem";

/** `A` for 0, `AA` for 26. */
export function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  return name;
}

/** 0 for `A`, 26 for `AA`, in capitals or small letters. */
export function columnNumber(name: string): number {
  let column = 0;
  for (let index = 0; index < name.length; index += 1) column = column * 26 + (name.charCodeAt(index) & 31);
  return column - 1;
}

/** `B4` for row 3, column 1. */
export const cellName = ({ row, column }: { readonly row: number; readonly column: number }): string => `${columnName(column)}${row + 1}`;

/** Says where an entry stands; a `SeasonReading` does. */
export type Places = { readonly placeOf: (place: Place | EntryRef) => SheetPlace | null };

/**
 * The cell of an entry or a problem as the sheet names it, such as "C6", because a row of a table has another number there;
 * of a whole row its first cell. Empty for a table as a whole, and where the workbook has no such cell.
 */
export function cellOf({ placeOf }: Places, place: Place | EntryRef): string {
  const cell = place.row === undefined ? null : placeOf(place);
  if (cell === null) return "";
  return cell.isOwn === true ? `${cell.sheet}!${cellName(cell)}` : cellName(cell);
}
