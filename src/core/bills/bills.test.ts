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
  seasonOf,
  settings,
} from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import { cashFlow } from "../lender/cashFlow";
import { monthsBetween } from "../lender/month";
import { paidAndCharged } from "../lender/paidAndCharged";
import { seasonFlows } from "../lender/seasonFlows";
import { seasonFigures } from "../seasonFigures";
import type { Bill, BudgetLine, Season } from "../season";
import { area, money, share } from "../numbers/units";

const bill = (kind: Bill["kind"], amount: string, more: Partial<Bill> = {}): Bill => ({
  over: { field: "Home" },
  kind,
  name: "Bill",
  amount: money(amount),
  paidOn: "2031-05-10",
  isOpening: false,
  operatorCostShare: null,
  source: { table: "Purchases", row: 1 },
  ...more,
});
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
const [home, hill] = [field("Home", "100", "200"), field("Hill", "50", "160")];

/** Cost of a kind in a field at each stage, an acre. */
function perAcre(kind: Bill["kind"], parts: Partial<Season>, name = "Home"): string {
  const of = seasonFigures(seasonOf({ fields: [home, hill], ...parts }))
    .crops.flatMap(({ fields }) => fields)
    .find((each) => each.field === name)!;
  return [of.plan, of.outlook, of.final]
    .map((stage) => (stage === null ? "-" : (stage.budget.costPerArea.byKind.get(kind) ?? new Decimal("0")).toDecimalPlaces(8).toFixed()))
    .join(" ");
}
const flowsOf = (parts: Partial<Season>) => {
  const season = seasonOf({ fields: [home, hill], ...parts });
  return { season, figures: seasonFigures(season), flows: seasonFlows(season, seasonFigures(season), [], "2031-12") };
};
const paidIn = (group: string, parts: Partial<Season>) =>
  flowsOf(parts)
    .flows.filter((flow) => flow.group === group && !flow.amount.isZero())
    .map(({ month, amount }) => `${month} ${amount.toDecimalPlaces(8)}`);
