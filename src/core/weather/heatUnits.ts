/** Heat units of a day, in the four ways that corn country counts them. */
import { Decimal, larger, smaller, zero } from "../numbers/decimal";

export const heatUnitWays = ["growing degree 86/50", "corn heat units", "base 10 C", "base 5 C"] as const;
export type HeatUnitWay = (typeof heatUnitWays)[number];
export type TemperatureUnit = "F" | "C";

/** The highest and the lowest temperature of a day. */
export type DayTemperatures = { readonly high: Decimal; readonly low: Decimal };

const nine = new Decimal("9");
const five = new Decimal("5");
const freezing = new Decimal("32");
const toC = (fahrenheit: Decimal): Decimal => fahrenheit.minus(freezing).times(five).div(nine);
const toF = (celsius: Decimal): Decimal => celsius.times(nine).div(five).plus(freezing);

/** A temperature in another unit. */
export const inUnit = (value: Decimal, from: TemperatureUnit, to: TemperatureUnit): Decimal =>
  from === to ? value : to === "F" ? toF(value) : toC(value);

const clamped = (value: Decimal, from: Decimal, to: Decimal): Decimal => smaller(larger(value, from), to);
const two = new Decimal("2");
const mean = ({ high, low }: DayTemperatures): Decimal => high.plus(low).div(two);

/** Both temperatures held between 50 and 86 °F, their mean less 50: no day has more than 36. */
const growingDegree = ({ high, low }: DayTemperatures): Decimal =>
  mean({ high: clamped(high, fifty, eightySix), low: clamped(low, fifty, eightySix) }).minus(fifty);
const fifty = new Decimal("50");
const eightySix = new Decimal("86");

/** Ontario's form, °C: the half of the day by a curve above 10, that of the night by a line above 4.4, neither below nothing. */
function cornHeatUnits({ high, low }: DayTemperatures): Decimal {
  const above = high.minus("10");
  const day = high.lte("10") ? zero : larger(above.times("3.33").minus(above.times(above).times("0.084")), zero);
  const night = larger(low.minus("4.4").times("1.8"), zero);
  return day.plus(night).div("2");
}

/** The mean of the day, °C, less a base; nothing below it. */
const aboveBase = (day: DayTemperatures, base: string): Decimal => larger(mean(day).minus(base), zero);

/** Heat units of one day; `unit` is that of its temperatures. */
export function heatUnitsOf(way: HeatUnitWay, { high, low }: DayTemperatures, unit: TemperatureUnit): Decimal {
  const as = (to: TemperatureUnit) => ({ high: inUnit(high, unit, to), low: inUnit(low, unit, to) });
  switch (way) {
    case "growing degree 86/50":
      return growingDegree(as("F"));
    case "corn heat units":
      return cornHeatUnits(as("C"));
    case "base 10 C":
      return aboveBase(as("C"), "10");
    case "base 5 C":
      return aboveBase(as("C"), "5");
  }
}

/** The way that is usual where nothing is set. */
export const usualWay = (unit: TemperatureUnit): HeatUnitWay => (unit === "F" ? "growing degree 86/50" : "corn heat units");
