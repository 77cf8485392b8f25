import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import type { WorkbookContent } from "../cell";
import { serialOfDay } from "../daySerial";
import { seasonReport } from "../report";
import { keptSeason } from "./keptSeason";
import { nextSeason, type NextSeason } from "./nextSeason";

const season = (more: { settings?: string; fields?: string; tables?: string; harvest?: string } = {}) => `
Season
| Setting | Value |
| Season year | 2031 |
| Repayment date | 2031-12-15 |
${more.settings ?? ""}
Crops
| Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
| Corn | bu | 56 | 15.5 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Harvest done | Soil |
| Alder | Corn | 100 | 200 | 2031-05-01 | 2031-05-04 | ${more.fields ?? "2031-10-10"} | loam |
Items
| Item | Kind | Pack unit | Plan price per pack | Bin |
| Urea | fertilizer | lb | 0.30 | 7 |
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status |
| Alder | Urea | 100 | lb/ac | 2031-05-02 | done as planned |
| Alder | Urea | 20 | lb/ac | 2031-06-02 | done |
Operations
| Field or Crop | Operation | Rate | Basis | Date | Status |
| Alder | Spraying | 9 | per acre | 2031-06-01 | done as planned |
| Alder | Fall tillage | 20 | per acre | 2031-10-25 | done |
Purchases
| Date | Item | Quantity | Unit | Amount | Kind | For | Paid on | For season | Note |
| 2031-03-01 | Urea | 15000 | lb | 6000 | | | | | |
| 2031-11-05 | Seed | | | 9000 | seed | Corn | | 2032 | Early discount |
| 2031-11-06 | Lime | | | 700 | fertilizer | Alder | 2032-02-01 | 2032 | |
Harvest
| Field | Date | Weight or bushels | Moisture |
| Alder | 2031-10-10 | 19000 | 15.5 |
${more.tables ?? ""}`;

const made = (text: string): NextSeason => {
  const content = contentFromText(text);
  return nextSeason(content, seasonReport(content))!;
};
/** The new workbook as it is read again. */
const contentOf = ({ tables }: NextSeason): WorkbookContent => ({
  dateSystem: "1900",
  ranges: new Map(),
  tables: tables.map(({ name, sheet, columns, rows = [] }) => ({
    name,
    headers: columns.map(({ heading }) => heading),
    rows,
    body: { sheet, row: 1, column: 0 },
  })),
});
const table = (next: NextSeason, sheet: string) => {
  const { columns, rows = [] } = next.tables.find((each) => each.sheet === sheet)!;
  return rows.map((row) => Object.fromEntries(columns.flatMap(({ heading }, at) => (row[at] === "" ? [] : [[heading, row[at]]]))));
};
const day = (date: string) => serialOfDay(date, "1900");

