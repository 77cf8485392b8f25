/** A purchase as it is being typed: what is wrong with it, what its row will say, and what it costs per pack. */
import { zero, type Decimal } from "../../core/numbers/decimal";
import { conversion, measureNamed, measureNames } from "../../core/numbers/measure";
import type { Item, Season } from "../../core/season";
import { money, type Money } from "../../core/numbers/units";
import { purchaseColumns } from "../../workbook/columns/purchases";
import { Typed } from "../parts/typed";
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
  /** What kind of cost it is, where it is charged directly. */
  readonly kind: string;
  /** The field, the crop or "all" that it is charged to directly; blank: the item is charged as it is. */
  readonly over: string;
  readonly supplier: string;
  readonly paidOn: string;
  readonly note: string;
};

export type PurchaseField = keyof PurchaseDraft;

/** An empty form for purchases of `date`. */
export const emptyDraft = (date: string): PurchaseDraft => ({
  date,
  item: "",
  quantity: "",
  unit: "",
  price: "",
  amount: "",
  freight: "",
  rebate: "",
  kind: "",
  over: "",
  supplier: "",
  paidOn: "",
  note: "",
});

export type PurchaseView = {
  readonly faults: { readonly [F in PurchaseField]?: string };
  /** The units that the item can be bought in, the pack first. */
  readonly units: readonly string[];
  /** What the row will cost, in words; empty until it can be said. */
  readonly says: string;
  /** What a pack of the item costs by this row, freight and rebate included; `null` until it can be said. */
  readonly perPack: Money | null;
  /** `null` while there are faults. */
  readonly row: EntryRow | null;
};

/** The item of that name, capitals and spaces aside. */
export const itemNamed = (items: readonly Item[], name: string): Item | null =>
  items.find((item) => plain(item.name) === plain(name)) ?? null;

/** Units in which an item can be bought: its pack, its base unit, and all others of the same dimension. */
export function unitsOf(item: Item): readonly string[] {
  // Whoever sells seed calls a bag a unit, so that a piece is offered only where the item is counted in pieces.
  const same = measureNames.filter(
    (name) =>
      measureNamed(name)?.dimension === item.unit.dimension &&
      (name === "each") === (item.unit.name === "each" && item.unit.dimension === "count"),
  );
  return [...new Set([item.packName, item.unit.name, ...same])];
}

/** Base units of the item in one `unit`; `null` where the item is not counted in it. */
export function baseUnitsIn(item: Item, unit: string): Decimal | null {
  if (unit.toLowerCase() === item.packName.toLowerCase()) return item.packSize;
  const measure = measureNamed(unit);
  return measure === null ? null : conversion(measure, item.unit, null);
}

/**
 * What one `unit` of an item cost when it was bought last, as it would be typed; `null` where it was never bought, or the unit is
 * not its own.
 */
export function lastPrice(
  { purchases }: Pick<Season, "purchases">,
  item: Item,
  unit: string,
): { readonly price: Decimal; readonly date: string } | null {
  const last = purchases
    .filter((each) => each.item === item.name && each.quantity.gt("0"))
    .reduce<Season["purchases"][number] | null>((late, each) => (late === null || each.date >= late.date ? each : late), null);
  const inUnit = baseUnitsIn(item, unit);
  return last === null || inUnit === null
    ? null
    : { price: last.amount.div(last.quantity).times(inUnit).toDecimalPlaces(4), date: last.date };
}

/** What the workbook says that a purchase must agree with. */
export type PurchaseBasis = { readonly items: readonly Item[]; readonly decimalComma: boolean };

