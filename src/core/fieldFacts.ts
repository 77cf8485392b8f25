/** A field beside its crop, and what its harvest says. */
import { larger } from "./numbers/decimal";
import type { Stage } from "./figures";
import { landWeights } from "./land";
import type { Crop, Field, HarvestLoad, Season } from "./season";
import type { FieldOutlook } from "./stand/fieldOutlook";
import { yieldPerArea, type Yield } from "./numbers/units";
import { weighedOf, type Weighed } from "./weighed";

export type FieldFacts = {
  readonly field: Field;
  readonly crop: Crop;
  /** What was weighed of it so far; `null` before the first load. */
  readonly weighed: Weighed | null;
  /** The same once the harvest is done, and what it yielded; `null` until then. */
  readonly harvested: { readonly yield: Yield; readonly weighed: Weighed } | null;
  /**
   * The harvested yield; before the harvest is done what planting, stand and unevenness let expect, the goal where none
   * of them is known, and never less than what is weighed already.
   */
  readonly outlookYield: Yield;
};

/**
 * Every field with its crop, stand and harvest, in the order of the table.
 *
 * @param outlooks what planting, stand and unevenness let expect of its fields
 * @throws RangeError on a field whose crop is not in the season, or without area: the reader turns both away
 */
export function fieldFacts(
  season: Pick<Season, "settings" | "crops" | "fields" | "harvest">,
  outlooks: ReadonlyMap<string, Pick<FieldOutlook, "yield">>,
): readonly FieldFacts[] {
  const crops = new Map(season.crops.map((crop) => [crop.name, crop]));
  const loads = new Map<string, HarvestLoad[]>();
  for (const load of season.harvest) {
    const others = loads.get(load.field);
    if (others === undefined) loads.set(load.field, [load]);
    else others.push(load);
  }
  return season.fields.map((field) => {
    const crop = crops.get(field.crop);
    if (crop === undefined) throw new RangeError(`field ${field.name} is of a crop that the season does not have: ${field.crop}`);
    if (field.area.lte("0")) throw new RangeError(`field ${field.name} has no area: ${field.area}`);
    const weighed = weighedOf(loads.get(field.name) ?? [], crop, season.settings.dryingCountedOn);
    const soFar = weighed === null ? null : yieldPerArea(weighed.quantity.div(field.area));
    const harvested = weighed === null || field.harvestDone === null ? null : { yield: soFar!, weighed };
    const expected = outlooks.get(field.name)?.yield ?? field.yieldGoal;
    return {
      field,
      crop,
      weighed,
      harvested,
      outlookYield: harvested?.yield ?? yieldPerArea(soFar === null ? expected : larger(expected, soFar)),
    };
  });
}

/** The yield that a stage rests on. In the final of a field not yet harvested, which nobody is shown, the outlook. */
export const yieldAt = (facts: FieldFacts, stage: Stage): Yield => (stage === "plan" ? facts.field.yieldGoal : facts.outlookYield);

/**
 * How much of a shared amount each field bears, in no particular unit: its acres, those with two crops on them half to each, or
 * the operator's income from its crop.
 */
export function sharingWeights(facts: readonly FieldFacts[], by: "acres" | "revenue", stage: Stage) {
  const areas = landWeights(facts.map(({ field }) => field));
  if (by === "acres") return areas;
  const revenues = facts.map((each) => each.crop.price.times(each.field.operatorShare).times(yieldAt(each, stage)).times(each.field.area));
  // Where no field has any income, income cannot tell the fields apart.
  return revenues.every((revenue) => revenue.isZero()) ? areas : revenues;
}
