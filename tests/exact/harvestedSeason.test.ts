import { describe, it } from "vitest";
import { differences } from "./differences";
import { judge, runs } from "./judge";
import { harvestedSeason, underFlexibleRent } from "./randomSeason";

describe("a harvested season", () => {
  it("has the figures of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    judge("harvested seasons against exact fractions", harvestedSeason, differences);
    judge("harvested seasons against exact fractions, under flexible rent", underFlexibleRent(harvestedSeason), differences, runs / 2);
  });
});
