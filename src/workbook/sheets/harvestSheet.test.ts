import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { seasonReport } from "../report";
import { harvestSheet } from "./harvestSheet";
import { resultSheets } from "./resultSheets";

const content = (loads: string) =>
  contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
| Drying charge per point | 0.04 |
| Test weight dock | Docks |
Docks
| Test weight | Dock |
| 54 | 0 |
| 50 | 0.05 |
Crops
| Crop | Standard moisture | Expected price |
| Corn | 15.5 | 4 |
Fields
| Field | Crop | Acres | Yield goal | Harvest done |
| Alder | Corn | 100 | 200 | 2031-10-12 |
| Birch | Corn | 50 | 180 | |
| Cedar | Corn | 40 | 180 | |
Other costs
| Item | Kind | Amount | Basis |
| Rent | cash rent | 250 | per acre |
${loads}`);
const report = seasonReport(
  content(`Harvest
| Field | Date | Weight or bushels | Moisture | Test weight | Ticket | Buyer |
| Alder | 2031-10-10 | 12000 | 15 | 56 | 11 | Co-op |
| Alder | 2031-10-12 | 7000 | 15.5 | 53 | 12 | co-op |
| Birch | 2031-10-13 | 1000 | 20 | 55 | 13 | Mill |
`),
);
const lines = sheetLines(harvestSheet(report));

describe("the sheet Harvest", () => {
  it("says what is in and left of every field, and of the crop", () => {
    expect(lines.filter((line) => /^(Alder|Birch|Corn)/.test(line)).slice(0, 3)).toEqual([
      // 53 lb: 0.05 off 7,000 bu. 4.5 points on 1,000 wet bu at 0.04; 946.75 of 9,000 dry bu.
      "Alder | Corn | 100 | 2 | 19000 | done | – | 190 | 0.152 | 54.9 | – | 350",
      "Birch | Corn | 50 | 1 | 946.75 | 0.105 | 8053.25 | 18.9 | 0.2 | 55 | 180 | –",
      "Corn, bu, 2 of 3 fields |  | 150 | 3 | 19946.75 |  | 8053.25 | 133",
    ]);
  });

  it("holds the harvest against its goal in money that adds up as printed", () => {
    // 200 × 4 − 250 = 550 an acre planned; 10 bu short at 4; 350 docked.
    expect(lines).toContain("Alder | – | – | – | 200 | 190 | -10 | 55000 | -4000 | -350 | 0 | 50650");
  });

  it("lists who took how much, whatever the spelling, and each load with its ticket", () => {
    expect(lines.slice(lines.indexOf("Who took it") + 2).slice(0, 2)).toEqual([
      "Co-op | Corn | bu | 2 | 19000 | 19000 | 350",
      "Mill | Corn | bu | 1 | 1000 | 946.75 | –",
    ]);
    expect(lines).toContain("Alder | 2031-10-12 | 12 | co-op | 7000 | 0.155 | 7000 | 53 | 0.05 | 350");
  });

  it("is there once a load is weighed", () => {
    const names = (of: string) => resultSheets(seasonReport(content(of))).map(({ name }) => name);
    expect(names("")).not.toContain("Harvest by field");
    expect(resultSheets(report).map(({ name }) => name)).toContain("Harvest by field");
  });
});
