/** What was bought of an item this season, carried as value and quantity, never as a rounded unit price. */
import { zero, type Decimal } from "./decimal";
import type { DaysOut } from "./operatingInterest";
import type { EntryRef, Purchase } from "./season";
import { itemQuantity, money, type ItemQuantity, type Money } from "./units";

export type Bought = {
  readonly quantity: ItemQuantity;
  /** Amounts and freight less rebates. */
  readonly value: Money;
  /** Value times days to repayment, summed over the purchases. */
  readonly valueDays: Decimal;
  readonly entries: readonly EntryRef[];
};

export const nothingBought: Bought = { quantity: itemQuantity(zero), value: money(zero), valueDays: zero, entries: [] };

/** Adds up the purchases of each item; a return takes its quantity and its amount off again. */
export function boughtByItem(purchases: readonly Purchase[], daysOut: DaysOut): ReadonlyMap<string, Bought> {
  const byItem = new Map<string, Omit<Bought, "entries"> & { entries: EntryRef[] }>();
  for (const { item, quantity, amount, freight, rebate, paidOn, source } of purchases) {
    const delivered = freight.isZero() ? amount : amount.plus(freight);
    const value = money(rebate.isZero() ? delivered : delivered.minus(rebate));
    const days = daysOut(paidOn);
    const valueDays = days.isZero() ? days : value.times(days);
    const soFar = byItem.get(item);
    if (soFar !== undefined) soFar.entries.push(source);
    byItem.set(item, soFar === undefined ? { quantity, value, valueDays, entries: [source] } : {
      quantity: itemQuantity(soFar.quantity.plus(quantity)),
      value: money(soFar.value.plus(value)),
      valueDays: soFar.valueDays.plus(valueDays),
      entries: soFar.entries,
    });
  }
  return byItem;
}

/**
 * Weighted average price per base unit: value ÷ quantity.
 *
 * @returns `null` where nothing is bought, or all of it went back
 */
export const averagePrice = ({ quantity, value }: Bought): Decimal | null => (quantity.lte("0") ? null : value.div(quantity));

/** Days to repayment of the money spent on an item, weighted by value. */
export const averageDays = ({ value, valueDays }: Bought): Decimal => (value.isZero() ? zero : valueDays.div(value));
