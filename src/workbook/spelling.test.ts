import { describe, expect, it } from "vitest";
import { demo } from "../../tests/support/demoReport";
import { summary } from "../cli/summary";
import { problemLine } from "../cli/problemLine";
import type { WorkbookContent } from "./cell";
import { reportJson } from "./reportJson";
import { seasonReport } from "./report";
import type { SeasonReport } from "./seasonReport";
import { cashFlowSheet } from "./sheets/lender/cashFlowSheet";
import { lenderPages } from "./sheets/lender/lenderPages";
import { resultSheets } from "./sheets/resultSheets";
import { provenYield, spelled, spelledPairs, spelledSheet, spelledText } from "./spelling";

/** The demo as its grower would have it who counts in this currency, without his own note on cheques. */
function inCurrency(content: WorkbookContent, currency: string): WorkbookContent {
  const changed = (value: unknown) => (value === "USD" ? currency : value);
  const tables = content.tables.map((table) => ({ ...table, rows: table.rows.map((row) => row.map(changed) as typeof row) }));
  return { ...content, tables };
}

const sheetsOf = (report: SeasonReport) =>
  [...resultSheets(report), lenderPages(report, { date: "2026-06-15" }), cashFlowSheet(report)].map((sheet) => spelledSheet(sheet, report));

/** Everything that leaves as a sheet or as text. */
const printed = (report: SeasonReport): string =>
  [
    ...sheetsOf(report).flatMap(({ name, page, rows, charts }) => [
      name,
      page.footer,
      ...charts.map(({ title }) => title),
      ...rows.flatMap((row) => row.map(({ value }) => String(value))),
    ]),
    spelledText(summary(report), report),
    ...report.problems.map((problem) => spelledText(problemLine(problem, report), report)),
  ].join("\n");

const words = (pairs: readonly string[]) => new RegExp(`\\w*(${pairs.join("|")})\\w*`, "gi");
const [canadian, american] = [words(spelledPairs.map(([first]) => first)), words(spelledPairs.map(([, second]) => second))];

describe("what leaves as a sheet or as text", () => {
  it.each(["USD", "US$", "$"])("has no word in Canadian spelling where money is %s", async (currency) => {
    const { workbook } = await demo();
    const text = printed(seasonReport(inCurrency(await workbook.read(), currency)));
    expect([...text.matchAll(canadian)].map(([word]) => word)).toEqual([]);
    expect(text).toContain("hired labor");
  });

  it.each(["CAD", "EUR"])("has no word in American spelling where money is %s", async (currency) => {
    const { workbook } = await demo();
    const text = printed(seasonReport(inCurrency(await workbook.read(), currency)));
    // A check of a planter is none on a bank, and the meter that singles seeds is spelled so everywhere.
    expect([...text.matchAll(american)].map(([word]) => word).filter((word) => !/^(check|planter|seed meter|meter)/i.test(word))).toEqual(
      [],
    );
    expect(text).toContain("hired labour");
  });

  it("keeps the kinds of the JSON as entries have them", async () => {
    const { report } = await demo();
    expect(JSON.stringify(reportJson(report))).toContain('"hired labour"');
  });
});

it("the yield of an insurer has its short name in US dollars alone", () => {
  expect([provenYield("USD"), provenYield("CAD")]).toEqual(["Proven yield (APH)", "Proven yield"]);
});

describe("a word of ours", () => {
  it.each([
    ["hired labour", "hired labor"],
    ["Unpaid labour", "Unpaid labor"],
    ["Labour per hour", "Labor per hour"],
    ["Gallons (litres)", "Gallons (liters)"],
    ["Inches (centimetres).", "Inches (centimeters)."],
    ["Centred over the furrow", "Centered over the furrow"],
    ["LABOUR", "LABOR"],
  ])("%s is %s in US dollars", (ours, there) => {
    expect(spelled(ours, "USD")).toBe(there);
    expect(spelled(ours, "CAD")).toBe(ours);
  });

  it("stays as the grower spelled it in a name of the grower's own", async () => {
    const { workbook } = await demo();
    const content = await workbook.read();
    const tables = content.tables.map((table) => ({
      ...table,
      rows: table.rows.map((row) => row.map((value) => (value === "Harvest help" ? "Labour Day help" : value))),
    }));
    const report = seasonReport({ ...content, tables });
    const sheets = sheetsOf(report).flatMap(({ rows }) => rows.flatMap((row) => row.map(({ value }) => String(value))));
    expect(spelledText("hired labour for Labour Day help", report)).toBe("hired labor for Labour Day help");
    expect(sheets.some((value) => value.includes("Labor Day"))).toBe(false);
    const renamed = seasonReport({
      ...content,
      tables: content.tables.map((table) => ({
        ...table,
        rows: table.rows.map((row) => row.map((value) => (value === "Harvest help" ? "Labour" : value))),
      })),
    });
    expect([spelledText("   Labour", renamed), spelledText("Labour per hour", renamed)]).toEqual(["   Labour", "Labor per hour"]);
  });
});
