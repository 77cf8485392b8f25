/** A change at low, expected and high values of what is uncertain. */
import { Decimal, zero } from "../numbers/decimal";
import type { MoneyPerUnit } from "../numbers/units";
import type { Change, ChangeLine } from "./change";
import { withEntries, type Setting } from "./changeEntry";
import { netChange, type NetChange } from "./netChange";

export type Strip<Of> = { readonly low: Of; readonly expected: Of; readonly high: Of };

/** The net change three times: each with its own settings on top of the change as it is. */
export const strip = (change: Change, settings: Strip<readonly Setting[]>): Strip<NetChange> => ({
  low: netChange(withEntries(change, settings.low)),
  expected: netChange(withEntries(change, settings.expected)),
  high: netChange(withEntries(change, settings.high)),
});

/** The net change at yields of one line (outside) and prices of the crop (inside). */
export type ChangeGrid = { readonly line: ChangeLine; readonly quantities: Strip<Decimal>; readonly net: Strip<Strip<NetChange>> };

const halfAsMuchAgain = new Decimal("1.5");

/**
 * Price and yield moved together. The low yield is none at all, which is what replicated trials often find; the high one is
 * half as much again as entered. Both are arithmetic on the grower's own figure: nothing is claimed of a product.
 */
export function priceYieldGrid(change: Change, line: ChangeLine, entered: Decimal, prices: Strip<MoneyPerUnit>): ChangeGrid {
  const quantities = { low: zero, expected: entered, high: entered.times(halfAsMuchAgain) };
  const at = (quantity: Decimal) => {
    const setting = (price: MoneyPerUnit): readonly Setting[] => [
      { entry: { of: "quantity", line }, value: quantity },
      { entry: { of: "grain price" }, value: price },
    ];
    return strip(change, { low: setting(prices.low), expected: setting(prices.expected), high: setting(prices.high) });
  };
  return { line, quantities, net: { low: at(quantities.low), expected: at(quantities.expected), high: at(quantities.high) } };
}
