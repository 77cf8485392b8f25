/** The whole farm in money: what comes in, what it costs to each layer, and what is left over. */
import { perLayer } from "./stageBudget";
import { sum, type Decimal } from "./numbers/decimal";
import type { CropFigures, PerLayer, Stage } from "./figures";
import type { SeasonFigures } from "./seasonFigures";
import { money, type Money } from "./numbers/units";

export type FarmFigures = {
  /** Sold grain at its own price, the rest at the price entered, and other income. */
  readonly income: Money;
  readonly costs: PerLayer<Money>;
  /** Income less the cost of the layer; negative where the farm falls short. */
  readonly leftOver: PerLayer<Money>;
  /** What each crop leaves over, in the order of the table; they add up to the farm's. */
  readonly crops: readonly { readonly crop: string; readonly leftOver: PerLayer<Money> }[];
};

/** The newest stage that a crop has figures for. */
export const newestStage = ({ final }: Pick<CropFigures, "final">): Stage => (final === null ? "outlook" : "final");

/**
 * All crops added up, each at the stage that `at` names for it:
 *
 *     left over = Σ (income per area with what is sold − cost per area) × area
 */
export function farmFigures({ crops }: Pick<SeasonFigures, "crops">, at: (crop: CropFigures) => Stage): FarmFigures {
  const each = crops.map((crop) => {
    const stage = at(crop);
    const [budget, sold] = [crop[stage] ?? crop.outlook, crop.sales.withSold[stage] ?? crop.sales.withSold.outlook];
    return {
      crop: crop.crop,
      income: sold.incomePerArea.times(budget.area),
      costs: perLayer((layer) => budget.costPerArea.layers[layer].times(budget.area)),
      leftOver: perLayer((layer) => money(sold.netPerArea[layer].times(budget.area))),
    };
  });
  const total = (of: (crop: (typeof each)[number]) => Decimal): Money => money(sum(each.map(of)));
  return {
    income: total(({ income }) => income),
    costs: perLayer((layer) => total(({ costs }) => costs[layer])),
    leftOver: perLayer((layer) => total(({ leftOver }) => leftOver[layer])),
    crops: each.map(({ crop, leftOver }) => ({ crop, leftOver })),
  };
}
