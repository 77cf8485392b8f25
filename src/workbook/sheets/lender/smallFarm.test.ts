/** The lender pages of a small farm, every figure of which was worked out by hand. */
import { describe, expect, it } from "vitest";
import { reportOf } from "../../../../tests/support/reportOf";
import { load, operation } from "../../../../tests/support/season";
import { sheetLines } from "../../../../tests/support/sheetLines";
import { smallFarm } from "../../../../tests/support/smallFarm";
import { Decimal } from "../../../core/numbers/decimal";
import type { Loan, Season } from "../../../core/season";
import { area, cropQuantity, money } from "../../../core/numbers/units";
import { cashFlowSheet } from "./cashFlowSheet";
import { farmCashFlow, grainMonth } from "./farmCashFlow";
import { lenderPages } from "./lenderPages";

const pagesOf = (season: Season) => sheetLines(lenderPages(reportOf(season), { date: "2031-06-15" }));
const lines = pagesOf(smallFarm);
/** The lines from one that begins with some words, so many of them. */
const from = (words: string, count: number, of = lines) => of.slice(of.findIndex((line) => line.startsWith(words))).slice(0, count);

describe("the lender pages of a small farm", () => {
  it("print the break-evens that a reader may move, with and without other income", () => {
    // 13, 232, 227 and 532 are left of the costs that do not move; a bushel brings 3.90.
    expect(from("Cost of production", 20).filter((_, index) => index !== 1)).toEqual([
      "Cost of production and break-evens",
      "Try your own price and yield | Corn",
      "Acres and yields entered | 100.0 ac; yields in bu:",
      " | goal 200.0, projected 200.0, proven 180.0",
      "Price per bu (yours to change) | 4 | per bu",
      "Yield per acre (yours to change) | 200 | bu",
      "Operator's share of the crop | 1",
      "Other income per acre | 10",
      "Costs of the layer | Operating | Cash | Full | Cash need",
      "Cost per acre without hauling etc. | 23 | 242 | 237 | 542",
      "Hauling, drying, selling per bu | 0.1 | 0.1 | 0.1 | 0.1",
      "Cost per acre | 43 | 262 | 257 | 562",
      "Cost per bu | 0.22 | 1.31 | 1.29 | 2.81",
      "Break-even price | 0.17 | 1.26 | 1.24 | 2.76",
      "Break-even yield | 3.4 | 59.5 | 58.3 | 136.5",
      "Net return per acre | 767 | 548 | 553 | 248",
      "Net return without other income | 757 | 538 | 543 | 238",
      "Break-even price without other income | 0.22 | 1.31 | 1.29 | 2.81",
      expect.stringMatching(/^Cost per acre by kind/),
    ]);
    expect(lines[1]).toMatch(/^Season 2031, as of 2031-06-15; tables on the layer cash need. USD, per acre unless it says otherwise/);
  });

  it("print the net return a fifth below and above the yield and the price", () => {
    // (price − 0.10) × yield + 10 − 542
    expect(from("Corn: net per acre, cash need", 7)).toEqual([
      "Corn: net per acre, cash need; yield down, price across",
      "bu per acre | 3.2 | 3.6 | 4 | 4.4 | 4.8",
      "160 | -36 | 28 | 92 | 156 | 220",
      "180 | 26 | 98 | 170 | 242 | 314",
      "200 | 88 | 168 | 248 | 328 | 408",
      "220 | 150 | 238 | 326 | 414 | 502",
      "240 | 212 | 308 | 404 | 500 | 596",
    ]);
  });

  it("have the net return that stands beside the table in its middle, at a yield of many digits", () => {
    // 20,000 bu and 17 on 130 acres: 153.9769…; at 154.0 the net would be 9 cents higher than beside the table.
    const pages = pagesOf({
      ...smallFarm,
      fields: [{ ...smallFarm.fields[0]!, area: area("130"), harvestDone: { on: null } }],
      harvest: [load("Home", "20017")],
    });
    const beside = pages.find((line) => line.startsWith("Net return per acre"))!.split(" | ")[4];
    expect([from("Corn: net per acre, cash need", 7, pages)[4]!.split(" | ")[3], beside]).toEqual([
      beside,
      expect.stringMatching(/^-?[\d.]+$/),
    ]);
  });

  it("draw the break-even price and the price in the rows that hold them", () => {
    const sheet = lenderPages(reportOf(smallFarm), { date: "2031-06-15" });
    const [{ categories, series }] = [sheet.charts[0]!];
    const cells = (reference: string) => {
      const [, row] = /^B(\d+):E\1$/.exec(reference)!;
      return sheet.rows[Number(row) - 1]!.slice(0, 5).map(({ value }) => value);
    };
    expect([categories, ...series.map(({ values }) => values)].map(cells)).toEqual([
      ["Costs of the layer", "Operating", "Cash", "Full", "Cash need"],
      ["Break-even price", 0.17, 1.26, 1.24, 2.76],
      ["Price, for the charts", 4, 4, 4, 4],
    ]);
  });

  it("say what has no entry, and on which layer and in which month they are", () => {
    const notes = lines.slice(-26).join(" ");
    const told = [
      "Operating: seed",
      "Cash: operating",
      "Full: cash",
      "Cash need: cash",
      "Price: the expected price",
      "on the layer cash need",
      "Low: each field",
      "not audited or verified",
      "in 2031-11.",
      "No entry for: crop insurance, unpaid labour, income tax.",
    ];
    expect(told.filter((words) => !notes.includes(words))).toEqual([]);
  });

  it("say by which kinds grain is sold, of this season's alone, and nothing where none is entered", () => {
    // 6,000 of 8,000 bu are forward, 1,500 cash and 500 of no kind; last year's 9,000 are in the cash flow alone.
    const [sold] = smallFarm.sales;
    const of = (quantity: string, kind: string | null, cropYear: string | null = null) => ({
      ...sold!,
      quantity: cropQuantity(quantity),
      kind,
      cropYear,
    });
    const said = (sales: Season["sales"]) =>
      pagesOf({ ...smallFarm, sales })
        .find((line) => line.startsWith("Sold and contracted"))!
        .split(" | ")
        .slice(3)
        .join("");
    expect(said([of("4000", "Forward"), of("1500", "cash"), of("2000", "forward"), of("500", null), of("9000", "cash", "2030")])).toBe(
      "forward 75 %, cash 19 %, other 6 %",
    );
    expect([said([of("4000", null)]), said([of("4000", "cash")])]).toEqual(["", "cash 100 %"]);
  });

  it("print the cost by kind and layer, and per bushel", () => {
    expect(from("Cost per acre by kind", 14)).toEqual([
      "Cost per acre by kind | Plan | Projected | Change | Per bu",
      "   custom work | 20 | 23 | 3 | 0.12",
      "   haul | 20 | 20 | – | 0.1",
      "Operating cost | 40 | 43 | 3 | 0.22",
      "   cash rent | 200 | 200 | – | 1",
      "   overhead | 9 | 9 | – | 0.05",
      "   term interest | 10 | 10 | – | 0.05",
      "Cash cost | 259 | 262 | 3 | 1.31",
      "   machine ownership | 5 | 5 | – | 0.03",
      "Full cost (cash − term interest + these) | 254 | 257 | 3 | 1.29",
      "   term principal | 80 | 80 | – | 0.4",
      "   family living | 220 | 220 | – | 1.1",
      "Cash need (cash + these) | 559 | 562 | 3 | 2.81",
      expect.stringMatching(/^Grain sold and insured/),
    ]);
  });

  it("print what is sold, what the rest must bring and what is insured", () => {
    // A quarter of 20,000 bu, each sold for 20 cents more than the price entered: 10 an acre; 135 bu at 4.80.
    expect(from("Grain sold and insured", 9)).toEqual([
      "Grain sold and insured | Corn",
      "Sold and contracted | 5000 | bu",
      "   part of your crop, average price | 25 % | 4.2 | per bu",
      "Unsold of the projected crop | 15000 | bu",
      "Price needed on unsold bushels | Operating | Cash | Full | Cash need",
      " | -1.18 | 0.28 | 0.25 | 2.28",
      "Net per acre, at the price entered | 767 | 548 | 553 | 248",
      "   with what is sold | 777 | 558 | 563 | 258",
      "Insurance guarantee per acre | 648 | revenue: | 135 | 4.8",
    ]);
    expect(from("Insurance guarantee per acre", 1, pagesOf({ ...smallFarm, insurance: [] }))).toEqual([
      "Insurance guarantee per acre | no policy entered",
    ]);
  });

  it("print low, expected and high of the grower's own figures", () => {
    // 180 bu at 3.50, 200 at 4.00 and 200 at 5.00, 10 of other income; insured for 135 bu at 4.80 = 648, less than 180 bu at the
    // policy's own 4.80.
    expect(from("Low, expected, high of your own figures", 10)).toEqual([
      "Low, expected, high of your own figures |  | low | expected | high",
      "Yield per acre |  | 180 | 200 | 200",
      "Price |  | 3.5 | 4 | 5",
      "Income per acre |  | 640 | 810 | 1010",
      "Net return per acre, operating |  | 599 | 767 | 967",
      "Net return per acre, full |  | 385 | 553 | 753",
      "Net return per acre, cash need |  | 80 | 248 | 448",
      "Insurance payment per acre, not in the net |  | 0 | 0 | 0",
      "   valued at | its projected price 4.80, no harvest price",
      expect.stringContaining("a drought or hail year can be far worse"),
    ]);
  });

  it("print why the outlook is not the plan", () => {
    expect(from("What changed since the plan (USD)", 4)).toEqual([
      "What changed since the plan (USD) | Corn",
      "Net return, cash need: plan to projected |   Plan |  |  | 25100",
      " |   Planting (custom work) |  |  | -300",
      " |   Projected |  |  | 24800",
    ]);
  });

  it("name five reasons, and add the others up", () => {
    const names = ["A", "B", "C", "D", "E", "F", "G"];
    const operations = names.map((name, index) => operation(name, "Home", (index + 1).toString(), "done", { kind: "supplies" }));
    expect(from("What changed since the plan", 9, pagesOf({ ...smallFarm, operations: [...smallFarm.operations, ...operations] }))).toEqual(
      [
        "What changed since the plan (USD) | Corn",
        "Net return, cash need: plan to projected |   Plan |  |  | 25100",
        " |   G, not planned |  |  | -700",
        " |   F, not planned |  |  | -600",
        " |   E, not planned |  |  | -500",
        " |   D, not planned |  |  | -400",
        " |   Planting (custom work) |  |  | -300",
        " |   3 other reasons |  |  | -600",
        " |   Projected |  |  | 22000",
      ],
    );
  });

  it("print a kind that was not planned, beside one that was not done", () => {
    const changed = pagesOf({ ...smallFarm, operations: [operation("Drying", "Home", "30", "done", { kind: "drying" })] });
    expect(changed).toContain("   drying | – | 30 | 30 | 0.15");
  });

  it("print whether the debt can be paid, and the operating loan beside it", () => {
    // 5,000 bu at 4.20, 15,000 at 4.00 and 1,000 of other income, less 26,200; the loan takes 1,000 of interest and 8,000 of
    // principal; 22,000 to live on.
    expect(from("Paying the term debt", 10).map((line) => line.replace(/( \| )[ |]+/g, "$1"))).toEqual([
      "Paying the term debt, whole farm, one year | Operating loan",
      "Income less all cash costs | 55800 | Peak: 44,200 at the end of 2031-07.",
      "plus term interest | 1000 | At the end of 2031-12: 0 owed, 25,800 in cash.",
      "less income tax and family living | -22000 | Month by month on the sheet Cash flow.",
      "Repayment capacity | 34800",
      "Interest and principal due | 9000 | Term loans:",
      "Margin | 25800 | Planter: 50,000 at 2.00 %, 9,000, 1 a year",
      "Margin after replacing machines | 25300",
      "Term-debt coverage: capacity ÷ due | 3.87 | Margin 25,800; interest charged, not borne +0;",
      " | charged, not paid +0: 25,800 less owed, or more in cash.",
    ]);
  });

  it("say what is spread, which loans are not shown and that none is needed", () => {
    const [loan] = smallFarm.loans!;
    const many = pagesOf({
      ...smallFarm,
      loans: ["A", "B", "C", "D", "E"].map((name) => ({ ...loan!, name, payment: name === "B" ? null : loan!.payment })),
      otherCosts: smallFarm.otherCosts.map((cost) => ({ ...cost, paidOn: null })),
    }).join("\n");
    // 900 and 22,000 without a month, and 2 % of the 50,000 of B; owning the planter is not paid.
    expect(
      ["23,900 has no date and falls by rule.", "B: 50,000 at 2.00 %, no payment entered", "C: 50,000", "and 2 more"].filter(
        (words) => !many.includes(words),
      ),
    ).toEqual([]);
    expect(many.includes("D: 50,000")).toBe(false);
    const free = pagesOf({
      ...smallFarm,
      loans: [],
      fields: smallFarm.fields.map((each) => ({ ...each, rentPerArea: null })),
      otherCosts: [],
      operations: [],
    }).join("\n");
    expect(["No operating loan is needed in any month.", "none entered"].filter((words) => !free.includes(words))).toEqual([]);
    expect(free.includes("falls by rule")).toBe(false);
  });
});

