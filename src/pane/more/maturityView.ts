/** When a field is projected to mature and how far that is from a freeze: in words, and as places on a strip of dates. */
import { Decimal, hundred } from "../../core/numbers/decimal";
import { daysBetween } from "../../core/numbers/day";
import type { IsoDate } from "../../core/row";
import type { FieldWeather } from "../../core/weather/fieldWeather";
import { marginWords } from "../../workbook/sheets/weatherSheet";
import type { Format } from "../format";

export type MaturityLine = {
  readonly field: string;
  /** "Oct 4". */
  readonly matures: string;
  /** "Sep 12 to Oct 6; 32 days before the median freeze, 14 days before the earliest." */
  readonly says: string;
  readonly strip: Strip;
};
/** Hundredths of the width, as text for the drawing. */
type Strip = {
  /** From the earliest to the latest. */
  readonly early: string;
  readonly width: string;
  readonly date: string;
  readonly freezes: { readonly earliest: string; readonly median: string } | null;
};

const margin = (days: Decimal): string => (days.isZero() ? "on the day of" : marginWords(days));

/** Fields with a projected maturity, all on one strip: from the last day of the record to the end of the year. */
export function maturityLines(all: readonly FieldWeather[], format: Format): readonly MaturityLine[] {
  const rated = all.flatMap((each) => (each.maturity === null ? [] : [{ ...each, maturity: each.maturity }]));
  if (rated.length === 0) return [];
  const first = rated.map(({ to, maturity }) => (to < maturity.early ? to : maturity.early)).sort()[0]!;
  const last = `${rated
    .map(({ maturity }) => maturity.late ?? maturity.date)
    .sort()
    .at(-1)!
    .slice(0, 4)}-12-31`;
  const place = (day: IsoDate) =>
    Decimal.min(hundred, Decimal.max("0", daysBetween(first, day).div(daysBetween(first, last)).times(hundred)));
  const at = (day: IsoDate) => place(day).toFixed(1);
  const day = (date: IsoDate) => format.day(date.slice(5));
  return rated.map(({ field, maturity: { date, early, late }, frost, frostMargin }) => ({
    field,
    matures: day(date),
    says: `${late === early ? "it is there" : late === null ? `${day(early)} or later, in some years not at all` : `${day(early)} to ${day(late)}`}${
      frostMargin === null ? "" : `; ${margin(frostMargin.median)} the median freeze, ${margin(frostMargin.earliest)} the earliest`
    }.`,
    strip: {
      early: at(early),
      width: place(late ?? last)
        .minus(place(early))
        .toFixed(1),
      date: at(date),
      freezes:
        frost === null
          ? null
          : { earliest: at(`${date.slice(0, 4)}-${frost.earliest}`), median: at(`${date.slice(0, 4)}-${frost.median}`) },
    },
  }));
}
