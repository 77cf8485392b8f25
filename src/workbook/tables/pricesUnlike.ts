/** Finds the invoice line whose unit price is far from those of the other lines of its item: a slip, or a price of another pack. */
import { Decimal, zero } from "../../core/numbers/decimal";
import type { Item, Purchase } from "../../core/season";
import { purchaseColumns } from "../columns/purchases";
import type { TableReader } from "../tableReader";

const { amount: amountColumn, note, unitPrice } = purchaseColumns.columns;
const two = new Decimal("2");

/** A line and its price by the base unit: exactly, and as near to it as a plain number comes, to look at first. */
type Line = { readonly purchase: Purchase; readonly price: Decimal; readonly near: number };

/** The price of a line that is not read again stays what it was. */
const known = new WeakMap<Purchase, Line>();

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
    // A return comes back at what it was bought for, a credit for what it is given for.
    if (!purchase.quantity.gt(zero)) return;
    let line = known.get(purchase);
    if (line === undefined) {
      const price = purchase.amount.div(purchase.quantity);
      known.set(purchase, (line = { purchase, price, near: price.toNumber() }));
    }
    const lines = this.byItem.get(purchase.item);
    if (lines === undefined) this.byItem.set(purchase.item, [line]);
    else lines.push(line);
  }

  tell(): void {
    for (const [item, lines] of this.byItem) {
      const middle = middleOf(lines);
      const shown = priceWords(this.itemNamed(item));
      for (const {
        purchase: { source },
        price,
        near,
      } of lines) {
        if (isSurelyAlike(near, middle.near)) continue;
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

/** The middle line by price, the cheaper of two, equal ones as they stand. Only lines as near to it need be compared exactly. */
function middleOf(lines: readonly Line[]): Line {
  const inOrder = Float64Array.from(lines, ({ near }) => near).sort();
  const place = Math.ceil(lines.length / 2) - 1;
  const near = inOrder[place]!;
  const alike = lines.filter((line) => line.near === near).sort((a, b) => a.price.comparedTo(b.price));
  return alike[place - inOrder.indexOf(near)]!;
}

/** Far from twice and from half, where nothing depends on the last digits. */
const isSurelyAlike = (near: number, middle: number): boolean => near < 1.9 * middle && near > 0.6 * middle;

/** A price of the base unit, in words for one pack. */
const priceWords =
  ({ packName, packSize }: Item) =>
  (price: Decimal): string =>
    `${price.times(packSize).toSignificantDigits(6).toFixed()} per ${packName}`;
