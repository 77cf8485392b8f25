/** What a cell For names: a field, a crop for all its fields, or all. */
import type { BudgetLine } from "../../core/season";
import type { Column } from "../columns/column";
import type { Subject } from "../problem";
import type { Row } from "../tableRow";
import { nearest } from "../words";
import type { TargetPlaces } from "./targets";

const allWords = /^(all|farm|whole farm|all fields|all land)$/i;

/** @returns `null` where nothing has the name, or a crop stands in no field, which is noted */
export function namedTarget(row: Row, column: Column<string>, places: TargetPlaces): BudgetLine["over"] | null {
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

/** Whose figures a fault in a row touches that names its target so; all, where it names none or all. */
export function namedSubjects(row: Row, { heading }: Column<string>, places: TargetPlaces): readonly Subject[] {
  return [subjectOver(places.named(String(row.cell(heading)).trim()) ?? { all: true })];
}

/** Whom an entry over something touches. */
export const subjectOver = (over: BudgetLine["over"]): Subject =>
  "all" in over ? { of: "farm" } : "field" in over ? { of: "field", name: over.field } : { of: "crop", name: over.crop };
