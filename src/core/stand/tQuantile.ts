/**
 * Student's t, exactly rather than from a table, so that any number of places can be counted.
 *
 * For a whole number of degrees of freedom ν the chance that |T| ≤ t is a finite sum in θ = atan(t ÷ √ν)
 * (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 26.7.3 and 26.7.4, recalled and checked against a
 * statistics library in tests/published/tQuantiles.test.ts):
 *
 *     ν odd    2 ÷ π · (θ + sin θ · (cos θ + 2/3 cos³ θ + …)), up to cos^(ν−2)
 *     ν even   sin θ · (1 + 1/2 cos² θ + 1·3/(2·4) cos⁴ θ + …), up to cos^(ν−2)
 */
import { Decimal, larger, one, smaller, zero } from "../numbers/decimal";
import { remembered } from "../numbers/remembered";
import { pi } from "./standCount";

const two = new Decimal("2");
/** Halvings of the quarter turn in which θ lies: 2⁻⁷⁰ of it is beyond any digit shown. */
const halvings = 70;

/**
 * The t for which |T| ≤ t with the given chance.
 *
 * @param freedom degrees of freedom, a whole number of at least 1
 * @param confidence above 0 and below 1, e.g. 0.95
 * @throws RangeError outside these
 */
export function tQuantile(freedom: Decimal, confidence: Decimal): Decimal {
  if (!freedom.isInteger() || freedom.lt("1")) throw new RangeError(`t has no ${freedom} degrees of freedom`);
  if (confidence.lte("0") || confidence.gte("1")) throw new RangeError(`no t holds a chance of ${confidence}`);
  return solved(freedom, confidence);
}

const solved = remembered((freedom: Decimal, confidence: Decimal): Decimal => {
  const isBelow = (theta: Decimal) => chanceWithin(theta, freedom).lt(confidence);
  const [from, to] = aroundTheta(freedom, confidence);
  let low = zero;
  let high = pi.div(two);
  for (let step = 0; step < halvings; step += 1) {
    const middle = low.plus(high).div(two);
    if (middle.lte(from) || (middle.lt(to) && isBelow(middle))) low = middle;
    else high = middle;
  }
  return freedom.sqrt().times(low.plus(high).div(two).tan());
});

/** How near the secants come to θ: far less than the last halving. */
const near = new Decimal("1e-25");
/** Secants that come to an end do so within a dozen steps. */
const secants = 40;

/**
 * Two angles on either side of θ, near to each other, so that few of the halvings have to add the series up: below the first the
 * chance is too small, from the second on it is not. Where secants do not find them, the whole quarter turn.
 */
function aroundTheta(freedom: Decimal, confidence: Decimal): readonly [from: Decimal, to: Decimal] {
  const quarter = pi.div(two);
  const over = (theta: Decimal) => chanceWithin(theta, freedom).minus(confidence);
  let [last, theta] = [zero, quarter.times(confidence).div(freedom.sqrt())];
  let [overLast, overTheta] = [confidence.neg(), over(theta)];
  for (let step = 0; step < secants && !overTheta.eq(overLast) && theta.minus(last).abs().gt(near); step += 1) {
    const next = theta.minus(overTheta.times(theta.minus(last)).div(overTheta.minus(overLast)));
    [last, overLast] = [theta, overTheta];
    theta = smaller(larger(next, zero), quarter);
    overTheta = over(theta);
  }
  const [from, to] = [theta.minus(near), theta.plus(near)];
  return from.gt("0") && to.lt(quarter) && over(from).lt("0") && over(to).gte("0") ? [from, to] : [zero, quarter];
}

/** The chance that |T| ≤ √ν · tan θ. */
export function chanceWithin(theta: Decimal, freedom: Decimal): Decimal {
  const sine = theta.sin();
  const cosine = theta.cos();
  const odd = !freedom.mod(two).isZero();
  // The power of the cosine in the first term, and its factor: 1 in both series.
  let power = odd ? one : zero;
  let term = odd ? cosine : one;
  let series = zero;
  while (power.lte(freedom.minus(two))) {
    series = series.plus(term);
    term = term.times(cosine).times(cosine).times(power.plus(one)).div(power.plus(two));
    power = power.plus(two);
  }
  return odd ? theta.plus(sine.times(series)).times(two).div(pi) : sine.times(series);
}
