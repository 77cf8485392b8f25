/**
 * Files of daily weather as public stations hand them out, and any table of days with headings: comma-separated text to days in the
 * workbook's units. What cannot be read is told line by line; nothing is guessed of a unit that the file does not name.
 *
 * Two open daily formats are known by their headings: the daily summaries of the United States' climate archive, of which the ones by
 * station (with columns of attributes) are in tenths of a degree Celsius and tenths of a millimetre, and the daily files of
 * Environment and Climate Change Canada, whose headings name °C and mm. Both as documented by their publishers.
 */
import { Decimal } from "../core/numbers/decimal";
import type { AreaUnit } from "../core/numbers/units";
import type { IsoDate } from "../core/row";
import type { TemperatureUnit } from "../core/weather/heatUnits";
import { readDate } from "./dates";
import { readNumber } from "./numbers";
import { cellsOf } from "./separated";
import { plain } from "./words";

/** What degrees and rain of a file are counted in: °F with inches, °C with millimetres, or tenths of both of the latter. */
export const weatherFileUnits = ["F and in", "C and mm", "tenths of C and mm"] as const;
export type WeatherFileUnit = (typeof weatherFileUnits)[number];

/** A day in the workbook's units; `null`: not recorded. */
export type FileDay = {
  readonly date: IsoDate;
  readonly high: Decimal | null;
  readonly low: Decimal | null;
  readonly rain: Decimal | null;
};

export type WeatherFile = {
  /** The station by its name; `null` where the file names none, or more than one. */
  readonly station: string | null;
  /** What the file says of its units; `null`: nothing, so it has to be asked. */
  readonly says: WeatherFileUnit | null;
  readonly days: readonly FileDay[];
  /** Lines that are no day, by their number in the file, with the reason. */
  readonly unread: readonly { readonly line: number; readonly why: string }[];
};

/** What a workbook counts its weather in. */
export type WeatherUnits = { readonly temperature: TemperatureUnit; readonly areaUnit: AreaUnit };

const headings = {
  date: /^(date|date\/time|day|obsdate|localdate)$/,
  high: /^(tmax|maxtemp|high|max|maximum|maxtemperature|hightemp)$/,
  low: /^(tmin|mintemp|low|min|minimum|mintemperature|lowtemp)$/,
  rain: /^(prcp|totalprecip|precip|precipitation|rain|rainfall)$/,
  station: /^(name|stationname|station)$/,
} as const;

