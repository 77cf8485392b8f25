/** Seed from the stand that is wanted, and what it costs. */
import { Decimal } from "../numbers/decimal";
import {
  money,
  moneyPerArea,
  seedsPerArea,
  type Area,
  type AreaUnit,
  type Money,
  type MoneyPerArea,
  type PlantsPerArea,
  type SeedsPerArea,
  type Share,
} from "../numbers/units";
import { squares } from "./standCount";

const pound = new Decimal("453.59237");

/**
 * Seeds to drop for a stand: target ÷ (germination × survival of what germinates).
 *
 * @throws RangeError where either share is zero or less, because then no rate gives a stand
 */
export function seedingRate(target: PlantsPerArea, germination: Share, survival: Share): SeedsPerArea {
  if (germination.lte("0") || survival.lte("0")) throw new RangeError("germination and survival must be above zero");
  return seedsPerArea(target.div(germination).div(survival));
}

/** Cost of seed per area: price of a unit × rate ÷ seeds in a unit (80,000 kernels of corn, 140,000 soybeans as a rule). */
export const seedCost = (pricePerUnit: Money, rate: SeedsPerArea, seedsPerUnit: Decimal): MoneyPerArea =>
  moneyPerArea(pricePerUnit.times(rate).div(seedsPerUnit));

/** Units of seed that an area takes, and how many to order, whole ones. */
export function seedUnits(land: Area, rate: SeedsPerArea, seedsPerUnit: Decimal): { readonly exact: Decimal; readonly whole: Decimal } {
  const exact = land.times(rate).div(seedsPerUnit);
  return { exact, whole: exact.toDecimalPlaces(0, Decimal.ROUND_UP) };
}

/** Distance from seed to seed in the row: inches (centimetres) at a row width in inches (centimetres). */
export function seedSpacing(rate: SeedsPerArea, rowWidth: Decimal, unit: AreaUnit): Decimal {
  const squareSmall = squares[unit].times(unit === "ac" ? "144" : "10000");
  return squareSmall.div(rowWidth.times(rate));
}

/** Pounds (kilograms) of seed per area, from the number of seeds in a pound (kilogram). */
export const seedWeight = (rate: SeedsPerArea, seedsPerWeight: Decimal): Decimal => rate.div(seedsPerWeight);

/** Seeds in a pound from the weight of a thousand in grams. */
export const seedsPerPound = (thousandKernelWeight: Decimal): Decimal => pound.times("1000").div(thousandKernelWeight);

/**
 * Pounds per acre by the rule of the Prairies: plants per square foot × thousand-kernel weight in grams ÷ survival ÷ 10.
 * The exact divisor is 10.41, so the rule is 4.1 % high; `prairieSeedWeightExact` is the answer without it.
 */
export const prairieSeedWeight = (plantsPerSquareFoot: Decimal, thousandKernelWeight: Decimal, survival: Share): Decimal =>
  plantsPerSquareFoot.times(thousandKernelWeight).div(survival).div("10");

/** Pounds per acre for plants per square foot, without the rounding of the Prairie rule. */
export const prairieSeedWeightExact = (plantsPerSquareFoot: Decimal, thousandKernelWeight: Decimal, survival: Share): Decimal =>
  plantsPerSquareFoot.times(squares.ac).div(survival).div(seedsPerPound(thousandKernelWeight));

/** Seeds that one unit of the crop pays for: price ÷ the price of a seed. */
export const seedsForOneUnitOfCrop = (price: Money, pricePerUnit: Money, seedsPerUnit: Decimal): Decimal =>
  price.div(pricePerUnit.div(seedsPerUnit));

/** Price of a unit of seed that a cost per area and a rate imply. */
export const impliedUnitPrice = (cost: MoneyPerArea, rate: SeedsPerArea, seedsPerUnit: Decimal): Money =>
  money(cost.div(rate).times(seedsPerUnit));
