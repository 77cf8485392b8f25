import { describe, expect, it } from "vitest";
import { northernMissouri } from "../../../tests/support/publishedStandTables";
import { field, load, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import { accounts } from "../accounts";
import { fieldStands } from "./fieldStand";
import { outlookSteps } from "./outlookSteps";
import type { StandCount } from "./standCount";

const thousandth = { rowWidth: new Decimal("30"), length: new Decimal("17.424") };
const count = (date: string, plants: string): StandCount => ({
  field: "Mill",
  date,
  place: thousandth,
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: null,
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
});
const mill = field("Mill", "100", "200", {
  plannedPlanting: "2031-04-25",
  planted: "2031-05-15",
  harvestDone: { on: null },
  targetStand: new Decimal("32000"),
  rowWidth: new Decimal("30"),
  uniformityLoss: new Decimal("5"),
});
const season = seasonOf({
  fields: [mill],
  standCounts: [count("2031-05-26", "28"), count("2031-06-08", "20"), count("2031-06-09", "24")],
  harvest: [load("Mill", "15000")],
});

describe("the history of a yield outlook", () => {
  it("goes from the goal by planting, each round of counts and unevenness to the harvest", () => {
    // Purdue 2012, table 1: 25 April and 32,000 plants 100 %; 15 May 95 % at 32,000, 94 % at 28,000, 89 % at 22,000.
    expect(outlookSteps(season, mill).map(({ date, reason, from, to }) => [date, reason.of, from.toString(), to.toString()])).toEqual([
      ["2031-05-15", "planted", "200", "190"],
      ["2031-05-26", "counted", "190", "188"],
      ["2031-06-09", "counted", "188", "178"],
      ["2031-06-09", "uneven", "178", "169.1"],
      ["2031-10-10", "harvested", "169.1", "150"],
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
    const of = { ...season, fields: [undated], harvest: [], settings: { ...season.settings, standResponse: northernMissouri.name } };
    expect(outlookSteps(of, undated).map(({ reason }) => reason.of)).toEqual(["planted", "counted", "counted"]);
    expect(outlookSteps({ ...of, settings: season.settings }, undated)).toEqual([]);
  });

  it("moves by the date alone as soon as the field is planted, the stand still at its target", () => {
    // 15 May 95 % of the 100 % of 25 April: 200 × 0.95 = 190, and 5 % of that lost to unevenness: 180.5.
    const planted = { ...season, standCounts: [], harvest: [] };
    expect(outlookSteps(planted, mill).map(({ date, reason, from, to }) => [date, reason.of, from.toString(), to.toString()])).toEqual([
      ["2031-05-15", "planted", "200", "190"],
      ["2031-05-15", "uneven", "190", "180.5"],
    ]);
    expect(accounts(planted).facts[0]!.outlookYield.toString()).toBe("180.5");
  });

  it("keeps what the date says where a count is beyond the table", () => {
    const tooThin = { ...season, harvest: [], standCounts: [count("2031-06-08", "5")] };
    expect(outlookSteps(tooThin, mill).map(({ reason }) => reason.of)).toEqual(["planted", "uneven"]);
    expect(accounts(tooThin).facts[0]!.outlookYield.toString()).toBe("180.5");
  });

  it("stays at the goal where the setting says that no table is to be used", () => {
    const none = { ...season, standCounts: [], harvest: [], settings: { ...season.settings, standResponse: "none" } };
    expect(accounts({ ...none, fields: [{ ...mill, uniformityLoss: null }] }).facts[0]!.outlookYield.toString()).toBe("200");
  });

  it("has the loads as a step before the harvest is done only where they are more than was looked for", () => {
    const underWay = { ...mill, harvestDone: null };
    const last = (bushels: string) => outlookSteps({ ...season, fields: [underWay], harvest: [load("Mill", bushels)] }, underWay).at(-1)!;
    expect([last("15000").reason.of, last("15000").to.toString()]).toEqual(["uneven", "169.1"]);
    expect([last("17000").reason.of, last("17000").to.toString()]).toEqual(["weighed", "170"]);
  });
});
