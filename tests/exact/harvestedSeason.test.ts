import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differences, runs } from "./differences";
import { harvestedSeason } from "./randomSeason";

describe("a harvested season", () => {
  it("has the figures of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    fc.assert(fc.property(harvestedSeason, (season) => { expect(differences(season)).toEqual([]); }), { numRuns: runs });
  });
});
