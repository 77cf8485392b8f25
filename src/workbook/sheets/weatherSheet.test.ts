import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { sheetLines } from "../../../tests/support/sheetLines";
import { nextDay } from "../../core/numbers/day";
import { seasonReport } from "../report";
import { reportJson } from "../reportJson";
import { resultSheets } from "./resultSheets";

/** 20 heat units a day in two earlier years and 22 this year, to the end of June. */
const record = (() => {
  const rows: string[] = [];
  for (const [from, to, high] of [
    ["2029-05-01", "2029-12-01", "80"],
    ["2030-05-01", "2030-12-01", "80"],
    ["2031-05-01", "2031-06-30", "84"],
  ] as const) {
    for (let date: string = from; date <= to; date = nextDay(date)) {
      if (date !== "2031-06-02") rows.push(`| ${date} | ${high} | 60 | ${date.endsWith("-15") ? "0.5" : "0"} |`);
    }
  }
  return rows.join("\n");
})();
const season = (settings = "", weather = record) =>
  seasonReport(
    contentFromText(`
Season
| Setting | Value |
| Season year | 2031 |
${settings}Crops
| Crop | Yield unit | Expected price | Standard moisture |
| Corn | bu | 4 | 15.5 |
Fields
| Field | Hybrid or variety | Crop | Acres | Yield goal | Planned planting date | Planted date |
| Alder | Early one | Corn | 100 | 200 | 2031-05-01 | 2031-05-01 |
| Birch | Other one | Corn | 100 | 200 | 2031-05-01 | 2031-05-11 |
Hybrids
| Hybrid | Heat units to maturity |
| Early one | 2500 |
Weather
| Date | High | Low | Rain |
${weather}`),
  );
const lines = (of: ReturnType<typeof season>) => sheetLines(resultSheets(of).find(({ name }) => name === "Heat and rain")!);

describe("the sheet Weather", () => {
  it("says what is counted and in which unit, and that it is an estimate", () => {
    expect(lines(season())[1]).toMatch(/^Season 2031\. .*from the day after planting; rain in inches\. All of it an estimate\.$/);
    expect(lines(season("| Area unit | ha |\n"))[1]).toContain("rain in millimetres");
  });

  it("has heat, rain, stage and maturity of each planted field, and says what is missing", () => {
    const told = lines(season("| First killing frost | 2029-10-02; 2030-10-10; 2028-10-06 |\n"));
    // 59 days of 22 = 1,298 against 1,180; with the normal of the day that is missing 1,182 are left, 60 days of 20: 29 August.
    expect(told.filter((line) => /^(Alder|Birch) \|/.test(line))).toEqual([
      "Alder | 2031-06-30 | 1298 | 1180 | 118 | 1 | R1 | 2031-08-29 | 2031-08-29 | 2031-08-29 | 38 days before | 34 days before",
      "Birch | 2031-06-30 | 1078 | 980 | 98 | 1 | V13 | – | – | – | – | –",
    ]);
    expect(told).toContain("Days since planting without temperatures, which take their normal towards maturity: Alder 1, Birch 1.");
    expect(told).toContain("No day of maturity, because the table Hybrids has no GDD or CHU to maturity of what is planted: Birch.");
    expect(told.join(" ")).toContain("2 earlier years; first killing freeze: median 10-06, earliest 10-02, of 3 falls.");
  });

  it("holds the field against the dryer for corn that stands and has a day of maturity, and says what is in the way", () => {
    // 35 % on 29 August, counted from 1 September; 4.5 points a week to the end of the month and 2.5 after.
    const told = season("| Drying charge per point | 0.05 |\n");
    const [row] = lines(told).filter((line) => line.startsWith("Alder | 2031-09-01"));
    const cells = row!.split(" | ");
    expect([cells[0], cells[1], cells[3]]).toEqual(["Alder", "2031-09-01", "35"]);
    // 19.5 points × 0.05 × 200 bu, on wet bushels 84.5 ÷ 65 of the dry ones.
    expect(cells[8]).toBe("253.5");
    expect(Number(cells[5]) + Number(cells[6])).toBeCloseTo(Number(cells[7]), 9);
    expect(lines(told).join(" ")).toContain("Dryer: gas, flame and moving parts");
    const data = reportJson(told).weather;
    expect(data[0]!.drydown).toMatchObject({ rates: "Iowa 2022, by month", refused: null, first: { date: "2031-09-01", moisture: "35" } });
    expect(data[0]!.drydown!.cheapest!.date).toBe(cells[2]);
    expect(data[1]!.drydown).toBeNull();
    expect(lines(season())).toContain("Waiting or the dryer: not compared, because the table Season has no Drying charge per point.");
  });

  it.each([
    ["", "GDD so far", "no 28 °F freeze is known"],
    ["| Heat units | corn heat units |\n", "CHU so far", "no 28 °F freeze is known"],
    ["| Temperature unit | C |\n", "CHU so far", "no −2.2 °C freeze is known"],
  ])("names heat by the setting, and a freeze by its threshold: %j", (setting, heat, freeze) => {
    const told = lines(season(setting)).join(" ");
    expect(told).toContain(heat);
    expect(told).toContain(freeze);
  });

  it("is not there without weather", () => {
    expect(resultSheets(season("", "")).map(({ name }) => name)).not.toContain("Heat and rain");
  });

  it("is in the data, place by place", () => {
    const [alder] = reportJson(season()).weather;
    expect(alder).toMatchObject({
      field: "Alder",
      place: null,
      from: "2031-05-02",
      to: "2031-06-30",
      days: "59",
      missing: "1",
      heatUnits: "1298",
      normal: "1180",
      rain: "1",
      rating: "2500",
      stage: "R1",
      maturity: { date: "2031-08-29" },
      frost: null,
      frostMarginDays: null,
    });
  });

  it("leaves every figure of money complete where a day is at fault", () => {
    const told = season("", `${record}\n| 2031-06-30 | 50 | 60 | 0 |`);
    expect([
      told.problemsOf({ of: "weather" }).filter(({ code }) => code === "low-above-high").length,
      told.problemsOf({ of: "crop", name: "Corn" }).filter(({ code }) => code === "low-above-high").length,
      told.problemsOf({ of: "farm" }).filter(({ code }) => code === "low-above-high").length,
    ]).toEqual([1, 0, 0]);
  });
});
