/** The first killing frost of past autumns. */
import { Decimal, sum } from "../numbers/decimal";
import type { IsoDate } from "../row";
import { dayOfYear, monthDayOf, type MonthDay } from "../stand/monthDay";
import { inUnit, type TemperatureUnit } from "./heatUnits";
import type { WeatherDay } from "./record";

export type Frost = { readonly earliest: MonthDay; readonly median: MonthDay; /** How many autumns tell it. */ readonly years: Decimal };

/** At this low, °F to a tenth, corn is killed within minutes (NCH-57); the first one after 1 July counts. −2.2 °C is 28. */
const killing = new Decimal("28");

/** The first killing frost of each year before a season, from the days of one place. */
export function firstFrosts(days: readonly WeatherDay[], unit: TemperatureUnit, before: string): readonly IsoDate[] {
  const byYear = new Map<string, IsoDate>();
  for (const { date, low } of days) {
    const year = date.slice(0, 4);
    if (year >= before || low === null || date.slice(5) <= "07-01" || inUnit(low, unit, "F").toDecimalPlaces(1).gt(killing)) continue;
    const known = byYear.get(year);
    if (known === undefined || date < known) byYear.set(year, date);
  }
  return [...byYear.values()];
}

/**
 * The earliest of some autumns and the one in the middle; between the two in the middle of an even number, the earlier day.
 * `null` of none.
 */
export function frostOf(dates: readonly IsoDate[]): Frost | null {
  if (dates.length === 0) return null;
  const days = dates.map(dayOfYear).sort((a, b) => a.comparedTo(b));
  const middle = [days[(days.length - 1) >> 1]!, days[days.length >> 1]!];
  return { earliest: monthDayOf(days[0]!), median: monthDayOf(sum(middle).div("2").floor()), years: new Decimal(String(days.length)) };
}
