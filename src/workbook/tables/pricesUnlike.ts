/** Finds the invoice line whose unit price is far from those of the other lines of its item: a slip, or a price of another pack. */
import { Decimal, zero } from "../../core/numbers/decimal";
import type { Item, Purchase } from "../../core/season";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";

const { amount: amountColumn, note, unitPrice } = purchaseColumns.columns;
const two = new Decimal("2");

type Line = { readonly purchase: Purchase; readonly price: Decimal };

/**
 * A line is told where it costs at least twice, or at most half, of the middle line of its item, by the item's own unit and
 * before freight and rebate. Of two lines the dearer one is told. A Note on the line settles it; it is counted either way.
 */
export class PricesUnlike {
  private readonly byItem = new Map<string, Line[]>();

  constructor(
    private readonly table: TableReader,
    private readonly itemNamed: (name: string) => Item,
  ) {}

  look(purchase: Purchase): void {
    const { item, quantity, amount } = purchase;
    // A return comes back at what it was bought for, a credit for what it is given for.
    if (!quantity.gt(zero)) return;
    const line = { purchase, price: amount.div(quantity) };
    const lines = this.byItem.get(item);
    if (lines === undefined) this.byItem.set(item, [line]);
    else lines.push(line);
  }

  tell(): void {
    for (const [item, lines] of this.byItem) {
      const sorted = [...lines].sort((a, b) => a.price.comparedTo(b.price));
      const middle = sorted[Math.ceil(sorted.length / 2) - 1]!;
      const shown = priceWords(this.itemNamed(item));
      for (const {
        purchase: { source },
        price,
      } of lines) {
        const isUnlike = !price.eq(middle.price) && (price.gte(middle.price.times(two)) || price.times(two).lte(middle.price));
        if (!isUnlike) continue;
        const row = this.table.rowOf(source);
        if (row.of(note) !== null) continue;
        this.table.problems.push({
          code: "price-unlike",
          at: { ...source, column: (row.text(unitPrice) === null ? amountColumn : unitPrice).heading },
          other: middle.purchase.source,
          found: shown(price),
          like: shown(middle.price),
          touches: [{ of: "item", name: item }],
        });
      }
    }
  }
}

/** A price of the base unit, in words for one pack. */
const priceWords =
  ({ packName, packSize }: Item) =>
  (price: Decimal): string =>
    `${price.times(packSize).toSignificantDigits(6).toFixed()} per ${packName}`;
