/** Days of a file of daily weather on their way into the table Weather: what would be written, what is there already, what was not read. */
import type { Season } from "../../core/season";
import { countingOf } from "../../core/weather/fieldWeather";
import { weatherColumns } from "../../workbook/columns/weather";
import { weatherFile, type FileDay, type WeatherFileUnit } from "../../workbook/weatherFile";
import { plain } from "../../workbook/words";
import { entryRow, type EntryRow } from "../commands/entryRow";

const { columns } = weatherColumns;
/** Lines and days that are named one by one. */
const mostNamed = 5;

export type FileDaysDraft = {
  readonly text: string;
  /** What the file's numbers are in, where it does not say. */
  readonly unit: WeatherFileUnit | null;
  readonly place: string;
  /** The first year that is wanted; blank: all. */
  readonly fromYear: string;
};

export type FileDaysView = {
  readonly fault: string | null;
  /** Whether somebody has to say what the numbers are in. */
  readonly asksUnit: boolean;
  /** What was found, in sentences. */
  readonly says: readonly string[];
  /** The rows to add; `null` where there is nothing to add. */
  readonly rows: readonly EntryRow[] | null;
};

/** The only place of the days that are there, else the station of the file. */
export const usualPlace = ({ weather }: Pick<Season, "weather">, text: string): string => {
  const places = new Set(weather.map(({ place }) => place ?? ""));
  return places.size === 1 ? [...places][0]! : (weatherFile(text, { temperature: "F", areaUnit: "ac" }, null)?.station ?? "");
};

export function fileDaysView({ text, unit, place, fromYear }: FileDaysDraft, season: Season): FileDaysView {
  const none = { fault: null, asksUnit: false, says: [], rows: null };
  if (text.trim() === "") return none;
  const file = weatherFile(text, { temperature: countingOf(season).unit, areaUnit: season.settings.areaUnit }, unit);
  if (file === null) return { ...none, fault: "No line has a date, a high and a low as headings, so nothing of it is read." };
  if (fromYear.trim() !== "" && !/^\d{4}$/.test(fromYear.trim()))
    return { ...none, fault: "Enter the first year as four digits, or leave it blank." };
  const asksUnit = file.says === null;
  const unread = file.unread.map(({ line, why }) => (line === 0 ? why : `line ${line}, ${why}`));
  const notRead = unread.length === 0 ? [] : [`Not read: ${named(unread)}.`];
  if (asksUnit && unit === null && unread.length === 0)
    return { ...none, asksUnit, says: ["The file does not say what its degrees and its rain are in. Choose it, and nothing is guessed."] };
  const there = new Map(season.weather.filter((day) => plain(day.place ?? "") === plain(place)).map((day) => [day.date, day] as const));
  const wanted = file.days.filter(({ date }) => date.slice(0, 4) >= fromYear.trim());
  const added = wanted.filter(({ date }) => !there.has(date));
  const other = wanted.filter((day) => there.has(day.date) && !isSame(day, there.get(day.date)!));
  const blank = added.filter(({ high, low }) => high === null || low === null).length;
  const counted = (words: string, count: number) => (count === 0 ? [] : [`${words}: ${count} ${count === 1 ? "day" : "days"}.`]);
  return {
    fault: null,
    asksUnit,
    says: [
      added.length === 0
        ? "No day of it is new."
        : `${added.length} ${added.length === 1 ? "day" : "days"} to add, ${first(added)} to ${last(added)}${blank === 0 ? "" : `, ${blank} without a high or a low`}.`,
      ...counted(`Left out, before ${fromYear.trim()}`, file.days.length - wanted.length),
      ...counted("There already, alike", wanted.length - added.length - other.length),
      ...(other.length === 0 ? [] : [`There with other values, which stay: ${named(other.map(({ date }) => date))}.`]),
      ...notRead,
    ],
    rows: added.length === 0 ? null : added.map((day) => rowOf(day, place.trim())),
  };
}

const first = (days: readonly FileDay[]): string => days.reduce((least, { date }) => (date < least ? date : least), days[0]!.date);
const last = (days: readonly FileDay[]): string => days.reduce((most, { date }) => (date > most ? date : most), "");

const named = (all: readonly string[]): string =>
  `${all.slice(0, mostNamed).join("; ")}${all.length > mostNamed ? `; and ${all.length - mostNamed} more` : ""}`;

const isSame = (day: FileDay, there: Season["weather"][number]): boolean =>
  (["high", "low", "rain"] as const).every((of) => day[of] === there[of] || (day[of] !== null && there[of]?.eq(day[of]) === true));

const rowOf = ({ date, high, low, rain }: FileDay, place: string): EntryRow =>
  entryRow([
    [columns.date, { day: date }],
    [columns.high, high],
    [columns.low, low],
    [columns.rain, rain],
    [columns.place, place],
  ]);
