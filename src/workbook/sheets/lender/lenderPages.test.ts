import { describe, expect, it } from "vitest";
import { reportOf } from "../../../../tests/support/reportOf";
import {
  application,
  corn,
  field,
  item,
  load,
  operation,
  otherCost,
  purchase,
  sale,
  seasonOf,
  settings,
} from "../../../../tests/support/season";
import { Decimal, sum } from "../../../core/numbers/decimal";
import { moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../../core/numbers/units";
import type { SheetCell } from "../../resultSheet";
import { cashFlowSheet } from "./cashFlowSheet";
import { farmCashFlow } from "./farmCashFlow";
import { lenderPages } from "./lenderPages";
import { lenderNotices } from "./notes";
import { amountWords } from "../amounts";
import { reasonLines } from "./reasonsBand";

const soybeans = { ...corn, name: "Soybeans", price: moneyPerUnit("10.40") };
const season = seasonOf({
  settings: { ...settings, operatingInterest: { method: "by date", rate: new Decimal("0.08"), repaymentDate: "2031-12-01" } },
  crops: [{ ...corn, lowPrice: moneyPerUnit("3.6"), highPrice: moneyPerUnit("4.4"), sellingCostPerUnit: moneyPerUnit("0.13") }, soybeans],
  fields: [
    field("Home", "120.5", "205", { provenYield: yieldPerArea("192"), tenure: "cash rent", rentPerArea: moneyPerArea("240") }),
    field("Hill", "61.2", "180", { tenure: "crop share", operatorShare: share("0.6") }),
    field("Flat", "80", "58", { crop: "Soybeans" }),
  ],
  items: [item("Urea", "0.30"), item("Seed", "3", { kind: "seed" })],
  purchases: [purchase("Urea", "20000", "7100"), purchase("Seed", "9000", "27999.99", { paidOn: "2031-01-15" })],
  applications: [
    application("Urea", "Home", "140", "plan", { date: "2031-05-20" }),
    application("Seed", "Home", "30", "done", { date: "2031-05-01" }),
    application("Seed", "Home", "32", "plan", { date: "2031-05-02" }),
    application("Seed", "Flat", "20", "plan"),
  ],
  operations: [
    operation("Planting", "Home", "21.50", "plan", { date: "2031-05-02" }),
    operation("Planting", "Home", "24", "done", { date: "2031-05-03" }),
  ],
  otherCosts: [otherCost("Office", "6000"), otherCost("Living", "40000", { kind: "family living", paidOn: "2031-06-01" })],
  sales: [sale("6000", "4.25")],
});
const report = reportOf(season);
const sheet = lenderPages(report, { date: "2031-06-15" });
const cells = sheet.rows.flat();
const find = (words: string): number => sheet.rows.findIndex((row) => row.some((cell) => cell.value === words));

describe("leases too many for a formula in a cell", () => {
  const under = (leases: number) =>
    lenderPages(
      reportOf(
        seasonOf({
          fields: Array.from({ length: leases }, (_, lease) =>
            field(`Field ${lease}`, "40.123456", `${200 + lease}.3`, {
              tenure: "flexible rent",
              rentPerArea: moneyPerArea("200"),
              flexibleRent: {
                baseGross: moneyPerArea(`${700 + lease * 3}.77`),
                shareAbove: share("0.37"),
                most: moneyPerArea(`${290 + lease}.33`),
              },
            }),
          ),
        }),
      ),
      { date: "2031-06-15" },
    ).rows.flat();
  const said = (of: readonly SheetCell[]) => of.filter(({ value }) => String(value).startsWith("Corn: its leases are too many"));

  it("leave break-evens that follow nothing, which is said beside them", () => {
    const [few, many] = [under(2), under(60)];
    const formulas = (of: readonly SheetCell[]) => of.filter(({ formula }) => formula?.includes("SUMPRODUCT(MAX(")).length;
    expect([formulas(few) > formulas(many), said(few).length, said(many).length]).toEqual([true, 0, 1]);
    for (const { formula } of many) expect(formula?.length ?? 0).toBeLessThanOrEqual(8_192);
  });
});

describe("a budget line that nobody has billed", () => {
  const line = (allIn: boolean) => ({
    over: { crop: "Corn" },
    kind: "seed" as const,
    amount: new Decimal("120"),
    basis: "per acre" as const,
    paidOn: null,
    operatorCostShare: share("1"),
    allIn,
    source: { table: "Budget", row: 1 },
  });
  const saidOf = (parts: Parameters<typeof seasonOf>[0]) => {
    const of = reportOf(
      seasonOf({ fields: [field("Home", "100", "200", { harvestDone: { on: null } })], harvest: [load("Home", "20000")], ...parts }),
    );
    const labels = lenderPages(of, { date: "2031-12-15" })
      .rows.map((row) => String(row[0]?.value ?? "").trim())
      .filter((words) => words.startsWith("seed") || words.startsWith("drying"));
    return [...labels, ...lenderNotices(of).flatMap(({ code }) => (code === "budget-unbilled" ? [code] : []))];
  };
  it("marks its kind once the field is harvested, until it is all in", () => {
    expect([saidOf({ budget: [line(false)] }), saidOf({ budget: [line(true)] })]).toEqual([
      ["seed, no bill yet", "budget-unbilled"],
      ["seed"],
    ]);
    expect(saidOf({ budget: [line(false)], harvest: [], fields: [field("Home", "100", "200")] })).toEqual(["seed"]);
  });
  it("is told too where planned rows hide it in the outlook: the final has none of them", () => {
    // Drying that is planned comes after the last load and stays in the outlook; in the final it is the line's.
    const drying = {
      budget: [{ ...line(false), kind: "drying" as const }],
      operations: [operation("Drying", "Home", "150", "plan", { kind: "drying", date: "2031-12-01" })],
    };
    expect(saidOf(drying)).toEqual(["drying, no bill yet", "budget-unbilled"]);
  });
});

describe("the lender pages", () => {
  it("make the break-evens live: every figure of the assumptions' lines is a formula with its value", () => {
    const price = sheet.rows[find("Break-even price")]!;
    expect(price.slice(1, 9).every((cell) => cell.formula !== undefined)).toBe(true);
    const outlook = report.figures.crops[0]!.outlook;
    expect(price[1]!.value).toBe(Number(outlook.breakEvenPrice.operating!.toDecimalPlaces(2, Decimal.ROUND_CEIL)));
    expect(price[4]!.value).toBe(Number(outlook.breakEvenPrice.cashNeed!.toDecimalPlaces(2, Decimal.ROUND_CEIL)));
  });

  it("name the unit of yield where all crops have one, and leave it to the columns where they differ", () => {
    const labels = (of: typeof sheet) =>
      of.rows.map(([first]) => String(first?.value ?? "")).filter((words) => /^(Price|Cost|Hauling.*) per (bu|unit)/.test(words));
    expect(labels(sheet)).toEqual(["Price per bu (yours to change)", "Hauling, drying, selling per bu", "Cost per bu"]);
    const mixed = lenderPages(reportOf({ ...season, crops: [season.crops[0]!, { ...soybeans, yieldUnit: "t" }] }), { date: "2031-06-15" });
    expect(labels(mixed)).toEqual([
      "Price per unit of yield (yours to change)",
      "Hauling, drying, selling per unit of yield",
      "Cost per unit of yield",
    ]);
  });

  it("let a reader change price, yield, share, other income and costs, and nothing else", () => {
    const inputs = cells.filter((cell) => cell.style?.border === "box");
    expect(inputs).toHaveLength(2 * (4 + 8));
    expect(inputs.every((cell) => cell.formula === undefined && typeof cell.value === "number")).toBe(true);
  });

  it("point every formula at a cell of the sheet that holds a number", () => {
    const at = (reference: string): SheetCell | undefined => {
      const [, letters, row] = /^\$([A-Z]+)\$(\d+)$/.exec(reference)!;
      return sheet.rows[Number(row) - 1]?.[letters!.charCodeAt(0) - 65];
    };
    const formulas = cells.flatMap((cell) => (cell.formula === undefined ? [] : [cell.formula]));
    expect(formulas.length).toBeGreaterThan(100);
    for (const formula of formulas)
      for (const [reference] of formula.matchAll(/\$[A-Z]+\$\d+/g)) expect(typeof at(reference)?.value).toBe("number");
  });

  it("give the reasons of each crop so that the cents add up from plan to outlook", () => {
    for (const crop of report.figures.crops) {
      const lines = reasonLines(crop, "cashNeed");
      expect(lines.at(-1)!.amount.toFixed(2)).toBe(sum(lines.slice(0, -1).map(({ amount }) => amount)).toFixed(2));
    }
  });

  it("count their own pages from 1, whatever is printed with them", () => {
    expect(sheet.page.pages).toBe(2);
  });

  it("fit one crop or three abreast into thirteen columns", () => {
    expect(Math.max(...sheet.rows.map((row) => row.length))).toBeLessThanOrEqual(sheet.columns.length);
  });

  it("leave out crops that were not asked for", () => {
    const only = lenderPages(report, { date: "2031-06-15", crops: ["Soybeans"] });
    expect(only.rows.flat().some((cell) => cell.value === "Corn")).toBe(false);
  });
});

describe("the cash flow sheet", () => {
  it("has a column for each month and one for all, and names the month of the peak on the pages", () => {
    const flow = farmCashFlow(report)!;
    expect(flow.months[0]!.month).toBe("2031-01");
    const rows = cashFlowSheet(report).rows;
    expect(rows.find((row) => row.at(-1)?.value === "All")).toHaveLength(flow.months.length + 2);
    expect(flow.peak).not.toBeNull();
    expect(find(`Peak: ${amountWords(flow.peak!.balance)} at the end of ${flow.peak!.month}.`)).toBeGreaterThan(0);
  });
});

describe("what a lender would ask about first", () => {
  const codes = (parts: Partial<typeof season>) => lenderNotices(reportOf({ ...season, ...parts })).map(({ code }) => code);
  it("is missing debt, a yield above the proven one, insurance, months", () => {
    expect(codes({})).toEqual(expect.arrayContaining(["no-debt", "no-month", "no-insurance", "no-proven"]));
    expect(codes({ fields: season.fields.slice(0, 1) })).toContain("yield-above-proven");
    expect(codes({})).not.toContain("no-overhead");
    expect(codes({ otherCosts: [] })).toEqual(expect.arrayContaining(["no-overhead", "no-living"]));
  });
  it("is a price above the high price, or above what grain was sold for", () => {
    expect(codes({ crops: [{ ...corn, price: moneyPerUnit("5"), highPrice: moneyPerUnit("4.5") }, soybeans] })).toEqual(
      expect.arrayContaining(["price-high", "price-above-sales"]),
    );
    expect(codes({})).not.toContain("price-high");
  });
  it("is a farm without a name, land without a cost, a case without a price, more grain sold than grows", () => {
    expect(codes({})).toEqual(expect.arrayContaining(["no-farm", "no-price-range"]));
    expect(
      codes({
        settings: { ...season.settings, farm: "Larkmere" },
        crops: season.crops.map((crop) => ({ ...crop, lowPrice: moneyPerUnit("3"), highPrice: moneyPerUnit("12") })),
      }),
    ).not.toEqual(expect.arrayContaining(["no-farm"]));
    expect(codes({ fields: season.fields.map((each) => ({ ...each, tenure: "owned" as const, rentPerArea: null })) })).toContain("no-land");
    // Corn grows 120.5 × 205 and six tenths of 61.2 × 180, 31,312.1 bu in all.
    expect(codes({ sales: [sale("31313", "4.25")] })).toContain("sold-beyond");
    expect(codes({ sales: [sale("31312", "4.25")] })).not.toContain("sold-beyond");
  });
});
