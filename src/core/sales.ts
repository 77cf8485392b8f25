import { sum } from "./decimal";
import { perLayer } from "./budget";
import type { Budget, SalesFigures } from "./figures";
import type { Sale } from "./season";
import { cropQuantity, money, moneyPerUnit } from "./units";

/**
 * What is sold of a crop, and the price that the rest must bring:
 *
 *     price needed = (cost − other income − q·a) ÷ (s·Y·area − q)
 *
 * with q sold at the average price a, and cost, yield and share of the outlook. Contracts count as sold.
 *
 * @param outlook the crop's budget at its outlook
 * @returns `priceNeeded` is `null` where nothing is left to sell, and negative where the sales already pay for more
 */
export function salesFigures(sales: readonly Sale[], outlook: Budget): SalesFigures {
  const sold = sum(sales.map((sale) => sale.quantity));
  const received = sum(sales.map((sale) => sale.quantity.times(sale.price)));
  const operatorCrop = outlook.operatorShare.times(outlook.yields.used).times(outlook.area);
  const unsold = operatorCrop.minus(sold);
  return {
    sold: cropQuantity(sold), received: money(received),
    averagePrice: sold.isZero() ? null : moneyPerUnit(received.div(sold)),
    unsold: cropQuantity(unsold),
    priceNeeded: perLayer((layer) => unsold.lte("0") ? null : moneyPerUnit(
      outlook.costPerArea.layers[layer].minus(outlook.otherIncomePerArea).times(outlook.area).minus(received).div(unsold),
    )),
    entries: sales.map((sale) => sale.source),
  };
}
