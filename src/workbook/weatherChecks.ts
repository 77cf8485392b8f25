/** Fields whose weather nobody can tell, and days beyond the season. No money rests on any of it. */
import type { Season } from "../core/season";
import { daysByPlace, placeOfField } from "../core/weather/fieldWeather";
import { fieldColumns } from "./columns/fields";
import { weatherColumns } from "./columns/weather";
import type { Problem, Subject } from "./problem";
import { nearest } from "./words";

const touches: readonly Subject[] = [{ of: "weather" }];

export function weatherProblems({ settings: { seasonYear }, fields, weather = [] }: Season): readonly Problem[] {
  if (weather.length === 0) return [];
  const places = daysByPlace(weather);
  const names = [...new Set(weather.flatMap(({ place }) => place ?? []))];
  const later = seasonYear === null ? [] : weather.filter(({ date }) => date.slice(0, 4) > seasonYear);
  return [
    ...fields
      .filter((field) => field.planted !== null || field.weatherPlace !== null)
      .flatMap((field): readonly Problem[] => {
        if (placeOfField(field, places) !== null) return [];
        const { weatherPlace, source } = field;
        const at = { ...source, column: fieldColumns.columns.weatherPlace.heading };
        if (weatherPlace === null) return [{ code: "weather-place-missing", at, found: field.name, choices: names, touches }];
        const like = nearest(weatherPlace, names);
        return [{ code: "weather-place-unknown", at, found: weatherPlace, touches, ...(like === null ? {} : { like }) }];
      }),
    ...later.map(({ date, source }): Problem => ({
      code: "day-later",
      at: { ...source, column: weatherColumns.columns.date.heading },
      found: date,
      like: seasonYear!,
      touches,
    })),
  ];
}
