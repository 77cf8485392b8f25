/** Loads of wet grain as sources work them out: what is charged for drying them, and what they are when dry. Figures only; read in 2026. */

/** Loads, the fields that they came from, and what is printed of them. `acres` is 1 where the source prints no yield per acre. */
export const loads = [
  {
    id: "wet-charge", source: "Options for selling wet corn (TeBockhorst, Shouse)", publisher: "Iowa State University, through Ohio State University Extension, Allen County, 2019",
    address: "https://u.osu.edu/allenag/tag/grain-handling", weight: "1000", unit: "bu", moisture: "20.5", standard: "15", perPoint: "0.048", acres: "1",
    prints: { dryingCost: "264" },
  },
  {
    id: "wet-100k", source: "Converting wet corn weight to dry corn weight (read in a quotation)", publisher: "Purdue University Agronomy, 2020",
    address: "https://agry.purdue.edu/ext/corn/news/timeless/WaterShrink.html", weight: "100000", unit: "lb", moisture: "20", standard: "15", perPoint: "0", acres: "1",
    prints: { dryUnits: "1681" },
  },
  {
    id: "shrink-26", source: "Count dry bushels not wet (Purdue Field Guide)", publisher: "Farm Progress, about 2013",
    address: "http://farmprogress.com/story-count-dry-bushels-wet-15-102446-printversion", weight: "1000", unit: "bu", moisture: "26", standard: "15", perPoint: "0", acres: "5",
    prints: { dryUnits: "870.6", yieldPerAcre: "174" },
  },
  {
    // 1,000 bushels at 15 % are 977 at 13 %, and no elevator pays the water back.
    id: "too-dry", source: "Don't dry away your profits", publisher: "Purdue Extension, through Farm Progress, 2024",
    address: "https://www.farmprogress.com/corn/don-t-dry-your-profits-away", weight: "977", unit: "bu", moisture: "13", standard: "15", perPoint: "0.05", acres: "1",
    prints: { dryUnits: "977", dryingCost: "0" },
  },
] as const;
