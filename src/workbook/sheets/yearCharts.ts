/** The charts of a crop's past years on their sheet. */
import type { CropYear } from "../../core/history/cropYears";
import type { Decimal } from "../../core/numbers/decimal";
import type { ChartModel } from "../resultSheet";

/** Rows that a chart stands over. */
export const chartHeight = 11;

/**
 * Goal against harvest, and the price needed against the price got, side by side below the rows of the years, of which the last is
 * row `last`. None of what is not known of every year: a blank would be drawn as nothing.
 */
export function yearCharts(crop: string, years: readonly CropYear[], last: number): readonly ChartModel[] {
  if (years.length < 2) return [];
  const rows = (column: string) => `${column}${last - years.length + 1}:${column}${last}`;
  const chart = (
    title: string,
    columns: readonly [string, string],
    series: readonly [readonly [string, string], readonly [string, string]],
  ) => ({
    kind: "column" as const,
    title: `${crop}: ${title}`,
    categories: rows("A"),
    // A yield is never negative, and a price needed is in none of the years drawn.
    startsAtZero: years.every(({ priceNeeded }) => priceNeeded.full?.isNegative() !== true),
    series: series.map(([name, column]) => ({ name, values: rows(column) })),
    from: `${columns[0]}${last + 2}`,
    to: `${columns[1]}${last + 1 + chartHeight}`,
  });
  const isKnown = (of: (year: CropYear) => readonly (Decimal | null)[]) => years.every((year) => of(year).every((value) => value !== null));
  return [
    ...(isKnown(({ goal, yield: harvested }) => [goal, harvested])
      ? [
          chart(
            "yield, goal against harvest",
            ["A", "E"],
            [
              ["Goal", "C"],
              ["Yield", "D"],
            ],
          ),
        ]
      : []),
    ...(isKnown(({ priceNeeded, price }) => [priceNeeded.full, price])
      ? [
          chart(
            "price needed for full cost against price got",
            ["F", "L"],
            [
              ["Needed, full", "J"],
              ["Price got", "K"],
            ],
          ),
        ]
      : []),
  ];
}
