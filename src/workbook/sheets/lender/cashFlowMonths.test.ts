/** Which months a cash flow has, and of which year it is. */
import { describe, expect, it } from "vitest";
import { reportOf } from "../../../../tests/support/reportOf";
import { item, purchase, sale, seasonOf } from "../../../../tests/support/season";
import { sheetLines } from "../../../../tests/support/sheetLines";
import { smallFarm } from "../../../../tests/support/smallFarm";
import { contentFromText } from "../../../../tests/support/tableFromText";
import type { SeasonReport } from "../../seasonReport";
import { seasonReport } from "../../report";
import { cashFlowSheet } from "./cashFlowSheet";
import { farmCashFlow } from "./farmCashFlow";
import { lenderPages } from "./lenderPages";

const monthsOf = (report: SeasonReport) => farmCashFlow(report)?.months.map(({ month }) => month) ?? null;
const bill = (paidOn: string) =>
  seasonOf({ ...smallFarm, items: [item("Urea", "0.3")], purchases: [purchase("Urea", "100", "30", { date: paidOn, paidOn })] });

describe("the months of a cash flow", () => {
  it("sell unsold grain on the day of repayment, also where no rate of interest is entered", () => {
    const months = (repaymentDate: string | null) =>
      farmCashFlow(reportOf({ ...smallFarm, settings: { ...smallFarm.settings, repaymentDate } }))!
        .months.filter(({ flows }) => flows.get("grain sales")?.gt("50000") === true)
        .map(({ month }) => month);
    expect(months(null)).toEqual(["2031-11"]);
    expect(months("2031-12-01")).toEqual(["2031-12"]);
  });

  it("may be more than the columns of one letter: 2029-12 to 2032-01 are 26, and the chart ends in AA", () => {
    const long = reportOf({ ...bill("2029-12-10"), sales: [{ ...sale("5000", "4.2"), delivered: "2032-01-01" }] });
    expect(monthsOf(long)).toHaveLength(26);
    const [chart] = cashFlowSheet(long).charts;
    expect(chart!.categories).toMatch(/^B(\d+):AA\1$/);
    expect([chart!.to, ...chart!.series.map(({ values }) => values)].every((reference) => /AA\d+$/.test(reference))).toBe(true);
    expect(sheetLines(lenderPages(long, { date: "2031-06-15" })).length).toBeGreaterThan(40);
  });

  it("never run through a century for one slip: a bill of 1931 stands in the first month that can be of 2031, to the cent", () => {
    const months = farmCashFlow(reportOf(bill("1931-04-01")))!.months;
    expect([months[0]!.month, months[0]!.moneyOut.toFixed(), months.at(-1)!.month]).toEqual(["2029-01", "30", "2031-12"]);
    expect(farmCashFlow(reportOf(bill("2131-04-01")))!.months.at(-1)!.month).toBe("2033-12");
  });
});

const workbook = (rows: string, settings = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Currency | USD |
${settings}
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Rent per acre |
| Alder | Corn | 100 | 200 | | 200 |
Operations
| Field or Crop | Operation | Rate | Basis | Date | Status |
${rows}
`),
  );

describe("a season whose year is not entered", () => {
  it("is of the year in which all its field work falls", () => {
    const report = workbook(
      "| Alder | Planting | 20 | per acre | 2031-05-05 | plan |\n| Alder | Spraying | 10 | per acre | 2031-06-10 | plan |",
    );
    expect([report.season.settings.seasonYear, report.problems]).toEqual(["2031", []]);
    // Rent of 20,000 falls half in March and half in November of it.
    expect(
      farmCashFlow(report)!
        .months.filter(({ flows }) => flows.has("cash rent"))
        .map(({ month }) => month),
    ).toEqual(["2031-03", "2031-11"]);
  });

  it("has no cash flow, and asks for the year, where the entries disagree; the budgets stay complete", () => {
    const report = workbook(
      "| Alder | Planting | 20 | per acre | 2030-05-05 | plan |\n| Alder | Spraying | 10 | per acre | 2031-06-10 | plan |",
    );
    expect(report.problems.map(({ code, found }) => [code, found])).toEqual([["season-year-missing", "2030, 2031"]]);
    expect(monthsOf(report)).toBeNull();
    expect([
      report.problemsOf({ of: "cash flow" }).length,
      report.problemsOf({ of: "farm" }).length,
      report.problemsOf({ of: "crop", name: "Corn" }).length,
    ]).toEqual([1, 0, 0]);
    const told = sheetLines(cashFlowSheet(report)).join("\n");
    expect(told).toContain("No cash flow yet: enter Season year");
    expect(told).toContain("Incomplete: 1 entry needs attention.");
    expect(sheetLines(lenderPages(report, { date: "2031-06-15" })).join("\n")).toContain("No cash flow yet: enter Season year");
    const settled = workbook(
      "| Alder | Planting | 20 | per acre | 2030-05-05 | plan |\n| Alder | Spraying | 10 | per acre | 2031-06-10 | plan |",
      "| Season year | 2031 |",
    );
    expect([settled.problems, monthsOf(settled)![0]]).toEqual([[], "2030-05"]);
  });

  it("is of no year, least of all 2000, where nothing has a date", () => {
    const report = workbook("| Alder | Planting | 20 | per acre | | plan |");
    expect([monthsOf(report), report.problems]).toEqual([null, []]);
    expect(sheetLines(cashFlowSheet(report)).join("\n")).not.toContain("2000");
  });
});
