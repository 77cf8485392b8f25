/**
 * Files of points with what was counted at each: GeoJSON (RFC 7946, of 2016) or comma-separated text of a phone under any headings.
 * Here they become records of text by heading; what the headings mean is said in `fileSpots`.
 */
import * as z from "zod/mini";
import { cellsOf, linesOf } from "../../workbook/separated";
import { plainHeading } from "../../workbook/words";

// The pages allow no program made of text, and the library would try whether it may make one.
z.config({ jitless: true });

/** One point: its degrees as they stand there, what is said of it by heading, and how it is named where it cannot be read. */
export type PointRecord = {
  readonly named: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly says: ReadonlyMap<string, string>;
};

export type PointsFile = {
  readonly headings: readonly string[];
  readonly points: readonly PointRecord[];
  readonly unread: readonly { readonly named: string; readonly why: string }[];
  /** Whether its numbers have a comma for the point. */
  readonly decimalComma: boolean;
};

/** `fault`: why nothing of it is a file of points. */
export type PointsReading = PointsFile | { readonly fault: string };

export const pointsFile = (text: string): PointsReading => (/^\uFEFF?\s*[{[]/.test(text) ? geoJson(text) : separated(text));

const position = z.array(z.number()).check(z.minLength(2));
const geometry = z.nullable(z.looseObject({ type: z.string(), coordinates: z.optional(z.unknown()) }));
const feature = z.looseObject({ type: z.literal("Feature"), geometry, properties: z.nullish(z.record(z.string(), z.unknown())) });
const collection = z.looseObject({ type: z.literal("FeatureCollection"), features: z.array(z.unknown()), crs: z.optional(z.unknown()) });
const point = z.object({ type: z.literal("Point"), coordinates: position });

/** Points as the standard has them: [longitude, latitude, perhaps a height], in degrees on WGS 84. */
function geoJson(text: string): PointsReading {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (fault) {
    return { fault: `The file begins as GeoJSON and is none: ${fault instanceof Error ? fault.message : String(fault)}.` };
  }
  const one = feature.safeParse(json);
  const all = collection.safeParse(one.success ? { type: "FeatureCollection", features: [json] } : json);
  if (!all.success) return { fault: "The file is no GeoJSON of points: it needs a FeatureCollection, or one Feature." };
  if (all.data.crs !== undefined && all.data.crs !== null && !/CRS84|EPSG:+(?:\d*:)?4326/i.test(JSON.stringify(all.data.crs)))
    return { fault: "The file counts its coordinates in another way than latitude and longitude (its crs). Save it as WGS 84." };
  const points: PointRecord[] = [];
  const unread: PointsFile["unread"][number][] = [];
  for (const [index, each] of all.data.features.entries()) {
    const named = `point ${index + 1}`;
    const read = feature.safeParse(each);
    const at = read.success ? point.safeParse(read.data.geometry) : null;
    if (at === null || !read.success) unread.push({ named, why: "it is no Feature" });
    else if (read.data.geometry === null) unread.push({ named, why: "it has no place" });
    else if (!at.success) unread.push({ named, why: `${read.data.geometry.type} is no Point with a longitude and a latitude` });
    else {
      const [longitude, latitude] = at.data.coordinates as [number, number];
      const says = Object.entries(read.data.properties ?? {}).flatMap(([heading, value]) =>
        typeof value === "string" || typeof value === "number" ? [[heading, String(value).trim()] as const] : [],
      );
      points.push({ named, latitude: String(latitude), longitude: String(longitude), says: new Map(says) });
    }
  }
  return { headings: [...new Set(points.flatMap(({ says }) => [...says.keys()]))], points, unread, decimalComma: false };
}

const latitudes = /^(latitude|lat|y|gpslatitude|gpslat|wgs84lat)$/;
const longitudes = /^(longitude|lon|lng|long|x|gpslongitude|gpslong|gpslon|wgs84lon)$/;

function separated(text: string): PointsReading {
  const lines = linesOf(text);
  for (const [index, { text: head }] of lines.entries()) {
    for (const mark of [",", ";", "\t"]) {
      const headings = cellsOf(head, mark);
      const at = (wanted: RegExp) => headings.findIndex((heading) => wanted.test(plainHeading(heading)));
      const [latitude, longitude] = [at(latitudes), at(longitudes)];
      if (latitude < 0 || longitude < 0) continue;
      const body = lines.slice(index + 1).filter((line) => line.text.trim() !== "");
      return {
        headings: headings.filter((heading, column) => heading !== "" && column !== latitude && column !== longitude),
        points: body.map(({ line, text: each }) => {
          const cells = cellsOf(each, mark);
          return {
            named: `line ${line}`,
            latitude: cells[latitude] ?? "",
            longitude: cells[longitude] ?? "",
            says: new Map(headings.map((heading, column) => [heading, cells[column] ?? ""])),
          };
        }),
        unread: [],
        decimalComma: mark === ";",
      };
    }
  }
  return { fault: "No line has a latitude and a longitude as headings, so nothing of it is read." };
}
