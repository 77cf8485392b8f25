/** The pictures of a crop's past years: goal and harvest, and the price needed and got, a pair of columns a year, from nothing up. */
import type { CropYear } from "../../core/history/cropYears";
import { Decimal } from "../../core/numbers/decimal";
import type { Format } from "../format";

/** Of the one series that is drawn hollow and the one that is filled; `null` where it is not known. */
type Column = { readonly x: number; readonly width: number; readonly y: number; readonly height: number } | null;
export type YearsPlot = {
  readonly says: string;
  readonly years: readonly { readonly season: string; readonly middle: number; readonly columns: readonly [Column, Column] }[];
};
export const [plotWidth, plotGround] = [300, 92] as const;
const plotTop = 8;
/** More years than fit beside one another are left to the table. */
const mostYears = 10;

type Pair = readonly [Decimal | null, Decimal | null];

/** @returns `null` where fewer than two years have either figure */
function plotOf(years: readonly CropYear[], pair: (year: CropYear) => Pair, says: string): YearsPlot | null {
  const drawn = years
    .filter((year) => pair(year).some((value) => value !== null))
    .slice(0, mostYears)
    .reverse();
  if (drawn.length < 2) return null;
  const most = Decimal.max("0", ...drawn.flatMap((year) => pair(year).filter((value) => value !== null)));
  if (most.isZero()) return null;
  const step = plotWidth / drawn.length;
  const width = Math.round(Math.min(24, step / 3));
  return {
    says,
    years: drawn.map((year, index) => {
      const middle = Math.round((index + 0.5) * step);
      const column = (value: Decimal | null, x: number): Column => {
        if (value === null) return null;
        const height = Math.round(Number(Decimal.max("0", value).div(most)) * (plotGround - plotTop) * 10) / 10;
        return { x, width, y: plotGround - height, height };
      };
      const [first, second] = pair(year);
      return { season: year.season, middle, columns: [column(first, middle - width - 1), column(second, middle + 1)] };
    }),
  };
}

/** Years of one crop, the newest first, as the table beside them has them. */
export const yieldPlot = (crop: string, years: readonly CropYear[], unit: string, format: Format): YearsPlot | null =>
  plotOf(
    years,
    ({ goal, yield: harvested }) => [goal, harvested],
    `${crop}, ${unit} per ${format.areaName}, goal and yield: ${said(years, ({ goal, yield: harvested }) => `${format.yield(goal)} and ${format.yield(harvested)}`)}.`,
  );

export const pricePlot = (crop: string, years: readonly CropYear[], unit: string, format: Format): YearsPlot | null =>
  plotOf(
    years,
    ({ priceNeeded, price }) => [priceNeeded.full, price],
    `${crop}, ${format.currency} per ${unit}, price needed and got: ${said(years, ({ priceNeeded, price }) => `${format.priceNeeded(priceNeeded.full)} and ${format.money(price)}`)}.`,
  );

const said = (years: readonly CropYear[], words: (year: CropYear) => string): string =>
  [...years]
    .reverse()
    .map((year) => `${year.season} ${words(year)}`)
    .join("; ");
