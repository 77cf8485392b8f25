/** A field beside its crop, and what its harvest says. */
import { sum } from "./decimal";
import type { Stage } from "./figures";
import type { Crop, Field, HarvestLoad, Season } from "./season";
import { fieldStands, type FieldStand } from "./stand/fieldStand";
import { weightedMean } from "./tally";
import { points, yieldPerArea, type Points, type Yield } from "./units";

export type FieldFacts = {
  readonly field: Field;
  readonly crop: Crop;
  /** `null` until a load of it is weighed. The moisture is weighted by quantity, `null` where no load tells it. */
  readonly harvested: { readonly yield: Yield; readonly moisture: Points | null } | null;
  /** The harvested yield; before harvest what the stand lets expect; the goal where neither is known. */
  readonly outlookYield: Yield;
};

/**
 * Every field with its crop, stand and harvest, in the order of the table.
 *
 * @throws RangeError on a field whose crop is not in the season, or without area: the reader turns both away
 */
export function fieldFacts(season: Pick<Season, "settings" | "crops" | "fields" | "harvest" | "standCounts" | "standTables" | "published">): readonly FieldFacts[] {
  const crops = new Map(season.crops.map((crop) => [crop.name, crop]));
  const loads = new Map<string, HarvestLoad[]>();
  for (const load of season.harvest) loads.set(load.field, [...(loads.get(load.field) ?? []), load]);
  const stands = fieldStands(season);
  return season.fields.map((field) => {
    const crop = crops.get(field.crop);
    if (crop === undefined) throw new RangeError(`field ${field.name} is of a crop that the season does not have: ${field.crop}`);
    if (field.area.lte("0")) throw new RangeError(`field ${field.name} has no area: ${field.area}`);
    const harvested = harvest(field, loads.get(field.name) ?? []);
    return { field, crop, harvested, outlookYield: harvested?.yield ?? byStand(stands.get(field.name)) ?? field.yieldGoal };
  });
}

const byStand = (stand: FieldStand | undefined): Yield | null => (stand?.outlook?.ok === true ? stand.outlook.value.outlook : null);

function harvest(field: Field, loads: readonly HarvestLoad[]): FieldFacts["harvested"] {
  if (loads.length === 0) return null;
  const told = loads.flatMap(({ moisture, quantity }) => (moisture === null || quantity.isZero() ? [] : [{ moisture, quantity }]));
  return {
    yield: yieldPerArea(sum(loads.map((load) => load.quantity)).div(field.area)),
    moisture: told.length === 0 ? null : points(weightedMean(told.map(({ moisture }) => moisture), told.map(({ quantity }) => quantity))),
  };
}

/** The yield that a stage rests on. In the final of a field not yet harvested, which nobody is shown, the outlook. */
export const yieldAt = (facts: FieldFacts, stage: Stage): Yield => (stage === "plan" ? facts.field.yieldGoal : facts.outlookYield);

/** How much of a shared amount each field bears, in no particular unit: its area, or the operator's income from its crop. */
export function sharingWeights(facts: readonly FieldFacts[], by: "acres" | "revenue", stage: Stage) {
  const areas = facts.map(({ field }) => field.area);
  if (by === "acres") return areas;
  const revenues = facts.map((each) => each.crop.price.times(each.field.operatorShare).times(yieldAt(each, stage)).times(each.field.area));
  // Where no field has any income, income cannot tell the fields apart.
  return revenues.every((revenue) => revenue.isZero()) ? areas : revenues;
}
