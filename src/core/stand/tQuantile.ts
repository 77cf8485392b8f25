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
import { Decimal, one, zero } from "../numbers/decimal";
import { pi } from "./standCount";

const two = new Decimal("2");
/** Halvings of the quarter turn in which θ lies: 2⁻⁷⁰ of it is beyond any digit shown. */
const halvings = 70;

const known = new Map<string, Decimal>();

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
  const key = `${freedom} ${confidence}`;
  let quantile = known.get(key);
  if (quantile === undefined) known.set(key, (quantile = solve(freedom, confidence)));
  return quantile;
}

function solve(freedom: Decimal, confidence: Decimal): Decimal {
  let low = zero;
  let high = pi.div(two);
  for (let step = 0; step < halvings; step += 1) {
    const middle = low.plus(high).div(two);
    if (chanceWithin(middle, freedom).lt(confidence)) low = middle;
    else high = middle;
  }
  return freedom.sqrt().times(low.plus(high).div(two).tan());
}

function chanceWithin(theta: Decimal, freedom: Decimal): Decimal {
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
