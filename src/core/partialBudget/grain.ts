/** What a unit of a crop nets, from the figures of the season. */
import { shareOfNext } from "../flexibleRent";
import { zero } from "../numbers/decimal";
import type { Budget } from "../figures";
import { moneyPerUnit } from "../numbers/units";
import type { Grain } from "./change";

/**
 * Price, moving cost and share as they stand in a budget of a field or a crop, drying at its expected moisture included; and what a
 * flexible rent takes of one more unit at its price and yield.
 */
export function grainOf({ price, moving, operatorShare, rent, yields }: Budget): Grain {
  const rentShare = shareOfNext(rent, price.times(yields.used));
  return { price, moving: moving.layers.operating, share: operatorShare, ...(!rentShare.isZero() && { rentShare }) };
}

/** The same without drying, for changes in which the moisture itself changes: another hybrid, a reseeding. */
export const grainBeforeDrying = (budget: Budget): Grain => ({
  ...grainOf(budget),
  moving: moneyPerUnit(budget.moving.layers.operating.minus(budget.moving.byKind.get("drying") ?? zero)),
});
