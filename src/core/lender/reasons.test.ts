import { describe, expect, it } from "vitest";
import { corn, field, harvested, load, operation, seasonOf, settings } from "../../../tests/support/season";
import { seasonFigures } from "../seasonFigures";
import { cropQuantity, moneyPerUnit, points } from "../units";
import { reasons } from "./reasons";

const typedDry = (bushels: string, moisture: string) => load("Home", "0", null, { quantity: cropQuantity(bushels), wet: cropQuantity(bushels), moisture: points(moisture) });

describe("reasons", () => {
  it("are the largest first whichever way they work, and none where nothing changed", () => {
    const figures = seasonFigures(seasonOf({
      settings: { ...settings, dryingChargePerPoint: moneyPerUnit("0.05"), dryingCountedOn: "dry" }, crops: [{ ...corn, expectedHarvestMoisture: points("20.5") }],
      fields: [harvested(field("Home", "100", "200"))], harvest: [typedDry("19000", "16.5")],
      operations: [
        operation("Spraying", "Home", "9", "plan"), operation("Spraying", "Home", "7", "done"), operation("Planting", "Home", "20", "plan"), operation("planting", "Home", "23", "done"),
        operation("Mowing", "Home", "12", "plan"),
      ],
    }));
    // 25 cents of drying planned, 5 to pay on 190 bu an acre, counted on dry bushels; 10 bu less at 3.75. The mowing was never done.
    expect(reasons(figures.crops[0]!, "operating").map(({ of, effect }) => `${typeof of === "string" ? of : `${of.kind} ${of.name}`} ${effect}`)).toEqual([
      "cost that moves with yield 3800", "yield -3750", "custom work Mowing 1200", "custom work planting -300", "custom work Spraying 200",
    ]);
  });
});
