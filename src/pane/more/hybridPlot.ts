/** The picture of hybrids against the check: points wetter or drier across, yield more or less up, with the interval of each. */
import type { HybridComparison } from "../../core/hybrids/comparison";
import { Decimal, hundred, zero } from "../../core/numbers/decimal";
import type { Format } from "../format";

type HybridDot = {
  readonly hybrid: string;
  /** Its number in the picture and in the list beside it. */
  readonly mark: string;
  readonly x: string;
  readonly y: string;
  /** Ends of the interval, where there is one. */
  readonly bounds: { readonly low: string; readonly high: string } | null;
};
export type HybridPlot = {
  readonly dots: readonly HybridDot[];
  /** Places of the check: no wetter, no more. */
  readonly zero: { readonly x: string; readonly y: string };
  readonly wet: { readonly from: Decimal; readonly to: Decimal };
  readonly yields: { readonly from: Decimal; readonly to: Decimal };
};

/**
 * @param all hybrids of one crop in the order of the list
 * @returns `null` where none has both differences
 */
export function hybridPlot(all: readonly HybridComparison[]): HybridPlot | null {
  const shown = all.flatMap((each, index) => {
    const { moistureDifference: wetter, yieldDifference: more } = each;
    return wetter === null || more === null ? [] : [{ hybrid: each.hybrid, mark: String(index + 1), wetter, more }];
  });
  if (shown.length === 0) return null;
  const wet = scale(
    shown.map(({ wetter }) => wetter),
    "1",
  );
  const yields = scale(
    shown.flatMap(({ more: { mean, low, high } }) => [mean, low ?? mean, high ?? mean]),
    "5",
  );
  const x = (value: Decimal) => value.minus(wet.from).div(wet.to.minus(wet.from)).times(hundred).toFixed(1);
  const y = (value: Decimal) => yields.to.minus(value).div(yields.to.minus(yields.from)).times(hundred).toFixed(1);
  return {
    dots: shown.map(({ hybrid, mark, wetter, more: { mean, low, high } }) => ({
      hybrid,
      mark,
      x: x(wetter),
      y: y(mean),
      bounds: low === null || high === null ? null : { low: y(low), high: y(high) },
    })),
    zero: { x: x(zero), y: y(zero) },
    wet,
    yields,
  };
}

/** From the whole step below all values and nothing to the one above. */
function scale(values: readonly Decimal[], step: string): { readonly from: Decimal; readonly to: Decimal } {
  const [least, most] = [Decimal.min(zero, ...values), Decimal.max(zero, ...values)];
  const from = least.div(step).floor().times(step);
  const to = most.div(step).ceil().times(step);
  return from.eq(to) ? { from, to: to.plus(step) } : { from, to };
}

/** A difference of yield in words: "6.9 bu/ac more", "as much". */
export const moreWords = (more: Decimal, unit: string, format: Format): string =>
  format.yield(more.abs()) === format.yield(zero)
    ? "as much"
    : `${format.yield(more.abs())} ${unit} ${more.isNegative() ? "less" : "more"}`;

/** A difference of moisture in words: "1.3 points wetter", "as wet". */
export const wetterWords = (wetter: Decimal, format: Format): string =>
  format.yield(wetter.abs()) === format.yield(zero)
    ? "as wet"
    : `${format.yield(wetter.abs())} points ${wetter.isNegative() ? "drier" : "wetter"}`;

/** The picture in words. */
export const plotSays = (all: readonly HybridComparison[], check: string, unit: string, format: Format): string =>
  `Yield and moisture beside ${check}: ${all
    .flatMap(({ hybrid, moistureDifference: wetter, yieldDifference: more }) =>
      wetter === null || more === null ? [] : [`${hybrid} ${moreWords(more.mean, unit, format)}, ${wetterWords(wetter, format)}`],
    )
    .join("; ")}.`;
