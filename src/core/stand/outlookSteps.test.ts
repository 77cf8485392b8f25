import { describe, expect, it } from "vitest";
import { northernMissouri } from "../../../tests/support/publishedStandTables";
import { field, load, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../decimal";
import { fieldStands } from "./fieldStand";
import { outlookSteps } from "./outlookSteps";
import type { StandCount } from "./standCount";

const thousandth = { rowWidth: new Decimal("30"), length: new Decimal("17.424") };
const count = (date: string, plants: string): StandCount =>
  ({ field: "Mill", date, place: thousandth, plants: new Decimal(plants), doubtful: new Decimal("0"), remark: null, source: { table: "Stand counts", row: 1 } });
const mill = field("Mill", "100", "200", {
  plannedPlanting: "2031-04-25", planted: "2031-05-15", targetStand: new Decimal("32000"), rowWidth: new Decimal("30"), uniformityLoss: new Decimal("5"),
});
const season = seasonOf({
  fields: [mill], standCounts: [count("2031-05-26", "28"), count("2031-06-08", "20"), count("2031-06-09", "24")],
  harvest: [load("Mill", "15000")],
});

describe("the history of a yield outlook", () => {
  it("goes from the goal by planting, each round of counts and unevenness to the harvest", () => {
    // Purdue 2012, table 1: 25 April and 32,000 plants 100 %; 15 May 95 % at 32,000, 94 % at 28,000, 89 % at 22,000.
    expect(outlookSteps(season, mill).map(({ date, reason, from, to }) => [date, reason.of, from.toString(), to.toString()])).toEqual([
      ["2031-05-15", "planted", "200", "190"], ["2031-05-26", "counted", "190", "188"], ["2031-06-09", "counted", "188", "178"],
      ["2031-06-09", "uneven", "178", "169.1"], ["2031-10-10", "harvested", "169.1", "150"],
    ]);
  });

  it("ends before harvest where the outlook of the season stands", () => {
    const growing = { ...season, harvest: [] };
    const outlook = fieldStands(growing).get("Mill")!.outlook;
    expect(outlook?.ok && outlook.value.outlook.toString()).toBe(outlookSteps(growing, mill).at(-1)!.to.toString());
  });

  it("has the step of planting by a table that asks for no stand, where no target is entered", () => {
    // 16 May in northern Missouri against 11 May; the stand says nothing there.
    const undated = { ...mill, plannedPlanting: "2031-05-11", planted: "2031-05-16", targetStand: null, uniformityLoss: null };
    const of = { ...season, harvest: [], settings: { ...season.settings, standResponse: northernMissouri.name } };
    expect(outlookSteps(of, undated).map(({ reason }) => reason.of)).toEqual(["planted", "counted", "counted"]);
    expect(outlookSteps({ ...of, settings: season.settings }, undated)).toEqual([]);
  });

  it("has no step without a count, nor where the table says nothing", () => {
    expect(outlookSteps({ ...season, standCounts: [], harvest: [] }, mill)).toEqual([]);
    const tooThin = { ...season, harvest: [], standCounts: [count("2031-06-08", "5")] };
    expect(outlookSteps(tooThin, mill).map(({ reason }) => reason.of)).toEqual(["planted"]);
  });
});
