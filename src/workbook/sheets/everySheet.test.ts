import { beforeAll, describe, expect, it } from "vitest";
import { demo } from "../../../tests/support/demoReport";
import { reportOf } from "../../../tests/support/reportOf";
import { smallFarm } from "../../../tests/support/smallFarm";
import { sheetLines } from "../../../tests/support/sheetLines";
import { summary } from "../../cli/summary";
import { planningCaution } from "../../core/cautions";
import { share } from "../../core/numbers/units";
import { reportJson } from "../reportJson";
import type { SeasonReport } from "../seasonReport";
import { inputTables } from "../templates";
import { breakEvenSheet } from "./breakEvenSheet";
import { costPerAcreSheet } from "./costPerAcre";
import { cashFlowSheet } from "./lender/cashFlowSheet";
import { lenderPages } from "./lender/lenderPages";
import { lenderNotices } from "./lender/notes";
import { resultSheets } from "./resultSheets";

let report: SeasonReport;
beforeAll(async () => {
  ({ report } = await demo());
});
const says = (sheet: Parameters<typeof sheetLines>[0]) => sheetLines(sheet).join(" ");

describe("what figures are for", () => {
  it("is said wherever they leave the screen: on every result sheet, the lender pages, the command line and in the data", () => {
    const sheets = [...resultSheets(report), cashFlowSheet(report), lenderPages(report, { date: "2026-06-15" })];
    expect(sheets.length).toBeGreaterThan(6);
    expect(sheets.filter((sheet) => !says(sheet).includes(planningCaution)).map(({ name }) => name)).toEqual([]);
    expect(summary(report)).toContain(planningCaution);
    expect(reportJson(report).caution).toBe(planningCaution);
  });

  it("is printed on the paper of the country: letter where areas are acres, A4 where they are hectares", () => {
    const papers = (areaUnit: "ac" | "ha") => {
      const season = { ...report, season: { ...report.season, settings: { ...report.season.settings, areaUnit } } };
      const sheets = [...resultSheets(season), cashFlowSheet(season), lenderPages(season, { date: "2026-06-15" })];
      return [...new Set(sheets.map(({ page }) => page.paper))];
    };
    expect([papers("ac"), papers("ha")]).toEqual([["letter"], ["a4"]]);
  });

  it("fits into the footer of the lender pages with the longest farm's name: Excel takes 255 characters", () => {
    const { page } = lenderPages(reportOf({ ...smallFarm, settings: { ...smallFarm.settings, farm: "A".repeat(300) } }), {
      date: "2031-06-15",
    });
    expect(page.footer.length).toBeLessThan(230);
    expect(page.footer).toMatch(/^A{60}, 2031-06-15, cash need\. /);
  });
});

describe("what costs bring along", () => {
  it("is one line for ammonia, the dryer, a bin and long hours, on the sheet of costs", () => {
    const [other] = smallFarm.otherCosts;
    const named = (item: string) => ({ ...other!, item });
    const words = ["Ammonia: goggles", "Dryer: gas", "Bin: nobody", "Long hours: tired"];
    const farm = reportOf({
      ...smallFarm,
      otherCosts: [named("Anhydrous ammonia bar"), named("Dryer parts"), named("Bin fan"), named("Overtime")],
    });
    expect(words.filter((each) => !says(costPerAcreSheet(farm)).includes(each))).toEqual([]);
    const free = reportOf({ ...smallFarm, otherCosts: [], operations: smallFarm.operations });
    expect(words.filter((each) => says(costPerAcreSheet(free)).includes(each))).toEqual([]);
  });

  it("is a mark at kinds that rest on coefficients not checked against print, and the words for it", () => {
    const marked = sheetLines(costPerAcreSheet(report)).filter((line) => /^ {3}(repairs|machine ownership) \*/.test(line));
    expect(marked.length).toBeGreaterThan(0);
    expect(says(costPerAcreSheet(report))).toContain("did not check against print");
    expect(says(lenderPages(report, { date: "2026-06-15" }))).toContain("not checked against print");
    expect(says(costPerAcreSheet(reportOf(smallFarm)))).not.toContain("did not check against print");
  });
});

describe("each field's break-evens", () => {
  it("stand on the sheet and in the data", () => {
    const { crops } = report.figures;
    const lines = sheetLines(breakEvenSheet(report));
    for (const { field, outlook } of crops.flatMap(({ fields }) => fields)) {
      expect(lines.filter((line) => line.startsWith(field)).length, field).toBe(2);
      const data = reportJson(report).fields.find((each) => each.field === field)!;
      expect(data.acres).toBe(outlook.budget.area.toFixed());
      expect(data.breakEvens[0]).toMatchObject({ yieldOf: "goal", priceOf: "expected", yield: outlook.budget.yields.goal.toFixed() });
    }
  });
});

describe("the lender pages of an insured, shared crop", () => {
  it("show guarantee and payment as the operator's share: half of 648 is 324, of 67.5 bu", () => {
    const fields = smallFarm.fields.map((each) => ({
      ...each,
      tenure: "crop share" as const,
      rentPerArea: null,
      operatorShare: share("0.5"),
    }));
    const line = sheetLines(lenderPages(reportOf({ ...smallFarm, fields }), { date: "2031-06-15" })).find((each) =>
      each.startsWith("Insurance guarantee per acre"),
    );
    expect(line).toBe("Insurance guarantee per acre | 324 | revenue: | 67.5 | 4.8");
  });
});

describe("the demo", () => {
  it("has no result sheet of the name of an input table's sheet, where it would be another of that name", () => {
    const entered = new Set(inputTables.map(({ sheet }) => sheet.toLowerCase()));
    expect(
      resultSheets(report)
        .map(({ name }) => name)
        .filter((name) => entered.has(name.toLowerCase())),
    ).toEqual([]);
  });

  it("fits its lender pages on two, which their footers count", () => {
    expect(lenderPages(report, { date: "2026-06-15" }).page.pages).toBe(2);
  });

  it("trips none of the notices that come before its lender pages", () => {
    expect(lenderNotices(report)).toEqual([]);
  });
});
