/** The drawing of the net change against the yield gain: where its line runs and where it crosses nothing. */
import { Decimal, one, zero } from "../../core/numbers/decimal";
import type { Change, ChangeLine } from "../../core/partialBudget/change";
import { withEntries } from "../../core/partialBudget/changeEntry";
import { netChange } from "../../core/partialBudget/netChange";
import { breakEven } from "../../core/partialBudget/breakEvenOfChange";

export type ChangePlot = {
  /** Positions in hundredths, x from the left, y from the top. */
  readonly line: { readonly from: readonly [string, string]; readonly to: readonly [string, string] };
  /** Height of the line of nothing gained and nothing lost. */
  readonly zero: string;
  /** Where nothing is gained or lost, and the side of it on which the change pays. */
  readonly crossing: { readonly x: string; readonly gain: Decimal; readonly pays: "above" | "below" };
  /** The gain that is entered and what it brings; `null` while it is blank. */
  readonly now: { readonly x: string; readonly y: string; readonly net: Decimal } | null;
  readonly gains: { readonly from: Decimal; readonly to: Decimal };
  readonly nets: { readonly least: Decimal; readonly most: Decimal };
};

/** @returns `null` where the net change cannot be told for any gain, or does not move with it */
export function changePlot(change: Change, gain: ChangeLine): ChangePlot | null {
  const net = (quantity: Decimal): Decimal | null =>
    netChange(withEntries(change, [{ entry: { of: "quantity", line: gain }, value: quantity }])).net.perArea;
  const solved = breakEven(change, { of: "quantity", line: gain });
  if (!solved.found || net(zero) === null) return null;
  const entered = gain.quantity ?? zero;
  const to = roundUp(Decimal.max(solved.value.times("2"), entered.times("1.25"), one));
  const from = roundUp(Decimal.min(solved.value, entered, zero).neg()).neg();
  const [first, last] = [net(from)!, net(to)!];
  const [least, most] = [Decimal.min(first, last, zero), Decimal.max(first, last, zero)];
  const x = (value: Decimal) => value.minus(from).div(to.minus(from)).times("100").toFixed(2);
  const y = (value: Decimal) => most.minus(value).div(most.minus(least)).times("100").toFixed(2);
  const here = gain.quantity === null ? null : net(gain.quantity);
  return {
    line: { from: [x(from), y(first)], to: [x(to), y(last)] },
    zero: y(zero),
    crossing: { x: x(solved.value), gain: solved.value, pays: solved.pays },
    now: gain.quantity === null || here === null ? null : { x: x(gain.quantity), y: y(here), net: here },
    gains: { from, to },
    nets: { least, most },
  };
}

/** The next 1, 2 or 5 times a power of ten. */
function roundUp(value: Decimal): Decimal {
  if (value.lte("0")) return zero;
  const power = new Decimal("10").pow(value.log("10").floor());
  return ["1", "2", "5", "10"].map((step) => power.times(step)).find((step) => step.gte(value))!;
}
