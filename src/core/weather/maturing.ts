/** When the fields of a season are projected to mature, those among them that are still to be planted. */
import { placeOfField, placeRecords, ratingsOf, type FieldWeather, type WeatherSeason } from "./fieldWeather";
import { projectedMaturity, type Maturity } from "./maturity";

/** When a field is projected to mature. */
export type Maturing = Pick<Maturity, "date"> & {
  readonly field: string;
  /** It is not planted yet: from its planned planting on, or from the end of the record where that day has gone by. */
  readonly byPlan: boolean;
};

/**
 * The fields of which a maturity is projected, in the order of the table: the planted ones as they stand, the others by the normal
 * of the earlier years from their planned planting date on.
 *
 * @param planted heat and water of the planted fields
 */
export function maturingFields(
  season: WeatherSeason,
  planted: readonly FieldWeather[],
  { counting, places, records } = placeRecords(season),
): readonly Maturing[] {
  const ratingOf = ratingsOf(season, counting);
  const standing = new Map(planted.map(({ field, maturity }) => [field, maturity]));
  return season.fields.flatMap((field): readonly Maturing[] => {
    const stands = standing.get(field.name) ?? null;
    if (stands !== null) return [{ field: field.name, date: stands.date, byPlan: false }];
    const place = placeOfField(field, places);
    if (field.planted !== null || field.plannedPlanting === null || place === null) return [];
    const record = records.get(place)!;
    const gone = record.lastUntil(`${field.plannedPlanting.slice(0, 4)}-12-31`);
    const from = gone > field.plannedPlanting ? gone : field.plannedPlanting;
    const rating = ratingOf(field, from);
    const maturity = rating === null ? null : projectedMaturity(record, from, rating);
    return maturity === null ? [] : [{ field: field.name, date: maturity.date, byPlan: true }];
  });
}
