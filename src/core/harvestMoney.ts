/** The money between what a field was planned to leave and what its harvest leaves: by yield, by price, and by cost. */
import { zero, type Decimal } from "./numbers/decimal";
import type { Budget, CropFigures, FieldFigures } from "./figures";
import { countsIn, type Layer } from "./kinds";
import { docked } from "./salesFigures";
import { money, type Money } from "./numbers/units";

export type GoalAndHarvest = {
  /** Net return of the plan on the whole field: the goal at the price entered and the plan's costs. */
  readonly plan: Money;
  readonly byYield: Money;
  readonly byPrice: Money;
  readonly byCost: Money;
  /** Net return of the harvest: what is sold at its own price, the rest at the price entered, docks off, at what it cost. */
  readonly harvest: Money;
};

/**
 * Harvest less plan, part by part, exactly:
 *
 *     yield  (p − v of the plan)·s·area × (harvested − goal)
 *     price  what the operator's units brought beyond the price entered, less the dock of the field's loads
 *     cost   −(F of the final − F of the plan)·area − (v of the final − v of the plan)·s·area × harvested
 *            −(rent above base of the final − that of the plan)·area
 *
 * Grain of a crop is sold by the crop: every field's units got the mean of what is sold and of the price entered for the
 * rest. Where nothing grew and something is sold all the same, the acres share it.
 *
 * @returns `null` until the field's harvest is done
 */
export function goalAndHarvest(crop: CropFigures, field: FieldFigures, layer: Layer): GoalAndHarvest | null {
  if (field.final === null) return null;
  const [plan, final] = [field.plan.budget, field.final.budget];
  const units = unitsOf(final);
  const byYield = plan.price
    .minus(plan.moving.layers[layer])
    .times(plan.operatorShare)
    .times(plan.area)
    .times(final.yields.used.minus(plan.yields.used));
  const byPrice = beyondPrice(crop, final, units).minus(docked(final));
  const byCost = plan.fixed.layers[layer]
    .minus(final.fixed.layers[layer])
    .times(final.area)
    .plus(plan.moving.layers[layer].minus(final.moving.layers[layer]).times(units))
    .plus(countsIn("cash rent", layer) ? plan.rentAboveBase.minus(final.rentAboveBase).times(final.area) : zero);
  const planned = plan.netPerArea[layer].times(plan.area);
  return {
    plan: money(planned),
    byYield: money(byYield),
    byPrice: money(byPrice),
    byCost: money(byCost),
    harvest: money(planned.plus(byYield).plus(byPrice).plus(byCost)),
  };
}

const unitsOf = ({ operatorShare, yields, area }: Budget): Decimal => operatorShare.times(yields.used).times(area);

/** A field's part of what its crop's sales bring beyond the price entered. */
function beyondPrice(crop: CropFigures, { area }: Budget, units: Decimal): Decimal {
  const stage = crop.final === null ? "outlook" : "final";
  const budget = crop[stage]!;
  const beyond = crop.sales.withSold[stage]!.incomePerArea.minus(budget.incomePerArea).times(budget.area);
  if (beyond.isZero()) return zero;
  const all = unitsOf(budget);
  return all.isZero() ? beyond.times(area).div(budget.area) : beyond.times(units).div(all);
}
