/** From a cell to a calendar day: serial numbers of both date systems, and dates typed as text. */
import type { IsoDate } from "../core/row";
import type { Cell, DateSystem } from "./cell";
import { momentOfSerial } from "./daySerial";

/** Days that a season can be of; other numbers are not meant as dates. */
const firstYear = 1950;
const lastYear = 2199;
const mostRemembered = 20_000;
type Remembered<Key> = Map<Key, IsoDate>;
const serials: Readonly<Record<DateSystem, Remembered<number>>> = { 1900: new Map(), 1904: new Map() };
const texts: Readonly<Record<"dayFirst" | "monthFirst", Remembered<string>>> = { dayFirst: new Map(), monthFirst: new Map() };

/**
 * How dates are written in this workbook. `dayFirst`: 5/6/2031 is the 5th of June. `seasonYear`: the year of a short date,
 * such as 5/3; left out or `null`: a short date is none.
 */
export type DateStyle = { readonly dateSystem: DateSystem; readonly dayFirst: boolean; readonly seasonYear?: string | null };

/** The day that a cell names; `null` where it names none. */
export function readDate(cell: Cell, style: DateStyle): IsoDate | null {
  if (typeof cell === "boolean") return null;
  if (typeof cell === "number") {
    const known = serials[style.dateSystem];
    return known.get(cell) ?? remembered(known, cell, ofSerial(cell, style.dateSystem) ?? ofDigits(String(cell)));
  }
  const known = texts[style.dayFirst ? "dayFirst" : "monthFirst"];
  return known.get(cell) ?? remembered(known, cell, ofText(cell.trim(), style.dayFirst)) ?? shortDate(cell, style);
}

/** 20310102: year, month and day in eight figures, which are the serial number of no day that we could mean. */
function ofDigits(digits: string): IsoDate | null {
  const [, year, month, inMonth] = /^(\d{4})(\d{2})(\d{2})$/.exec(digits) ?? [];
  return year === undefined ? null : day(year, month!, inMonth!);
}

/**
 * A day and a month without a year, `5/3`, `May 3`, `3 May`, in the season's year; `null` where the text is none, or the year is
 * not known.
 */
export function shortDate(text: string, { dayFirst, seasonYear }: Pick<DateStyle, "dayFirst" | "seasonYear">): IsoDate | null {
  if (seasonYear === undefined || seasonYear === null) return null;
  const short = text.trim();
  const [, first, sign, second] = /^(\d{1,2})([-/.])(\d{1,2})\.?$/.exec(short) ?? [];
  if (first !== undefined) return ofText(`${first}${sign!}${second!}${sign!}${seasonYear}`, dayFirst);
  return /^(\d{1,2}[ -][a-z]{3,9}\.?|[a-z]{3,9}\.? \d{1,2})$/i.test(short)
    ? ofText(`${short.replace(/-/g, " ")} ${seasonYear}`, dayFirst)
    : null;
}

function remembered<Key>(known: Remembered<Key>, key: Key, date: IsoDate | null): IsoDate | null {
  if (date === null) return null;
  if (known.size >= mostRemembered) known.clear();
  known.set(key, date);
  return date;
}

/** A time of day is cut off. */
const ofSerial = (serial: number, system: DateSystem): IsoDate | null =>
  Number.isFinite(serial) ? within(momentOfSerial(serial, system)) : null;

const months = ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

/** The month of the year, 1 to 12, that a word or a number names. */
export function monthNamed(text: string): number | null {
  const word = text.trim().toLowerCase();
  const letters = word.replace(/\.$/, "");
  const named = letters === "sept" ? 8 : months.findIndex((month) => letters.length >= 3 && month.startsWith(letters));
  if (named >= 0) return named + 1;
  return /^(0?[1-9]|1[0-2])$/.test(word) ? Number(word) : null;
}

/** The first day of the month that is written with its year: "Mar 2031", "2031-03", "3/2031"; `null` where none is. */
export function monthOfYear(text: string): IsoDate | null {
  const written = text.trim();
  const [, month = "", year = ""] = /^(\d{1,2}|[a-z]{3,9}\.?)[ /.-](\d{4})$/i.exec(written) ?? [];
  const [, yearFirst = "", monthLast = ""] = /^(\d{4})[-/.](\d{1,2})$/.exec(written) ?? [];
  const named = monthNamed(month === "" ? monthLast : month);
  return named === null ? null : day(year === "" ? yearFirst : year, String(named), "1");
}

function ofText(text: string, dayFirst: boolean): IsoDate | null {
  if (/^\d{8}$/.test(text)) return ofDigits(text);
  // A time of day is cut off, as it is from a serial number.
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/.exec(text);
  if (iso) return day(iso[1]!, iso[2]!, iso[3]!);
  const numbers = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?: \d{1,2}:.*)?$/.exec(text);
  if (numbers) {
    const [, first, sign, second, year] = numbers as unknown as [string, string, string, string, string];
    // A point between the numbers, or a number above twelve, tells the day; otherwise the workbook's custom does.
    const firstIsDay = sign === "." || Number(first) > 12 || (dayFirst && Number(second) <= 12);
    return firstIsDay ? day(year, second, first) : day(year, first, second);
  }
  const dayMonth = /^(\d{1,2})[ -]([a-z]{3,9})\.?,?[ -](\d{4}|\d{2})$/i.exec(text);
  if (dayMonth) return ofNamedMonth(dayMonth[3]!, dayMonth[2]!, dayMonth[1]!);
  const monthDay = /^([a-z]{3,9})\.? (\d{1,2}),? (\d{4}|\d{2})$/i.exec(text);
  return monthDay ? ofNamedMonth(monthDay[3]!, monthDay[1]!, monthDay[2]!) : null;
}

function ofNamedMonth(year: string, month: string, inMonth: string): IsoDate | null {
  const named = monthNamed(month);
  return named === null ? null : day(year, String(named), inMonth);
}

function day(year: string, month: string, inMonth: string): IsoDate | null {
  const whole = year.length === 2 ? 2000 + Number(year) : Number(year);
  const date = new Date(Date.UTC(whole, Number(month) - 1, Number(inMonth)));
  // The 31st of June is not the 1st of July.
  return date.getUTCMonth() === Number(month) - 1 && date.getUTCDate() === Number(inMonth) ? within(date) : null;
}

const within = (date: Date): IsoDate | null =>
  date.getUTCFullYear() >= firstYear && date.getUTCFullYear() <= lastYear ? date.toISOString().slice(0, 10) : null;
