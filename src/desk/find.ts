/** A text looked for in all tables and sheets, from the place where somebody is. */
import { contains, type At } from "../host/address";
import type { GridBook } from "./gridBook";
import type { View } from "./views";

/** A place that holds the text: number `index` of `count`, counted in the order of the rail. */
export type FoundCell = { readonly view: View; readonly at: At; readonly index: number; readonly count: number };

/** The next place that holds a text, or the one before; round at the ends. `null` where none does. */
export function found(
  book: GridBook,
  views: readonly View[],
  text: string,
  from: { readonly view: string; readonly at: At },
  by: 1 | -1,
): FoundCell | null {
  const wanted = text.trim().toLowerCase();
  if (wanted === "") return null;
  const places = views.flatMap((view) => placesIn(book, views, view, wanted));
  const order = (view: string) => views.findIndex(({ id }) => id === view);
  const isAfter = (place: Place) => compare(order(place.view.id), order(from.view), place.at, from.at);
  const next = by === 1 ? places.findIndex((place) => isAfter(place) > 0) : places.findLastIndex((place) => isAfter(place) < 0);
  const index = next >= 0 ? next : by === 1 ? 0 : places.length - 1;
  const place = places[index];
  return place === undefined ? null : { ...place, index: index + 1, count: places.length };
}

type Place = { readonly view: View; readonly at: At };

const compare = (view: number, otherView: number, at: At, other: At): number =>
  view - otherView || at.row - other.row || at.column - other.column;

function placesIn(book: GridBook, views: readonly View[], view: View, wanted: string): Place[] {
  const { first, name, used, table } = view;
  const bottom = Math.max(used.rows - 1, table?.block.bottom ?? 0);
  const right = table === null ? used.columns - 1 : table.block.right;
  // A cell of a table that is shown alone is found there, and not once more on the sheet that is shown as a whole.
  const elsewhere =
    table !== null
      ? []
      : views.flatMap((other) => (other.table !== null && other.name === name ? [{ ...other.table.block, top: other.first.row }] : []));
  const places: Place[] = [];
  for (let row = first.row; row <= bottom; row += 1) {
    for (let column = first.column; column <= right; column += 1) {
      const at = { row, column };
      if (elsewhere.some((block) => contains(block, at))) continue;
      if (book.cell(name, at).text.toLowerCase().includes(wanted)) places.push({ view, at });
    }
  }
  return places;
}
