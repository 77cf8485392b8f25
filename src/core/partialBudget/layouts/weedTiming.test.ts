import { describe, expect, it } from "vitest";
import { Decimal } from "../../numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, share, yearlyRate, yieldPerArea } from "../../numbers/units";
import { weedLoss, weedLosses } from "../../weeds/weedLoss";
import { netChange } from "../netChange";
import { earlierPass, yieldKept, type WeedTiming } from "./weedTiming";

const loss = (density: "thick" | "thin", height: string) => weedLoss(density, new Decimal(height))?.toFixed() ?? null;
const of: WeedTiming = {
  area: area("100"),
  areaUnit: "ac",
  yieldUnit: "bu",
  grain: { price: moneyPerUnit("4"), moving: moneyPerUnit("0.5"), share: share("1") },
  rate: yearlyRate("0.06"),
  density: "thick",
  early: new Decimal("5"),
  late: new Decimal("11"),
  yieldNow: yieldPerArea("200"),
  extra: moneyPerArea("12"),
  spared: moneyPerArea("2"),
};

describe("yield lost to weeds", () => {
  it("is as printed at the heights of the source, and straight between two of them", () => {
    // University of Guelph, Weed Technology 36(2), 2022: 5 % at 7 cm, 10 % at 11 cm in thick weeds; 9 cm lies between them.
    expect([
      loss("thick", "7"),
      loss("thick", "11"),
      loss("thick", "27"),
      loss("thin", "11"),
      loss("thin", "53"),
      loss("thick", "9"),
    ]).toEqual(["5", "10", "25", "5", "10", "7.5"]);
  });
  it("is not reckoned beyond them", () => {
    expect([loss("thick", "2.9"), loss("thick", "27.1"), loss("thin", "0.9"), loss("thin", "54")]).toEqual([null, null, null, null]);
  });
  it("never falls with height", () => {
    for (const points of Object.values(weedLosses)) {
      for (const [index, { height, loss: lost }] of points.slice(1).entries())
        expect(height.gt(points[index]!.height) && lost.gt(points[index]!.loss)).toBe(true);
    }
  });
});

describe("an earlier weed pass", () => {
  it("keeps the yield between the two losses, against what it costs more", () => {
    // 10 − 2.5 % of 200 bu are 15 bu at 3.50; 12 more, 2 spared.
    expect(yieldKept(of)!.toFixed()).toBe("15");
    expect(netChange(earlierPass(of).change).net.perArea!.toFixed()).toBe("42.5");
  });
  it("leaves the yield blank where a height is outside the table, and says whose table it is", () => {
    const outside = earlierPass({ ...of, late: new Decimal("40") });
    expect(netChange(outside.change).blank.map(({ item }) => item)).toEqual(["Yield kept"]);
    expect(outside.cautions.join(" ")).toContain("one table, nine trials in Ontario");
  });
});
