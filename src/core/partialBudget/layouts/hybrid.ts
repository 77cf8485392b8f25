import { blankGainCaution } from "../../cautions";
import { hundred, one, type Decimal } from "../../numbers/decimal";
import { findingsOn } from "../../tables/trialFindings";
import {
  moneyPerUnit,
  type Money,
  type MoneyPerArea,
  type MoneyPerUnit,
  type Points,
  type SeedsPerArea,
  type Yield,
} from "../../numbers/units";
import { amountPerAcre, perAcre, type ChangeLine, type Grain, type Quadrant } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

/** A hybrid or variety as it is sold and as it comes in. */
export type HybridFacts = {
  readonly seedsPerArea: SeedsPerArea;
  readonly pricePerUnit: Money;
  readonly seedsPerUnit: Decimal;
  readonly traitFee: MoneyPerArea | null;
  /** Points of moisture above standard at harvest, never below zero. */
  readonly wetPoints: Points;
  /** Discount for test weight and the like, per unit of the crop. */
  readonly discount: MoneyPerUnit | null;
};

export type AnotherHybrid = Circumstances & {
  readonly now: HybridFacts;
  readonly other: HybridFacts;
  /** Yield of the present one, at standard moisture. */
  readonly yieldNow: Yield;
  /** Yield of the other less yield of the present one; blank until there are trials to stand behind. */
  readonly yieldGain: Yield | null;
  /** Money per unit of the crop and point of moisture above standard. */
  readonly dryingPerPoint: MoneyPerUnit;
  /** The standard from which points count where the charge is on wet units; `null` where it is on dry ones, or none is entered. */
  readonly wetStandard: Points | null;
};

/**
 * Another hybrid. Yields are at standard moisture, so that shrink is in them already and is not charged again; drying
 * is charged by the point. The present yield bears the difference in drying and discount, the gain bears all of the
 * other's. `grain` is without drying and discount.
 */
export function anotherHybrid(of: AnotherHybrid): Layout {
  const { now, other, yieldNow, grain, dryingPerPoint, wetStandard } = of;
  /** Units that are charged for one dry unit. */
  const charged = (wet: Points): Decimal =>
    wetStandard === null ? one : hundred.minus(wetStandard).div(hundred.minus(wetStandard).minus(wet));
  const perUnit = (hybrid: HybridFacts) => ({
    drying: hybrid.wetPoints.times(dryingPerPoint).times(charged(hybrid.wetPoints)),
    discount: hybrid.discount ?? moneyPerUnit("0"),
  });
  const ofOther = perUnit(other);
  const gainGrain: Grain = { ...grain, moving: moneyPerUnit(grain.moving.plus(ofOther.drying).plus(ofOther.discount)) };
  const gain = yieldGain({ ...of, grain: gainGrain }, of.yieldGain);
  const onPresentYield = (item: string, more: Quadrant, less: Quadrant, difference: Decimal): ChangeLine | null =>
    given(difference.times(yieldNow).times(grain.share), (perArea) =>
      amountPerAcre(perArea.gt("0") ? more : less, item, perArea.abs(), of.areaUnit),
    );
  const seed = (quadrant: Quadrant, item: string, hybrid: HybridFacts): ChangeLine =>
    perAcre(quadrant, {
      item,
      unit: `units/${of.areaUnit}`,
      quantity: hybrid.seedsPerArea.div(hybrid.seedsPerUnit),
      price: hybrid.pricePerUnit,
    });
  return layout(
    "Another hybrid",
    of,
    lines(
      gain,
      seed("reduced costs", "Seed of the present hybrid", now),
      given(now.traitFee, (fee) => amountPerAcre("reduced costs", "Trait fee of the present hybrid", fee, of.areaUnit)),
      seed("added costs", "Seed of the other hybrid", other),
      given(other.traitFee, (fee) => amountPerAcre("added costs", "Trait fee of the other hybrid", fee, of.areaUnit)),
      onPresentYield("Drying of the present yield", "added costs", "reduced costs", ofOther.drying.minus(perUnit(now).drying)),
      onPresentYield(
        "Test-weight discount on the present yield",
        "reduced returns",
        "added returns",
        ofOther.discount.minus(perUnit(now).discount),
      ),
    ),
    {
      lead: { of: "quantity", line: gain },
      findings: findingsOn("hybrid"),
      cautions: [
        blankGainCaution,
        "Compare over several places and years, and look at the error of the trial before a difference of a few bushels.",
      ],
    },
  );
}
