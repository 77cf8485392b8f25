/**
 * Flexible cash rents as sources print them. Figures only; read in 2026. Where no address is given, only the publisher was kept when
 * the figure was read.
 *
 * `share` is in percent; a rent that is a plain share of gross has neither base nor base gross. A rent that is the greater of a base
 * and a share of gross is the base and that share of what gross exceeds base ÷ share.
 */
export const flexibleRents = [
  {
    id: "E03",
    source: "Flexible cash rent illustrations",
    publisher: "farm advisory newsletter",
    address: "braintrustag.com",
    lease: { base: "0", baseGross: "0", share: "30", most: "" },
    cases: [{ price: "4.50", yieldHere: "160", prints: "216" }],
  },
  {
    // Base, base gross, most and "30 or 40 %" in one text, the two rents in another: only 40 % gives 512.
    id: "H-T25-bonus",
    source: "Cash rent with bonus leasing arrangement; and a later press table from the same worksheet",
    publisher: "University of Illinois, 2011 and later",
    address: "",
    lease: { base: "200", baseGross: "720", share: "40", most: "550" },
    cases: [
      { price: "7.50", yieldHere: "200", prints: "512" },
      { price: "3.50", yieldHere: "200", prints: "200" },
    ],
  },
  {
    id: "H-T25-greater-of",
    source: "How farmers can seal deal on cash rents",
    publisher: "farm press quoting Iowa State University Extension, 2010",
    address: "",
    // The greater of 100 and a third of the crop: a third of what gross exceeds 300.
    lease: { base: "100", baseGross: "300", share: "33.3333333", most: "" },
    cases: [
      { price: "3", yieldHere: "150", prints: "150" },
      { price: "9", yieldHere: "50", prints: "150" },
    ],
  },
  {
    // Nine tenths of a cash rent of 240, and half of what gross exceeds 805; a trend gross of 721.875 is below it.
    id: "H-T25-trigger-2019",
    source: "Understand how flexible cash rent leases can spread risk",
    publisher: "Purdue University column, 2019",
    address: "",
    lease: { base: "216", baseGross: "805", share: "50", most: "" },
    cases: [{ price: "3.85", yieldHere: "187.5", prints: "216" }],
  },
] as const;
