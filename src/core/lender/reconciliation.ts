/** From the margin of the debt test to what the operating loan does over the months of the cash flow. */
import { sum, zero } from "../decimal";
import { loanYears } from "../loans";
import type { Season } from "../season";
import { money, type Money } from "../units";
import type { CashFlow } from "./cashFlow";
import type { FarmYear } from "./farmYear";
import { operatingRate } from "./operatingRate";

/** The margin and the two steps add up to the change. */
export type Reconciliation = {
  readonly margin: Money;
  /** Interest on operating money as the costs charge it, carried balances included, less what the loan's balance bears. */
  readonly interest: Money;
  /** What else is charged and not paid in these months, less what is paid and not charged: stock, bills, other years' money. */
  readonly paid: Money;
  /** How much less is owed on the operating loan, and how much more is in cash, at the end of the months. */
  readonly change: Money;
};

export function reconciliation(season: Pick<Season, "loans" | "settings">, margin: Money, { operatingInterest }: FarmYear, { months }: CashFlow): Reconciliation {
  const moved = sum(months.map(({ moneyIn, moneyOut }) => moneyIn.minus(moneyOut)));
  const borne = sum(months.map(({ interest }) => interest));
  const carried = sum(loanYears(season).filter(({ loan }) => loan.kind === "operating").map(({ interest }) => interest));
  // Without a rate for the balance, interest is paid as it was entered, and nothing is charged in its place.
  const charged = operatingRate(season.settings, season.loans ?? []).isZero() ? zero : operatingInterest;
  const interest = charged.plus(carried).minus(borne);
  const change = moved.minus(borne);
  return { margin, interest: money(interest), paid: money(change.minus(margin).minus(interest)), change: money(change) };
}
