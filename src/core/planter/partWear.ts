/** How far a part of a planter is worn, from what it measures new, now, and when it is to be replaced. */
import { Decimal } from "../numbers/decimal";

/** Three sizes of a part in one unit: a blade gets smaller, a gap or a play gets larger. */
export type PartSizes = { readonly whenNew: Decimal; readonly measured: Decimal; readonly replaceAt: Decimal };

/** From this share of the wear on, a part is said to be due soon. Our own choice: a quarter of the wear is left. */
export const soonFrom = new Decimal("0.75");

/**
 * The share of the allowed wear that is used up: (new − measured) ÷ (new − replace at). 0 is as new, 1 and above is due; below 0
 * the part is larger than new, which is a slip or another part.
 *
 * @throws RangeError where a part is replaced at the size that it has when new
 */
export function wearUsed({ whenNew, measured, replaceAt }: PartSizes): Decimal {
  const allowed = whenNew.minus(replaceAt);
  if (allowed.isZero()) throw new RangeError("a part must wear by something before it is replaced");
  return whenNew.minus(measured).div(allowed);
}
