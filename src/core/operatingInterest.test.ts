import { describe, expect, it } from "vitest";
import { application, field, item, operation, otherCost, purchase, seasonOf, settings } from "../../tests/support/season";
import { Decimal } from "./decimal";
import type { Machine } from "./machines/machine";
import { seasonFigures } from "./seasonFigures";
import type { Season } from "./season";
import { money, moneyPerHour, share, yearlyRate, years } from "./units";

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
      operations: [operation("Planting", "Home", "20", "plan")], otherCosts: [otherCost("Interest so far", "500", { kind: "operating interest" })],
    });
    // 2,000 × 8 % ÷ 2, and the 500 that are entered.
    expect(figures.plan.budget.costPerArea.byKind.get("operating interest")!.toFixed()).toBe("5.8");
  });

  it("follows the payment dates of what is bought", () => {
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "by date", rate, repaymentDate: "2031-12-31" } },
      items: [item("Urea", "0.30")], applications: [application("Urea", "Home", "100", "done")],
      purchases: [purchase("Urea", "5000", "1000", { paidOn: "2031-01-20" }), purchase("Urea", "5000", "2000", { paidOn: "2031-08-08" })],
    });
    // 1,000 for 345 days and 2,000 for 145 days: 635,000 dollar-days.
    expect(figures.outlook.charges.at(-1)!.amount.toFixed(20)).toBe(new Decimal("635000").times(rate).div("365").toFixed(20));
  });

  it("runs on each pass of a machine from its day, and on a rate that is paid beside it, but not on ownership", () => {
    const planter: Machine = {
      name: "Planter", tractor: null, power: null, width: new Decimal("30"), speed: new Decimal("5.5"), fieldEfficiency: share("0.65"),
      main: {
        name: "Planter", listPrice: money("100000"), purchasePrice: money("100000"), age: years("0"), yearsKept: years("10"),
        hoursAYear: null, repairClass: null, salvage: { stated: money("20000") },
      },
      realRate: yearlyRate("0"), taxesInsuranceHousing: yearlyRate("0"), wage: moneyPerHour("26"), labour: "hired labour",
      fuelPrice: money("4"), fuelPerArea: new Decimal("0.5"), source: { table: "Machines", row: 1 },
    };
    const pass = operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" } });
    const figures = homeOf({
      settings: { ...settings, operatingInterest: { method: "by date", rate, repaymentDate: "2031-12-01" } }, machines: [planter],
      operations: [{ ...pass, date: "2031-05-05" }, { ...pass, date: "2031-06-05" }, operation("Planting", "Home", "10", "plan", { kind: "fuel", date: "2031-05-05" })],
    });
    // Fuel and lube 2.30 and labour 2.20 an acre, twice on 100 acres, 210 and 179 days; 1,000 of fuel for 210 days.
    const moneyDays = new Decimal("450").times("389").plus("210000");
    expect(figures.plan.charges.find(({ kind }) => kind === "fuel")!.amount.toFixed()).toBe("1460");
    expect(figures.plan.charges.at(-1)!.amount.toFixed(20)).toBe(moneyDays.times(rate).div("365").toFixed(20));
  });
});
