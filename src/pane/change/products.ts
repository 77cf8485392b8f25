/** What goes into the tank, a product a row: picked from Items, whose price is taken, or named freely with a price of its own. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { TankItem } from "../../core/partialBudget/layouts/spraying";
import type { Item } from "../../core/season";
import { money } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";
import { Typed, type Faults } from "../parts/typed";
import { baseUnitsIn, itemNamed, unitsOf } from "../purchase/purchaseDraft";

/** The boxes of a row: `item1`, `rate1`, `unit1`, `price1`, and so on. */
type Draft = { readonly [box: string]: string };

export type ProductRow = {
  readonly at: string;
  /** The units that the item is measured in; empty where the table Items does not have it: then any unit may be typed. */
  readonly units: readonly string[];
  readonly unit: string;
  /** Whether the price has to be typed, because Items has none. */
  readonly asksPrice: boolean;
  /** `null` while something is missing, and of the blank row at the end. */
  readonly product: (TankItem & { readonly isFromItems: boolean }) | null;
};

export type Products = { readonly rows: readonly ProductRow[]; readonly faults: Faults<string> };

/** So many products fit one tank here. */
const most = 8;
const places = Array.from({ length: most }, (_, index) => String(index + 1));
const isBegun = (draft: Draft, at: string) => ["item", "rate", "price"].some((box) => (draft[`${box}${at}`] ?? "").trim() !== "");

/** The rows that are filled and a blank one after them, with what is wrong with each. */
export function productsOf(draft: Draft, report: SeasonReport, decimalComma: boolean): Products {
  const last = places.findLastIndex((at) => isBegun(draft, at));
  const typed = new Typed<string>(draft, decimalComma, report.season.settings.currency);
  const faults: { [box: string]: string } = {};
  const rows = places.slice(0, last + 2).map((at): ProductRow => {
    const name = (draft[`item${at}`] ?? "").trim();
    const item = itemNamed(report.season.items, name);
    const units = item === null ? [] : unitsOf(item);
    const wanted = (draft[`unit${at}`] ?? "").trim();
    // No unit is guessed: twelve of a gallon and twelve of a fluid ounce look alike. Seeds are counted in seeds.
    const unit =
      item === null || units.includes(wanted) ? wanted : item.unit.dimension === "count" || units.length === 1 ? item.unit.name : "";
    const known = item === null || unit === "" ? null : pricePer(item, unit, report);
    const asksPrice = name !== "" && known === null && (item === null || unit !== "");
    if (!isBegun(draft, at)) return { at, units, unit, asksPrice: false, product: null };
    if (name === "") faults[`item${at}`] = "Name what goes in.";
    const rate = typed.number(`rate${at}`, { needed: true, aboveZero: true });
    if (item !== null && unit === "") faults[`unit${at}`] = "Choose its unit.";
    const price = known ?? (asksPrice ? typed.number(`price${at}`, { needed: true }) : null);
    const product =
      name === "" || rate === null || price === null
        ? null
        : { item: item?.name ?? name, perArea: rate, unit: unit || "unit", price: money(price), isFromItems: known !== null };
    return { at, units, unit, asksPrice, product };
  });
  return { rows, faults: { ...faults, ...typed.faults } };
}

/** What one `unit` of an item costs: what was paid on average, else the plan price; `null` where neither is known. */
function pricePer(item: Item, unit: string, { figures }: SeasonReport): Decimal | null {
  const perPack = figures.items.find((each) => each.item === item.name)?.averagePrice ?? item.planPricePerPack;
  // A base unit known only by its name, such as a load, converts to nothing and is one of itself.
  const inUnit = baseUnitsIn(item, unit) ?? one;
  return perPack === null ? null : perPack.times(inUnit).div(item.packSize);
}

/** "1.99 USD a fl oz, from Items: 16.32 USD an acre". */
export const productWords = ({ product }: ProductRow, format: Format): string =>
  product === null
    ? ""
    : (
        `${format.amount(product.price)} a ${product.unit}${product.isFromItems ? ", from Items" : ""}: ` +
        `${format.amount(product.price.times(product.perArea))} an ${format.areaName}`
      ).replace(" an hectare", " a hectare");
