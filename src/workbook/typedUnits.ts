/** Units that people type into a cell of numbers, where only one meaning is possible: `152 ac`, `30"`, `$24/ac`, `3 hrs`. */
import type { AreaUnit } from "../core/numbers/units";
import { columnUnits, type ColumnUnit } from "./columns/columnUnit";
import { plain } from "./words";

/** A number and what stands behind it. */
export function parted(text: string): { readonly number: string; readonly unit: string } | null {
  const [, number, unit] = /^([-+(]?\s?\p{Sc}?\s?[\d.,][\d.,'\s/½¼¾]*?)\s*((?:[a-z/×"”″'’′#].*|per .*|an? .*))$/iu.exec(text.trim()) ?? [];
  return number === undefined || unit === undefined ? null : { number: number.trim(), unit: unit.trim() };
}

/** The number of a text that ends in the unit which its column is in; `null` where it ends in anything else. */
export function withoutUnit(text: string, unit: ColumnUnit | null, areaUnit: AreaUnit): string | null {
  const words = unit === null ? undefined : columnUnits[unit].typed;
  const parts = words === undefined ? null : parted(text);
  return parts !== null && words![areaUnit === "ac" ? 0 : 1].includes(plain(parts.unit)) ? parts.number : null;
}
