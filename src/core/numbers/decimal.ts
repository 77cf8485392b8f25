/**
 * The one decimal type of the calculation core.
 *
 * It is our own copy of decimal.js, so a `Decimal.set` elsewhere in the page cannot change our arithmetic.
 * Nothing in the core rounds unless its doc comment says so; where it does, a half goes away from zero,
 * as Excel's ROUND does, so that the pane and a cell beside it agree.
 */
import { Decimal as DecimalJs } from "decimal.js";

export const Decimal = DecimalJs.clone({ defaults: true, precision: 34, rounding: DecimalJs.ROUND_HALF_UP });
export type Decimal = DecimalJs;
/** What a decimal may be made from inside the core: text or another decimal, never a binary floating-point number. */
export type DecimalValue = string | DecimalJs;

export const zero: Decimal = new Decimal("0");
export const one: Decimal = new Decimal("1");
export const hundred: Decimal = new Decimal("100");

/** Digits in each word of a decimal: whole numbers below ten million. */
const digitsInWord = 7;

/**
 * The decimal that has these words, rounded to our digits: what decimal.js documents as `s`, `d` and `e`, without spelling
 * them as text for it to read.
 *
 * @param words from the greatest to the least, whole numbers from zero to 9,999,999; neither the first nor the last is zero
 * @param power the power of ten million that the first word is worth
 */
export function decimalOfWords(sign: Decimal["s"], words: Decimal["d"], power: Decimal["e"]): Decimal {
  const inFirst = String(words[0]).length;
  const value: { -readonly [Part in keyof Decimal]: Decimal[Part] } = new Decimal(one);
  value.s = sign;
  value.d = words;
  value.e = power * digitsInWord + inFirst - 1;
  return inFirst + (words.length - 1) * digitsInWord > Decimal.precision ? value.toSignificantDigits() : value;
}

/** The sum of all; zero of none. */
export function sum(values: Iterable<Decimal>): Decimal {
  let total: Decimal | null = null;
  for (const value of values) total = total === null ? value : total.plus(value);
  return total ?? zero;
}

/** The smaller of the two. */
export const smaller = (a: Decimal, b: Decimal): Decimal => (a.lte(b) ? a : b);

/** The larger of the two. */
export const larger = (a: Decimal, b: Decimal): Decimal => (a.gte(b) ? a : b);
