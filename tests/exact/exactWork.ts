/** Which field a row of work concerns and with how much of it, and what done rows leave of planned ones. */
import type { IsoDate, Target } from "../../src/core/row";
import type { Application, Field, Operation, Season } from "../../src/core/season";
import { compare, divided, larger, minus, one, read, smaller, times, total, zero, type Fraction } from "./fraction";

/** What one row does in one field: `part` is the field's part of the row, `extent` its acres times passes there. */
export type Work<Row> = { readonly row: Row; readonly field: string; readonly part: Fraction; readonly extent: Fraction };

type WorkRow = Application | Operation;

const areaOf = (field: Field): Fraction => read(field.area);
const concerned = (fields: readonly Field[], target: Target): readonly Field[] =>
  fields.filter((field) => ("field" in target ? field.name === target.field : field.crop === target.crop));

/** The works of some rows. A row of a crop goes to all its fields; an area said on it is spread by theirs. */
export const worksOf = <Row extends WorkRow>(rows: readonly Row[], { fields }: Season): readonly Work<Row>[] =>
  rows.flatMap((row) => {
    const places = concerned(fields, row.target);
    const acres = total(places.map(areaOf));
    const said = row.area === null ? acres : read(row.area);
    const passes = "passes" in row ? read(row.passes) : one;
    return places.map((field) => {
      const part = divided(areaOf(field), acres);
      return { row, field: field.name, part, extent: times(said, part, passes) };
    });
  });

const before = (a: IsoDate | null, b: IsoDate | null): number => {
  if (a === b) return 0;
  if (a === null) return 1;
  if (b === null) return -1;
  return a < b ? -1 : 1;
};

/**
 * What is left of planned works of one item or operation in one field when the acre-passes done of it are taken off,
 * the oldest first, those without a date last: each work with its part and extent made smaller.
 */
export function leftOf<Row extends WorkRow>(planned: readonly Work<Row>[], done: readonly Work<Row>[]): readonly Work<Row>[] {
  let toTakeOff = total(done.map(({ extent }) => extent));
  return [...planned].sort((a, b) => before(a.row.date, b.row.date)).map((work) => {
    const taken = smaller(work.extent, toTakeOff);
    toTakeOff = larger(minus(toTakeOff, taken), zero);
    const kept = compare(work.extent, zero) > 0n ? divided(minus(work.extent, taken), work.extent) : zero;
    return { ...work, part: times(work.part, kept), extent: times(work.extent, kept) };
  });
}
