/** Rows of Purchases for another season. */
import { money, type Money } from "../../core/numbers/units";
import type { OtherSeasonBill } from "../../core/season";
import { purchaseColumns } from "../columns/purchases";
import { freightAndRebate } from "./freightAndRebate";
import type { Row } from "../tableRow";
import type { BillReading } from "./bills";
import { besideAnother } from "./openingRow";

const { columns } = purchaseColumns;

/**
 * A row that *For season* keeps out of this one: what it costs and when it is paid, of an item or of a kind. An item that this
 * season does not know needs its Kind.
 *
 * @param amountOf before freight and rebate
 * @returns "this season" where the row is of it; `null` where the row cannot be read
 */
export function forOtherSeason(
  row: Row,
  { items, units, seasonYear }: BillReading,
  amountOf: () => Money | null,
): OtherSeasonBill | "this season" | null {
  const typed = row.of(columns.forSeason);
  if (typed === null) return "this season";
  const season = /(?:^|\D)(\d{4})(?:\D|$)/.exec(typed)?.[1];
  // What else is wrong with the row is told beside it.
  if (season === undefined) row.lose("not-a-date", columns.forSeason);
  else if (seasonYear === null) row.lose("year-missing", columns.forSeason);
  if (row.lost) return "this season";
  if (season === undefined || season === seasonYear) return "this season";
  const [date, name] = [row.need(columns.date), row.text(columns.item)];
  const item = units.get(items.spelled(name ?? "") ?? "")?.item ?? null;
  const kind = row.of(columns.kind) ?? item?.kind ?? row.need(columns.kind);
  const amount = amountOf();
  const { freight, rebate } = freightAndRebate(row, amount);
  const paidOn = row.of(columns.paidOn) ?? date;
  if (row.of(columns.opening) === "yes") besideAnother(row, columns.opening, columns.forSeason);
  if (kind === null || amount === null || paidOn === null) return null;
  return {
    season,
    kind,
    name: item?.name ?? name ?? row.of(columns.supplier) ?? "Bill",
    amount: money(amount.plus(freight).minus(rebate)),
    paidOn,
    source: row.source,
  };
}
