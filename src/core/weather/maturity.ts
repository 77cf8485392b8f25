/** When what was planted comes to black layer: projected by the earlier years of the record. An estimate. */
import { zero, type Decimal } from "../numbers/decimal";
import { nextDay } from "../numbers/day";
import type { IsoDate } from "../row";
import type { PlaceRecord } from "./record";

export type Maturity = {
  /** By the mean of the earlier years, or the day itself once the sum is there. */
  readonly date: IsoDate;
  /**
   * As each earlier year went on from here: the earliest, and the latest; `late` is `null` where not every year comes to it by
   * the end of the year.
   */
  readonly early: IsoDate;
  readonly late: IsoDate | null;
};

/**
 * The day on which so many heat units more have come after a day: by the mean of the earlier years, and as each of them
 * went. A day that a year lacks takes the mean.
 *
 * @returns `null` where the mean does not come to it by the end of the year, or there are no earlier years
 */
export function projectedMaturity(record: PlaceRecord, after: IsoDate, needed: Decimal): Maturity | null {
  const end = `${after.slice(0, 4)}-12-31`;
  const reach = (units: (date: IsoDate) => Decimal | null): IsoDate | null => {
    let left = needed;
    for (let date = nextDay(after); date <= end; date = nextDay(date)) {
      const here = units(date);
      if (here === null) return null;
      left = left.minus(here);
      if (left.lte(zero)) return date;
    }
    return null;
  };
  const date = reach((day) => record.normal(day));
  if (date === null) return null;
  const years = record.earlier(after).map((year) => reach((day) => record.heatUnitsIn(year, day) ?? record.normal(day)));
  const there = years.flatMap((year) => year ?? []).sort();
  return { date, early: there[0] ?? date, late: there.length < years.length ? null : (there.at(-1) ?? date) };
}
