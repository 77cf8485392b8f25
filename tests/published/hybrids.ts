/** What sources print of hybrids compared: differences, seed, drying by the point, docks, and a paired t. Figures only; read in 2026. */

/** Two entries of one trial, bu/ac at standard moisture, and the difference that is printed; `plots`: of the check, where it has two. */
export const differences = [
  {
    id: "check-strips",
    source: "Why you should take a second look at test plot results",
    publisher: "farm press, Indiana (year from memory: 2013)",
    // The check strips on either side are not printed, only their mean of 198.
    check: ["195", "201"],
    hybrid: "212",
    difference: "14",
    lsd: null,
    isNone: null,
  },
  {
    id: "two-hybrids",
    source: "Check revenue vs. seed cost when picking corn hybrids",
    publisher: "Farm Progress, 2015, https://www.farmprogress.com/story-check-revenue-vs-seed-cost-picking-corn-hybrids-9-133986",
    check: ["193.0"],
    hybrid: "195.2",
    difference: "2.2",
    lsd: null,
    isNone: null,
  },
  {
    id: "lsd-13",
    source: "Article on reading plot data, LSD example",
    publisher: "seed trade article, no year",
    check: ["141"],
    hybrid: "152",
    difference: "11",
    lsd: "13",
    isNone: true,
  },
] as const;

/** Seeds, price of a bag, and the cost that is printed; 80,000 kernels in a bag. */
export const seed = [
  {
    id: "2000-more",
    source: "Maximizing returns on seed corn investments",
    publisher: "Michigan State University Extension, 2011, https://www.canr.msu.edu/news/maximizing_returns_on_seed_corn_investments",
    seeds: "2000",
    bag: "275",
    cost: "6.88",
  },
  {
    id: "a-thousand",
    source: "How many corn plants do you need?",
    publisher: "Corn+Soybean Digest (E. Nafziger, Illinois), year from memory: 2013",
    seeds: "1000",
    bag: "300",
    cost: "3.75",
  },
] as const;

/** One point more to dry at 5 cents a bushel, corn at 2.85: 1.75 % of the yield. Farm press, North Dakota, no year. */
export const onePoint = {
  source: "Expected harvest moisture in corn seed selection",
  charge: "0.05",
  price: "2.85",
  percent: "1.75",
} as const;

/**
 * A buyer's schedule of discounts by test weight, and what it takes off. Farmers elevator, Minnesota, Discount Schedule, 2023,
 * https://www.fsemn.com/index.cfm?show=10&mid=9, table; only the lines that are read here.
 */
export const docks = {
  lines: [
    ["54", "0"],
    ["53", "0.02"],
    ["51", "0.07"],
    ["49", "0.14"],
  ],
  readings: [
    ["54.2", "0"],
    ["53.5", "0.02"],
    ["51.4", "0.07"],
    ["49.0", "0.14"],
  ],
} as const;

/**
 * Pairs of one subject under two drugs, in hours of sleep gained. Data: Student, The probable error of a mean, Biometrika 6, 1908;
 * results as R's documentation of t.test prints them for the data set sleep, paired (both from memory).
 */
export const sleep = {
  first: ["0.7", "-1.6", "-0.2", "-1.2", "-0.1", "3.4", "3.7", "0.8", "0.0", "2.0"],
  second: ["1.9", "0.8", "1.1", "0.1", "-0.1", "4.4", "5.5", "1.6", "4.6", "3.4"],
  mean: "1.58",
  low: "0.7001142",
  high: "2.4598858",
} as const;
