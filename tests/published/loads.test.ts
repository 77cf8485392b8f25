import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";
import { check, checksPage } from "./checks";
import { loads } from "./loads";
import { sources } from "./sources";
import { purdue } from "./standTables";

function reportOf(workbook: string) {
  const report = seasonReport(contentFromText(workbook));
  // What is printed are rules of a harvest, a rate or a price, on land without a cost.
  expect(report.problems.filter(({ code }) => code !== "cost-none")).toEqual([]);
  return reportJson(report);
}

describe("a load of wet grain", () => {
  it.each(loads)("is dried and shrunk as printed ($id)", ({ weight, unit, moisture, standard, perPoint, acres, source, prints }) => {
    const { harvest, fields } = reportOf(`
      Season
      | Setting                 | Value       |
      | Drying charge per point | ${perPoint} |
      Crops
      | Crop | Yield unit | Weight per bu | Standard moisture | Expected price |
      | Corn | bu         | 56            | ${standard}       | 4              |
      Fields
      | Field | Crop | Acres    | Yield goal | Harvest done |
      | One   | Corn | ${acres} | 200        | yes          |
      Harvest
      | Field | Date       | Weight or bushels | Unit    | Moisture    |
      | One   | 2031-10-01 | ${weight}         | ${unit} | ${moisture} |`);
    for (const [figure, printed] of Object.entries(prints))
      check(new Decimal(harvest[0]![figure as keyof typeof prints]!), printed, source, `seasonReport: harvest, ${figure}`, figure);
    // The final charges the field what its loads were charged.
    const { yield: yields, costPerAcre } = fields[0]!.final!;
    expect(yields.used).toBe(harvest[0]!.yieldPerAcre);
    expect(new Decimal(costPerAcre.byKind["drying"] ?? "0").times(acres).toFixed(6)).toBe(new Decimal(harvest[0]!.dryingCost!).toFixed(6));
  });
});

describe("a planting alone", () => {
  const at32000 = purdue.stands.split(" ").indexOf("32000");
  it.each(purdue.rows)("on %s leaves the printed percent of a goal that is set for 25 April", (day, percents) => {
    const { fields } = reportOf(`
      Crops
      | Crop | Expected price |
      | Corn | 4              |
      Fields
      | Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand |
      | One   | Corn | 1     | 200        | 2031-04-25            | 2031-${day}  | 32000        |`);
    const percent = new Decimal(fields[0]!.outlook.yield.used!).div("2");
    check(percent, percents.split(" ")[at32000]!, sources["Purdue 2012"], "seasonReport: outlook, yield");
    expect(fields[0]!.yieldTable!.chosen).toBe(false);
  });
});

checksPage("Loads and plantings");
