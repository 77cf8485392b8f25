/** A purchase as it is being typed: what is wrong with it, what its row will say, and what it costs per pack. */
import { zero, type Decimal } from "../../core/decimal";
import { conversion, measureNamed, measureNames } from "../../core/measure";
import type { Item } from "../../core/season";
import { purchaseColumns } from "../../workbook/columns/purchases";
import { readNumber } from "../../workbook/numbers";
import { plain } from "../../workbook/words";
import { entryRow, type EntryRow } from "../commands/entryRow";
import type { Format } from "../format";

const { columns: bill } = purchaseColumns;

/** Every field as typed. */
export type PurchaseDraft = {
  readonly date: string;
  readonly item: string;
  readonly quantity: string;
  readonly unit: string;
  readonly price: string;
  readonly amount: string;
  readonly freight: string;
  readonly rebate: string;
  readonly supplier: string;
  readonly paidOn: string;
  readonly note: string;
};

export type PurchaseField = keyof PurchaseDraft;

/** An empty form for purchases of `date`. */
export const emptyDraft = (date: string): PurchaseDraft =>
  ({ date, item: "", quantity: "", unit: "", price: "", amount: "", freight: "", rebate: "", supplier: "", paidOn: "", note: "" });

export type PurchaseView = {
  readonly faults: { readonly [F in PurchaseField]?: string };
  /** The units that the item can be bought in, the pack first. */
  readonly units: readonly string[];
  /** What the row will cost, in words; empty until it can be said. */
  readonly says: string;
  /** `null` while there are faults. */
  readonly row: EntryRow | null;
};

/** The item of that name, capitals and spaces aside. */
export const itemNamed = (items: readonly Item[], name: string): Item | null => items.find((item) => plain(item.name) === plain(name)) ?? null;

/**
 * The number that a person means by what they typed; `null` where it is none. It is read as a cell of the workbook is, and where
 * only a decimal comma makes a number of it, as one with a decimal comma: here the row that will be written is shown at once.
 */
export function typedNumber(text: string, decimalComma: boolean): Decimal | null {
  const reading = readNumber(text, { decimalComma });
  if (reading === "decimal-comma") return typedNumber(text, true);
  return typeof reading === "string" || reading.percent ? null : reading.value;
}

/** Units in which an item can be bought: its pack, its base unit, and all others of the same dimension. */
export function unitsOf(item: Item): readonly string[] {
  // Whoever sells seed calls a bag a unit, so that a piece is offered only where the item is counted in pieces.
  const same = measureNames.filter((name) => measureNamed(name)?.dimension === item.unit.dimension && (name === "each") === (item.unit.name === "each" && item.unit.dimension === "count"));
  return [...new Set([item.packName, item.unit.name, ...same])];
}

/** Base units of the item in one `unit`; `null` where the item is not counted in it. */
export function baseUnitsIn(item: Item, unit: string): Decimal | null {
  if (unit.toLowerCase() === item.packName.toLowerCase()) return item.packSize;
  const measure = measureNamed(unit);
  return measure === null ? null : conversion(measure, item.unit, null);
}

/** What the workbook says that a purchase must agree with. */
export type PurchaseBasis = { readonly items: readonly Item[]; readonly decimalComma: boolean };

