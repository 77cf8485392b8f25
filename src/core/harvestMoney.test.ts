import { describe, expect, it } from "vitest";
import { corn, field, harvested, load, operation, sale, seasonOf, settings } from "../../tests/support/season";
import { sum } from "./numbers/decimal";
import { goalAndHarvest } from "./harvestMoney";
import { layers } from "./kinds";
import type { Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { moneyPerArea, moneyPerUnit, points, share } from "./numbers/units";

const home = field("Home", "100", "200", { tenure: "cash rent", rentPerArea: moneyPerArea("250") });
const hill = field("Hill", "60", "180", { tenure: "crop share", operatorShare: share("0.5") });
const season = (more: Partial<Season> = {}) =>
  seasonOf({
    settings: { ...settings, dryingChargePerPoint: moneyPerUnit("0.04") },
    crops: [{ ...corn, expectedHarvestMoisture: points("19.5"), sellingCostPerUnit: moneyPerUnit("0.1") }],
    fields: [harvested(home), harvested(hill)],
    sales: [sale("6000", "4.3")],
    harvest: [load("Home", "19000", "21", { dock: moneyPerUnit("0.03") }), load("Hill", "11000", "16", { dock: moneyPerUnit("0.02") })],
    operations: [
      operation("Planting", "Home", "20", "plan"),
      operation("Planting", "Home", "23", "done"),
      operation("Spraying", "Hill", "9", "done"),
    ],
    ...more,
  });

describe("the money between goal and harvest", () => {
  it("is split into yield, price and cost by hand, on a field alone", () => {
    // 190 bu of 200, at the standard moisture: no drying but the plan's 4 points at 0.04. v 0.26 then 0.10.
    const {
      crops: [crop],
    } = seasonFigures(season({ fields: [harvested(home)], harvest: [load("Home", "19000", "15", { dock: moneyPerUnit("0.03") })] }));
    const told = goalAndHarvest(crop!, crop!.fields[0]!, "cash")!;
    // (4 − 0.26) × 100 × −10 = −3,740. 6,000 × 0.30 − 19,000 × 0.03 = 1,230. −3 × 100 + 0.16 × 19,000 = 2,740.
    expect([told.byYield, told.byPrice, told.byCost].map((part) => part.toFixed())).toEqual(["-3740", "1230", "2740"]);
    // (4 − 0.26) × 200 − 270 = 478 an acre.
    expect([told.plan.toFixed(), told.harvest.toFixed()]).toEqual(["47800", "48030"]);
  });

  it.each(layers)("adds up over the fields to what moved in the crop, on the layer %s", (layer) => {
    const {
      crops: [crop],
    } = seasonFigures(season());
    const told = crop!.fields.map((each) => goalAndHarvest(crop!, each, layer)!);
    expect(sum(told.map(({ plan }) => plan)).toFixed(10)).toBe(crop!.plan.netPerArea[layer].times(crop!.area).toFixed(10));
    expect(sum(told.map(({ harvest }) => harvest)).toFixed(10)).toBe(
      crop!.sales.withSold.final!.netPerArea[layer].times(crop!.area).toFixed(10),
    );
  });

  it("gives the fields of a crop that is half in the mean price of what is sold and what is not", () => {
    const {
      crops: [crop],
    } = seasonFigures(season({ fields: [harvested(home), hill], harvest: [load("Home", "19000", "15")] }));
    expect(goalAndHarvest(crop!, crop!.fields[1]!, "cash")).toBeNull();
    // 19,000 of 24,400 units: 1,800 × 19,000 ÷ 24,400.
    expect(goalAndHarvest(crop!, crop!.fields[0]!, "cash")!.byPrice.toFixed(6)).toBe("1401.639344");
  });

  it("loses nothing of what is sold of a crop that was lost", () => {
    const {
      crops: [crop],
    } = seasonFigures(season({ harvest: [load("Home", "0"), load("Hill", "0")] }));
    const told = crop!.fields.map((each) => goalAndHarvest(crop!, each, "cash")!);
    expect(told.map(({ byPrice }) => byPrice.toFixed())).toEqual(["16125", "9675"]);
    expect(sum(told.map(({ harvest }) => harvest)).toFixed(10)).toBe(
      crop!.sales.withSold.final!.netPerArea.cash.times(crop!.area).toFixed(10),
    );
  });
});
