import { describe, expect, it } from "vitest";
import {
  application,
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
import { Decimal } from "../numbers/decimal";
import { cashFlow } from "../lender/cashFlow";
import { monthsBetween } from "../lender/month";
import { paidAndCharged } from "../lender/paidAndCharged";
import { seasonFlows } from "../lender/seasonFlows";
import { seasonFigures } from "../seasonFigures";
import type { BudgetLine, Season } from "../season";
import { area, money, moneyPerUnit, share } from "../numbers/units";

const line = (kind: BudgetLine["kind"], amount: string, more: Partial<BudgetLine> = {}): BudgetLine => ({
  over: { crop: "Corn" },
  kind,
  amount: new Decimal(amount),
  basis: "per acre",
  paidOn: null,
  operatorCostShare: share("1"),
  allIn: false,
  source: { table: "Budget", row: 1 },
  ...more,
});
const home = field("Home", "100", "200");
const hill = field("Hill", "50", "160");

/** Cost of a kind in a field at each stage, an acre. */
function perAcre(kind: BudgetLine["kind"], parts: Partial<Season>, name = "Home"): string {
  const of = seasonFigures(seasonOf({ fields: [home, hill], ...parts }))
    .crops.flatMap(({ fields }) => fields)
    .find((each) => each.field === name)!;
  return [of.plan, of.outlook, of.final]
    .map((stage) => (stage === null ? "-" : (stage.budget.costPerArea.byKind.get(kind) ?? new Decimal("0")).toDecimalPlaces(8).toFixed()))
    .join(" ");
}
/** Every group of the cash flow in which charged, its differences and paid do not add up. */
function apart(parts: Partial<Season>): readonly string[] {
  const season = seasonOf({ fields: [home, hill], ...parts });
  const figures = seasonFigures(season);
  const flows = seasonFlows(season, figures, [], "2031-12");
  const flow = cashFlow(flows, monthsBetween("2030-01", "2032-12"), { opening: money("0"), rate: new Decimal("0") }, money("0"));
  return paidAndCharged(season, figures, flow)
    .filter(({ charged, differences, paid }) =>
      Object.values(differences)
        .reduce((all, each) => all.plus(each), charged)
        .minus(paid)
        .abs()
        .gt("0.0001"),
    )
    .map(({ group, charged, paid }) => `${group}: charged ${charged}, paid ${paid}`);
}
const paidIn = (group: string, parts: Partial<Season>) => {
  const season = seasonOf({ fields: [home], ...parts });
  return seasonFlows(season, seasonFigures(season), [], "2031-12")
    .filter((flow) => flow.group === group)
    .map(({ month, amount }) => `${month} ${amount}`);
};

describe("a budget line alone", () => {
  it("is plan and outlook, and stays in the final until it is all in", () => {
    expect(perAcre("seed", { budget: [line("seed", "120")] })).toBe("120 120 -");
    const done = { fields: [harvested(home)], harvest: [load("Home", "20000")] };
    expect(perAcre("seed", { ...done, budget: [line("seed", "120")] })).toBe("120 120 120");
    expect(perAcre("seed", { ...done, budget: [line("seed", "120", { allIn: true })] })).toBe("120 0 0");
  });

  it("of a field counts before its crop's and that before all, and the part of a field with its own is dropped", () => {
    const whole = line("seed", "15000", { basis: "whole", over: { all: true } });
    expect(perAcre("seed", { budget: [whole] })).toBe("100 100 -");
    expect(perAcre("seed", { budget: [whole, line("seed", "80", { over: { field: "Hill" } })] })).toBe("100 100 -");
    expect(perAcre("seed", { budget: [whole, line("seed", "80", { over: { field: "Hill" } })] }, "Hill")).toBe("80 80 -");
    expect(perAcre("seed", { budget: [whole, line("seed", "90"), line("seed", "10")] })).toBe("100 100 -");
  });

  it("counts acres under two crops once", () => {
    const second = field("Home again", "100", "30", { sameLandAs: "Home" });
    const lines = { fields: [home, second], budget: [line("overhead", "1000", { basis: "whole", over: { all: true } })] };
    expect([perAcre("overhead", lines), perAcre("overhead", lines, "Home again")]).toEqual(["5 5 -", "5 5 -"]);
  });

  it("takes what is bought and no row takes as so far, which is stock no more", () => {
    const bought = {
      items: [item("Seed corn", "1", { kind: "seed" })],
      purchases: [purchase("Seed corn", "6000", "6000")],
      budget: [line("seed", "120")],
    };
    const figures = seasonFigures(seasonOf({ fields: [home], ...bought }));
    const [seed] = figures.crops[0]!.fields[0]!.lined;
    expect([seed!.budgeted, seed!.soFar, seed!.left, seed!.outlook].map((each) => each.toFixed())).toEqual([
      "12000",
      "6000",
      "6000",
      "12000",
    ]);
    expect([figures.items[0]!.left, figures.items[0]!.used].map((each) => each.toFixed())).toEqual(["0", "6000"]);
    expect(perAcre("seed", { ...bought, fields: [home], budget: [line("seed", "40")] })).toBe("40 60 -");
    expect(perAcre("seed", { ...bought, fields: [home], budget: [line("seed", "120", { allIn: true })] })).toBe("120 60 -");
    // Where rows take the kind it is stock.
    expect(
      perAcre("seed", {
        ...bought,
        fields: [home],
        applications: [application("Seed corn", "Home", "30", "plan")],
        budget: [line("seed", "20")],
      }),
    ).toBe("20 30 -");
    expect(paidIn("seed", bought)).toEqual(["2031-04 -6000", "2031-06 -6000"]);
    expect(apart({ ...bought, fields: [home] })).toEqual([]);
  });

  it("takes what no row takes also beside an item of its kind of which more was sent back than bought, and nothing is left to buy", () => {
    const sentBack = item("Treatment", "1", { kind: "seed", charged: "by acres" });
    const bought = {
      items: [item("Seed corn", "1", { kind: "seed" }), sentBack],
      purchases: [purchase("Seed corn", "6000", "6000"), purchase("Treatment", "-10", "-6")],
      budget: [line("seed", "120")],
    };
    const figures = seasonFigures(seasonOf({ fields: [home], ...bought }));
    // 6,000 and, of the return, 10 at the plan price less the 6 that came back.
    const [seed] = figures.crops[0]!.fields[0]!.lined;
    expect([seed!.soFar, seed!.left, figures.items[0]!.left].map((each) => each.toFixed())).toEqual(["6004", "5996", "0"]);
  });
});

describe("a budget line beside rows", () => {
  it("has only bills so far where rebates left less than nothing of them: what is still to be bought is none yet", () => {
    const treatment = item("Treatment", null, { kind: "seed", charged: "by acres" });
    const bought = {
      items: [treatment],
      purchases: [purchase("Treatment", "10", "10", { rebate: money("20") })],
      applications: [application("Treatment", "Home", "0.5", "plan")],
      budget: [line("seed", "120")],
    };
    const [seed] = seasonFigures(seasonOf({ fields: [home], ...bought })).crops[0]!.fields[0]!.lined;
    expect([seed!.soFar, seed!.left, seed!.outlook].map((each) => each.toFixed())).toEqual(["-10", "12010", "12000"]);
  });

  it("adds what it has beyond done and left, and nothing where they are over it", () => {
    const spray = (rate: string) => [
      operation("Spraying", "Home", rate, "plan"),
      operation("Spraying", "Home", "10", "done", { area: area("40") }),
    ];
    // 400 done, 60 acres left at 10: 1,000 of 1,500.
    expect(perAcre("custom work", { operations: spray("10"), budget: [line("custom work", "15")] })).toBe("15 15 -");
    expect(perAcre("custom work", { operations: spray("30"), budget: [line("custom work", "15")] })).toBe("15 22 -");
    expect(perAcre("custom work", { operations: spray("10"), budget: [line("custom work", "15", { allIn: true })] })).toBe("15 10 -");
    expect(
      perAcre("custom work", {
        otherCosts: [otherCost("Scouting", "4", { kind: "custom work", basis: "per acre" })],
        budget: [line("custom work", "15")],
      }),
    ).toBe("15 15 -");
  });
});

describe("a line of what moves with yield", () => {
  it("moves at line ÷ (share × goal), and stays as it is without goal or share", () => {
    const lost = [field("Home", "100", "200", { harvestDone: { on: null } })];
    expect(perAcre("drying", { fields: lost, harvest: [load("Home", "10000")], budget: [line("drying", "20")] })).toBe("20 10 10");
    expect(perAcre("drying", { fields: [field("Home", "100", "0")], budget: [line("drying", "20")] })).toBe("20 20 -");
    expect(
      perAcre("drying", { fields: [{ ...home, tenure: "crop share", operatorShare: share("0") }], budget: [line("drying", "20")] }),
    ).toBe("20 20 -");
    // Grain that is sold of a lost crop is dried at nobody's cost: the line is paid on its own day, or is none.
    expect(
      paidIn("drying, haul and selling", {
        fields: [field("Home", "100", "200", { harvestDone: { on: null } })],
        harvest: [load("Home", "0")],
        sales: [sale("1000", "4")],
        budget: [line("drying", "20")],
      }),
    ).toEqual([]);
    expect(
      paidIn("drying, haul and selling", { settings: { ...settings, repaymentDate: "2031-11-20" }, budget: [line("drying", "20")] }),
    ).toEqual(["2031-11 -2000"]);
  });
});

describe("on crop share", () => {
  const shared = { ...home, tenure: "crop share" as const, operatorShare: share("0.5") };
  const lines = [line("seed", "120", { operatorCostShare: share("0.5") }), line("drying", "20", { operatorCostShare: share("0.5") })];
  it("is the whole cost, of which the operator bears his part and pays it all before the rest comes back", () => {
    expect(perAcre("seed", { fields: [shared], budget: lines })).toBe("60 60 -");
    expect(perAcre("drying", { fields: [shared], budget: lines })).toBe("10 10 -");
    expect([paidIn("seed", { fields: [shared], budget: lines }), paidIn("landlord's part", { fields: [shared], budget: lines })]).toEqual([
      ["2031-06 -12000"],
      ["2031-06 6000", "2031-12 1000"],
    ]);
    expect(apart({ fields: [shared], budget: lines })).toEqual([]);
    const items = [item("Seed corn", "1", { kind: "seed", operatorCostShare: share("0.5") })];
    expect(apart({ fields: [shared, hill], items, purchases: [purchase("Seed corn", "9000", "9000")], budget: lines })).toEqual([]);
    expect(
      paidIn("seed", { fields: [shared], settings: { ...settings, landlordsInputs: "bought by the landlord" }, budget: lines }),
    ).toEqual(["2031-06 -6000"]);
  });
});

describe("a line in a corner", () => {
  it("of hauling a crop that was lost leaves nothing to pay, also where more was credited than billed", () => {
    const lost = {
      fields: [harvested(home)],
      harvest: [load("Home", "0")],
      items: [item("Tarps", "1", { kind: "haul", charged: "by acres" })],
      purchases: [purchase("Tarps", "1", "10"), purchase("Tarps", "0", "-40")],
      budget: [line("haul", "5")],
    };
    expect(apart(lost)).toEqual([]);
    const [haul] = seasonFigures(seasonOf(lost)).crops[0]!.fields[0]!.lined;
    expect([haul!.soFar, haul!.left, haul!.outlook].map(String)).toEqual(["-30", "0", "-30"]);
  });

  const byDate = { ...settings, operatingInterest: { method: "by date" as const, rate: new Decimal("0.10"), repaymentDate: "2031-12-01" } };

  it("takes nothing off stock where a selling cost stands beside the line", () => {
    const bought = {
      fields: [home],
      items: [item("Tarps", "1", { kind: "haul" })],
      purchases: [purchase("Tarps", "100", "100")],
      budget: [line("haul", "5")],
    };
    const corn = seasonOf(bought).crops[0]!;
    const selling = { ...bought, crops: [{ ...corn, sellingCostPerUnit: moneyPerUnit("0.02") }] };
    expect([seasonFigures(seasonOf(bought)).items[0]!.left.toFixed(), seasonFigures(seasonOf(selling)).items[0]!.left.toFixed()]).toEqual([
      "0",
      "100",
    ]);
  });

  it("keeps term interest in the full layer of a field whose own line says that it has no capital", () => {
    const ownership = [
      line("machine ownership", "50", { over: { all: true } }),
      line("machine ownership", "0", { over: { field: "Home" } }),
      line("term interest", "9", { over: { all: true } }),
    ];
    const fields = seasonFigures(seasonOf({ fields: [home, hill], budget: ownership })).crops[0]!.fields;
    expect(fields.map(({ outlook }) => outlook.budget.costPerArea.layers.full.toFixed())).toEqual(["9", "50"]);
  });

  it("pays what a return leaves of a line of which the operator bears nothing, and all parts of a line that landlords repay", () => {
    const back = {
      over: { field: "Home" },
      kind: "seed" as const,
      name: "Back",
      amount: money("-500"),
      paidOn: "2031-05-10",
      isOpening: false,
      operatorCostShare: null,
      source: { table: "Purchases", row: 1 },
    };
    const none = { fields: [home], budget: [line("seed", "0")], bills: [back] };
    expect([perAcre("seed", none), apart(none)]).toEqual(["0 0 -", []]);
    const shared = { ...home, tenure: "crop share" as const, operatorShare: share("0.5") };
    const lines = [
      line("seed", "100", { operatorCostShare: share("1") }),
      line("seed", "20", { operatorCostShare: share("0"), paidOn: "2031-04-01" }),
    ];
    expect(paidIn("seed", { fields: [shared], budget: lines })).toEqual(["2031-06 -10000", "2031-04 -2000"]);
    expect(paidIn("landlord's part", { fields: [shared], budget: lines })).toEqual(["2031-04 2000"]);
    expect(apart({ fields: [shared], budget: lines })).toEqual([]);
  });

  it("bears interest on what bills leave of a purchase to come from its own day", () => {
    // 10,000 lb at 1: half is bought on 2031-01-01 for 5,000 (334 days), half to be used on 2031-11-01 (30 days); a bill of 4,000
    // on 2031-12-01 leaves 1,000 of it.
    const spread = {
      items: [item("Diesel", "1", { kind: "fuel", charged: "by acres" })],
      purchases: [purchase("Diesel", "5000", "5000", { date: "2031-01-01", paidOn: "2031-01-01" })],
      applications: [application("Diesel", "Home", "100", "plan", { date: "2031-11-01" })],
    };
    const bill = {
      over: { field: "Home" },
      kind: "fuel" as const,
      name: "Bill",
      amount: money("4000"),
      paidOn: "2031-12-01",
      isOpening: false,
      operatorCostShare: null,
      source: { table: "Purchases", row: 9 },
    };
    const interest = seasonFigures(
      seasonOf({ fields: [home], settings: byDate, ...spread, bills: [bill] }),
    ).crops[0]!.outlook.costPerArea.byKind.get("operating interest")!;
    expect(interest.toFixed(10)).toBe(new Decimal("5000").times("334").plus("30000").times("0.10").div("365").div("100").toFixed(10));
  });
});

describe("money of a line", () => {
  const settled = {
    ...settings,
    operatingInterest: { method: "by date" as const, rate: new Decimal("0.10"), repaymentDate: "2031-12-01" },
  };
  it("bears interest from its month, else from planting, and is paid then", () => {
    const planned = { ...home, plannedPlanting: "2031-05-01" };
    expect(perAcre("operating interest", { settings: settled, fields: [planned], budget: [line("seed", "365")] })).toBe("21.4 21.4 -");
    expect(
      perAcre("operating interest", { settings: settled, fields: [planned], budget: [line("seed", "365", { paidOn: "2031-11-01" })] }),
    ).toBe("3 3 -");
    expect(paidIn("seed", { fields: [planned], budget: [line("seed", "365")] })).toEqual(["2031-05 -36500"]);
    expect(paidIn("management", { budget: [line("management", "365", { paidOn: "2031-05-01" })] })).toEqual([]);
  });
});
