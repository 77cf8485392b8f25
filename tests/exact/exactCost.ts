import type { Kind } from "../../src/core/kinds";
import type { IsoDate } from "../../src/core/row";
import type { Season } from "../../src/core/season";
import { fraction, zero, type Fraction } from "./fraction";

/** A cost of one field: money on the whole of it, or money per unit of the operator's crop, which then moves with yield. */
export type Cost = {
  readonly field: string;
  readonly kind: Kind;
  readonly amount: Fraction;
  readonly perUnit: Fraction;
  /** Money that an operating loan may carry, and that money times the days until it is repaid. */
  readonly loan: { readonly amount: Fraction; readonly amountDays: Fraction };
};

/** Nothing that an operating loan carries. */
export const noLoan: Cost["loan"] = { amount: zero, amountDays: zero };

/** Days from a payment to the repayment of the operating loan; none after it, none where no day is known. */
export function daysOut({ settings: { operatingInterest } }: Season, paid: IsoDate | null): Fraction {
  if (operatingInterest?.method !== "by date" || paid === null) return zero;
  const days = (Date.parse(operatingInterest.repaymentDate) - Date.parse(paid)) / 86_400_000;
  return fraction(BigInt(Math.max(days, 0)));
}
