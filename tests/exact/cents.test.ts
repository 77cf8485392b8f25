import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sum, type Decimal } from "../../src/core/numbers/decimal";
import type { Stage } from "../../src/core/figures";
import type { Season } from "../../src/core/season";
import { seasonFigures } from "../../src/core/seasonFigures";
import { growingSeason, harvestedSeason } from "./randomSeason";

/** What the fields are charged under a name at a stage. */
function chargesOf(season: Season, name: string, stage: Stage): readonly Decimal[] {
  const fields = seasonFigures(season).crops.flatMap(({ fields: all }) => all);
  return fields
    .flatMap((field) => field[stage]?.charges ?? [])
    .filter((charge) => charge.name === name)
    .map(({ amount }) => amount);
}

/** Budget lines take the place of the plan's rows, and bills come off what is left of them. */
const rowsAlone = growingSeason.map((season): Season => ({ ...season, budget: [], bills: [] }));

/** Whole-farm costs of whole cents that some field bears. */
const wholeFarm = ({ otherCosts, fields }: Season) =>
  otherCosts.filter(
    ({ basis, amount, over }) =>
      basis === "whole farm" &&
      amount.decimalPlaces() <= 2 &&
      ("all" in over || fields.some((field) => ("crop" in over ? field.crop === over.crop : field.name === over.field))),
  );

describe("a whole-farm amount", () => {
  it.each(["plan", "outlook"] as const)("is shared out in whole cents that add up to it in the %s", (stage) => {
    fc.assert(
      fc.property(rowsAlone, (season) => {
        for (const { item, amount } of wholeFarm(season)) {
          const shares = chargesOf(season, item, stage);
          expect(sum(shares).toFixed()).toBe(amount.toFixed());
          expect(shares.every((share) => share.decimalPlaces() <= 2)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe("an item that is charged as bought", () => {
  it("charges the fields with all that its invoices add up to once they are harvested", () => {
    fc.assert(
      fc.property(harvestedSeason, (season) => {
        for (const { name, charged, operatorCostShare, unchargedIn } of season.items) {
          if (unchargedIn !== undefined || charged === "as used" || !operatorCostShare.eq("1")) continue;
          const invoices = season.purchases
            .filter(({ item }) => item === name)
            .map(({ amount, freight, rebate }) => amount.plus(freight).minus(rebate));
          expect(sum(chargesOf(season, name, "final")).toFixed()).toBe(sum(invoices).toFixed());
        }
      }),
      { numRuns: 300 },
    );
  });
});
