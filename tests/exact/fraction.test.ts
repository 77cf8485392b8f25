import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { agree, compare, divided, floor, fraction, minus, plus, read, times, zero } from "./fraction";

describe("a fraction", () => {
  it("has its sign above", () => {
    expect(fraction(3n, -2n)).toEqual({ over: -3n, under: 2n });
  });
  it("comes to lowest terms before its digits grow too many", () => {
    const huge = 3n ** 400n;
    expect(fraction(-2n * huge, 6n * huge)).toEqual({ over: -1n, under: 3n });
  });
  it("has no denominator of zero", () => {
    expect(() => divided(fraction(1n), zero)).toThrow(RangeError);
  });
  it("is read from digits, a sign before a point included", () => {
    expect(
      [read("12.50"), read("-0.25"), read("7")].map((each, index) =>
        compare(each, [fraction(25n, 2n), fraction(-1n, 4n), fraction(7n)][index]!),
      ),
    ).toEqual([0n, 0n, 0n]);
  });
  it("adds, takes away, multiplies and divides exactly", () => {
    const third = fraction(1n, 3n);
    expect([plus(third, fraction(1n, 6n)), minus(third, third), times(third, third), divided(third, fraction(2n))]).toEqual([
      fraction(9n, 18n),
      zero,
      fraction(1n, 9n),
      fraction(1n, 6n),
    ]);
  });
  it("has a floor below it on either side of zero", () => {
    expect([floor(fraction(5n, 2n)), floor(fraction(-5n, 2n)), floor(fraction(-2n))]).toEqual([2n, -3n, -2n]);
  });
  it("compares as numbers do", () => {
    expect(compare(fraction(1n, 3n), fraction(2n, 6n)) === 0n && compare(fraction(-1n), zero) < 0n).toBe(true);
  });
});

describe("agreement to 25 digits", () => {
  const sevenths = fraction(12_345_000_000n, 7n);
  it("holds for a division that was cut off at 34 digits", () => {
    expect(agree(new Decimal("12345000000").div("7"), sevenths)).toBe(true);
  });
  it("does not hold where the 25th digit differs", () => {
    expect(agree(new Decimal("12345000000").div("7").plus("1e-15"), sevenths)).toBe(false);
    expect(agree(new Decimal("0.1").plus("2e-25"), fraction(1n, 10n))).toBe(false);
  });
});
