/** Tank arithmetic and sites of action as sources work them out. Figures only; read in 2026. */
import { sources } from "./sources";

/**
 * Mixes: acres, carrier per acre, tank and rate as typed, and what is printed of them; where no address is given the source was
 * read in a copy.
 */
export const tanks = [
  {
    id: "tank-500-30",
    source: sources["Montana MT 2000-14"],
    // 16.6 is cut, not rounded.
    acres: "100",
    carrier: "30",
    tank: "500",
    rate: "1",
    unit: "pt",
    prints: { acresPerTank: "16.6" },
    isCut: true,
  },
  {
    id: "tank-250-30",
    source: sources["Montana MT 2000-14"],
    acres: "100",
    carrier: "30",
    tank: "250",
    rate: "1",
    unit: "pt",
    prints: { acresPerTank: "8.3" },
    isCut: true,
  },
  {
    // Half a pound of active ingredient of a product of 2 lb a gallon is a quart an acre.
    id: "tank-300-40",
    source: sources["Montana MT 2000-14"],
    acres: "100",
    carrier: "40",
    tank: "300",
    rate: "1",
    unit: "qt",
    prints: { acresPerTank: "7.5", perLoad: "7.5" },
    isCut: false,
  },
  {
    id: "order-25-acres",
    source: sources["Oklahoma 2013"],
    acres: "25",
    carrier: "20",
    tank: "500",
    rate: "3.6",
    unit: "pt",
    prints: { totalInGallons: "11.25" },
    isCut: false,
  },
  {
    id: "three-and-a-half-acres",
    source: sources["safety handbook"],
    acres: "3.5",
    carrier: "15",
    tank: "100",
    rate: "3",
    unit: "lb",
    prints: { volume: "52.5", total: "10.5" },
    isCut: false,
  },
] as const;

/**
 * Of fifteen groups six do nothing to waterhemp, and nine are left before resistance takes its own off. Iowa State
 * University Extension, Herbicide program development: using effective herbicide groups, 2016.
 */
export const groups = {
  all: "1, 2, 3, 4, 5, 6, 7, 9, 10, 13, 14, 15, 19, 22, 27",
  useless: ["1", "6", "7", "13", "19", "22"],
  left: "9",
} as const;
