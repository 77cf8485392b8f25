/** Units that people type into a cell of numbers, where only one meaning is possible: `152 ac`, `30"`, `$24/ac`, `3 hrs`. */
import type { AreaUnit } from "../core/numbers/units";
import { plain, plainHeading } from "./words";

/** Words in plain spelling, by what they measure; the second list is for hectare workbooks. */
const inches = [
  ['"', "”", "″", "''", "in", "in.", "inch", "inches"],
  ["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
] as const;
const feet = [
  ["'", "’", "′", "ft", "ft.", "foot", "feet"],
  ["m", "metre", "metres", "meter", "meters"],
] as const;
const areas = [
  ["ac", "acre", "acres", "ac."],
  ["ha", "hectare", "hectares"],
] as const;
const speeds = [
  ["mph", "mi/h", "milesperhour"],
  ["km/h", "kph", "kmh"],
] as const;
const powers = [["hp", "ptohp"], ["kw"]] as const;
const perArea = [
  ["/ac", "/acre", "perac", "peracre", "anacre", "ac", "acre"],
  ["/ha", "/hectare", "perha", "perhectare", "ahectare"],
] as const;
const both = (...words: readonly string[]) => [words, words] as const;
const hours = both("h", "hr", "hrs", "hr.", "hour", "hours");
const years = both("y", "yr", "yrs", "year", "years");

type Words = readonly [forAcres: readonly string[], forHectares: readonly string[]];

/** By heading, in plain words. */
const unitsOf: ReadonlyMap<string, Words> = new Map(
  (
    [
      [["Acres"], areas],
      [["Row width", "Hoop diameter"], inches],
      [["Length", "Width"], feet],
      [["Speed"], speeds],
      [["Power"], powers],
      [["Rent per acre", "Land charge per acre", "Other income per acre"], perArea],
      [["Hours", "Hours a year", "Tractor hours a year"], hours],
      [["Age", "Years kept", "Tractor age", "Tractor years kept"], years],
      [["Labour per hour"], both("/h", "/hr", "/hour", "perhour", "anhour")],
      [["Passes"], both("x", "×", "pass", "passes", "time", "times")],
      [["Plants", "Weak plants"], both("plant", "plants")],
      [["Seeds dropped"], both("seeds", "seeds/ac", "seeds/acre", "seedsperacre", "/ac", "/ha", "seeds/ha")],
      [["Target stand"], both("plants", "plants/ac", "plants/acre", "plantsperacre", "/ac", "/ha", "plants/ha")],
    ] as const
  ).flatMap(([headings, words]) => headings.map((heading) => [plainHeading(heading), words as Words] as const)),
);

/** A number and what stands behind it. */
export function parted(text: string): { readonly number: string; readonly unit: string } | null {
  const [, number, unit] = /^([-+(]?\s?\p{Sc}?\s?[\d.,][\d.,'\s/½¼¾]*?)\s*((?:[a-z/×"”″'’′#].*|per .*|an? .*))$/iu.exec(text.trim()) ?? [];
  return number === undefined || unit === undefined ? null : { number: number.trim(), unit: unit.trim() };
}

/** The number of a text that ends in the unit which its column is in; `null` where it ends in anything else. */
export function withoutUnit(text: string, heading: string, areaUnit: AreaUnit): string | null {
  const words = unitsOf.get(plainHeading(heading));
  const parts = words === undefined ? null : parted(text);
  return parts !== null && words![areaUnit === "ac" ? 0 : 1].includes(plain(parts.unit)) ? parts.number : null;
}
