import { netPerArea, type Costs } from "../breakEven";
import type { MoneyPerArea, MoneyPerUnit, Yield } from "../numbers/units";

export type PriceYieldGrid = {
  readonly prices: readonly MoneyPerUnit[];
  /** One row for each yield, its net returns in the order of the prices. */
  readonly rows: readonly { readonly yield: Yield; readonly net: readonly MoneyPerArea[] }[];
};

/**
 * Net return per area for every yield and price. Costs that move with yield move with it here: a table that holds the
 * cost of an acre still would make low yields look worse and high ones better than they are.
 */
export const priceYieldGrid = (costs: Costs, yields: readonly Yield[], prices: readonly MoneyPerUnit[]): PriceYieldGrid => ({
  prices,
  rows: yields.map((at) => ({ yield: at, net: prices.map((price) => netPerArea(costs, at, price)) })),
});
