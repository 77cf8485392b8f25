/** Field work row by row: which part of a row falls to which field, and what is left of the plan. */
import { one, smaller, sum, zero, type Decimal } from "./numbers/decimal";
import type { Application, Field, Operation } from "./season";
import { Tally, tallied } from "./numbers/tally";
import { area, type Area } from "./numbers/units";

/** Rows of field work: they say where, on how much of it, when, and whether it is planned or done. */
export type WorkRow = Application | Operation;

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
  rows: readonly Row[],
  fields: readonly Field[],
  subject: (row: Row) => string,
  passes: (row: Row) => Decimal,
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
      const here = { row, areaPasses: area(times === one || times.eq(one) ? once : once.times(times)), part };
      if (row.status !== "done") work.planned.push(here);
      if (row.status !== "plan") work.done.push(here);
    }
  }
  for (const works of byField.values()) {
    for (const work of works.values()) work.left = takeDone(work.planned, work.done).left;
  }
  return byField;
}

type Worked<Row extends WorkRow> = Omit<FieldWork<Row>, "planned" | "done" | "left"> & {
  planned: Work<Row>[];
  done: Work<Row>[];
  left: readonly Work<Row>[];
};

function newWork<Row extends WorkRow>(): Worked<Row> {
  const planned: Work<Row>[] = [];
  return { planned, done: [], left: nothing, due: planned, neverDone: nothing, next: nothingNext };
}

/**
 * What is left of the plan, and the area passes done beyond all of it. A planned row that was done as it stood is done
 * itself. The area passes of other rows that are done are taken off planned ones: first of those at the same rate or
 * price, whichever came first in the year; then of any, the oldest first.
 */
export function takeDone<Row extends WorkRow>(
  planned: readonly Work<Row>[],
  done: readonly Work<Row>[],
): { readonly left: readonly Work<Row>[]; readonly over: Decimal } {
  if (done.length === 0) return { left: planned, over: zero };
  const open = planned.filter(({ row }) => row.status === "plan");
  const others = done.filter(({ row }) => row.status === "done");
  const [inPlan, taken] = [areaOf(open), areaOf(others)];
  if (taken.gte(inPlan)) return { left: [], over: taken.minus(inPlan) };
  if (open.length === 1) return { left: takeOff(open, taken), over: zero };
  const alike = areasAlike(others);
  const oldest = [...open].sort(byDate);
  const offAlike = oldest.map(({ row, areaPasses }) => takenOff(alike, likeness(row), areaPasses));
  return { left: takeOff(lessened(oldest, offAlike), tallied([...alike.values()])), over: zero };
}

/**
 * Works with so many area passes taken off, the oldest date first, rows without a date last, rows of one date in the order of the
 * table.
 */
export function takeOff<Row extends WorkRow>(works: readonly Work<Row>[], areaPasses: Decimal): readonly Work<Row>[] {
  if (areaPasses.isZero()) return works;
  if (areaPasses.gte(areaOf(works))) return [];
  const oldest = [...works].sort(byDate);
  let rest = areaPasses;
  return lessened(
    oldest,
    oldest.map((work) => {
      const off = smaller(work.areaPasses, rest);
      rest = rest.minus(off);
      return off;
    }),
  );
}

/** The works less the area passes that are taken off each; those of which nothing is left fall out. */
const lessened = <Row extends WorkRow>(works: readonly Work<Row>[], taken: readonly Decimal[]): readonly Work<Row>[] =>
  works.flatMap((work, index) => {
    const off = taken[index]!;
    if (off.isZero()) return [work];
    if (off.gte(work.areaPasses)) return [];
    const rest = work.areaPasses.minus(off);
    return [{ row: work.row, areaPasses: area(rest), part: work.part.times(rest).div(work.areaPasses) }];
  });

/** What two rows of one item or operation have in common that mean the same pass: the rate of the item, the price of the operation. */
function likeness(row: WorkRow): string {
  if ("rate" in row) return row.rate.toString();
  const { cost } = row;
  switch (cost.basis) {
    case "machine":
      return `by ${cost.machine}`;
    case "per hour":
      return `${cost.rate.toString()} for ${cost.hours.toString()} hours`;
    default:
      return `${cost.rate.toString()} ${cost.basis}`;
  }
}

/** The area passes of rows that are alike. */
function areasAlike(works: readonly Work<WorkRow>[]): Map<string, Decimal> {
  const areas = new Map<string, Decimal>();
  for (const { row, areaPasses } of works) {
    const same = likeness(row);
    areas.set(same, areas.get(same)?.plus(areaPasses) ?? areaPasses);
  }
  return areas;
}

/** Takes as much of an area off those that are alike as there is, and says how much. */
function takenOff(alike: Map<string, Decimal>, same: string, of: Area): Decimal {
  const there = alike.get(same);
  if (there === undefined) return zero;
  const off = smaller(of, there);
  alike.set(same, there.minus(off));
  return off;
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
