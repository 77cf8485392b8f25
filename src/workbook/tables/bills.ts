/** Rows of Purchases with Kind and For: bills that are charged directly to a field, a crop or all fields. */
import type { Kind } from "../../core/kinds";
import type { Bill } from "../../core/season";
import { money, type Money } from "../../core/numbers/units";
import { billKinds, purchaseColumns } from "../columns/purchases";
import { freightAndRebate } from "./freightAndRebate";
import type { ItemUnits } from "../itemUnits";
import type { Names } from "../names";
import type { Row } from "../tableRow";
import { isOpeningRow } from "./openingRow";
import { namedTarget } from "./namedTarget";
import type { TargetPlaces } from "./targets";

const { columns } = purchaseColumns;

/** What reading a bill rests on. `applied`: the items that Applications names. */
export type BillReading = {
  readonly items: Names;
  readonly units: ReadonlyMap<string, ItemUnits>;
  readonly places: TargetPlaces;
  readonly applied: ReadonlySet<string>;
  readonly seasonYear: string | null;
};

/**
 * Whether a row is charged directly: For is filled. An item that Applications names is charged as it is used; its row stays a
 * purchase, and what was meant by For is an entry to fix.
 */
export function isDirect(row: Row, { items, applied }: BillReading): boolean {
  if (row.text(columns.over) === null) return false;
  const item = items.spelled(row.text(columns.item) ?? "");
  if (item === null || !applied.has(item)) return true;
  row.fault("bill-of-used", columns.over, { like: item });
  return false;
}

/** A Kind without For says nothing that the item does not say, unless it is another one. */
export function kindAlone(row: Row, { kind }: { readonly kind: string }): void {
  const said = row.text(columns.over) === null ? row.of(columns.kind) : null;
  if (said !== null && said !== kind) row.fault("kind-alone", columns.kind, { like: kind });
}

const isBilled = (kind: Kind): boolean => (billKinds as readonly Kind[]).includes(kind);

/** @param amount before freight and rebate */
export function billOf(row: Row, { items, units, places }: BillReading, amount: Money | null): Bill | null {
  const date = row.need(columns.date);
  const [paidOn, over] = [row.of(columns.paidOn) ?? date, namedTarget(row, columns.over, places)];
  const typed = row.text(columns.item);
  const known = units.get(items.spelled(typed ?? "") ?? "")?.item ?? null;
  const kind = row.text(columns.kind) === null && known !== null && isBilled(known.kind) ? known.kind : row.need(columns.kind);
  const { freight, rebate } = freightAndRebate(row, amount);
  const isOpening = isOpeningRow(row);
  if (kind === null || over === null || paidOn === null || amount === null) return null;
  return {
    over,
    kind,
    paidOn,
    name: known?.name ?? typed ?? row.of(columns.supplier) ?? "Bill",
    amount: money(amount.plus(freight).minus(rebate)),
    isOpening,
    operatorCostShare: known?.operatorCostShare ?? null,
    source: row.source,
  };
}
