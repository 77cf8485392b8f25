import { describe, expect, it } from "vitest";
import {
  application,
  corn,
  field,
  harvested,
  item,
  load,
  operation,
  otherCost,
  purchase,
  sale,
  seasonOf,
  settings,
} from "../../../tests/support/season";
import { Decimal, sum } from "../numbers/decimal";
import { layers } from "../kinds";
import type { Loan, Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { money, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../numbers/units";
import type { Policy } from "./guarantee";
import { farmYear } from "./farmYear";
import { reasons } from "./reasons";
import { scenarios } from "./scenarios";
import { seasonFlows, termPayments } from "./seasonFlows";

const home = field("Home", "100", "200", { provenYield: yieldPerArea("180"), tenure: "cash rent", rentPerArea: moneyPerArea("200") });
const season: Season = seasonOf({
  settings: { ...settings, operatingInterest: { method: "by date", rate: new Decimal("0.08"), repaymentDate: "2031-12-01" } },
  crops: [
    {
      ...corn,
      lowPrice: moneyPerUnit("3.5"),
      highPrice: moneyPerUnit("5"),
      sellingCostPerUnit: moneyPerUnit("0.1"),
      otherIncomePerArea: moneyPerArea("10"),
    },
  ],
  fields: [home],
  items: [item("Urea", "0.30")],
  purchases: [purchase("Urea", "10000", "3500", { paidOn: "2031-02-10" })],
  applications: [application("Urea", "Home", "150", "plan", { date: "2031-05-01" })],
  operations: [
    operation("Planting", "Home", "20", "plan", { date: "2031-05-05" }),
    operation("Planting", "Home", "23", "done", { date: "2031-05-06" }),
  ],
  otherCosts: [
    otherCost("Living", "30000", { kind: "family living", paidOn: "2031-06-01" }),
    otherCost("Own time", "5000", { kind: "unpaid labour", cash: false }),
  ],
  sales: [{ ...sale("5000", "4.2"), delivered: "2031-11-01" }],
});
const term: Loan = {
  name: "Planter",
  kind: "term",
  balance: money("50000"),
  rate: new Decimal("0.06"),
  payment: money("9000"),
  paymentsAYear: new Decimal("2"),
  nextDue: "2031-03-15",
  firstDue: null,
  bornBy: null,
  source: { table: "Loans", row: 1 },
};
const figures = seasonFigures(season);

describe("seasonFlows", () => {
  const flows = seasonFlows(season, figures, [], "2031-12");
  const of = (group: string) => flows.filter((flow) => flow.group === group).map((flow) => `${flow.month} ${flow.amount}`);

  it("dates invoices as paid, the rest of the plan as planned, and rent in halves", () => {
    expect(of("fertilizer")).toEqual(["2031-02 -3500", "2031-05 -1750"]);
    expect(of("custom work")).toEqual(["2031-05 -2300"]);
    expect(of("cash rent")).toEqual(["2031-03 -10000", "2031-11 -10000"]);
  });
  it("sells contracts in their month of delivery and the rest at the expected price", () => {
    expect(of("grain sales")).toEqual(["2031-11 21000", "2031-12 60000"]);
    expect(of("drying, haul and selling")).toEqual(["2031-11 -500", "2031-12 -1500"]);
  });
  it("leaves out what is not paid in money", () => {
    expect(of("unpaid labour")).toEqual([]);
  });
});

describe("a term loan", () => {
  it("is paid at its payments a year in the season's year", () => {
    expect(termPayments(term, season.settings).map((flow) => `${flow.month} ${flow.amount}`)).toEqual(["2031-03 -9000", "2031-09 -9000"]);
  });
  it("is the term debt of the year: interest on each half year's balance, the rest principal", () => {
    const withLoan = seasonFigures({ ...season, loans: [term] });
    const year = farmYear(withLoan);
    // 1,500.00 and 3 % of 42,500.
    expect([year.termInterest, year.termPrincipal].map(String)).toEqual(["2775", "15225"]);
    // 5,000 bu at 4.20 and 15,000 at 4.00, and 1,000 of other income.
    expect(year.netIncome.plus(withLoan.crops[0]!.outlook.costPerArea.layers.cash.times("100")).toFixed(8)).toBe("82000.00000000");
    expect(year.familyLiving.toFixed()).toBe("30000");
  });
});

describe("reasons", () => {
  it.each(layers)("add up to outlook less plan on the layer %s, the largest first", (layer) => {
    const after = seasonFigures({ ...season, fields: [harvested(home)], harvest: [load("Home", "18500")] });
    const all = reasons(after.crops[0]!, layer);
    const { plan, outlook } = after.crops[0]!;
    const difference = outlook.netPerArea[layer].minus(plan.netPerArea[layer]).times("100");
    expect(
      sum(all.map(({ effect }) => effect))
        .minus(difference)
        .abs()
        .lt("1e-24"),
    ).toBe(true);
    expect(all[0]!.of).toBe("yield");
    // (4.00 − 0.10) × 100 ac × −15 bu
    expect(all[0]!.effect.toFixed()).toBe("-5850");
  });
});

describe("scenarios", () => {
  it("pull yield and price apart", () => {
    const all = scenarios(figures.crops[0]!, season.crops[0]!, null);
    expect(all.map(({ name, yield: at, price }) => `${name} ${at} ${price}`)).toEqual(["low 180 3.5", "expected 200 4", "high 200 5"]);
    // Expected less low: 20 bu at 3.90 and 50 cents on 180 bu.
    expect(all[1]!.netPerArea.full.minus(all[0]!.netPerArea.full).toFixed(10)).toBe("168.0000000000");
  });

  it("take each field at its own highest and lowest of goal, outlook and proven yield", () => {
    const fields = [home, harvested(field("Hill", "50", "160"))];
    const farm = seasonFigures({ ...season, fields, harvest: [load("Hill", "8500")] });
    // Home 180 to 200 on 100 acres, Hill 160 to 170 on 50.
    expect(scenarios(farm.crops[0]!, season.crops[0]!, null).map(({ yield: at }) => at.times("150").toFixed(10))).toEqual([
      "26000.0000000000",
      "28500.0000000000",
      "28500.0000000000",
    ]);
  });

  it("show the operator's share of what the policy pays", () => {
    const shared = seasonFigures({ ...season, fields: [{ ...home, tenure: "crop share", operatorShare: share("0.6") }] });
    const policy: Policy = {
      form: "revenue",
      approvedYield: yieldPerArea("180"),
      coverage: share("0.75"),
      projectedPrice: moneyPerUnit("4.8"),
      harvestPrice: null,
      harvestPriceOption: false,
      priceCap: new Decimal("2"),
    };
    const paid = (of: Policy) =>
      scenarios(shared.crops[0]!, season.crops[0]!, of).map(
        ({ insurance }) => `${insurance!.perArea.toFixed()} at the ${insurance!.priceOf} ${insurance!.price.toFixed()}`,
      );
    // 135 bu × 4.80 = 648 guaranteed; at the policy's harvest price of 3.00, 180 bu are 540 and 108 short, 200 bu 600 and 48: six
    // tenths of it.
    expect(paid({ ...policy, harvestPrice: moneyPerUnit("3") })).toEqual([
      "64.8 at the harvest price 3",
      "28.8 at the harvest price 3",
      "28.8 at the harvest price 3",
    ]);
    // The crop's own low price of 3.50 is the farm's and moves nothing: without a harvest price 180 bu at 4.80 are 864, more than 648.
    expect(paid(policy)).toEqual(Array.from({ length: 3 }, () => "0 at the projected price 4.8"));
  });
});
