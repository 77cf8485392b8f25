import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { farmCashFlow } from "../sheets/lender/farmCashFlow";
import { seasonReport } from "../report";
import { paidAndCharged } from "../../core/lender/paidAndCharged";

const reportOf = (rows: string, settings = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${settings}
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Items
| Item | Kind | Pack unit | Plan price per pack |
| Urea | fertilizer | lb | 0.5 |
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status |
| Alder | Urea | 100 | lb/ac | 2031-05-01 | done |
Purchases
| Date | Item | Quantity | Unit | Amount | Kind | For | Paid on | For season | Opening stock |
${rows}
`),
  );
const told = (report: ReturnType<typeof reportOf>) => report.problems.map(({ code, at }) => `${code} ${at.row ?? ""} ${at.column ?? ""}`);
const perAcre = (report: ReturnType<typeof reportOf>, kind: "fertilizer" | "operating interest" | "seed") =>
  report.figures.crops[0]!.outlook.costPerArea.byKind.get(kind)?.toFixed() ?? null;
const paid = (report: ReturnType<typeof reportOf>, group: string) =>
  farmCashFlow(report)!.months.flatMap(({ month, flows }) => {
    const amount = flows.get(group);
    return amount === undefined || amount.isZero() ? [] : [`${month} ${amount.toFixed()}`];
  });

const ownUrea = "| 2031-03-01 | Urea | 10000 | lb | 4000 | | | | | |";

describe("a bill for another season", () => {
  it("is paid when it is paid, and is in no price, cost or stock of this one", () => {
    const report = reportOf(
      `${ownUrea}\n| 2031-11-10 | Urea | 6000 | lb | 3600 | | | | 2032 | |\n| 2031-11-12 | Seed for next year | | | 900 | seed | | | 2032 | |`,
    );
    expect(told(report)).toEqual([]);
    expect([perAcre(report, "fertilizer"), perAcre(report, "seed")]).toEqual(["40", null]);
    expect([report.figures.items[0]!.bought.toFixed(), report.figures.items[0]!.left.toFixed()]).toEqual(["10000", "0"]);
    expect([paid(report, "fertilizer"), paid(report, "seed")]).toEqual([["2031-03 -4000", "2031-11 -3600"], ["2031-11 -900"]]);
    const groups = paidAndCharged(report.season, report.figures, farmCashFlow(report)!);
    expect(groups.map(({ group, differences }) => `${group} ${differences["other season"]?.toFixed()}`)).toEqual([
      "seed 900",
      "fertilizer 3600",
    ]);
  });

  it("of the season's own year is one of this season", () => {
    const report = reportOf(`${ownUrea}\n| 2031-03-02 | Urea | 10000 | lb | 6000 | | | | 2031 | |`);
    expect(perAcre(report, "fertilizer")).toBe("50");
  });

  it("cannot be read without a year, a kind or an amount, and is told", () => {
    const report = reportOf(
      `${ownUrea}\n| 2031-11-10 | Urea | 6000 | lb | 3600 | | | | next | |\n| 2031-11-10 | New seed | 5 | bags | 900 | | | | 2032 | |\n| 2031-11-10 | Urea | | | | | | | 2032 | |`,
    );
    expect(told(report)).toEqual(["not-a-date 2 For season", "blank 3 Kind", "amount-missing 4 "]);
  });
});

describe("opening stock", () => {
  const rows = "| 2031-01-01 | Urea | 5000 | lb | 1500 | | | | | yes |\n| 2031-03-01 | Urea | 5000 | lb | 2500 | | | | | |";
  it("counts in quantity and price and is not paid again", () => {
    const report = reportOf(rows);
    expect(told(report)).toEqual([]);
    expect([perAcre(report, "fertilizer"), paid(report, "fertilizer")]).toEqual(["40", ["2031-03 -2500"]]);
  });

  it("bears no interest, by date or by months", () => {
    const byMonths = reportOf(rows, "| Operating interest rate | 12% |\n| Interest method | months |\n| Interest months | 6 |");
    // 6 % of the 2,500 that is paid this season, on 100 acres.
    expect(perAcre(byMonths, "operating interest")).toBe("1.5");
    const byDate = reportOf(rows, "| Operating interest rate | 36.5% |\n| Interest method | by date |\n| Repayment date | 2031-03-11 |");
    // Ten days of 2,500 at a thousandth a day.
    expect(perAcre(byDate, "operating interest")).toBe("0.25");
  });

  it("of a bill charged directly is charged, not paid, without interest", () => {
    const report = reportOf(
      `${ownUrea}\n| 2031-01-01 | Fall lime | | | 2000 | fertilizer | Alder | | | yes |`,
      "| Operating interest rate | 12% |\n| Interest method | months |\n| Interest months | 6 |",
    );
    expect([told(report), perAcre(report, "fertilizer"), perAcre(report, "operating interest")]).toEqual([[], "60", "2.4"]);
    expect(paid(report, "fertilizer")).toEqual(["2031-03 -4000"]);
  });

  it("with a day of payment says two things, and the first is told", () => {
    expect(told(reportOf("| 2031-01-01 | Urea | 10000 | lb | 1500 | | | 2031-04-01 | | yes |"))).toEqual(["entry-beside 1 Paid on"]);
    expect(told(reportOf(`${ownUrea}\n| 2031-01-01 | Urea | 5000 | lb | 1500 | | | | 2032 | yes |`))).toEqual([
      "entry-beside 2 Opening stock",
    ]);
  });
});
