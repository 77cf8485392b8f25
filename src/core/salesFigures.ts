import { larger, sum, zero, type Decimal } from "./numbers/decimal";
import { perLayer } from "./stageBudget";
import type { Budget, CropFigures, SalesFigures, WithSold } from "./figures";
import { leastToPay } from "./flexibleRent";
import { countsIn, type Layer } from "./kinds";
import type { Sale } from "./season";
import { cropQuantity, money, moneyPerArea, moneyPerUnit, type MoneyPerUnit } from "./numbers/units";

/** Whether the grain of a sale grew in the season: only that is counted against its crop. */
export const isOfSeason = ({ cropYear }: Pick<Sale, "cropYear">, seasonYear: string | null): boolean =>
  cropYear === null || seasonYear === null || cropYear === seasonYear;

/**
 * What is sold of a crop, and the price that the rest must bring:
 *
 *     price needed = (cost − other income + dock − q·a) ÷ (s·Y·area − q)
 *
 * with q sold at the average price a, and cost, yield and share of the outlook. Contracts count as sold. A flexible rent goes by
 * that price on all of the crop, sold or not, as it goes by the price entered elsewhere: the lease's price is the market's.
 *
 * @param sales of this crop and of this season's grain
 * @param stages the crop's budgets
 * @returns `priceNeeded` is `null` where nothing is left to sell or rent takes more of a higher price than the rest brings, and
 * negative where the sales already pay for more
 */
export function salesFigures(
  sales: readonly Sale[],
  { plan, outlook, final }: Pick<CropFigures, "plan" | "outlook" | "final">,
): SalesFigures {
  const sold = sum(sales.map((sale) => sale.quantity));
  const received = sum(sales.map((sale) => sale.quantity.times(sale.price)));
  const unsold = operatorCrop(outlook).minus(sold);
  const at = (budget: Budget) => withSold(budget, sold, received);
  return {
    sold: cropQuantity(sold),
    received: money(received),
    averagePrice: sold.isZero() ? null : moneyPerUnit(received.div(sold)),
    unsold: cropQuantity(unsold),
    priceNeeded: perLayer((layer) => (unsold.lte("0") ? null : priceNeeded(outlook, layer, received, unsold))),
    withSold: { plan: at(plan), outlook: at(outlook), final: final === null ? null : at(final) },
    entries: sales.map((sale) => sale.source),
  };
}

/** The price that `unsold` must bring beside what is received. */
function priceNeeded(outlook: Budget, layer: Layer, received: Decimal, unsold: Decimal): MoneyPerUnit | null {
  const { area, otherIncomePerArea, costPerArea, rent, rentAboveBase, yields } = outlook;
  const cost = costPerArea.layers[layer].minus(otherIncomePerArea).times(area).plus(docked(outlook)).minus(received);
  if (rent.length === 0 || !countsIn("cash rent", layer)) return moneyPerUnit(cost.div(unsold));
  const price = leastToPay(unsold.div(area), yields.used, rent, cost.div(area).minus(rentAboveBase));
  return price === null ? null : moneyPerUnit(price);
}

/** What buyers take off the operator's crop for the test weight of its loads, sold or not: a sale's own price is the one before it. */
export const docked = (budget: Budget): Decimal => budget.dock.times(operatorCrop(budget));

const operatorCrop = ({ operatorShare, yields, area }: Budget): Decimal => operatorShare.times(yields.used).times(area);

/**
 * What is sold brings its own price, the rest of the yield the price entered:
 *
 *     income = (q·a + (s·Y·area − q)·p − d·s·Y·area) ÷ area + o
 *
 * Where more is sold than grows, nothing is left at the price entered and what is sold still brings its own.
 */
function withSold(budget: Budget, sold: Decimal, received: Decimal): WithSold {
  const { price, area, otherIncomePerArea, costPerArea, incomePerArea, netPerArea } = budget;
  if (sold.isZero()) return { incomePerArea, netPerArea };
  const rest = larger(operatorCrop(budget).minus(sold), zero);
  const income = received.plus(rest.times(price)).minus(docked(budget)).div(area).plus(otherIncomePerArea);
  return { incomePerArea: moneyPerArea(income), netPerArea: perLayer((layer) => moneyPerArea(income.minus(costPerArea.layers[layer]))) };
}
