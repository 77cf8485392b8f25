/**
 * The balance of one area of crop, and its two solutions. With
 *
 *     F = cost per area that does not move with yield      v = cost per unit of the crop that does
 *     s = operator's share of the crop                     p = price
 *     Y = yield                                            o = other income per area
 *     d = what the buyer takes off the price of a unit     R = rent above its base, by the gross p·Y (flexibleRent.ts)
 *
 *     net              = (p − d − v)·s·Y + o − F − R(p·Y)
 *     break-even price = v + d + (F − o) ÷ (s·Y)
 *     break-even yield = (F − o) ÷ ((p − d − v)·s)
 *
 * Where a rent moves with price and yield, the price and the yield at which the net is nothing are found piece by piece.
 *
 * What goes into F and v decides what an answer means: a caller names the cost layer beside it. Nothing is rounded.
 */
import { leastToPay, rentAbove, type RentStep } from "./flexibleRent";
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
  /** R: what of the rent goes by the gross; left out: none of it. */
  readonly rent?: readonly RentStep[];
};

const noSteps: readonly RentStep[] = [];

/** Rent above its base, per area: R(p·Y). */
export const rentAboveBase = ({ rent = noSteps }: Pick<Costs, "rent">, at: Yield, price: MoneyPerUnit): MoneyPerArea =>
  rentAbove(rent, price.times(at));

/** Cost per area at a yield and a price: F + v·s·Y + R(p·Y). */
export function costPerArea({ fixed, moving, operatorShare, rent = noSteps }: Costs, at: Yield, price: MoneyPerUnit): MoneyPerArea {
  const cost = fixed.plus(moving.times(operatorShare).times(at));
  return moneyPerArea(rent.length === 0 ? cost : cost.plus(rentAboveBase({ rent }, at, price)));
}

/** Cost per unit of the operator's crop; `null` where the operator has none. */
export function costPerUnit(costs: Costs, at: Yield, price: MoneyPerUnit): MoneyPerUnit | null {
  const units = costs.operatorShare.times(at);
  return units.isZero() ? null : moneyPerUnit(costPerArea(costs, at, price).div(units));
}

const none = moneyPerUnit("0");

/** Income per area: the operator's crop at the price less what the buyer takes off, and other income. */
export const incomePerArea = ({ operatorShare, otherIncome, dock = none }: Costs, at: Yield, price: MoneyPerUnit): MoneyPerArea =>
  moneyPerArea(price.minus(dock).times(operatorShare).times(at).plus(otherIncome));

/** What is left of the income per area when every cost is paid; negative for a loss. */
export const netPerArea = (costs: Costs, at: Yield, price: MoneyPerUnit): MoneyPerArea =>
  moneyPerArea(incomePerArea(costs, at, price).minus(costPerArea(costs, at, price)));

/**
 * Price at which the yield just pays the cost, the rent that moves with the price among it; the lowest where a stretch of prices does.
 *
 * @returns `null` where the operator has no crop to sell, or the landlord takes all of every higher price, because then no price pays
 * the cost; below the moving cost, even negative, where other income is more than the fixed cost
 */
export function breakEvenPrice(
  { fixed, moving, dock = none, operatorShare, otherIncome, rent = noSteps }: Costs,
  at: Yield,
): MoneyPerUnit | null {
  const units = operatorShare.times(at);
  if (units.isZero()) return null;
  if (rent.length === 0) return moneyPerUnit(moving.plus(dock).plus(fixed.minus(otherIncome).div(units)));
  const price = leastToPay(units, at, rent, fixed.minus(otherIncome).plus(moving.plus(dock).times(units)));
  return price === null ? null : moneyPerUnit(price);
}

/**
 * Yield at which the price just pays the cost, the rent that moves with the yield among it; the lowest where more than one does.
 *
 * @returns `null` where the price does not exceed the cost that moves with yield, because then no yield pays the rest, or where the
 * landlord takes all that a further unit leaves; zero or less where other income alone pays the fixed cost
 */
export function breakEvenYield(
  { fixed, moving, dock = none, operatorShare, otherIncome, rent = noSteps }: Costs,
  price: MoneyPerUnit,
): Yield | null {
  const perUnit = price.minus(moving).minus(dock).times(operatorShare);
  if (perUnit.lte("0")) return null;
  if (rent.length === 0) return yieldPerArea(fixed.minus(otherIncome).div(perUnit));
  const needed = leastToPay(perUnit, price, rent, fixed.minus(otherIncome));
  return needed === null ? null : yieldPerArea(needed);
}
