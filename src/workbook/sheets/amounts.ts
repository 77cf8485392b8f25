/** Amounts in sentences. */
import { Decimal, sum, zero } from "../../core/numbers/decimal";

/** Money in a sentence: to the nearest whole, with thousands apart. */
export const amountWords = (value: Decimal): string => value.toFixed(0, Decimal.ROUND_HALF_UP).replace(/\B(?=(\d{3})+$)/g, ",");

/** Amounts to the nearest whole so that they add up to their sum to the nearest whole: each takes up what those before it left. */
export function wholeAmounts(amounts: readonly Decimal[]): readonly Decimal[] {
  const whole = (value: Decimal) => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
  const sums = amounts.map((_, index) => sum(amounts.slice(0, index + 1)));
  return sums.map((value, index) => whole(value).minus(index === 0 ? zero : whole(sums[index - 1]!)));
}

/** A number in a sentence, its thousands set apart as number formats do it. */
export const grouped = (value: Decimal): string => {
  const [whole, part] = value.toFixed().split(".");
  return `${whole!.replace(/\B(?=(\d{3})+$)/g, ",")}${part === undefined ? "" : `.${part}`}`;
};
