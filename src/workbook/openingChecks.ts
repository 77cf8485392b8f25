/** Bills from before the day of the opening stock of the same item: its stock is likely to hold them already. */
import type { Purchase, Season } from "../core/season";
import { grouped } from "../core/grouped";
import { purchaseColumns } from "./columns/purchases";
import type { Problem } from "./problem";

export function openingProblems({ purchases }: Season): readonly Problem[] {
  const opening = grouped(
    purchases.filter(({ isOpening }) => isOpening),
    ({ item }) => item,
  );
  if (opening.size === 0) return [];
  const earliest = (rows: readonly Purchase[]) => rows.reduce((first, row) => (row.date < first.date ? row : first));
  return purchases.flatMap((bill): readonly Problem[] => {
    const stock = opening.get(bill.item);
    if (bill.isOpening || stock === undefined || bill.quantity.isNegative()) return [];
    const first = earliest(stock);
    if (bill.date >= first.date) return [];
    const at = { ...bill.source, column: purchaseColumns.columns.date.heading };
    return [{ code: "opening-beside", at, other: first.source, found: bill.item, touches: [{ of: "item", name: bill.item }] }];
  });
}
