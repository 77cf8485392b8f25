import { describe, expect, it } from "vitest";
import { kinds } from "../core/kinds";
import { wordBought, wordMeant } from "./synonyms";

const meant = (...typed: readonly string[]) => typed.map((each) => wordMeant(each, kinds) ?? wordBought(each, kinds));

describe("a kind of cost as growers write it", () => {
  it("is what is bought, whatever stands beside it", () => {
    expect(
      meant(
        "Herbicide pre",
        "Herbicide post",
        "Starter 10-34-0",
        "Anhydrous",
        "Seed corn",
        "Fert. (fall)",
        "Chem",
        "Crop ins. premium",
        "Gas, fuel, oil",
        "Fert & lime",
      ),
    ).toEqual([
      "crop protection",
      "crop protection",
      "fertilizer",
      "fertilizer",
      "seed",
      "fertilizer",
      "crop protection",
      "crop insurance",
      "fuel",
      "fertilizer",
    ]);
  });

  it("is none where two are named, or where it may be work, land or money instead", () => {
    expect(
      meant(
        "Seed, fert, chem",
        "Fertilizer spreading",
        "Seed drill rent",
        "Fuel tax",
        "Seed refund",
        "Combine & haul",
        "Crop inputs",
        "Herbicide application",
        "Scouting",
      ),
    ).toEqual(Array(9).fill(null));
  });

  it("is asked of lists of kinds alone", () => {
    expect([wordBought("Seed corn, bags", ["plan", "done"]), wordBought("Seed corn, bags", kinds)]).toEqual([null, "seed"]);
  });
});
