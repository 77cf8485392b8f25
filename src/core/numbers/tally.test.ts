import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal, sum, zero } from "./decimal";
import { Tally, weightedMean } from "./tally";

/** Decimals as cells hold them, and far wider: to 15 digits, from 1e-20 to 1e20, either sign. */
const digits = fc.bigInt({ min: -999_999_999_999_999n, max: 999_999_999_999_999n });
const scaled = fc.tuple(digits, fc.integer({ min: -20, max: 6 }));
const decimalOf = ([mantissa, exponent]: readonly [bigint, number]) => new Decimal(`${mantissa}e${exponent}`);
/** Whole numbers of 1e-60, in which sums and products of three of them are exact. */
const exactly = (mantissa: bigint, exponent: number) => mantissa * 10n ** BigInt(exponent + 60);
const rounded = (units: bigint) => new Decimal(`${units}e-60`).toSignificantDigits().toString();

describe("a tally", () => {
  it("is zero of nothing", () => {
    expect(new Tally().total()).toBe(zero);
    expect(new Tally().add(zero).addProduct(zero, new Decimal("5")).total().isZero()).toBe(true);
  });

  it.each([
    ["0.1", "0.2", "0.3"],
    ["9999999", "1", "10000000"],
    ["-9999999", "-1", "-10000000"],
    ["0.0000001", "-0.0000001", "0"],
    ["1e14", "-1", "99999999999999"],
    ["-1e14", "1", "-99999999999999"],
    ["1e-21", "1e12", "1000000000000.000000000000000000001"],
  ])("adds %s and %s to %s", (a, b, expected) => {
    expect(new Tally().add(new Decimal(a)).add(new Decimal(b)).total().toFixed()).toBe(new Decimal(expected).toFixed());
  });

  it("is the sum of whole-number fractions, whatever the sizes and signs", () => {
    fc.assert(
      fc.property(fc.array(scaled), (values) => {
        const tally = new Tally();
        for (const value of values) tally.add(decimalOf(value));
        expect(tally.total().toString()).toBe(rounded(values.reduce((total, value) => total + exactly(...value), 0n)));
      }),
      { numRuns: 500 },
    );
  });

  it("is the sum of products of two and three, each unrounded", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(scaled, scaled, fc.option(scaled))), (rows) => {
        const tally = new Tally();
        let exact = 0n;
        for (const [a, b, c] of rows) {
          if (c === null) tally.subtractProduct(decimalOf(a), decimalOf(b));
          else tally.addProduct(decimalOf(a), decimalOf(b), decimalOf(c));
          exact += (c === null ? -1n : 1n) * exactly(a[0] * b[0] * (c?.[0] ?? 1n), a[1] + b[1] + (c?.[1] ?? 0));
        }
        expect(tally.total().toString()).toBe(rounded(exact));
      }),
      { numRuns: 500 },
    );
  });

  it("answers with digits as decimal.js keeps them", () => {
    fc.assert(
      fc.property(fc.array(scaled, { minLength: 1 }), scaled, (values, factor) => {
        const tally = new Tally();
        for (const value of values) tally.addProduct(decimalOf(value), decimalOf(factor));
        const total = tally.total();
        const { s, e, d } = new Decimal(total.toString());
        // Of zero, decimal.js keeps a sign as well, which means nothing here.
        expect({ s: total.isZero() ? s : total.s, e: total.e, d: total.d }).toEqual({ s, e, d });
      }),
      { numRuns: 500 },
    );
  });

  it("may be asked, added to and asked again", () => {
    fc.assert(
      fc.property(fc.array(scaled), fc.array(scaled), (before, after) => {
        const tally = new Tally();
        for (const value of before) tally.add(decimalOf(value));
        tally.total();
        for (const value of after) tally.subtract(decimalOf(value));
        const exact = (values: readonly (readonly [bigint, number])[]) => values.reduce((total, value) => total + exactly(...value), 0n);
        expect(tally.total().toString()).toBe(rounded(exact(before) - exact(after)));
      }),
    );
  });

  it("keeps every cent of millions of rows", () => {
    const tally = new Tally();
    const [price, quantity, days] = [new Decimal("99999999999.99"), new Decimal("9999999.999999"), new Decimal("999.9999999")];
    const rows = 1_500_000;
    for (let row = 0; row < rows; row += 1) tally.addProduct(price, quantity, days);
    expect(tally.total().toString()).toBe(
      new Decimal(`${9999999999999n * 9999999999999n * 9999999999n * BigInt(rows)}e-15`).toSignificantDigits().toString(),
    );
  });

  it("agrees with adding one by one", () => {
    fc.assert(
      fc.property(fc.array(fc.integer()), (values) => {
        const decimals = values.map((value) => new Decimal(String(value)));
        const tally = new Tally();
        for (const value of decimals) tally.add(value);
        expect(tally.total().eq(sum(decimals))).toBe(true);
      }),
    );
  });

  it("refuses what is no finite value", () => {
    expect(() => new Tally().add(new Decimal("NaN"))).toThrow(RangeError);
    expect(() => new Tally().addProduct(new Decimal("2"), new Decimal("Infinity"))).toThrow(RangeError);
  });
});

describe("a weighted mean", () => {
  it("weights each value", () => {
    expect(
      weightedMean(
        ["1", "4"].map((each) => new Decimal(each)),
        ["3", "1"].map((each) => new Decimal(each)),
      ).toString(),
    ).toBe("1.75");
  });

  it("is the value itself where all are alike, whatever the weights", () => {
    fc.assert(
      fc.property(scaled, fc.array(fc.integer({ min: 1 }), { minLength: 1 }), (value, sizes) => {
        const thirds = sizes.map((size) => new Decimal(String(size)).div("3"));
        expect(
          weightedMean(
            thirds.map(() => decimalOf(value)),
            thirds,
          ).eq(decimalOf(value)),
        ).toBe(true);
      }),
    );
  });

  it("is zero of nothing, and where the weights add up to nothing", () => {
    expect(weightedMean([], []).isZero()).toBe(true);
    expect(weightedMean([new Decimal("7")], [zero]).isZero()).toBe(true);
  });
});
