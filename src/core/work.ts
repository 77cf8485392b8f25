/** Field work row by row: which part of a row falls to which field, and what is left of the plan. */
import { one, sum, zero, type Decimal } from "./decimal";
import type { EntryRef, IsoDate, Target } from "./row";
import type { Field, Status } from "./season";
import { Tally } from "./tally";
import { area, type Area } from "./units";

/** What all rows of field work have in common. */
export type WorkRow = {
  readonly target: Target;
  /** `null`: the whole target. */
  readonly area: Area | null;
  readonly date: IsoDate | null;
  readonly status: Status;
  readonly source: EntryRef;
};

/** The part of one row that falls to one field. */
export type Work<Row extends WorkRow> = {
  readonly row: Row;
  /** Area worked, once for each pass. */
  readonly areaPasses: Area;
  /** The fraction of the whole row, for what is given for the row as a whole. */
  readonly part: Decimal;
};

/** The work of one item or one operation in one field, in the order of the table, and what is left of its plan. */
export type FieldWork<Row extends WorkRow> = {
  /** All that was planned. */
  readonly planned: readonly Work<Row>[];
  /** Done for this crop. */
  readonly done: readonly Work<Row>[];
  /** Planned for this crop and still to be done. */
  readonly left: readonly Work<Row>[];
  /** Planned for this crop, done or still to be done: what was never done is not among it. */
  readonly due: readonly Work<Row>[];
  /** Planned, and not done by the last load; none before the harvest is done. */
  readonly neverDone: readonly Work<Row>[];
  /** Worked or to be worked after the last load, for the next crop: paid this season, and in no cost of it. */
  readonly next: Pick<FieldWork<Row>, "planned" | "done" | "left">;
};

const nothing: readonly never[] = [];
const nothingNext = { planned: nothing, done: nothing, left: nothing };

/** What is done, and what is left of the plan. */
export const doneAndLeft = <Row extends WorkRow>({ done, left }: FieldWork<Row>): readonly Work<Row>[] =>
  left.length === 0 ? done : done.length === 0 ? left : [...done, ...left];

/** Work by field and then by what the rows are of. */
export type WorkByField<Row extends WorkRow> = ReadonlyMap<string, ReadonlyMap<string, FieldWork<Row>>>;

/**
 * Gives every row to its fields. A row for a crop goes to all the crop's fields; an area stated on it is spread over
 * them in proportion to theirs.
 *
 * @param subject what the row is of: the item, or the operation
 * @param passes how often the row goes over its area
 */
export function workByField<Row extends WorkRow>(
  rows: readonly Row[], fields: readonly Field[], subject: (row: Row) => string, passes: (row: Row) => Decimal,
): WorkByField<Row> {
  const byField = new Map<string, Map<string, Worked<Row>>>(fields.map((field) => [field.name, new Map()]));
  const byName = new Map(fields.map((field) => [field.name, [field]]));
  const byCrop = fieldsByCrop(fields);
  for (const row of rows) {
    const targets = ("field" in row.target ? byName.get(row.target.field) : byCrop.get(row.target.crop)) ?? [];
    const whole = targets.length > 1 ? sum(targets.map((field) => field.area)) : null;
    const times = passes(row);
    const name = subject(row);
    for (const field of targets) {
      const part = whole === null ? one : field.area.div(whole);
      const once = row.area === null ? field.area : whole === null ? row.area : row.area.times(part);
      const works = byField.get(field.name)!;
      let work = works.get(name);
      if (work === undefined) works.set(name, (work = newWork()));
      (row.status === "done" ? work.done : work.planned).push({ row, areaPasses: area(times === one || times.eq(one) ? once : once.times(times)), part });
    }
  }
  for (const works of byField.values()) {
    for (const work of works.values()) work.left = workLeft(work.planned, work.done);
  }
  return byField;
}

type Worked<Row extends WorkRow> = Omit<FieldWork<Row>, "planned" | "done" | "left"> & { planned: Work<Row>[]; done: Work<Row>[]; left: readonly Work<Row>[] };

function newWork<Row extends WorkRow>(): Worked<Row> {
  const planned: Work<Row>[] = [];
  return { planned, done: [], left: nothing, due: planned, neverDone: nothing, next: nothingNext };
}

/**
 * What is left of the plan: the area passes done are taken off the planned ones, the oldest date first, rows without a
 * date last, rows of one date in the order of the table.
 */
function workLeft<Row extends WorkRow>(planned: readonly Work<Row>[], done: readonly Work<Row>[]): readonly Work<Row>[] {
  return done.length === 0 || planned.length === 0 ? planned : takeOff(planned, areaOf(done));
}

/** Works with so many area passes taken off, the oldest date first. */
export function takeOff<Row extends WorkRow>(planned: readonly Work<Row>[], areaPasses: Decimal): readonly Work<Row>[] {
  if (areaPasses.isZero()) return planned;
  let taken = areaPasses;
  if (taken.gte(areaOf(planned))) return [];
  const left: Work<Row>[] = [];
  for (const work of [...planned].sort(byDate)) {
    if (taken.isZero()) left.push(work);
    else if (taken.gte(work.areaPasses)) taken = taken.minus(work.areaPasses);
    else {
      const rest = work.areaPasses.minus(taken);
      left.push({ row: work.row, areaPasses: area(rest), part: work.part.times(rest).div(work.areaPasses) });
      taken = zero;
    }
  }
  return left;
}

/** The area passes of some works together. */
export function areaOf(works: readonly Work<WorkRow>[]): Decimal {
  if (works.length === 1) return works[0]!.areaPasses;
  const tally = new Tally();
  for (const { areaPasses } of works) tally.add(areaPasses);
  return tally.total();
}

export function fieldsByCrop(fields: readonly Field[]): ReadonlyMap<string, readonly Field[]> {
  const byCrop = new Map<string, Field[]>();
  for (const field of fields) {
    const others = byCrop.get(field.crop);
    if (others === undefined) byCrop.set(field.crop, [field]);
    else others.push(field);
  }
  return byCrop;
}

function byDate<Row extends WorkRow>(a: Work<Row>, b: Work<Row>): -1 | 0 | 1 {
  if (a.row.date === b.row.date) return 0;
  if (a.row.date === null) return 1;
  if (b.row.date === null) return -1;
  return a.row.date < b.row.date ? -1 : 1;
}
