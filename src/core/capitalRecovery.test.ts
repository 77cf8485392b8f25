import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { capitalRecovery, capitalRecoveryFactor, discount } from "./capitalRecovery";
import { sum } from "./numbers/decimal";
import { money, yearlyRate, years } from "./numbers/units";

const rates = fc.integer({ min: 1, max: 2_000 }).map((basisPoints) => yearlyRate(`${basisPoints}e-4`));
const lives = fc.integer({ min: 1, max: 30 }).map((n) => years(String(n)));
const prices = fc.integer({ min: 1, max: 100_000_000 }).map((cents) => money(`${cents}e-2`));

describe("capitalRecoveryFactor", () => {
  it("is one over the years without interest", () => {
    expect(capitalRecoveryFactor(yearlyRate("0"), years("8")).toString()).toBe("0.125");
  });

  it("refuses a life of no years", () => {
    expect(() => capitalRecoveryFactor(yearlyRate("0.05"), years("0"))).toThrow(RangeError);
    expect(() => capitalRecoveryFactor(yearlyRate("-1"), years("5"))).toThrow(RangeError);
  });

  it("is the level payment whose present values add up to what was lent", () => {
    fc.assert(
      fc.property(rates, lives, (rate, n) => {
        const payment = capitalRecoveryFactor(rate, n);
        const present = Array.from({ length: n.toNumber() }, (_, index) => payment.times(discount(rate, years(String(index + 1)))));
        expect(sum(present).toFixed(20)).toBe("1.00000000000000000000");
      }),
    );
  });
});

describe("capitalRecovery", () => {
  it("equals depreciation at the factor and interest on the salvage value", () => {
    fc.assert(
      fc.property(prices, prices, rates, lives, (price, salvage, rate, n) => {
        const other = price.minus(salvage).times(capitalRecoveryFactor(rate, n)).plus(salvage.times(rate));
        expect(capitalRecovery(price, salvage, rate, n).toFixed(12)).toBe(other.toFixed(12));
      }),
    );
  });

  it("is the loss in value by the year where nothing bears interest", () => {
    expect(capitalRecovery(money("1000"), money("400"), yearlyRate("0"), years("6")).toString()).toBe("100");
  });
});
