/** The tables Items, Purchases and Applications. */
import { one, zero, type Decimal } from "../../core/decimal";
import { chargedAsUsed, operatingKinds } from "../../core/kinds";
import type { Application, Charging, Item, Purchase, Status } from "../../core/season";
import { area, itemQuantity, itemRate, money, share, type AreaUnit, type Money } from "../../core/units";
import { analysisOf, densityOf, packOf, type ItemConverter, type ItemUnits } from "../itemUnits";
import type { NumberStyle } from "../numbers";
import type { Subject } from "../problem";
import { shownMoney } from "../shown";
import { purchaseColumns } from "../columns/purchases";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { LinesAlike } from "./linesAlike";
import { PricesUnlike } from "./pricesUnlike";
import { plain } from "../words";
import { needsTarget, targetOf, targetSubjects, type Places } from "./targets";

export const chargings = ["as used", "by acres", "by revenue"] as const satisfies readonly Charging[];
export const statuses = ["plan", "done", "done as planned"] as const satisfies readonly Status[];

/** @param firstUnit the unit in which each item, by its plain name, is first bought or used */
export function readItems(table: TableReader, names: Names, areaUnit: AreaUnit, style: NumberStyle, firstUnit: ReadonlyMap<string, string>): readonly ItemUnits[] {
  if (!table.needs("Item", "Kind")) return [];
  return table.rows((row): ItemUnits | null => {
    const name = names.define(row, "Item");
    const kind = row.needChoice("Kind", operatingKinds);
    const pack = name === null ? null : packOf(row, firstUnit.get(plain(name)) ?? null, areaUnit);
    const price = row.number("Plan price per pack");
    const [density, analysis] = [densityOf(row, areaUnit, style), analysisOf(row)];
    if (name === null || kind === null || pack === null) return null;
    const charged = row.choice("Charged", chargings) ?? (chargedAsUsed.has(kind) ? "as used" : "by acres");
    const item: Item = {
      name, kind, packName: pack.packName, packSize: itemQuantity(pack.packSize), unit: pack.unit, charged,
      planPricePerPack: price === null ? null : money(price), operatorCostShare: share(row.share("Operator share of cost") ?? one),
      sitesOfAction: row.text("Sites of action"), source: row.source,
    };
    return { item, density, analysis };
  }, (row) => itemSubjects(row, names));
}

const { columns: bill } = purchaseColumns;

const itemSubjects = (row: Row, items: Names): readonly Subject[] => {
  const name = items.spelled(String(row.cell("Item")));
  return name === null ? [{ of: "farm" }] : [{ of: "item", name }];
};

type Units = ReadonlyMap<string, ItemUnits>;

export function readPurchases(table: TableReader, items: Names, units: Units, converter: ItemConverter): readonly Purchase[] {
  if (!table.hasNeeded(purchaseColumns)) return [];
  const alike = new LinesAlike(table);
  const unlike = new PricesUnlike(table, (name) => units.get(name)!.item);
  const purchases = table.rows((row): Purchase | null => {
    const date = row.need(bill.date);
    const item = row.needName(bill.item, items);
    const { value: quantity, unit: typed } = row.measured(bill.quantity, bill.unit);
    const of = item === null ? undefined : units.get(item);
    const perUnit = of === undefined || typed === null ? null : converter.perUnit(row, bill.unit, of, typed);
    const amount = amountOf(row, quantity);
    const [freight, rebate] = [row.of(bill.freight) ?? zero, row.of(bill.rebate) ?? zero];
    if (quantity?.isZero() === true) moneyOfNothing(row, amount);
    const paidOn = row.of(bill.paidOn) ?? date;
    if (item === null || quantity === null || date === null || paidOn === null || perUnit === null || amount === null) return null;
    const purchase: Purchase = {
      item, date, quantity: itemQuantity(perUnit === one ? quantity : quantity.times(perUnit)), amount,
      freight: money(freight), rebate: money(rebate), paidOn, source: row.source,
    };
    alike.look(purchase, row);
    unlike.look(purchase, row);
    return purchase;
  }, (row) => itemSubjects(row, items));
  unlike.tell();
  return purchases;
}

/**
 * A line of no quantity: a unit price on it comes to nothing, an amount of its own is a charge or a credit on the item, which
 * a Note settles. Freight and rebate alone are no more than that.
 */
function moneyOfNothing(row: Row, amount: Money | null): void {
  const price = row.of(bill.unitPrice);
  if (price !== null && !price.isZero() && row.text(bill.amount) === null) row.fault("quantity-zero", bill.quantity, { like: price.toFixed() });
  else if (amount?.isZero() === false && row.of(bill.note) === null) row.fault("money-alone", bill.quantity);
}

/** What the line comes to: the amount, or quantity × unit price; a return takes it off whatever sign is typed. */
function amountOf(row: Row, quantity: Decimal | null): Money | null {
  const price = row.of(bill.unitPrice);
  const typed = row.of(bill.amount);
  if (price === null && typed === null && !row.isFaulty(bill.unitPrice) && !row.isFaulty(bill.amount)) return row.lose("amount-missing");
  // Of two that should agree, one that cannot be read leaves the line uncertain: the other is used, and the fault told.
  if (quantity === null || (price === null && typed === null)) return null;
  const signed = typed !== null && quantity.isNegative() && typed.gt("0") ? typed.neg() : typed;
  const worked = price === null ? null : quantity.times(price);
  if (signed === null) return worked === null ? null : money(worked);
  if (worked !== null && !shownMoney(worked).eq(shownMoney(signed))) row.fault("amount-disagrees", bill.amount, { like: shownMoney(worked).toFixed(2) });
  return money(signed);
}

export function readApplications(table: TableReader, places: Places, items: Names, units: Units, converter: ItemConverter): readonly Application[] {
  if (!needsTarget(table) || !table.needs("Item", "Rate", "Rate unit", "Status")) return [];
  return table.rows((row): Application | null => {
    const target = targetOf(row, table, places);
    const item = row.needName("Item", items);
    const { value: rate, unit: typed } = row.measured("Rate", "Rate unit");
    const status = row.needChoice("Status", statuses);
    const acres = row.number("Acres", "above zero");
    if (target !== null && acres !== null) warnOfArea(row, acres, target, places);
    const of = item === null ? undefined : units.get(item);
    const perUnit = of === undefined || typed === null ? null : converter.perRateUnit(row, "Rate unit", of, typed);
    const date = row.date("Date");
    if (target === null || item === null || rate === null || status === null || perUnit === null) return null;
    return { target, item, rate: itemRate(perUnit === one ? rate : rate.times(perUnit)), area: acres === null ? null : area(acres), date, status, source: row.source };
  }, (row) => [...targetSubjects(row, table, places), ...itemSubjects(row, items).filter(({ of }) => of === "item")]);
}

/** More acres than there are may be a slip, or one pass too many in a row. */
export function warnOfArea(row: Row, acres: Decimal, target: Application["target"], places: Places): void {
  const whole = places.areaOf(target);
  if (whole !== null && acres.gt(whole)) row.fault("area-too-large", "Acres", { like: whole.toFixed() });
}
