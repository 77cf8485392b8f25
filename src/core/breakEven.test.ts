import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakEvenPrice, breakEvenYield, costPerUnit, netPerArea, type Costs } from "./breakEven";
import { moneyPerArea, moneyPerUnit, share, yieldPerArea } from "./numbers/units";

const costs = (fixed: string, moving = "0", operatorShare = "1", otherIncome = "0"): Costs => ({
  fixed: moneyPerArea(fixed),
  moving: moneyPerUnit(moving),
  operatorShare: share(operatorShare),
  otherIncome: moneyPerArea(otherIncome),
});
const any = fc
  .record({
    fixed: fc.integer({ min: 1, max: 200_000 }),
    moving: fc.integer({ min: 0, max: 150 }),
    percent: fc.integer({ min: 1, max: 100 }),
    other: fc.integer({ min: 0, max: 20_000 }),
  })
  .map(({ fixed, moving, percent, other }) => costs(`${fixed}e-2`, `${moving}e-2`, `${percent}e-2`, `${other}e-2`));
const yields = fc.integer({ min: 1, max: 4000 }).map((tenths) => yieldPerArea(`${tenths}e-1`));
const prices = fc.integer({ min: 200, max: 1500 }).map((cents) => moneyPerUnit(`${cents}e-2`));

describe("breakEvenPrice", () => {
  it("spreads the fixed cost over the operator's units and adds what moves with yield", () => {
    expect(breakEvenPrice(costs("630", "0.25", "0.6", "30"), yieldPerArea("200"))!.toFixed()).toBe("5.25");
  });
  it("has no answer where the operator has no crop", () => {
    expect(breakEvenPrice(costs("600"), yieldPerArea("0"))).toBeNull();
    expect(breakEvenPrice(costs("600", "0", "0"), yieldPerArea("200"))).toBeNull();
  });
  it("leaves nothing and costs nothing, to a hair", () => {
    fc.assert(
      fc.property(any, yields, (each, at) => {
        expect(netPerArea(each, at, breakEvenPrice(each, at)!).abs().lt("1e-25")).toBe(true);
      }),
    );
  });
  it("is the cost per unit less the other income per unit", () => {
    fc.assert(
      fc.property(any, yields, (each, at) => {
        const otherPerUnit = each.otherIncome.div(each.operatorShare.times(at));
        expect(costPerUnit(each, at, moneyPerUnit("4"))!.minus(otherPerUnit).minus(breakEvenPrice(each, at)!).abs().lt("1e-25")).toBe(true);
      }),
    );
  });
});

describe("breakEvenYield", () => {
  it("spreads the fixed cost over what a unit leaves of its price", () => {
    expect(breakEvenYield(costs("630", "0.25", "0.6", "30"), moneyPerUnit("5.25"))!.toFixed()).toBe("200");
  });
  it("has no answer where a unit costs what it brings", () => {
    expect(breakEvenYield(costs("600", "4"), moneyPerUnit("4"))).toBeNull();
  });
  it("gives back the yield at which its price breaks even", () => {
    fc.assert(
      fc.property(any, prices, (each, price) => {
        const needed = breakEvenYield(each, price)!;
        expect(netPerArea(each, needed, price).abs().lt("1e-25")).toBe(true);
      }),
    );
  });
});
