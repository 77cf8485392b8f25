/**
 * Decimals that carry their unit in their type, so that the compiler refuses a price where a cost belongs.
 *
 * "Area" is one acre or one hectare, as the workbook says; "unit" is the crop's yield unit (bu, t, cwt …); "base" is
 * the base unit of one item (lb, gal, seeds …). The tags cost nothing at run time. Write each formula in plain
 * decimals and name its unit once, on the way out.
 */
import { Decimal, type DecimalValue } from "./decimal";

declare const unit: unique symbol;

/** A decimal that carries its unit in its type. */
export type Quantity<Unit extends string> = Decimal & { readonly [unit]: Unit };

/** Money in the workbook's currency. */
export type Money = Quantity<"$">;
/** Acres or hectares. */
export type Area = Quantity<"area">;
export type MoneyPerArea = Quantity<"$/area">;
/** Money per unit of yield: a price of the crop, or a cost that moves with yield. */
export type MoneyPerUnit = Quantity<"$/unit">;
/** A quantity of the crop. */
export type CropQuantity = Quantity<"unit">;
/** Units of the crop per area. */
export type Yield = Quantity<"unit/area">;
/** A quantity of an item, in its base unit. */
export type ItemQuantity = Quantity<"base">;
/** Base units of an item per area. */
export type ItemRate = Quantity<"base/area">;
/** A fraction from 0 to 1. */
export type Share = Quantity<"share">;
/** Points of moisture, e.g. 15.5. */
export type Points = Quantity<"points">;

const quantity = <Unit extends string>(value: DecimalValue) =>
  (typeof value === "string" ? new Decimal(value) : value) as Quantity<Unit>;

export const money = quantity<"$">;
export const area = quantity<"area">;
export const moneyPerArea = quantity<"$/area">;
export const moneyPerUnit = quantity<"$/unit">;
export const cropQuantity = quantity<"unit">;
export const yieldPerArea = quantity<"unit/area">;
export const itemQuantity = quantity<"base">;
export const itemRate = quantity<"base/area">;
export const share = quantity<"share">;
export const points = quantity<"points">;
