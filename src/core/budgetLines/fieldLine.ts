/** The budget line of one kind in one field. */
import type { Decimal } from "../decimal";
import type { Kind } from "../kinds";
import type { EntryRef, IsoDate } from "../row";

/** The part of one entered line that falls to one field: money that the operator bears, and the same with the landlord's part. */
export type LinePart = { readonly ours: Decimal; readonly whole: Decimal; readonly paidOn: IsoDate | null };

/** What all lines of a kind that count in a field come to there. */
export type FieldLine = {
  readonly kind: Kind;
  readonly ours: Decimal;
  readonly whole: Decimal;
  readonly parts: readonly LinePart[];
  /** The money of the operator times the days until the operating loan is repaid. */
  readonly moneyDays: Decimal;
  /** Whether nothing more will come of it. */
  readonly allIn: boolean;
  /** Whether money is paid for it. */
  readonly cash: boolean;
  readonly entries: readonly EntryRef[];
};
