/**
 * Corn yield lost to weeds that are left to grow, by their height at the pass, as printed: a reading beside a decision, never a
 * promise.
 */
import { Decimal } from "../numbers/decimal";
import type { Source } from "../tables/source";

const weedDensities = ["thick", "thin"] as const;
export type WeedDensity = (typeof weedDensities)[number];

/** Weeds so tall, cm, when they are sprayed, and the percent of yield that is lost by then. */
export type LossPoint = { readonly height: Decimal; readonly loss: Decimal };

const point = (height: string, loss: string): LossPoint => ({ height: new Decimal(height), loss: new Decimal(loss) });

/** Nine trials in Ontario; 50 % in thick weeds and 25 and 50 % in thin ones were not reached and are not here. */
export const weedLosses: Readonly<Record<WeedDensity, readonly LossPoint[]>> = {
  thick: [point("3", "1"), point("5", "2.5"), point("7", "5"), point("11", "10"), point("27", "25")],
  thin: [point("1", "1"), point("4", "2.5"), point("11", "5"), point("53", "10")],
};

export const weedLossSource: Source = {
  title: "Impact of delayed postemergence herbicide application on corn yield (Weed Technology 36(2))",
  publisher: "University of Guelph",
  year: "2022",
  address: "https://doi.org/10.1017/wet.2022.10",
  where: "abstract",
};

/**
 * The percent of yield lost where weeds are so tall, straight between the two heights that are printed on either side.
 *
 * @param height cm
 * @returns `null` outside the heights printed: nothing is reckoned beyond them
 */
export function weedLoss(density: WeedDensity, height: Decimal): Decimal | null {
  const points = weedLosses[density];
  const above = points.findIndex((each) => each.height.gte(height));
  if (above < 0) return null;
  const upper = points[above]!;
  if (upper.height.eq(height)) return upper.loss;
  const lower = points[above - 1];
  return lower === undefined
    ? null
    : lower.loss.plus(upper.loss.minus(lower.loss).times(height.minus(lower.height)).div(upper.height.minus(lower.height)));
}

/** Centimetres in the units that heights are typed in. */
export const centimetresPerInch = new Decimal("2.54");
export const centimetresPerMillimetre = new Decimal("0.1");
