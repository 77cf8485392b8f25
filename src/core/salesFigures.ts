import { larger, sum, zero, type Decimal } from "./numbers/decimal";
import { perLayer } from "./stageBudget";
import type { Budget, CropFigures, SalesFigures, WithSold } from "./figures";
import type { Sale } from "./season";
import { cropQuantity, money, moneyPerArea, moneyPerUnit } from "./numbers/units";

/** Whether the grain of a sale grew in the season: only that is counted against its crop. */
export const isOfSeason = ({ cropYear }: Pick<Sale, "cropYear">, seasonYear: string | null): boolean =>
  cropYear === null || seasonYear === null || cropYear === seasonYear;

/**
 * What is sold of a crop, and the price that the rest must bring:
 *
 *     price needed = (cost − other income + dock − q·a) ÷ (s·Y·area − q)
 *
 * with q sold at the average price a, and cost, yield and share of the outlook. Contracts count as sold.
 *
 * @param sales of this crop and of this season's grain
 * @param stages the crop's budgets
 * @returns `priceNeeded` is `null` where nothing is left to sell, and negative where the sales already pay for more
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
    priceNeeded: perLayer((layer) =>
      unsold.lte("0")
        ? null
        : moneyPerUnit(
            outlook.costPerArea.layers[layer]
              .minus(outlook.otherIncomePerArea)
              .times(outlook.area)
              .plus(docked(outlook))
              .minus(received)
              .div(unsold),
          ),
    ),
    withSold: { plan: at(plan), outlook: at(outlook), final: final === null ? null : at(final) },
    entries: sales.map((sale) => sale.source),
  };
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
