/** What is said of a change: what it comes to, what it must bring to pay, when its outlay is back, and how price moves it. */
import type { MoneyPerUnit, Yield } from "../numbers/units";
import { breakEven, type BreakEven } from "./breakEvenOfChange";
import { isGrain, type Change, type ChangeLine } from "./change";
import type { ChangeEntry, Setting } from "./changeEntry";
import { netChange, type NetChange } from "./netChange";
import { payback, type Payback } from "./payback";
import { priceYieldGrid, strip, type ChangeGrid, type Strip } from "./strip";

/** The crop's prices; where no low or high one is entered the strip has the expected one in its place. */
export type PriceRange = {
  readonly low: MoneyPerUnit | null;
  readonly expected: MoneyPerUnit;
  readonly high: MoneyPerUnit | null;
  /** Yield outlook of what the change is about: a line of more than half of it is a crop, not a difference. Left out: not known. */
  readonly cropYield?: Yield;
};

export type ChangeAnswer = {
  readonly net: NetChange;
  /**
   * The line whose quantity is the yield gain: the first added return that is blank, else that sells grain, else the first;
   * `null` where none is added.
   */
  readonly gain: ChangeLine | null;
  readonly breakEven: {
    /** Quantity of `gain` at which the change pays; `null` without such a line. */
    readonly yieldGain: BreakEven | null;
    /** Price of grain where a line sells it, else the price of `gain`; `null` where there is neither. */
    readonly price: BreakEven | null;
    readonly area: BreakEven;
  };
  /** `null` where nothing is laid out, a line is blank, or nothing comes back. */
  readonly payback: Payback | null;
  /** At the low, expected and high price of the crop; `null` where no line sells grain or neither a low nor a high price is known. */
  readonly strip: Strip<NetChange> | null;
  /**
   * The same with the yield moved too; `null` while an entry is blank, where no line is a difference in yield, and without prices.
   */
  readonly grid: ChangeGrid | null;
  /** The yield gain at which the change pays at each of these prices; `null` without a strip or a gain. */
  readonly gainNeeded: Strip<BreakEven> | null;
};

/**
 * Everything that is said of a change, one of the workbook or one that is only tried.
 *
 * @param prices of the crop that its grain is of; `null`: no strip
 * @throws RangeError on an area of zero or less
 */
export function changeAnswer(change: Change, prices: PriceRange | null): ChangeAnswer {
  const gain = gainLine(change);
  const sellsGrain = change.lines.some((line) => isGrain(line.price));
  const priceEntry: ChangeEntry | null = sellsGrain ? { of: "grain price" } : gain === null ? null : { of: "price", line: gain };
  const atPrices = sellsGrain && prices !== null && (prices.low !== null || prices.high !== null) ? priceStrip(change, prices) : null;
  const net = netChange(change);
  return {
    net,
    gain,
    grid: prices === null || net.net.perYear === null ? null : gridOf(change, prices),
    strip: atPrices,
    gainNeeded: gain === null || atPrices === null ? null : gainStrip(change.lines.indexOf(gain), atPrices),
    breakEven: {
      yieldGain: gain === null ? null : breakEven(change, { of: "quantity", line: gain }),
      price: priceEntry === null ? null : breakEven(change, priceEntry),
      area: breakEven(change, { of: "area" }),
    },
    payback: payback(change),
  };
}

function gainLine({ lines }: Change): ChangeLine | null {
  const added = lines.filter(({ quadrant }) => quadrant === "added returns");
  return added.find(({ quantity }) => quantity === null) ?? added.find(({ price }) => isGrain(price)) ?? added[0] ?? null;
}

function priceStrip(change: Change, { low, expected, high }: PriceRange): Strip<NetChange> {
  const at = (price: MoneyPerUnit | null): readonly Setting[] => [{ entry: { of: "grain price" }, value: price ?? expected }];
  return strip(change, { low: at(low), expected: at(expected), high: at(high) });
}

function gridOf(change: Change, { low, expected, high, cropYield }: PriceRange): ChangeGrid | null {
  const isDifference = ({ price, quantity }: ChangeLine) =>
    isGrain(price) && quantity !== null && !quantity.isZero() && (cropYield === undefined || quantity.abs().times("2").lte(cropYield));
  const line =
    change.lines.find((each) => each.quadrant === "added returns" && isDifference(each)) ??
    change.lines.find((each) => each.quadrant === "reduced returns" && isDifference(each));
  return line === undefined
    ? null
    : priceYieldGrid(change, line, line.quantity!, { low: low ?? expected, expected, high: high ?? expected });
}

// eslint-disable-next-line no-restricted-syntax -- a place in a list is not a quantity
function gainStrip(at: number, { low, expected, high }: Strip<NetChange>): Strip<BreakEven> {
  const needed = ({ change }: NetChange) => breakEven(change, { of: "quantity", line: change.lines[at]! });
  return { low: needed(low), expected: needed(expected), high: needed(high) };
}
