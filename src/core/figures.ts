/**
 * What the core says of the fields, crops and items of a season. Money is in the workbook's currency, unrounded; `null` is "there
 * is no answer".
 */
import type { FieldLine } from "./budgetLines/fieldLine";
import type { RentStep } from "./flexibleRent";
import type { Decimal } from "./numbers/decimal";
import type { Kind, Layer } from "./kinds";
import type { EntryRef } from "./row";
import type { Weighed } from "./weighed";
import type { Area, CropQuantity, Money, MoneyPerArea, MoneyPerUnit, Share, Yield, YieldUnit } from "./numbers/units";

export type Stage = "plan" | "outlook" | "final";

/** One figure for each cost layer. */
export type PerLayer<Value> = { readonly [L in Layer]: Value };

/** A figure for each kind that costs something, and for each layer. */
export type ByKindAndLayer<Value> = { readonly byKind: ReadonlyMap<Kind, Value>; readonly layers: PerLayer<Value> };

/**
 * One cost of one field, with the entries that made it.
 * `amount` is money on the whole field that does not move with yield; `perUnit` is money per unit of the operator's
 * crop that does. One of the two is zero.
 */
export type Charge = {
  readonly kind: Kind;
  /** The item, operation or cost as the entry names it. */
  readonly name: string;
  readonly amount: Money;
  readonly perUnit: MoneyPerUnit;
  /** Whether it was done or bought although the plan of the field has nothing of it. */
  readonly unplanned: boolean;
  /** Whether money is paid for it. */
  readonly cash: boolean;
  readonly entries: readonly EntryRef[];
};

/** The figures of a field or a crop at one stage, per area unit. */
export type Budget = {
  readonly area: Area;
  readonly yields: {
    readonly goal: Yield;
    readonly outlook: Yield;
    /** `null` where a field concerned has no proven yield. */
    readonly proven: Yield | null;
    /** The yield that these figures rest on: goal in the plan, outlook in the outlook, harvested in the final. */
    readonly used: Yield;
  };
  /** Expected price per unit of yield. */
  readonly price: MoneyPerUnit;
  /** The operator's share of the crop, yield-weighted where fields differ. */
  readonly operatorShare: Share;
  /** Cost per area that does not move with yield, per kind and layer (F). */
  readonly fixed: ByKindAndLayer<MoneyPerArea>;
  /** Cost per unit of the operator's crop that moves with yield, per kind and layer (v). */
  readonly moving: ByKindAndLayer<MoneyPerUnit>;
  /** What the buyer takes off the price of a unit of the operator's crop for the test weight of the loads; nothing in the plan. */
  readonly dock: MoneyPerUnit;
  readonly otherIncomePerArea: MoneyPerArea;
  /** How a flexible rent goes by price × yield; no steps where no rent does. */
  readonly rent: readonly RentStep[];
  /** Rent above the base rent, at this yield and the price entered; in no `fixed`, and in every cost of cash rent. */
  readonly rentAboveBase: MoneyPerArea;
  readonly costPerArea: ByKindAndLayer<MoneyPerArea>;
  /**
   * Term interest per area that stays in the full layer, because no machine ownership and no land charge stands for the
   * capital of the field; zero where it leaves it.
   */
  readonly interestInFull: MoneyPerArea;
  readonly costPerUnit: PerLayer<MoneyPerUnit | null>;
  readonly breakEvenPrice: PerLayer<MoneyPerUnit | null>;
  readonly breakEvenYield: PerLayer<Yield | null>;
  /** The break-evens at every yield that is known, and at the expected and the low price, for the tables that show them all. */
  readonly breakEvens: readonly BreakEvens[];
  readonly incomePerArea: MoneyPerArea;
  readonly netPerArea: PerLayer<MoneyPerArea>;
};

/**
 * The break-evens that rest on one yield and one price: the price that pays the cost at that yield, and the yield that
 * pays it at that price.
 */
