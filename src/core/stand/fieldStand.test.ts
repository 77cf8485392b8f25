import { describe, expect, it } from "vitest";
import { centralCornBelt, iowa2001, soybeanDates } from "../../../tests/support/publishedStandTables";
import { seasonOf, settings } from "../../../tests/support/season";
import { cropWord, tableFor } from "./fieldStand";

describe("cropWord", () => {
  it.each([
    ["Field corn", "corn"],
    ["Maize, early", "corn"],
    ["Soybeans after corn", "soybean"],
    ["Winter Wheat", "wheat"],
    [" Oats ", "oats"],
  ])("takes %s for %s", (name, word) => {
    expect(cropWord(name)).toBe(word);
  });
});

describe("tableFor", () => {
  const named = (standResponse: string | null, crop: string, standTables = [] as (typeof iowa2001)[]) =>
    tableFor({ ...seasonOf({ settings: { ...settings, standResponse } }), standTables }, { name: crop });
  const both = `${soybeanDates.name}; ${iowa2001.name.toUpperCase()} `;

  it("is the one of the crop among those that the setting names", () => {
    expect([named(both, "Corn"), named(both, "Soybeans")]).toEqual([iowa2001, soybeanDates]);
  });
  it("is the usual one of corn, and none of another crop, where none of it is named", () => {
    expect([named(null, "Maize"), named(soybeanDates.name, "Corn"), named(iowa2001.name, "Soybeans"), named(null, "Soybeans")]).toEqual([
      centralCornBelt,
      centralCornBelt,
      null,
      null,
    ]);
  });
  it("is the grower's own before a published one of the same name, and only where it is named", () => {
    const own = { ...iowa2001, region: "as entered in this workbook" };
    expect([named(both, "Corn", [own]), named(null, "Corn", [own])]).toEqual([own, centralCornBelt]);
  });
});
