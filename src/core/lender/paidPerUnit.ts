/** What of the costs that move with yield is paid in money, per unit of a crop that is sold. */
import { sum, type Decimal } from "../numbers/decimal";
import type { CropFigures } from "../figures";
import { countsIn } from "../kinds";

type Grown = Pick<CropFigures, "fields">;

/**
 * The mean over the operator's units of the outlook, by area where none grow: costs that are no cash or of no layer of cash need
 * are not paid.
 */
export const paidPerUnit = (crop: Grown): Decimal =>
  meanPerUnit(crop, ({ outlook: { charges } }) =>
    sum(charges.filter(({ cash, kind }) => cash && countsIn(kind, "cashNeed")).map(({ perUnit }) => perUnit)),
  );

/** What of it is budget lines, which are paid on days of their own. */
export const linesPerUnit = (crop: Grown): Decimal => meanPerUnit(crop, ({ lined }) => sum(lined.map(({ rest }) => rest.perUnit)));

function meanPerUnit({ fields }: Grown, rateOf: (of: Grown["fields"][number]) => Decimal): Decimal {
  const units = fields.map(({ outlook: { budget } }) => budget.operatorShare.times(budget.yields.used).times(budget.area));
  const weights = units.every((each) => each.isZero()) ? fields.map(({ area }) => area) : units;
  return sum(fields.map((field, index) => rateOf(field).times(weights[index]!))).div(sum(weights));
}
