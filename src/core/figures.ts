/** What the core says of a season. Money is in the workbook's currency, unrounded; `null` is "there is no answer". */
import type { Decimal } from "./decimal";
import type { Kind, Layer } from "./kinds";
import type { EntryRef, YieldUnit } from "./season";

export type Stage = "plan" | "outlook" | "final";

/** One figure for each cost layer. */
export type PerLayer<Value = Decimal> = { readonly [L in Layer]: Value };

/**
 * One cost of one field, with the entries that made it.
 * `amount` is money on the whole field that does not move with yield; `perUnit` is money per unit of the operator's
 * crop that does. One of the two is zero.
 */
export type Charge = {
  readonly kind: Kind;
  /** The item, operation or cost as the entry names it. */
  readonly name: string;
  readonly amount: Decimal;
  readonly perUnit: Decimal;
  readonly entries: readonly EntryRef[];
};

/** The figures of a field or a crop at one stage, per area unit. */
export type Budget = {
  readonly area: Decimal;
  readonly yields: {
    readonly goal: Decimal;
    readonly outlook: Decimal;
    /** `null` where a field concerned has no proven yield. */
    readonly proven: Decimal | null;
    /** The yield that these figures rest on: goal in the plan, outlook in the outlook, harvested in the final. */
    readonly used: Decimal;
  };
  /** Expected price per unit of yield. */
  readonly price: Decimal;
  /** The operator's share of the crop, yield-weighted where fields differ. */
  readonly operatorShare: Decimal;
  /** Cost per area that does not move with yield, per kind and layer (F). */
  readonly fixed: { readonly byKind: ReadonlyMap<Kind, Decimal>; readonly layers: PerLayer };
  /** Cost per unit of the operator's crop that moves with yield, per kind and layer (v). */
  readonly moving: { readonly byKind: ReadonlyMap<Kind, Decimal>; readonly layers: PerLayer };
  readonly otherIncomePerArea: Decimal;
  readonly costPerArea: { readonly byKind: ReadonlyMap<Kind, Decimal>; readonly layers: PerLayer };
  readonly costPerUnit: PerLayer<Decimal | null>;
  readonly breakEvenPrice: PerLayer<Decimal | null>;
  readonly breakEvenYield: PerLayer<Decimal | null>;
  readonly incomePerArea: Decimal;
  readonly netPerArea: PerLayer;
};

export type StageFigures = { readonly budget: Budget; readonly charges: readonly Charge[] };

export type FieldFigures = {
  readonly field: string;
  readonly crop: string;
  readonly area: Decimal;
  readonly plan: StageFigures;
  readonly outlook: StageFigures;
  /** `null` until the field is harvested. */
  readonly final: StageFigures | null;
};

export type SalesFigures = {
  readonly sold: Decimal;
  readonly averagePrice: Decimal | null;
  /** Operator's crop at the outlook yield less what is sold; negative where more is sold than is expected. */
  readonly unsold: Decimal;
  readonly priceNeeded: PerLayer<Decimal | null>;
  readonly entries: readonly EntryRef[];
};

export type CropFigures = {
  readonly crop: string;
  readonly area: Decimal;
  readonly yieldUnit: YieldUnit;
  readonly plan: Budget;
  readonly outlook: Budget;
  /** `null` until every field of the crop is harvested. */
  readonly final: Budget | null;
  readonly sales: SalesFigures;
  readonly fields: readonly FieldFigures[];
};

/** What is bought, used and still needed of one item, in packs. */
export type ItemFigures = {
  readonly item: string;
  readonly kind: Kind;
  /** The pack's name, or the base unit where the item is not packed. */
  readonly unit: string;
  /** Value ÷ quantity of this season's purchases, per pack; plan price where nothing is bought; `null` where neither is known. */
  readonly averagePrice: Decimal | null;
  readonly planPrice: Decimal | null;
  readonly bought: Decimal;
  readonly used: Decimal;
  /** What the rest of the plan takes. */
  readonly needed: Decimal;
  /** used + needed − bought where that is positive, and what it will cost at the best known price. */
  readonly short: Decimal;
  readonly shortCost: Decimal | null;
  readonly left: Decimal;
  readonly entries: readonly EntryRef[];
};

export type SeasonFigures = {
  readonly crops: readonly CropFigures[];
  readonly items: readonly ItemFigures[];
};
