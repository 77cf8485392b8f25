import { one, type Decimal } from "../numbers/decimal";

/** A point (`from` = `to`) or a window of an axis. */
export type Span<Value> = { readonly from: Value; readonly to: Value };

/** The entries of an axis around a value, by position, and their parts, which add up to one. */
// eslint-disable-next-line no-restricted-syntax -- a position in an axis is not a quantity
export type Bracket = readonly { readonly index: number; readonly part: Decimal }[];

/**
 * Where a value lies on an ascending axis: in one entry, or between two, each with the part that a straight line gives
 * it. A value where two windows meet belongs to the first.
 *
 * @returns `null` outside the axis
 */
export function bracket(axis: readonly Span<Decimal>[], value: Decimal): Bracket | null {
  for (const [index, { from, to }] of axis.entries()) {
    if (value.gt(to)) continue;
    if (value.gte(from)) return [{ index, part: one }];
    const before = axis[index - 1];
    if (before === undefined) return null;
    const part = value.minus(before.to).div(from.minus(before.to));
    return [
      { index: index - 1, part: one.minus(part) },
      { index, part },
    ];
  }
  return null;
}
