/** What a cell For names: a field, a crop for all its fields, or all. */
import type { BudgetLine } from "../../core/season";
import type { Column } from "../columns/column";
import type { Row } from "../tableRow";
import { nearest } from "../words";
import type { Places } from "./targets";

const allWords = /^(all|farm|whole farm|all fields|all land)$/i;

/** @returns `null` where nothing has the name, or a crop stands in no field, which is noted */
export function namedTarget(row: Row, column: Column<string>, places: Places): BudgetLine["over"] | null {
  const typed = row.need(column);
  if (typed === null) return null;
  if (allWords.test(typed)) return { all: true };
  const target = places.named(typed);
  if (target !== null) return places.areaOf(target)?.gt("0") === true ? target : row.lose("no-fields", column);
  if (places.isLost(typed)) {
    row.lost = true;
    return null;
  }
  const like = nearest(typed, [...places.fieldNames.all, ...places.cropNames.all]);
  return row.lose("unknown-name", column, like === null ? {} : { like });
}
