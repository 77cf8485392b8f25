/** The yield that a field has proven over the years, and the yields that it rests on. */
import { grouped } from "../grouped";
import { Decimal, sum } from "../numbers/decimal";
import { yieldPerArea, type Yield } from "../numbers/units";
import type { PastField } from "./pastField";

/**
 * Years that make a proven yield, and the most that count: yearly yields in a row from the newest (Iowa State University Extension,
 * A1-55, 2017, for the federal crop insurance of the United States).
 */
export const fewestYears = 4;
const mostYears = 10;

/** A field's yield of one crop in one year; of two parts of it the mean by area. */
type YearOfField = { readonly season: string; readonly yield: Yield };

export type FieldHistory = {
  /** The years that count, the newest first. */
  readonly years: readonly YearOfField[];
  /** Mean of these years, each counting alike; `null` where there are fewer than four. */
  readonly proven: Yield | null;
  /**
   * Why older years do not count: the year of which nothing is entered for the field, or of which the yield of this crop is not;
   * `null` where none is left out for it.
   */
  readonly endsBefore: { readonly season: string; readonly why: "no entry" | "no yield" } | null;
};

/**
 * The proven yield of a field and crop: the mean of the last four to ten years in which the crop grew there, from the newest
 * back. Years of other crops are passed over; a year without any entry of the field ends the row, because nobody may leave out a
 * bad one, and so does one whose yield is blank. It is the grower's own count, not an insurer's.
 *
 * @param past rows of any field and crop
 * @param before the season for which it is asked: its own year and later ones do not count; `null`: all do
 */
export function fieldHistory(past: readonly PastField[], field: string, crop: string, before: string | null): FieldHistory {
  const here = past.filter((row) => row.field === field && (before === null || row.season < before));
  const bySeason = grouped(here, ({ season }) => season);
  const ofCrop = [...bySeason].flatMap(([season, rows]) => (rows.some((row) => row.crop === crop) ? season : []));
  const oldest = ofCrop.reduce((first, season) => (season < first ? season : first), "9999");
  const years: YearOfField[] = [];
  let endsBefore: FieldHistory["endsBefore"] = null;
  const newest = [...bySeason.keys()].reduce((last, season) => (season > last ? season : last), "");
  for (let season = newest; season >= oldest && years.length < mostYears; season = yearBefore(season)) {
    const rows = bySeason.get(season);
    if (rows === undefined) {
      endsBefore = { season, why: "no entry" };
      break;
    }
    const grown = rows.filter((row) => row.crop === crop);
    if (grown.length === 0) continue;
    const of = yieldOf(grown);
    if (of === null) {
      endsBefore = { season, why: "no yield" };
      break;
    }
    years.push({ season, yield: of });
  }
  const proven =
    years.length < fewestYears ? null : yieldPerArea(sum(years.map((year) => year.yield)).div(new Decimal(String(years.length))));
  return { years, proven, endsBefore };
}

/** Mean by area; `null` where the yield of a part is not entered. */
function yieldOf(rows: readonly PastField[]): Yield | null {
  const yields = rows.flatMap((row) => (row.yield === null ? [] : [row.yield.times(row.area)]));
  return yields.length < rows.length ? null : yieldPerArea(sum(yields).div(sum(rows.map((row) => row.area))));
}

/** The year before one of four digits. */
export const yearBefore = (season: string): string => new Decimal(season).minus("1").toFixed().padStart(4, "0");
