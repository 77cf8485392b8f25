/** Crop, harvest and yields of a field, worked out again from the definition of the product. */
import type { Decimal } from "../../src/core/numbers/decimal";
import type { Stage } from "../../src/core/figures";
import type { IsoDate } from "../../src/core/row";
import type { Crop, Field, Season } from "../../src/core/season";
import { byPlanting } from "./exactPlanting";
import { divided, fraction, isZero, larger, minus, plus, read, times, total, zero, type Fraction } from "./fraction";

export const areaOf = (field: Field): Fraction => read(field.area);
export const cropOf = (season: Season, field: Field): Crop => season.crops.find(({ name }) => name === field.crop)!;
export const shareOf = (field: Field): Fraction => read(field.operatorShare);

const loadsOf = (season: Season, field: Field) => season.harvest.filter((load) => load.field === field.name);
const weighed = (season: Season, field: Field): Fraction => total(loadsOf(season, field).map(({ quantity }) => read(quantity)));

/** Whether the harvest is said to be done, and a load shows it. */
export const isHarvested = (season: Season, field: Field): boolean => field.harvestDone !== null && loadsOf(season, field).length > 0;

/** The day of the last load of a field whose harvest is done. */
export const lastLoad = (season: Season, field: Field): IsoDate | null =>
  isHarvested(season, field)
    ? loadsOf(season, field)
        .map(({ date }) => date)
        .sort()
        .at(-1)!
    : null;

/** All of the harvest once it is done; before that what the planting lets expect, or what is weighed where that is more. */
export function outlookYield(season: Season, field: Field): Fraction {
  const soFar = divided(weighed(season, field), areaOf(field));
  return isHarvested(season, field) ? soFar : larger(times(read(field.yieldGoal), byPlanting(season, field)), soFar);
}
export const yieldAt = (season: Season, field: Field, stage: Stage): Fraction =>
  stage === "plan" ? read(field.yieldGoal) : outlookYield(season, field);

/** The operator's units of the crop of a field. */
export const unitsAt = (season: Season, field: Field, stage: Stage): Fraction =>
  times(shareOf(field), yieldAt(season, field, stage), areaOf(field));

/**
 * Points of moisture to be dried off a dry unit of the crop: of every load what it was above the standard, on the units
 * that the charge is counted on; of what still stands what is expected.
 */
export function pointsToDry(season: Season, field: Field, stage: Stage): Fraction {
  const { standardMoisture, expectedHarvestMoisture } = cropOf(season, field);
  const above = (moisture: Decimal | null) =>
    standardMoisture === null || moisture === null ? zero : larger(minus(read(moisture), read(standardMoisture)), zero);
  const loads = loadsOf(season, field);
  if (stage === "plan" || loads.length === 0) return above(expectedHarvestMoisture);
  const crop = times(outlookYield(season, field), areaOf(field));
  if (isZero(crop)) return zero;
  const ofLoads = total(
    loads.map(({ moisture, wet, quantity }) => times(above(moisture), read(season.settings.dryingCountedOn === "wet" ? wet : quantity))),
  );
  const standing = isHarvested(season, field) ? zero : minus(crop, weighed(season, field));
  return divided(plus(ofLoads, times(standing, above(expectedHarvestMoisture))), crop);
}

/** The acres that each field stands for: an acre under two crops is half an acre of each. */
export function landOf(fields: readonly Field[]): readonly Fraction[] {
  const half = (field: Field) => divided(areaOf(field), fraction(2n));
  return fields.map((field) => {
    if (fields.some(({ name }) => name === field.sameLandAs)) return half(field);
    return larger(minus(areaOf(field), total(fields.filter(({ sameLandAs }) => sameLandAs === field.name).map(half))), zero);
  });
}

/** What each field bears of an amount shared over all of them; by acres where no field earns anything. */
export function weightsOver(season: Season, fields: readonly Field[], by: "acres" | "revenue", stage: Stage): readonly Fraction[] {
  const areas = landOf(fields);
  if (by === "acres") return areas;
  const revenues = fields.map((field) => times(read(cropOf(season, field).price), unitsAt(season, field, stage)));
  return revenues.every(isZero) ? areas : revenues;
}
