import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { sheetLines } from "../../tests/support/sheetLines";
import { harvestNotes, tableNotes } from "./harvestNotes";
import { seasonReport } from "./report";
import { reportJson } from "./reportJson";
import { costPerAcreSheet } from "./sheets/costPerAcre";
import { cashFlowSheet } from "./sheets/lender/cashFlowSheet";
import { lenderPages } from "./sheets/lender/lenderPages";

const season = (alder: string, setting = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
| Drying charge per point | 0.04 |
${setting === "" ? "" : `| Stand response | ${setting} |`}
Crops
| Crop | Standard moisture | Expected price |
| Corn | 15.5 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand | Harvest done |
| Alder | Corn | 100 | 200 | 2031-04-25 | 2031-05-15 | 32000 | ${alder} |
Operations
| Field or Crop | Operation | Rate | Date | Status |
| Alder | Scouting | 5 | 2031-07-01 | plan |
| Alder | Fall tillage | 18 | 2031-11-03 | done |
Harvest
| Field | Date | Weight or bushels | Moisture |
| Alder | 2031-10-10 | 1000 | 20 |
| Alder | 2031-10-10 | 1000 | 14 |
`),
  );
const notes = (alder: string, setting = "") => {
  const report = season(alder, setting);
  return harvestNotes(report, report.figures.crops[0]!);
};
const table =
  'Yield by planting date and stand from the table "Corn, central Corn Belt (Purdue 2012)", for Indiana, Illinois, Ohio, southern ' +
  "Iowa, Missouri, Pennsylvania";

describe("the notes of a crop", () => {
  it("name the table of its yields and its region, and say until it is named that nobody chose it", () => {
    expect(tableNotes(season(""), "Corn")).toEqual([
      `${table}; not chosen by you: name one, or none, under Stand response in the table Season.`,
    ]);
    expect(tableNotes(season("", "Corn, central Corn Belt (Purdue 2012)"), "Corn")).toEqual([`${table}.`]);
    expect(tableNotes(season("", "none"), "Corn")).toEqual([]);
  });

  it("say how much of the field is in while its harvest is under way", () => {
    // 946.75 + 1,000 bu dry of 190 × 100; (946.75 × 20 + 1,000 × 14) ÷ 1,946.75.
    expect(notes("")).toEqual(["Alder: harvest so far 1,946.75 bu in 2 loads, 10 % of the projected yield, 17,053 left, 16.9 % moisture."]);
  });

  it("say once it is done what was never done, and what belongs to the next crop", () => {
    expect(notes("yes")).toEqual([
      "Planned and not done by the last load, so left out of projected cost and cash flow: Alder (Scouting, 100 ac).",
      "After the last load, for the next crop; paid, and in no cost of this one: Alder (Fall tillage 1,800) USD.",
    ]);
  });

  it("say on the cash flow what a harvest that is done left out", () => {
    expect(sheetLines(cashFlowSheet(season("yes"))).join(" ")).toMatch(
      /Corn: Planned and not done by the last load.*Corn: After the last load, for the next crop; paid/,
    );
    expect(sheetLines(cashFlowSheet(season(""))).join(" ")).not.toMatch(/last load/);
  });

  it("stand on the lender pages and beside the cost per acre", () => {
    const words = (alder: string) =>
      [lenderPages(season(alder), { date: "2031-12-01" }), costPerAcreSheet(season(alder))].map((sheet) => sheetLines(sheet).join(" "));
    for (const page of words("")) expect(page).toMatch(/for Indiana, Illinois.*not chosen by you.*harvest so far 1,946\.75 bu/);
    for (const page of words("yes")) expect(page).toMatch(/Planned and not done by the last load.*Fall tillage 1,800/);
  });
});

describe("the report as JSON", () => {
  it("has the loads, the drying that they are charged, and whether they are all", () => {
    // 4.5 points × 0.04 × 1,000 wet bushels.
    const [harvest] = reportJson(season("")).harvest;
    expect(harvest).toMatchObject({ field: "Alder", loads: "2", done: false, dryingCost: "180" });
    expect(reportJson(season("yes")).harvest[0]).toMatchObject({ done: true, shareHarvested: "1" });
  });

  it("has the table of each field's yields, and what the harvest left out", () => {
    const [field] = reportJson(season("yes")).fields;
    expect(field!.yieldTable).toEqual({
      name: "Corn, central Corn Belt (Purdue 2012)",
      region: "Indiana, Illinois, Ohio, southern Iowa, Missouri, Pennsylvania",
      chosen: false,
      byPlantedDate: "190",
    });
    expect([field!.neverDone, field!.nextCrop]).toEqual([
      [{ name: "Scouting", acres: "100" }],
      [{ kind: "custom work", name: "Fall tillage", amount: "1800" }],
    ]);
  });
});
