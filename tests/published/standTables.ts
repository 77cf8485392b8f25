/**
 * Published yield by planting date and stand, percent, as printed: one line for each date (Purdue) or stand (Iowa, Nebraska,
 * Wisconsin).
 */
import { sources } from "./sources";

/**
 * Purdue University Extension, Pest & Crop newsletter 2012 issue 15, table 1.
 * http://extension.entm.purdue.edu/pestcrop/2012/issue15/table1.html
 */
export const purdue = {
  stands: "10000 12000 14000 16000 18000 20000 22000 24000 26000 28000 30000 32000 34000 36000",
  rows: [
    ["04-10", "62 68 73 78 82 85 88 91 92 93 94 94 93 91"],
    ["04-15", "65 71 76 81 85 88 91 94 95 96 97 96 96 94"],
    ["04-20", "67 73 78 83 87 90 93 96 97 98 99 98 98 96"],
    ["04-25", "68 74 79 84 88 92 94 97 98 99 100 100 99 97"],
    ["04-30", "68 74 79 84 88 92 95 97 99 100 100 100 99 97"],
    ["05-05", "67 73 79 83 87 91 94 96 98 99 99 99 98 97"],
    ["05-10", "65 71 77 82 86 89 92 94 96 97 97 97 96 95"],
    ["05-15", "63 69 74 79 83 87 89 92 93 94 95 95 94 92"],
    ["05-20", "59 65 71 75 80 83 86 88 90 91 91 91 90 89"],
    ["05-25", "55 61 66 71 75 79 81 84 85 86 87 87 86 84"],
    ["05-30", "49 55 61 65 70 73 76 78 80 81 81 81 80 79"],
    ["06-04", "43 49 54 59 63 67 70 72 74 75 75 75 74 73"],
    ["06-09", "36 42 47 52 56 60 62 65 66 67 68 68 67 65"],
  ],
} as const;

/** Iowa State University Extension, PM 1885 as printed 24 May 2004. http://www.extension.iastate.edu/Pages/eccrops/cu040524.html */
export const iowa2001 = {
  windows: "04-20..05-05 05-13..05-19 05-26..06-01 06-10..06-16 06-24..06-28",
  rows: [
    ["28000-32000", "100 99 90 68 52"],
    ["24000", "94 93 85 64 49"],
    ["20000", "81 80 73 55 42"],
    ["16000", "74 73 67 50 38"],
    ["12000", "68 67 61 46 35"],
  ],
} as const;

/**
 * University of Nebraska-Lincoln, CropWatch 22 May 2009, table 2: differs from Iowa in one cell.
 * https://cropwatch.unl.edu/evaluating-corn-stands
 */
export const nebraskaFullStand = "100 96 90 68 52";

/** Iowa State University Extension, Stand Evaluations, 3 May 2010. http://www.extension.iastate.edu/Pages/eccrops/jfcu100503.html */
export const iowa2010 = {
  /** A day inside each window: the windows meet, so their ends have two values. */
  inside: "04-25 05-10 05-20 06-01 06-10",
  rows: [
    ["35000", "100 96 87 70 54"],
    ["30000", "99 95 86 69 53"],
    ["25000", "95 91 83"],
  ],
} as const;

/** University of Wisconsin Extension, Wisconsin Crop Manager 10(7):56-57, 2003. https://corn.agronomy.wisc.edu/WCM/W120.aspx */
export const wisconsin = {
  dates: "04-20 05-01 05-10 05-20 06-01 06-10 06-20",
  full: [
    ["36000", "96 99 95 85 63 40 8"],
    ["34000", "97 100 96 85 63 40 8"],
    ["32000", "97 100 96 86 63 40 8"],
  ],
  short: [
    ["36000", "91 95 93 87 71 55 32"],
    ["34000", "92 96 94 87 72 56 32"],
    ["32000", "92 96 94 87 72 56 32"],
  ],
} as const;

/** University of Missouri Extension, in Bowling Green Times, 2013. */
export const northernMissouri = { dates: "05-11 05-16 05-21 05-31 06-05", percent: "89 86 83 77 75" } as const;
/** Penn State Extension, Lebanon County, 2012: soybeans. */
export const soybeanDates = { dates: "05-10 05-20 05-30 06-10 06-20", percent: "100 98 95 88 76" } as const;
/** Ontario Ministry of Agriculture, Field Crop News 2012, table 1: winter wheat, plants per metre of row, percent, bu/ac sown 5 Oct. */
export const wheatOntario = [
  ["66", "100", "80"],
  ["33", "95", "76"],
  ["23", "90", "72"],
  ["20", "85", "68"],
  ["16", "80", "64"],
] as const;

/** Decisions printed from those tables: what is kept and what a reseeding would give, percent and bushels. */
export const readings = [
  { source: sources["Farm Progress 2018"], goal: "200", kept: ["04-30", "20000", "92", "184"], reseeded: ["05-20", "32000", "91", "182"] },
  {
    source: sources["Farm Progress hard decisions"],
    goal: "200",
    kept: ["04-30", "20000", "92", "184"],
    reseeded: ["05-25", "30000", "87", "174"],
  },
] as const;

/** Minnesota prints 88 % for 22,000 plants and 88 % for a full stand of 20 May: another place and another trial. */
export const minnesota = [
  { date: "04-30", stand: "22000", prints: "88", ours: "95" },
  { date: "05-20", stand: "30000", prints: "88", ours: "91" },
] as const;
