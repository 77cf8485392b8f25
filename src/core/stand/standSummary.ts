/** What the counts of a field say together: the mean stand, and how far it may be off. */
import { daysBetween } from "../numbers/day";
import { Decimal, larger, one, sum, zero } from "../numbers/decimal";
import type { IsoDate } from "../row";
import { plantsPerArea, type Area, type AreaUnit, type PlantsPerArea } from "../numbers/units";
import { sampleOf } from "./sample";
import { standAt, type StandCount } from "./standCount";
import { tQuantile } from "./tQuantile";

/** The confidence of the interval that is shown: 19 times in 20. */
const usualConfidence = new Decimal("0.95");

export type StandSummary = {
  /** How many places were counted. */
  readonly places: Decimal;
  readonly mean: PlantsPerArea;
  readonly lowest: PlantsPerArea;
  readonly highest: PlantsPerArea;
  /** Sample standard deviation; `null` for one place. */
  readonly standardDeviation: PlantsPerArea | null;
  /** Standard deviation ÷ mean, a fraction; `null` for one place and where nothing stands. */
  readonly coefficientOfVariation: Decimal | null;
  /** mean ± t·s ÷ √n, never below zero; `null` for one place, which says nothing of the spread. */
  readonly interval: { readonly low: PlantsPerArea; readonly high: PlantsPerArea; readonly confidence: Decimal } | null;
  /** How many spots are advised for the area, part by part, and whether that many were counted in each. */
  readonly placesAdvised: Decimal;
  readonly enough: boolean;
  /** The first and the last day on which the places were counted. */
  readonly from: IsoDate;
  readonly to: IsoDate;
  /** The counts taken together; older ones of the field are left out. */
  readonly counts: readonly StandCount[];
};

/** One place in 5 acres (2 hectares), and 5 places at least. */
const areaPerPlace: Readonly<Record<AreaUnit, Decimal>> = { ac: new Decimal("5"), ha: new Decimal("2") };
const fewestPlaces = new Decimal("5");

/** Places to count in a field, by its area. Published advice runs from three stops in a small field to one in 2 to 3 acres after damage. */
export const placesAdvised = (land: Area, unit: AreaUnit): Decimal =>
  larger(land.div(areaPerPlace[unit]).toDecimalPlaces(0, Decimal.ROUND_UP), fewestPlaces);

/** Days that one round of counting may take; what is older belongs to an earlier round. */
const daysOfRound = new Decimal("7");

/** The last round of counts: those of the latest day and of the six days before it. */
export function lastRound(counts: readonly StandCount[]): readonly StandCount[] {
  const latest = counts.reduce((last, { date }) => (date > last ? date : last), "");
  return counts.filter(({ date }) => daysBetween(date, latest).lt(daysOfRound));
}

/**
 * The stand of one field from its last round of counts.
 *
 * @returns `null` where nothing was counted
 */
export function standSummary(
  counts: readonly StandCount[],
  land: Area,
  unit: AreaUnit,
  confidence: Decimal = usualConfidence,
): StandSummary | null {
  const round = lastRound(counts);
  if (round.length === 0) return null;
  const spots = spread(round, unit);
  const { places, mean, standardDeviation: deviation } = spots;
  const advised = placesAdvised(land, unit);
  return {
    ...spots,
    interval:
      deviation === null ? null : interval(mean, tQuantile(places.minus("1"), confidence).times(deviation).div(places.sqrt()), confidence),
    placesAdvised: advised,
    enough: places.gte(advised),
  };
}

/** Spots taken together, each as much as any other. */
function spread(counts: readonly StandCount[], unit: AreaUnit): Omit<StandSummary, "interval" | "placesAdvised" | "enough"> {
  const [first, ...others] = counts.map((count) => standAt(count, unit));
  if (first === undefined) throw new RangeError("no spot has no stand");
  const stands = [first, ...others];
  const { number: places, mean, deviation } = sampleOf(stands)!;
  const days = counts.map(({ date }) => date).sort();
  return {
    places,
    mean: plantsPerArea(mean),
    lowest: others.reduce((low, each) => (each.lt(low) ? each : low), first),
    highest: others.reduce((high, each) => (each.gt(high) ? each : high), first),
    standardDeviation: deviation === null ? null : plantsPerArea(deviation),
    coefficientOfVariation: deviation === null || mean.isZero() ? null : deviation.div(mean),
    from: days[0]!,
    to: days[days.length - 1]!,
    counts,
  };
}

function interval(mean: Decimal, half: Decimal, confidence: Decimal): NonNullable<StandSummary["interval"]> {
  return { low: plantsPerArea(larger(mean.minus(half), zero)), high: plantsPerArea(mean.plus(half)), confidence };
}

/** A part of a field that was counted. */
export type CountedStand = { readonly area: Area; readonly summary: StandSummary };

/**
 * What the parts of a field say together. The mean goes by their acres: Σ acres × mean ÷ Σ acres. Its variance is
 * Σ (acres ÷ Σ acres)² · s² ÷ n, with Satterthwaite's degrees of freedom rounded down (Cochran, Sampling Techniques, 1977,
 * section 5.4, from memory); a part of one spot leaves it unknown. Deviation and coefficient of variation are those of all spots, each as
 * much as any other.
 *
 * @throws RangeError of no part
 */
export function standOfParts(parts: readonly CountedStand[], unit: AreaUnit, confidence: Decimal = usualConfidence): StandSummary {
  const [first, ...others] = parts;
  if (first === undefined) throw new RangeError("no part has no stand");
  if (others.length === 0) return first.summary;
  const land = sum(parts.map(({ area }) => area));
  const mean = sum(parts.map(({ area, summary }) => area.times(summary.mean))).div(land);
  const spots = spread(
    parts.flatMap(({ summary }) => summary.counts),
    unit,
  );
  return {
    ...spots,
    mean: plantsPerArea(mean),
    interval: intervalOfParts(parts, mean, land, confidence),
    placesAdvised: sum(parts.map(({ summary }) => summary.placesAdvised)),
    enough: parts.every(({ summary }) => summary.enough),
  };
}

function intervalOfParts(parts: readonly CountedStand[], mean: Decimal, land: Decimal, confidence: Decimal): StandSummary["interval"] {
  const variances = parts.flatMap(({ area, summary: { standardDeviation: deviation, places } }) =>
    deviation === null ? [] : [{ of: area.div(land).times(deviation).pow("2").div(places), freedom: places.minus("1") }],
  );
  if (variances.length < parts.length) return null;
  const variance = sum(variances.map(({ of }) => of));
  const freedom = variance.isZero()
    ? sum(variances.map((each) => each.freedom))
    : variance
        .pow("2")
        .div(sum(variances.map(({ of, freedom: own }) => of.pow("2").div(own))))
        .floor();
  return interval(mean, tQuantile(larger(freedom, one), confidence).times(variance.sqrt()), confidence);
}

/** Plants standing for a seed dropped, a fraction; `null` where no seed was. Above 1 it tells of a wrong count or rate. */
export const emergence = (stand: PlantsPerArea, seedsDropped: Decimal): Decimal | null =>
  seedsDropped.lte("0") ? null : stand.div(seedsDropped);
