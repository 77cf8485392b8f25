import { blankGainCaution } from "../../cautions";
import type { Decimal } from "../../numbers/decimal";
import { findingsOn } from "../../tables/trialFindings";
import type { Money, SeedsPerArea, Yield } from "../../numbers/units";
import { perAcre } from "../change";
import { layout, lines, type Layout, type Circumstances } from "./layout";

export type AnotherSeedingRate = Circumstances & {
  readonly from: SeedsPerArea;
  readonly to: SeedsPerArea;
  readonly pricePerUnit: Money;
  readonly seedsPerUnit: Decimal;
  /** What the new rate adds to the yield, or takes from it where it is the lower one; zero or more. */
  readonly yieldDifference: Yield | null;
};

/** More seed against a yield gain, or less seed against a yield that is given up. */
export function anotherSeedingRate(of: AnotherSeedingRate): Layout {
  const more = of.to.gte(of.from);
  const difference = perAcre(more ? "added returns" : "reduced returns", {
    item: more ? "Yield gain" : "Yield given up",
    unit: `${of.yieldUnit}/${of.areaUnit}`,
    quantity: of.yieldDifference,
    price: of.grain,
  });
  const seed = perAcre(more ? "added costs" : "reduced costs", {
    item: more ? "More seed" : "Seed saved",
    unit: `units/${of.areaUnit}`,
    quantity: of.to.minus(of.from).abs().div(of.seedsPerUnit),
    price: of.pricePerUnit,
  });
  return layout("Another seeding rate", of, lines(difference, seed), {
    lead: { of: "quantity", line: difference },
    findings: findingsOn("seeding rate"),
    cautions: [blankGainCaution],
  });
}
