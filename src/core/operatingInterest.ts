import { Decimal, zero } from "./decimal";
import { bearsInterest, type Cost } from "./cost";
import type { IsoDate } from "./row";
import type { Settings } from "./season";
import { Tally } from "./tally";
import { money } from "./units";

const daysInYear = new Decimal("365");
const monthsInYear = new Decimal("12");
const millisecondsInDay = 86_400_000;

/** Days that a payment waits for the repayment of the operating loan. */
export type DaysOut = (paid: IsoDate | null) => Decimal;

/**
 * Calendar days from a payment to the repayment date; zero for a payment on that day or after it, for one without a
 * date, and where interest is not charged by date.
 */
export function daysOut(interest: Settings["operatingInterest"]): DaysOut {
  if (interest?.method !== "by date") return () => zero;
  const repaid = Date.parse(interest.repaymentDate);
  const known = new Map<IsoDate, Decimal>();
  return (paid) => {
    if (paid === null) return zero;
    let days = known.get(paid);
    if (days === undefined) {
      const between = (repaid - Date.parse(paid)) / millisecondsInDay;
      known.set(paid, (days = between > 0 ? new Decimal(String(between)) : zero));
    }
    return days;
  };
}

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
  for (const cost of costs) if (bearsInterest(cost)) bearing.add(isByDate ? cost.moneyDays : cost.amount);
  const perYear = bearing.total().times(interest.rate);
  const amount = isByDate ? perYear.div(daysInYear) : perYear.times(interest.months).div(monthsInYear);
  return [{ kind: "operating interest", name: "Operating interest", amount: money(amount), moneyDays: zero, cash: true, entries: () => [] }];
}
