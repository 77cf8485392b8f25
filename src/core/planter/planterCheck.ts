/** One part of a planter, as it was measured or looked at. */
import type { Decimal } from "../numbers/decimal";
import type { EntryRef, IsoDate } from "../row";
import type { Hours, ItemQuantity } from "../numbers/units";

export const findings = ["good", "adjust", "replace"] as const;
type Finding = (typeof findings)[number];

/** One part, of one row of the planter or of the whole of it, as it was looked at. */
export type PlanterCheck = {
  readonly machine: string;
  /** Which row of the planter; `null`: the whole of it. */
  readonly row: string | null;
  readonly part: string;
  /** In `unit`, all three; `null`: not known. */
  readonly whenNew: Decimal | null;
  readonly replaceAt: Decimal | null;
  readonly measured: Decimal | null;
  readonly unit: string | null;
  /** What the eye said; `null`: nothing. */
  readonly finding: Finding | null;
  /** The part as it is bought; `null`: none. */
  readonly item: string | null;
  /** Base units of the item. */
  readonly quantity: ItemQuantity;
  /** Hours in the shop; `null`: not entered, so counted as nothing, which is said. */
  readonly hours: Hours | null;
  /** The day on which it was set right; from then on nothing of it is due. */
  readonly doneOn: IsoDate | null;
  readonly source: EntryRef;
};
