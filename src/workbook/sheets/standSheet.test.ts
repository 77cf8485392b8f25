import { describe, expect, it } from "vitest";
import { reportOf } from "../../../tests/support/reportOf";
import { field, load, seasonOf } from "../../../tests/support/season";
import { sheetLines } from "../../../tests/support/sheetLines";
import { Decimal } from "../../core/numbers/decimal";
import { area } from "../../core/numbers/units";
import type { Field, Season } from "../../core/season";
import type { StandCount } from "../../core/stand/standCount";
import { standSheet } from "./standSheet";

const count = (date: string, plants: string): StandCount => ({
  field: "Home",
  date,
  place: { rowWidth: new Decimal("30"), length: new Decimal("17.424") },
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: null,
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
});
const sown = (more: Partial<Field> = {}) =>
  field("Home", "100", "200", {
    plannedPlanting: "2031-04-25",
    planted: "2031-05-15",
    targetStand: new Decimal("32000"),
    seedsDropped: new Decimal("30000"),
    uniformityLoss: new Decimal("5"),
    ...more,
  });
const linesOf = (more: Partial<Field> = {}, parts: Partial<Season> = {}) =>
  sheetLines(
    standSheet(reportOf(seasonOf({ fields: [sown(more)], standCounts: [count("2031-06-01", "22"), count("2031-06-02", "26")], ...parts }))),
  );
const lines = linesOf();

describe("the sheet of stands", () => {
  it("prints what was counted, its spread and what came up", () => {
    // 24,000 ± 12.706 × 2,828 ÷ √2, plants to the hundred; one place in 5 acres is advised.
    expect(lines.slice(0, 4)).toEqual([
      "Stand",
      "Season 2031. Plants per acre from the last round of counts of each field; the interval holds the mean 19 times in 20.",
      "Field | Counted | Spots | Advised | Plants | From | To | Spread (CV) | Emergence",
      "Home | 2031-06-02 | 2 | 20 | 24000 | 0 | 49400 | 0.118 | 0.8",
    ]);
  });

  it("prints how the outlook was read and how it came there", () => {
    // Purdue 2012, table 1: 100 % of 32,000 plants on 25 April, 95 % on 15 May, 92 % of 24,000.
    expect(lines.slice(4, 19)).toEqual([
      "Home, Corn",
      'Yield by planting date and stand from the table "Corn, central Corn Belt (Purdue 2012)", for Indiana, Illinois, Ohio, ' +
        "southern Iowa,",
      "Missouri, Pennsylvania; not chosen by you: name one, or none, under Stand response in the table Season.",
      "Read from the table | Date | Stand | Percent | Part | Relative yield",
      "planned | 04-25 | 32,000 | 100 | 1 | 1",
      "actual | 05-15 | 24,000 | 92 | 1 | 0.92",
      "Yield goal (bu) | 200",
      "Goal × actual ÷ planned (bu) | 184",
      "Lost to unevenness, as entered | 0.05",
      "Projected yield (bu) | 174.8",
      "Projected yield by date | Date | From | To",
      "planted (plan 2031-04-25) | 2031-05-15 | 200 | 190",
      "counted 24,000 plants | 2031-06-02 | 190 | 184",
      "5 % lost to unevenness | 2031-06-02 | 184 | 174.8",
      "Corn, central Corn Belt (Purdue 2012)",
    ]);
    expect(linesOf({ harvestDone: { on: null } }, { harvest: [load("Home", "15000")] })).toContain("harvested | 2031-10-10 | 174.8 | 150");
    expect(linesOf({ plannedPlanting: null, uniformityLoss: null }).filter((line) => /^planted|unevenness/.test(line))).toEqual([
      "planted | 2031-05-15 | 200 | 200",
    ]);
  });

  it("prints every part with its acres, stand and yield, and what was counted before the planting", () => {
    const thin = { ...count("2031-06-01", "22"), part: { name: "Knoll", area: area("30"), planted: null } };
    const parted = linesOf({ uniformityLoss: null }, { standCounts: [thin, { ...thin, date: "2031-05-14" }] });
    expect(parted.slice(3, 6)).toEqual([
      "Home | 2031-06-01 | 1 | 6 | 22000 | – | – | – | 0.733",
      "   Knoll | 2031-06-01 | 1 | 6 | 22000 | – | – | –",
      "   rest of the field | not counted | – | – | – | – | – | –",
    ]);
    const from = parted.indexOf("Parts of the field | ac | Plants | bu");
    expect(parted.slice(from + 1, from + 4)).toEqual([
      "Knoll | 30 | 22000 | 178",
      "rest of the field, at the target | 70 | 32000 | 190",
      "Left out, as counted before the planting: 1.",
    ]);
    expect(parted).toContain("Projected yield (bu) | 186.4");
  });

  it("names the table, its limits and what it cannot say", () => {
    const foot = lines.slice(18).join(" ");
    const told = [
      "Region: Indiana, Illinois",
      "Purdue University Extension, 2012; table 1.",
      "http://",
      "It rests on one study of 1994.",
      "Between its cells it is read by straight lines",
      "averages of trials",
      "Ask your insurer's adjuster",
      "Figures are for planning",
    ];
    expect(told.filter((words) => !foot.includes(words))).toEqual([]);
  });

  it("shows a planted field that nobody counted by its date alone, and the harvest so far", () => {
    const uncounted = linesOf(
      { uniformityLoss: null },
      { standCounts: [], harvest: [load("Home", "1000", "20", { testWeight: new Decimal("57.5") }), load("Home", "1000", "14")] },
    );
    expect(uncounted).toContain("Nothing is counted: the planted date alone, the stand at its target.");
    expect(uncounted).toContain("Projected yield (bu) | 190");
    // 1,000 × 80 ÷ 84.5 + 1,000 of 19,000; (946.75 × 20 + 1,000 × 14) ÷ 1,946.75.
    expect(uncounted).toContain(
      "Home: harvest so far 1,946.75 bu in 2 loads, 10 % of the projected yield, 17,053 left, 16.9 % moisture, 57.5 lb a bushel.",
    );
  });

  it("says why the goal stays where no table answers", () => {
    expect(linesOf({ planted: "2031-07-04" }).join(" ")).toContain(
      "The projected yield stays at 190.0: the actual planting date 2031-07-04 is outside",
    );
    const beans = linesOf({ crop: "Oats" }, { crops: [{ ...seasonOf({}).crops[0]!, name: "Oats" }] });
    expect(beans).toContain(
      "No table of yield by date and stand is chosen for Oats, so the goal stays as the projected yield, less what is lost to " +
        "unevenness as entered.",
    );
    expect(linesOf({}, { standCounts: [] })).toContain("No stand is counted: the table Stand counts has no entries.");
  });
});
