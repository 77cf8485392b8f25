/** How figures read in the pane: rounded as everywhere else, grouped as the reader's language groups them. */
import { hundred, type Decimal } from "../core/numbers/decimal";
import type { IsoDate } from "../core/row";
import type { Settings } from "../core/season";
import type { MonthDay } from "../core/stand/monthDay";
import { spelled } from "../workbook/spelling";
import {
  shownMoney,
  shownPriceAtMost,
  shownPriceNeeded,
  shownQuantity,
  shownStand,
  shownYield,
  shownYieldAtMost,
  shownYieldNeeded,
} from "../workbook/shown";

/** Stands where a figure has no answer. */
export const noFigure = "–";

type Shown = (value: Decimal | null) => string;

/** Every way in which the pane writes a figure. A figure without its unit belongs in a table that names the unit. */
export type Format = {
  /** Money to the cent, without its currency. */
  readonly money: Shown;
  /** The difference of two amounts as they are shown, signed: "+3.22"; "no change". */
  readonly change: (from: Decimal, to: Decimal) => string;
  /** A difference of money, signed: "+3.22", "−1.00", "0.00". */
  readonly signed: (value: Decimal) => string;
  /** Money with its currency: "1,234.50 USD", or "$1,234.50" where the currency is a sign. */
  readonly amount: Shown;
  /** A price that is needed, rounded up to the cent. */
  readonly priceNeeded: Shown;
  /** A price below which something pays, rounded down to the cent. */
  readonly priceAtMost: Shown;
  readonly yield: Shown;
  /** A yield that is needed, rounded up to the tenth. */
  readonly yieldNeeded: Shown;
  /** A yield that may be lost at most, rounded down to the tenth. */
  readonly yieldAtMost: Shown;
  /** Up to two decimals, none where there are none. */
  readonly quantity: Shown;
  /** Money to the whole unit, for tables of many figures. */
  readonly whole: Shown;
  /** How many there are of something, with thousands apart. */
  readonly count: (of: number) => string;
  /** Plants per area, to the hundred. */
  readonly plants: Shown;
  /** A fraction as a percentage of one decimal at most: "81.5%". */
  readonly percent: Shown;
  /** The difference of two yields as they are shown, signed; "no change". */
  readonly yieldChange: (from: Decimal, to: Decimal) => string;
  /** "Jun 5, 2031"; a day of any year as "Jun 5". */
  readonly day: (day: IsoDate | MonthDay) => string;
  /** "May 2031", of a month as `YYYY-MM`. */
  readonly month: (month: string) => string;
  /** Words of ours as this season's growers write and say them: spelled by the currency, haul as trucking where land is in acres. */
  readonly words: (ours: string) => string;
  readonly currency: string;
  /** "acre" or "hectare". */
  readonly areaName: "acre" | "hectare";
  /** "ac" or "ha". */
  readonly areaUnit: Settings["areaUnit"];
  /** "USD per acre". */
  readonly perArea: string;
};

/** @param language of the reader, such as `en-US`; left out: the browser's */
export function formatOf({ currency, areaUnit }: Pick<Settings, "currency" | "areaUnit">, language?: string): Format {
  const fixed = (places: 0 | 1 | 2, most: 0 | 1 | 2 = places) => {
    const intl = new Intl.NumberFormat(language, { minimumFractionDigits: places, maximumFractionDigits: most });
    // Given as text, the digits are written as they are and never become a binary number.
    return (value: Decimal) => intl.format(value.toFixed() as `${number}`).replace("-", "−");
  };
  const [two, oneDecimal, upToTwo, upToOne, whole] = [fixed(2), fixed(1), fixed(0, 2), fixed(0, 1), fixed(0)];
  const dated = (year: boolean) =>
    new Intl.DateTimeFormat(language, { timeZone: "UTC", day: "numeric", month: "short", ...(year && { year: "numeric" }) });
  const [withYear, withoutYear] = [dated(true), dated(false)];
  const inMonth = new Intl.DateTimeFormat(language, { timeZone: "UTC", month: "short", year: "numeric" });
  const shown =
    (round: (value: Decimal) => Decimal, write: (value: Decimal) => string): Shown =>
    (value) =>
      value === null ? noFigure : write(round(value));
  const areaName = areaUnit === "ac" ? "acre" : "hectare";
  const money = shown(shownMoney, two);
  const isCode = /^\p{L}+$/u.test(currency);
  const signed = (round: (value: Decimal) => Decimal, write: (value: Decimal) => string) => (from: Decimal, to: Decimal) => {
    const difference = round(to).minus(round(from));
    return difference.isZero() ? "no change" : `${difference.isNegative() ? "" : "+"}${write(difference)}`;
  };
  return {
    money,
    currency,
    areaName,
    areaUnit,
    words: (ours) =>
      spelled(areaUnit === "ac" ? ours.replace(/\bhaul(ing)?\b/g, "trucking").replace(/\bHaul(ing)?\b/g, "Trucking") : ours, currency),
    signed: (value) => `${shownMoney(value).gt("0") ? "+" : ""}${money(value)}`,
    change: signed(shownMoney, two),
    yieldChange: signed(shownYield, oneDecimal),
    whole: shown(
      (value) => shownMoney(value).toDecimalPlaces(0),
      (value) => whole(value.isZero() ? value.abs() : value),
    ),
    count: new Intl.NumberFormat(language).format,
    plants: shown(shownStand, whole),
    percent: shown(
      (value) => shownYield(value.times(hundred)),
      (value) => `${upToOne(value)}%`,
    ),
    day: (day) => (day.length > 5 ? withYear.format(new Date(`${day}T00:00:00Z`)) : withoutYear.format(new Date(`2001-${day}T00:00:00Z`))),
    month: (month) => inMonth.format(new Date(`${month}-01T00:00:00Z`)),
    amount: (value) => {
      if (value === null) return noFigure;
      if (isCode) return `${money(value)} ${currency}`;
      return shownMoney(value).isNegative() ? `−${currency}${money(value.neg())}` : `${currency}${money(value)}`;
    },
    priceNeeded: shown(shownPriceNeeded, two),
    priceAtMost: shown(shownPriceAtMost, two),
    yield: shown(shownYield, oneDecimal),
    yieldNeeded: shown(shownYieldNeeded, oneDecimal),
    yieldAtMost: shown(shownYieldAtMost, oneDecimal),
    quantity: shown(shownQuantity, upToTwo),
    perArea: `${currency} per ${areaName}`,
  };
}
