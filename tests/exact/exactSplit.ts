/** Sharing an amount out in cents. */
import { compare, divided, floor, fraction, isZero, minus, opposite, plus, times, total, type Fraction } from "./fraction";

const oneCent = fraction(1n);

/**
 * `amount` shared out by `weights` in whole cents, by largest remainder: each gets the whole cents of its exact share,
 * and the cents left over go one each to those that lost most by it, the earlier first between equals. What is less than
 * a cent of the amount itself goes to the one that is next in that order. An amount below zero is shared as its opposite.
 */
export function shareOut(amount: Fraction, weights: readonly Fraction[]): readonly Fraction[] {
  if (amount.over < 0n) return shareOut(opposite(amount), weights).map(opposite);
  const whole = total(weights);
  const cents = weights.map((weight) => divided(times(amount, weight, fraction(100n)), whole));
  const shares = cents.map((exact) => fraction(floor(exact)));
  const lost = cents.map((exact, index) => minus(exact, shares[index]!));
  let left = total(lost);
  for (const index of mostFirst(lost)) {
    if (isZero(left)) break;
    const more = compare(left, oneCent) >= 0n ? oneCent : left;
    shares[index] = plus(shares[index]!, more);
    left = minus(left, more);
  }
  return shares.map((each) => divided(each, fraction(100n)));
}

const mostFirst = (values: readonly Fraction[]): readonly number[] =>
  [...values.keys()].sort((a, b) => {
    const difference = compare(values[b]!, values[a]!);
    return difference === 0n ? a - b : difference > 0n ? 1 : -1;
  });
