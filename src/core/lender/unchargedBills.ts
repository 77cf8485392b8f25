/** Bills that are paid and that no field is charged with. */
import { nothingUnused, type Unused } from "../budgetLines/unusedItems";
import { one, zero, type Decimal } from "../numbers/decimal";
import type { FieldFacts } from "../fieldFacts";
import { isCharged, type ItemBook } from "../itemCosts";
import type { Kind } from "../kinds";
import type { SeasonFigures } from "../seasonFigures";
import { unchargedOf } from "./billFlows";
import { billed, isShared, partOf, sharedCost } from "./itemFlows";

/**
 * What is paid of each kind that no field is charged with: stock, and what machine rows compute already; without the part
 * that landlords pay back.
 */
export function unchargedBills(
  books: readonly ItemBook[],
  facts: readonly FieldFacts[],
  figures: Pick<SeasonFigures, "unused" | "bills">,
): ReadonlyMap<Kind, Decimal> {
  const byKind = new Map<Kind, Decimal>();
  for (const book of books) {
    const { item, bought, average } = book;
    byKind.set(
      item.kind,
      (byKind.get(item.kind) ?? zero).plus(
        item.charged === "as used"
          ? ofUse(book, figures.unused.get(item.name) ?? nothingUnused).times(average ?? zero)
          : bought.value.times(ofBills(book, facts)),
      ),
    );
  }
  for (const kind of new Set(figures.bills.parts.map(({ bill }) => bill.kind)))
    byKind.set(kind, (byKind.get(kind) ?? zero).plus(unchargedOf(figures, kind)));
  return byKind;
}

/** In base units, of an item that is charged as it is used: what budget lines bear is charged by them. */
function ofUse(book: ItemBook, unused: Unused): Decimal {
  const { besides, computed } = billed(book);
  return besides.minus(unused.quantity).minus(computed(isShared).times(one.minus(sharedCost(book))));
}

/** As a fraction of the bills, of an item that is charged as it is bought. */
function ofBills(book: ItemBook, facts: readonly FieldFacts[]): Decimal {
  const isUncharged = (of: FieldFacts) => !isCharged(book.item, of);
  return partOf(book, facts, isUncharged).minus(
    partOf(book, facts, (of) => isUncharged(of) && isShared(of)).times(one.minus(sharedCost(book))),
  );
}
