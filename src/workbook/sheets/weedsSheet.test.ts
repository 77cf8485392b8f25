import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { cautionsOf } from "../../core/cautions";
import { seasonReport } from "../report";
import { resultSheets } from "./resultSheets";

const season = (rows: string, weeds: string) =>
  seasonReport(
    contentFromText(`
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Items
| Item | Kind | Pack unit | Plan price per pack | Sites of action | Controls |
| Spray A | crop protection | gal | 40 | 15, 27 | Waterhemp |
| Spray B | crop protection | gal | 20 | 9 | Waterhemp |
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status | Carrier per acre | Tank size |
${rows}
${weeds}`),
  );
const report = season(
  "| Corn | Spray A | 2 | qt/ac | 2031-05-01 | plan | 15 | 600 |\n| Corn | Spray B | 1 | qt/ac | 2031-05-01 | plan | | |\n| Alder | " +
    "Spray B | 1 | qt/ac | 2031-06-05 | plan | | |",
  "Weeds\n| Field or Crop | Weed | Resistant to |\n| Alder | Waterhemp | 9 |",
);
const linesOf = (name: string, of = report) => sheetLines(resultSheets(of).find((sheet) => sheet.name === name)!);

describe("the sheet Weeds", () => {
  it("shows each pass with its sites and cost, and for each weed the sites that are left", () => {
    const lines = linesOf("Weeds by field");
    expect(lines.slice(lines.indexOf("Alder"), lines.indexOf("Alder") + 8)).toEqual([
      "Alder",
      "Pass |  |  | Products | Sites | USD per acre",
      "2031-05-01 | planned |  | Spray A, Spray B | 9, 15, 27 | 25",
      "2031-06-05 | planned |  | Spray B | 9 | 5",
      "All planned |  |  |  |  | 30",
      "In every pass: 9. What is used in every pass is what weeds learn to live with.",
      "Weed | Resistant to | Pass |  | Sites left | Is that",
      "Waterhemp | 9 | 2031-05-01 | planned | 15, 27 | two or more",
    ]);
    expect(lines).toContain(" |  | 2031-06-05 | planned | – | none");
  });

  it("and the mixing card say what the label rules", () => {
    for (const words of cautionsOf.tank) {
      expect(linesOf("Weeds by field").join(" ")).toContain(words);
      expect(linesOf("Mixing card").join(" ")).toContain(words);
    }
  });

  it("are there where a weed is listed, or a mix entered", () => {
    const names = resultSheets(season("| Alder | Spray B | 1 | qt/ac | 2031-06-05 | plan | | |", "")).map(({ name }) => name);
    expect(names.filter((name) => name === "Weeds by field" || name === "Mixing card")).toEqual([]);
  });
});

describe("the mixing card", () => {
  it("has the loads of each mix, and the amounts in the units of the rates", () => {
    const lines = linesOf("Mixing card");
    // 100 ac × 15 = 1,500 gal; 600 ÷ 15 = 40 ac × 2 qt.
    expect(lines.slice(lines.indexOf("Corn, 2031-05-01, planned"), lines.indexOf("Corn, 2031-05-01, planned") + 8)).toEqual([
      "Corn, 2031-05-01, planned",
      "100 ac at 15 gal per ac: 1,500 gal in all; a tank of 600 gal covers 40 ac; 2 full loads and a last load",
      "of 300 gal for 20 ac.",
      "Product | Rate per ac | Unit | In a full load | In the last load | In all",
      "Spray A | 2 | qt | 80 | 40 | 200",
      "Spray B | 1 | qt | 40 | 20 | 100",
      "Filled up to |  | gal | 600 | 300 | 1500",
      "Area covered |  | ac | 40 | 20 | 100",
    ]);
  });
});
