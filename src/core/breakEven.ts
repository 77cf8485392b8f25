/**
 * The balance of one area of crop, and its two solutions. With
 *
 *     F = cost per area that does not move with yield      v = cost per unit of the crop that does
 *     s = operator's share of the crop                     p = price
 *     Y = yield                                            o = other income per area
 *     d = what the buyer takes off the price of a unit
 *
 *     net              = (p − d − v)·s·Y + o − F
 *     break-even price = v + d + (F − o) ÷ (s·Y)
 *     break-even yield = (F − o) ÷ ((p − d − v)·s)
 *
 * What goes into F and v decides what an answer means: a caller names the cost layer beside it. Nothing is rounded.
 */
import { moneyPerArea, moneyPerUnit, yieldPerArea, type MoneyPerArea, type MoneyPerUnit, type Share, type Yield } from "./numbers/units";

/** What one area costs and earns, apart from its price and its yield. */
export type Costs = {
  /** F. */
  readonly fixed: MoneyPerArea;
  /** v, charged on the operator's units only. */
  readonly moving: MoneyPerUnit;
  /** s. */
  readonly operatorShare: Share;
  /** d: what the buyer takes off the price of a unit, as a test-weight dock; left out: nothing. */
  readonly dock?: MoneyPerUnit;
  /** o: payments, straw, grazing and the like; all of it the operator's. */
  readonly otherIncome: MoneyPerArea;
};

/** Cost per area at a yield: F + v·s·Y. */
export const costPerArea = ({ fixed, moving, operatorShare }: Costs, at: Yield): MoneyPerArea =>
  moneyPerArea(fixed.plus(moving.times(operatorShare).times(at)));

/** Cost per unit of the operator's crop; `null` where the operator has none. */
export function costPerUnit(costs: Costs, at: Yield): MoneyPerUnit | null {
  const units = costs.operatorShare.times(at);
  return units.isZero() ? null : moneyPerUnit(costPerArea(costs, at).div(units));
}

const none = moneyPerUnit("0");

/** Income per area: the operator's crop at the price less what the buyer takes off, and other income. */
export const incomePerArea = ({ operatorShare, otherIncome, dock = none }: Costs, at: Yield, price: MoneyPerUnit): MoneyPerArea =>
  moneyPerArea(price.minus(dock).times(operatorShare).times(at).plus(otherIncome));

/** What is left of the income per area when every cost is paid; negative for a loss. */
export const netPerArea = (costs: Costs, at: Yield, price: MoneyPerUnit): MoneyPerArea =>
  moneyPerArea(incomePerArea(costs, at, price).minus(costPerArea(costs, at)));

/**
 * Price at which the yield just pays the cost.
 *
 * @returns `null` where the operator has no crop to sell, because then no price pays the cost; below the moving cost,
 * even negative, where other income is more than the fixed cost
 */
export function breakEvenPrice({ fixed, moving, dock = none, operatorShare, otherIncome }: Costs, at: Yield): MoneyPerUnit | null {
  const units = operatorShare.times(at);
  return units.isZero() ? null : moneyPerUnit(moving.plus(dock).plus(fixed.minus(otherIncome).div(units)));
}

/**
 * Yield at which the price just pays the cost.
 *
 * @returns `null` where the price does not exceed the cost that moves with yield, because then no yield pays the rest;
 * zero or less where other income alone pays the fixed cost
 */
export function breakEvenYield({ fixed, moving, dock = none, operatorShare, otherIncome }: Costs, price: MoneyPerUnit): Yield | null {
  const perUnit = price.minus(moving).minus(dock).times(operatorShare);
  return perUnit.lte("0") ? null : yieldPerArea(fixed.minus(otherIncome).div(perUnit));
}
