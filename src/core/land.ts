/**
 * Land that grows two crops in one year: the acres count once for the farm, and what is shared by acres is split between
 * the two crops that use them.
 */
import { larger, sum, zero, type Decimal } from "./numbers/decimal";
import type { Field } from "./season";
import { area, type Area } from "./numbers/units";

type Land = Pick<Field, "name" | "area" | "sameLandAs">;

/**
 * The acres that each field stands for among these, so that they add up to the land there is: an acre with two crops on
 * it is half an acre of each. A crop on the land of a field that is not among these has its acres to itself.
 */
export function landWeights(fields: readonly Land[]): readonly Area[] {
  if (fields.every(({ sameLandAs }) => sameLandAs === null)) return fields.map((field) => field.area);
  const owners = new Set(fields.map(({ name }) => name));
  const second = (field: Land): boolean => field.sameLandAs !== null && owners.has(field.sameLandAs);
  const half = new Map<string, Decimal>();
  for (const field of fields)
    if (second(field)) half.set(field.sameLandAs!, (half.get(field.sameLandAs!) ?? zero).plus(field.area.div("2")));
  return fields.map((field) => {
    if (second(field)) return area(field.area.div("2"));
    return area(larger(field.area.minus(half.get(field.name) ?? zero), zero));
  });
}

/** The land of these fields, each acre once. */
export const landArea = (fields: readonly Land[]): Area => area(sum(landWeights(fields)));
