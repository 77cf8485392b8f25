/** The rate that the operating loan's balance bears over the months of the cash flow. */
import { sum, zero, type Decimal } from "../numbers/decimal";
import type { Loan, Settings } from "../season";

/**
 * Of balances carried into the season their own rates, weighted by balance; where nothing is carried the season's rate, else
 * that of a line without a balance.
 *
 * @returns a fraction a year; zero where nothing says a rate: what is entered as operating interest is paid as entered then
 */
export function operatingRate({ operatingInterest }: Pick<Settings, "operatingInterest">, loans: readonly Loan[]): Decimal {
  const operating = loans.filter(({ kind }) => kind === "operating");
  const carried = sum(operating.map(({ balance }) => balance));
  if (carried.isZero()) return operatingInterest?.rate ?? operating[0]?.rate ?? zero;
  return sum(operating.map(({ balance, rate }) => balance.times(rate))).div(carried);
}
