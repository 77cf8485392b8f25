import { Decimal } from "../numbers/decimal";
import type { AreaUnit } from "../numbers/units";

/** Horsepower in watts: 550 foot-pounds a second, from the exact foot, pound and standard gravity. */
const horsepower = new Decimal("550").times("0.3048").times("0.45359237").times("9.80665");
const gallon = new Decimal("3.785411784");
const gallonsPerHorsepowerHour = new Decimal("0.044");

/**
 * Diesel an hour at the mean load of a year's work, for one unit of PTO power: 0.044 gallons an hour for a horsepower
 * (Iowa State University Extension PM 710), the same in litres for a kilowatt (0.2234).
 */
const dieselPerPower: Readonly<Record<AreaUnit, Decimal>> = {
  ac: gallonsPerHorsepowerHour,
  ha: gallonsPerHorsepowerHour.times(gallon).div(horsepower.div("1000")),
};

/** Oil, filters and grease as a fraction of the cost of fuel (PM 710). */
export const lubePerFuel = new Decimal("0.15");

/** Gallons (litres) of diesel an hour. */
export const dieselPerHour = (unit: AreaUnit, power: Decimal): Decimal => power.times(dieselPerPower[unit]);
