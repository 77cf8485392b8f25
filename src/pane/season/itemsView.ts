/** What the pane says of the items: bought, used, still needed, short and left. */
import { Decimal, hundred, sum, zero } from "../../core/numbers/decimal";
import type { ItemFigures } from "../../core/figures";
import type { Kind } from "../../core/kinds";
import type { EntryRef } from "../../core/row";
import { shownMoney } from "../../workbook/shown";
import type { Format } from "../format";

export type ItemView = {
  readonly item: string;
  readonly kind: Kind;
  /** What it is counted in: the pack, or the base unit. */
  readonly unit: string;
  /** What the shortfall will cost, without its currency; "no price" where none is known. */
  readonly cost: string;
  /** "bag, average 262.50 USD" */
  readonly price: string;
  readonly bought: string;
  readonly used: string;
  readonly needed: string;
  readonly short: string;
  readonly left: string;
  readonly isShort: boolean;
  /** What the shortfall will cost, in words; empty where nothing is short. */
  readonly shortCost: string;
  /** How much of what is needed in all is bought, in hundredths, 100 at most. */
  readonly boughtPart: number;
  /** "paid 266.00, planned 268.00: 2.00 lower"; empty where nothing was bought or planned. */
  readonly paid: string;
  /** Whether a tenth or more above the plan was paid. */
  readonly isDear: boolean;
  readonly entries: readonly EntryRef[];
};

export type ItemsView = {
  readonly summary: string;
  /** What the shortfall costs in all. */ readonly cost: string;
  readonly items: readonly ItemView[];
};

export function itemsView(items: readonly ItemFigures[], format: Format): ItemsView {
  const short = items.filter((item) => item.short.gt("0"));
  const unpriced = short.filter((item) => item.shortCost === null).length;
  const cost = format.amount(sum(short.flatMap((item) => item.shortCost ?? [])));
  const unknown = unpriced === 0 ? "" : `, and ${unpriced} without a price`;
  return {
    cost: short.length === 0 ? "" : `${cost}${unknown}`,
    summary:
      short.length === 0
        ? "Everything that the plan still needs is bought."
        : `${short.length} of ${items.length} ${items.length === 1 ? "item is" : "items are"} short; buying the rest will cost ` +
          `${cost}${unknown}.`,
    items: items.map((item) => itemView(item, format)),
  };
}

function itemView(item: ItemFigures, format: Format): ItemView {
  const { quantity } = format;
  const isShort = item.short.gt("0");
  const price =
    item.averagePrice === null ? "no price known" : `${item.bought.gt("0") ? "average" : "plan price"} ${format.amount(item.averagePrice)}`;
  return {
    ...paidView(item, format),
    boughtPart: boughtPart(item),
    item: item.item,
    unit: item.unit,
    cost: item.shortCost === null ? "no price" : format.money(item.shortCost),
    kind: item.kind,
    isShort,
    entries: item.entries,
    price: `${item.unit}, ${price}`,
    bought: quantity(item.bought),
    used: quantity(item.used),
    needed: quantity(item.needed),
    short: quantity(item.short),
    left: quantity(item.left),
    shortCost: !isShort
      ? ""
      : item.shortCost === null
        ? "short, at a price not known yet"
        : `short, will cost ${format.amount(item.shortCost)}`,
  };
}

const tenthAbove = "1.1";

function paidView({ bought, averagePrice, planPrice }: ItemFigures, format: Format): Pick<ItemView, "paid" | "isDear"> {
  if (!bought.gt("0") || averagePrice === null || planPrice === null) return { paid: "", isDear: false };
  const more = shownMoney(averagePrice).minus(shownMoney(planPrice));
  return {
    paid:
      `paid ${format.money(averagePrice)}, planned ${format.money(planPrice)}: ` +
      `${more.isZero() ? "as planned" : `${format.money(more.abs())} ${more.isNegative() ? "lower" : "higher"}`}`,
    isDear: averagePrice.gte(planPrice.times(tenthAbove)) && more.gt("0"),
  };
}

function boughtPart({ bought, used, needed }: ItemFigures): number {
  const all = used.plus(needed);
  if (all.lte("0")) return bought.gt("0") ? 100 : 0;
  return Number(Decimal.max(zero, Decimal.min(hundred, bought.div(all).times(hundred))).toFixed(0));
}
