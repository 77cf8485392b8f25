/** The table Purchases: bills of items, and bills that are charged directly to what they name. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { Bill, OtherSeasonBill, Purchase } from "../../core/season";
import { itemQuantity, money, type Money } from "../../core/numbers/units";
import { purchaseColumns } from "../columns/purchases";
import { freightAndRebate } from "./freightAndRebate";
import type { ItemConverter } from "../itemUnits";
import type { Names } from "../names";
import { shownMoney } from "../shown";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { billOf, isDirect, kindAlone, type BillReading } from "./bills";
import { namedSubjects } from "./namedTarget";
import { itemSubjects, type Units } from "./items";
import { isOpeningRow } from "./openingRow";
import { forOtherSeason } from "./otherSeasons";
import { LinesAlike, lineOf } from "./linesAlike";
import { PricesUnlike } from "./pricesUnlike";

const { columns: bill } = purchaseColumns;

/** What a row of Purchases is: a purchase of an item, or a bill charged directly. */
export type ReadPurchases = {
  readonly purchases: readonly Purchase[];
  readonly bills: readonly Bill[];
  readonly otherSeasons: readonly OtherSeasonBill[];
  /** Rows of bills that a Note settles. */ readonly noted: ReadonlySet<number>;
};

export const nothingRead: ReadPurchases = { purchases: [], bills: [], otherSeasons: [], noted: new Set() };

export function readPurchases(table: TableReader, reading: BillReading, converter: ItemConverter): ReadPurchases {
  const { items, units, places } = reading;
  const isDirectToo = table.has(bill.over) && table.has(bill.kind);
  if (isDirectToo ? !table.needs(bill.date) : !table.hasNeeded(purchaseColumns)) return nothingRead;
  const lines = table.rowsAlone(
    (row): Purchase | Bill | OtherSeasonBill | null => {
      const other = forOtherSeason(row, reading, () => billedAmount(row));
      if (other !== "this season") return other;
      if (isDirect(row, reading)) return billOf(row, reading, billedAmount(row));
      if (isDirectToo && lacksLandAlone(row)) {
        row.need(bill.over);
        return null;
      }
      const purchase = purchaseOf(row, items, units, converter);
      if (purchase !== null) kindAlone(row, units.get(purchase.item)!.item);
      return purchase;
    },
    (row) =>
      row.text(bill.over) !== null
        ? [...namedSubjects(row, bill.over, places), ...itemSubjects(row, items).filter(({ of }) => of === "item")]
        : itemSubjects(row, items),
  );
  const read: { purchases: Purchase[]; bills: Bill[]; otherSeasons: OtherSeasonBill[]; noted: Set<number> } = {
    purchases: [],
    bills: [],
    otherSeasons: [],
    noted: new Set(),
  };
  const alike = new LinesAlike(table);
  const unlike = new PricesUnlike(table, (name) => units.get(name)!.item);
  for (const line of lines) {
    if ("season" in line) read.otherSeasons.push(line);
    else if ("over" in line) {
      read.bills.push(line);
      const row = table.rowOf(line.source);
      if (row.of(bill.note) !== null) read.noted.add(line.source.row);
      const { name: item, amount, source } = line;
      alike.look({ item, amount, source, date: row.of(bill.date)!, quantity: () => `${line.kind} ${row.text(bill.quantity) ?? ""}` });
    } else {
      read.purchases.push(line);
      alike.look(lineOf(line));
      unlike.look(line);
    }
  }
  alike.lookAcross(read.purchases, (item) => units.get(item)!.item.kind, read.bills);
  unlike.tell();
  return read;
}

/** Whether a line of a register of payments says its kind and no item: the land that it is for is all that it lacks. */
const lacksLandAlone = (row: Row): boolean =>
  row.text(bill.kind) !== null &&
  row.text(bill.over) === null &&
  [bill.item, bill.quantity, bill.unit].every((column) => row.text(column) === null);

/** A purchase of an item that is known, in its own unit. */
function purchaseOf(row: Row, items: Names, units: Units, converter: ItemConverter): Purchase | null {
  const date = row.need(bill.date);
  const item = row.needName(bill.item, items);
  const { value: quantity, unit: typed } = row.measured(bill.quantity, bill.unit);
  const of = item === null ? undefined : units.get(item);
  const perUnit = of === undefined || typed === null ? null : converter.perUnit(row, bill.unit, of, typed);
  const amount = amountOf(row, quantity);
  const { freight, rebate } = freightAndRebate(row, amount);
  if (quantity?.isZero() === true) moneyOfNothing(row, amount);
  const isOpening = isOpeningRow(row);
  const paidOn = row.of(bill.paidOn) ?? date;
  if (item === null || quantity === null || date === null || paidOn === null || perUnit === null || amount === null) return null;
  return {
    item,
    date,
    quantity: itemQuantity(perUnit === one ? quantity : quantity.times(perUnit)),
    amount,
    freight,
    rebate,
    paidOn,
    isOpening,
    source: row.source,
  };
}

/** What a line that is charged directly comes to before freight and rebate: its quantity and unit need not be known where its amount is. */
function billedAmount(row: Row): Money | null {
  const quantity =
    row.text(bill.unit) === null
      ? row.of(bill.quantity)
      : row.text(bill.quantity) === null
        ? null
        : row.measured(bill.quantity, bill.unit).value;
  if (quantity !== null) return amountOf(row, quantity);
  const amount = row.of(bill.amount);
  if (amount !== null) return money(amount);
  return row.isFaulty(bill.amount) ? row.missing(bill.amount) : row.lose("amount-missing");
}

/**
 * A line of no quantity: a unit price on it comes to nothing, an amount of its own is a charge or a credit on the item, which
 * a Note settles. Freight and rebate alone are no more than that.
 */
function moneyOfNothing(row: Row, amount: Money | null): void {
  const price = row.of(bill.unitPrice);
  if (price !== null && !price.isZero() && row.text(bill.amount) === null)
    row.fault("quantity-zero", bill.quantity, { like: price.toFixed() });
  else if (amount?.isZero() === false && row.of(bill.note) === null) row.fault("money-alone", bill.quantity);
}

/** What the line comes to: the amount, or quantity × unit price; a return takes it off whatever sign is typed. */
function amountOf(row: Row, quantity: Decimal | null): Money | null {
  const price = row.of(bill.unitPrice);
  const typed = row.of(bill.amount);
  if (price === null && typed === null && !row.isFaulty(bill.unitPrice) && !row.isFaulty(bill.amount)) return row.lose("amount-missing");
  // Of two that should agree, one that cannot be read leaves the line uncertain: the other is used, and the fault told.
  if (quantity === null || (price === null && typed === null)) return null;
  // As a register of payments writes what goes out: nobody is paid for taking what is bought.
  if (quantity.gt("0") && typed?.isNegative() === true && !typed.isZero()) row.fault("amount-sign", bill.amount);
  const signed = typed !== null && quantity.isNegative() && typed.gt("0") ? typed.neg() : typed;
  const worked = price === null ? null : quantity.times(price);
  if (signed === null) return worked === null ? null : money(worked);
  if (worked !== null && !shownMoney(worked).eq(shownMoney(signed)))
    row.fault("amount-disagrees", bill.amount, { like: shownMoney(worked).toFixed(2) });
  return money(signed);
}
