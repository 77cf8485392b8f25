/** What a thing that lasts for years costs in each of them, interest on its value included. */
import { one } from "./numbers/decimal";
import { moneyPerYear, type Money, type MoneyPerYear, type Years, type YearlyRate } from "./numbers/units";
import type { Decimal } from "./numbers/decimal";
import { remembered } from "./numbers/remembered";

/**
 * Yearly payment that pays back one unit of money with interest over a number of years:
 *
 *     factor = i ÷ (1 − (1 + i)^−n), and 1 ÷ n without interest
 *
 * @param years above zero; a part of a year is allowed
 * @throws RangeError where there are no years, or the rate is −1 or less: the reader turns both away
 */
export function capitalRecoveryFactor(rate: YearlyRate, years: Years): Decimal {
  if (years.lte("0") || rate.lte("-1")) throw new RangeError(`no capital recovery over ${years} years at ${rate}`);
  return rate.isZero() ? one.div(years) : rate.div(one.minus(discount(rate, years)));
}

/** What one unit of money after a number of years is worth today: (1 + i)^−n. */
export const discount = remembered((rate: YearlyRate, years: Years): Decimal => rate.plus(one).pow(years.neg()));

/**
 * Yearly cost of the loss in value of a thing and of the interest on it: the price less the discounted salvage value,
 * times the capital recovery factor. It equals (price − salvage) × factor + salvage × rate.
 */
export const capitalRecovery = (price: Money, salvage: Money, rate: YearlyRate, years: Years): MoneyPerYear =>
  moneyPerYear(price.minus(salvage.times(discount(rate, years))).times(capitalRecoveryFactor(rate, years)));

/**
 * Real rate as lenders' bulletins take it: the nominal rate less inflation. (The exact form, 1.08 ÷ 1.03 − 1, gives
 * 4.85 % where this gives 5 %.)
 */
export const realRate = (nominal: YearlyRate, inflation: YearlyRate): YearlyRate => nominal.minus(inflation) as YearlyRate;
