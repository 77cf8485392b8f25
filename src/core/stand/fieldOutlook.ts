/** What planting, stand and unevenness let expect of each field, before anything is harvested. */
import type { Result } from "../../result";
import { hundred, one } from "../numbers/decimal";
import type { Field, Season } from "../season";
import { yieldPerArea, type PlantsPerArea, type Yield } from "../numbers/units";
import { fieldStands, isChosen, tableFor, type FieldStand } from "./fieldStand";
import type { StandTable } from "./standTable";
import { yieldOutlook, type OutlookRefusal, type YieldOutlook } from "./yieldOutlook";

export type FieldOutlook = {
  readonly field: Field;
  /** The table in use; `null` where there is none for the crop. */
  readonly table: StandTable | null;
  /** Whether the setting Stand response names it. */
  readonly chosen: boolean;
  /** What the planted date alone does, the stand still at its target; `null` without a planted date or a table. */
  readonly byDate: Result<YieldOutlook, OutlookRefusal> | null;
  /** Its counts, and what they do; `null` before the first. */
  readonly stand: FieldStand | null;
  /** By date and counts where the table answers for them, else by the date alone, else the goal; less what unevenness takes. */
  readonly yield: Yield;
};

export type OutlookSeason = Pick<Season, "settings" | "crops" | "fields" | "standCounts" | "standTables" | "published">;

/** The fields that are planted, counted or said to be uneven, by name. */
export function fieldOutlooks(season: OutlookSeason): ReadonlyMap<string, FieldOutlook> {
  const stands = fieldStands(season);
  const outlooks = new Map<string, FieldOutlook>();
  for (const field of season.fields) {
    const stand = stands.get(field.name) ?? null;
    if (stand === null && field.planted === null && field.uniformityLoss === null) continue;
    const table = tableFor(season, { name: field.crop });
    const byDate = table === null ? null : dateAlone(field, table, season.settings.areaUnit);
    const counted = stand?.outlook?.ok === true ? stand.outlook.value : null;
    const planted = byDate?.ok === true ? byDate.value : null;
    outlooks.set(field.name, {
      field,
      table,
      chosen: isChosen(season, table),
      byDate,
      stand,
      yield: lessLoss(field, (counted ?? planted)?.byDateAndStand ?? field.yieldGoal),
    });
  }
  return outlooks;
}

/** What is left of a yield after the loss to unevenness that is entered. */
export const lessLoss = ({ uniformityLoss }: Field, expected: Yield): Yield =>
  uniformityLoss === null ? expected : yieldPerArea(expected.times(one.minus(uniformityLoss.div(hundred))));

/** The planted date against the planned one, at the target stand. A day that is the planned one needs no stand: it changes nothing. */
function dateAlone(field: Field, table: StandTable, areaUnit: Season["settings"]["areaUnit"]): FieldOutlook["byDate"] {
  const { planted, plannedPlanting, rowWidth } = field;
  if (planted === null || table.dates === null) return null;
  const stand = field.targetStand as PlantsPerArea | null;
  const answer = yieldOutlook({
    table,
    goal: field.yieldGoal,
    uniformityLoss: null,
    planned: { date: plannedPlanting ?? planted, stand, rowWidth, areaUnit },
    real: { date: planted, stand, rowWidth, areaUnit },
  });
  const isAsPlanned = plannedPlanting === null || plannedPlanting.slice(5) === planted.slice(5);
  return !answer.ok && isAsPlanned && answer.problems.every(({ reason }) => reason !== "date outside") ? null : answer;
}
