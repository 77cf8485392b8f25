import type { CropYear } from "../../core/history/cropYears";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

/** Goal against harvest, and the price needed for full cost against the price got, a year a row. */
export const yearRows = (years: readonly CropYear[], format: Format): readonly FigureRow[] =>
  years.map(({ season, goal, yield: harvested, priceNeeded, price, net }) => ({
    name: season,
    cells: [
      format.yield(goal),
      format.yield(harvested),
      format.priceNeeded(priceNeeded.full),
      format.money(price),
      net === null ? format.money(null) : format.signed(net),
    ],
  }));
