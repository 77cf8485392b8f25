import { Decimal, sum } from "./decimal";
import { money, type Money } from "./units";

const cent = new Decimal("0.01");
/** Decimals to which cut-off parts are told apart: what is beyond them is the rounding of a price or a yield, and breaks no tie. */
const decimalsOfTies = 15;

/**
 * An amount shared out in proportion to weights so that every share is whole cents and the shares add up to the amount.
 *
 * Each share is first cut to whole cents; the cents left over go one each to the largest cut-off parts, the earlier of
 * two equal ones first. A part of a cent in the amount itself goes to the next in that order, so that nothing is lost.
 *
 * @param weights zero or more, one at least above zero
 * @throws RangeError if no weight is above zero: the caller must know what the amount is shared over
 */
export function splitToTheCent(amount: Money, weights: readonly Decimal[]): readonly Money[] {
  const whole = sum(weights);
  if (whole.lte("0")) throw new RangeError("an amount cannot be shared over weights that add up to nothing");
  // Each part is kept undivided, as so many times the whole weight, so that equal parts cut off are equal.
  const parts = weights.map((weight) => amount.times(weight));
  const centOfWhole = whole.times(cent);
  const shares = parts.map((part) => part.divToInt(centOfWhole).times(cent));
  const cutOff = parts.map((part, index) => part.minus(shares[index]!.times(whole)).abs().toDecimalPlaces(decimalsOfTies));
  const step = amount.isNegative() ? cent.neg() : cent;
  let left = amount.minus(sum(shares));
  for (const index of largestFirst(cutOff)) {
    if (left.isZero()) break;
    const given = left.abs().gte(cent) ? step : left;
    shares[index] = shares[index]!.plus(given);
    left = left.minus(given);
  }
  return shares.map(money);
}

/** Positions from the largest value to the smallest; equal ones in their own order. */
// eslint-disable-next-line no-restricted-syntax -- positions in an array are not quantities
const largestFirst = (values: readonly Decimal[]): readonly number[] =>
  values.map((_, index) => index).sort((a, b) => values[b]!.comparedTo(values[a]!));
