/** Stand counts, seeding rates and seed arithmetic as printed. `null` source figures are left out. */
import { sources } from "./sources";

const tennessee = sources["Tennessee 2011"];

/** Row length of 1/1000 acre. `within` is what the source rounds to: half an inch, or a whole one, in feet. */
export const rowLengths = [
  { source: tennessee, width: "15", feet: "34", inches: "10" },
  { source: tennessee, width: "30", feet: "17", inches: "5" },
  { source: tennessee, width: "36", feet: "14", inches: "6" },
  { source: tennessee, width: "38", feet: "13", inches: "9" },
  { source: sources["Corn+Soybean Digest 2004"], width: "22", feet: "23", inches: "9" },
] as const;
/** Printed lengths that are not the formula's to the nearest inch. */
export const rowLengthsOff = [
  { source: tennessee, width: "20", ours: "26 ft 1.6 in", printed: "26 ft 2 in", printedInches: "314", inches: "313.6" },
  {
    source: sources["Ohio soybean replant"],
    width: "7.5",
    ours: "69 ft 8.4 in",
    printed: "69 ft 9 in",
    printedInches: "837",
    inches: "836.4",
  },
] as const;

/**
 * Plants per acre of one plant a foot, thousands. Virginia Tech Extension, Soybean stand, table 1,
 * https://blogs.ext.vt.edu/ag-pest-advisory/tag/stand
 */
export const virginia = [
  ["36", "15"],
  ["30", "17"],
  ["24", "22"],
  ["20", "26"],
  ["15", "35"],
  ["7.5", "70"],
] as const;

/** Plants per acre that one plant in a hoop stands for, by diameter in inches: a published list of which we kept no address. */
export const hoops = [
  ["33", "7334"],
  ["30", "8874"],
  ["27", "10956"],
] as const;
/** Of the same list. */
export const hoopsOff = [
  { diameter: "36", ours: "6162", printed: "6165" },
  { diameter: "24", ours: "13866", printed: "13865" },
] as const;
/** The hoop that makes a plant 10,000 an acre: 28 1/4 in. */
export const hoopOfTenThousand = "28.25";

/** Counts worked through in print. */
export const counts = {
  /** Distance method: copy of a bulletin, same method as the Illinois Agronomy Handbook p. 31. */
  wheel: { rowWidth: "30", length: "94", plants: "150", printed: "27804" },
  /** Farm Progress 2023, Test your soybean replant decisions (Purdue Corn & Soybean Field Guide table). */
  hoop: { diameter: "30", plants: "16", printedThousands: "142" },
  /** Farm Progress, Should You Replant Soybeans?: prints 107,000, from about 8,900 a plant; exact 106,488. */
  hoopOff: { diameter: "30", plants: "12", ours: "106488", printed: "107,000" },
  /** Ohio State University Extension, Soybean replant decisions: 90 plants in 34 ft 10 in of 15-inch row are about 90,000. */
  ohio: { source: sources["Ohio soybean replant"], rowWidth: "15", length: "34.848", plants: "90", printed: "90000" },
  /** Penn State Extension 2016, Replanting Corn Fields, http://www.farms.com/commentaries/replanting-corn-fields-108067.aspx */
  penn: { source: sources["Penn State 2016"], rowWidth: "30", length: "1", plants: "2", printed: "34848" },
  /** Penn State Extension, Wheat Stand Assessment, https://extension.psu.edu/wheat-stand-assessment: 40 plants in 3 ft of 7-inch row. */
  wheat: { rowWidth: "7", length: "3", plants: "40", printedPerSquareFoot: "23" },
} as const;

/** Five counts in thousands, set by ourselves: no published worked interval was found. */
export const interval = {
  thousands: ["26", "28", "24", "30", "27"],
  mean: "27.0",
  deviation: "2.236",
  variationPercent: "8.28",
  halfWidth: "2.776",
} as const;

/** Seed spacing in the row, inches. Purdue Corn & Soybean Field Guide in Farm Progress 2015. */
export const spacings = [
  ["30", "30000", "7.0"],
  ["30", "32000", "6.5"],
  ["30", "34000", "6.1"],
  ["20", "32000", "9.8"],
  ["15", "32000", "13.1"],
] as const;

/** Pounds of wheat seed per acre. University of Kentucky, Seeding rate for wheat, table 2, http://www.uky.edu/Ag/Wheat/seedrate.html */
export const kentucky = {
  rows: [
    ["10000", null, "131"],
    ["12000", "127", "109"],
    ["14000", "109", "93"],
    ["16000", "95", "82"],
    ["18000", "85", "73"],
    ["20000", "76", "65"],
  ],
  perSquareFoot: ["35", "30"],
  /** Prints 150 for 10,000 seeds a pound at 35 per square foot; exact 152.46. */
  off: { seedsPerPound: "10000", perSquareFoot: "35", ours: "152", printed: "150" },
  /** Seeds per row foot, and inches of row in a square foot, table 1. */
  rowFeet: [
    ["4", "36.0", "12", "10"],
    ["6", "24.0", "18", "15"],
    ["7", "20.6", "20", null],
    ["8", "18.0", "23", "20"],
    ["10", "14.4", "29", "25"],
  ],
  seedsPerPoundOf20Grams: "22.68",
} as const;

/**
 * North Dakota State University Extension, Optimal Seeding Rates: 1.1 million seeds, 15 % loss, 12,500 a pound, 95 % germination;
 * prints 110 for 108.98.
 */
export const northDakota = {
  target: "1100000",
  survival: "0.85",
  seedsPerPound: "12500",
  germination: "0.95",
  ours: "109",
  printed: "110",
} as const;
/** Crop Chatter (Manitoba): flax, 45 plants per square foot, 5 g, 88 % germination, 40 % mortality; rule 43 lb, exact 40.9. */
export const flax = { plants: "45", weight: "5", perHundred: "0.528", exact: { prints: "43", ours: "40.9" } } as const;
/** growwinterwheat.ca, Seed heavy: formula and survival printed, the 32 g ours. */
export const winterWheat = { plants: "30", weight: "32", survival: "0.70", rule: "137.1" } as const;
/** Seed cost: Michigan State University Extension 2011 and 2025; Illinois in Corn+Soybean Digest; Manitoba Pulse & Soybean Growers 2021. */
export const seedMoney = {
  michigan2025: { unitPrice: "250", rate: "34000", perUnit: "80000", perAcre: "106.25" },
  michigan2011: {
    unitPrice: "275",
    rate: "2000",
    perUnit: "80000",
    perAcre: "6.88",
    cropPrice: "5.60",
    exactBushels: "1.23",
    printedBushels: "1.3",
  },
  illinois: { unitPrice: "300", perUnit: "80000", cropPrice: "4.50", perThousand: "3.75", seeds: "1200" },
  manitoba: { cost: "14.25", rate: "30000", perUnit: "140000", unitPrice: "66.50" },
  /** Seeds per acre from stand and germination, the rule as the notes of extension print it: 140,000 ÷ (0.90 × 0.95). */
  soybeanRate: { target: "140000", germination: "0.90", survival: "0.95", thousands: "164" },
  /** 113.50 an acre at 34,000 seeds is 267 for 80,000 (farm press). */
  unitFromAcre: { cost: "113.50", rate: "34000", perUnit: "80000", unitPrice: "267" },
} as const;
/** North Dakota State University, via North Dakota Corn 2016: a tenth skipped of 200 bu costs 16. Ours 15.6, printed to the bushel. */
export const skips = { yield: "200", skipped: "0.1", printed: "16" } as const;
