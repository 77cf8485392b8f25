/** How fast corn dries in the field and what waiting loses, as published. Means of trials in one region each. */
import { Decimal } from "../numbers/decimal";
import type { MonthDay } from "../stand/monthDay";
import type { Source } from "./source";

/** Days of a year with one rate all through, both ends among them. */
type DryingPeriod = {
  readonly from: MonthDay;
  readonly to: MonthDay;
  /** Points of moisture a day; the two are alike where one figure is printed. */
  readonly low: Decimal;
  readonly high: Decimal;
};

export type DrydownTable = {
  readonly name: string;
  readonly region: string;
  readonly source: Source;
  /** What is ours in it, in whole sentences. */
  readonly limits: readonly string[];
  /** Without a gap, in order. */
  readonly periods: readonly DryingPeriod[];
};

const daily = (from: MonthDay, to: MonthDay, low: string, high = low): DryingPeriod => ({
  from,
  to,
  low: new Decimal(low),
  high: new Decimal(high),
});
const weekly = (from: MonthDay, to: MonthDay, points: string): DryingPeriod => {
  const perDay = new Decimal(points).div("7");
  return { from, to, low: perDay, high: perDay };
};

export const drydownTables: readonly DrydownTable[] = [
  {
    name: "Iowa 2022, by month",
    region: "Iowa",
    source: {
      title: "Options for Fall Grain Drying and Marketing (ICM News)",
      publisher: "Iowa State University Extension",
      year: "2022",
      address: "https://crops.extension.iastate.edu/cropnews/2022/10/options-fall-grain-drying-and-marketing",
      where: "text: points a week in September, October, November and December",
    },
    limits: ["Warm dry weather dries faster and cool wet weather slower: trials in Ohio had 0.76 to 0.92 and 0.32 to 0.35 points a day."],
    periods: [
      weekly("09-01", "09-30", "4.5"),
      weekly("10-01", "10-31", "2.5"),
      weekly("11-01", "11-30", "1"),
      weekly("12-01", "12-31", "0.5"),
    ],
  },
  {
    name: "Ohio 2023, by half month",
    region: "Ohio",
    source: {
      title: "Ohio Crop Progress: Precipitation, Cool Weather, and Corn Dry Down (C.O.R.N. 2023-36)",
      publisher: "Ohio State University Extension",
      year: "2023",
      address: "https://agcrops.osu.edu/newsletter/corn-newsletter/2023-36/ohio-crop-progress-precipitation-cool-weather-and-corn-dry-down",
      where: "text: points a day from mid September to late November",
    },
    limits: [
      "It prints a range for each part of a month: the middle of it counts, and both ends are shown.",
      "Its early, mid and late are taken for ten days each, which is ours; mid September begins on the 11th.",
    ],
    periods: [
      daily("09-11", "09-30", "0.75", "1"),
      daily("10-01", "10-20", "0.5", "0.75"),
      daily("10-21", "11-10", "0.25", "0.5"),
      daily("11-11", "11-20", "0", "0.25"),
      daily("11-21", "11-30", "0"),
    ],
  },
];

/** Yield left in the field by waiting: fractions kept at each day, straight lines between them. */
export const waitingLoss: { readonly source: Source; readonly kept: readonly { readonly day: MonthDay; readonly share: Decimal }[] } = {
  source: {
    title: "Battle for the Belt, episode 31, on Field Drying and Harvest Losses in Corn",
    publisher: "Ohio State University Extension",
    year: "2023",
    address: "https://agcrops.osu.edu/newsletter/corn-newsletter/2023-35/battle-belt-episode-31",
    where: "text, eight experiments: 2 % from mid October to mid November, and 11 % more to mid December; by year 5 to 24 %",
  },
  kept: [
    { day: "10-15", share: new Decimal("1") },
    { day: "11-15", share: new Decimal("0.98") },
    { day: "12-15", share: new Decimal("0.98").times("0.89") },
  ],
};

/** Moisture at black layer: 35 is printed by several, 30 by Purdue University Agronomy (2018). */
export const moistureAtMaturity = new Decimal("35");
