import { describe, expect, it } from "vitest";
import { corn, field, load, operation, seasonOf, settings } from "../../../tests/support/season";
import { seasonFigures } from "../seasonFigures";
import { moneyPerUnit, points } from "../units";
import { reasons } from "./reasons";

describe("reasons", () => {
  it("are the largest first whichever way they work, and none where nothing changed", () => {
    const figures = seasonFigures(seasonOf({
      settings: { ...settings, dryingChargePerPoint: moneyPerUnit("0.05") }, crops: [{ ...corn, expectedHarvestMoisture: points("20.5") }],
      fields: [field("Home", "100", "200")], harvest: [load("Home", "19000", "16.5")],
      operations: [
        operation("Spraying", "Home", "9", "plan"), operation("Spraying", "Home", "7", "done"), operation("Planting", "Home", "20", "plan"), operation("planting", "Home", "23", "done"),
        operation("Mowing", "Home", "12", "plan"),
      ],
    }));
    // 25 cents of drying planned, 5 to pay on 190 bu an acre; 10 bu less at 3.75.
    expect(reasons(figures.crops[0]!, "operating").map(({ of, effect }) => `${typeof of === "string" ? of : `${of.kind} ${of.name}`} ${effect}`)).toEqual([
      "cost that moves with yield 3800", "yield -3750", "custom work planting -300", "custom work Spraying 200",
    ]);
  });
});
