import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";

const farm = (field: string, setting = "", crop = "Corn", counts = "") =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${setting === "" ? "" : `| Stand response | ${setting} |`}
Crops
| Crop | Expected price |
| ${crop} | 4 |
Fields
| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Target stand |
| Alder | ${crop} | 100 | 200 | ${field} |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
${counts}`),
  );
const told = (...of: Parameters<typeof farm>) =>
  farm(...of).problems.map(({ code, at }) => `${code} ${at.table} ${at.column ?? ""}`.trim());
const outlook = (...of: Parameters<typeof farm>) => farm(...of).figures.crops[0]!.outlook.yields.outlook.toFixed(6);

describe("a planted date", () => {
  it("moves the outlook alone, by the table in use, as soon as it is entered", () => {
    // Purdue 2012: 32,000 plants 100 % on 25 April, 95 % on 15 May.
    expect([outlook("2031-04-25 | 2031-05-15 | 32000"), told("2031-04-25 | 2031-05-15 | 32000")]).toEqual(["190.000000", []]);
    expect(outlook("2031-04-25 | | 32000")).toBe("200.000000");
  });

  it("outside the table, planned or real, is an entry to fix and leaves the figures incomplete", () => {
    expect(told("2031-04-25 | 2031-06-20 | 32000")).toEqual(["stand-outside-table Fields Planted date"]);
    expect(told("2031-03-20 | 2031-05-15 | 32000")).toEqual(["stand-outside-table Fields Planned planting date"]);
    expect(farm("2031-04-25 | 2031-06-20 | 32000").problemsOf({ of: "crop", name: "Corn" })).toHaveLength(1);
    expect(outlook("2031-04-25 | 2031-06-20 | 32000")).toBe("200.000000");
  });

  it("without a planned one is an entry to fix", () => {
    expect(told(" | 2031-05-15 | 32000")).toEqual(["planned-date-missing Fields Planned planting date"]);
    expect(outlook(" | 2031-05-15 | 32000")).toBe("200.000000");
  });

  it("needs the target stand where the table goes by stands, unless it is the planned day", () => {
    expect(told("2031-04-25 | 2031-05-15 | ")).toEqual(["stand-outside-table Fields Target stand"]);
    expect([told("2031-04-25 | 2031-04-25 | "), outlook("2031-04-25 | 2031-04-25 | ")]).toEqual([[], "200.000000"]);
  });

  it("moves nothing where no table is in use: for another crop, or by the setting's none", () => {
    expect([told("2031-05-05 | 2031-06-20 | ", "", "Soybeans"), outlook("2031-05-05 | 2031-06-20 | ", "", "Soybeans")]).toEqual([
      [],
      "200.000000",
    ]);
    expect([told(" | 2031-06-20 | ", "None"), outlook(" | 2031-06-20 | ", "None")]).toEqual([[], "200.000000"]);
  });

  it("is no longer told once the harvest is done, which is the yield", () => {
    const report = seasonReport(
      contentFromText(`Crops\n| Crop | Expected price |\n| Corn | 4 |
Fields\n| Field | Crop | Acres | Yield goal | Planned planting date | Planted date | Harvest done |\n| Alder | Corn | 100 | 200 | | 2031-07-20 | yes |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
Harvest\n| Field | Date | Weight or bushels | Moisture |\n| Alder | 2031-11-20 | 9000 | 15 |`),
    );
    expect([report.problems, report.figures.crops[0]!.final!.yields.used.toFixed()]).toEqual([[], "90"]);
  });

  it("is told once beside a count that the table does not answer for either", () => {
    const counts = "Stand counts\n| Field | Date | Row width | Length | Plants |\n| Alder | 2031-07-01 | 30 | 17.424 | 24 |";
    expect(told("2031-04-25 | 2031-06-20 | 32000", "", "Corn", counts)).toEqual(["stand-outside-table Fields Planted date"]);
    expect(told("2031-04-25 | 2031-05-15 | 32000", "", "Corn", counts.replace("| 24 |", "| 5 |"))).toEqual([
      "stand-outside-table Stand counts",
    ]);
  });
});

describe("the table in use", () => {
  const chosen = (setting: string) =>
    farm("2031-04-25 | 2031-05-15 | 32000", setting).figures.outlooks.map(({ table, chosen: is }) => [table?.name, is]);
  it("is not chosen by the grower until the setting names it", () => {
    expect(chosen("")).toEqual([["Corn, central Corn Belt (Purdue 2012)", false]]);
    expect(chosen("corn, central corn belt (Purdue 2012)")).toEqual([["Corn, central Corn Belt (Purdue 2012)", true]]);
    expect(chosen("Soybeans, Pennsylvania, by date only (2012)")).toEqual([["Corn, central Corn Belt (Purdue 2012)", false]]);
    expect(chosen("none")).toEqual([[undefined, false]]);
  });
});
