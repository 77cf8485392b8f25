import { describe, it } from "vitest";
import { differences } from "./differences";
import { judge, runs } from "./judge";
import { growingSeason, underFlexibleRent, withOpening } from "./randomSeason";

describe("a season before and in its harvest", () => {
  it("has the figures of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    judge("growing seasons against exact fractions", growingSeason, differences);
    judge("growing seasons with opening stock against exact fractions", growingSeason.map(withOpening), differences);
    judge("growing seasons against exact fractions, under flexible rent", underFlexibleRent(growingSeason), differences, runs / 2);
  });
});
