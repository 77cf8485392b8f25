/** From the units that people write on invoices and in rates to the base unit of an item. */
import { Decimal, hundred, one } from "../core/numbers/decimal";
import { conversion, measureNamed, measureNames, namedMeasure, type Density, type Measure } from "../core/numbers/measure";
import type { Item } from "../core/season";
import type { AreaUnit } from "../core/numbers/units";
import { itemColumns } from "./columns/items";
import { readNumber, type NumberStyle } from "./numbers";
import type { ColumnAt, Row } from "./tableRow";
import { measureMeant } from "./tonMeant";
import { nearest, plain } from "./words";

const { columns } = itemColumns;

/** Hectares in an acre, by the international foot. */
const hectaresPerAcre = new Decimal("0.40468564224");

/** Percent by weight of nitrogen, phosphate and potash. */
export type Analysis = { readonly n: Decimal; readonly p2o5: Decimal; readonly k2o: Decimal };

/** What is needed of an item to read its quantities. */
export type ItemUnits = { readonly item: Item; readonly density: Density | null; readonly analysis: Analysis | null };

type Factor = Decimal | "unknown-unit" | "unit-not-convertible" | "analysis-missing" | "ton-unclear";

/**
 * Turns a quantity in some unit into the item's base unit, and remembers each unit of each item: a season has few units
 * and many rows.
 */
export class ItemConverter {
  private readonly bought = new Map<ItemUnits, Map<string, Factor>>();
  private readonly used = new Map<ItemUnits, Map<string, Factor>>();

  constructor(private readonly areaUnit: AreaUnit) {}

  /** Base units in one of the unit as bought; notes a fault in `column` and answers `null` where there is no way. */
  perUnit(row: Row, column: ColumnAt, units: ItemUnits, typed: string): Decimal | null {
    return this.orFault(
      row,
      column,
      units,
      typed,
      remembered(this.bought, units, typed, () => quantityFactor(units, typed, this.areaUnit)),
    );
  }

  /** Base units per area of the workbook in one of the rate unit, such as "lb/ac", "lb N/ac" or "L/ha". */
  perRateUnit(row: Row, column: ColumnAt, units: ItemUnits, typed: string): Decimal | null {
    return this.orFault(
      row,
      column,
      units,
      typed,
      remembered(this.used, units, typed, () => rateFactor(units, typed, this.areaUnit)),
    );
  }

  private orFault(row: Row, column: ColumnAt, { item }: ItemUnits, typed: string, factor: Factor): Decimal | null {
    if (typeof factor !== "string") return factor;
    if (factor === "unit-not-convertible") return row.lose(factor, column, { like: item.unit.name });
    const like = factor === "unknown-unit" ? nearest(typed.split(/\/| per /)[0]!, [item.packName, ...measureNames]) : null;
    return row.lose(factor, column, like === null ? {} : { like });
  }
}

function remembered(known: Map<ItemUnits, Map<string, Factor>>, units: ItemUnits, typed: string, factor: () => Factor): Factor {
  let ofItem = known.get(units);
  if (ofItem === undefined) known.set(units, (ofItem = new Map()));
  let value = ofItem.get(typed);
  if (value === undefined) ofItem.set(typed, (value = factor()));
  return value;
}

/** One of what is named: bags and bag, boxes and box are the same pack. */
const singular = (name: string): string => plain(name).replace(/(x|ch|sh|ss)es$|s$/, "$1");

function quantityFactor({ item, density }: ItemUnits, typed: string, areaUnit: AreaUnit): Factor {
  const packed = !item.packSize.eq(one) || item.packName !== item.unit.name;
  if (packed && [singular(item.packName), "pack", "package", "pkg"].includes(singular(typed))) return item.packSize;
  if (singular(item.unit.name) === singular(typed)) return one;
  const measure = measureOf(typed, item.unit, areaUnit);
  if (measure === null) return "unknown-unit";
  if (measure === "ton-unclear") return measure;
  // Whoever sells seed calls a bag a unit: a piece is one seed only where the item is counted in pieces by the pack.
  if (measure.name === "each" && item.unit.name !== "each") return packed ? item.packSize : "unit-not-convertible";
  if (item.unit.name === "each" && measure.name !== "each" && !packed) return "unit-not-convertible";
  return conversion(measure, item.unit, density) ?? "unit-not-convertible";
}

/** The unit that is meant; an ounce of something that is measured by volume is a fluid ounce, as is common practice. */
function measureOf(typed: string, base: Measure, areaUnit: AreaUnit): Measure | "ton-unclear" | null {
  const measure = measureMeant(typed, areaUnit, base.name);
  if (measure === "ton-unclear") return measure;
  return measure?.name === "oz" && base.dimension === "volume" ? measureNamed("fl oz") : measure;
}

const nutrients: Readonly<Record<string, keyof Analysis>> = {
  n: "n",
  nitrogen: "n",
  p2o5: "p2o5",
  p: "p2o5",
  phosphate: "p2o5",
  k2o: "k2o",
  k: "k2o",
  potash: "k2o",
};

