/** What a loan takes of one year: its payments, how much of them is interest, and what is owed before and after them. */
import { daysBetween } from "./numbers/day";
import { Decimal, one, zero } from "./numbers/decimal";
import { debtService, installment, type Installment } from "./lender/amortisation";
import { monthOf, monthsLater, type Month } from "./lender/month";
import { repaidOn } from "./paymentDates";
import type { IsoDate } from "./row";
import type { Loan, Settings } from "./season";
import { money, type Money } from "./numbers/units";

type DuePayment = Installment & { readonly month: Month };

export type LoanYear = {
  readonly loan: Loan;
  /** Interest that falls due from January to December; of an operating loan, on what it carries into the year. */
  readonly interest: Money;
  readonly principal: Money;
  /** What is owed before the year's first payment, and after its last. */
  readonly opening: Money;
  readonly closing: Money;
  /** In their order; none of an operating loan, and none where the payment or its day is not entered. */
  readonly payments: readonly DuePayment[];
};

const monthsInYear = new Decimal("12");
const daysInYear = new Decimal("365");
/** Further from the season than this no loan is followed: the date is a slip, and told as one. */
const yearsFollowed = new Decimal("100");

/**
 * A term loan's payments of the year. The balance is that before `nextDue`; payments of the year before it are reckoned
 * back, down to `firstDue`:
 *
 *     balance before a payment = (balance after it + payment) ÷ (1 + rate of the period)
 *
 * Where the payment or its day is not entered the year's interest counts, rate × balance. An operating loan bears simple
 * interest on its balance from 1 January to its repayment, days ÷ 365.
 *
 * @param year four digits; `null` where nothing tells it: the year of the next payment then
 */
export function loanYear(loan: Loan, settings: Pick<Settings, "seasonYear" | "operatingInterest" | "repaymentDate">): LoanYear {
  const { seasonYear } = settings;
  const year = seasonYear ?? loan.nextDue?.slice(0, 4) ?? null;
  if (loan.kind === "operating")
    return withInterest(loan, loan.balance.times(loan.rate).times(yearsCarried(loan, year, repaidOn(settings))));
  const { payment, nextDue } = loan;
  const isFollowed =
    payment !== null && nextDue !== null && year !== null && new Decimal(year).minus(nextDue.slice(0, 4)).abs().lte(yearsFollowed);
  if (!isFollowed) return withInterest(loan, loan.balance.times(loan.rate));
  const { opening, payments } = paymentsOf(loan, payment, monthOf(nextDue), year);
  return { loan, opening, payments, ...debtService(payments), closing: payments.at(-1)?.balance ?? opening };
}

const withInterest = (loan: Loan, interest: Decimal): LoanYear => ({
  loan,
  interest: money(interest),
  principal: money(zero),
  opening: loan.balance,
  closing: loan.balance,
  payments: [],
});

function paymentsOf(loan: Loan, payment: Money, nextDue: Month, year: string): Pick<LoanYear, "opening" | "payments"> {
  const step = monthsInYear.div(loan.paymentsAYear);
  const ratePerPeriod = loan.rate.div(loan.paymentsAYear);
  const [january, december] = [`${year}-01`, `${year}-12`];
  const { firstDue } = loan;
  const first = firstDue === null || monthOf(firstDue) < january ? january : monthOf(firstDue);
  let [month, balance]: [Month, Money] = [nextDue, loan.balance];
  for (let before = monthsLater(month, step.neg()); before >= first; before = monthsLater(month, step.neg())) {
    balance = money(balance.plus(payment).div(one.plus(ratePerPeriod)));
    month = before;
  }
  const pay = (): DuePayment => {
    const due = { month, ...installment({ balance, ratePerPeriod, payment }) };
    [month, balance] = [monthsLater(month, step), due.balance];
    return due;
  };
  while (month < january && balance.gt("0")) pay();
  const opening = balance;
  const payments: DuePayment[] = [];
  while (month <= december && balance.gt("0")) payments.push(pay());
  return { opening, payments };
}

/** Years from 1 January to the repayment of what an operating loan carries: its own day, the season's, or the whole year. */
function yearsCarried({ nextDue }: Loan, year: string | null, repaidInSeason: IsoDate | null): Decimal {
  const repaid: IsoDate | null = [nextDue, repaidInSeason].find((day) => day !== null && year !== null && day >= `${year}-01-01`) ?? null;
  return repaid === null ? one : daysBetween(`${year!}-01-01`, repaid).div(daysInYear);
}
