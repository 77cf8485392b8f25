/** Hybrids on offer, and what hybrids did in trials, as the grower enters them. */
import type { Decimal } from "../numbers/decimal";
import type { Money, MoneyPerArea, MoneyPerUnit, PlantsPerArea, Points, Share, Yield } from "../numbers/units";
import type { EntryRef } from "../row";

/** A hybrid on offer. */
export type Hybrid = {
  readonly name: string;
  /** The crop that it is of; `null`: nothing says it. */
  readonly crop: string | null;
  readonly pricePerBag: Money | null;
  readonly seedsPerBag: Decimal | null;
  /** `null`: none is entered. */
  readonly traitFee: MoneyPerArea | null;
  /** From planting to black layer, by its seller; `null`: not entered. */
  readonly heatUnits: Decimal | null;
  /** Its rating in days, by its seller; it is shown, and no date follows from it. */
  readonly days: Decimal | null;
  /** Whether the grower holds the others against it. */
  readonly isCheck: boolean;
  readonly source: EntryRef;
};

/** One hybrid at one trial: one plot or strip of it, or their mean as it is printed. */
export type HybridTrial = {
  readonly trial: string;
  /** `null`: not said. A trial of two years is two trials. */
  readonly year: string | null;
  readonly hybrid: string;
  readonly crop: string;
  /** At the crop's standard moisture. */
  readonly yield: Yield;
  /** As harvested, points. */
  readonly moisture: Points | null;
  /** Pounds in a bushel. */
  readonly testWeight: Decimal | null;
  /**
   * What buyers take off a unit, by the grower's own table; `null`: no table speaks of the crop; "unknown": one does, and the test
   * weight is blank or outside it.
   */
  readonly dock: MoneyPerUnit | "unknown" | null;
  readonly stand: PlantsPerArea | null;
  readonly lodged: Share | null;
  /** Least significant difference of the trial, as printed. */
  readonly lsd: Yield | null;
  /** Who ran it. */
  readonly by: string | null;
  readonly source: EntryRef;
};
