/** What loans charge to each field, worked out again from the definition of the product. */
import type { Field, Loan, Season } from "../../src/core/season";
import { linesIn } from "./exactBudgetLines";
import { noLoan, type Cost } from "./exactCost";
import { landOf } from "./exactFields";
import { shareOut } from "./exactSplit";
import { compare, divided, fraction, isZero, minus, one, plus, read, smaller, times, total, zero, type Fraction } from "./fraction";

/** Months since the year 0. */
const monthOf = (date: string): number => Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1;

/** The season's year; that of the next payment where it is not entered. */
const yearOf = ({ settings: { seasonYear } }: Season, { nextDue }: Loan): string | null => seasonYear ?? nextDue?.slice(0, 4) ?? null;

type Due = { readonly interest: Fraction; readonly principal: Fraction };

/** Interest and principal that fall due in the season's year. */
export function dueInYear(season: Season, loan: Loan): Due {
  const [balance, rate] = [read(loan.balance), read(loan.rate)];
  if (loan.kind === "operating") return { interest: times(balance, rate, carriedFor(season, loan)), principal: zero };
  const due = installments(season, loan);
  if (due === null) return { interest: times(balance, rate), principal: zero };
  return { interest: total(due.map(({ interest }) => interest)), principal: total(due.map(({ principal }) => principal)) };
}

/**
 * What a term loan takes in each month of the season's year; the year's interest without a month where the payment or its day is
 * not entered.
 */
export function duePayments(season: Season, loan: Loan): readonly { readonly month: string | null; readonly amount: Fraction }[] {
  const due = installments(season, loan);
  if (due === null) return [{ month: null, amount: times(read(loan.balance), read(loan.rate)) }];
  return due.map(({ month, interest, principal }) => ({
    month: `${String(Math.floor(month / 12))}-${String((month % 12) + 1).padStart(2, "0")}`,
    amount: plus(interest, principal),
  }));
}

function installments(season: Season, loan: Loan): readonly (Due & { readonly month: number })[] | null {
  const [balance, rate] = [read(loan.balance), read(loan.rate)];
  if (loan.payment === null || loan.nextDue === null) return null;
  const times12 = Number(loan.paymentsAYear.toFixed());
  const [next, january] = [monthOf(loan.nextDue), Number(yearOf(season, loan)) * 12];
  const start = (loan.firstDue ?? null) === null ? january : Math.max(january, monthOf(loan.firstDue!));
  const period = plus(one, divided(rate, fraction(BigInt(times12))));
  const payment = read(loan.payment);
  // The payments between the start and the next one come before it, one period each.
  const back = Math.max(0, Math.floor((next - start) / (12 / times12)));
  let owed = balance;
  for (let each = 0; each < back; each++) owed = divided(plus(owed, payment), period);
  const due: (Due & { readonly month: number })[] = [];
  for (let month = next - back * (12 / times12); month < january + 12 && compare(owed, zero) > 0n; month += 12 / times12) {
    const withInterest = times(owed, period);
    const paid = smaller(payment, withInterest);
    const interest = smaller(paid, minus(withInterest, owed));
    if (month >= january) due.push({ month, interest, principal: minus(paid, interest) });
    owed = minus(withInterest, paid);
  }
  return due;
}

/** Years from the first of January to the day on which an operating loan is repaid, all of the year where no day is known. */
function carriedFor(season: Season, loan: Loan): Fraction {
  const {
    settings: { operatingInterest, repaymentDate },
  } = season;
  const { nextDue } = loan;
  const year = yearOf(season, loan);
  if (year === null) return one;
  const newYear = `${year}-01-01`;
  const days = [nextDue, operatingInterest?.method === "by date" ? operatingInterest.repaymentDate : repaymentDate].filter(
    (day) => day !== null && day >= newYear,
  );
  return days.length === 0 ? one : fraction(BigInt((Date.parse(days[0]!) - Date.parse(newYear)) / 86_400_000), 365n);
}

export function loanCosts(season: Season): readonly Cost[] {
  return (season.loans ?? []).flatMap((loan) => {
    const target = loan.bornBy ?? null;
    const named = season.fields.filter(
      (field) => target !== null && ("field" in target ? field.name === target.field : field.crop === target.crop),
    );
    const bearers = named.length === 0 ? season.fields : named;
    const { interest, principal } = dueInYear(season, loan);
    return (
      [
        ["term interest", interest],
        ["term principal", principal],
      ] as const
    )
      .filter(([, amount]) => !isZero(amount))
      .flatMap(([kind, amount]) =>
        shareOut(amount, landOf(bearers)).map((share, index): Cost => ({
          field: bearers[index]!.name,
          kind,
          amount: share,
          perUnit: zero,
          loan: noLoan,
          cash: true,
          progress: "left",
        })),
      );
  });
}

/** Whether a field has machine ownership or a land charge, which stand for the interest on all capital in it. */
export const hasCapitalCharge = (season: Season, field: Field): boolean =>
  (field.landChargePerArea !== null && !field.landChargePerArea.isZero()) ||
  linesIn(season, field).some(
    ({ kind, entered }) => (kind === "machine ownership" || kind === "land charge") && entered.some(({ amount }) => !amount.isZero()),
  ) ||
  season.otherCosts.some(
    ({ kind, amount, over }) =>
      (kind === "machine ownership" || kind === "land charge") &&
      !amount.isZero() &&
      ("all" in over || ("crop" in over ? over.crop === field.crop : over.field === field.name)),
  );
