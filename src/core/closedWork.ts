/**
 * Field work once a field's harvest is done. What was planned for this crop and not done by its last load never will be;
 * what is worked after it belongs to the next crop.
 */
import { sum, zero } from "./numbers/decimal";
import type { IsoDate } from "./row";
import { takeDone, takeOff, type FieldWork, type Work, type WorkRow } from "./work";

/**
 * The work of one item or operation in a field whose last load was weighed on a day.
 *
 * Passes after that day are the next crop's. What is done of either crop is taken off its own plan first, and
 * only what is left over off the other's, the oldest first: a pass planned before the last load and done after it was done.
 * What then is left of this crop's plan without a date, or with one before the last load, was never done.
 *
 * @param staysWithCrop whether a row is of this crop whenever it is done: drying and haul
 */
export function closedWork<Row extends WorkRow>(
  { planned, done }: Pick<FieldWork<Row>, "planned" | "done">,
  lastLoad: IsoDate,
  staysWithCrop: (row: Row) => boolean,
): FieldWork<Row> {
  const isNext = ({ row }: Work<Row>) => row.date !== null && row.date > lastLoad && !staysWithCrop(row);
  const split = (works: readonly Work<Row>[]) => ({ own: works.filter((work) => !isNext(work)), next: works.filter(isNext) });
  const [plans, doings] = [split(planned), split(done)];
  const ofOwn = takeDone(plans.own, doings.own);
  const ofNext = takeDone(plans.next, doings.next);
  const leftOfOwn = takeOff(ofOwn.left, ofNext.over);
  const leftOfNext = takeOff(ofNext.left, ofOwn.over);
  const isPast = ({ row }: Work<Row>) => row.date === null || row.date < lastLoad;
  const neverDone = leftOfOwn.filter(isPast);
  return {
    planned,
    done: doings.own,
    left: leftOfOwn.filter((work) => !isPast(work)),
    neverDone,
    next: { planned: plans.next, done: doings.next, left: leftOfNext },
    due: less(plans.own, neverDone),
  };
}

/** Works with the parts of them that others are taken off. */
function less<Row extends WorkRow>(works: readonly Work<Row>[], parts: readonly Work<Row>[]): readonly Work<Row>[] {
  if (parts.length === 0) return works;
  return works.flatMap((work) => {
    const off = parts.filter(({ row }) => row === work.row);
    const areaPasses = work.areaPasses.minus(sum(off.map((each) => each.areaPasses)));
    return areaPasses.lte(zero)
      ? []
      : [{ ...work, areaPasses: areaPasses as typeof work.areaPasses, part: work.part.minus(sum(off.map(({ part }) => part))) }];
  });
}
