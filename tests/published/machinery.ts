/** Machinery figures as printed. Figures only; digits as in the source, percent of list price where the source prints percent. */
import { sources } from "./sources";

/** Worked example of PM 710: inputs and the first two results printed; the rest of its page was not readable. */
export const tractor180hp = {
  listPrice: "110000",
  purchasePrice: "93500",
  yearsKept: "15",
  hoursAYear: "400",
  remainingPercent: "23",
  salvage: "25300",
  depreciation: "68200",
  nominal: "0.08",
  inflation: "0.03",
  real: "0.05",
  /** Computed from the printed inputs, in the source's method, with the factor unrounded. */
  computed: { factor: "0.09634", capitalRecovery: "7835.54", taxesInsuranceHousing: "594.00", ownership: "8429.54", perHour: "21.07" },
} as const;

/** Fuel: the diesel and gasoline rule, three sources. */
export const fuel = [
  { source: sources["PM 710"], power: "180", gallons: "7.92", price: "1.00", fuelCost: "7.92", lubeCost: "1.19" },
  { source: sources["Growing Produce"], power: "105", gallons: "4.62", price: "3.40", fuelCost: "15.71", lubeCost: "2.36" },
  { source: sources["farmdoc machines 2019"], power: "310", gallons: "13.6", price: null, fuelCost: null, lubeCost: null },
] as const;

/** Accumulated repairs, whole percent of list price. PM 710 table 3 (1996), read in a public copy of the table. */
export const accumulatedRepairs = [
  { of: "2WD tractor", hours: "1000 2000 3000 4000 5000 6000 7000 8000 9000 10000", percent: "1 3 6 11 18 25 34 45 57 70" },
  { of: "4WD tractor", hours: "1000 2000 3000 4000 5000 6000 7000 8000 9000 10000", percent: "0 1 3 5 8 11 15 19 24 30" },
  { of: "moldboard plow", hours: "200 400 600 800 1000 1200 1400 1600 1800 2000", percent: "2 6 12 19 29 40 53 68 84 101" },
  { of: "disk", hours: "200 400 600 800 1000 1200 1400 1600 1800 2000", percent: "1 4 8 12 18 25 32 40 49 58" },
  { of: "chisel plow", hours: "200 400 600 800 1000 1200 1400 1600 1800", percent: "3 8 14 20 28 36 45 54 64" },
] as const;

/** Ontario farm press: accumulated repairs of a two-wheel-drive tractor, percent of new. */
export const ontarioRepairs = [{ hours: "6000", percent: "25" }] as const;
export const ontarioRepairsOff = { hours: "3000", prints: "6.2", ours: "6.3" } as const;

/** Growing Produce: a tractor listed at 80,000 and bought at 75,000, of which 37 % is left. */
export const salvageOfPricePaid = { listPrice: "80000", pricePaid: "75000", part: "0.37", prints: "27,750", ours: "29600" } as const;

/** Remaining value, whole percent of list price, ages 1 to 20. PM 710 table 1a, read in a public copy of the table. */
export const remainingValues = [
  { of: "tractor 30-79 hp", hours: "200", percent: "65 59 54 51 48 45 42 40 38 36 35 33 32 30 29 28 26 25 24 23" },
  { of: "tractor 30-79 hp", hours: "400", percent: "60 54 49 46 43 40 38 36 34 32 31 29 28 27 25 24 23 22 21 20" },
  { of: "tractor 30-79 hp", hours: "600", percent: "56 50 46 43 40 37 35 33 31 30 28 27 25 24 23 22 21 20 19 18" },
  { of: "tractor 80-149 hp", hours: "200", percent: "69 62 57 53 50 47 44 42 40 38 36 34 33 31 30 28 27 26 25 24" },
  { of: "tractor 80-149 hp", hours: "400", percent: "68 62 57 53 49 46 44 41 39 37 35 34 32 31 29 28 27 25 24 23" },
] as const;
/** Cells of that table which the coefficients give one percent point lower. */
export const remainingValuesOff = [
  { of: "tractor 80-149 hp", hours: "200", age: "20", ours: "23", printed: "24" },
  { of: "tractor 80-149 hp", hours: "400", age: "17", ours: "26", printed: "27" },
] as const;