export function purchaseView(draft: PurchaseDraft, { items, decimalComma }: PurchaseBasis, format: Format): PurchaseView {
  const typed = new Typed<PurchaseField>(draft, decimalComma, format.currency);
  const { faults } = typed;
  const item = itemNamed(items, draft.item);
  // Where nothing stands in Items yet, every bill is one for a field or crop and of a kind.
  const isDirect = draft.over !== "" || items.length === 0;
  if (draft.over === "" && isDirect) faults.over = "Choose the crop or field that it is for.";
  if (draft.item.trim() === "") faults.item = "Choose what was bought.";
  else if (item === null && isDirect) {
    if (draft.kind === "") faults.kind = "Choose what kind of cost it is: the table Items does not have it.";
  } else if (item === null)
    faults.item = `The table Items has no “${draft.item.trim()}”. Add it there first, with its kind and pack; what is typed here stays.`;
  if (!isDay(draft.date)) faults.date = "Enter the date of the invoice.";
  if (draft.paidOn !== "" && !isDay(draft.paidOn)) faults.paidOn = "Enter a date, or leave it blank.";
  const number = (of: "quantity" | "price" | "amount" | "freight" | "rebate") => typed.number(of, { mayBeNegative: true });
  const [quantity, price, amount, freight, rebate] = [
    number("quantity"),
    number("price"),
    number("amount"),
    number("freight"),
    number("rebate"),
  ];
  if (draft.kind !== "" && !isDirect) faults.over = "Choose the field or crop that it is for, or leave the kind blank.";
  if (draft.quantity.trim() === "" && isDirect && draft.price.trim() === "") {
    // A bill that is charged directly needs no more than its amount.
  } else if (draft.quantity.trim() === "") faults.quantity = "Enter how much was bought; a return is negative.";
  else if (quantity?.isZero()) faults.quantity = "Enter a quantity other than zero.";
  const perUnit = item === null ? null : baseUnitsIn(item, draft.unit);
  if (item !== null && perUnit === null && quantity !== null) faults.unit = "Choose the unit of the quantity.";
  if (price?.isNegative()) faults.price = "Enter zero or more; for a return make the quantity negative.";
  if (draft.price.trim() === "" && draft.amount.trim() === "" && items.length === 0) faults.amount = "Enter the amount.";
  else if (draft.price.trim() === "" && draft.amount.trim() === "")
    faults.price = isDirect && draft.quantity.trim() === "" ? "Enter the amount." : "Enter a price per unit, or the amount.";
  const computed = quantity !== null && price !== null ? quantity.times(price).toDecimalPlaces(2) : null;
  if (computed !== null && amount !== null && !amount.toDecimalPlaces(2).eq(computed)) {
    faults.amount = `${format.quantity(quantity)} × ${format.amount(price)} is ${format.amount(computed)}. Fix one of them, or leave one blank.`;
  }
  if (quantity !== null && amount !== null && computed === null && amount.times(quantity).isNegative()) {
    faults.amount = "The amount of a return is negative, like its quantity.";
  }

  const isSound = Object.keys(faults).length === 0;
  const value = amount ?? (quantity !== null && price !== null ? quantity.times(price) : null);
  const whole = value === null ? null : value.plus(freight ?? zero).minus(rebate ?? zero);
  const packs = item === null || quantity === null || perUnit === null ? null : quantity.times(perUnit).div(item.packSize);
  const words = { draft, item, quantity, value, whole, packs };
  return {
    faults,
    units: item === null ? [] : unitsOf(item),
    says: isSound ? says(words, format) : "",
    perPack: !isSound || isDirect || whole === null || packs === null ? null : money(whole.div(packs)),
    row: isSound ? row(draft, item, { quantity, price, amount, freight, rebate }) : null,
  };
}

/** The boxes that may be folded away, where a mark is not seen. */
const folded = {
  freight: bill.freight.heading,
  rebate: bill.rebate.heading,
  kind: bill.kind.heading,
  over: bill.over.heading,
  paidOn: bill.paidOn.heading,
} as const;

/** What keeps the purchase from being added. What is wrong stands at its box, so that only what is folded away is named again. */
export function notYet(faults: PurchaseView["faults"]): string {
  const hidden = (["freight", "rebate", "kind", "over", "paidOn"] as const).flatMap((field) =>
    faults[field] === undefined ? [] : [`${folded[field]}: ${faults[field]}`],
  );
  return ["Not added yet. Fix the boxes marked.", ...hidden].join(" ");
}

const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text);

type Sound = {
  readonly draft: PurchaseDraft;
  readonly item: Item | null;
  readonly quantity: Decimal | null;
  readonly value: Decimal | null;
  readonly whole: Decimal | null;
  readonly packs: Decimal | null;
};

function says({ draft, item, quantity, value, whole, packs }: Sound, { amount, quantity: shown }: Format): string {
  if (value === null || whole === null) return "";
  const extras = whole.eq(value) ? "" : `, ${amount(whole)} with freight and rebate`;
  const much = quantity === null ? "" : `${shown(quantity)}${draft.unit === "" ? "" : ` ${draft.unit}`} of `;
  const over = draft.over === "" ? "" : `, charged to ${draft.over === "all" ? "all fields" : draft.over}`;
  const each = item === null || packs === null ? "" : `: ${amount(whole.div(packs))} per ${item.packName}`;
  return `${much}${item?.name ?? draft.item.trim()} for ${amount(value)}${extras}${over}${each}.`;
}

function row(
  draft: PurchaseDraft,
  item: Item | null,
  numbers: Record<"quantity" | "price" | "amount" | "freight" | "rebate", Decimal | null>,
): EntryRow {
  return entryRow([
    [bill.date, { day: draft.date }],
    [bill.item, item?.name ?? draft.item.trim()],
    [bill.quantity, numbers.quantity],
    [bill.unit, numbers.quantity === null ? "" : draft.unit],
    [bill.unitPrice, numbers.price],
    [bill.amount, numbers.amount],
    [bill.freight, numbers.freight],
    [bill.rebate, numbers.rebate],
    [bill.kind, draft.kind],
    [bill.over, draft.over],
    [bill.supplier, draft.supplier.trim()],
    [bill.paidOn, draft.paidOn === "" ? null : { day: draft.paidOn }],
    [bill.note, draft.note.trim()],
  ]);
}
