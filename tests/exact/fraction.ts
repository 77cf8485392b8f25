import type { Decimal } from "../../src/core/numbers/decimal";

/**
 * An exact fraction, its denominator above zero. It shares nothing with the product's decimals. It is brought to lowest
 * terms only when its digits grow many, because that takes most of the time.
 */
export type Fraction = { readonly over: bigint; readonly under: bigint };

const many = 1n << 400n;

function commonDivisor(a: bigint, b: bigint): bigint {
  while (b !== 0n) [a, b] = [b, a % b];
  return a < 0n ? -a : a;
}

/** @throws RangeError on a denominator of zero */
export function fraction(over: bigint, under = 1n): Fraction {
  if (under === 0n) throw new RangeError("a fraction over zero");
  if (under < 0n) return fraction(-over, -under);
  if (over === 0n) return { over, under: 1n };
  if (under < many) return { over, under };
  const divisor = commonDivisor(over, under);
  return { over: over / divisor, under: under / divisor };
}

const powersOfTen = Array.from({ length: 50 }, (_, power) => 10n ** BigInt(power));

/** The fraction that decimal digits stand for: `-12.50` is −25/2. */
export function read(digits: string | Decimal): Fraction {
  const text = typeof digits === "string" ? digits : digits.toFixed();
  const [whole = "", decimals = ""] = text.split(".");
  return fraction(BigInt(whole + decimals), powersOfTen[decimals.length] ?? 10n ** BigInt(decimals.length));
}

export const zero = fraction(0n);
export const one = fraction(1n);

export const opposite = (a: Fraction): Fraction => ({ over: -a.over, under: a.under });
export function plus(a: Fraction, b: Fraction): Fraction {
  if (b.over === 0n) return a;
  if (a.over === 0n) return b;
  return a.under === b.under ? fraction(a.over + b.over, a.under) : fraction(a.over * b.under + b.over * a.under, a.under * b.under);
}
export const minus = (a: Fraction, b: Fraction): Fraction => plus(a, opposite(b));
export const times = (...factors: readonly Fraction[]): Fraction =>
  factors.reduce((product, each) => fraction(product.over * each.over, product.under * each.under), one);
/** @throws RangeError on a division by zero */
export const divided = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.under, a.under * b.over);
export const total = (values: readonly Fraction[]): Fraction => values.reduce(plus, zero);

/** Below zero, zero or above it, as `a` is less than, equal to or more than `b`. */
export const compare = (a: Fraction, b: Fraction): bigint => a.over * b.under - b.over * a.under;
export const isZero = (a: Fraction): boolean => a.over === 0n;
export const larger = (a: Fraction, b: Fraction): Fraction => (compare(a, b) >= 0n ? a : b);
export const smaller = (a: Fraction, b: Fraction): Fraction => (compare(a, b) <= 0n ? a : b);
/** The largest whole number that is not above `a`. */
export const floor = (a: Fraction): bigint => (a.over >= 0n ? a.over / a.under : -((-a.over + a.under - 1n) / a.under));

const digits25 = 10n ** 25n;
const magnitude = (whole: bigint): bigint => (whole < 0n ? -whole : whole);

/** Whether a decimal is the fraction to 25 digits: to the 25th decimal, and of numbers above 1 to the 25th digit. */
export function agree(actual: Decimal, exact: Fraction): boolean {
  const { over, under } = read(actual);
  const difference = magnitude(over * exact.under - exact.over * under);
  const largest = exact.under > magnitude(exact.over) ? exact.under : magnitude(exact.over);
  return difference * digits25 <= largest * under;
}
