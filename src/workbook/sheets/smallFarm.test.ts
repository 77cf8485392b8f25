/** The sheets of a small farm, every figure of which was worked out by hand. */
import { describe, expect, it } from "vitest";
import { operation } from "../../../tests/support/season";
import { reportOf } from "../../../tests/support/reportOf";
import { sheetLines } from "../../../tests/support/sheetLines";
import { smallFarm } from "../../../tests/support/smallFarm";
import { Decimal } from "../../core/numbers/decimal";
import type { Settings } from "../../core/season";
import { breakEvenSheet } from "./breakEvenSheet";
import { costPerAcreSheet } from "./costPerAcre";

const report = reportOf(smallFarm);
const between = (lines: readonly string[], from: string, to: string) => lines.slice(lines.indexOf(from), lines.indexOf(to) + 1);

describe("the sheet of costs", () => {
  const sheet = costPerAcreSheet(report);
  const lines = sheetLines(sheet);

  it("prints plan and outlook by kind and layer", () => {
    // On 200 bu: 20 to sell them. Full: cash less 10 of term interest and 5 of owning the planter.
    expect(between(lines, "Corn, 100.0 ac", "Home | 100 | 200 | 43 | 262 | 257 | 562 | 553")).toEqual([
      "Corn, 100.0 ac",
      " | Plan | Projected | Change",
      "Yield that this rests on (bu) | 200 | 200",
      "   custom work | 20 | 23 | 3",
      "   haul | 20 | 20 | 0",
      "Operating cost | 40 | 43 | 3",
      "   cash rent | 200 | 200 | 0",
      "   overhead | 9 | 9 | 0",
      "   term interest | 10 | 10 | 0",
      "Cash cost | 259 | 262 | 3",
      "Full cost leaves out term interest: it charges interest on all capital instead.",
      "   machine ownership | 5 | 5 | 0",
      "Full cost | 254 | 257 | 3",
      "   term principal | 80 | 80 | 0",
      "   family living | 220 | 220 | 0",
      "Cash need | 559 | 562 | 3",
      "Field, projected | Area (ac) | Yield (bu) | Operating | Cash | Full | Cash need | Net, full",
      "Home | 100 | 200 | 43 | 262 | 257 | 562 | 553",
    ]);
  });

  it("lists what is in the change although nobody planned it", () => {
    const operations = [operation("Planting", "Home", "23", "done"), operation("Mowing", "Home", "1.50", "done", { kind: "hired labour" })];
    const of = sheetLines(costPerAcreSheet(reportOf({ ...smallFarm, operations })));
    // Planting was planned before its row was typed over: the change of 23 is what was not planned.
    expect(of).toContain("   custom work | – | 23 | 23");
    expect(between(of, "In the change, done or bought without a plan:", "   Mowing (hired labour) | – | 1.5 | 1.5")).toEqual([
      "In the change, done or bought without a plan:",
      "   Planting (custom work) | – | 23 | 23",
      "   Mowing (hired labour) | – | 1.5 | 1.5",
    ]);
  });

  it("says at its foot how operating interest is charged", () => {
    const footOf = (operatingInterest: Settings["operatingInterest"]) => {
      const of = sheetLines(costPerAcreSheet(reportOf({ ...smallFarm, settings: { ...smallFarm.settings, operatingInterest } }))).join(" ");
      return /Operating interest: .*(?= Figures are for planning)/.exec(of)![0];
    };
    const rate = new Decimal("0.0825");
    expect(footOf(null)).toBe("Operating interest: none, since no rate is entered.");
    expect(footOf({ method: "months", rate, months: new Decimal("6.5") })).toBe(
      "Operating interest: 8.25 % a year on operating costs paid in cash, for 6.5 months.",
    );
    expect(footOf({ method: "by date", rate, repaymentDate: "2031-12-15" })).toBe(
      "Operating interest: 8.25 % a year from each payment to 2031-12-15, days over 365; from its planned use on what is still to " +
        "be bought. Costs without a date: field work and inputs at planned planting, drying and haul at repayment, the rest evenly " +
        "over the year.",
    );
  });

  it("says at its head what it is of, and at its foot what each layer adds", () => {
    expect(lines.slice(0, 3)).toEqual([
      "Cost per acre",
      "Season 2031. USD per acre, at the yield stated.",
      expect.stringMatching(/^Plan: set before spring. Projected: done and bought so far/),
    ]);
    expect(
      ["Operating:", "Cash:", "Full:", "Cash need:", "Figures are for planning"].filter(
        (words) => !lines.slice(-8).some((line) => line.startsWith(words)),
      ),
    ).toEqual([]);
    expect(sheet.page).toMatchObject({ paper: "letter", footer: "Cost per acre, Season 2031", breakAfter: [] });
  });
});

