/** The whole farm in one year, as the tests of repayment need it. */
import { Decimal, sum, zero } from "../decimal";
import type { SeasonFigures } from "../seasonFigures";
import type { Kind } from "../kinds";
import type { Loan } from "../season";
import { money, type Money } from "../units";
import { debtService, schedule } from "./amortisation";
import type { RepaymentBasis } from "./repayment";

/**
 * From the outlook of all crops: income less operating and cash costs, term interest among them. No depreciation is
 * taken off, so none is added back; machine ownership stands for what the machines lose.
 *
 * Interest and principal of term debt come from the loans where there is a term loan, and from other costs where not.
 */
export function farmYear(figures: SeasonFigures, loans: readonly Loan[]): RepaymentBasis {
  const total = (of: (outlook: SeasonFigures["crops"][number]["outlook"]) => Decimal): Decimal =>
    sum(figures.crops.map(({ outlook }) => of(outlook).times(outlook.area)));
  const ofKind = (kind: Kind): Decimal => total((outlook) => outlook.costPerArea.byKind.get(kind) ?? zero);
  const due = termDebtOfYear(loans);
  const termInterest = due?.interest ?? money(ofKind("term interest"));
  const beforeInterest = total((outlook) => outlook.incomePerArea.minus(outlook.costPerArea.layers.cash)).plus(ofKind("term interest"));
  return {
    netIncome: money(beforeInterest.minus(termInterest)), incomeTax: money(ofKind("income tax")), termInterest,
    depreciation: money(zero), familyLiving: money(ofKind("family living")),
    termPrincipal: due?.principal ?? money(ofKind("term principal")), replacement: money(ofKind("machine ownership")),
  };
}

/** Interest and principal of the next twelve months of all term loans; `null` where there is no term loan. */
export function termDebtOfYear(loans: readonly Loan[]): { readonly interest: Money; readonly principal: Money } | null {
  const term = loans.filter((loan) => loan.kind === "term" && loan.payment !== null);
  if (term.length === 0) return null;
  const due = term.map((loan) => debtService(yearOf(loan)));
  return { interest: money(sum(due.map(({ interest }) => interest))), principal: money(sum(due.map(({ principal }) => principal))) };
}

/** The payments of one year; of a loan whose payment does not cover its interest, the payments without any principal. */
function yearOf({ balance, rate, payment, paymentsAYear }: Loan) {
  const paid = payment!;
  const payments = schedule({ balance, ratePerPeriod: rate.div(paymentsAYear), payment: paid }, paymentsAYear);
  const wholePayments = new Decimal(paymentsAYear);
  return payments ?? [{ payment: money(paid.times(wholePayments)), interest: money(paid.times(wholePayments)), principal: money(zero), balance }];
}
