/** Month by month: what comes in, what goes out, and the operating loan that carries the difference. */
import { Decimal, larger, sum, zero } from "../numbers/decimal";
import type { EntryRef } from "../row";
import { Tally, tallied } from "../numbers/tally";
import { money, type Money } from "../numbers/units";
import type { Month } from "./month";

/** Money that moves in a month. Positive comes in. `month` is `null` where the entry tells none. */
export type Flow = {
  readonly month: Month | null;
  readonly group: string;
  readonly amount: Money;
  readonly entries: readonly EntryRef[];
  /** Whether its month follows from a rule because nobody entered one. */
  readonly isUndated?: boolean;
};

export type OperatingLoan = { readonly opening: Money; /** A fraction a year. */ readonly rate: Decimal };

export type CashMonth = {
  readonly month: Month;
  /** Money in and out by group; a group that does not move this month is absent. */
  readonly flows: ReadonlyMap<string, Money>;
  readonly moneyIn: Money;
  /** Zero or more. */
  readonly moneyOut: Money;
  readonly draw: Money;
  readonly interest: Money;
  readonly repaid: Money;
  /** What is owed on the operating loan at the end of the month, interest included. */
  readonly loan: Money;
  readonly cash: Money;
};

export type CashFlow = {
  readonly months: readonly CashMonth[];
  /** Groups that move at all, those that bring money first, each in order of first appearance. */
  readonly groups: readonly string[];
  /** The month with the largest balance of the operating loan, the first of several; `null` where nothing is ever owed. */
  readonly peak: { readonly month: Month; readonly balance: Money } | null;
  /** What no entry dates: it falls by a rule, or evenly over all months where there is none. */
  readonly spread: Money;
};

const monthsInYear = new Decimal("12");

/**
 * Interest is charged each month on what was owed at its beginning and added to the loan. Whatever the month lacks is
 * drawn; whatever it has over pays the loan back before cash builds up. Flows outside the months are left out: the
 * caller chooses months that hold them all.
 *
 * @param months in order, at least one
 */
export function cashFlow(flows: readonly Flow[], months: readonly Month[], loan: OperatingLoan, openingCash: Money): CashFlow {
  const dated = byMonth(flows, months);
  const rows: CashMonth[] = [];
  let [owed, cash]: [Decimal, Decimal] = [loan.opening, openingCash];
  for (const month of months) {
    const moved = dated.get(month)!;
    const moneyIn = sum([...moved.values()].filter((amount) => amount.gt("0")));
    const moneyOut = sum([...moved.values()].filter((amount) => amount.lt("0"))).neg();
    const interest = owed.times(loan.rate).div(monthsInYear);
    const atHand = cash.plus(moneyIn).minus(moneyOut);
    const draw = larger(atHand.neg(), zero);
    const due = owed.plus(interest);
    const repaid = larger(zero, atHand.lt(due) ? atHand : due);
    owed = due.plus(draw).minus(repaid);
    cash = atHand.plus(draw).minus(repaid);
    rows.push({
      month,
      flows: moved,
      moneyIn: money(moneyIn),
      moneyOut: money(moneyOut.isZero() ? zero : moneyOut),
      draw: money(draw),
      interest: money(interest),
      repaid: money(repaid),
      loan: money(owed),
      cash: money(cash),
    });
  }
  return {
    months: rows,
    groups: groupsOf(flows),
    peak: peakOf(rows),
    spread: money(tallied(flows.filter((flow) => flow.month === null || flow.isUndated === true).map((flow) => flow.amount))),
  };
}

function byMonth(flows: readonly Flow[], months: readonly Month[]): ReadonlyMap<Month, ReadonlyMap<string, Money>> {
  const dated = new Map(months.map((month) => [month, new Map<string, Tally>()]));
  const count = new Decimal(String(months.length));
  const add = (month: Month, group: string, amount: Decimal) => {
    const groups = dated.get(month);
    if (groups === undefined) return;
    let tally = groups.get(group);
    if (tally === undefined) groups.set(group, (tally = new Tally()));
    tally.add(amount);
  };
  for (const { month, group, amount } of flows) {
    if (month !== null) add(month, group, amount);
    else for (const each of months) add(each, group, amount.div(count));
  }
  return new Map([...dated].map(([month, groups]) => [month, new Map([...groups].map(([group, tally]) => [group, money(tally.total())]))]));
}

function groupsOf(flows: readonly Flow[]): readonly string[] {
  const [moneyIn, moneyOut] = [new Set<string>(), new Set<string>()];
  for (const { amount, group } of flows) if (!amount.isZero()) (amount.isNegative() ? moneyOut : moneyIn).add(group);
  return [...new Set([...moneyIn, ...moneyOut])];
}

function peakOf(rows: readonly CashMonth[]): CashFlow["peak"] {
  let peak: CashFlow["peak"] = null;
  for (const { month, loan } of rows) if (loan.gt(peak?.balance ?? zero)) peak = { month, balance: loan };
  return peak;
}
