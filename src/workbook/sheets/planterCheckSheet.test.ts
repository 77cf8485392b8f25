import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { cautionsOf } from "../../core/cautions";
import { planterParts } from "../planterParts";
import { seasonReport } from "../report";
import { reportJson } from "../reportJson";
import { planterCheckSheet } from "./planterCheckSheet";
import { mostRows, planterToFill } from "./planterToFill";

const workbook = (checks: string, wage = "| Labour per hour | 24 |") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${wage}
Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal | Rent per acre | Tenure |
| Alder | Corn | 80 | 200 | 150 | cash rent |
Items
| Item | Kind | Pack name | Pack size | Pack unit | Plan price per pack |
| Blade | repairs | pair | 2 | each | 60 |
Planter checks
| Machine | Row | Part | New | Replace at | Measured | Unit | Finding | Item | Quantity | Hours | Done on |
${checks}
`),
  );
const worn = workbook(`
| Planter | 1 | Opener disc | 15 | 14.5 | 14.4 | in | | Blade | 2 | 0.5 | |
| Planter | 2 | Opener disc | 15 | 14.5 | 14.6 | in | | Blade | 2 | 0.5 | |
| Planter | 3 | Meter | | | | | replace | | | | 2031-03-01 |`);

describe("the sheet of the planter", () => {
  it("prints sizes, wear and state of each part, and what is due: 2 discs at 30 and half an hour at 24 are 72", () => {
    expect(sheetLines(planterCheckSheet(worn)).slice(2, 8)).toEqual([
      "Planter",
      "Row | Part | New | Replace at | Measured | Unit | Worn | State | Item | Quantity | Hours | Cost",
      "1 | Opener disc | 15 | 14.5 | 14.4 | in | 1.2 | due | Blade | 2 | 0.5 | 72",
      "2 | Opener disc | 15 | 14.5 | 14.6 | in | 0.8 | soon | Blade | 2 | 0.5 | 72",
      "3 | Meter | – | – | – |  | – | 2031-03-01 |  |  | – | –",
      `Due and to adjust |${"  |".repeat(10)} 72`,
    ]);
  });
  it("says what has no price, and leaves the figures of the season complete", () => {
    const unpaid = workbook("| Planter | 1 | Opener disc | 15 | 14.5 | 14.4 | in | | Blade | 2 | 0.5 | |", "| Currency | USD |");
    expect(unpaid.problems.map(({ code }) => code)).toEqual(["wage-missing"]);
    expect([
      unpaid.problemsOf({ of: "farm" }),
      unpaid.problemsOf({ of: "cash flow" }),
      unpaid.problemsOf({ of: "planter" }).length,
    ]).toEqual([[], [], 1]);
    expect(sheetLines(planterCheckSheet(unpaid)).join(" ")).toContain("Incomplete: 1 entry needs attention.");
    expect(reportJson(unpaid).planter).toEqual([
      { machine: "Planter", part: "Opener disc", row: "1", measured: "14.4", replaceAt: "14.5", finding: "due", cost: null },
    ]);
  });
  it("takes a planter that is not among the machines, and tells a name that is nearly one of them", () => {
    const machines =
      "\nMachines\n| Machine | List price | Purchase price | Age | Years kept | Hours a year | Salvage value | Width | Speed | Field " +
      "efficiency | Fuel per acre | Fuel price | Real interest rate | Taxes, insurance, housing | Labour per hour |\n| Corn planter | " +
      "1 | 1 | 0 | 10 | 100 | 0 | 30 | 5 | 65 | 1 | 3 | 4 | 1 | 20 |";
    expect(
      workbook(`| Corn plantr | 1 | Meter | | | | | good | | | | |${machines}`).problems.map(({ code, like }) => [code, like]),
    ).toEqual([["unknown-name", "Corn planter"]]);
    expect(workbook(`| Hired one | 1 | Meter | | | | | good | | | | |${machines}`).problems).toEqual([]);
  });
});

describe("the sheet to fill in the shed", () => {
  it.each([1, 8, 9, 16, 23, mostRows])("has a box for each part of each of %i rows, once each", (rows) => {
    const { rows: lines, columns } = planterToFill(worn, "Planter", rows);
    const boxes = lines.flat().filter(({ style }) => style?.border === "box").length;
    const [each, whole] = [planterParts.filter(({ of }) => of === "each").length, planterParts.filter(({ of }) => of === "whole").length];
    expect(boxes).toBe(each * rows + whole * 4);
    const named = lines
      .flat()
      .map(({ value }) => value)
      .filter((value) => typeof value === "string" && /^Row \d+$/.test(value));
    expect([...new Set(named)].length).toBe(rows);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(columns.length);
  });
  it("says what can hurt under a planter, and refuses no rows and a slip of the hand", () => {
    const said = sheetLines(planterToFill(worn, "Planter", 4)).join(" ");
    for (const caution of cautionsOf.planter) expect(said).toContain(caution);
    for (const rows of [0, 1.5, mostRows + 1]) expect(() => planterToFill(worn, "Planter", rows)).toThrow(RangeError);
  });
});
