import { describe, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { leafStage, ratingWhenPlanted, youngestThatMakesIt } from "../../src/core/weather/stage";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { contentFromText } from "../support/tableFromText";
import { check, checksPage, checkWord } from "./checks";
import { heatDays, heatSums, late, leaf, left } from "./heat";
import { sources } from "./sources";

/** The heat since planting on the last of April, of days from 1 May on. */
const sumOf = (days: readonly (readonly [string, string])[], way = "growing degree 86/50", unit = "F") => {
  const [field] = reportJson(
    seasonReport(
      contentFromText(`
    Season
    | Setting | Value |
    | Season year | 2031 |
    | Heat units | ${way} |
    | Temperature unit | ${unit} |
    Crops
    | Crop | Yield unit | Expected price |
    | Corn | bu | 4 |
    Fields
    | Field | Crop | Acres | Yield goal | Planned planting date | Planted date |
    | One | Corn | 10 | 200 | 2031-04-30 | 2031-04-30 |
    Weather
    | Date | High | Low |
    ${days.map(([high, low], index) => `| 2031-05-${String(index + 1).padStart(2, "0")} | ${high} | ${low} |`).join("\n")}`),
    ),
  ).weather;
  return new Decimal(field!.heatUnits!);
};

describe("heat units", () => {
  it.each(heatDays)("of a day are as printed ($id)", ({ way, unit, high, low, source, prints }) => {
    check(sumOf([[high, low]], way, unit), prints, source, `seasonReport: heat units, ${way}`);
  });
  it.each(heatSums)("of days in a row are as printed ($id)", ({ days, source, prints }) => {
    check(sumOf(days), prints, source, "seasonReport: heat units, growing degree 86/50");
  });
});

describe("stages and ratings", () => {
  it("have the leaves printed", () => {
    check(leafStage(new Decimal(leaf.heatUnits)), leaf.prints, sources["Ohio leaf stages 2018"], leafStage);
  });
  it("have the rating printed for a late planting", () => {
    const rating = ratingWhenPlanted(new Decimal(late.rating), new Decimal(late.daysAfterMayFirst));
    check(rating, late.prints, sources["Purdue delayed planting"], ratingWhenPlanted);
  });
  it.each(left)("have the youngest stage that makes it in $place", ({ units, prints }) => {
    checkWord(youngestThatMakesIt(new Decimal(units)), prints, sources["Purdue frost 1996"], youngestThatMakesIt);
  });
});

checksPage("Heat, stages and maturity");