export function purchaseView(draft: PurchaseDraft, { items, decimalComma }: PurchaseBasis, format: Format): PurchaseView {
  const faults: { [F in PurchaseField]?: string } = {};
  const item = itemNamed(items, draft.item);
  if (draft.item.trim() === "") faults.item = "Choose what was bought.";
  else if (item === null) faults.item = `The table Items has no “${draft.item.trim()}”. Add it there first, with its kind and pack; what is typed here stays.`;
  if (!isDay(draft.date)) faults.date = "Enter the date of the invoice.";
  if (draft.paidOn !== "" && !isDay(draft.paidOn)) faults.paidOn = "Enter a date, or leave it blank.";
  const number = (of: "quantity" | "price" | "amount" | "freight" | "rebate"): Decimal | null => {
    if (draft[of].trim() === "") return null;
    const value = typedNumber(draft[of], decimalComma);
    if (value === null) faults[of] = "Enter a number.";
    return value;
  };
  const [quantity, price, amount, freight, rebate] = [number("quantity"), number("price"), number("amount"), number("freight"), number("rebate")];
  if (draft.quantity.trim() === "") faults.quantity = "Enter how much was bought; a return is negative.";
  else if (quantity?.isZero()) faults.quantity = "Enter a quantity other than zero.";
  const perUnit = item === null ? null : baseUnitsIn(item, draft.unit);
  if (item !== null && perUnit === null) faults.unit = "Choose the unit of the quantity.";
  if (price?.isNegative()) faults.price = "Enter zero or more; for a return make the quantity negative.";
  if (draft.price.trim() === "" && draft.amount.trim() === "") faults.price = "Enter a price per unit, or the amount.";
  const computed = quantity !== null && price !== null ? quantity.times(price).toDecimalPlaces(2) : null;
  if (computed !== null && amount !== null && !amount.toDecimalPlaces(2).eq(computed)) {
    faults.amount = `${format.quantity(quantity)} × ${format.amount(price)} is ${format.amount(computed)}. Mend one of them, or leave one blank.`;
  }
  if (quantity !== null && amount !== null && computed === null && amount.times(quantity).isNegative()) {
    faults.amount = "The amount of a return is negative, like its quantity.";
  }

  const isSound = Object.keys(faults).length === 0;
  const value = amount ?? (quantity !== null && price !== null ? quantity.times(price) : null);
  return {
    faults, units: item === null ? [] : unitsOf(item),
    says: isSound && item !== null && quantity !== null && value !== null && perUnit !== null
      ? says({ item, draft, quantity, value, freight: freight ?? zero, rebate: rebate ?? zero, packs: quantity.times(perUnit).div(item.packSize) }, format) : "",
    row: isSound && item !== null ? row(draft, item, { quantity, price, amount, freight, rebate }) : null,
  };
}

/** The boxes that may be folded away, where a mark is not seen. */
const folded = { freight: bill.freight.heading, rebate: bill.rebate.heading, paidOn: bill.paidOn.heading } as const;

/** What keeps the purchase from being added. What is wrong stands at its box, so that only what is folded away is named again. */
export function notYet(faults: PurchaseView["faults"]): string {
  const hidden = (["freight", "rebate", "paidOn"] as const).flatMap((field) => (faults[field] === undefined ? [] : [`${folded[field]}: ${faults[field]}`]));
  return ["Not added yet. Mend what is marked above.", ...hidden].join(" ");
}

const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

type Sound = { readonly item: Item; readonly draft: PurchaseDraft; readonly quantity: Decimal; readonly value: Decimal; readonly freight: Decimal; readonly rebate: Decimal; readonly packs: Decimal };

function says({ item, draft, quantity, value, freight, rebate, packs }: Sound, { amount, quantity: shown }: Format): string {
  const all = value.plus(freight).minus(rebate);
  const extras = freight.isZero() && rebate.isZero() ? "" : `, ${amount(all)} with freight and rebate`;
  return `${shown(quantity)} ${draft.unit} of ${item.name} for ${amount(value)}${extras}: ${amount(all.div(packs))} per ${item.packName}.`;
}

function row(draft: PurchaseDraft, item: Item, numbers: Record<"quantity" | "price" | "amount" | "freight" | "rebate", Decimal | null>): EntryRow {
  return entryRow([
    [bill.date, { day: draft.date }], [bill.item, item.name], [bill.quantity, numbers.quantity], [bill.unit, draft.unit], [bill.unitPrice, numbers.price],
    [bill.amount, numbers.amount], [bill.freight, numbers.freight], [bill.rebate, numbers.rebate], [bill.supplier, draft.supplier.trim()],
    [bill.paidOn, draft.paidOn === "" ? null : { day: draft.paidOn }], [bill.note, draft.note.trim()],
  ]);
}
