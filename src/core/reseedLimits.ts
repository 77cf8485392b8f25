/** Where keeping turns into reseeding: the thinnest stand worth keeping, the last date that pays, and the grid around them. */
import type { Decimal } from "./numbers/decimal";
import { reseed, type ReseedQuestion } from "./reseed";
import type { IsoDate } from "./row";
import { dayOfYear, monthDayOf, type MonthDay } from "./stand/monthDay";
import { standFrom } from "./stand/standUnit";
import { plantsPerArea, type MoneyPerArea, type PlantsPerArea } from "./numbers/units";

export type ThinnestStand =
  | { readonly found: true; readonly stand: PlantsPerArea }
  | {
      readonly found: false;
      readonly why: "every stand of the table is worth keeping" | "no stand of the table is worth keeping" | "the table says nothing";
    };

/**
 * The thinnest stand at the planting date of the kept crop that is worth keeping: where the gain of reseeding falls to
 * nothing. Between the stands of the table yield runs in straight lines, so the answer is exact.
 */
export function thinnestWorthKeeping(question: ReseedQuestion): ThinnestStand {
  const nothing: ThinnestStand = { found: false, why: "the table says nothing" };
  const knots = (question.table.stands ?? []).flatMap(({ from, to }) => (from.eq(to) ? [from] : [from, to]));
  let before: { readonly stand: Decimal; readonly net: Decimal } | null = null;
  for (const knot of knots) {
    const stand = standFrom(question.table.standUnit, knot, question.kept.areaUnit, question.kept.rowWidth);
    if (stand === null) return nothing;
    const answer = reseed({ ...question, kept: { ...question.kept, stand } });
    // A table of which a part was not printed says nothing of these stands; others may still turn the answer.
    if (!answer.ok) continue;
    const net = answer.value.net;
    if (net.lte("0")) {
      if (before === null) return { found: false, why: "every stand of the table is worth keeping" };
      const part = before.net.div(before.net.minus(net));
      return { found: true, stand: plantsPerArea(before.stand.plus(stand.minus(before.stand).times(part))) };
    }
    before = { stand, net };
  }
  return before === null ? nothing : { found: false, why: "no stand of the table is worth keeping" };
}

/**
 * The last day on which reseeding still pays more than it costs, the stand and moisture of the reseeded crop as they
 * are; `null` where no day of the table does that lies after the planting of the kept crop and not before `notBefore`, or the
 * table has no dates.
 *
 * @param notBefore today, by the day of the year: nobody replants in the past
 */
export function lastDatePaying(question: ReseedQuestion, notBefore: MonthDay | null = null): MonthDay | null {
  const { dates } = question.table;
  if (dates === null || dates.length === 0) return null;
  const planted = question.kept.date;
  const limits = [dates[0]!.from, ...(planted === null ? [] : [planted]), ...(notBefore === null ? [] : [notBefore])].map(dayOfYear);
  const first = limits.reduce((latest, each) => (each.gt(latest) ? each : latest));
  for (let day = dayOfYear(dates[dates.length - 1]!.to); day.gte(first); day = day.minus("1")) {
    const answer = reseed({ ...question, reseeded: { ...question.reseeded, date: monthDayOf(day) } });
    if (answer.ok && answer.value.net.gt("0")) return monthDayOf(day);
  }
  return null;
}

/** Gain of reseeding per area for each kept stand (rows) and each reseeding date (columns); `null` outside the table. */
export type ReseedGrid = {
  readonly stands: readonly PlantsPerArea[];
  readonly dates: readonly (IsoDate | MonthDay)[];
  readonly net: readonly (readonly (MoneyPerArea | null)[])[];
};

export const reseedGrid = (
  question: ReseedQuestion,
  stands: readonly PlantsPerArea[],
  dates: readonly (IsoDate | MonthDay)[],
): ReseedGrid => ({
  stands,
  dates,
  net: stands.map((stand) =>
    dates.map((date) => {
      const answer = reseed({ ...question, kept: { ...question.kept, stand }, reseeded: { ...question.reseeded, date } });
      return answer.ok ? answer.value.net : null;
    }),
  ),
});

/** The gain of reseeding at the ends of the interval of the stand count: whether the answer holds for all of it. */
export function netOverInterval(
  question: ReseedQuestion,
  low: PlantsPerArea,
  high: PlantsPerArea,
): { readonly atLow: MoneyPerArea | null; readonly atHigh: MoneyPerArea | null } {
  const at = (stand: PlantsPerArea): MoneyPerArea | null => {
    const answer = reseed({ ...question, kept: { ...question.kept, stand } });
    return answer.ok ? answer.value.net : null;
  };
  return { atLow: at(low), atHigh: at(high) };
}
