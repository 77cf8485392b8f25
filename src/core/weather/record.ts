/** Daily weather by place, year and day, as the projections ask for it. */
import { sum, type Decimal } from "../numbers/decimal";
import type { EntryRef, IsoDate } from "../row";
import type { MonthDay } from "../stand/monthDay";
import { heatUnitsOf, type HeatUnitWay, type TemperatureUnit } from "./heatUnits";

/** One day at one place; what was not recorded is `null`. Temperatures and rain in the workbook's units. */
export type WeatherDay = {
  readonly date: IsoDate;
  /** `null`: the only place, or none named. */
  readonly place: string | null;
  readonly high: Decimal | null;
  readonly low: Decimal | null;
  readonly rain: Decimal | null;
  readonly source: EntryRef;
};

const yearOf = (date: IsoDate): string => date.slice(0, 4);
/** The day of any year; 29 February stands for the 28th where a year has none. */
const dayOf = (date: IsoDate): MonthDay => date.slice(5);

/** The record of one place. */
export class PlaceRecord {
  private readonly byDate = new Map<IsoDate, WeatherDay>();
  private readonly units = new Map<IsoDate, Decimal | null>();
  private readonly normals = new Map<IsoDate, Decimal | null>();
  readonly years: readonly string[];
  /** As it is spelled; `null` where it has no name. */
  readonly place: string | null;

  constructor(
    days: readonly WeatherDay[],
    private readonly way: HeatUnitWay,
    private readonly unit: TemperatureUnit,
  ) {
    for (const day of days) this.byDate.set(day.date, day);
    this.years = [...new Set(days.map(({ date }) => yearOf(date)))].sort();
    this.place = days[0]?.place ?? null;
  }

  /** The last day of the record up to a date; "" where there is none. */
  lastUntil(end: IsoDate): IsoDate {
    return [...this.byDate.keys()].reduce((last, date) => (date > last && date <= end ? date : last), "");
  }

  day(date: IsoDate): WeatherDay | undefined {
    return this.byDate.get(date);
  }

  /** Heat units of a day; `null` where one of its temperatures is missing. */
  heatUnits(date: IsoDate): Decimal | null {
    let known = this.units.get(date);
    if (known === undefined) {
      const { high = null, low = null } = this.byDate.get(date) ?? {};
      this.units.set(date, (known = high === null || low === null ? null : heatUnitsOf(this.way, { high, low }, this.unit)));
    }
    return known;
  }

  /** Years of the record before that of a date. */
  earlier(date: IsoDate): readonly string[] {
    return this.years.filter((year) => year < yearOf(date));
  }

  /** The same day of another year. */
  heatUnitsIn(year: string, date: IsoDate): Decimal | null {
    const day = dayOf(date);
    return this.heatUnits(`${year}-${day}`) ?? (day === "02-29" ? this.heatUnits(`${year}-02-28`) : null);
  }

  /** Mean heat units of that day in the earlier years that have it; `null` where none does. */
  normal(date: IsoDate): Decimal | null {
    let known = this.normals.get(date);
    if (known === undefined) {
      const there = this.earlier(date).flatMap((year) => this.heatUnitsIn(year, date) ?? []);
      this.normals.set(date, (known = there.length === 0 ? null : sum(there).div(String(there.length))));
    }
    return known;
  }
}
