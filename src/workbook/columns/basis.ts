/** What an amount or a rate is for, in any of the ways in which people write it. */
import type { AreaUnit } from "../../core/numbers/units";
import { plain } from "../words";
import { choice, type CellReader, type Column, type Named, type Said } from "./column";

/** @param bases the words that are counted by; a new table offers those of an area for acres and for hectares */
export const basisColumn = <const Basis extends string>(bases: readonly Basis[], said: Said): Column<Basis> => {
  const named = { heading: "Basis" };
  return {
    ...choice(named.heading, bases, { words: ["per"], ...said }),
    choices: basisChoices(bases),
    read: (row) => basisIn(row, named, bases),
  };
};

const basisChoices = (bases: readonly string[]): readonly string[] =>
  bases.flatMap((basis) => (basis === "per acre" ? [basis, "per hectare"] : [basis]));

/** The basis that is an area's as it is written for the area unit of the workbook. */
export const basisWords = (basis: string, areaUnit: AreaUnit): string =>
  basis === "per acre" && areaUnit === "ha" ? "per hectare" : basis;

/**
 * The basis as typed; "per hectare" and "per bu" are what a metric or a bushel workbook calls it. One that names the other area unit
 * is counted per area of the workbook and noted, since nobody knows whether the word or the money is wrong.
 */
function basisIn<Basis extends string>(row: CellReader, column: Named, bases: readonly Basis[]): Basis | null {
  const typed = plain(row.text(column) ?? "");
  const [, area] = /^(?:per|an?|\/)?(acres?|ac|hectares?|ha)$/.exec(typed) ?? [];
  const meant = area !== undefined ? "per acre" : /^per(bu|bushel|t|tonne|ton|cwt|lb|kg)$/.test(typed) ? "per unit of yield" : null;
  const known = meant === null ? undefined : bases.find((basis) => basis === meant);
  if (known !== undefined && area !== undefined && area.startsWith("h") !== (row.areaUnit === "ha"))
    row.fault("basis-area", column, { like: row.areaUnit === "ha" ? "hectare" : "acre" });
  return known ?? row.choice(column, bases);
}
