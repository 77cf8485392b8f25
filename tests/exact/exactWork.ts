/** Which field a row of work concerns and with how much of it, and what done rows leave of planned ones. */
import type { IsoDate, Target } from "../../src/core/row";
import type { Application, Field, Operation, Season } from "../../src/core/season";
import { compare, divided, larger, minus, one, plus, read, smaller, times, total, zero, type Fraction } from "./fraction";

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

/** Works with some of their extent taken off, the oldest first, those without a date last: each with its part and extent made smaller. */
function withOff<Row extends WorkRow>(planned: readonly Work<Row>[], off: Fraction): readonly Work<Row>[] {
  let toTakeOff = off;
  return [...planned]
    .sort((a, b) => before(a.row.date, b.row.date))
    .map((work) => {
      const taken = smaller(work.extent, toTakeOff);
      toTakeOff = larger(minus(toTakeOff, taken), zero);
      const kept = compare(work.extent, zero) > 0n ? divided(minus(work.extent, taken), work.extent) : zero;
      return { ...work, part: times(work.part, kept), extent: times(work.extent, kept) };
    });
}

/** Whether two rows of one item or operation are the same pass: the item at the same rate, the operation at the same price. */
const alike = (a: WorkRow, b: WorkRow): boolean => {
  if ("rate" in a) return "rate" in b && a.rate.eq(b.rate);
  if ("rate" in b) return false;
  const said = ({ cost }: Operation): string =>
    JSON.stringify([cost.basis, cost.basis === "machine" ? cost.machine : cost.rate, cost.basis === "per hour" ? cost.hours : ""]);
  return said(a) === said(b);
};

/** Planned works that were not done as they stood, and done ones that are no planned row themselves. */
const openOf = <Row extends WorkRow>(planned: readonly Work<Row>[]) => planned.filter(({ row }) => row.status === "plan");
const othersOf = <Row extends WorkRow>(done: readonly Work<Row>[]) => done.filter(({ row }) => row.status === "done");

/**
 * What done works leave of planned ones. One that was done as planned is gone. Every other done work takes its acre-passes
 * off planned ones like it, the oldest first; what no like ones could take comes off whatever is oldest then.
 */
function leftOf<Row extends WorkRow>(planned: readonly Work<Row>[], done: readonly Work<Row>[]): readonly Work<Row>[] {
  let left: readonly Work<Row>[] = openOf(planned);
  let over = zero;
  for (const { row, extent } of othersOf(done)) {
    const same = left.filter((work) => alike(row, work.row));
    const taken = smaller(extent, total(same.map((work) => work.extent)));
    const after = withOff(same, taken);
    left = left.map((work) => after.find((other) => other.row === work.row) ?? work);
    over = plus(over, minus(extent, taken));
  }
  return withOff(left, over);
}

/** Kinds of this crop whenever they are paid for. */
export const isLate = (kind: string): boolean => kind === "drying" || kind === "haul";

export type Settled<Row extends WorkRow> = Record<
  "planned" | "done" | "left" | "due" | "nextPlanned" | "nextDone" | "nextLeft",
  readonly Work<Row>[]
>;

/**
 * The works of one item or operation in one field, settled: while the field grows, all are its crop's. After its last
 * load, what is dated later (drying and haul apart) is the next crop's; the acre-passes done of either crop come off its
 * own plan and, beyond that, off the other's; and what is then left of this crop's plan from before the last load, or
 * without a date, never was.
 */
export function settled<Row extends WorkRow>(
  works: readonly Work<Row>[],
  last: IsoDate | null,
  isLate: (row: Row) => boolean,
): Settled<Row> {
  const isNext = ({ row }: Work<Row>) => last !== null && row.date !== null && row.date > last && !isLate(row);
  const of = (status: "plan" | "done", next: boolean) =>
    works.filter((work) => (work.row.status === status || work.row.status === "done as planned") && isNext(work) === next);
  const extent = (some: readonly Work<Row>[]) => total(some.map((work) => work.extent));
  const [own, next] = [
    { planned: of("plan", false), done: of("done", false) },
    { planned: of("plan", true), done: of("done", true) },
  ];
  const over = ({ planned, done }: typeof own) => larger(minus(extent(othersOf(done)), extent(openOf(planned))), zero);
  const left = withOff(leftOf(own.planned, own.done), over(next));
  const isPast = ({ row }: Work<Row>) => last !== null && (row.date === null || row.date < last);
  const gone = left.filter(isPast);
  const due = own.planned.map((work) => {
    const lost = gone.find(({ row }) => row === work.row);
    return lost === undefined ? work : { ...work, part: minus(work.part, lost.part), extent: minus(work.extent, lost.extent) };
  });
  return {
    planned: [...own.planned, ...next.planned],
    done: own.done,
    left: left.filter((work) => !isPast(work)),
    due,
    nextPlanned: next.planned,
    nextDone: next.done,
    nextLeft: withOff(leftOf(next.planned, next.done), over(own)),
  };
}
