import type { Layer } from "../kinds";
import type { Decimal } from "../numbers/decimal";
import type { Area, MoneyPerArea, MoneyPerUnit, Share, Yield } from "../numbers/units";
import type { EntryRef, IsoDate } from "../row";

/** How one field ended in one past year: a row of the table Past seasons. `null`: not entered. */
export type PastField = {
  /** The year of the harvest, four digits. */
  readonly season: string;
  readonly field: string;
  readonly crop: string;
  readonly hybrid: string | null;
  readonly area: Area;
  readonly goal: Yield | null;
  /** Per area, 0 for a lost crop. */
  readonly yield: Yield | null;
  readonly costs: { readonly [L in Layer]: MoneyPerArea | null };
  /** Full cost as it was planned. */
  readonly planned: MoneyPerArea | null;
  /** What a unit of the operator's crop brought, on the mean. */
  readonly price: MoneyPerUnit | null;
  /** What was left of an area after full cost. */
  readonly net: MoneyPerArea | null;
  /** The operator's part of the crop. */
  readonly operatorShare: Share;
  readonly planted: IsoDate | null;
  /** Plants per area. */
  readonly stand: Decimal | null;
  readonly heatUnits: Decimal | null;
  readonly rain: Decimal | null;
  /** Sites of action of what was sprayed, by number. */
  readonly sitesUsed: readonly string[];
  readonly source: EntryRef;
};
