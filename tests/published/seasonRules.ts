/**
 * Single rules of the season calculation as sources print them: operating interest by months, the average price of
 * purchases, the price of a nutrient, shrink and drying, the average price of sales. Figures only; read in 2026. Where
 * no address is given, only the publisher was kept when the figure was read.
 */
/**
 * Interest on all that is spent before it, $/ac. The first source prints the time-weighted average, so that it is for a
 * year; the months of the others are not printed but follow from their own interest line.
 */
export const operatingInterest = [
  { id: "D05", spent: "29.23", rate: "15.5", months: "12", prints: "4.53" },
  { id: "D06", spent: "511.19", rate: "10", months: "3.48", prints: "14.82" },
  { id: "D07", spent: "256.29", rate: "4.75", months: "6.94", prints: "7.04" },
  { id: "D08", spent: "136.26", rate: "6", months: "7.68", prints: "5.23" },
  { id: "D09", spent: "241.14", rate: "5", months: "4.44", prints: "4.46" },
] as const;

/** Accounting course problems: what is used and what is left at the average cost of what was bought. */
export const averageCost = {
  /** 625 units cost 11,450 in all; 500 are used. */
  whole: { quantity: "625", amount: "11450", used: "500", unit: "18.32", cost: "9160", left: "125", leftValue: "2290" },
  /** Two lots, 28 used: the source cuts the unit cost to 18.52 and so prints 518.56. */
  twoLots: {
    id: "I06",
    lots: [
      ["18", "14"],
      ["33", "21"],
    ],
    used: "28",
    unit: "18.5294",
    prints: "518.56",
    ours: "518.82",
  },
} as const;

/** Extension and farm-press worked examples: dollars a pound of the nutrient, from dollars a short ton of the product. */
export const nutrientPrices = [
  { product: "46-0-0", price: "567", nutrient: "N", prints: "0.62" },
  { product: "0-46-0", price: "996", nutrient: "P2O5", prints: "1.08" },
  { product: "82-0-0", price: "789", nutrient: "N", prints: "0.48" },
  { product: "28-0-0", price: "336", nutrient: "N", prints: "0.60" },
] as const;

/** Farm press: a unit of 80,000 seeds plants 2.5 acres at 32,000; 34,000 at 267 a unit are printed as 113.50 an acre. */
export const seed = {
  pack: "80000",
  rate: "32000",
  acres: "2.5",
  cost: { id: "I08", rate: "34000", price: "267", prints: "113.50", ours: "113.48" },
} as const;

/** Pounds at a moisture that hold one bushel at standard moisture. Rows drier than standard are left out: a sale does not stretch them. */
export const equivalentWeights = [
  {
    id: "G01",
    crop: "Corn",
    weight: "56",
    standard: "15.5",
    rows: [
      { moisture: "15.5", prints: "56.00" },
      { moisture: "16", prints: "56.33" },
      { moisture: "18", prints: "57.70", ours: "57.71" },
      { moisture: "20", prints: "59.15" },
      { moisture: "22", prints: "60.66", ours: "60.67" },
      { moisture: "25", prints: "63.09" },
      { moisture: "25.5", prints: "63.51", ours: "63.52" },
      { moisture: "28", prints: "65.72" },
      { moisture: "30", prints: "67.60" },
      { moisture: "35", prints: "72.80" },
    ],
  },
  {
    id: "G02",
    crop: "Soybeans",
    weight: "60",
    standard: "13",
    rows: [
      { moisture: "14", prints: "60.70" },
      { moisture: "16", prints: "62.14" },
      { moisture: "18", prints: "63.66" },
      { moisture: "19", prints: "64.64", ours: "64.44" },
      { moisture: "20", prints: "65.25" },
      { moisture: "25", prints: "69.60" },
      { moisture: "30", prints: "74.57" },
    ],
  },
] as const satisfies readonly {
  readonly rows: readonly { readonly moisture: string; readonly prints: string; readonly ours?: string }[];
  readonly [more: string]: unknown;
}[];

/** South Dakota State University Extension, 2020: percent of the weight that is lost for the first point above a moisture. */
export const shrink = {
  id: "G04",
  rows: [
    { standard: "15.5", prints: "1.18" },
    { standard: "15", prints: "1.18" },
    { standard: "14", prints: "1.16" },
    { standard: "13", prints: "1.15" },
    { standard: "12", prints: "1.14" },
    { standard: "11", prints: "1.13", ours: "1.12" },
    { standard: "10", prints: "1.11" },
  ],
  whole: { moisture: "25", standard: "15.5", prints: "11.24" },
  /** University of Florida IFAS EDIS AG442: 10,000 lb at 20 %. The page works on the dry basis and carries 9,240. */
  wetBasis: { id: "G06", weight: "10000", moisture: "20", standard: "15.5", prints: "9240", ours: "9467" },
} as const satisfies {
  readonly rows: readonly { readonly standard: string; readonly prints: string; readonly ours?: string }[];
  readonly [more: string]: unknown;
};

/** Farm conversion tables: bushels in a tonne, by the pounds of a bushel. */
export const bushelsPerTonne = [
  { crop: "Corn", weight: "56", prints: "39.368" },
  { crop: "Wheat", weight: "60", prints: "36.7437" },
  { crop: "Barley", weight: "48", prints: "45.9296" },
  { crop: "Canola", weight: "50", prints: "44.092" },
] as const;

/**
 * North Dakota State University, MWPS and farm press: dollars a bushel for ten points at a charge a point (0.02 gal at 1.60;
 * 0.022 at 1.90).
 */
export const drying = [
  { perPoint: "0.032", points: "10", prints: "0.32" },
  { perPoint: "0.0418", points: "10", prints: "0.42" },
] as const;

/** AgWeb, 2010: a tenth sold at 4.30 and the rest at 5.20; the plain mean of the two is 4.75. */
export const stagedSales = {
  sales: [
    ["10", "4.30"],
    ["90", "5.20"],
  ],
  prints: "5.11",
} as const;
