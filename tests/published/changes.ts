/** Partial budgets, paybacks and planter examples as printed or as their notes compute them; each says which. */

/** Southeast Farm Press / Delta Farm Press, Partial budget a simple, useful financial tool, worked example, second page. */
export const beansToCorn = {
  area: "100",
  corn: ["150", "6.50"],
  beans: ["22", "40"],
  reducedCost: "550",
  addedCost: "690",
  addedReturns: "97,500",
  reducedReturns: "88,000",
  positive: "152,500",
  closingSentence: "152,000",
  negative: "157,000",
  net: "-4,500",
  netPerAcre: "-45",
} as const;

/** ISRN Agronomy 2012, doi 10.5402/2012/153412, table 10, maize in Kenya, shillings a hectare; totals and nets printed. */
export const kenya = {
  lines: ["Land preparation", "Seed", "Fertilizer", "Weeding", "Bags"],
  treatments: [
    { name: "A", gross: "49297", costs: ["3600", "600", "6503", "3840", "1150"], total: "15693", net: "33604", netPerCost: "2.14" },
    { name: "B", gross: "27196", costs: ["3600", "600", "0", "3840", "600"], total: "8640", net: "18556", netPerCost: "2.15" },
    { name: "C", gross: "46155", costs: ["3600", "1200", "6503", "3840", "1100"], total: "16243", net: "29912", netPerCost: "1.84" },
    { name: "D", gross: "24067", costs: ["3600", "1200", "0", "3840", "525"], total: "9165", net: "14902", netPerCost: "1.62" },
  ],
  /** Computed: (33,604 − 18,556) ÷ (15,693 − 8,640). */
  marginalReturnOfAOverB: "213.4",
} as const;

/** Farm press article by an equipment specialist: 5,000 at 5 an acre is paid by 1,000 acres; 1,200 acres a year pay it in the first. */
export const attachment = { price: "5000", benefit: "5", acres: "1200", breakEvenAcres: "1000", paybackYears: "0.833" } as const;

/**
 * Accounting course problem set: payback printed; the present value worked out, because the printed one does
 * not follow.
 */
export const courseProblem = {
  outlay: "113800",
  inflow: "43800",
  years: 3,
  rate: "0.08",
  payback: "2.6",
  netPresentValue: "-923.15",
  printedPresentValue: "-1,197.40",
  factor: "2.577",
  withFactor: "-927.40",
} as const;
/** Management-accounting textbook problem: 3 years 1.2 months printed; present values printed. */
export const combine = {
  outlay: "487000",
  flows: ["157000", "182000", "202000", "213000"],
  rate: "0.07",
  present: ["146729", "158965.8", "164892.2", "162496.7"],
  payback: "3.1",
  netPresentValue: "146083.7",
} as const;
/** The same, level amounts: simple payback printed; with interest printed by a straight line inside the last year. */
export const levelPaybacks = [
  { outlay: "200000", yearly: "40000", rate: "0.12", simple: "5.0", straightLine: "8.09", closedForm: "8.085" },
  { outlay: "500000", yearly: "92500", rate: "0.10", simple: "5.405", straightLine: "8.17", closedForm: "8.160" },
] as const;

/** Own example of an attachment on 800 acres: the arithmetic is ours, checked apart. */
export const ownAttachment = {
  price: "18000",
  salvage: "4500",
  years: "6",
  rate: "0.08",
  area: "800",
  repairs: "2.00",
  gain: "2.0",
  grain: "4.40",
  costPerAcre: "6.10",
  net: "2.70",
  breakEvenArea: "482.39",
  breakEvenGain: "1.386",
} as const;
/** Own example of closing wheels on 12 rows; only the zero-gain evidence is printed (doi 10.13031/aea.13957). */
export const closingWheels = {
  rows: "12",
  perRow: "300",
  years: "6",
  rate: "0.08",
  area: "900",
  grain: "4.20",
  perYear: "778.735",
  perAcre: "0.8653",
  breakEvenGain: "0.206",
  nets: [
    ["0", "-0.8653"],
    ["1", "3.3347"],
    ["3", "11.7347"],
  ],
} as const;

/** Messenger-Inquirer (Kentucky extension column) 2020, Corn planter maintenance. The field's 202.38 and the loss of 3.87 are printed. */
export const oneBadRow = {
  acres: "50",
  rows: "16",
  ears: "30000",
  kernels: "550",
  perBushel: "80000",
  loss: "0.3",
  acresPerRow: "3.125",
  good: "206.25",
  bad: "144.38",
  field: "202.38",
  lost: "3.87",
  price: "3.90",
  money: "15.08",
} as const;