const bare = (heading: string): string => plain(heading.replace(/[([].*$/, ""));

/** Where each heading stands in a line that has at least a date and both temperatures. */
function columnsIn(cells: readonly string[]) {
  const find = (wanted: RegExp) => cells.findIndex((cell) => wanted.test(bare(cell)));
  const [date, high, low] = [find(headings.date), find(headings.high), find(headings.low)];
  const named = cells.findIndex((cell) => /^(name|stationname)$/.test(bare(cell)));
  return date < 0 || high < 0 || low < 0
    ? null
    : { date, high, low, rain: find(headings.rain), station: named >= 0 ? named : find(headings.station) };
}

/** What the headings say of the units. */
function saidUnits(cells: readonly string[], high: number, rain: number): WeatherFileUnit | null {
  if (cells.some((cell) => /^(tmax|tmin)_attributes$/i.test(cell))) return "tenths of C and mm";
  const inBrackets = (at: number) => plain(/[([]([^)\]]*)/.exec(cells[at] ?? "")?.[1] ?? "").replace("°", "");
  const [degrees, depth] = [inBrackets(high), inBrackets(rain)];
  if (degrees === "c" && (rain < 0 || depth === "mm")) return "C and mm";
  return degrees === "f" && (rain < 0 || depth === "in") ? "F and in" : null;
}

/**
 * @param asked the units where the file does not say; `null`: not asked yet, so no day is read of such a file
 * @returns `null` where no line has a date and both temperatures as headings
 */
export function weatherFile(text: string, units: WeatherUnits, asked: WeatherFileUnit | null): WeatherFile | null {
  const lines = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  for (const [at, line] of lines.entries()) {
    const mark = [",", ";", "\t"].find((each) => columnsIn(cellsOf(line, each)) !== null);
    if (mark === undefined) continue;
    const head = cellsOf(line, mark);
    const columns = columnsIn(head)!;
    const says = saidUnits(head, columns.high, columns.rain);
    const body = lines
      .slice(at + 1)
      .map((each, index) => ({ line: at + index + 2, cells: each.trim() === "" ? null : cellsOf(each, mark) }));
    return { says, ...daysOf(body, columns, says ?? asked, units, mark === ";") };
  }
  return null;
}

type Line = { readonly line: number; readonly cells: readonly string[] | null };

function daysOf(
  body: readonly Line[],
  columns: NonNullable<ReturnType<typeof columnsIn>>,
  unit: WeatherFileUnit | null,
  units: WeatherUnits,
  decimalComma: boolean,
): Omit<WeatherFile, "says"> {
  const stations = new Set<string>();
  const [days, unread, seen] = [[] as FileDay[], [] as { line: number; why: string }[], new Set<string>()];
  for (const { line, cells } of body) {
    if (cells === null) continue;
    const station = columns.station < 0 ? "" : (cells[columns.station] ?? "");
    if (station !== "") stations.add(station);
    if (unit === null) continue;
    const typed = cells[columns.date] ?? "";
    const date = readDate(typed, { dateSystem: "1900", dayFirst: false });
    const values = [columns.high, columns.low, columns.rain].map((at) => valueIn(at < 0 ? "" : (cells[at] ?? ""), decimalComma));
    if (date === null) unread.push({ line, why: `“${typed}” is no date` });
    else if (seen.has(`${station}\n${date}`)) unread.push({ line, why: `${date} stands there twice` });
    else if (values.includes("no number")) unread.push({ line, why: "a temperature or the rain is no number" });
    else {
      seen.add(`${station}\n${date}`);
      const [high, low, rain] = values as readonly (Decimal | null)[];
      days.push({ date, high: degrees(high!, unit, units), low: degrees(low!, unit, units), rain: depth(rain!, unit, units) });
    }
  }
  // Days of two stations would stand for one place.
  return stations.size > 1
    ? { station: null, days: [], unread: [{ line: 0, why: `days of ${stations.size} stations stand in it; keep those of one` }] }
    : { station: [...stations][0] ?? null, days, unread };
}

/** A number, nothing where the cell is blank or marked as missing. */
function valueIn(typed: string, decimalComma: boolean): Decimal | null | "no number" {
  if (/^(|M|T|NA|-9999|9999)$/i.test(typed)) return /^T$/i.test(typed) ? new Decimal("0") : null;
  const reading = readNumber(typed, { decimalComma });
  return typeof reading === "string" || reading.percent ? "no number" : reading.value;
}

const tenth = new Decimal("0.1");
const millimetresInInch = new Decimal("25.4");
/** Decimals to which rain in inches is kept, where it was measured in millimetres. */
const decimalsOfInches = 3;

function degrees(value: Decimal | null, unit: WeatherFileUnit, { temperature }: WeatherUnits): Decimal | null {
  if (value === null) return null;
  if (unit === "F and in") return temperature === "F" ? value : value.minus("32").div("1.8").toDecimalPlaces(2);
  const celsius = unit === "C and mm" ? value : value.times(tenth);
  return temperature === "C" ? celsius : celsius.times("1.8").plus("32");
}

function depth(value: Decimal | null, unit: WeatherFileUnit, { areaUnit }: WeatherUnits): Decimal | null {
  if (value === null) return null;
  if (unit === "F and in") return areaUnit === "ac" ? value : value.times(millimetresInInch);
  const millimetres = unit === "C and mm" ? value : value.times(tenth);
  return areaUnit === "ha" ? millimetres : millimetres.div(millimetresInInch).toDecimalPlaces(decimalsOfInches);
}
