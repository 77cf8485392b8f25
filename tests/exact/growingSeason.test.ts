import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { differences, runs } from "./differences";
import { growingSeason } from "./randomSeason";

describe("a season before and in its harvest", () => {
  it("has the figures of exact fractions to 25 digits", { timeout: 900_000 }, () => {
    fc.assert(fc.property(growingSeason, (season) => { expect(differences(season)).toEqual([]); }), { numRuns: runs });
  });
});
