import { describe, expect, it } from "vitest";
import { reportOf } from "../../../tests/support/reportOf";
import { demo } from "../../../tests/support/demoReport";
import { everyColumn } from "../../../tests/support/everyColumn";
import { item, otherCost, purchase, sale } from "../../../tests/support/season";
import { smallFarm } from "../../../tests/support/smallFarm";
import { farmCashFlow } from "../../workbook/sheets/lender/farmCashFlow";
import { readSeason } from "../../workbook/readSeason";
import { Decimal, sum } from "../numbers/decimal";
import type { Season } from "../season";
import { money } from "../numbers/units";
import { farmYear } from "./farmYear";
import { paidAndCharged } from "./paidAndCharged";
import { reconciliation } from "./reconciliation";
import { repayment } from "./repayment";

function reconciled(season: Season) {
  const report = reportOf(season);
  const [year, flow] = [farmYear(report.figures), farmCashFlow(report)!];
  const groups = paidAndCharged(season, report.figures, flow);
  const { margin, steps, change } = reconciliation(repayment(year).margin, groups, flow);
  const [first, last] = [flow.months[0]!, flow.months.at(-1)!];
  // What the sheet itself says at both ends: cash less loan.
  const before = first.cash.minus(first.loan).minus(first.moneyIn).plus(first.moneyOut).plus(first.interest);
  expect(change.toFixed(10)).toBe(last.cash.minus(last.loan).minus(before).toFixed(10));
  // No step is what the others leave.
  expect(sum([margin, ...steps.values()]).toFixed(10)).toBe(change.toFixed(10));
  expect(
    groups
      .filter(({ charged, differences, paid }) =>
        sum([charged, ...Object.values(differences)])
          .minus(paid)
          .abs()
          .gt("1e-10"),
      )
      .map(({ group }) => group),
  ).toEqual([]);
  return {
    margin: margin.toFixed(2),
    steps: Object.fromEntries([...steps].map(([reason, amount]) => [reason, amount.toFixed(2)])),
    change: change.toFixed(2),
  };
}

describe("the margin and the operating loan", () => {
  it("agree where all that is charged is paid in the year and nothing bears interest", () => {
    // 25,800 is the margin, and what is in cash in the end.
    expect(reconciled(smallFarm)).toEqual({ margin: "25800.00", steps: {}, change: "25800.00" });
  });

  it("differ by interest that is charged otherwise than the loan's balance bears it", () => {
    const line = {
      ...smallFarm.loans![0]!,
      name: "Line",
      kind: "operating" as const,
      balance: money("12000"),
      rate: new Decimal("0.1"),
      payment: null,
      nextDue: null,
    };
    const { margin, steps, change } = reconciled({ ...smallFarm, loans: [...smallFarm.loans!, line] });
    // A year of 12,000 at 10 % comes off the margin; the balance bears what is drawn as well, and none once November has paid it.
    expect([margin, Object.keys(steps)]).toEqual(["24600.00", ["interest by balance"]]);
    expect(new Decimal(change).toFixed(2)).toBe(new Decimal(margin).plus(steps["interest by balance"]!).toFixed(2));
  });

  it("agree on operating interest that is entered where no balance bears any: it is paid like any other cost", () => {
    // 10 an acre on 100 acres come off both.
    const entered = [
      ...smallFarm.otherCosts,
      otherCost("Line", "10", { kind: "operating interest", basis: "per acre", paidOn: "2031-07-01" }),
    ];
    expect(reconciled({ ...smallFarm, otherCosts: entered })).toEqual({ margin: "24800.00", steps: {}, change: "24800.00" });
  });

  it("differ by costs that are charged and not paid in these months, and the other way", () => {
    // Seed that nobody has used is stock: 300 are paid and charged nowhere.
    const stock = { items: [item("Seed", null, { kind: "seed" })], purchases: [purchase("Seed", "100", "300")] };
    expect(reconciled({ ...smallFarm, ...stock })).toEqual({ margin: "25800.00", steps: { stock: "-300.00" }, change: "25500.00" });
  });

  it("differ by older grain, which is paid and in no budget", () => {
    const older = { ...sale("100", "5"), cropYear: "2030" };
    expect(reconciled({ ...smallFarm, sales: [...smallFarm.sales, older] }).steps).toEqual({ "older grain": "500.00" });
  });

  it("differ by nothing that is not named, where machines, shares, loans, harvest and the next crop are all at work", async () => {
    expect(Object.keys(reconciled(readSeason(everyColumn()).season).steps).sort()).toEqual(["interest by balance"]);
    expect(Object.keys(reconciled((await demo()).report.season).steps)).toContain("machine work");
  });
});
