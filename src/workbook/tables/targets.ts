/** Which field or crop a row of work belongs to. */
import { sum, type Decimal } from "../../core/numbers/decimal";
import type { Target } from "../../core/row";
import type { Field } from "../../core/season";
import type { Named } from "../columns/column";
import { placeColumns } from "../columns/shared";
import type { Subject } from "../problem";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest, plain } from "../words";

/** The fields and crops by name, and their areas. */
export class TargetPlaces {
  private readonly areas = new Map<string, Decimal>();
  /** What each text was found to stand for: thousands of rows name a few fields. */
  private readonly found = new Map<string, Target | null>();

  constructor(
    readonly fieldNames: Names,
    readonly cropNames: Names,
    fields: readonly Field[],
  ) {
    for (const field of fields) this.areas.set(`field ${field.name}`, field.area);
    for (const crop of cropNames.all)
      this.areas.set(`crop ${crop}`, sum(fields.filter((field) => field.crop === crop).map((field) => field.area)));
  }

  areaOf(target: Target): Decimal | null {
    return this.areas.get("field" in target ? `field ${target.field}` : `crop ${target.crop}`) ?? null;
  }

  /** Whether the row that defines the name is at fault itself. */
  isLost(typed: string): boolean {
    return this.fieldNames.isLost(typed) || this.cropNames.isLost(typed);
  }

  /** What a name stands for: a field before a crop of the same name; `null` where it is neither. */
  named(typed: string): Target | null {
    let target = this.found.get(typed);
    if (target === undefined) this.found.set(typed, (target = this.lookedUp(typed)));
    return target;
  }

  private lookedUp(typed: string): Target | null {
    const field = this.fieldNames.spelled(typed);
    if (field !== null) return { field };
    const crop = this.cropNames.spelled(typed);
    return crop === null ? null : { crop };
  }
}

/** The columns in which people name the target, the most usual first. */
const { place, field, crop } = placeColumns({ hint: "" });
const columns = [place, field, crop] as const;

/** The first of them that a table has; the most usual where it has none. */
export const targetColumn = (table: TableReader): Named => columns.find((column) => table.has(column)) ?? place;

/** Notes it where a table has no column for the target; answers whether it has one. */
export const needsTarget = (table: TableReader): boolean => table.needs(targetColumn(table));

/** The target of a row, from one column "Field or Crop" or from two, Field before Crop. */
export function targetOf(row: Row, table: TableReader, places: TargetPlaces): Target | null {
  const typed = typedTarget(row, table);
  return typed === null ? row.lose("target-missing") : matched(row, places, typed);
}

/** The same where a row may name none. */
export function optionalTarget(row: Row, table: TableReader, places: TargetPlaces): Target | null {
  const typed = typedTarget(row, table);
  return typed === null ? null : matched(row, places, typed);
}

type Typed = { readonly column: Named; readonly text: string };

function typedTarget(row: Row, table: TableReader): Typed | null {
  for (const column of columns) {
    const text = table.has(column) ? row.text(column) : null;
    if (text !== null) return { column, text };
  }
  return null;
}

function matched(row: Row, places: TargetPlaces, { column, text }: Typed): Target | null {
  const target = places.named(text);
  if (target !== null) return target;
  if (places.isLost(text)) {
    row.lost = true;
    return null;
  }
  const like = nearest(text, [...places.fieldNames.all, ...places.cropNames.all]);
  return row.lose("unknown-name", column, like === null ? {} : { like });
}

/** What a fault in the row touches; all, where its field and crop cannot be made out. */
export function targetSubjects(row: Row, table: TableReader, places: TargetPlaces): readonly Subject[] {
  const typed = columns
    .filter((column) => table.has(column))
    .map((column) => String(row.cell(column)))
    .find((text) => plain(text) !== "");
  const target = typed === undefined ? null : places.named(typed);
  if (target === null) return [{ of: "farm" }];
  return ["field" in target ? { of: "field", name: target.field } : { of: "crop", name: target.crop }];
}
