/**
 * Heat and water of a planted field: its sum against the normal, its stage, and the day on which it is projected to mature. All
 * of it an estimate.
 */
import { one, sum, zero, type Decimal } from "../numbers/decimal";
import { hybridKey } from "../hybrids/trials";
import type { IsoDate } from "../row";
import type { Field, Season } from "../season";
import { cropWord } from "../stand/fieldStand";
import { dayOfYear } from "../stand/monthDay";
import { firstFrosts, frostOf, type Frost } from "./frost";
import { usualWay, type HeatUnitWay, type TemperatureUnit } from "./heatUnits";
import { daysBetween, nextDay } from "../numbers/day";
import { projectedMaturity, type Maturity } from "./maturity";
import { PlaceRecord, type WeatherDay } from "./record";
import { ratingWhenPlanted, stageAt } from "./stage";

export type FieldWeather = {
  readonly field: string;
  readonly place: string | null;
  /** From the day after planting to the last day of the record, or the last load. */
  readonly from: IsoDate;
  readonly to: IsoDate;
  /** Days with both temperatures, and those without. */
  readonly days: Decimal;
  readonly missing: Decimal;
  readonly heatUnits: Decimal;
  /** The same days in the mean of the earlier years; `null` where a day of them has none. */
  readonly normal: Decimal | null;
  readonly earlierYears: Decimal;
  /** `null` where no rain is recorded at all. */
  readonly rain: Decimal | null;
  /** Days of which rain is not recorded. */
  readonly rainMissing: Decimal;
  /** Heat units to black layer, of the hybrid planted on that day; `null` where no rating is entered. */
  readonly rating: Decimal | null;
  /** Of corn, counted in 86/50 units. */
  readonly stage: string | null;
  readonly maturity: Maturity | null;
  readonly frost: Frost | null;
  /** Days from projected maturity to the first killing frost: the one in the middle, and the earliest. */
  readonly frostMargin: { readonly median: Decimal; readonly earliest: Decimal } | null;
};

export type WeatherSeason = Pick<Season, "settings" | "fields" | "crops" | "harvest" | "weather" | "hybrids">;
export type Counting = { readonly way: HeatUnitWay; readonly unit: TemperatureUnit };

/** How heat is counted: as set, or as is usual for the area unit. */
export function countingOf({ settings: { areaUnit, temperatureUnit, heatUnits } }: Pick<Season, "settings">): Counting {
  const unit = temperatureUnit ?? (areaUnit === "ac" ? "F" : "C");
  return { unit, way: heatUnits ?? usualWay(unit) };
}

const placeKey = (place: string | null | undefined): string => (place ?? "").trim().toLowerCase();

/** The days by place. */
export function daysByPlace(days: readonly WeatherDay[]): ReadonlyMap<string, readonly WeatherDay[]> {
  const places = new Map<string, WeatherDay[]>();
  for (const day of days) {
    const key = placeKey(day.place);
    const known = places.get(key);
    if (known === undefined) places.set(key, [day]);
    else known.push(day);
  }
  return places;
}

/** The place of a field: the one it names, or the only one that there is; `null` where neither is so. */
export function placeOfField({ weatherPlace }: Pick<Field, "weatherPlace">, places: ReadonlyMap<string, unknown>): string | null {
  if (weatherPlace !== null) return places.has(placeKey(weatherPlace)) ? placeKey(weatherPlace) : null;
  return places.has("") ? "" : places.size === 1 ? [...places.keys()][0]! : null;
}

/** The days and the record of each place, with the heat of a day worked out once for all fields. */
export type PlaceRecords = {
  readonly counting: Counting;
  readonly places: ReadonlyMap<string, readonly WeatherDay[]>;
  readonly records: ReadonlyMap<string, PlaceRecord>;
};

export function placeRecords(season: Pick<Season, "settings" | "weather">): PlaceRecords {
  const counting = countingOf(season);
  const places = daysByPlace(season.weather);
  return {
    counting,
    places,
    records: new Map([...places].map(([place, days]) => [place, new PlaceRecord(days, counting.way, counting.unit)])),
  };
}

