import { describe, expect, it } from "vitest";
import { corn, field, harvested, load, operation, sale, seasonOf } from "../../tests/support/season";
import { netPerArea } from "./breakEven";
import { Decimal, sum } from "./numbers/decimal";
import { farmFigures, newestStage } from "./farm";
import { farmYear } from "./lender/farmYear";
import { reasons } from "./lender/reasons";
import { costsOf, scenarios } from "./lender/scenarios";
import { seasonFlows } from "./lender/seasonFlows";
import { dockOf, type DockLine } from "./loadDock";
import type { Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { moneyPerArea, moneyPerUnit, share } from "./numbers/units";

/** Half of the crop is the operator's; 10 an acre of other income, 600 of cost. */
const home = field("Home", "100", "200", { tenure: "crop share", operatorShare: share("0.5") });
const crops = [{ ...corn, otherIncomePerArea: moneyPerArea("10"), sellingCostPerUnit: moneyPerUnit("0.1") }];
const pass = operation("Planting", "Home", "300", "done as planned");
const light = load("Home", "10000", null, { dock: moneyPerUnit("0.05") });
const heavy = load("Home", "8000", null, { dock: moneyPerUnit("0") });
const seasonWith = (more: Partial<Season>) =>
  seasonOf({ crops, fields: [harvested(home)], harvest: [light, heavy], operations: [pass], ...more });

/** Income of the year by every road that tells it: the crop's budget, the farm, the year of the lender, the months. */
function incomes(season: Season) {
  const figures = seasonFigures(season);
  const crop = figures.crops[0]!;
  const flows = seasonFlows(season, figures, [], "2031-12").filter(({ group }) => group === "grain sales" || group === "other income");
  return {
    withSold: crop.sales.withSold[newestStage(crop)]!.incomePerArea.times(crop.area).toFixed(6),
    farm: farmFigures(figures, newestStage).income.toFixed(6),
    year: farmYear(figures).income.toFixed(6),
    months: sum(flows.map(({ amount }) => amount)).toFixed(6),
  };
}

describe("a dock for test weight", () => {
  it("comes off the operator's income alike in the budget, the farm, the lender's year and the months", () => {
    // 18,000 bu, half of them at 4 = 36,000; 10 an acre; half of 10,000 × 0.05 off.
    const expected = "36750.000000";
    expect(incomes(seasonWith({}))).toEqual({ withSold: expected, farm: expected, year: expected, months: expected });
    const { final } = seasonFigures(seasonWith({})).crops[0]!;
    expect(final!.incomePerArea.toFixed()).toBe("367.5");
  });

  it("does so where some of the grain is sold at its own price, and where more is sold than grew", () => {
    // 4,000 at 4.20 and 5,000 at 4: 36,800 + 1,000 − 250.
    const some = "37550.000000";
    expect(incomes(seasonWith({ sales: [sale("4000", "4.2")] }))).toEqual({ withSold: some, farm: some, year: some, months: some });
    // 10,000 at 4.20, 1,000 more than the operator has: 42,000 + 1,000 − 250.
    const beyond = "42750.000000";
    expect(incomes(seasonWith({ sales: [sale("10000", "4.2")] }))).toEqual({
      withSold: beyond,
      farm: beyond,
      year: beyond,
      months: beyond,
    });
  });

  it("is none in the plan, and while the harvest is under way that of the loads alone, nothing of what still stands", () => {
    const { plan, outlook } = seasonFigures(seasonWith({ fields: [home] })).crops[0]!;
    expect([plan.dock.toFixed(), outlook.dock.times("0.5").times(outlook.yields.used).times(outlook.area).toFixed()]).toEqual(["0", "250"]);
    expect(incomes(seasonWith({ fields: [home] })).months).toBe("40750.000000");
  });

  it("raises both break-evens, so that the net return at each is nothing", () => {
    const { final } = seasonFigures(seasonWith({})).crops[0]!;
    const { breakEvenPrice, breakEvenYield, yields, price } = final!;
    expect(netPerArea(costsOf(final!, "operating"), yields.used, breakEvenPrice.operating!).toFixed(20)).toMatch(/^-?0\.0{20}$/);
    expect(netPerArea(costsOf(final!, "operating"), breakEvenYield.operating!, price).toFixed(20)).toMatch(/^-?0\.0{20}$/);
    // v 0.10, d 500 ÷ 18,000, F 300, o 10: 0.1 + 1/36 + 290 ÷ 90 = 3.35; (290) ÷ ((4 − 0.1 − 1/36) × 0.5) = 149.784792.
    expect([breakEvenPrice.operating!.toFixed(6), breakEvenYield.operating!.toFixed(6)]).toEqual(["3.350000", "149.784792"]);
  });

  it("is part of the price that the rest must bring", () => {
    const { sales, outlook } = seasonFigures(seasonWith({ sales: [sale("4000", "4.2")] })).crops[0]!;
    // (300 + 0.1 × 90 − 10) × 100 + 250 − 16,800 = 13,350 on 5,000 bu.
    expect([sales.priceNeeded.operating!.toFixed(), outlook.dock.times("18000").toFixed()]).toEqual(["2.67", "500"]);
  });

  it("is a reason of its own, and the reasons still add up to what moved", () => {
    const figures = seasonFigures(seasonWith({}));
    const { plan, outlook, area } = figures.crops[0]!;
    const told = reasons(figures.crops[0]!, "operating");
    expect(told.find(({ of }) => of === "dock")!.effect.toFixed()).toBe("-250");
    expect(sum(told.map(({ effect }) => effect)).toFixed(10)).toBe(
      outlook.netPerArea.operating.minus(plan.netPerArea.operating).times(area).toFixed(10),
    );
  });

  it("is in the lender's three cases", () => {
    const figures = seasonFigures(seasonWith({})).crops[0]!;
    expect(
      scenarios(figures, crops[0]!, null)
        .find(({ name }) => name === "expected")!
        .incomePerArea.toFixed(),
    ).toBe("367.5");
  });

  it("is the same in whatever order the loads are, and of a load in two parts", () => {
    const of = (harvest: Season["harvest"]) => seasonFigures(seasonWith({ harvest })).crops[0]!.final!.netPerArea.full.toFixed();
    const half = load("Home", "5000", null, { dock: moneyPerUnit("0.05") });
    expect(new Set([of([light, heavy]), of([heavy, light]), of([half, heavy, half])]).size).toBe(1);
  });

  it("falls on nobody where the crop is lost", () => {
    const lost = seasonFigures(seasonWith({ harvest: [load("Home", "0", null, { dock: moneyPerUnit("0.05") })] })).crops[0]!.final!;
    expect([lost.dock.toFixed(), lost.incomePerArea.toFixed()]).toEqual(["0", "10"]);
  });
});

describe("a table of docks", () => {
  const line = (from: string, off: string): DockLine => ({ from: new Decimal(from), off: moneyPerUnit(off) });
  const lines = [line("49", "0.10"), line("54", "0"), line("52", "0.02")];
  it("goes in steps: the highest line that a load reaches counts, and below the lowest there is no answer", () => {
    expect(["60", "54", "53.9", "52", "51.9", "49", "48.9"].map((at) => dockOf(lines, new Decimal(at))?.toFixed() ?? null)).toEqual([
      "0",
      "0",
      "0.02",
      "0.02",
      "0.1",
      "0.1",
      null,
    ]);
  });
});
