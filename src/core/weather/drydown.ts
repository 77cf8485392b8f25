/**
 * Corn that dries in the field: its moisture day by day, what the dryer costs then, and what waiting loses. Estimates, from published
 * rates.
 *
 *     moisture on a day   moisture at the start − the points of every day since, never below the standard
 *     drying              points above standard × charge × yield kept × operator's share, on wet or dry units as the charge is counted
 *     lost by waiting     yield not kept × what a unit nets before drying × operator's share
 */
import { nextDay } from "../numbers/day";
import { hundred, larger, one, zero, type Decimal } from "../numbers/decimal";
import {
  moneyPerArea,
  moneyPerUnit,
  points,
  share,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Points,
  type Share,
  type Yield,
} from "../numbers/units";
import type { IsoDate } from "../row";
import type { Wetness } from "../season";
import { dayOfYear } from "../stand/monthDay";
import { waitingLoss, type DrydownTable } from "../tables/drydownTables";

/** Points a day: by a table, or the grower's own figure for every day. */
export type DryingRate = DrydownTable | { readonly perDay: Decimal };

export type DrydownQuestion = {
  /** A day on which the moisture is known or projected, and what it is then. */
  readonly from: IsoDate;
  readonly moisture: Points;
  readonly standard: Points;
  readonly rate: DryingRate;
  /** The last day on which the crop may still stand, and the last that is looked at. */
  readonly lastSafe: IsoDate;
  readonly until: IsoDate;
  /** Yield at the start, at standard moisture. */
  readonly yield: Yield;
  readonly price: MoneyPerUnit;
  /** Haul, checkoff and storage per unit, drying not among them. */
  readonly moving: MoneyPerUnit;
  readonly share: Share;
  readonly chargePerPoint: MoneyPerUnit;
  readonly countedOn: Wetness;
  /** Whether the published losses of waiting count. */
  readonly countsLoss: boolean;
};

export type HarvestDay = {
  readonly date: IsoDate;
  readonly moisture: Points;
  /** By the slowest and the fastest rate that is printed. */
  readonly wettest: Points;
  readonly driest: Points;
  readonly drying: MoneyPerArea;
  /** The part of the yield that is still there. */
  readonly kept: Share;
  readonly lost: MoneyPerArea;
  /** Drying and what is lost. */
  readonly cost: MoneyPerArea;
  readonly isSafe: boolean;
};

export type DrydownRefusal = "before the table" | "after the table" | "after the losses" | "no safe day";

export type Drydown = {
  readonly days: readonly HarvestDay[];
  /** The safe day of the least cost, the first of several. */
  readonly cheapest: HarvestDay;
  /** The first day at standard moisture; `null` where none of the days is. */
  readonly dry: IsoDate | null;
};

/** Every day from the start; or why the table says nothing of one of them. */
export function drydown(question: DrydownQuestion): Drydown | DrydownRefusal {
  const { from, until, lastSafe, standard, moisture } = question;
  if (question.countsLoss && (until.slice(5) > lastKnownLoss || until.slice(0, 4) > from.slice(0, 4))) return "after the losses";
  const days: HarvestDay[] = [];
  let [middle, wettest, driest]: readonly Decimal[] = [moisture, moisture, moisture];
  for (let date = from; date <= until; date = nextDay(date)) {
    days.push(dayOf(question, date, points(middle!), { wettest: points(wettest!), driest: points(driest!) }));
    if (date === until) break;
    const rate = rateOn(question.rate, date);
    if (typeof rate === "string") return rate;
    const drier = (now: Decimal, by: Decimal) => (now.lte(standard) ? now : larger(now.minus(by), standard));
    [middle, wettest, driest] = [drier(middle!, rate.low.plus(rate.high).div("2")), drier(wettest!, rate.low), drier(driest!, rate.high)];
  }
  const safe = days.filter(({ date }) => date <= lastSafe);
  const [first, ...others] = safe;
  if (first === undefined) return "no safe day";
  return {
    days,
    cheapest: others.reduce((least, day) => (day.cost.lt(least.cost) ? day : least), first),
    dry: days.find((day) => day.moisture.lte(standard))?.date ?? null,
  };
}

function rateOn(rate: DryingRate, date: IsoDate): { readonly low: Decimal; readonly high: Decimal } | DrydownRefusal {
  if ("perDay" in rate) return { low: rate.perDay, high: rate.perDay };
  const day = dayOfYear(date);
  const period = rate.periods.find(({ from, to }) => day.gte(dayOfYear(from)) && day.lte(dayOfYear(to)));
  return period ?? (day.lt(dayOfYear(rate.periods[0]!.from)) ? "before the table" : "after the table");
}

function dayOf(question: DrydownQuestion, date: IsoDate, moisture: Points, spread: Pick<HarvestDay, "wettest" | "driest">): HarvestDay {
  const { standard, chargePerPoint, countedOn, countsLoss, price, moving, lastSafe } = question;
  const kept = countsLoss ? share(keptOn(date).div(keptOn(question.from))) : share(one);
  const ofOperator = question.yield.times(question.share);
  const drying = moneyPerArea(dryingPerUnit(moisture, standard, chargePerPoint, countedOn).times(ofOperator).times(kept));
  const lost = moneyPerArea(ofOperator.times(one.minus(kept)).times(price.minus(moving)));
  return { date, moisture, ...spread, drying, kept, lost, cost: moneyPerArea(drying.plus(lost)), isSafe: date <= lastSafe };
}

/** What the dryer takes for a dry unit of grain of a moisture: points × charge, times the wet units in a dry one where it counts those. */
export function dryingPerUnit(moisture: Points, standard: Points, chargePerPoint: MoneyPerUnit, countedOn: Wetness): MoneyPerUnit {
  const wet = larger(moisture.minus(standard), zero).times(chargePerPoint);
  return moneyPerUnit(
    countedOn === "dry" || moisture.lte(standard) ? wet : wet.times(hundred.minus(standard)).div(hundred.minus(moisture)),
  );
}

/** The part of the yield that still stands, by the published losses: straight lines between its days, and none beyond the last. */
export function keptOn(date: IsoDate): Decimal {
  const day = dayOfYear(date);
  const { kept } = waitingLoss;
  const [first, last] = [kept[0]!, kept[kept.length - 1]!];
  if (day.lte(dayOfYear(first.day))) return first.share;
  const next = kept.findIndex((each) => day.lte(dayOfYear(each.day)));
  if (next < 0) return last.share;
  const [before, after] = [kept[next - 1]!, kept[next]!];
  const part = day.minus(dayOfYear(before.day)).div(dayOfYear(after.day).minus(dayOfYear(before.day)));
  return before.share.plus(after.share.minus(before.share).times(part));
}

/** The last day of the published losses: what they say of a later one nobody knows. */
export const lastKnownLoss = waitingLoss.kept[waitingLoss.kept.length - 1]!.day;
/** The day on which waiting begins to lose much, by the same experiments. */
export const lossesRise = waitingLoss.kept[1]!.day;
