/** What a hybrid brings and costs on an area, of what moves from one hybrid to another. */
import { wetAndDry } from "../drying";
import { zero, type Decimal } from "../numbers/decimal";
import { cropQuantity, moneyPerArea, type MoneyPerArea, type MoneyPerUnit, type Points } from "../numbers/units";
import type { Crop, Settings } from "../season";
import { pointsAbove } from "../weighed";
import type { HybridTrial } from "./hybridEntries";

/** What the crop is worth and what drying it costs. */
export type Market = {
  readonly price: MoneyPerUnit;
  readonly standardMoisture: Points | null;
  /** Money for a point above standard of a unit, wet or dry. */
  readonly dryingPerPoint: Decimal;
  readonly countedOn: Settings["dryingCountedOn"];
};

export const marketOf = (crop: Crop, { dryingChargePerPoint, dryingCountedOn }: Settings): Market => ({
  price: crop.price,
  standardMoisture: crop.standardMoisture,
  dryingPerPoint: dryingChargePerPoint ?? zero,
  countedOn: dryingCountedOn,
});

/** Whether moisture moves money: a charge is entered, and a standard from which it counts. */
export const isDried = ({ dryingPerPoint, standardMoisture }: Market): boolean => !dryingPerPoint.isZero() && standardMoisture !== null;

/**
 * A trial's yield in money, before seed and fees:
 *
 *     dry yield × (price − dock) − points above standard × charge × bushels, wet or dry as set
 *
 * @param takesDock whether the test-weight dock is taken off: not where the other hybrid of a pair has none known
 * @returns `null` where drying is charged and the moisture is not known
 */
export function trialNet(trial: Pick<HybridTrial, "yield" | "moisture" | "dock">, market: Market, takesDock: boolean): MoneyPerArea | null {
  const { moisture, dock, yield: dry } = trial;
  if (isDried(market) && moisture === null) return null;
  const units = wetAndDry(cropQuantity(dry), "dry", moisture, market.standardMoisture)[market.countedOn];
  const drying = pointsAbove(moisture, market.standardMoisture).times(market.dryingPerPoint).times(units);
  const off = takesDock && dock !== null && dock !== "unknown" ? dock : zero;
  return moneyPerArea(dry.times(market.price.minus(off)).minus(drying));
}
