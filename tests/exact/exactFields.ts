/** Crop, harvest and yields of a field, worked out again from the definition of the product. */
import type { Stage } from "../../src/core/figures";
import type { Crop, Field, Season } from "../../src/core/season";
import { divided, isZero, larger, minus, read, times, total, zero, type Fraction } from "./fraction";

export const areaOf = (field: Field): Fraction => read(field.area);
export const cropOf = (season: Season, field: Field): Crop => season.crops.find(({ name }) => name === field.crop)!;
export const shareOf = (field: Field): Fraction => read(field.operatorShare);

/** Harvested yield, and moisture weighted by quantity over the loads that tell it; `null` before harvest. */
export function harvestOf(season: Season, field: Field): { readonly yield: Fraction; readonly moisture: Fraction | null } | null {
  const loads = season.harvest.filter((load) => load.field === field.name);
  if (loads.length === 0) return null;
  const told = loads.filter(({ moisture }) => moisture !== null);
  const weighed = total(told.map(({ quantity }) => read(quantity)));
  return {
    yield: divided(total(loads.map(({ quantity }) => read(quantity))), areaOf(field)),
    moisture: isZero(weighed) ? null : divided(total(told.map(({ quantity, moisture }) => times(read(quantity), read(moisture!)))), weighed),
  };
}

export const outlookYield = (season: Season, field: Field): Fraction => harvestOf(season, field)?.yield ?? read(field.yieldGoal);
export const yieldAt = (season: Season, field: Field, stage: Stage): Fraction =>
  stage === "plan" ? read(field.yieldGoal) : outlookYield(season, field);

/** The operator's units of the crop of a field. */
export const unitsAt = (season: Season, field: Field, stage: Stage): Fraction =>
  times(shareOf(field), yieldAt(season, field, stage), areaOf(field));

/** Points of moisture that have to be dried off: what the crop holds above its standard, as expected or, once harvested, as weighed. */
export function pointsToDry(season: Season, field: Field, stage: Stage): Fraction {
  const { standardMoisture, expectedHarvestMoisture } = cropOf(season, field);
  const weighed = stage === "plan" ? null : harvestOf(season, field)?.moisture ?? null;
  const moisture = weighed ?? (expectedHarvestMoisture === null ? null : read(expectedHarvestMoisture));
  return standardMoisture === null || moisture === null ? zero : larger(minus(moisture, read(standardMoisture)), zero);
}

/** What each field bears of an amount shared over all of them; by acres where no field earns anything. */
export function weightsOver(season: Season, fields: readonly Field[], by: "acres" | "revenue", stage: Stage): readonly Fraction[] {
  const areas = fields.map(areaOf);
  if (by === "acres") return areas;
  const revenues = fields.map((field) => times(read(cropOf(season, field).price), unitsAt(season, field, stage)));
  return revenues.every(isZero) ? areas : revenues;
}
