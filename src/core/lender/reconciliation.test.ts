import { describe, expect, it } from "vitest";
import { reportOf } from "../../../tests/support/reportOf";
import { item, otherCost, purchase } from "../../../tests/support/season";
import { smallFarm } from "../../../tests/support/smallFarm";
import { farmCashFlow } from "../../workbook/sheets/lender/cashFlowSheet";
import { Decimal } from "../decimal";
import type { Season } from "../season";
import { money } from "../units";
import { farmYear } from "./farmYear";
import { reconciliation } from "./reconciliation";
import { repayment } from "./repayment";

function reconciled(season: Season) {
  const report = reportOf(season);
  const [year, flow] = [farmYear(report.figures), farmCashFlow(report)!];
  const { margin, interest, paid, change } = reconciliation(season, repayment(year).margin, year, flow);
  const [first, last] = [flow.months[0]!, flow.months.at(-1)!];
  // What the sheet itself says at both ends: cash less loan.
  const before = first.cash.minus(first.loan).minus(first.moneyIn).plus(first.moneyOut).plus(first.interest);
  expect(change.toFixed(10)).toBe(last.cash.minus(last.loan).minus(before).toFixed(10));
  return [margin, interest, paid, change].map((value) => value.toDecimalPlaces(2)).map((value) => (value.isZero() ? "0.00" : value.toFixed(2)));
}

describe("the margin and the operating loan", () => {
  it("agree where all that is charged is paid in the year and nothing bears interest", () => {
    // 25,800 is the margin, and what is in cash in the end.
    expect(reconciled(smallFarm)).toEqual(["25800.00", "0.00", "0.00", "25800.00"]);
  });

  it("differ by interest that is charged otherwise than the loan's balance bears it", () => {
    const line = { ...smallFarm.loans![0]!, name: "Line", kind: "operating" as const, balance: money("12000"), rate: new Decimal("0.1"), payment: null, nextDue: null };
    const [margin, interest, paid, change] = reconciled({ ...smallFarm, loans: [...smallFarm.loans!, line] });
    // A year of 12,000 at 10 % comes off the margin; the balance bears what is drawn as well, and none once November has paid it.
    expect([margin, paid]).toEqual(["24600.00", "0.00"]);
    expect(new Decimal(change!).toFixed(2)).toBe(new Decimal(margin!).plus(interest!).toFixed(2));
  });

  it("agree on operating interest that is entered where no balance bears any: it is paid like any other cost", () => {
    // 10 an acre on 100 acres come off both.
    const entered = [...smallFarm.otherCosts, otherCost("Line", "10", { kind: "operating interest", basis: "per acre", paidOn: "2031-07-01" })];
    expect(reconciled({ ...smallFarm, otherCosts: entered })).toEqual(["24800.00", "0.00", "0.00", "24800.00"]);
  });

  it("differ by costs that are charged and not paid in these months, and the other way", () => {
    // Seed that nobody has used is stock: 300 are paid and charged nowhere.
    const stock = { items: [item("Seed", null, { kind: "seed" })], purchases: [purchase("Seed", "100", "300")] };
    expect(reconciled({ ...smallFarm, ...stock })).toEqual(["25800.00", "0.00", "-300.00", "25500.00"]);
  });
});
