/** How the yield outlook of a field came to be: from the goal by planting, counts, unevenness and harvest, step by step. */
import type { Decimal } from "../numbers/decimal";
import { accounts } from "../accounts";
import type { IsoDate } from "../row";
import type { Field, Season } from "../season";
import type { Yield } from "../numbers/units";
import { lessLoss } from "./fieldOutlook";
import { standOf, type FieldStand } from "./fieldStand";
import type { StandCount } from "./standCount";
import { lastRound, type StandSummary } from "./standSummary";
import { outlookHistory, type OutlookChange } from "./yieldOutlook";

/** What a step looked at. */
export type StepReason =
  /** Planted on this day, the stand still taken as the target: the date alone. */
  | { readonly of: "planted"; readonly planned: IsoDate | null }
  /** A round of counts. */
  | { readonly of: "counted"; readonly summary: StandSummary }
  /** Percent lost to gaps and late plants, as entered; dated as the last count, or as the planting. */
  | { readonly of: "uneven"; readonly loss: Decimal }
  /** More is weighed already than was looked for, and the harvest is not done; dated as the last load. */
  | { readonly of: "weighed" }
  /** All of it weighed; dated as the last load. */
  | { readonly of: "harvested" };

export type OutlookStep = OutlookChange<StepReason>;

/**
 * The history of a field's yield outlook, oldest first: the planted date alone, each round of counts, unevenness as
 * entered, and the harvest. A step on which the table gives no answer is left out, and so are planting and counts where
 * there is no table.
 *
 * @param field one of the season's
 * @throws RangeError on a field whose crop is not in the season: the reader turns it away
 */
export function outlookSteps(season: Season, field: Field): readonly OutlookStep[] {
  const { facts, outlooks } = accounts(season);
  const steps: { readonly date: IsoDate; readonly reason: StepReason; readonly outlook: Yield }[] = [];
  const rounds = knownAfterEachRound(season, field);
  const expected = outlooks.get(field.name) ?? null;
  const byDate = expected?.byDate;
  if (byDate?.ok === true)
    steps.push({ date: field.planted!, reason: { of: "planted", planned: field.plannedPlanting }, outlook: byDate.value.byDateAndStand });
  for (const { summary, outlook } of rounds) {
    if (outlook?.ok === true) steps.push({ date: summary.to, reason: { of: "counted", summary }, outlook: outlook.value.byDateAndStand });
  }
  const loss = field.uniformityLoss;
  const unevenOn = rounds.at(-1)?.summary.to ?? field.planted ?? field.plannedPlanting;
  if (loss !== null && unevenOn !== null) {
    steps.push({ date: unevenOn, reason: { of: "uneven", loss }, outlook: lessLoss(field, steps.at(-1)?.outlook ?? field.yieldGoal) });
  }
  const { harvested, weighed, outlookYield } = facts.find((each) => each.field.name === field.name)!;
  if (harvested !== null) steps.push({ date: harvested.weighed.last, reason: { of: "harvested" }, outlook: harvested.yield });
  else if (weighed !== null && outlookYield.gt(expected?.yield ?? field.yieldGoal))
    steps.push({ date: weighed.last, reason: { of: "weighed" }, outlook: outlookYield });
  return outlookHistory(field.yieldGoal, steps);
}

/** The stand as it was known after each round of counts, oldest first; counts from before the planting are no part of it. */
function knownAfterEachRound(season: Season, field: Field): readonly FieldStand[] {
  const counts = season.standCounts.filter((count) => count.field === field.name);
  const gone = new Set(accounts(season).outlooks.get(field.name)?.stand?.history ?? []);
  return roundsOf(counts.filter((count) => !gone.has(count))).flatMap((round) => {
    const last = round.reduce((latest, { date }) => (date > latest ? date : latest), "");
    const known = standOf(
      season,
      field,
      counts.filter((count) => !gone.has(count) && count.date <= last),
    );
    return known === null ? [] : [known];
  });
}

/** The rounds in which a field was counted, oldest first. */
function roundsOf(counts: readonly StandCount[]): readonly (readonly StandCount[])[] {
  if (counts.length === 0) return [];
  const last = new Set(lastRound(counts));
  return [...roundsOf(counts.filter((count) => !last.has(count))), [...last]];
}
