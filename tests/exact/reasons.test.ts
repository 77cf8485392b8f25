/** What moved a crop adds up, reason by reason, to the difference of its net return, with budget lines and bills among its costs. */
import { describe, it } from "vitest";
import { sum } from "../../src/core/numbers/decimal";
import { layers } from "../../src/core/kinds";
import { reasons } from "../../src/core/lender/reasons";
import type { Season } from "../../src/core/season";
import { seasonFigures } from "../../src/core/seasonFigures";
import { judge, runs } from "./judge";
import { growingSeason, harvestedSeason, underFlexibleRent } from "./randomSeason";

function faults(season: Season): readonly string[] {
  return seasonFigures(season).crops.flatMap((crop) =>
    layers.flatMap((layer) => {
      const moved = sum(
        crop.fields.map(({ plan, outlook, area }) => outlook.budget.netPerArea[layer].minus(plan.budget.netPerArea[layer]).times(area)),
      );
      const told = reasons(crop, layer);
      const twice = told.map(({ of }) => JSON.stringify(of)).filter((of, index, all) => all.indexOf(of) !== index);
      return [
        ...(sum(told.map(({ effect }) => effect))
          .minus(moved)
          .abs()
          .lt("1e-12")
          ? []
          : [`${crop.crop} ${layer}: moved ${moved}, told ${JSON.stringify(told)}`]),
        ...twice,
      ];
    }),
  );
}

describe("what moved a crop", () => {
  it("adds up to the difference of its net return in every layer", { timeout: 900_000 }, () => {
    judge("growing seasons, reasons", growingSeason, faults);
    judge("growing seasons, reasons, under flexible rent", underFlexibleRent(growingSeason), faults, runs / 2);
    judge("harvested seasons, reasons", harvestedSeason, faults);
    judge("harvested seasons, reasons, under flexible rent", underFlexibleRent(harvestedSeason), faults, runs / 2);
  });
});
