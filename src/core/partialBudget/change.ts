/**
 * A change, as a partial budget weighs it: only what it adds and what it takes away, in four quadrants.
 *
 * Money per year means in a year of the area that the change concerns.
 */
import { one, zero, type Decimal } from "../numbers/decimal";
import type { EntryRef } from "../row";
import { money, type Area, type Money, type MoneyPerUnit, type Share, type Years, type YearlyRate } from "../numbers/units";

export const quadrants = ["added returns", "reduced costs", "added costs", "reduced returns"] as const;
export type Quadrant = (typeof quadrants)[number];

/** Whether a quadrant speaks for the change. */
export const speaksFor = (quadrant: Quadrant): boolean => quadrant === "added returns" || quadrant === "reduced costs";

/**
 * What one unit of the crop nets: (price − what moves with it: haul, drying, selling) × the operator's share, less what of its price a
 * flexible rent takes.
 */
export type Grain = {
  readonly price: MoneyPerUnit;
  readonly moving: MoneyPerUnit;
  readonly share: Share;
  /** The part of one more unit's price that is rent, where price × yield is above a base gross; left out: none of it. */
  readonly rentShare?: Share;
};
export function netOfGrain({ price, moving, share, rentShare }: Grain): Money {
  const net = price.minus(moving).times(share);
  return money(rentShare === undefined ? net : net.minus(price.times(rentShare)));
}

export const lineBases = ["per acre", "per year", "lump sum"] as const;
type LineBasis = (typeof lineBases)[number];

export type ChangeLine = {
  readonly quadrant: Quadrant;
  readonly item: string;
  /** `null`: not known yet, as a yield gain that nobody has measured; the net change is then not known either. */
  readonly quantity: Decimal | null;
  readonly unit: string;
  /** Money for one unit, or what a unit of grain nets; `null`: not known yet. */
  readonly price: Money | Grain | null;
  /** "per acre" is per area unit of the workbook. */
  readonly basis: LineBasis;
  /** Years that a lump sum (or an outlay per acre) serves: it is then spread over them with interest. `null`: one year bears it. */
  readonly yearsKept: Years | null;
  /** What is left of it after those years, in all; per area on the basis "per acre". */
  readonly salvage: Money | null;
  /** The row of the table `Changes`; `null` for a line that a layout proposes. */
  readonly source: EntryRef | null;
};

export type Change = {
  readonly name: string;
  /** The area concerned in a year. */
  readonly area: Area;
  /** Interest on capital a year. */
  readonly rate: YearlyRate;
  readonly lines: readonly ChangeLine[];
};

export const isGrain = (price: Money | Grain | null): price is Grain => price !== null && "share" in price;

/** Money for one unit of a line; `null` where it is not known. */
export const priceOf = ({ price }: ChangeLine): Money | null => (isGrain(price) ? netOfGrain(price) : price);

/** Whether a line is paid once and serves for years. */
export const isCapital = ({ basis, yearsKept }: ChangeLine): boolean => yearsKept !== null && basis !== "per year";

type Short = { readonly item: string; readonly unit: string; readonly quantity: Decimal | null; readonly price: Money | Grain | null };

/** A line on the basis "per acre". */
export const perAcre = (quadrant: Quadrant, { item, unit, quantity, price }: Short): ChangeLine => ({
  quadrant,
  item,
  unit,
  quantity,
  price,
  basis: "per acre",
  yearsKept: null,
  salvage: null,
  source: null,
});

/** A line on the basis "per year". */
export const perYear = (quadrant: Quadrant, { item, unit, quantity, price }: Short): ChangeLine => ({
  quadrant,
  item,
  unit,
  quantity,
  price,
  basis: "per year",
  yearsKept: null,
  salvage: null,
  source: null,
});

/** A lump sum that serves for years. */
export const outlay = (
  quadrant: Quadrant,
  { item, unit, quantity, price }: Short,
  yearsKept: Years,
  salvage: Money = money(zero),
): ChangeLine => ({ quadrant, item, unit, quantity, price, basis: "lump sum", yearsKept, salvage, source: null });

/** A cost or return of one amount per area. */
export const amountPerAcre = (quadrant: Quadrant, item: string, amount: Decimal, areaUnit: string): ChangeLine =>
  perAcre(quadrant, { item, unit: areaUnit, quantity: one, price: money(amount) });
