/** What the pane says of the items: bought, used, still needed, short and left. */
import { sum } from "../../core/decimal";
import type { ItemFigures } from "../../core/figures";
import type { Kind } from "../../core/kinds";
import type { EntryRef } from "../../core/row";
import type { Format } from "../format";

export type ItemView = {
  readonly item: string;
  readonly kind: Kind;
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
  readonly entries: readonly EntryRef[];
};

export type ItemsView = { readonly summary: string; readonly items: readonly ItemView[] };

export function itemsView(items: readonly ItemFigures[], format: Format): ItemsView {
  const short = items.filter((item) => item.short.gt("0"));
  const unpriced = short.filter((item) => item.shortCost === null).length;
  const cost = format.amount(sum(short.flatMap((item) => item.shortCost ?? [])));
  const unknown = unpriced === 0 ? "" : `, and ${unpriced} without a price`;
  return {
    summary: short.length === 0
      ? "Everything that the plan still needs is bought."
      : `${short.length} of ${items.length} ${items.length === 1 ? "item is" : "items are"} short; buying the rest will cost ${cost}${unknown}.`,
    items: items.map((item) => itemView(item, format)),
  };
}

function itemView(item: ItemFigures, format: Format): ItemView {
  const { quantity } = format;
  const isShort = item.short.gt("0");
  const price = item.averagePrice === null ? "no price known" : `${item.bought.gt("0") ? "average" : "plan price"} ${format.amount(item.averagePrice)}`;
  return {
    item: item.item, kind: item.kind, isShort, entries: item.entries,
    price: `${item.unit}, ${price}`,
    bought: quantity(item.bought), used: quantity(item.used), needed: quantity(item.needed), short: quantity(item.short), left: quantity(item.left),
    shortCost: !isShort ? "" : item.shortCost === null ? "short, at a price not known yet" : `short, will cost ${format.amount(item.shortCost)}`,
  };
}
