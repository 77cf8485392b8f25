import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectPrinted } from "../../tests/support/expectPrinted";
import { corn, field, harvested, load, otherCost, sale, seasonOf, settings } from "../../tests/support/season";
import { breakEvenPrice, breakEvenYield, netPerArea, rentAboveBase, type Costs } from "./breakEven";
import { farmFigures } from "./farm";
import type { FieldFigures } from "./figures";
import { leastToPay, rentAbove, stepsOfCrop, stepsOfField, type FlexibleRent, type RentStep } from "./flexibleRent";
import { goalAndHarvest } from "./harvestMoney";
import { layers } from "./kinds";
import { farmYear } from "./lender/farmYear";
import { reasons } from "./lender/reasons";
import { costsOf, scenarios } from "./lender/scenarios";
import { seasonFlows } from "./lender/seasonFlows";
import { sum, zero, type Decimal } from "./numbers/decimal";
import { area, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "./numbers/units";
import type { Field, Season } from "./season";
import { seasonFigures } from "./seasonFigures";

const terms = (baseGross: string, shareAbove: string, most: string | null = null): FlexibleRent => ({
  baseGross: moneyPerArea(baseGross),
  shareAbove: share(shareAbove),
  most: most === null ? null : moneyPerArea(most),
});
const flexible = (rent: string, baseGross: string, shareAbove: string, most: string | null = null): Partial<Field> => ({
  tenure: "flexible rent",
  rentPerArea: moneyPerArea(rent),
  flexibleRent: terms(baseGross, shareAbove, most),
});
const steps = (rent: string, baseGross: string, shareAbove: string, most: string | null = null): readonly RentStep[] =>
  stepsOfField(field("Home", "100", "200", flexible(rent, baseGross, shareAbove, most)));
const costs = (fixed: string, rent: readonly RentStep[], moving = "0"): Costs => ({
  fixed: moneyPerArea(fixed),
  moving: moneyPerUnit(moving),
  operatorShare: share("1"),
  otherIncome: moneyPerArea("0"),
  rent,
});

describe("rent above its base", () => {
  it("is a share of what the gross exceeds the base gross, as far as the most that is paid", () => {
    const rent = steps("200", "720", "0.4", "550");
    const at = (gross: string) => rentAbove(rent, moneyPerArea(gross)).toFixed();
    expect([at("0"), at("720"), at("721"), at("1500"), at("1595"), at("1600"), at("9000")]).toEqual([
      "0",
      "0",
      "0.4",
      "312",
      "350",
      "350",
      "350",
    ]);
  });
  it("does not move where the share is nothing or the base is the most", () => {
    expect([steps("200", "720", "0"), steps("200", "720", "0.4", "200")]).toEqual([[], []]);
    expect(stepsOfField(field("Home", "100", "200", { tenure: "cash rent", rentPerArea: moneyPerArea("200") }))).toEqual([]);
  });
});

describe("break-evens under a flexible rent", () => {
  const rent = steps("200", "720", "0.4");
  it("are solved with it: 4.27 at 200 bushels, 189.7 bushels at 4.50, by hand", () => {
    // 600 without rent, 200 base: 200 p = 800 + 0.4 (200 p − 720), so 120 p = 512; and 4.5 Y × 0.6 = 512.
    expectPrinted(breakEvenPrice(costs("800", rent), yieldPerArea("200")), "4.27");
    expect(breakEvenYield(costs("800", rent), moneyPerUnit("4.5"))!.toFixed(9)).toBe("189.629629630");
    // Without the landlord's share it would have been 4.00.
    expect(breakEvenPrice(costs("800", []), yieldPerArea("200"))!.toFixed()).toBe("4");
  });
  it("are those of the base rent below the base gross, and of the most rent beyond it", () => {
    expect(breakEvenPrice(costs("700", rent), yieldPerArea("200"))!.toFixed()).toBe("3.5");
    // 1,400 and 50 of rent above: 7.25, where the limit was reached at 845 a gross of 4.225.
    expect(breakEvenPrice(costs("1400", steps("200", "720", "0.4", "250")), yieldPerArea("200"))!.toFixed()).toBe("7.25");
    expect(breakEvenYield(costs("1400", steps("200", "720", "0.4", "250")), moneyPerUnit("5"))!.toFixed()).toBe("290");
  });
  it("have no answer where the landlord takes all of more, and where he takes more than a bushel leaves", () => {
    expect(breakEvenPrice(costs("800", steps("200", "720", "1")), yieldPerArea("200"))).toBeNull();
    // A bushel leaves 1.50 of 4.50, of which 1.80 is rent: 240 bushels would never come to 800.
    expect(breakEvenYield(costs("800", rent, "3"), moneyPerUnit("4.5"))).toBeNull();
    // With a limit of 100 above the base it does, far beyond: (800 + 100) ÷ 1.5.
    expect(breakEvenYield(costs("800", steps("200", "720", "0.4", "300"), "3"), moneyPerUnit("4.5"))!.toFixed(9)).toBe("600.000000000");
  });
  it("take the lowest yield of several: what a field made at the base gross it may lose to rent beyond", () => {
    // 1.5 × 160 = 240 is just what is to pay at the base gross of 720.
    expect(breakEvenYield(costs("240", rent, "3"), moneyPerUnit("4.5"))!.toFixed()).toBe("160");
  });

  const someSteps = fc
    .array(
      fc.record({
        base: fc.integer({ min: 0, max: 90_000 }),
        percent: fc.integer({ min: 1, max: 100 }),
        room: fc.option(fc.integer({ min: 1, max: 30_000 })),
        acres: fc.integer({ min: 1, max: 400 }),
        goal: fc.integer({ min: 1, max: 3000 }),
      }),
      { minLength: 1, maxLength: 4 },
    )
    .map((fields) =>
      stepsOfCrop(
        fields.map(({ base, percent, room, acres, goal }) => ({
          steps: steps("100", `${base}e-2`, `${percent}e-2`, room === null ? null : `${10_000 + room}e-2`),
          area: area(String(acres)),
          yield: yieldPerArea(`${goal}e-1`),
        })),
      ),
    );
  const cents = (max: number) => fc.integer({ min: 1, max }).map((each) => `${each}e-2`);

  it("leave nothing and cost nothing, to a hair, and no lower price or yield does", () => {
    fc.assert(
      fc.property(someSteps, cents(150_000), cents(400), cents(1500), cents(30_000), (rent, fixed, moving, price, at) => {
        const of = costs(fixed, rent, moving);
        const here = yieldPerArea(at);
        const needed = breakEvenPrice(of, here);
        if (needed !== null) {
          expect(netPerArea(of, here, needed).abs().lt("1e-18")).toBe(true);
          expect(netPerArea(of, here, moneyPerUnit(needed.minus("0.01"))).lt("0")).toBe(true);
        }
        const yieldNeeded = breakEvenYield(of, moneyPerUnit(price));
        if (yieldNeeded !== null) {
          expect(netPerArea(of, yieldNeeded, moneyPerUnit(price)).abs().lt("1e-18")).toBe(true);
          for (const part of ["0.2", "0.5", "0.9", "0.999"])
            expect(netPerArea(of, yieldPerArea(yieldNeeded.times(part)), moneyPerUnit(price)).lt("0")).toBe(true);
        } else {
          for (const many of ["1", "50", "200", "1000", "100000"])
            expect(netPerArea(of, yieldPerArea(many), moneyPerUnit(price)).lt("0")).toBe(true);
        }
      }),
    );
  });
  it("are nothing to pay at a gross of nothing", () => {
    expect(leastToPay(zero.plus("1"), zero, rent, zero.plus("5"))!.toFixed()).toBe("5");
  });
});

const month = "2031-11";
const home = field("Home", "100", "200", flexible("200", "720", "0.4", "400"));
const hill = field("Hill", "60", "180", { tenure: "cash rent", rentPerArea: moneyPerArea("250") });
const brook = field("Brook", "40", "210", flexible("150", "600", "0.3"));
const shared = field("Ridge", "50", "190", { tenure: "crop share", operatorShare: share("0.6") });
const season = (more: Partial<Season> = {}) =>
  seasonOf({
    settings,
    crops: [
      {
        ...corn,
        price: moneyPerUnit("4.5"),
        lowPrice: moneyPerUnit("3.8"),
        highPrice: moneyPerUnit("5.4"),
        sellingCostPerUnit: moneyPerUnit("0.2"),
      },
    ],
    fields: [home, hill, brook, shared],
    otherCosts: [otherCost("Inputs", "400", { kind: "other operating", basis: "per acre" })],
    ...more,
  });
const rentOf = (of: FieldFigures, stage: "plan" | "outlook" = "outlook"): Decimal =>
  sum(of[stage].charges.filter(({ kind }) => kind === "cash rent").map(({ amount }) => amount));

describe("a season with flexible rent", () => {
  const figures = seasonFigures(season());
  const [crop] = figures.crops;
  const [ofHome, ofHill, ofBrook] = crop!.fields;

  it("charges each field base and share, once, and an operating layer none of it", () => {
    // 200 + 0.4 × (900 − 720); 250; 150 + 0.3 × (945 − 600).
    expect([rentOf(ofHome!), rentOf(ofHill!), rentOf(ofBrook!)].map((each) => each.toFixed())).toEqual(["27200", "15000", "10140"]);
    expect(ofHome!.outlook.budget.costPerArea.byKind.get("cash rent")!.toFixed()).toBe("272");
    const { layers: layer } = ofHome!.outlook.budget.costPerArea;
    expect([layer.cash.minus(layer.operating).toFixed(), layer.cashNeed.minus(layer.full).toFixed()]).toEqual(["272", "0"]);
    expect(ofHome!.outlook.budget.fixed.byKind.get("cash rent")!.toFixed()).toBe("200");
  });

  it("adds up: charges to the cost of the crop, the crop to its fields, at every stage", () => {
    for (const stage of ["plan", "outlook"] as const) {
      const rents = sum(crop!.fields.map((each) => rentOf(each, stage)));
      expect(crop![stage].costPerArea.byKind.get("cash rent")!.times(crop![stage].area).toFixed(10)).toBe(rents.toFixed(10));
      for (const layer of layers) {
        const nets = sum(crop!.fields.map((each) => each[stage].budget.netPerArea[layer].times(each.area)));
        expect(crop![stage].netPerArea[layer].times(crop![stage].area).toFixed(10)).toBe(nets.toFixed(10));
      }
    }
  });

  it("nets nothing at the crop's break-even price and yield, every field by its own rent", () => {
    for (const layer of layers) {
      const { outlook } = crop!;
      const price = breakEvenPrice(costsOf(outlook, layer), outlook.yields.used)!;
      const at = seasonFigures(season({ crops: [{ ...season().crops[0]!, price: moneyPerUnit(price) }] })).crops[0]!;
      expect(at.outlook.netPerArea[layer].abs().lt("1e-18")).toBe(true);
      const factor = outlook.breakEvenYield[layer]!.div(outlook.yields.used);
      const scaled = season().fields.map((each) => ({ ...each, yieldGoal: yieldPerArea(each.yieldGoal.times(factor)) }));
      expect(
        seasonFigures(season({ fields: scaled }))
          .crops[0]!.outlook.netPerArea[layer].abs()
          .lt("1e-18"),
      ).toBe(true);
    }
  });

  it("follows the price and each field's own yield in the low, expected and high case", () => {
    const proven = season().fields.map((each) => (each === home ? { ...each, provenYield: yieldPerArea("150") } : each));
    const [low, expected, high] = scenarios(seasonFigures(season({ fields: proven })).crops[0]!, season().crops[0]!, null);
    const rents = (price: string, yields: readonly [string, string]) =>
      sum([
        rentAbove(stepsOfField(home), moneyPerArea(zero.plus(price).times(yields[0]))).times("100"),
        rentAbove(stepsOfField(brook), moneyPerArea(zero.plus(price).times(yields[1]))).times("40"),
      ]);
    const without = scenarios(
      seasonFigures(season({ fields: proven.map((each) => ({ ...each, flexibleRent: null })) })).crops[0]!,
      season().crops[0]!,
      null,
    );
    const difference = [low!, expected!, high!].map((each, index) =>
      without[index]!.netPerArea.cash.minus(each.netPerArea.cash).times(crop!.area).toFixed(10),
    );
    // 570 on Home lies below its base gross although the crop's mean is above it.
    expect(difference).toEqual(
      [rents("3.8", ["150", "210"]), rents("4.5", ["200", "210"]), rents("5.4", ["200", "210"])].map((each) => each.toFixed(10)),
    );
    expect(low!.netPerArea.operating.eq(without[0]!.netPerArea.operating)).toBe(true);
  });

  it("pays in the year what is charged, the base in March and November, the rest with the grain", () => {
    const sold = season({ sales: [{ ...sale("10000", "4.7"), delivered: "2032-01-10" }] });
    const here = seasonFigures(sold);
    const flows = seasonFlows(sold, here, [], month).filter(({ group }) => group === "cash rent");
    const above = sum([ofHome!, ofBrook!].map(({ outlook: { budget }, area: land }) => budget.rentAboveBase.times(land)));
    const at = (wanted: string) => sum(flows.filter((flow) => flow.month === wanted).map(({ amount }) => amount)).neg();
    const base = sum([home, hill, brook].map((each) => each.rentPerArea!.times(each.area)));
    const units = crop!.outlook.operatorShare.times(crop!.outlook.yields.used).times(crop!.area);
    expect(at("2031-03").toFixed(6)).toBe(base.div("2").toFixed(6));
    expect(at("2032-01").toFixed(6)).toBe(above.times("10000").div(units).toFixed(6));
    expect(
      sum(flows.map(({ amount }) => amount))
        .neg()
        .toFixed(10),
    ).toBe(base.plus(above).toFixed(10));
    expect(farmYear(here).cashCosts.toFixed(6)).toBe(here.crops[0]!.outlook.costPerArea.layers.cash.times(here.crops[0]!.area).toFixed(6));
  });

  it("sells the rest at a price that pays with the rent that it moves, and without sales at the break-even price", () => {
    expect(crop!.sales.priceNeeded.cash!.toFixed(12)).toBe(crop!.outlook.breakEvenPrice.cash!.toFixed(12));
    const some = season({ sales: [sale("15000", "4.1")] });
    const needed = seasonFigures(some).crops[0]!.sales.priceNeeded.cash!;
    const at = seasonFigures({ ...some, crops: [{ ...some.crops[0]!, price: needed }] });
    expect(at.crops[0]!.sales.withSold.outlook.netPerArea.cash.abs().lt("1e-18")).toBe(true);
    expect(
      farmFigures(at, () => "outlook")
        .leftOver.cash.abs()
        .lt("1e-15"),
    ).toBe(true);
  });

  it("tells the rent that harvest moved: among the reasons and between goal and harvest, adding up", () => {
    const done = season({
      fields: season().fields.map((each) => harvested(each)),
      harvest: [load("Home", "21000", "15"), load("Hill", "11000", "15"), load("Brook", "9000", "15"), load("Ridge", "9000", "15")],
    });
    const [here] = seasonFigures(done).crops;
    expect(here!.fields[0]!.final!.budget.rentAboveBase.toFixed()).toBe("90");
    for (const layer of layers) {
      const all = sum(reasons(here!, layer).map(({ effect }) => effect));
      expect(all.toFixed(10)).toBe(here!.outlook.netPerArea[layer].minus(here!.plan.netPerArea[layer]).times(here!.area).toFixed(10));
      const told = sum(here!.fields.map((each) => goalAndHarvest(here!, each, layer)!.harvest));
      expect(told.toFixed(10)).toBe(here!.sales.withSold.final!.netPerArea[layer].times(here!.area).toFixed(10));
    }
  });
});

describe("the rent of a crop", () => {
  it("is that of its only field, and of nothing that does not grow", () => {
    const only = stepsOfField(home);
    expect(stepsOfCrop([{ steps: only, area: area("100"), yield: yieldPerArea("200") }]).map((step) => step.from.toFixed())).toEqual([
      "720",
      "1220",
    ]);
    expect(
      stepsOfCrop([
        { steps: only, area: area("100"), yield: yieldPerArea("0") },
        { steps: [], area: area("50"), yield: yieldPerArea("10") },
      ]),
    ).toEqual([]);
  });
  it("is the sum of its fields at every price, each at its own yield", () => {
    const fields = [home, brook].map((each) => ({ steps: stepsOfField(each), area: each.area, yield: each.yieldGoal }));
    const mean = yieldPerArea(sum(fields.map((each) => each.yield.times(each.area))).div("140"));
    for (const price of ["2", "3.6", "4.5", "6", "9"]) {
      const own = sum(fields.map((each) => rentAbove(each.steps, each.yield.times(price)).times(each.area)));
      const whole = rentAboveBase({ rent: stepsOfCrop(fields) }, mean, moneyPerUnit(price)).times("140");
      expect(whole.toFixed(12)).toBe(own.toFixed(12));
    }
  });
});
