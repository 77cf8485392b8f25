/** The door for numbers: from a cell as it was typed to a decimal, without binary arithmetic on the way. */
import { Decimal, hundred, zero } from "../core/numbers/decimal";
import type { Cell } from "./cell";
import { isOtherCurrency } from "./currency";

/**
 * Why a cell gives no number. `decimal-comma`: it is one only if the comma is a decimal sign, which the workbook does not say.
 * `number-beyond`: it is larger than any money or quantity of a farm, or smaller than any part of them. `other-currency`: its sign or
 * code is not that of the workbook's money, at whose rate nobody said.
 */
type NumberFault = "not-a-number" | "other-currency" | "decimal-comma" | "formula-error" | "number-beyond";
export type NumberReading = { readonly value: Decimal; readonly percent: boolean } | NumberFault;

/** How numbers are written as text in this workbook; `currency` is that of its money, and left out where none is held against a sign. */
export type NumberStyle = { readonly decimalComma: boolean; readonly currency?: string };

const excelDigits = 15;
/** As powers of ten: no price, amount or quantity reaches a thousand million million; what is left of a rounding is no smaller. */
const beyond = 15;
const least = -30;
/** More digits before or after the point than a cell or an invoice has; a text of them would take minutes to work with. */
const mostLetters = 60;
/** Amounts and prices come again and again: each number has one place here, where the latest that falls on it stays. */
const places = 8_192;
const numbersSeen = new Float64Array(places).fill(Number.NaN);
const decimalsSeen: (Decimal | undefined)[] = new Array<Decimal | undefined>(places);

/**
 * A number cell as Excel shows it: its 15 significant digits. What a double holds beyond them is not the grower's.
 */
export function decimalOf(number: number): Decimal {
  const place = (Math.abs(number) * 100) & (places - 1);
  const seen = decimalsSeen[place];
  if (seen !== undefined && numbersSeen[place] === number) return seen;
  const shortest = String(number);
  const value = new Decimal(shortest.length <= excelDigits ? shortest : number.toPrecision(excelDigits));
  numbersSeen[place] = number;
  decimalsSeen[place] = value;
  return value;
}

export const isErrorValue = (cell: Cell): boolean =>
  typeof cell === "string" && cell.includes("#") && /^#(N\/A|[A-Z0-9/]+[!?])$/i.test(cell.trim());

/** Whether nothing is typed: blank, or spaces only. */
export const isBlank = (cell: Cell): boolean => cell === "" || (typeof cell === "string" && cell.trim() === "");

/** Reads a cell that is not blank. */
export function readNumber(cell: Cell, style: NumberStyle): NumberReading {
  if (typeof cell === "number")
    return Number.isFinite(cell) ? within(decimalOf(cell), false) : Number.isNaN(cell) ? "not-a-number" : "number-beyond";
  if (typeof cell === "boolean") return "not-a-number";
  return isErrorValue(cell) ? "formula-error" : readText(cell, style);
}

/** A number that money or a quantity can be. */
function within(value: Decimal, percent: boolean): NumberReading {
  // Held against their powers of ten, which decimal.js calls `e`: each comparison of decimals makes a new one.
  if (value.isZero() || (value.e < beyond && value.e >= least)) return { value, percent };
  return "number-beyond";
}

const groupedByComma = /^(\d{1,3}(,\d{3})+|\d{1,3}( \d{3})+|\d{1,3}('\d{3})+|\d+)(\.\d*)?(e[+-]?\d+)?$|^\.\d+(e[+-]?\d+)?$/i;
const groupedByPoint = /^(\d{1,3}(\.\d{3})+|\d{1,3}( \d{3})+|\d{1,3}('\d{3})+|\d+)(,\d*)?(e[+-]?\d+)?$|^,\d+(e[+-]?\d+)?$/i;

/** Marks without width, which come along when text is copied from a page. */
const hiddenCharacters = /\u200b|\u200c|\u200d|\u200e|\u200f|\u2060|\ufeff/g;

function readText(text: string, { decimalComma, currency }: NumberStyle): NumberReading {
  // Cents are a sign of money, too: without it 300¢ would be three hundred dollars.
  if (/[¢￠]/.test(text)) return "not-a-number";
  let digits = text
    .replace(hiddenCharacters, "")
    .replace(/[\s\u00a0\u2007\u2009\u202f]+/g, " ")
    .replace(/[\u2212\u2013]/g, "-")
    .replace(/[\u2019]/g, "'")
    .trim();
  let negative = false;
  // Brackets stand for a minus, with the currency sign inside them or before; a minus inside as well could mean either.
  const bracketed = /^([^\d()+-]*)\(([^()-]*)\)$/.exec(digits);
  if (bracketed) [negative, digits] = [true, `${bracketed[1]!}${bracketed[2]!}`.trim()];
  // A currency sign or a code of three letters, before or after, perhaps with a country before the sign.
  const [before, after] = [
    /^[+-]? ?([A-Z]{0,3}\p{Sc}|[A-Z]{3} )/u.exec(digits)?.[1] ?? "",
    / ?(\p{Sc}|[A-Z]{3})$/u.exec(digits)?.[1] ?? "",
  ];
  digits = digits
    .replace(/^([+-]?) ?(?:[A-Z]{0,3}\p{Sc}|[A-Z]{3} )/u, "$1")
    .replace(/ ?(?:\p{Sc}|[A-Z]{3})$/u, "")
    .trim();
  if (currency !== undefined && /\d/.test(digits) && [before, after].some((mark) => isOtherCurrency(mark, currency)))
    return "other-currency";
  const percent = /%$/.test(digits);
  digits = digits.replace(/ ?%$/, "");
  if (/^[+-]/.test(digits)) [negative, digits] = [negative !== digits.startsWith("-"), digits.slice(1).trim()];
  if (/-$/.test(digits)) [negative, digits] = [!negative, digits.slice(0, -1).trim()];
  const parts = fractionOf(digits);
  if (parts !== null) return { value: negative ? parts.neg() : parts, percent: false };
  const grouped = decimalComma ? groupedByPoint : groupedByComma;
  if (!grouped.test(digits)) return !decimalComma && groupedByPoint.test(digits) ? "decimal-comma" : "not-a-number";
  const bare = decimalComma ? digits.replace(/[. ']/g, "").replace(",", ".") : digits.replace(/[, ']/g, "");
  // An exponent of more than three figures is beyond anything, and would overflow the decimal itself.
  if (bare.length > mostLetters || /e[+-]?0*[1-9]\d{3}/i.test(bare))
    return /^[0.]*(e|$)/i.test(bare) ? { value: zero, percent } : "number-beyond";
  const value = new Decimal(negative ? `-${bare}` : bare);
  return within(percent ? value.div(hundred) : value, percent);
}

const signs: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};
const fraction = /^(-?)(?:(\d{1,6})(?: |-))?(\d{1,3})\/(\d{1,3})$/;

/** `1/2`, `3 1/2`, `3-1/2` and `3½`: of a whole and a part the part is below one, or they are no number. */
function fractionOf(digits: string): Decimal | null {
  const plain = digits.replace(/ ?([½¼¾⅓⅔⅛⅜⅝⅞])$/, (_, sign: string) => ` ${signs[sign]!}`).trim();
  const [, minus, whole, over, under] = fraction.exec(plain) ?? [];
  if (over === undefined || under === undefined || /^0+$/.test(under)) return null;
  const part = new Decimal(over).div(under);
  if (whole !== undefined && part.gte("1")) return null;
  const value = part.plus(whole ?? "0");
  return minus === "-" ? value.neg() : value;
}
