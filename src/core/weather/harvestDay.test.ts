import { describe, expect, it } from "vitest";
import { field, harvested, load, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import { moneyPerUnit } from "../numbers/units";
import { drydownTables } from "../tables/drydownTables";
import { seasonFigures } from "../seasonFigures";
import { lastLookedAt, standingCorn, usualQuestion } from "./harvestDay";

const home = field("Home", "100", "200");
const season = seasonOf({ fields: [home] });
const maturity = (date: string) => ({ maturity: { date, early: date, late: date } });
const [iowa] = drydownTables;

describe("the usual question of a harvest day", () => {
  it("begins at maturity, on the first day of the rates where that is later, and knows nothing without a maturity", () => {
    const asked = (date: string) =>
      usualQuestion({ ...season, settings: { ...season.settings, seasonYear: "2031" } }, { field: "Home" }, maturity(date));
    expect([asked("2031-08-20").from, asked("2031-09-14").from]).toEqual(["2031-09-01", "2031-09-14"]);
    expect(asked("2031-09-14").lastSafe).toBe("2031-11-15");
    expect(usualQuestion(season, { field: "Home" }, undefined)).toMatchObject({ from: null, moisture: null });
  });

  it("takes the drying charge of the season", () => {
    const charged = { ...season, settings: { ...season.settings, dryingChargePerPoint: moneyPerUnit("0.05") } };
    expect(usualQuestion(charged, { field: "Home" }, undefined).charge!.toFixed()).toBe("0.05");
    expect(
      usualQuestion({ ...season, settings: { ...season.settings, dryingChargePerPoint: null } }, { field: "Home" }, undefined).charge,
    ).toBeNull();
  });

  it("is of corn with a standard moisture whose harvest is not done", () => {
    const standing = (more: Partial<typeof season>) => {
      const of = seasonOf({ fields: [home], ...more });
      return standingCorn(
        of,
        seasonFigures(of).crops.flatMap(({ fields }) => fields),
      ).length;
    };
    expect([
      standing({}),
      standing({ fields: [harvested(home)], harvest: [load("Home", "20000")] }),
      standing({ crops: season.crops.map((crop) => ({ ...crop, standardMoisture: null })) }),
    ]).toEqual([1, 0, 0]);
  });

  it("looks two weeks beyond the last safe day, no further than rates and losses go, and never short of the safe day", () => {
    expect(lastLookedAt("2031-09-01", "2031-11-15", iowa!, false)).toBe("2031-11-29");
    expect(lastLookedAt("2031-09-01", "2031-12-25", iowa!, false)).toBe("2032-01-01");
    expect(lastLookedAt("2031-09-01", "2031-12-30", { perDay: new Decimal("0.5") }, true)).toBe("2031-12-30");
  });
});
