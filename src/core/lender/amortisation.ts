/** Loans that are paid off in equal payments. Nothing is rounded: a schedule that rounds every line drifts by cents. */
import { one, smaller, sum, zero, type Decimal } from "../numbers/decimal";
import { money, type Money } from "../numbers/units";

/** A loan on a day: what is owed, the interest of one payment period as a fraction, and what is paid each period. */
export type Amortised = { readonly balance: Money; readonly ratePerPeriod: Decimal; readonly payment: Money };

/** One payment of a schedule, and what is still owed after it. */
export type Installment = { readonly payment: Money; readonly interest: Money; readonly principal: Money; readonly balance: Money };

/**
 * The level payment that pays a loan off in so many periods:
 *
 *     payment = balance × i ÷ (1 − (1 + i)^−n)
 *
 * @param ratePerPeriod i, a fraction; at zero the balance is divided evenly
 * @param periods n, one or more
 */
export function levelPayment(balance: Money, ratePerPeriod: Decimal, periods: Decimal): Money {
  if (periods.lt("1")) throw new RangeError(`a loan is paid in one period or more, got ${periods}`);
  if (ratePerPeriod.isZero()) return money(balance.div(periods));
  return money(balance.times(ratePerPeriod).div(one.minus(one.plus(ratePerPeriod).pow(periods.neg()))));
}

/**
 * One payment: interest on the balance first, the rest off the balance, and no more than is owed. A payment below the
 * interest is all interest, and what it leaves unpaid is added to the balance.
 */
export function installment({ balance, ratePerPeriod, payment }: Amortised): Installment {
  const due = balance.times(ratePerPeriod);
  const owed = balance.plus(due);
  // What the 34th digit leaves over is not another payment.
  const paid = owed.minus(payment).lt("1e-20") ? owed : payment;
  const interest = smaller(due, paid);
  return { payment: money(paid), interest: money(interest), principal: money(paid.minus(interest)), balance: money(owed.minus(paid)) };
}

/**
 * The payments until the loan is paid, the last one as much as is left.
 *
 * @param most stop after so many payments; the schedule is then cut off, its last balance above zero
 * @returns `null` where the payment does not even cover the interest, because such a loan is never paid
 */
export function schedule(loan: Amortised, most: Decimal): readonly Installment[] | null {
  if (loan.balance.gt("0") && loan.payment.lte(loan.balance.times(loan.ratePerPeriod))) return null;
  const installments: Installment[] = [];
  let { balance } = loan;
  for (let count = zero; balance.gt("0") && count.lt(most); count = count.plus(one)) {
    const next = installment({ ...loan, balance });
    balance = next.balance;
    installments.push(next);
  }
  return installments;
}

/** Interest and principal of a run of payments. */
export const debtService = (installments: readonly Installment[]): { readonly interest: Money; readonly principal: Money } => ({
  interest: money(sum(installments.map(({ interest }) => interest))),
  principal: money(sum(installments.map(({ principal }) => principal))),
});