describe("the cash flow of a small farm", () => {
  const sheet = cashFlowSheet(reportOf(smallFarm));
  const months = (figures: Readonly<Record<string, number>>) =>
    ["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"].map((month) => figures[month] ?? 0).join(" | ");

  it("prints every group by month and in all, and the loan beneath", () => {
    const printed = sheetLines(sheet);
    const table = printed.slice(printed.findIndex((line) => line.endsWith("All")));
    expect(table.slice(0, -1)).toEqual([
      ` | ${["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"].map((month) => `2031-${month}`).join(" | ")} | All`,
      `   grain sales | ${months({ "11": 81000 })} | 81000`,
      `   other income | ${months({ "11": 1000 })} | 1000`,
      `   drying, haul and selling | ${months({ "11": -2000 })} | -2000`,
      `   custom work | ${months({ "05": -2300 })} | -2300`,
      `   cash rent | ${months({ "03": -10000, "11": -10000 })} | -20000`,
      `   overhead | ${months({ "07": -900 })} | -900`,
      `   family living | ${months({ "06": -22000 })} | -22000`,
      `   term loans | ${months({ "03": -9000 })} | -9000`,
      `Money in | ${months({ "11": 82000 })} | 82000`,
      `Money out | ${months({ "03": -19000, "05": -2300, "06": -22000, "07": -900, "11": -12000 })} | -56200`,
      `Drawn on the operating loan | ${months({ "03": 19000, "05": 2300, "06": 22000, "07": 900 })} | 44200`,
      `Interest added to it | ${months({})} | 0`,
      `Paid back | ${months({ "11": 44200 })} | 44200`,
      `Operating loan at the end of the month | ${[0, 0, 19000, 19000, 21300, 43300, 44200, 44200, 44200, 44200, 0, 0].join(" | ")}`,
      `Cash at the end of the month | ${months({ "11": 25800, "12": 25800 })}`,
      "What the fields are charged, and what",
      "these months pay | Charged | Paid",
      "   custom work | 2300 | 2300",
      "   cash rent | 20000 | 20000",
      "   overhead | 900 | 900",
      "   family living | 22000 | 22000",
      "   drying, haul and selling | 2000 | 2000",
      "   term loans | 9000 | 9000",
      "All | 56200 | 56200",
    ]);
    expect(printed.slice(0, 2)).toEqual(["Cash flow", "Season 2031, whole farm, USD to the nearest whole."]);
  });

  it("points its chart at the months, the loan and the cash", () => {
    const [{ categories, series }] = [sheet.charts[0]!];
    const first = (reference: string) => sheet.rows[Number(/\d+/.exec(reference)![0]) - 1]![0]!.value;
    expect([first(categories), ...series.map(({ values }) => first(values))]).toEqual([
      "",
      "Operating loan at the end of the month",
      "Cash at the end of the month",
    ]);
    expect([categories, ...series.map(({ values }) => values)].every((reference) => /^B\d+:M\d+$/.test(reference))).toBe(true);
  });

  it("begins with what the operating loans are at, at their mean rate", () => {
    const operating = (balance: string, rate: string): Loan => ({
      ...smallFarm.loans![0]!,
      kind: "operating",
      balance: money(balance),
      rate: new Decimal(rate),
      payment: null,
    });
    const flow = farmCashFlow(reportOf({ ...smallFarm, loans: [operating("10000", "0.06"), operating("30000", "0.1")] }))!;
    // 40,000 at 9 %, a twelfth.
    expect([flow.months[0]!.interest, flow.months[0]!.loan].map(String)).toEqual(["300", "40300"]);
  });

  it("takes the rate of the season, or of an empty operating loan, for what is drawn", () => {
    const settings = {
      ...smallFarm.settings,
      operatingInterest: { method: "months" as const, rate: new Decimal("0.12"), months: new Decimal("6") },
    };
    const april = (season: Season) => farmCashFlow(reportOf(season))!.months[3]!.interest.toFixed();
    // 10,000 of rent is drawn in March.
    expect(april({ ...smallFarm, settings, loans: [] })).toBe("100");
    expect(
      april({
        ...smallFarm,
        loans: [{ ...smallFarm.loans![0]!, kind: "operating", balance: money("0"), rate: new Decimal("0.06"), payment: null }],
      }),
    ).toBe("50");
  });

  it("counts grain not sold yet in the month of repayment, else in November", () => {
    const settings = {
      ...smallFarm.settings,
      operatingInterest: { method: "by date" as const, rate: new Decimal("0.08"), repaymentDate: "2032-02-10" },
    };
    expect([grainMonth(reportOf(smallFarm)), grainMonth(reportOf({ ...smallFarm, settings }))]).toEqual(["2031-11", "2032-02"]);
    expect(farmCashFlow(reportOf({ ...smallFarm, settings }))!.months.at(-1)!.month).toBe("2032-02");
  });
});
