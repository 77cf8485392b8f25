import { Decimal, sum } from "./decimal";
import { money, type Money } from "./units";

const cent = new Decimal("0.01");

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
  const exact = weights.map((weight) => amount.times(weight).div(whole));
  const shares = exact.map((share) => share.toDecimalPlaces(2, Decimal.ROUND_DOWN));
  const step = amount.isNegative() ? cent.neg() : cent;
  let left = amount.minus(sum(shares));
  for (const index of byCutOff(exact, shares)) {
    const given = left.abs().gte(cent) ? step : left;
    shares[index] = shares[index]!.plus(given);
    left = left.minus(given);
  }
  return shares.map(money);
}

/** Positions from the largest cut-off part to the smallest; equal ones in their own order. */
// eslint-disable-next-line no-restricted-syntax -- positions in an array are not quantities
function byCutOff(exact: readonly Decimal[], cut: readonly Decimal[]): readonly number[] {
  const parts = exact.map((share, index) => share.minus(cut[index]!).abs());
  return parts.map((_, index) => index).sort((a, b) => parts[b]!.comparedTo(parts[a]!));
}
