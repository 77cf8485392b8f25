/** Whether the farm can pay its term debt, and still replace its machines. */
import type { Decimal } from "../numbers/decimal";
import { money, type Money } from "../numbers/units";

/** One year of the whole farm. */
export type RepaymentBasis = {
  /** Income less all cash costs, term interest and depreciation included. */
  readonly netIncome: Money;
  readonly incomeTax: Money;
  readonly termInterest: Money;
  /** Machine ownership that was taken off to reach the net income; zero where none was. */
  readonly depreciation: Money;
  readonly familyLiving: Money;
  /** Principal due within the year. */
  readonly termPrincipal: Money;
  /** What the machines lose in the year at today's prices. */
  readonly replacement: Money;
};

export type Repayment = {
  /** What is there to pay interest and principal of term debt. */
  readonly capacity: Money;
  readonly debtService: Money;
  readonly margin: Money;
  readonly marginAfterReplacement: Money;
  /** Capacity ÷ debt service; `null` where there is no term debt. */
  readonly termDebtCoverage: Decimal | null;
};

/**
 * Repayment capacity = net income − income tax + term interest + depreciation − family living. What it leaves after
 * interest and principal is the margin; a farm may pass that test and still fail to replace what it wears out.
 */
export function repayment(basis: RepaymentBasis): Repayment {
  const capacity = basis.netIncome.minus(basis.incomeTax).plus(basis.termInterest).plus(basis.depreciation).minus(basis.familyLiving);
  const debtService = basis.termInterest.plus(basis.termPrincipal);
  const margin = capacity.minus(debtService);
  return {
    capacity: money(capacity),
    debtService: money(debtService),
    margin: money(margin),
    marginAfterReplacement: money(margin.minus(basis.replacement)),
    termDebtCoverage: debtService.isZero() ? null : capacity.div(debtService),
  };
}
