/**
 * Repair factors of the engineering standard ASABE EP496 / D497 (Agricultural Machinery Management Data, table 3):
 *
 *     accumulated repairs = list price × RF1 × (hours ÷ 1000)^RF2
 *
 * The standard itself was not open to us. "checked": every cell of the accumulated-repair table of Iowa State
 * University Extension PM 710 (table 3, 1996, read in a public copy of the table) comes out of the two factors.
 * "from memory": not checked against anything.
 */
import { Decimal } from "../numbers/decimal";
import type { Certainty, Source } from "./source";

export const repairClasses = [
  "2WD tractor",
  "4WD tractor",
  "combine",
  "planter",
  "moldboard plow",
  "disk",
  "chisel plow",
  "field cultivator",
  "sprayer",
] as const;
export type RepairClass = (typeof repairClasses)[number];

export type RepairFactors = { readonly rf1: Decimal; readonly rf2: Decimal; readonly certainty: Certainty };

const factors = (rf1: string, rf2: string, certainty: Certainty): RepairFactors => ({
  rf1: new Decimal(rf1),
  rf2: new Decimal(rf2),
  certainty,
});

export const repairFactors: Readonly<Record<RepairClass, RepairFactors>> = {
  "2WD tractor": factors("0.007", "2.0", "checked"),
  "4WD tractor": factors("0.003", "2.0", "checked"),
  combine: factors("0.04", "2.1", "from memory"),
  planter: factors("0.32", "2.1", "from memory"),
  "moldboard plow": factors("0.29", "1.8", "checked"),
  disk: factors("0.18", "1.7", "checked"),
  "chisel plow": factors("0.28", "1.4", "checked"),
  "field cultivator": factors("0.27", "1.4", "from memory"),
  sprayer: factors("0.41", "1.3", "from memory"),
};

/** Where the factors are printed. @public */
export const repairFactorsSource: Source = {
  title: "Agricultural Machinery Management Data (ASABE D497), as used in Estimating Farm Machinery Costs (PM 710), table 3",
  publisher: "American Society of Agricultural and Biological Engineers; Iowa State University Extension",
  year: "1996, 2011",
  address: "https://elibrary.asabe.org/abstract.asp?aid=36431",
  where: "PM 710 table 3, read in a public copy; the standard's own table was not open to us",
};
