/**
 * Remaining-value coefficients of the engineering standard ASABE EP496 / D497 (table 4):
 *
 *     remaining value ÷ list price = (C1 − C2·√age − C3·√(hours a year))²
 *
 * The standard itself was not open to us. "checked": the coefficients give the printed cells of Iowa State University
 * Extension PM 710 (table 1a, read in a public copy of the table) but for two of a hundred, which differ by one percent
 * point, and the 23 % of its worked example. "from memory": not checked against anything.
 */
import { Decimal } from "../numbers/decimal";
import type { Certainty, Source } from "./source";

export const remainingValueClasses = [
  "tractor 30-79 hp",
  "tractor 80-149 hp",
  "tractor 150 hp up",
  "combine",
  "planter",
  "tillage",
] as const;
export type RemainingValueClass = (typeof remainingValueClasses)[number];

export type RemainingValueFactors = { readonly c1: Decimal; readonly c2: Decimal; readonly c3: Decimal; readonly certainty: Certainty };

const factors = (c1: string, c2: string, c3: string, certainty: Certainty): RemainingValueFactors => ({
  c1: new Decimal(c1),
  c2: new Decimal(c2),
  c3: new Decimal(c3),
  certainty,
});

export const remainingValueFactors: Readonly<Record<RemainingValueClass, RemainingValueFactors>> = {
  "tractor 30-79 hp": factors("0.9809", "0.0934", "0.0058", "checked"),
  "tractor 80-149 hp": factors("0.9421", "0.0999", "0.0008", "checked"),
  "tractor 150 hp up": factors("0.9756", "0.1187", "0.0019", "checked"),
  combine: factors("1.132", "0.165", "0.0079", "from memory"),
  planter: factors("0.883", "0.0787", "0", "from memory"),
  tillage: factors("0.891", "0.11", "0", "from memory"),
};

/** Where the factors are printed. @public */
export const remainingValueSource: Source = {
  title: "Agricultural Machinery Management Data (ASABE D497), as used in Estimating Farm Machinery Costs (PM 710), table 1a",
  publisher: "American Society of Agricultural and Biological Engineers; Iowa State University Extension",
  year: "2011",
  address: "https://elibrary.asabe.org/abstract.asp?aid=36431",
  where: "PM 710 table 1a, read in a public copy; the standard's own table was not open to us",
};
