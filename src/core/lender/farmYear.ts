/** The whole farm in one year, as the tests of repayment need it. */
import { larger, sum, zero, type Decimal } from "../numbers/decimal";
import type { Charge, CropFigures } from "../figures";
import { countsIn, type Kind } from "../kinds";
import { docked } from "../salesFigures";
import type { SeasonFigures } from "../seasonFigures";
import { money, type Money } from "../numbers/units";
import type { RepaymentBasis } from "./repayment";

export type FarmYear = RepaymentBasis & {
  /** What is sold at its own prices, the rest of the outlook at the price entered, and other income. */
  readonly income: Money;
  /** Operating and cash costs that are paid in money, term interest among them. */
  readonly cashCosts: Money;
  /** What of them is interest on the season's operating money. */
  readonly operatingInterest: Money;
};

/**
 * From the outlook of all crops: income less operating and cash costs, term interest among them, as far as they are paid
 * in money. No depreciation is taken off, so none is added back; machine ownership stands for what the machines lose.
 */
export function farmYear({ crops }: Pick<SeasonFigures, "crops">): FarmYear {
  const paid = (of: (kind: Kind) => boolean): Decimal => costs(crops, (charge) => charge.cash && of(charge.kind));
  const [income, cashCosts] = [sum(crops.map(incomeOf)), paid((kind) => countsIn(kind, "cash"))];
  return {
    income: money(income),
    cashCosts: money(cashCosts),
    operatingInterest: money(paid((kind) => kind === "operating interest")),
    netIncome: money(income.minus(cashCosts)),
    depreciation: money(zero),
    incomeTax: money(paid((kind) => kind === "income tax")),
    termInterest: money(paid((kind) => kind === "term interest")),
    termPrincipal: money(paid((kind) => kind === "term principal")),
    familyLiving: money(paid((kind) => kind === "family living")),
    replacement: money(costs(crops, ({ kind }) => kind === "machine ownership")),
  };
}

/** Grain that is sold at what it brings, the rest at the price entered; what is sold beyond the outlook still brings its price. */
const incomeOf = ({ outlook, sales }: CropFigures): Decimal =>
  sales.received
    .plus(larger(sales.unsold, zero).times(outlook.price))
    .minus(docked(outlook))
    .plus(outlook.otherIncomePerArea.times(outlook.area));

/** What the charges of the outlook come to on all fields, what moves with yield at the yield of the outlook. */
function costs(crops: readonly CropFigures[], counts: (charge: Charge) => boolean): Decimal {
  return sum(
    crops
      .flatMap(({ fields }) => fields)
      .flatMap(({ outlook: { budget, charges } }) => {
        const units = budget.operatorShare.times(budget.yields.used).times(budget.area);
        return charges.filter(counts).map(({ amount, perUnit }) => (perUnit.isZero() ? amount : amount.plus(perUnit.times(units))));
      }),
  );
}
