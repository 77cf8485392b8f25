/** What is due on a planter as lines of the Budget, a crop a line; or why it may not become one. */
import { accounts } from "../accounts";
import type { CropFigures } from "../figures";
import type { Decimal } from "../numbers/decimal";
import { splitToTheCent } from "../numbers/split";
import type { Money } from "../numbers/units";
import type { Season } from "../season";
import { workAt } from "../operationCosts";
import { areaOf } from "../work";
import type { PlanterRepair } from "./planterRepair";

/**
 * Why a line would count wrongly: something due has no price, or no wage; no row of Operations names the planter; its row of Machines
 * computes repairs, in which parts are; repairs of a field are planned by rows or by a line of the field or of all fields, beside which
 * a line for the crop would replace money or be dropped; it is planned already.
 */
export type NoRepairLine = "not priced" | "no acres" | "computed" | "planned otherwise" | "planned already";
export type RepairLine = { readonly crop: string; readonly amount: Money };

/** Lines by the acres that the planter goes over, in whole cents that add up to the cost; none where nothing is due. */
export function repairPlan(
  season: Season,
  crops: readonly CropFigures[],
  { machine, cost, unpriced, needsWage }: PlanterRepair,
): readonly RepairLine[] | NoRepairLine {
  if (unpriced.length > 0 || needsWage) return "not priced";
  if (cost.isZero()) return [];
  const worked = crops.map((crop) => ({ crop, acres: acresOf(season, crop, machine) })).filter(({ acres }) => !acres.isZero());
  if (worked.length === 0) return "no acres";
  if (season.machines.some(({ name, main }) => name === machine && main.repairClass !== null)) return "computed";
  const lines = season.budget.filter(({ kind }) => kind === "repairs");
  const own = (name: string) => lines.filter(({ over }) => "crop" in over && over.crop === name);
  const others = lines.filter(
    ({ over }) => "all" in over || ("field" in over && worked.some(({ crop }) => crop.fields.some(({ field }) => field === over.field))),
  );
  const planned = ({ crop, fields }: CropFigures) =>
    own(crop).length === 0 && fields.some(({ plan }) => plan.charges.some(({ kind }) => kind === "repairs"));
  if (others.length > 0 || worked.some(({ crop }) => planned(crop))) return "planned otherwise";
  const amounts = splitToTheCent(
    cost,
    worked.map(({ acres }) => acres),
  );
  const split = worked.map(({ crop: { crop } }, index): RepairLine => ({ crop, amount: amounts[index]! }));
  const isThere = ({ crop, amount }: RepairLine) => own(crop).some((line) => line.basis === "whole" && line.amount.eq(amount));
  return split.every(isThere) ? "planned already" : split;
}

/** What the planter goes over of a crop in the outlook, once for each pass. */
function acresOf(season: Season, { fields }: CropFigures, machine: string): Decimal {
  const works = fields
    .flatMap(({ field }) => [...(accounts(season).work.ofOperations.get(field)?.values() ?? [])])
    .flatMap((work) => workAt(work, "outlook"))
    .filter(({ row: { cost } }) => cost.basis === "machine" && cost.machine === machine);
  return areaOf(works);
}