export type BreakEvens = {
  readonly yieldOf: "goal" | "outlook" | "proven" | "harvested";
  readonly yield: Yield;
  readonly priceOf: "expected" | "low";
  readonly price: MoneyPerUnit;
  readonly breakEvenPrice: PerLayer<MoneyPerUnit | null>;
  readonly breakEvenYield: PerLayer<Yield | null>;
  readonly netPerArea: PerLayer<MoneyPerArea>;
};

export type StageFigures = {
  readonly budget: Budget;
  readonly charges: readonly Charge[];
  /** What each kind costs on the whole field, apart from what moves with yield. */
  readonly amountByKind: ReadonlyMap<Kind, Money>;
  /** Whether machine ownership or a land charge stands for the capital in the field, so that term interest leaves its full layer. */
  readonly chargesCapital: boolean;
};

/**
 * A kind with a budget line in a field: money of the operator on the whole field, what moves with yield at the yield of the
 * outlook; of the budget and the rows at the goal.
 */
export type LinedKind = {
  readonly kind: Kind;
  /** What the line plans. */
  readonly budgeted: Money;
  /** What the plan's rows of the kind come to beside it. */
  readonly rows: Money;
  /** Done, billed, and bought as it is charged. */
  readonly soFar: Money;
  /** What of the outlook is still to come. */
  readonly left: Money;
  readonly outlook: Money;
  /** What the line has beyond rows and bills in the outlook; none once it is all in. */
  readonly rest: {
    readonly amount: Money;
    /** Whether it moves with yield. */ readonly isMoving: boolean;
    /** Per unit of the operator's crop, of what moves with yield. */ readonly perUnit: Decimal;
    readonly line: FieldLine;
  };
  readonly allIn: boolean;
};

export type FieldFigures = {
  readonly field: string;
  readonly crop: string;
  readonly area: Area;
  readonly plan: StageFigures;
  readonly outlook: StageFigures;
  /** `null` until the field's harvest is done. */
  readonly final: StageFigures | null;
  /** The loads so far; `null` before the first. */
  readonly weighed: Weighed | null;
  /** The kinds that have a budget line in it. */
  readonly lined: readonly LinedKind[];
  /** Planned work that its last load found undone; none before the harvest is done. */
  readonly neverDone: readonly NeverDone[];
  /** What was and will be worked after its last load, for the next crop: paid this season, and in none of these figures. */
  readonly nextCrop: readonly Charge[];
};

/** Planned work of one item or operation that never came about. */
export type NeverDone = { readonly name: string; readonly areaPasses: Area; readonly entries: readonly EntryRef[] };

export type SalesFigures = {
  readonly sold: CropQuantity;
  /** What is sold at its own prices. */
  readonly received: Money;
  readonly averagePrice: MoneyPerUnit | null;
  /** Operator's crop at the outlook yield less what is sold; negative where more is sold than is expected. */
  readonly unsold: CropQuantity;
  readonly priceNeeded: PerLayer<MoneyPerUnit | null>;
  /** What comes in at each stage with what is sold; `null` until the crop has that stage. */
  readonly withSold: { readonly [S in Stage]: WithSold | null } & { readonly plan: WithSold; readonly outlook: WithSold };
  readonly entries: readonly EntryRef[];
};

/** Income and net return with what is sold at its own prices and the rest of the yield at the price entered. */
export type WithSold = { readonly incomePerArea: MoneyPerArea; readonly netPerArea: PerLayer<MoneyPerArea> };

export type CropFigures = {
  readonly crop: string;
  readonly area: Area;
  /** Its part of the farm's land: an acre that another crop uses as well is half an acre of each. */
  readonly land: Area;
  readonly yieldUnit: YieldUnit;
  readonly plan: Budget;
  readonly outlook: Budget;
  /** `null` until the harvest of every field of the crop is done. */
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
  readonly averagePrice: Money | null;
  readonly planPrice: Money | null;
  readonly bought: Decimal;
  readonly used: Decimal;
  /** What the rest of the plan takes. */
  readonly needed: Decimal;
  /** used + needed − bought where that is positive, and what it will cost at the best known price. */
  readonly short: Decimal;
  readonly shortCost: Money | null;
  readonly left: Decimal;
  readonly entries: readonly EntryRef[];
};
