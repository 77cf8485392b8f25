/**
 * The units in which items are bought, packed and applied, and exact conversion between them.
 *
 * Factors are exact by definition: the international pound is 0.45359237 kg, the US gallon 231 cubic inches
 * (3.785411784 L), the imperial gallon 4.54609 L (NIST Handbook 44, Appendix C; UK Weights and Measures Act 1985).
 */
import { Decimal, one } from "./decimal";

/** What a unit measures. `named`: a pack known only by its name, which converts to nothing else. */
type Dimension = "weight" | "volume" | "count" | "named";

/** A unit. `factor` is its size in kilograms, litres or pieces; 1 for a named pack. */
export type Measure = { readonly name: string; readonly dimension: Dimension; readonly factor: Decimal };

/** Kilograms per litre. */
export type Density = Decimal;

const pound = new Decimal("0.45359237");
const gallon = new Decimal("3.785411784");
const weight = (name: string, factor: Decimal): Measure => ({ name, dimension: "weight", factor });
const volume = (name: string, factor: Decimal): Measure => ({ name, dimension: "volume", factor });
const count = (name: string, factor: Decimal): Measure => ({ name, dimension: "count", factor });

const measures: readonly (readonly [Measure, readonly string[]])[] = [
  [weight("lb", pound), ["lbs", "pound", "pounds", "#"]],
  [weight("oz", pound.div("16")), ["ounce", "ounces", "dry oz", "oz dry"]],
  [weight("cwt", pound.times("100")), ["hundredweight"]],
  [weight("ton", pound.times("2000")), ["tons", "short ton", "short tons"]],
  [weight("t", new Decimal("1000")), ["tonne", "tonnes", "metric ton", "metric tons", "mt"]],
  [weight("kg", one), ["kgs", "kilogram", "kilograms", "kilo", "kilos"]],
  [weight("g", new Decimal("0.001")), ["gram", "grams"]],
  [volume("gal", gallon), ["gals", "gallon", "gallons", "us gal"]],
  [volume("qt", gallon.div("4")), ["qts", "quart", "quarts"]],
  [volume("pt", gallon.div("8")), ["pts", "pint", "pints"]],
  [volume("fl oz", gallon.div("128")), ["floz", "fluid oz", "fluid ounce", "fluid ounces", "fl. oz", "fl. oz."]],
  [volume("L", one), ["l", "litre", "litres", "liter", "liters", "lt"]],
  [volume("mL", new Decimal("0.001")), ["ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"]],
  [volume("hL", new Decimal("100")), ["hl", "hectolitre", "hectolitres", "hectoliter", "hectoliters"]],
  [volume("imp gal", new Decimal("4.54609")), ["imperial gal", "imperial gallon", "imperial gallons"]],
  [count("seeds", one), ["seed", "kernel", "kernels"]],
  [count("thousand seeds", new Decimal("1000")), ["1000 seeds", "1,000 seeds", "k seeds", "thousand", "m seeds", "mk"]],
  [count("each", one), ["ea", "piece", "pieces", "pc", "pcs", "unit", "units", "count"]],
];

const byName: ReadonlyMap<string, Measure> = new Map(
  measures.flatMap(([measure, others]) => [measure.name, ...others].map((name) => [plain(name), measure] as const)),
);

/** The unit that a person means by `text`, case and spaces aside; `null` where it is none that we know. */
export const measureNamed = (text: string): Measure | null => byName.get(plain(text)) ?? null;

/** A unit known only by its name, such as "load" where nobody says what is in one. */
export const namedMeasure = (name: string): Measure => ({ name, dimension: "named", factor: one });

/** The names of all units that we know, for a drop-down list and for "did you mean". */
export const measureNames: readonly string[] = measures.map(([measure]) => measure.name);

/**
 * How many of `to` are one `from`, exact to the 34 digits of our decimals.
 *
 * @param density kilograms per litre of the item, to go between weight and volume; `null` where it is not known
 * @returns `null` where no road leads from one to the other
 */
export function conversion(from: Measure, to: Measure, density: Density | null): Decimal | null {
  if (from.name === to.name && from.dimension === to.dimension) return one;
  if (from.dimension === "named" || to.dimension === "named") return null;
  const ratio = from.factor.div(to.factor);
  if (from.dimension === to.dimension) return ratio;
  if (density === null || density.lte("0")) return null;
  if (from.dimension === "volume" && to.dimension === "weight") return ratio.times(density);
  if (from.dimension === "weight" && to.dimension === "volume") return ratio.div(density);
  return null;
}

function plain(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, " ");
}
