/** How the yield outlook of a field came to be: from the goal by planting, counts, unevenness and harvest, step by step. */
import { sum, type Decimal } from "../decimal";
import type { IsoDate } from "../row";
import type { Field, Season } from "../season";
import { yieldPerArea, type PlantsPerArea, type Yield } from "../units";
import { tableFor } from "./fieldStand";
import type { StandCount } from "./standCount";
import { lastRound, standSummary, type StandSummary } from "./standSummary";
import { outlookHistory, yieldOutlook, type OutlookChange } from "./yieldOutlook";

/** What a step looked at. */
export type StepReason =
  /** Planted on this day, the stand still taken as the target. */
  | { readonly of: "planted"; readonly planned: IsoDate | null }
  /** A round of counts. */
  | { readonly of: "counted"; readonly summary: StandSummary }
  /** Percent lost to gaps and late plants, as entered; dated as the last count. */
  | { readonly of: "uneven"; readonly loss: Decimal }
  /** Weighed; dated as the last load. */
  | { readonly of: "harvested" };

export type OutlookStep = OutlookChange<StepReason>;

/**
 * The history of a field's yield outlook, oldest first. A step on which the table gives no answer is left out, and so
 * are planting and counts where there is no table.
 *
 * @throws RangeError on a field whose crop is not in the season: the reader turns it away
 */
export function outlookSteps(season: Season, field: Field): readonly OutlookStep[] {
  const crop = season.crops.find(({ name }) => name === field.crop);
  if (crop === undefined) throw new RangeError(`field ${field.name} is of a crop that the season does not have: ${field.crop}`);
  const steps: { readonly date: IsoDate; readonly reason: StepReason; readonly outlook: Yield }[] = [];
  const at = outlookOf(season, field);
  const rounds = roundsOf((season.standCounts ?? []).filter((count) => count.field === field.name))
    .map((counts) => standSummary(counts, field.area, season.settings.areaUnit)!);
  // Without a count the outlook is the goal, however late the planting: the stand is what tells.
  if (rounds.length > 0 && field.planted !== null) {
    const outlook = at(field.targetStand as PlantsPerArea | null, null);
    if (outlook !== null) steps.push({ date: field.planted, reason: { of: "planted", planned: field.plannedPlanting }, outlook });
  }
  for (const summary of rounds) {
    const outlook = at(summary.mean, null);
    if (outlook !== null) steps.push({ date: summary.to, reason: { of: "counted", summary }, outlook });
  }
  const last = rounds[rounds.length - 1];
  const loss = field.uniformityLoss ?? null;
  const afterLoss = last === undefined || loss === null ? null : at(last.mean, loss);
  if (afterLoss !== null) steps.push({ date: last!.to, reason: { of: "uneven", loss: loss! }, outlook: afterLoss });
  const loads = season.harvest.filter((load) => load.field === field.name);
  if (loads.length > 0) {
    const date = loads.map((load) => load.date).sort().at(-1)!;
    steps.push({ date, reason: { of: "harvested" }, outlook: yieldPerArea(sum(loads.map((load) => load.quantity)).div(field.area)) });
  }
  return outlookHistory(field.yieldGoal, steps);
}

function outlookOf(season: Season, field: Field): (stand: PlantsPerArea | null, loss: Decimal | null) => Yield | null {
  const table = tableFor(season, { name: field.crop });
  const { rowWidth, yieldGoal: goal, plannedPlanting, planted, targetStand } = field;
  const { areaUnit } = season.settings;
  return (stand, uniformityLoss) => {
    if (table === null) return null;
    const outlook = yieldOutlook({
      table, goal, uniformityLoss,
      planned: { date: plannedPlanting ?? planted, stand: targetStand as PlantsPerArea | null, rowWidth, areaUnit },
      real: { date: planted ?? plannedPlanting, stand, rowWidth, areaUnit },
    });
    return outlook.ok ? outlook.value.outlook : null;
  };
}

/** The rounds in which a field was counted, oldest first. */
function roundsOf(counts: readonly StandCount[]): readonly (readonly StandCount[])[] {
  if (counts.length === 0) return [];
  const last = new Set(lastRound(counts));
  return [...roundsOf(counts.filter((count) => !last.has(count))), [...last]];
}
