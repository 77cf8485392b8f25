/**
 * How figures are rounded when they are shown, in the pane, on a sheet and on the terminal alike.
 *
 * Money rounds half away from zero to the cent. A price or a yield that is needed is rounded up, so that what is shown
 * pays the cost: the price to the cent, the yield to a tenth. What lies beyond the ninth decimal is not rounded up: it is
 * the end of a division, and a formula in a cell does not have it.
 */
import { Decimal } from "../core/numbers/decimal";

const halfUp = Decimal.ROUND_HALF_UP;
const up = Decimal.ROUND_CEIL;

const rounded = (value: Decimal, places: 0 | 1 | 2, how: typeof halfUp | typeof up | typeof Decimal.ROUND_FLOOR): Decimal => {
  const shown = value.toDecimalPlaces(places, how);
  return shown.isZero() ? shown.abs() : shown;
};
const roundedUp = (value: Decimal, places: 1 | 2): Decimal => rounded(value.toDecimalPlaces(9, halfUp), places, up);

export const shownMoney = (value: Decimal): Decimal => rounded(value, 2, halfUp);
export const shownPriceNeeded = (value: Decimal): Decimal => roundedUp(value, 2);
export const shownYield = (value: Decimal): Decimal => rounded(value, 1, halfUp);
/** A yield needed of less than nothing is no yield at all. */
export const shownYieldNeeded = (value: Decimal): Decimal => (value.isNegative() ? value.minus(value) : roundedUp(value, 1));
export const shownQuantity = (value: Decimal): Decimal => rounded(value, 2, halfUp);
/** A stand to the nearest hundred plants: a count knows no more. */
export const shownStand = (value: Decimal): Decimal => value.toNearest("100", halfUp);
/** A price below which something pays: rounded down, for the same reason. */
export const shownPriceAtMost = (value: Decimal): Decimal => rounded(value.toDecimalPlaces(9, halfUp), 2, Decimal.ROUND_FLOOR);
/** A yield that may be given up at most: rounded down, so that what is shown still pays. */
export const shownYieldAtMost = (value: Decimal): Decimal => value.toDecimalPlaces(9, halfUp).toDecimalPlaces(1, Decimal.ROUND_FLOOR);
