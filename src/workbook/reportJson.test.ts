import { describe, expect, it } from "vitest";
import { reportOf } from "../../tests/support/reportOf";
import { field, machine, operation, seasonOf } from "../../tests/support/season";
import { Decimal } from "../core/numbers/decimal";
import type { Loan } from "../core/season";
import type { StandCount } from "../core/stand/standCount";
import { area, money } from "../core/numbers/units";
import { reportJson } from "./reportJson";

const sown = field("Home", "100", "200", {
  plannedPlanting: "2031-04-25",
  planted: "2031-05-15",
  targetStand: new Decimal("32000"),
  seedsDropped: new Decimal("30000"),
});
const counted = (plants: string): StandCount => ({
  field: "Home",
  date: "2031-06-01",
  place: { rowWidth: new Decimal("30"), length: new Decimal("17.424") },
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: null,
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
});
const planter = machine("Planter");

describe("the report as plain data", () => {
  it("has what was counted and what it lets expect", () => {
    // 24,000 plants of 15 May: 92 % against 100 % as planned (Purdue's central Corn Belt table). One place has no spread.
    const { stands } = reportJson(reportOf(seasonOf({ fields: [sown], standCounts: [counted("24")] })));
    expect(stands).toMatchObject([
      {
        field: "Home",
        date: "2031-06-01",
        places: "1",
        plantsPerAcre: "24000",
        low: null,
        high: null,
        cv: null,
        emergence: "0.8",
        relativeYield: "0.92",
        yieldOutlook: "184",
      },
    ]);
    const [two] = reportJson(reportOf(seasonOf({ fields: [sown], standCounts: [counted("23"), counted("25")] }))).stands;
    // Half the width is t · s ÷ √2 with s = √2,000,000: 1,000 t, and t is 12.706 at one degree of freedom.
    expect([two!.low, two!.high].map((end) => new Decimal(end!).toFixed(0))).toEqual(["11294", "36706"]);
    const later = { fields: [{ ...sown, planted: "2031-07-04" }], standCounts: [{ ...counted("24"), date: "2031-07-20" }] };
    const [outside] = reportJson(reportOf(seasonOf(later))).stands;
    expect(outside).toMatchObject({ relativeYield: null, yieldOutlook: null });
  });

  it("has every part of a counted field, and what nobody counted of it at the target", () => {
    const thin = { ...counted("22"), part: { name: "Knoll", area: area("30"), planted: null } };
    const [parted] = reportJson(reportOf(seasonOf({ fields: [sown], standCounts: [thin] }))).stands;
    // 15 May, Purdue's central Corn Belt table: 89 % at 22,000 and 95 % at 32,000; 30 acres and 70.
    expect([parted!.yieldOutlook, parted!.parts]).toEqual([
      "186.4",
      [
        { part: "Knoll", acres: "30", places: "1", plantsPerAcre: "22000", yieldOutlook: "178" },
        { part: null, acres: "70", places: "0", plantsPerAcre: "32000", yieldOutlook: "190" },
      ],
    ]);
    const [whole] = reportJson(reportOf(seasonOf({ fields: [sown], standCounts: [counted("24")] }))).stands;
    expect(whole!.parts).toEqual([{ part: null, acres: "100", places: "1", plantsPerAcre: "24000", yieldOutlook: "184" }]);
  });

  it("has what was done without a plan, and where", () => {
    const operations = [operation("Planting", "Home", "20", "done"), operation("Spraying", "Home", "9", "done as planned")];
    const { crops } = reportJson(reportOf(seasonOf({ fields: [sown], operations })));
    expect(crops[0]!.notPlanned).toEqual([{ kind: "custom work", name: "Planting", amount: "2000", fields: ["Home"] }]);
  });

  it("has what each loan takes of the year, and the debt test", () => {
    const loan: Loan = {
      name: "Note",
      kind: "term",
      balance: money("100000"),
      rate: new Decimal("0.08"),
      payment: money("20000"),
      paymentsAYear: new Decimal("1"),
      nextDue: "2031-03-01",
      firstDue: null,
      bornBy: null,
      source: { table: "Loans", row: 1 },
    };
    const { loans, repayment } = reportJson(reportOf(seasonOf({ fields: [field("Home", "100", "200")], loans: [loan] })));
    // 8 % of 100,000; 20,000 bu at 4.00.
    expect(loans).toEqual([
      {
        loan: "Note",
        kind: "term",
        interest: "8000",
        principal: "12000",
        before: "100000",
        after: "88000",
        payments: [{ month: "2031-03", payment: "20000", interest: "8000", owed: "88000" }],
      },
    ]);
    expect(repayment).toEqual({
      income: "80000",
      cashCosts: "8000",
      capacity: "80000",
      due: "20000",
      margin: "60000",
      marginAfterReplacement: "60000",
      coverage: "4",
    });
  });

  it("has what each machine costs an acre", () => {
    const planting = operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" } });
    const { machines, complete } = reportJson(reportOf(seasonOf({ fields: [sown], machines: [planter], operations: [planting] })));
    expect(complete).toBe(true);
    expect(machines).toMatchObject([
      { machine: "Planter", acresPerHour: "13", perAcre: { fuel: "2", lube: "0.3", labour: "2.2", repairs: "0" } },
    ]);
    expect([machines[0]!.perAcre.ownership, machines[0]!.perAcre.total].map((each) => new Decimal(each!).toFixed(10))).toEqual([
      "80.0000000000",
      "84.5000000000",
    ]);
  });
});
