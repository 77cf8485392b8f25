/** Grain that comes in wetter than it is sold: how much it is when dry, and what drying costs. */
import { Decimal, hundred, one } from "./numbers/decimal";
import type { Wetness } from "./season";
import { cropQuantity, moneyPerUnit, type CropQuantity, type Money, type MoneyPerUnit, type Points, type Share } from "./numbers/units";

/** What one unit of wet grain is at the moisture to which it is dried: (100 − wet) ÷ (100 − dry). */
const dryPerWet = (wet: Points, dry: Points): Decimal => hundred.minus(wet).div(hundred.minus(dry));

/** Dry grain from wet, by the water alone. */
export const dryQuantity = (quantity: CropQuantity, wet: Points, dry: Points): CropQuantity =>
  cropQuantity(quantity.times(dryPerWet(wet, dry)));

/** Wet grain to be cut for so much dry grain, a share of it lost in handling. */
export const wetQuantity = (quantity: CropQuantity, wet: Points, dry: Points, handlingLoss: Share): CropQuantity =>
  cropQuantity(quantity.div(dryPerWet(wet, dry)).div(one.minus(handlingLoss)));

/** A load that was weighed, or typed, wet or dry: how much of it there is of both. Grain drier than the standard is not stretched. */
export function wetAndDry(
  typed: CropQuantity,
  are: Wetness,
  moisture: Points | null,
  standard: Points | null,
): Readonly<Record<Wetness, CropQuantity>> {
  if (moisture === null || standard === null || moisture.lte(standard)) return { wet: typed, dry: typed };
  return are === "wet"
    ? { wet: typed, dry: dryQuantity(typed, moisture, standard) }
    : { wet: cropQuantity(typed.div(dryPerWet(moisture, standard))), dry: typed };
}

/** Percent of the weight that one point of water is: 100 ÷ (100 − dry), 1.18 for corn at 15.5. An elevator's own shrink is higher. */
export const shrinkPerPoint = (dry: Points): Decimal => hundred.div(hundred.minus(dry));

/** Propane for a bushel and a point: 0.022 gallons (North Dakota State University) or 0.02 (South Dakota State University); energy only. */
export const propanePerBushelPoint = { northDakota: new Decimal("0.022"), southDakota: new Decimal("0.02") } as const;

/** Energy cost of drying a unit of grain by one point. */
export const dryingPerPoint = (fuelPrice: Money, fuelPerUnitAndPoint: Decimal): MoneyPerUnit =>
  moneyPerUnit(fuelPrice.times(fuelPerUnitAndPoint));
