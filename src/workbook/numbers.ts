/** The door for numbers: from a cell as it was typed to a decimal, without binary arithmetic on the way. */
import { Decimal, hundred } from "../core/decimal";
import type { Cell } from "./cell";

/** Why a cell gives no number. `decimal-comma`: it is one only if the comma is a decimal sign, which the workbook does not say. */
export type NumberFault = "not-a-number" | "decimal-comma" | "formula-error";
export type NumberReading = { readonly value: Decimal; readonly percent: boolean } | NumberFault;

/** How numbers are written as text in this workbook. */
export type NumberStyle = { readonly decimalComma: boolean };

const excelDigits = 15;
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

export const isErrorValue = (cell: Cell): boolean => typeof cell === "string" && cell.includes("#") && /^#(N\/A|[A-Z0-9/]+[!?])$/i.test(cell.trim());

/** Whether nothing is typed: blank, or spaces only. */
export const isBlank = (cell: Cell): boolean => cell === "" || (typeof cell === "string" && cell.trim() === "");

/** Reads a cell that is not blank. */
export function readNumber(cell: Cell, style: NumberStyle): NumberReading {
  if (typeof cell === "number") return Number.isFinite(cell) ? { value: decimalOf(cell), percent: false } : "not-a-number";
  if (typeof cell === "boolean") return "not-a-number";
  return isErrorValue(cell) ? "formula-error" : readText(cell, style);
}

const groupedByComma = /^(\d{1,3}(,\d{3})+|\d{1,3}( \d{3})+|\d{1,3}('\d{3})+|\d+)(\.\d*)?(e[+-]?\d+)?$|^\.\d+(e[+-]?\d+)?$/i;
const groupedByPoint = /^(\d{1,3}(\.\d{3})+|\d{1,3}( \d{3})+|\d{1,3}('\d{3})+|\d+)(,\d*)?(e[+-]?\d+)?$|^,\d+(e[+-]?\d+)?$/i;

/** Marks without width, which come along when text is copied from a page. */
const hiddenCharacters = /\u200b|\u200c|\u200d|\u200e|\u200f|\u2060|\ufeff/g;

function readText(text: string, { decimalComma }: NumberStyle): NumberReading {
  let digits = text.replace(hiddenCharacters, "").replace(/[\s\u00a0\u2007\u2009\u202f]+/g, " ").replace(/[\u2212\u2013]/g, "-").replace(/[\u2019]/g, "'").trim();
  let negative = false;
  // Brackets stand for a minus, with the currency sign inside them or before; a minus inside as well could mean either.
  const bracketed = /^([^\d()+-]*)\(([^()-]*)\)$/.exec(digits);
  if (bracketed) [negative, digits] = [true, `${bracketed[1]!}${bracketed[2]!}`.trim()];
  // A currency sign or a code of three letters, before or after, perhaps with a country before the sign.
  digits = digits.replace(/^([+-]?) ?(?:[A-Z]{0,3}\p{Sc}|[A-Z]{3} )/u, "$1").replace(/ ?(?:\p{Sc}|[A-Z]{3})$/u, "").trim();
  const percent = /%$/.test(digits);
  digits = digits.replace(/ ?%$/, "");
  if (/^[+-]/.test(digits)) [negative, digits] = [negative !== digits.startsWith("-"), digits.slice(1).trim()];
  if (/-$/.test(digits)) [negative, digits] = [!negative, digits.slice(0, -1).trim()];
  const grouped = decimalComma ? groupedByPoint : groupedByComma;
  if (!grouped.test(digits)) return !decimalComma && groupedByPoint.test(digits) ? "decimal-comma" : "not-a-number";
  const bare = decimalComma ? digits.replace(/[. ']/g, "").replace(",", ".") : digits.replace(/[, ']/g, "");
  const value = new Decimal(negative ? `-${bare}` : bare);
  return { value: percent ? value.div(hundred) : value, percent };
}
