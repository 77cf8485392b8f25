/**
 * Decimals that carry their unit in their type, so that the compiler refuses a price where a cost belongs.
 *
 * "Area" is one acre or one hectare, as the workbook says; "unit" is the crop's yield unit (bu, t, cwt …); "base" is
 * the base unit of one item (lb, gal, seeds …). The tags cost nothing at run time. Write each formula in plain
 * decimals and name its unit once, on the way out.
 */
import { Decimal, type DecimalValue } from "./decimal";

/** What areas of a workbook are counted in. */
export type AreaUnit = "ac" | "ha";
/** What a crop is sold and its yield counted in. */
export type YieldUnit = "bu" | "t" | "lb" | "cwt" | "ton" | "kg";

declare const unit: unique symbol;

/** A decimal that carries its unit in its type. */
type Quantity<Unit extends string> = Decimal & { readonly [unit]: Unit };

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
/** Hours of work, of a machine or of a person. */
export type Hours = Quantity<"h">;
export type Years = Quantity<"years">;
export type MoneyPerHour = Quantity<"$/h">;
export type MoneyPerYear = Quantity<"$/year">;
export type AreaPerHour = Quantity<"area/h">;
export type PlantsPerArea = Quantity<"plants/area">;
export type SeedsPerArea = Quantity<"seeds/area">;
/** A fraction a year, e.g. 0.05; real where its doc comment says so. */
export type YearlyRate = Quantity<"1/year">;
/** Yield as a fraction of what the best date and stand of a table give. */
export type RelativeYield = Quantity<"relative yield">;

const quantity = <Unit extends string>(value: DecimalValue) => (typeof value === "string" ? new Decimal(value) : value) as Quantity<Unit>;

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
export const hours = quantity<"h">;
export const years = quantity<"years">;
export const moneyPerHour = quantity<"$/h">;
export const moneyPerYear = quantity<"$/year">;
export const areaPerHour = quantity<"area/h">;
export const plantsPerArea = quantity<"plants/area">;
export const seedsPerArea = quantity<"seeds/area">;
export const yearlyRate = quantity<"1/year">;
export const relativeYield = quantity<"relative yield">;
