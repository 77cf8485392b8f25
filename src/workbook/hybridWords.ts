/** What trials say of hybrids in words, on the sheet and in the pane alike. */
import type { HybridComparison } from "../core/hybrids/comparison";
import { plannedRate } from "../core/hybrids/seedCost";
import type { HybridShare } from "../core/hybrids/shareOfAcres";
import { isDried, marketOf } from "../core/hybrids/trialNet";
import { daysBetween } from "../core/numbers/day";
import type { IsoDate } from "../core/row";
import type { Crop, Season } from "../core/season";
import { grouped } from "./sheets/amounts";

/** What the trials show of a hybrid's yield beside the check's. */
export function showsWords({ isCheck, check, trials, yieldDifference, showsNone }: HybridComparison): string {
  if (isCheck) return "the check";
  if (trials.isZero()) return "no trial";
  if (check === null) return "no check";
  if (yieldDifference === null) return "never beside it";
  if (showsNone === true) return "no difference";
  const more = yieldDifference.mean.gt("0") ? "more" : "less";
  return yieldDifference.low !== null ? `${more} yield` : showsNone === false ? `${more} in one trial` : "one trial";
}

/** The check first, then what nets most; what nets nothing known comes last. */
export const ranked = (all: readonly HybridComparison[]): readonly HybridComparison[] =>
  [...all].sort((a, b) => {
    if (a.isCheck || b.isCheck) return a.isCheck ? -1 : 1;
    const [here, there] = [a.netDifference?.mean ?? null, b.netDifference?.mean ?? null];
    return here === null || there === null ? Number(here === null) - Number(there === null) : there.comparedTo(here);
  });

/** What a crop's hybrids are held against. */
export function checkWords(crop: string, [first]: readonly HybridComparison[]): string {
  const check = first?.check ?? null;
  if (check === null) return `${crop}: no check is marked and none of your hybrids stood in a trial, so nothing is held against one.`;
  return check.isChosen
    ? `${crop}, held against ${check.name}.`
    : `${crop}, held against ${check.name}, the one on most of your acres (not chosen by you: mark a check in the table Hybrids).`;
}

/** How the net is worked out for a crop, with the season's own figures. */
export function netWords(season: Season, crop: Crop): string {
  const { currency, areaUnit } = season.settings;
  const market = marketOf(crop, season.settings);
  const rate = plannedRate(season, crop.name);
  const drying = isDried(market)
    ? `drying at ${market.dryingPerPoint.toFixed()} a point above ${crop.standardMoisture!.toFixed()} % on ${market.countedOn} ${crop.yieldUnit}`
    : "no drying (no charge or no standard moisture is entered)";
  const seed = rate === null ? "seed (no planned rate is entered)" : `seed at ${grouped(rate.toDecimalPlaces(0))} seeds per ${areaUnit}`;
  return (
    `Nets, ${currency} per ${areaUnit}: dry yield at ${crop.price.toFixed()}, less ${drying}, test-weight dock, ${seed} and fees. Before ` +
    "trucking, land and all other cost; the landlord's part is not taken off."
  );
}

/** What is left out or not known: a sentence each, which names the hybrids. */
export function hybridGaps(all: readonly HybridComparison[]): readonly string[] {
  const said = (names: readonly string[], words: string) => (names.length === 0 ? [] : [`${words}: ${names.join(", ")}.`]);
  const tried = all.filter(({ trials }) => !trials.isZero());
  const left = [...new Set(all.flatMap(({ withoutCheck }) => withoutCheck))];
  return [
    ...said(left, "Trials without the check, in no difference"),
    ...said(
      tried.filter(({ seedCost }) => seedCost === null).map(({ hybrid }) => hybrid),
      "No net, because the price of seed or the planned rate is not known",
    ),
    ...said(
      tried
        .filter(({ netTrials, trials }) => netTrials.lt(trials))
        .map(({ hybrid, netTrials, trials }) => `${hybrid} ${netTrials} of ${trials}`),
      "Net over fewer trials than yield, because a moisture is missing",
    ),
    ...said(
      all.filter(({ trials }) => trials.isZero()).map(({ hybrid }) => hybrid),
      "No trial entered",
    ),
  ];
}

/** What the figures rest on, and how far they go. */
export const hybridBasis: readonly string[] = [
  "Differences are taken trial by trial, between hybrids that stood in the same one; several plots of a hybrid in a trial count " +
    "once. Low and high hold the mean of such trials 19 times in 20. Where they hold zero, these trials show no difference.",
  "The best of many in few trials looks better than it is: of each year's best, about three in four beat the average of the next year " +
    "(University of Wisconsin, 1995). Several places and two years come before many acres.",
];
export const ownFieldsWords =
  "Your own fields side by side are no trial: soil, date, stand and history differ with the hybrid, and the difference is not its own.";

/** From the first of a crop's fields projected to mature to the last; nothing where none is. */
export function spreadWords(shares: readonly HybridShare[], day: (date: IsoDate) => string): readonly string[] {
  const dates = shares.flatMap(({ matures }) => (matures === null ? [] : [matures.first, matures.last])).sort();
  const [first, last] = [dates[0], dates.at(-1)];
  if (first === undefined || last === undefined) return [];
  const days = daysBetween(first, last);
  const byPlan = shares.flatMap((each) => each.byPlan);
  return [
    `Projected maturity runs from ${day(first)} to ${day(last)}, ${days.toFixed()} ${days.eq("1") ? "day" : "days"}; an estimate. ` +
      "Spread over more days the harvest is easier to get in, and late fields stand nearer to a freeze.",
    ...(byPlan.length === 0 ? [] : [`Not planted yet, so from the planned date: ${byPlan.join(", ")}.`]),
  ];
}
