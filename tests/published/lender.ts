/**
 * Published loan, repayment, insurance and sensitivity examples. Figures only, with the digits as printed; read in 2026.
 * Where no address is given, only the publisher was kept when the figure was read.
 */
export const amortisation = {
  principal: "75000",
  rate: "0.0425",
  years: "30",
  payment: "4469.87",
  lines: [
    { year: 1, interest: "3187.50", principal: "1282.37", balance: "73717.63" },
    { year: 2, interest: "3133.00", principal: "1336.87", balance: "72380.76" },
    { year: 10, balance: "59424.07" },
    { year: 15, balance: "48840.12" },
    { year: 20, balance: "35807.61" },
    { year: 29, balance: "4287.64" },
  ],
  lastInterest: "182.22",
  totalInterest: "59096.05",
} as const;

export const levelPayments = [{ principal: "50000", ratePerPeriod: "0.05/12", periods: "60", payment: "943.56" }] as const;

/** Purdue University Extension, 2025: one farm passes the debt test and fails the replacement test. */
export const repaymentCapacity = {
  netIncome: "78853",
  incomeTax: "49769",
  termInterest: "72218",
  depreciation: "263567",
  familyLiving: "105863",
  termPrincipal: "59534",
  capacity: "259006",
  margin: "127254",
  // Computed from the printed figures, not printed: replacement at 1.15 times depreciation, and the coverage.
  replacement: "303102",
  marginAfterReplacement: "-175848",
  coverage: "1.966",
} as const;

export const guarantees = {
  /** United States crop insurance illustrations in the farm press; the printed trigger yields drop their decimals. */
  revenue: {
    approvedYield: "170",
    coverage: "0.75",
    projected: "6.50",
    guarantee: "828.75",
    harvested: "100",
    harvestPrice: "5.75",
    indemnity: "253.75",
  },
  triggers: {
    approvedYield: "220",
    coverage: "0.85",
    projected: "5.91",
    guarantee: "1105",
    rows: [
      { harvestPrice: "4.81", trigger: "229" },
      { harvestPrice: "5.00", trigger: "221" },
      { harvestPrice: "4.60", trigger: "240" },
    ],
  },
  /** The source rounds the guarantee to 100 bu and prints 2,000 bu and 11,200; unrounded it is 100.1 bu and 11,256. */
  yield: { approvedYield: "143", coverage: "0.70", price: "5.60", harvested: "80", acres: "100", guarantee: "100.1", indemnity: "11256" },
  /** The rule is published, the numbers are ours: the higher of the two prices, the harvest price at most twice the projected. */
  harvestPriceOption: { approvedYield: "170", coverage: "0.75", projected: "4.00", harvestPrice: "9.00", cap: "2", guarantee: "1020.00" },
  /** Manitoba Agricultural Services Corporation's rule with a dollar value of our own: shortfall in tonnes × dollar value. */
  tonnes: { guaranteed: "100", harvested: "60", price: "250", claim: "10000" },
} as const;

/** NSW Department of Primary Industries, Australia: azuki beans, surface irrigated, gross margin A$/ha by yield and price, 2010-11. */
export const azuki = {
  prices: ["700", "950", "1200", "1450", "1700"],
  /** Income per tonne as a part of the first-grade price, from the printed grades. */
  incomeShare: "0.9004166666666666",
  fixed: "1491.81",
  perTonne: "112",
  rows: [
    { yield: "1.2", net: ["-870", "-600", "-330", "-59", "211"] },
    { yield: "1.6", net: ["-663", "-302", "58", "418", "778"] },
    { yield: "2.0", net: ["-455", "-5", "445", "895", "1346"] },
    { yield: "2.4", net: ["-248", "292", "833", "1373", "1913"] },
    { yield: "2.8", net: ["-41", "590", "1220", "1850", "2481"] },
    { yield: "3.2", net: ["167", "887", "1607", "2328", "3048"] },
    { yield: "3.6", net: ["374", "1184", "1995", "2805", "3616"] },
  ],
} as const;

/**
 * Texas A&M AgriLife Extension: furrow-irrigated grain sorghum, 2016, break-even price across yields. Only 7.28 is legible in
 * print; the rest follows its rule.
 */
export const sorghum = {
  variableCost: "245.60",
  totalCost: "298.21",
  haulPerCwt: "0.90",
  rows: [
    { yield: "33.75", variable: "7.28", total: "8.84" },
    { yield: "40.5", variable: "6.06", total: "7.36" },
    { yield: "45.0", variable: "5.46", total: "6.63" },
    { yield: "49.5", variable: "4.96", total: "6.02" },
    { yield: "56.25", variable: "4.37", total: "5.30" },
  ],
  withMovingHaul: { yield: "33.75", price: "6.98" },
} as const;

/** Our own arithmetic: no published example of the price needed on unsold grain was found. */
export const unsold = {
  cost: "740",
  yield: "185",
  acres: "500",
  sales: [
    ["20000", "4.40"],
    ["15000", "4.75"],
  ],
  average: "4.55",
  rest: "57500",
  needed: "3.665",
} as const;
