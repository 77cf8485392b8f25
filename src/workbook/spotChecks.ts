/** Spots that do not lie where the others of their field do. No figure rests on it. */
import { Decimal } from "../core/numbers/decimal";
import type { Season } from "../core/season";
import { metresFrom, middleOf } from "../core/stand/spots";
import type { Coordinates, StandCount } from "../core/stand/standCount";
import { standCountColumns } from "./columns/standCounts";
import type { Problem } from "./problem";

const { columns } = standCountColumns;
const touches: Problem["touches"] = [{ of: "map" }];
/** No field is so long that a spot lies farther from its middle, in metres: five miles. */
const farthest = new Decimal("8047");
const metresInMile = new Decimal("1609.344");
const metresInKilometre = new Decimal("1000");

type Placed = StandCount & { readonly spot: Coordinates };

export function spotProblems({ fields, standCounts, settings }: Season): readonly Problem[] {
  const placed = standCounts.filter((count): count is Placed => count.spot !== null);
  if (placed.length === 0) return [];
  const isNorthAmerica = settings.currency === "USD" || settings.currency === "CAD";
  return fields.flatMap(({ name }) => {
    const ofField = placed.filter(({ field }) => field === name);
    if (ofField.length === 0) return [];
    const middle = middleOf(ofField.map(({ spot }) => spot));
    const east = isNorthAmerica ? ofField.find(({ spot }) => spot.longitude.gt("0")) : undefined;
    const at = ({ source }: StandCount, { heading: column }: { readonly heading: string }) => ({ ...source, column });
    const off = ofField.flatMap((count): readonly Problem[] => {
      const away = distance(middle, count.spot);
      if (away.lte(farthest)) return [];
      const { latitude, longitude } = count.spot;
      const turned: Coordinates = { latitude: longitude, longitude: latitude };
      return distance(middle, turned).lte(farthest)
        ? [
            {
              code: "coordinates-swapped",
              at: at(count, columns.latitude),
              found: `${latitude.toFixed()}, ${longitude.toFixed()}`,
              touches,
            },
          ]
        : [{ code: "coordinates-far", at: at(count, columns.latitude), found: lengthWords(away, settings.areaUnit), like: name, touches }];
    });
    return east === undefined
      ? off
      : [...off, { code: "coordinates-east", at: at(east, columns.longitude), found: east.spot.longitude.toFixed(), touches }];
  });
}

function distance(from: Coordinates, to: Coordinates): Decimal {
  const { east, north } = metresFrom(from, to);
  return east.pow("2").plus(north.pow("2")).sqrt();
}

const lengthWords = (metres: Decimal, unit: Season["settings"]["areaUnit"]): string =>
  unit === "ac" ? `${metres.div(metresInMile).toFixed(0)} miles` : `${metres.div(metresInKilometre).toFixed(0)} km`;