/** Capital recovery factors, five decimals. Engineers Edge, "Capital recovery factors", www.engineersedge.com table 15667. */
export const capitalRecoveryFactors = {
  rates: ["0.035", "0.045", "0.06", "0.08", "0.10"],
  rows: [
    { years: "2", factors: ["0.5264", "0.534", "0.54544", "0.56077", "0.57619"] },
    { years: "4", factors: ["0.27225", "0.27874", "0.28859", "0.30192", "0.31547"] },
    { years: "6", factors: ["0.18767", "0.19388", "0.20336", "0.21632", "0.22961"] },
    { years: "10", factors: ["0.12024", "0.12638", "0.13587", "0.14903", "0.16275"] },
    { years: "12", factors: ["0.10348", "0.10967", "0.11928", "0.1327", "0.14676"] },
    { years: "14", factors: ["0.09157", "0.09782", "0.10758", "0.1213", "0.13575"] },
    { years: "16", factors: ["0.08268", "0.08902", "0.09895", "0.11298", "0.12782"] },
    { years: "18", factors: ["0.07582", "0.08224", "0.09236", "0.1067", "0.12193"] },
  ],
} as const;

/**
 * Level loan payments, which are capital recovery by another name. The first: Colorado Water Conservation Board, Decker
 * Lateral loan amortisation schedule, dnrweblink.state.co.us/CWCB/0/doc/69405/Page16.aspx. The second: 50,000 over 60
 * months at 5 % a year, printed 943.56 in a farm-finance text of which we kept no address.
 */
export const loanPayments = [
  { source: sources["Decker Lateral"], loan: "75000", rate: "0.0425", periods: "30", payment: "4469.87" },
  { source: sources["60-month loan"], loan: "50000", rate: "0.05", perYear: "12", periods: "60", payment: "943.56" },
] as const;

/** University of Maryland, ENCE420 course notes, equipment ownership example, https://studylib.net/doc/8433104/ */
export const constructionMachine = {
  price: "255000",
  salvage: "50000",
  years: "4",
  rate: "0.08",
  hours: "2500",
  pricePart: "76990",
  salvagePart: "11096",
  perHour: { prints: "26.354", ours: "26.358" },
  /** Capital recovery and sinking fund for four years at 8 %, to the four digits of the tables of such factors. */
  factors: ["0.3019", "0.2219"],
} as const;

/** Michigan State University, ANR course pages, effective field capacity notes, web5.anr.msu.edu */
export const fieldCapacities = [
  { unit: "ac", speed: "5", width: "12", efficiency: "0.8", printed: "5.82" },
  { unit: "ac", speed: "4", width: "10", efficiency: "0.75", printed: "3.64" },
  { unit: "ha", speed: "6", width: "3", efficiency: "0.8", printed: "1.44" },
  { unit: "ha", speed: "5", width: "2.5", efficiency: "0.85", printed: "1.06" },
] as const;

/** farmdoc, University of Illinois, Machinery cost estimates: tractors. Dollars an hour; labour at 13.50 and 1.1 hours. */
export const illinoisTractors = {
  wage: "13.50",
  labour: "14.85",
  rows: [
    { power: "65", overhead: "14.0", fuelAndLube: "4.7", total: "33.55" },
    { power: "105", overhead: "21.7", fuelAndLube: "7.6", total: "44.15" },
    { power: "190", overhead: "44.0", fuelAndLube: "13.7", total: "72.55" },
    { power: "325", overhead: "53.5", fuelAndLube: "23.2", total: "91.55" },
  ],
} as const;
