/** Drying in the field and in the dryer as sources work them out. Figures only; read in 2026. */

const iowaWet =
  "Options for selling wet corn, Iowa State University through Ohio State University Extension, 2019, " +
  "https://u.osu.edu/allenag/tag/grain-handling";
const dakota2009 =
  "Slow-maturing corn may be slow to dry, North Dakota State University, 2009, " +
  "https://www.no-tillfarmer.com/articles/838-slow-maturing-corn-may-be-slow-to-dry";

/** Dated moistures, against Iowa State University's points a week by month. */
export const dated = [{ source: dakota2009, from: "10-01", moisture: "30", to: "10-15", prints: "25" }] as const;
export const datedOff = [
  { source: "Slow-maturing corn may be slow to dry", from: "10-15", moisture: "25", to: "10-25", prints: "23.4", ours: "21.4" },
  { source: "High-moisture corn again expected at harvest", from: "10-11", moisture: "35", to: "11-01", prints: "27", ours: "27.5" },
  { source: "High-moisture corn again expected at harvest", from: "10-11", moisture: "35", to: "12-01", prints: "22", ours: "23.2" },
] as const;

/** Loss in the field, percent of the yield, that equals what the dryer takes. */
export const lossesThatPay = [
  {
    source:
      "Should you dry your corn?, South Dakota State University Extension, 2015, " +
      "http://ksoo.com/farmers-should-you-dry-your-corn-heres-a-way-to-calculate/",
    // Propane at 1.60 a gallon, 0.02 gallons a bushel and point.
    perPoint: "0.032",
    points: "10",
    price: "2.50",
    prints: "12.8",
  },
  {
    source: "Expected harvest moisture in corn seed selection, farm press of North Dakota, undated",
    perPoint: "0.05",
    points: "1",
    price: "2.85",
    prints: "1.75",
  },
] as const;

/** Charged on wet bushels. */
export const wetCharges = [
  { source: iowaWet, wetBushels: "1000", moisture: "20.5", standard: "15", perPoint: "0.048", prints: "264" },
] as const;

/** Days that a wetter hybrid needs more in the field. */
export const moreDays = [
  {
    source:
      "Interpreting corn hybrid maturity ratings, Purdue University Agronomy, 2012, " +
      "https://www.agry.purdue.edu/ext/corn/news/timeless/HybridMaturity.html",
    points: "2",
    perDay: "0.5",
    prints: "4",
  },
] as const;

/** Percent of the yield lost from mid October to mid December in eight experiments. */
export const lostByWaiting = {
  source:
    "Battle for the Belt, episode 31, Ohio State University Extension, 2023, " +
    "https://agcrops.osu.edu/newsletter/corn-newsletter/2023-35/battle-belt-episode-31",
  steps: [
    { from: "10-15", to: "11-15", prints: "2" },
    { from: "11-15", to: "12-15", prints: "11" },
    { from: "10-15", to: "12-15", prints: "13" },
  ],
} as const;