function rateFactor(units: ItemUnits, typed: string, areaUnit: AreaUnit): Factor {
  const [what = "", per] = typed.split(/\s*(?:\/|\bper\b)\s*/i);
  const area = areaFactor(per, areaUnit);
  if (area === null) return "unknown-unit";
  const [, amount, nutrient] = /^(.*?\S)\s+(?:(?:of|actual)\s+)*([a-z0-9]+)$/i.exec(what.trim()) ?? [];
  const element = nutrient === undefined ? undefined : nutrients[nutrient.toLowerCase()];
  if (amount !== undefined && element !== undefined) {
    const percent = units.analysis?.[element];
    if (percent === undefined || percent.isZero()) return "analysis-missing";
    const factor = quantityFactor(units, amount, areaUnit);
    return typeof factor === "string" ? factor : factor.times(hundred).div(percent).times(area);
  }
  const factor = quantityFactor(units, what, areaUnit);
  return typeof factor === "string" ? factor : factor.times(area);
}

/** A rate as it was typed, per area of the workbook and without its area; nothing of a rate of a nutrient, which no scale weighs. */
export function rateAsTyped(
  typed: string,
  rate: Decimal,
  areaUnit: AreaUnit,
): { readonly asTyped?: { readonly unit: string; readonly perArea: Decimal } } {
  const [what = "", per] = typed.split(/\s*(?:\/|\bper\b)\s*/i);
  const last = what.trim().split(/\s+/).at(-1)!.toLowerCase();
  const area = areaFactor(per, areaUnit);
  return area === null || (what.trim().includes(" ") && last in nutrients)
    ? {}
    : { asTyped: { unit: what.trim(), perArea: rate.times(area) } };
}

/** What a rate per the area that is written becomes per area of the workbook; `null` for no area that we know. */
function areaFactor(per: string | undefined, areaUnit: AreaUnit): Decimal | null {
  const word = per === undefined ? "" : plain(per);
  const written: AreaUnit | null =
    word === "" ? areaUnit : /^(ac|acre|acres|a)$/.test(word) ? "ac" : /^(ha|hectare|hectares)$/.test(word) ? "ha" : null;
  if (written === null) return null;
  return written === areaUnit ? one : written === "ac" ? one.div(hectaresPerAcre) : hectaresPerAcre;
}

/** The unit that an item is counted in, from what its row says of the pack; `null` with a fault where that is half a pack. */
export function packOf(
  row: Row,
  firstUnit: string | null,
  areaUnit: AreaUnit,
): { packName: string; packSize: Decimal; unit: Measure } | null {
  const name = row.of(columns.packName);
  const size = row.of(columns.packSize);
  const typed = row.of(columns.packUnit);
  const unitNamed = (text: string): Measure => {
    const measure = measureMeant(text, areaUnit, null);
    return measure === null || measure === "ton-unclear" ? namedMeasure(text) : measure;
  };
  if (typed !== null && name !== null && measureMeant(name, areaUnit, unitNamed(typed).name) === "ton-unclear" && size === null)
    return row.lose("ton-unclear", columns.packName);
  if (size !== null && typed !== null) {
    const unit = unitNamed(typed);
    return { packName: name ?? (size.eq(one) ? unit.name : `${size.toString()} ${unit.name}`), packSize: size, unit };
  }
  if (size !== null) return row.fault("pack-incomplete");
  if (typed !== null && name !== null) {
    // A ton priced by the pack and used by the pound needs no size; a jug does.
    const [pack, unit] = [unitNamed(name), unitNamed(typed)];
    const within = pack.name === unit.name ? one : pack.name === "each" ? null : conversion(pack, unit, null);
    return within === null ? row.fault("pack-incomplete") : { packName: name, packSize: within, unit };
  }
  const alone = typed ?? name ?? firstUnit?.split(/\s*(?:\/|\bper\b)\s*/i)[0] ?? "unit";
  const unit = unitNamed(alone.replace(/\s+(N|P2O5|K2O)$/i, ""));
  return { packName: name ?? unit.name, packSize: one, unit };
}

const analysisPattern = /^(\d+(?:[.,]\d+)?)\s*[-–/]\s*(\d+(?:[.,]\d+)?)\s*[-–/]\s*(\d+(?:[.,]\d+)?)/;

export function analysisOf(row: Row): Analysis | null {
  const typed = row.of(columns.analysis);
  if (typed === null) return null;
  const found = analysisPattern.exec(typed);
  if (found === null) return row.fault("not-an-analysis", columns.analysis);
  const [n, p2o5, k2o] = found.slice(1).map((part) => new Decimal(part.replace(",", "."))) as [Decimal, Decimal, Decimal];
  return { n, p2o5, k2o };
}

/** Density in kg/L: "10.7 lb/gal", "1.28 kg/L", or a bare number in lb/gal (kg/L where areas are hectares). */
export function densityOf(row: Row, areaUnit: AreaUnit, style: NumberStyle): Density | null {
  const typed = row.of(columns.density);
  if (typed === null) return null;
  const [, number = "", units = ""] = /^([-\d.,' ]+)(.*)$/.exec(typed) ?? [];
  const reading = readNumber(number, style);
  if (typeof reading === "string") return row.fault("not-a-number", columns.density);
  if (reading.value.lte("0")) return row.fault("not-above-zero", columns.density);
  const [weight, volume] = units.trim() === "" ? (areaUnit === "ac" ? ["lb", "gal"] : ["kg", "L"]) : units.split(/\s*(?:\/|\bper\b)\s*/i);
  const [over, under] = [measureNamed(weight ?? ""), measureNamed(volume ?? "")];
  if (over?.dimension !== "weight" || under?.dimension !== "volume") return row.fault("unknown-unit", columns.density);
  return reading.value.times(over.factor).div(under.factor);
}
