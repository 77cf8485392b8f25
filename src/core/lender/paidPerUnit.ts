/** What of the costs that move with yield is paid in money, per unit of a crop that is sold. */
import { sum, type Decimal } from "../decimal";
import type { CropFigures } from "../figures";
import { countsIn } from "../kinds";

/** The mean over the operator's units of the outlook, by area where none grow: costs that are no cash or of no layer of cash need are not paid. */
export function paidPerUnit({ fields }: Pick<CropFigures, "fields">): Decimal {
  const rates = fields.map(({ outlook: { charges } }) => sum(charges.filter(({ cash, kind }) => cash && countsIn(kind, "cashNeed")).map(({ perUnit }) => perUnit)));
  const units = fields.map(({ outlook: { budget } }) => budget.operatorShare.times(budget.yields.used).times(budget.area));
  const weights = units.every((each) => each.isZero()) ? fields.map(({ area }) => area) : units;
  return sum(rates.map((rate, index) => rate.times(weights[index]!))).div(sum(weights));
}
