/**
 * Days of a growing season. A planting date counts by its day in a year without a leap day, so that a table's date is
 * the same day in every year.
 */
import { Decimal } from "../numbers/decimal";
import type { IsoDate } from "../row";

/** A day of any year as `MM-DD`. */
export type MonthDay = string & { readonly __brand?: "MonthDay" };

const daysInMonth = ["31", "28", "31", "30", "31", "30", "31", "31", "30", "31", "30", "31"].map((days) => new Decimal(days));

/** The day of the year, 1 to 365; 29 February counts as 1 March. */
export function dayOfYear(date: IsoDate | MonthDay): Decimal {
  const [month, day] = date.split("-").slice(-2) as [string, string];
  let days = new Decimal(day);
  for (const [index, length] of daysInMonth.entries()) if (`${index + 1}`.padStart(2, "0") < month) days = days.plus(length);
  return days;
}

/** The month and day of a day of the year. */
export function monthDayOf(dayOfTheYear: Decimal): MonthDay {
  let left = dayOfTheYear;
  for (const [index, length] of daysInMonth.entries()) {
    if (left.lte(length)) return `${String(index + 1).padStart(2, "0")}-${left.toFixed(0).padStart(2, "0")}`;
    left = left.minus(length);
  }
  throw new RangeError(`a year has no day ${dayOfTheYear}`);
}
