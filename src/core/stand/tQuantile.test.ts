import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal } from "../numbers/decimal";
import { pi } from "./standCount";
import { chanceWithin, tQuantile } from "./tQuantile";

/** The quarter turn halved until nothing is left to tell: what the short way must come to, digit for digit. */
function byHalvings(freedom: Decimal, confidence: Decimal): Decimal {
  let [low, high] = [new Decimal("0"), pi.div("2")];
  for (let step = 0; step < 70; step += 1) {
    const middle = low.plus(high).div("2");
    if (chanceWithin(middle, freedom).lt(confidence)) low = middle;
    else high = middle;
  }
  return freedom.sqrt().times(low.plus(high).div("2").tan());
}

describe("tQuantile", () => {
  it("comes by secants to the very digits that halving alone comes to", () => {
    const freedoms = fc.oneof(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 41, max: 300 }));
    const confidences = fc.oneof(fc.constantFrom(5_000, 8_000, 9_000, 9_500, 9_900), fc.integer({ min: 1, max: 9_999 }));
    fc.assert(
      fc.property(freedoms, confidences, (freedom, ofTenThousand) => {
        const [of, confidence] = [new Decimal(String(freedom)), new Decimal(`${ofTenThousand}e-4`)];
        expect(tQuantile(of, confidence).toString()).toBe(byHalvings(of, confidence).toString());
      }),
      { numRuns: 40 },
    );
  });
});
