/** How long an outlay takes to come back. */
import { discount } from "../capitalRecovery";
import { Decimal, one, sum, zero } from "../numbers/decimal";
import { years, type Money, type Years, type YearlyRate } from "../numbers/units";
import { isCapital, priceOf, speaksFor, type Change } from "./change";
import { amountPerYear, signOf } from "./netChange";

export type Payback = {
  /** What is paid at the start, less what the change saves of such outlays. */
  readonly outlay: Decimal;
  /** What comes back in a year before any charge for the outlay. */
  readonly yearly: Decimal;
  /** Outlay ÷ yearly. */
  readonly simple: Years;
  /** The same with interest on what is still out; `null` where the interest alone takes up all that comes back. */
  readonly withInterest: Years | null;
};

/**
 * Years until the outlays of a change have come back, salvage values left aside.
 *
 * @returns `null` where nothing is laid out, a line is blank, or nothing comes back
 */
export function payback(change: Change): Payback | null {
  let out: Decimal = zero;
  let yearly: Decimal = zero;
  for (const line of change.lines) {
    const price = priceOf(line);
    if (price === null || line.quantity === null) return null;
    if (isCapital(line)) {
      const times = line.basis === "per acre" ? change.area : one;
      out = out.plus(
        line.quantity
          .times(price)
          .times(times)
          .times(speaksFor(line.quadrant) ? one.neg() : one),
      );
    } else {
      yearly = yearly.plus(amountPerYear(line, change)!.times(signOf(line)));
    }
  }
  if (out.lte("0") || yearly.lte("0")) return null;
  return { outlay: out, yearly, simple: years(out.div(yearly)), withInterest: yearsToRepay(out, yearly, change.rate) };
}

/** Years in which equal yearly payments repay an outlay with interest: −ln(1 − outlay·i ÷ payment) ÷ ln(1 + i); `null` if they never do. */
export function yearsToRepay(outlay: Decimal, yearly: Decimal, rate: YearlyRate): Years | null {
  if (rate.isZero()) return years(outlay.div(yearly));
  const left = one.minus(outlay.times(rate).div(yearly));
  return left.lte("0") ? null : years(left.ln().neg().div(rate.plus(one).ln()));
}

/**
 * Years until uneven yearly amounts, each at the end of its year, have repaid an outlay with interest; inside the last
 * year by a straight line, as textbooks do it. `null` where they do not.
 */
export function paybackOfFlows(outlay: Money, flows: readonly Money[], rate: YearlyRate): Years | null {
  let left: Decimal = outlay;
  for (const [index, flow] of flows.entries()) {
    const gone = new Decimal(String(index));
    const present = presentValue(flow, years(gone.plus("1")), rate);
    if (present.gte(left)) return years(gone.plus(present.isZero() ? zero : left.div(present)));
    left = left.minus(present);
  }
  return null;
}

/** What an amount after a number of years is worth today. */
export const presentValue = (amount: Decimal, after: Years, rate: YearlyRate): Decimal => amount.times(discount(rate, after));

/** The present value of yearly amounts less the outlay. */
export const netPresentValue = (outlay: Money, flows: readonly Money[], rate: YearlyRate): Decimal =>
  sum(flows.map((flow, index) => presentValue(flow, years(String(index + 1)), rate))).minus(outlay);
