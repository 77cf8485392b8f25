import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { heatUnitsOf, heatUnitWays } from "../../src/core/weather/heatUnits";
import { agree, divided, fraction, larger, minus, plus, read, smaller, times, zero, type Fraction } from "./fraction";

const whole = (value: bigint) => fraction(value);
const mean = (a: Fraction, b: Fraction) => divided(plus(a, b), whole(2n));
/** The four ways, from what they are said to be: °F held between 50 and 86; °C by a curve and a line; °C less a base. */
const exact = (high: Fraction, low: Fraction, unit: "F" | "C"): Readonly<Record<(typeof heatUnitWays)[number], Fraction>> => {
  const inF = (value: Fraction) => (unit === "F" ? value : plus(times(value, fraction(9n, 5n)), whole(32n)));
  const inC = (value: Fraction) => (unit === "C" ? value : times(minus(value, whole(32n)), fraction(5n, 9n)));
  const held = (value: Fraction) => smaller(larger(inF(value), whole(50n)), whole(86n));
  const above = larger(minus(inC(high), whole(10n)), zero);
  const curve = larger(minus(times(read("3.33"), above), times(read("0.084"), above, above)), zero);
  const line = larger(times(read("1.8"), minus(inC(low), read("4.4"))), zero);
  const over = (base: bigint) => larger(minus(mean(inC(high), inC(low)), whole(base)), zero);
  return {
    "growing degree 86/50": minus(mean(held(high), held(low)), whole(50n)),
    "corn heat units": mean(curve, line),
    "base 10 C": over(10n),
    "base 5 C": over(5n),
  };
};

describe("heat units of a day", () => {
  it("are what exact fractions give, in all four ways and both units", () => {
    const degrees = fc.integer({ min: -400, max: 1200 }).map((tenths) => new Decimal(String(tenths)).div("10"));
    fc.assert(
      fc.property(degrees, degrees, fc.constantFrom("F" as const, "C" as const), (a, b, unit) => {
        const [high, low] = a.gte(b) ? [a, b] : [b, a];
        for (const way of heatUnitWays)
          expect(
            agree(heatUnitsOf(way, { high, low }, unit), exact(read(high), read(low), unit)[way]),
            `${way} ${high} ${low} ${unit}`,
          ).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
