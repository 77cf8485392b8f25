import { describe, expect, it } from "vitest";
import { budget } from "../stageBudget";
import { zero } from "../numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../numbers/units";
import { netOfGrain } from "./change";
import { grainBeforeDrying, grainOf } from "./grain";

const figures = budget({
  area: area("80"),
  yields: { goal: yieldPerArea("200"), outlook: yieldPerArea("190"), proven: null, used: yieldPerArea("190") },
  harvested: false,
  crop: { price: moneyPerUnit("4.20"), lowPrice: null },
  operatorShare: share("0.5"),
  fixed: () => new Map(),
  interestInFull: { fixed: () => zero, moving: zero },
  otherIncome: moneyPerArea("0"),
  moving: new Map([
    ["drying", moneyPerUnit("0.20")],
    ["haul", moneyPerUnit("0.15")],
  ]),
});

describe("grainOf", () => {
  it("is what a bushel brings the operator home in the season's own figures", () => {
    expect(netOfGrain(grainOf(figures)).toString()).toBe("1.925");
  });
  it("leaves to flexible rent its part of one more bushel, where price × yield is above the base gross", () => {
    const steps = [{ from: moneyPerArea("720"), share: share("0.4") }];
    const rented = { ...figures, operatorShare: share("1"), rent: steps };
    // 4.20 − 0.35 without, and 0.4 × 4.20 less with it: 798 of gross.
    expect(netOfGrain(grainOf({ ...rented, rent: [] })).toString()).toBe("3.85");
    expect(netOfGrain(grainOf(rented)).toString()).toBe("2.17");
    expect(netOfGrain(grainBeforeDrying(rented)).toString()).toBe("2.37");
    const below = { ...rented, yields: { ...figures.yields, used: yieldPerArea("150") } };
    expect(grainOf(below).rentShare).toBeUndefined();
  });
  it("leaves drying to a change of moisture", () => {
    expect(grainBeforeDrying(figures).moving.toString()).toBe("0.15");
  });
});
