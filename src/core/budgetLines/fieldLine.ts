/** The budget line of one kind in one field. */
import { one, sum, type Decimal } from "../numbers/decimal";
import type { Kind } from "../kinds";
import type { EntryRef, IsoDate } from "../row";

/** The part of one entered line that falls to one field: money that the operator bears, and the same with the landlord's part. */
export type LinePart = { readonly ours: Decimal; readonly whole: Decimal; readonly paidOn: IsoDate | null };

/** What fraction of what is left of a line is each part's, by the operator's money; where he bears nothing of any of them, all alike. */
export function partsByMoney<Part extends Pick<LinePart, "ours">>(
  parts: readonly Part[],
): readonly (Part & { readonly fraction: Decimal })[] {
  const whole = sum(parts.map(({ ours }) => ours));
  return parts.map((part) => ({ ...part, fraction: whole.isZero() ? one.div(String(parts.length)) : part.ours.div(whole) }));
}

/** What all lines of a kind that count in a field come to there. */
export type FieldLine = {
  readonly kind: Kind;
  readonly ours: Decimal;
  readonly whole: Decimal;
  readonly parts: readonly LinePart[];
  /** How long its money waits until the operating loan is repaid, in the mean of its parts by the operator's money. */
  readonly days: Decimal;
  /** Whether nothing more will come of it. */
  readonly allIn: boolean;
  /** Whether money is paid for it. */
  readonly cash: boolean;
  readonly entries: readonly EntryRef[];
};
