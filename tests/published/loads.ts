/** Loads of wet grain as sources work them out: what is charged for drying them, and what they are when dry. Figures only; read in 2026. */
import { sources } from "./sources";

/** Loads, the fields that they came from, and what is printed of them. `acres` is 1 where the source prints no yield per acre. */
export const loads = [
  {
    id: "wet-charge",
    source: sources["Iowa wet corn 2019"],
    weight: "1000",
    unit: "bu",
    moisture: "20.5",
    standard: "15",
    perPoint: "0.048",
    acres: "1",
    prints: { dryingCost: "264" },
  },
  {
    id: "wet-100k",
    source: sources["Purdue wet weight 2020"],
    weight: "100000",
    unit: "lb",
    moisture: "20",
    standard: "15",
    perPoint: "0",
    acres: "1",
    prints: { dryUnits: "1681" },
  },
  {
    id: "shrink-26",
    source: sources["Purdue dry bushels"],
    weight: "1000",
    unit: "bu",
    moisture: "26",
    standard: "15",
    perPoint: "0",
    acres: "5",
    prints: { dryUnits: "870.6", yieldPerAcre: "174" },
  },
  {
    // 1,000 bushels at 15 % are 977 at 13 %, and no elevator pays the water back.
    id: "too-dry",
    source: sources["Purdue overdrying 2024"],
    weight: "977",
    unit: "bu",
    moisture: "13",
    standard: "15",
    perPoint: "0.05",
    acres: "1",
    prints: { dryUnits: "977", dryingCost: "0" },
  },
] as const;
