import { daysBetween } from "./numbers/day";
import { Decimal, larger, sum, zero } from "./numbers/decimal";
import { bearsInterest, type Cost } from "./cost";
import type { Kind } from "./kinds";
import { paymentDates, type PaymentYear } from "./paymentDates";
import type { IsoDate } from "./row";
import type { Field, Settings } from "./season";
import { Tally } from "./numbers/tally";
import { money } from "./numbers/units";

const daysInYear = new Decimal("365");
const monthsInYear = new Decimal("12");

/** Days that money waits for the repayment of the operating loan. */
export type DaysOut = {
  /** From a payment on a day. */
  readonly from: (paid: IsoDate) => Decimal;
  /** Of money of a kind that one field bears, on the day entered or by the rule for money without one; a mean where it is paid in parts. */
  readonly of: (kind: Kind, entered: IsoDate | null, field: Pick<Field, "plannedPlanting">) => Decimal;
};

/**
 * Calendar days from a payment to the repayment date; zero for a payment on that day or after it, and where interest is
 * not charged by date. Without a season year, the year of the repayment is that of the season.
 */
export function daysOut({ operatingInterest: interest, seasonYear }: Pick<Settings, "operatingInterest" | "seasonYear">): DaysOut {
  if (interest?.method !== "by date") return { from: () => zero, of: () => zero };
  const year: PaymentYear = { year: seasonYear ?? interest.repaymentDate.slice(0, 4), repaid: interest.repaymentDate };
  const from = remembered((paid) => larger(daysBetween(paid, interest.repaymentDate), zero));
  const mean = (days: readonly IsoDate[]): Decimal => (days.length === 0 ? zero : sum(days.map(from)).div(String(days.length)));
  const yearly = new Map<Kind, (planting: string) => Decimal>();
  const without = (kind: Kind, planting: IsoDate | null): Decimal => {
    let known = yearly.get(kind);
    if (known === undefined) yearly.set(kind, (known = remembered((day) => mean(paymentDates(kind, null, day === "" ? null : day, year)))));
    return known(planting ?? "");
  };
  return { from, of: (kind, entered, { plannedPlanting }) => (entered === null ? without(kind, plannedPlanting) : from(entered)) };
}

/** The same for a day that was asked for before. */
function remembered(worked: (day: IsoDate) => Decimal): (day: IsoDate) => Decimal {
  const known = new Map<IsoDate, Decimal>();
  return (day) => {
    let days = known.get(day);
    if (days === undefined) known.set(day, (days = worked(day)));
    return days;
  };
}

const borrowedOf = ({ amount, borrowed }: Cost): Decimal => (borrowed === undefined ? amount : amount.times(borrowed));

/**
 * Simple interest on the operating money of one field: each cost from its payment to the repayment date, days ÷ 365;
 * or all of it for a stated number of months. Costs that move with yield are paid at harvest and bear none.
 *
 * @returns a cost of the kind "operating interest", or none where no rate is entered
 */
export function operatingInterest(costs: readonly Cost[], interest: Settings["operatingInterest"]): readonly Cost[] {
  if (interest === null) return [];
  const isByDate = interest.method === "by date";
  const bearing = new Tally();
  for (const cost of costs) if (bearsInterest(cost)) bearing.add(isByDate ? cost.moneyDays : borrowedOf(cost));
  const perYear = bearing.total().times(interest.rate);
  const amount = isByDate ? perYear.div(daysInYear) : perYear.times(interest.months).div(monthsInYear);
  return [
    { kind: "operating interest", name: "Operating interest", amount: money(amount), moneyDays: zero, cash: true, entries: () => [] },
  ];
}
