/** Fields for which nobody has entered a cost: their figures would read 0.00, and say that the crop grows for nothing. */
import type { Target } from "../core/row";
import type { Field, Season } from "../core/season";
import type { Problem } from "./problem";

/**
 * A cost of any kind will do, land and a share of a cost of the whole farm included; one of 0 says that there is none.
 * Where nothing at all is entered yet that is one thing to do and not one for each field.
 */
export function costChecks(season: Season): readonly Problem[] {
  const bears = bearing(season);
  const without = season.fields.filter((field) => !bears(field));
  const [first] = without;
  if (first === undefined) return [];
  const problem = ({ source: { table, row } }: Field, found: string): Omit<Problem, "touches"> => ({
    code: "cost-none",
    at: { table, row },
    found,
  });
  if (without.length === season.fields.length)
    return [{ ...problem(first, without.map(({ name }) => name).join(", ")), touches: [{ of: "farm" }] }];
  return without.map((field) => ({ ...problem(field, field.name), touches: [{ of: "field", name: field.name }] }));
}

/** Whether a field bears any entered cost, whatever it comes to. */
function bearing({
  items,
  purchases,
  applications,
  operations,
  otherCosts: others,
  bills,
  budget,
  loans,
}: Season): (field: Field) => boolean {
  const shared = new Set(items.filter(({ charged }) => charged !== "as used").map(({ name }) => name));
  const otherCosts = [...others, ...budget, ...bills];
  const isOverAll = otherCosts.some(({ over }) => "all" in over) || loans.some(({ bornBy }) => bornBy === null);
  if (isOverAll || purchases.some(({ item }) => shared.has(item))) return () => true;
  const [inFields, inCrops] = [new Set<string>(), new Set<string>()];
  const note = (target: Target) => ("field" in target ? inFields.add(target.field) : inCrops.add(target.crop));
  for (const { target } of [...applications, ...operations]) note(target);
  for (const { over } of otherCosts) if (!("all" in over)) note(over);
  for (const { bornBy } of loans) if (bornBy !== null) note(bornBy);
  return ({ name, crop, rentPerArea, landChargePerArea }) =>
    rentPerArea !== null || landChargePerArea !== null || inFields.has(name) || inCrops.has(crop);
}
