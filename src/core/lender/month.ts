/** Calendar months, and walking through them. */
import { Decimal, one } from "../numbers/decimal";
import type { IsoDate } from "../row";

/** A month as `YYYY-MM`. */
export type Month = string & { readonly __brand?: "Month" };

export const monthOf = (date: IsoDate): Month => date.slice(0, 7);

/** The month so many months later. */
export function monthsLater(month: Month, months: Decimal): Month {
  const [year, inYear] = month.split("-") as [string, string];
  const counted = new Decimal(year).times("12").plus(inYear).minus(one).plus(months);
  const years = counted.div("12").floor();
  return `${years.toFixed().padStart(4, "0")}-${counted.minus(years.times("12")).plus(one).toFixed().padStart(2, "0")}`;
}

/** All months from the first to the last, both included. */
export function monthsBetween(first: Month, last: Month): readonly Month[] {
  const months: Month[] = [];
  for (let month = first; month <= last; month = monthsLater(month, one)) months.push(month);
  return months;
}

/** Years that a date of a season may be away from its year: seed paid in the autumn before, grain delivered the year after. */
const monthsApart = new Decimal("24");

/** The first and the last month that can be of a season: two years before its year to two years after it. */
export function monthsOfSeason(seasonYear: string): { readonly first: Month; readonly last: Month } {
  return { first: monthsLater(`${seasonYear}-01`, monthsApart.neg()), last: monthsLater(`${seasonYear}-12`, monthsApart) };
}