/** Every group of the cash flow in which charged, its differences and paid do not add up. */
function apart(parts: Partial<Season>): readonly string[] {
  const { season, figures, flows } = flowsOf(parts);
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

describe("a bill that is charged directly", () => {
  it("is charged in the fields that it names, by acres to the cent, and in no other", () => {
    expect([perAcre("seed", { bills: [bill("seed", "12000")] }), perAcre("seed", { bills: [bill("seed", "12000")] }, "Hill")]).toEqual([
      "0 120 -",
      "0 0 -",
    ]);
    const shared = { bills: [bill("seed", "15000", { over: { crop: "Corn" } })] };
    expect([perAcre("seed", shared), perAcre("seed", shared, "Hill")]).toEqual(["0 100 -", "0 100 -"]);
    expect(paidIn("seed", shared)).toEqual(["2031-05 -10000", "2031-05 -5000"]);
    expect(apart(shared)).toEqual([]);
  });

  it("is final as well, and a return comes off", () => {
    const done = { fields: [harvested(home)], harvest: [load("Home", "20000")], bills: [bill("seed", "12000"), bill("seed", "-2000")] };
    expect(perAcre("seed", done)).toBe("0 100 100");
  });

  it("waits for repayment from the day on which it is paid", () => {
    const interest = {
      ...settings,
      operatingInterest: { method: "by date" as const, rate: new Decimal("0.10"), repaymentDate: "2031-12-01" },
    };
    expect(perAcre("operating interest", { settings: interest, bills: [bill("seed", "36500", { paidOn: "2031-05-01" })] })).toBe(
      "0 21.4 -",
    );
  });

  it("is no crop's twice where two crops use the same land", () => {
    const second = field("Home again", "100", "30", { sameLandAs: "Home" });
    const both = { fields: [home, second], bills: [bill("overhead", "1000", { over: { all: true } })] };
    expect([perAcre("overhead", both), perAcre("overhead", both, "Home again")]).toEqual(["0 5 -", "0 5 -"]);
  });
});

describe("a bill beside what is left", () => {
  it("comes off its budget line, and off no more than there is of it", () => {
    const lines = { budget: [line("seed", "120")] };
    expect(perAcre("seed", { ...lines, bills: [bill("seed", "5000")] })).toBe("120 120 -");
    expect(perAcre("seed", { ...lines, bills: [bill("seed", "15000")] })).toBe("120 150 -");
    expect(perAcre("seed", { budget: [line("seed", "120", { allIn: true })], bills: [bill("seed", "5000")] })).toBe("120 50 -");
    const [lined] = seasonFigures(seasonOf({ fields: [home], ...lines, bills: [bill("seed", "5000")] })).crops[0]!.fields[0]!.lined;
    expect([lined!.soFar, lined!.left, lined!.outlook].map((each) => each.toFixed())).toEqual(["5000", "7000", "12000"]);
    expect(apart({ ...lines, bills: [bill("seed", "5000")] })).toEqual([]);
  });

  it("comes off planned rows, and is added to done ones", () => {
    const spray = [operation("Spraying", "Home", "20", "plan", { date: "2031-06-01" })];
    expect(perAcre("custom work", { operations: spray, bills: [bill("custom work", "1500")] })).toBe("20 20 -");
    expect(perAcre("custom work", { operations: spray, bills: [bill("custom work", "2500")] })).toBe("20 25 -");
    const half = [...spray, operation("Spraying", "Home", "20", "done", { area: area("50") })];
    expect(perAcre("custom work", { operations: half, bills: [bill("custom work", "600")] })).toBe("20 20 -");
    expect(paidIn("custom work", { operations: spray, bills: [bill("custom work", "1500")] })).toEqual([
      "2031-06 -2000",
      "2031-05 -1500",
      "2031-06 1500",
    ]);
    expect(apart({ operations: half, bills: [bill("custom work", "600")] })).toEqual([]);
  });

  it("comes off what is still to be bought, and not off what is bought already", () => {
    const urea = { items: [item("Urea", "1")], applications: [application("Urea", "Home", "60", "plan")] };
    const extra = { bills: [bill("fertilizer", "1000")] };
    expect(perAcre("fertilizer", { ...urea, ...extra })).toBe("60 60 -");
    expect(perAcre("fertilizer", { ...urea, ...extra, purchases: [purchase("Urea", "6000", "6000")] })).toBe("60 70 -");
    // 1,000 of the 2,000 that are still to be bought.
    expect(perAcre("fertilizer", { ...urea, ...extra, purchases: [purchase("Urea", "4000", "4000")] })).toBe("60 60 -");
    for (const purchases of [[], [purchase("Urea", "4000", "4000")], [purchase("Urea", "6000", "6000")]])
      expect(apart({ ...urea, ...extra, purchases })).toEqual([]);
  });

  it("comes off other costs and off what moves with yield", () => {
    const insurance = { otherCosts: [otherCost("Policy", "18", { kind: "crop insurance", basis: "per acre", over: { crop: "Corn" } })] };
    expect(perAcre("crop insurance", { ...insurance, bills: [bill("crop insurance", "2000")] })).toBe("18 20 -");
    expect(perAcre("crop insurance", { ...insurance, bills: [bill("crop insurance", "500")] }, "Hill")).toBe("18 18 -");
    const trucking = { otherCosts: [otherCost("Trucking", "0.20", { kind: "haul", basis: "per unit of yield", over: { crop: "Corn" } })] };
    expect(perAcre("haul", { ...trucking, bills: [bill("haul", "1000")] })).toBe("40 40 -");
    expect(perAcre("haul", { ...trucking, bills: [bill("haul", "5000")] })).toBe("40 50 -");
    for (const all of [
      { ...insurance, bills: [bill("crop insurance", "500")] },
      { ...trucking, bills: [bill("haul", "1000")] },
    ])
      expect(apart(all)).toEqual([]);
  });

  it("is added where more was sent back than billed", () => {
    expect(perAcre("seed", { budget: [line("seed", "120")], bills: [bill("seed", "-1000")] })).toBe("120 120 -");
    expect(
      perAcre("custom work", { operations: [operation("Spraying", "Home", "20", "plan")], bills: [bill("custom work", "-500")] }),
    ).toBe("20 15 -");
  });
});

describe("a bill on crop share", () => {
  const shared = { ...home, tenure: "crop share" as const, operatorShare: share("0.5") };
  it("is the operator's by the item's part, else by its budget line's, else all of it, and the rest comes back in its month", () => {
    expect(perAcre("seed", { fields: [shared], bills: [bill("seed", "10000", { operatorCostShare: share("0.5") })] })).toBe("0 50 -");
    expect(
      perAcre("seed", {
        fields: [shared],
        bills: [bill("seed", "10000")],
        budget: [line("seed", "120", { operatorCostShare: share("0.5") })],
      }),
    ).toBe("60 60 -");
    expect(perAcre("seed", { fields: [shared], bills: [bill("seed", "10000")] })).toBe("0 100 -");
    const half = {
      fields: [shared, hill],
      bills: [bill("seed", "15000", { over: { crop: "Corn" }, operatorCostShare: share("0.5") })],
      items: [item("Seed corn", "1", { kind: "seed", operatorCostShare: share("0.5") })],
      applications: [application("Seed corn", "Home", "150", "plan")],
    };
    expect(perAcre("seed", half)).toBe("75 75 -");
    expect(paidIn("landlord's part", half)).toEqual(["2031-06 7500", "2031-05 5000", "2031-06 -5000"]);
    // An item that is the landlord's alone is nothing that a bill of its kind takes anything off.
    const theirs = {
      fields: [shared],
      items: [item("Seed corn", "1", { kind: "seed", operatorCostShare: share("0") })],
      applications: [application("Seed corn", "Home", "150", "plan")],
      otherCosts: [otherCost("Inoculant", "18", { kind: "seed", basis: "per acre", over: { crop: "Corn" } })],
      bills: [bill("seed", "500")],
    };
    expect(perAcre("seed", theirs)).toBe("18 18 -");
    expect([paidIn("seed", theirs), paidIn("landlord's part", theirs)]).toEqual([
      ["2031-06 -15000", "2031-06 -1800", "2031-05 -500", "2031-06 500"],
      ["2031-06 15000"],
    ]);
    expect(apart(half)).toEqual([]);
  });

  it("is the operator's alone where landlords buy their part", () => {
    const own = { ...settings, landlordsInputs: "bought by the landlord" as const };
    expect(perAcre("seed", { settings: own, fields: [shared], bills: [bill("seed", "10000", { operatorCostShare: share("0.5") })] })).toBe(
      "0 100 -",
    );
    const both = {
      settings: own,
      fields: [shared, hill],
      bills: [bill("seed", "10000", { over: { crop: "Corn" }, operatorCostShare: share("0.5") })],
    };
    expect([perAcre("seed", both), perAcre("seed", both, "Hill")]).toEqual(["0 50 -", "0 100 -"]);
    expect(apart(both)).toEqual([]);
  });
});
