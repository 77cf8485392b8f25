import { describe, expect, it } from "vitest";
import { application, field, item, load, machine, operation, otherCost, purchase, seasonOf, settings } from "../../tests/support/season";
import { Decimal } from "./numbers/decimal";
import { seasonFigures } from "./seasonFigures";
import type { Season } from "./season";

const home = field("Home", "100", "200");
/** The one field of a season. */
const homeOf = (parts: Partial<Season>) => seasonFigures(seasonOf({ fields: [home], ...parts })).crops[0]!.fields[0]!;

describe("operating interest", () => {
  const rate = new Decimal("0.08");

  it("runs from each payment to the repayment date at simple interest, days ÷ 365", () => {
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "by date", rate, repaymentDate: "2031-12-01" } },
      operations: [operation("Planting", "Home", "36.50", "plan", { date: "2031-05-05" })],
      otherCosts: [otherCost("Insurance", "365", { kind: "crop insurance", paidOn: "2032-01-15" })],
    });
    // 3,650 × 8 % × 210 ÷ 365; the premium is paid after the loan.
    expect(figures.plan.charges.find((charge) => charge.kind === "operating interest")!.amount.toFixed()).toBe("168");
  });

  it("runs a stated number of months on the operating money, not on overhead or on costs that are not paid in cash", () => {
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "months", rate, months: new Decimal("6") } },
      operations: [operation("Planting", "Home", "20", "plan")],
      otherCosts: [otherCost("Office", "900"), otherCost("Own seed", "500", { kind: "seed", cash: false })],
    });
    expect(figures.plan.budget.costPerArea.byKind.get("operating interest")!.toFixed()).toBe("0.8");
  });

  it("bears no interest itself where it is entered as a cost", () => {
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "months", rate, months: new Decimal("6") } },
      operations: [operation("Planting", "Home", "20", "plan")],
      otherCosts: [otherCost("Interest so far", "500", { kind: "operating interest" })],
    });
    // 2,000 × 8 % ÷ 2, and the 500 that are entered.
    expect(figures.plan.budget.costPerArea.byKind.get("operating interest")!.toFixed()).toBe("5.8");
  });

  it("follows the payment dates of what is bought", () => {
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "by date", rate, repaymentDate: "2031-12-31" } },
      items: [item("Urea", "0.30")],
      applications: [application("Urea", "Home", "100", "done")],
      purchases: [purchase("Urea", "5000", "1000", { paidOn: "2031-01-20" }), purchase("Urea", "5000", "2000", { paidOn: "2031-08-08" })],
    });
    // 1,000 for 345 days and 2,000 for 145 days: 635,000 dollar-days.
    expect(figures.outlook.charges.at(-1)!.amount.toFixed(20)).toBe(new Decimal("635000").times(rate).div("365").toFixed(20));
  });

  it("runs on each pass of a machine from its day, and on a rate that is paid beside it, but not on ownership", () => {
    const planter = machine("Planter");
    const pass = operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" } });
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "by date", rate, repaymentDate: "2031-12-01" } },
      machines: [planter],
      operations: [
        { ...pass, date: "2031-05-05" },
        { ...pass, date: "2031-06-05" },
        operation("Planting", "Home", "10", "plan", { kind: "fuel", date: "2031-05-05" }),
      ],
    });
    // Fuel and lube 2.30 and labour 2.20 an acre, twice on 100 acres, 210 and 179 days; 1,000 of fuel for 210 days.
    const moneyDays = new Decimal("450").times("389").plus("210000");
    expect(figures.plan.charges.find(({ kind }) => kind === "fuel")!.amount.toFixed()).toBe("1460");
    expect(figures.plan.charges.at(-1)!.amount.toFixed(20)).toBe(moneyDays.times(rate).div("365").toFixed(20));
  });

  /** Interest of the one field of 100 acres at a stage, per acre. */
  const interestAt = (parts: Partial<Season>, stage: "plan" | "outlook" = "outlook") =>
    homeOf(parts)[stage].budget.costPerArea.byKind.get("operating interest")?.toFixed(8);
  const byDate = (repaymentDate: string, yearly = "0.08"): Season["settings"] => ({
    ...settings,
    operatingInterest: { method: "by date", rate: new Decimal(yearly), repaymentDate },
  });

  it("runs from its payment on what is bought, and from the planned use on what is still to be bought", () => {
    const planned = [application("Urea", "Home", "200", "plan", { date: "2031-12-01" })];
    const parts = { settings: byDate("2031-12-01", "0.10"), items: [item("Urea", "0.50")], applications: planned };
    // A tenth of a ton of ten tons is paid a year ahead: 100 × 10 % ÷ 100 ac. The rest is used on the day of repayment.
    expect(interestAt({ ...parts, purchases: [purchase("Urea", "200", "100", { paidOn: "2030-12-01" })] })).toBe("0.10000000");
    // All of it a year ahead: 10,000 × 10 % ÷ 100 ac.
    expect(interestAt({ ...parts, purchases: [purchase("Urea", "20000", "10000", { paidOn: "2030-12-01" })] })).toBe("10.00000000");
    // Twice as much as is needed: the half that stays in the shed is stock and bears nothing here.
    expect(interestAt({ ...parts, purchases: [purchase("Urea", "40000", "20000", { paidOn: "2030-12-01" })] })).toBe("10.00000000");
  });

  it("runs from its use on what is used and was never bought, and leaves the bills to what else is used", () => {
    const parts = {
      settings: byDate("2031-12-01", "0.10"),
      items: [item("Urea", "0.50")],
      purchases: [purchase("Urea", "5000", "2500", { paidOn: "2031-12-01" })],
      applications: [
        application("Urea", "Home", "100", "done", { date: "2031-07-09" }),
        application("Urea", "Home", "20", "plan", { date: "2031-09-22" }),
      ],
    };
    // One pass is done and takes the planned one off: 10,000 lb used, 5,000 bought on the day of repayment; 2,500 for 145 days.
    expect(interestAt(parts)).toBe(new Decimal("2500").times("0.10").times("145").div("36500").toFixed(8));
    // With a second pass planned, 2,000 lb more are short: 1,000 for 70 days.
    const twice = { ...parts, applications: [...parts.applications, application("Urea", "Home", "20", "plan", { date: "2031-09-22" })] };
    expect(interestAt(twice)).toBe(new Decimal("2500").times("145").plus("70000").times("0.10").div("36500").toFixed(8));
  });

  it("shares what is still to be bought over the fields by what each has left to do", () => {
    const fields = [home, field("Hill", "100", "200")];
    const of = seasonFigures(
      seasonOf({
        fields,
        settings: byDate("2031-12-01", "0.10"),
        items: [item("Urea", "1")],
        purchases: [purchase("Urea", "6000", "6000", { paidOn: "2031-12-01" })],
        applications: [
          application("Urea", "Home", "30", "plan", { date: "2031-07-09" }),
          application("Urea", "Hill", "90", "plan", { date: "2031-09-22" }),
        ],
      }),
    ).crops[0]!.fields.map((each) => each.outlook.budget.costPerArea.byKind.get("operating interest")!.toFixed(8));
    // Of 12,000 lb half is short: 1,500 of Home's 3,000 for 145 days, 4,500 of Hill's 9,000 for 70.
    expect(of).toEqual(
      ["1500 145", "4500 70"]
        .map((each) => each.split(" ") as [string, string])
        .map(([amount, days]) => new Decimal(amount).times(days).times("0.10").div("36500").toFixed(8)),
    );
  });

  it("leaves nothing of the bills to a field whose need comes after what the next crop of another has taken", () => {
    const fields = [field("Home", "100", "200", { harvestDone: { on: null } }), field("Hill", "100", "200")];
    const [, hill] = seasonFigures(
      seasonOf({
        fields,
        settings: byDate("2031-12-01", "0.10"),
        harvest: [load("Home", "20000")],
        items: [item("Urea", "1")],
        purchases: [purchase("Urea", "10000", "10000", { paidOn: "2031-12-01" })],
        applications: [
          application("Urea", "Home", "100", "done", { date: "2031-10-20" }),
          application("Urea", "Hill", "100", "plan", { date: "2031-11-20" }),
        ],
      }),
    ).crops[0]!.fields;
    // After the last load of 10 October all that was bought goes on for the next crop: Hill's 10,000 are still to be bought, 11 days.
    expect(hill!.outlook.charges.at(-1)!.amount.toFixed(8)).toBe(new Decimal("10000").times("0.10").times("11").div("365").toFixed(8));
  });

  it("runs from the planned planting on field costs without a date, and six months where no planting is planned", () => {
    const undated = {
      settings: byDate("2031-12-01"),
      items: [item("Urea", "0.50")],
      applications: [application("Urea", "Home", "300", "plan")],
      operations: [operation("Planting", "Home", "150", "plan")],
      otherCosts: [otherCost("Scouting", "100", { kind: "custom work", basis: "per acre" })],
    };
    const planted = { ...undated, fields: [{ ...home, plannedPlanting: "2031-05-01" }] };
    // 400 × 8 % × 214 ÷ 365, 1 May to 1 December; without a planned planting from 1 June, 183 days.
    for (const stage of ["plan", "outlook"] as const) {
      expect(interestAt(planted, stage)).toBe("18.76164384");
      expect(interestAt(undated, stage)).toBe(new Decimal("400").times("0.08").times("183").div("365").toFixed(8));
    }
    // What is done without a date is no other money.
    const done = {
      ...planted,
      applications: [application("Urea", "Home", "300", "done")],
      operations: [operation("Planting", "Home", "150", "done")],
    };
    expect(interestAt(done)).toBe("18.76164384");
  });

  it("runs evenly over the season's year on what belongs to no field work, and not at all on drying and haul", () => {
    const premium = otherCost("Insurance", "1200", { kind: "crop insurance" });
    const haul = otherCost("Trucking", "900", { kind: "haul" });
    // 100 on the first of each month: January to November wait 334, 303, 275, 244, 214, 183, 153, 122, 91, 61 and 30 days.
    const days = [334, 303, 275, 244, 214, 183, 153, 122, 91, 61, 30].reduce((sum, each) => sum + each, 0);
    expect(interestAt({ settings: byDate("2031-12-01"), otherCosts: [premium, haul] })).toBe(
      new Decimal("8").times(String(days)).div("36500").toFixed(8),
    );
    // The month that is entered comes first, and the year follows from the repayment where none is entered.
    expect(interestAt({ settings: byDate("2031-12-01"), otherCosts: [{ ...premium, paidOn: "2031-11-01" }] })).toBe(
      new Decimal("1200").times("0.08").times("30").div("36500").toFixed(8),
    );
    expect(interestAt({ settings: { ...byDate("2031-12-01"), seasonYear: null }, otherCosts: [premium] })).toBe(
      new Decimal("8").times(String(days)).div("36500").toFixed(8),
    );
  });

  it("takes each field's own planned planting for what is shared over all", () => {
    const fields = [
      field("Home", "100", "200", { plannedPlanting: "2031-05-01" }),
      field("Hill", "100", "200", { plannedPlanting: "2031-06-01" }),
    ];
    const of = seasonFigures(
      seasonOf({ fields, settings: byDate("2031-12-01"), otherCosts: [otherCost("Scouting", "73000", { kind: "custom work" })] }),
    ).crops[0]!.fields.map((each) => each.plan.charges.at(-1)!.amount.toFixed());
    // 36,500 each at 8 %: 214 and 183 days.
    expect(of).toEqual(["1712", "1464"]);
  });
});