/** Heat units to black layer of what a field grows, by the day of planting; `null` where no rating is entered. */
export function ratingsOf({ hybrids }: Pick<Season, "hybrids">, { way }: Counting): (field: Field, planted: IsoDate) => Decimal | null {
  const ratings = new Map(hybrids.map(({ name, heatUnits }) => [hybridKey(name), heatUnits]));
  return ({ variety }, planted) => {
    const rated = ratings.get(hybridKey(variety ?? "")) ?? null;
    return rated === null || way !== "growing degree 86/50"
      ? rated
      : ratingWhenPlanted(rated, daysBetween(`${planted.slice(0, 4)}-05-01`, planted));
  };
}

/** First killing frosts of a place before a year, looked for once. */
function frostsByPlace(places: ReadonlyMap<string, readonly WeatherDay[]>, { unit }: Counting) {
  const found = new Map<string, readonly IsoDate[]>();
  return (place: string, before: string): readonly IsoDate[] => {
    const key = `${place}\n${before}`;
    let frosts = found.get(key);
    if (frosts === undefined) found.set(key, (frosts = firstFrosts(places.get(place)!, unit, before)));
    return frosts;
  };
}

/** Every planted field that has a record after its planting, in the order of the table. */
export function fieldWeather(season: WeatherSeason, { counting, places, records } = placeRecords(season)): readonly FieldWeather[] {
  const { settings, fields } = season;
  const ratingOf = ratingsOf(season, counting);
  const frostsOf = frostsByPlace(places, counting);
  return fields.flatMap((field): readonly FieldWeather[] => {
    const place = placeOfField(field, places);
    if (field.planted === null || place === null) return [];
    const record = records.get(place)!;
    const from = nextDay(field.planted);
    const lastLoad =
      field.harvestDone === null
        ? null
        : season.harvest
            .filter((load) => load.field === field.name)
            .reduce<string | null>((last, { date }) => (last === null || date > last ? date : last), null);
    const last = record.lastUntil(`${settings.seasonYear ?? field.planted.slice(0, 4)}-12-31`);
    const to = lastLoad !== null && lastLoad < last ? lastLoad : last;
    if (to < from) return [];
    const isDegree = counting.way === "growing degree 86/50";
    const rating = ratingOf(field, field.planted);
    const frosts = settings.firstFrosts ?? frostsOf(place, settings.seasonYear ?? field.planted.slice(0, 4));
    return [
      ofField(record, { field, from, to, rating, isCornByDegree: isDegree && cropWord(field.crop) === "corn", frost: frostOf(frosts) }),
    ];
  });
}

type Grown = {
  readonly field: Field;
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly rating: Decimal | null;
  readonly isCornByDegree: boolean;
  readonly frost: Frost | null;
};

function ofField(record: PlaceRecord, { field, from, to, rating, isCornByDegree, frost }: Grown): FieldWeather {
  let [days, missing, heatUnits, rainMissing, known] = [zero, zero, zero, zero, zero];
  let [normal, rain]: [Decimal | null, Decimal | null] = [zero, null];
  let reached: IsoDate | null = null;
  for (let date = from; date <= to; date = nextDay(date)) {
    const units = record.heatUnits(date);
    const usual = record.normal(date);
    // A day that is missing takes its normal towards maturity, and is in neither of the two sums that are compared.
    known = known.plus(units ?? usual ?? zero);
    if (rating !== null && reached === null && known.gte(rating)) reached = date;
    if (units === null) missing = missing.plus(one);
    else {
      days = days.plus(one);
      heatUnits = heatUnits.plus(units);
      normal = normal === null || usual === null ? null : normal.plus(usual);
    }
    const fallen = record.day(date)?.rain ?? null;
    if (fallen === null) rainMissing = rainMissing.plus(one);
    else rain = (rain ?? zero).plus(fallen);
  }
  const maturity =
    rating === null
      ? null
      : reached !== null
        ? { date: reached, early: reached, late: reached }
        : projectedMaturity(record, to, rating.minus(known));
  return {
    field: field.name,
    place: record.place,
    from,
    to,
    days,
    missing,
    heatUnits,
    normal: days.isZero() ? null : normal,
    earlierYears: sum(record.earlier(to).map(() => one)),
    rain,
    rainMissing,
    rating,
    stage: isCornByDegree ? stageAt(known, rating) : null,
    maturity,
    frost,
    frostMargin:
      maturity === null || frost === null
        ? null
        : {
            median: dayOfYear(frost.median).minus(dayOfYear(maturity.date)),
            earliest: dayOfYear(frost.earliest).minus(dayOfYear(maturity.date)),
          },
  };
}