/** No-Till Farmer article 8919: response that pays for a treatment, bu/ac, by cost (rows) and price (columns). */
export const fungicide = {
  prices: ["3.50", "4.00", "4.50", "5.00", "5.50"],
  rows: [
    ["20", "5.7", "5.0", "4.4", "4.0", "3.6"],
    ["25", "7.1", "6.3", "5.6", "5.0", "4.5"],
    ["30", "8.6", "7.5", "6.7", "6.0", "5.5"],
    ["35", "10.0", "8.8", "7.8", "7.0", "6.4"],
    ["40", "11.4", "10.0", "8.9", "8.0", "7.3"],
  ],
  /** The first cell is printed 5.1: a misprint, 20 ÷ 3.50 is 5.7. */
  misprint: { cost: "20", price: "3.50", printed: "5.1" },
  single: [
    ["26", "4.50", "5.8"],
    ["30", "4.50", "6.7"],
  ],
} as const;
/** Farm press report of a strip trial: 19 an acre of added revenue, −9 net; the cost of 28 by difference. */
export const stripTrial = { addedReturns: "19", cost: "28", net: "-9" } as const;

/** Replant decisions on cells printed by Purdue, the money ours. */
export const marginal = {
  goal: "180",
  planned: ["04-25", "30000"],
  kept: ["04-25", "18000"],
  reseeded: ["05-15", "32000"],
  price: "4.20",
  cost: "95",
  points: "3",
  dryingPerPoint: "0.05",
  keptYield: "158.4",
  reseededYield: "171.0",
  net: "-67.73",
} as const;
export const clear = {
  goal: "200",
  planned: ["04-25", "30000"],
  kept: ["04-20", "10000"],
  reseeded: ["05-10", "32000"],
  price: "4.20",
  cost: "95",
  insurance: "36",
  keptYield: "134.0",
  reseededYield: "194.0",
  net: "193.0",
  breakEvenPrice: "0.983",
} as const;
/**
 * Delta Farm Press (University of Arkansas) 2006: reduced yield that equals replanting = full yield − cost ÷ price. Yield
 * printed, cost and price ours.
 */
export const arkansas = { fullYield: "179", cost: "50", price: "2.50", reducedYield: "159" } as const;
/**
 * Iowa State University Extension 2006, Corn replant decisions: ending the stand, planting, seed. The sum is ours: the printed
 * one is cut off.
 */
export const iowaCost = { endOldStand: "10", pass: "10", seed: "30", total: "50" } as const;
/** Iowa State University Extension, ICM 27 July 1998, and the lesson of agedge.net (example 4). */
export const replantPayments = [
  { crop: "soybeans", approved: "40", coverage: "0.7", appraisal: "21", price: "6.15", guarantee: "28", trigger: "25.2", payment: "18.45" },
  { crop: "soybeans", approved: "50", coverage: "0.8", appraisal: "19", price: "10.00", guarantee: "40", trigger: "36", payment: "30.00" },
  { crop: "corn", approved: "160", coverage: "0.75", appraisal: "90", price: "2.45", guarantee: "120", trigger: "108", payment: "19.60" },
  { crop: "corn", approved: "60", coverage: "0.6", appraisal: "10", price: "4.50", guarantee: "36", trigger: "32.4", payment: "32.40" },
] as const;

/**
 * Drying and shrink: North and South Dakota State University, Propane Education & Research Council 2019, farmdoc 2009, Purdue
 * Field Guide, Iowa State University.
 */
export const drying = {
  northDakota: { propane: "1.90", points: "10", centsPerPoint: "4.2", centsPerBushel: "42" },
  southDakota: { propane: "1.60", points: "10", perPoint: "0.032", perBushel: "0.32" },
  propaneCouncil: { propane: "1.00", bushels: "120", points: "10", cost: "26" },
  illinois: { dry: "190", base: "15", moisture: "25", handlingLoss: "0.0025", wet: "216" },
  purdue: { wet: "1000", moisture: "26", base: "15", dry: "870.6" },
  shrink: [
    ["15", "1.176"],
    ["15.5", "1.183"],
    ["14", "1.163"],
  ],
} as const;