describe("the sheet of break-evens", () => {
  const sheet = breakEvenSheet(report);
  const lines = sheetLines(sheet);

  it("prints prices and yields needed, rounded up, and what is left", () => {
    const layers = "Operating cost | Cash cost | Full cost | Cash need";
    // Of the costs that do not move 13, 232, 227 and 532 are left after other income; a bushel brings 3.90, at the low price 3.40.
    expect(between(lines, "Corn, expected price 4.00 USD per bu", "Expected price | 4 | 4 | 4 | 4")).toEqual([
      "Corn, expected price 4.00 USD per bu",
      `Price needed per bu | ${layers}`,
      "at yield goal 200.0 bu | 0.17 | 1.26 | 1.24 | 2.76",
      "at projected yield 200.0 bu | 0.17 | 1.26 | 1.24 | 2.76",
      "at proven yield (APH) 180.0 bu | 0.18 | 1.39 | 1.37 | 3.06",
      `Yield needed, bu per acre | ${layers}`,
      "at expected price 4.00 | 3.4 | 59.5 | 58.3 | 136.5",
      "at low price 3.50 | 3.9 | 68.3 | 66.8 | 156.5",
      `Net return per acre | ${layers}`,
      "at yield goal, expected price | 767 | 548 | 553 | 248",
      "at yield goal, low price | 667 | 448 | 453 | 148",
      "at projected yield, expected price | 767 | 548 | 553 | 248",
      "at projected yield, low price | 667 | 448 | 453 | 148",
      "at proven yield (APH), expected price | 689 | 470 | 475 | 170",
      "at proven yield (APH), low price | 599 | 380 | 385 | 80",
      // 5,000 bu at 20 cents above the price entered are 10 an acre.
      "plan, with what is sold | 780 | 561 | 566 | 261",
      "projected, with what is sold | 777 | 558 | 563 | 258",
      // One field is the crop itself.
      `Each field: price needed per bu | ${layers}`,
      "Home, at 200.0 bu | 0.17 | 1.26 | 1.24 | 2.76",
      `Each field: bu per acre needed at 4.00 | ${layers}`,
      "Home, 100.0 ac | 3.4 | 59.5 | 58.3 | 136.5",
      "Grain sold and to sell | Sold (bu) | Average price | Unsold (bu)",
      "sales and contracts | 5000 | 4.2 | 15000",
      // 21,000 of the cost is paid already.
      `Price needed on unsold bushels | ${layers}`,
      "per bu unsold | -1.18 | 0.28 | 0.25 | 2.28",
      `For the chart | ${layers}`,
      "Break-even price | 0.17 | 1.26 | 1.24 | 2.76",
      "Expected price | 4 | 4 | 4 | 4",
    ]);
  });

  it("points its chart at the headings and the two rows under them", () => {
    const { categories, series, from, to } = sheet.charts[0]!;
    const row = (reference: string) => sheet.rows[Number(/\d+/.exec(reference)![0]) - 1]!.map(({ value }) => value);
    expect([row(categories)[0], ...series.map(({ values }) => row(values)[0])]).toEqual([
      "For the chart",
      "Break-even price",
      "Expected price",
    ]);
    const under = sheet.rows.slice(Number(from.slice(1)) - 1, Number(to.slice(1)));
    expect(under).toHaveLength(14);
    expect(under.flat()).toEqual([]);
    expect([categories, ...series.map(({ values }) => values)].every((reference) => /^B\d+:E\d+$/.test(reference))).toBe(true);
  });
});
