/** What was bought of an item this season, carried as value and quantity, never as a rounded unit price. */
import { one, zero, type Decimal } from "./numbers/decimal";
import type { DaysOut } from "./operatingInterest";
import type { EntryRef } from "./row";
import type { Purchase } from "./season";
import { Tally } from "./numbers/tally";
import { itemQuantity, money, type ItemQuantity, type Money } from "./numbers/units";

export type Bought = {
  readonly quantity: ItemQuantity;
  /** Amounts and freight less rebates. */
  readonly value: Money;
  /** What of the value was paid last season. */
  readonly opening: Money;
  /** Value times days to repayment, summed over the purchases. */
  readonly valueDays: Decimal;
  readonly entries: readonly EntryRef[];
};

export const nothingBought: Bought = {
  quantity: itemQuantity(zero),
  value: money(zero),
  opening: money(zero),
  valueDays: zero,
  entries: [],
};

/**
 * Adds up the purchases of each item; a return takes its quantity and its amount off again.
 *
 * @param daysFrom days from a payment to the repayment of the operating loan
 */
export function boughtByItem(purchases: readonly Purchase[], daysFrom: DaysOut["from"]): ReadonlyMap<string, Bought> {
  const byItem = new Map<string, { quantity: Tally; value: Tally; opening: Tally; valueDays: Tally; entries: EntryRef[] }>();
  for (const { item, quantity, amount, freight, rebate, paidOn, isOpening, source } of purchases) {
    let soFar = byItem.get(item);
    if (soFar === undefined)
      byItem.set(item, (soFar = { quantity: new Tally(), value: new Tally(), opening: new Tally(), valueDays: new Tally(), entries: [] }));
    soFar.quantity.add(quantity);
    soFar.value.add(amount).add(freight).subtract(rebate);
    soFar.entries.push(source);
    // What was paid last season waits for no repayment of this one's loan.
    if (isOpening) {
      soFar.opening.add(amount).add(freight).subtract(rebate);
      continue;
    }
    const days = daysFrom(paidOn);
    soFar.valueDays.addProduct(amount, days).addProduct(freight, days).subtractProduct(rebate, days);
  }
  return new Map(
    [...byItem].map(
      ([item, { quantity, value, opening, valueDays, entries }]) =>
        [
          item,
          {
            quantity: itemQuantity(quantity.total()),
            value: money(value.total()),
            opening: money(opening.total()),
            valueDays: valueDays.total(),
            entries,
          },
        ] as const,
    ),
  );
}

/**
 * Weighted average price per base unit: value ÷ quantity.
 *
 * @returns `null` where nothing is bought, or all of it went back
 */
export const averagePrice = ({ quantity, value }: Bought): Decimal | null => (quantity.lte("0") ? null : value.div(quantity));

/** Days to repayment of the money spent on an item, weighted by value. */
export const averageDays = ({ value, valueDays }: Bought): Decimal => (value.isZero() ? zero : valueDays.div(value));

/** The part of what an item's purchases cost that this season's money pays; the rest was paid last season. */
export const partBorrowed = ({ value, opening }: Bought): Decimal =>
  opening.isZero() || value.isZero() ? one : one.minus(opening.div(value));
