/** The value of one entry at which a change neither gains nor loses. */
import { one, zero, type Decimal } from "../numbers/decimal";
import { money } from "../numbers/units";
import { isCapital, priceOf, type Change, type ChangeLine } from "./change";
import { withEntries, type ChangeEntry } from "./changeEntry";
import { amountPerYear, signOf } from "./netChange";

/** The break-even value and the side of it on which the change pays; or why there is none. */
export type BreakEven =
  | { readonly found: true; readonly value: Decimal; readonly pays: "above" | "below" }
  | { readonly found: false; readonly why: "another entry is blank" | "makes no difference" | "pays at any value" | "pays at no value" };

const none = (why: Extract<BreakEven, { found: false }>["why"]): BreakEven => ({ found: false, why });

/**
 * Solves the net change for one entry, all others as they are.
 *
 * The net change is a straight line in every quantity, price, salvage value and in the area, so two of its points give
 * the answer. In the years kept it is not; there the capital recovery factor is solved for its years:
 *
 *     factor = (what the line may cost − salvage × i) ÷ (outlay − salvage)     n = −ln(1 − i ÷ factor) ÷ ln(1 + i)
 *
 * A quantity or a price needed may come out below zero: the change then pays even with that loss. An area may not.
 */
export function breakEven(change: Change, entry: ChangeEntry): BreakEven {
  if (entry.of === "years kept") return breakEvenYears(change, entry.line);
  const at = (value: Decimal) => netPerYear(withEntries(change, [{ entry, value }]));
  const atNone = at(zero);
  const atOne = at(one);
  if (atNone === null || atOne === null) return none("another entry is blank");
  const slope = atOne.minus(atNone);
  if (slope.isZero()) return none("makes no difference");
  const value = atNone.neg().div(slope);
  if (entry.of === "area" && value.lte("0")) return none(slope.gt("0") ? "pays at any value" : "pays at no value");
  return { found: true, value, pays: slope.gt("0") ? "above" : "below" };
}

/** The net change in a year, at an area of zero too; `null` while a line is blank. */
function netPerYear(change: Change): Decimal | null {
  let net = zero;
  for (const line of change.lines) {
    const perYear = amountPerYear(line, change);
    if (perYear === null) return null;
    net = net.plus(perYear.times(signOf(line)));
  }
  return net;
}

function breakEvenYears(change: Change, line: ChangeLine): BreakEven {
  const price = priceOf(line);
  const others = netPerYear({ ...change, lines: change.lines.filter((each) => each !== line) });
  if (others === null || price === null || line.quantity === null) return none("another entry is blank");
  if (!isCapital(line)) return none("makes no difference");
  const times = line.basis === "per acre" ? change.area : one;
  const whole = money(line.quantity.times(price).times(times));
  const salvage = (line.salvage ?? zero).times(times);
  const lost = whole.minus(salvage);
  if (lost.isZero()) return none("makes no difference");
  const factor = others.times(signOf(line)).neg().minus(salvage.times(change.rate)).div(lost);
  // More years make the yearly charge smaller, down to the interest on the outlay but never below it.
  const cheaperWithYears = signOf(line).isNegative() === lost.gt("0");
  if (factor.lte(change.rate)) return none(cheaperWithYears ? "pays at no value" : "pays at any value");
  const value = change.rate.isZero() ? one.div(factor) : one.minus(change.rate.div(factor)).ln().neg().div(change.rate.plus(one).ln());
  return { found: true, value, pays: cheaperWithYears ? "above" : "below" };
}
