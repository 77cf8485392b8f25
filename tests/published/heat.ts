/** Heat units, stages and maturity as sources work them out. Figures only; read in 2026. */
import { sources } from "./sources";

const waushara = sources["Waushara 2018"];
const ohio = sources["Ohio AGF-101"];
const iowa = sources["Iowa Agronomy 541"];
const federal = sources["Canada heat units 2017"];
const adviser = sources["Ontario adviser 2010"];

/** Days by their highest and lowest temperature, and what is printed of them. */
export const heatDays = [
  { id: "90-65", source: waushara, way: "growing degree 86/50", unit: "F", high: "90", low: "65", prints: "25.5" },
  { id: "72-46", source: waushara, way: "growing degree 86/50", unit: "F", high: "72", low: "46", prints: "11" },
  { id: "63-42", source: waushara, way: "growing degree 86/50", unit: "F", high: "63", low: "42", prints: "6.5" },
  { id: "80-60", source: ohio, way: "growing degree 86/50", unit: "F", high: "80", low: "60", prints: "20" },
  { id: "60-40", source: ohio, way: "growing degree 86/50", unit: "F", high: "60", low: "40", prints: "5" },
  { id: "90-70", source: ohio, way: "growing degree 86/50", unit: "F", high: "90", low: "70", prints: "28" },
  { id: "87-63", source: sources["Ohio degree days 2023"], way: "growing degree 86/50", unit: "F", high: "87", low: "63", prints: "24.5" },
  {
    id: "80-55",
    source: sources["Purdue crop growing 2016"],
    way: "growing degree 86/50",
    unit: "F",
    high: "80",
    low: "55",
    prints: "17.5",
  },
  // The most that a day can give: both ends are held.
  { id: "most", source: iowa, way: "growing degree 86/50", unit: "F", high: "95", low: "90", prints: "36" },
  { id: "70-50", source: iowa, way: "growing degree 86/50", unit: "F", high: "70", low: "50", prints: "10" },
  { id: "chu-13-5", source: adviser, way: "corn heat units", unit: "C", high: "13", low: "5", prints: "5" },
  { id: "chu-30-15", source: adviser, way: "corn heat units", unit: "C", high: "30", low: "15", prints: "26" },
  { id: "chu-30-20", source: federal, way: "corn heat units", unit: "C", high: "30", low: "20", prints: "30.54" },
  // Without its clamps, as the federal page prints it, this day would be 13.57.
  { id: "chu-22-4", source: federal, way: "corn heat units", unit: "C", high: "22", low: "4", prints: "13.932" },
  { id: "chu-35-22", source: federal, way: "corn heat units", unit: "C", high: "35", low: "22", prints: "31.215" },
] as const;

/** Days in a row, and the sum that is printed. */
export const heatSums = [
  {
    id: "waushara",
    source: waushara,
    days: [
      ["90", "65"],
      ["72", "46"],
      ["63", "42"],
    ],
    prints: "43",
  },
  {
    id: "ohio",
    source: ohio,
    days: [
      ["80", "60"],
      ["60", "40"],
      ["90", "70"],
    ],
    prints: "53",
  },
  {
    id: "climate-data-online",
    source: sources["NOAA daily summaries 2018"],
    days: [
      ["62", "50"],
      ["58", "53"],
      ["70", "54"],
      ["70", "55"],
      ["67", "55"],
      ["59", "55"],
      ["58", "55"],
    ],
    prints: "60.5",
  },
] as const;

/** 785 heat units since planting, 120 of them to come up, 82 a leaf: Ohio State University Extension, 2018. */
export const leaf = { heatUnits: "785", prints: "8.1" } as const;

/**
 * A hybrid of 2,700 planted 30 days after 1 May: Hybrid maturities for delayed planting, Purdue, about 2013; "less than 2500" is
 * printed.
 */
export const late = { rating: "2700", daysAfterMayFirst: "30", prints: "2496" } as const;

/**
 * Heat left on 16 September to the median frost, and the youngest stage that still comes to black layer: Frost-mongering updates
 * for corn, Purdue University Agronomy, 1996.
 */
export const left = [
  { place: "northwest Indiana", units: "252", prints: "R5" },
  { place: "west central Indiana", units: "340", prints: "R5" },
  { place: "southwest Indiana", units: "450", prints: "R5" },
] as const;
