/** What a few measurements of one thing say together: their mean, their spread, and how far the mean may be off. */
import { Decimal, sum } from "../numbers/decimal";
import { tQuantile } from "./tQuantile";

/** The confidence of the interval that is shown: 19 times in 20. */
const usualConfidence = new Decimal("0.95");

export type Sample = {
  readonly number: Decimal;
  readonly mean: Decimal;
  /** Sample standard deviation, n − 1 below the stroke; `null` for one measurement, which says nothing of the spread. */
  readonly deviation: Decimal | null;
  /** Half the width of the interval around the mean, t·s ÷ √n; `null` for one measurement. */
  readonly half: Decimal | null;
};

/** @returns `null` where nothing was measured */
export function sampleOf(values: readonly Decimal[], confidence: Decimal = usualConfidence): Sample | null {
  if (values.length === 0) return null;
  const number = new Decimal(String(values.length));
  const mean = sum(values).div(number);
  if (number.lt("2")) return { number, mean, deviation: null, half: null };
  const deviation = sum(values.map((value) => value.minus(mean).pow("2")))
    .div(number.minus("1"))
    .sqrt();
  return { number, mean, deviation, half: tQuantile(number.minus("1"), confidence).times(deviation).div(number.sqrt()) };
}
