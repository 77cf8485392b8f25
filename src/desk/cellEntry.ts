/** What a text that somebody types or pastes into a cell means, as a spreadsheet would take it. */
import { daysBetweenSystems } from "../workbook/daySerial";
import { format, getFormatFromId, isDateFormat, isPercentFormat, isTextFormat, parseValue } from "numfmt";
import type { Cell } from "../workbook/cell";
import { shortDate } from "../workbook/dates";

/** What goes into the cell: a value, with the number format that the way of typing asks for, or a formula without its `=`. */
export type EnteredCell = { readonly value: Cell; readonly numberFormat?: string } | { readonly formula: string };

/** What is known of the cell and its workbook. */
export type EntrySettings = {
  /** The number format that the cell has now, e.g. `General`, `m/d/yyyy`, `@`. */
  readonly numberFormat: string;
  readonly dateSystem: "1900" | "1904";
  /** The year that a date without one is of; left out or `null` where the season names none. */
  readonly seasonYear?: string | null;
  /** Whether the season's setting *Decimal comma* is yes: `1.234,5` is then a number and `1,234.5` is not. */
  readonly decimalComma: boolean;
};

/**
 * Numbers, money, percentages, dates and yes/no words become values, `=` begins a formula, and all else is text, as is
 * everything in a cell of text format or after an apostrophe. Words that only resemble a date (`4-10-10` is an analysis,
 * `1/2` may be a half) stay text, unless the cell is a date's.
 */
export function entered(typed: string, { numberFormat, dateSystem, decimalComma, seasonYear = null }: EntrySettings): EnteredCell {
  const text = typed.trim();
  if (text === "") return { value: "" };
  if (text.startsWith("'")) return { value: text.slice(1) };
  if (isTextFormat(numberFormat)) return { value: typed };
  if (text.startsWith("=") && text.length > 1) return { formula: text.slice(1) };
  if (looksLikePartOfADate(text) && !isDateFormat(numberFormat)) return { value: typed };
  if (looksLikeAName(text, numberFormat)) return { value: typed };

  const short = isDateFormat(numberFormat) || /[a-z]/i.test(text) ? shortDate(text, { dayFirst: decimalComma, seasonYear }) : null;
  const parsed = parseValue(short ?? (decimalComma ? withDecimalPoint(text) : text));
  if (parsed === null || parsed === undefined) return { value: typed };
  const { value, formatId } = parsed;
  if (typeof value !== "number" && typeof value !== "boolean") return { value: typed };
  const typedFormat = shownWhole(typeof formatId === "number" ? getFormatFromId(formatId) : formatId);
  const isDate = typeof typedFormat === "string" && isDateFormat(typedFormat);
  if (isDate && !hasDay(typedFormat)) {
    // A time of day, which no cell of a day can show: there it stays as typed, to be told.
    if (isDateFormat(numberFormat)) return hasDay(numberFormat) ? { value: typed } : { value };
    return { value, numberFormat: typedFormat };
  }
  const stored = isDate && typeof value === "number" && dateSystem === "1904" ? value - daysBetweenSystems : value;
  const keepsFormat = numberFormat !== "General" && isDateFormat(numberFormat) === isDate;
  if (keepsFormat && isPercentFormat(numberFormat) && typeof value === "number")
    return { value: stored, ...widerPercent(value, numberFormat) };
  if (typeof typedFormat !== "string" || keepsFormat || plainNumber.test(text)) return { value: stored };
  return { value: stored, numberFormat: !isDate ? typedFormat : /^\d{4}-/.test(text) ? "yyyy-mm-dd" : "m/d/yyyy" };
}

/** Money keeps its cents, though none were typed: the next price below is shown in the same format, and $3 would stand for 3.30. */
const shownWhole = (numberFormat: string | number | undefined): string | undefined =>
  typeof numberFormat !== "string"
    ? undefined
    : isMoney.test(numberFormat)
      ? numberFormat.replace(/#,##0(?!\.)/g, "#,##0.00")
      : numberFormat;
const isMoney = /\p{Sc}/u;

/** A format of whole percents, or of too few places, shows 3.5 % as 4 %: it takes as many places as the entry has. */
function widerPercent(value: number, numberFormat: string): { readonly numberFormat?: string } {
  const wanted =
    Number((value * 100).toPrecision(15))
      .toString()
      .split(".")[1]?.length ?? 0;
  const shown = /^0(?:\.([0#]*))?%$/.exec(numberFormat);
  return shown !== null && wanted > (shown[1]?.length ?? 0) ? { numberFormat: `0.${"0".repeat(wanted)}%` } : {};
}

/**
 * What a number would not give back: zeros in front (`00123`, a ticket's), more digits than a number of the workbook has, or an `e`
 * among digits (`3E2`, a field's). Where it stands for a number after all it is read as one.
 */
const looksLikeAName = (text: string, numberFormat: string): boolean =>
  /^\d{16,}$/.test(text) || (numberFormat === "General" && (/^0\d+$/.test(text) || /^\d+e\d+$/i.test(text)));

/** Whether a format shows a day, not only a time of one. */
const hasDay = (numberFormat: string): boolean => /[dy]/i.test(numberFormat.replaceAll(/\[[^\]]*\]|"[^"]*"/g, ""));

/** Two numbers, or three of which the last is no full year and no slash parts them. */
const looksLikePartOfADate = (text: string): boolean => /^\d{1,4}[-/]\d{1,2}$/.test(text) || /^\d{1,2}-\d{1,2}-\d{1,3}$/.test(text);

/** Digits with or without thousands: the number alone, which needs no format to be seen as typed. */
const plainNumber = /^-?[\d,.\s]+(e[+-]?\d+)?$/i;

/** `1.234,5` and `1 234,5` to `1234.5`, where every mark stands as in a number; other words as they are. */
function withDecimalPoint(text: string): string {
  const isNumber = /^[^\d,.]*(\d{1,3}([.\s\u00a0\u202f]\d{3})+|\d+)(,\d+)?[^\d,.]*$/.test(text);
  return isNumber ? text.replaceAll(/[.\s\u00a0\u202f](?=\d{3})/g, "").replace(",", ".") : text.replaceAll(",", "\u0000");
}

/**
 * What a cell holds as it would be typed, so that editing it, or pasting it elsewhere, gives the same value again: all
 * digits of a number, a date with its year, a percentage as one, an apostrophe before a text that would be taken for more.
 */
export function entryText(value: Cell, formula: string | null, settings: EntrySettings): string {
  if (formula !== null) return `=${formula}`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return numberText(value, settings);
  const taken = entered(value, settings);
  return value === "" || ("value" in taken && taken.value === value) ? value : `'${value}`;
}

function numberText(value: number, { numberFormat, dateSystem, decimalComma }: EntrySettings): string {
  const serial = dateSystem === "1904" ? value + daysBetweenSystems : value;
  if (isDateFormat(numberFormat) && Number.isInteger(value) && serial >= 61 && serial < 2_958_466) {
    return format("yyyy-mm-dd", serial);
  }
  // Excel keeps 15 digits; more would show the binary remainder of a decimal.
  const digits = (number: number) => String(Number(number.toPrecision(15)));
  const text = isPercentFormat(numberFormat) ? `${digits(value * 100)}%` : digits(value);
  return decimalComma ? text.replace(".", ",") : text;
}