describe("the next season", () => {
  const next = made(season());

  it("has fields without what happened, days a year later, and columns of the grower's own", () => {
    expect(table(next, "Fields")).toEqual([
      { Field: "Alder", Crop: "Corn", Acres: 100, "Yield goal": 200, "Planned planting date": day("2032-05-01"), Soil: "loam" },
    ]);
    expect(table(next, "Season")).toEqual([
      { Setting: "Season year", Value: 2032 },
      { Setting: "Repayment date", Value: day("2032-12-15") },
    ]);
    expect(table(next, "Items")).toEqual([expect.objectContaining({ "Plan price per pack": 0.4, Bin: 7 })]);
  });

  it("moves a month by a year as it moves a day, however it is written, and leaves a number alone", () => {
    const months = ["Mar 2031", "2031-03", "3/2031", "October"];
    const costs = months.map((month, index) => `| Dues ${index} | overhead | 100 | whole farm | all | yes | ${month} |`);
    const more = `Other costs\n| Item | Kind | Amount | Basis | Shared over | Cash | Month |\n${costs.join("\n")}\n`;
    const carried = table(made(season({ tables: more })), "Other costs").filter(({ Item }) => `${Item}`.startsWith("Dues"));
    expect(carried.map(({ Month }) => Month)).toEqual(["Mar 2032", "2032-03", "3/2032", "October"]);
  });

  it("has the plan's rows as plan, and none that was only done", () => {
    expect(table(next, "Applications").map(({ Rate, Date, Status }) => [Rate, Date, Status])).toEqual([[100, day("2032-05-02"), "plan"]]);
    expect(table(next, "Operations").map(({ Operation, Date, Status }) => [Operation, Date, Status])).toEqual([
      ["Spraying", day("2032-06-01"), "plan"],
    ]);
  });

  it("opens with what was left over, work done and bills paid for it; a bill that it pays itself is one of its own", () => {
    const opening = day("2032-01-01");
    expect(table(next, "Purchases")).toEqual([
      // 15,000 lb less 12,000 used, at 0.40.
      { Date: opening, Item: "Urea", Quantity: 3000, Unit: "lb", Amount: 1200, Note: "Left over from season 2031", "Opening stock": "yes" },
      expect.objectContaining({
        Item: "Seed",
        Amount: 9000,
        "Opening stock": "yes",
        Note: "Early discount. Paid in the season before: 2031-11-05",
      }),
      expect.objectContaining({ Item: "Lime", Amount: 700, "Paid on": "2032-02-01" }),
    ]);
    expect(table(next, "Other costs")).toEqual([
      { Item: "Fall tillage, before 2032", Kind: "custom work", Amount: 2000, Basis: "whole farm", "Shared over": "Alder", Cash: "no" },
    ]);
    expect(table(next, "Purchases")[2]).not.toHaveProperty("Opening stock");
  });

  it("is complete when it is read, and charges what the old season paid for it", () => {
    const report = seasonReport(contentOf(next));
    expect(report.problems.map(({ code, at }) => `${code} ${at.table}`)).toEqual([]);
    const byKind = report.figures.crops[0]!.outlook.costPerArea.byKind;
    // 90 for seed; 20 of tillage and 9 of spraying; 100 lb of urea at 0.40, against what of it is still to be bought the lime is set.
    expect(["seed", "custom work", "fertilizer"].map((kind) => byKind.get(kind as "seed")!.toFixed())).toEqual(["90", "29", "40"]);
  });

  it("keeps the season in Past seasons, once however often", () => {
    const [kept] = table(next, "Past seasons");
    expect([kept!["Season"], kept!["Field"], kept!["Yield"], kept!["Price"], kept!["Yield unit"]]).toEqual([2031, "Alder", 190, 4, "bu"]);
    const again = made(
      season({
        tables:
          "Past seasons\n| Season | Field | Crop | Acres | Yield |\n" +
          "| 2031 | alder | corn | 100 | 12 |\n| 2030 | Alder | Corn | 100 | 180 |",
      }),
    );
    expect(table(again, "Past seasons").map(({ Season: of, Yield }) => [of, Yield])).toEqual([
      [2031, 190],
      [2030, 180],
    ]);
  });

  it("keeps nothing of a field whose harvest is not done, and says so", () => {
    const open = made(season({ fields: "" }));
    expect(open.tables.map(({ sheet }) => sheet)).not.toContain("Past seasons");
    expect(open.notes.join(" ")).toContain("because their harvest is not done: Alder");
  });

  it("names what stays behind", () => {
    expect(next.notes).toContain("Harvest: its entries are of season 2031 and stay behind.");
    expect(made(season({ tables: "My_notes\n| Anything |\n| 5 |" })).notes).toContain(
      "Sheets and tables of your own stay behind: My_notes.",
    );
  });

  it("has loans after this year's payments, and none that is paid off", () => {
    const loans = made(
      season({
        tables:
          "Loans\n| Name | Kind | Balance | Rate | Payment | Payments a year | Next due |\n" +
          "| Land | term | 100000 | 5% | 12000 | 2 | 2031-03-31 |\n" +
          "| Truck | term | 1000 | 5% | 1050 | 1 | 2031-06-01 |",
      }),
    );
    // 100,000 + 2,500 − 12,000 = 90,500; + 2,262.50 − 12,000 = 80,762.50; next on 31 March 2032.
    expect(table(loans, "Loans")).toEqual([expect.objectContaining({ Name: "Land", Balance: 80762.5, "Next due": day("2032-03-31") })]);
    expect(loans.notes).toContain("Truck is paid off, and left out.");
  });

  it("counts days as usual whatever system the old workbook has", () => {
    const content = contentFromText(season().replaceAll("2031-05-01", String(serialOfDay("2031-05-01", "1904"))));
    const fields = content.tables.map((each) => ({
      ...each,
      rows: each.rows.map((row) => row.map((cell) => (cell === String(serialOfDay("2031-05-01", "1904")) ? Number(cell) : cell))),
    }));
    const other: WorkbookContent = { ...content, tables: fields, dateSystem: "1904" };
    const of = nextSeason(other, seasonReport(other))!;
    expect(table(of, "Fields")[0]!["Planned planting date"]).toBe(day("2032-05-01"));
  });

  it("is none without a year", () => {
    const content = contentFromText("Crops\n| Crop | Expected price |\n| Corn | 4 |");
    expect([nextSeason(content, seasonReport(content)), keptSeason(seasonReport(content))]).toEqual([null, null]);
  });
});
