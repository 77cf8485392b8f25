/** The columns of the table Fields. */
import type { Field, Tenure } from "../../core/season";
import { choice, date, declared, money, quantity, share, text, type CellReader } from "./column";
import { acresWords, cropColumn, fieldColumn, rowWidthWords } from "./shared";

const tenures = ["owned", "cash rent", "crop share", "flexible rent"] as const satisfies readonly Tenure[];

const doneOn = date("Harvest done", {
  hint: "The day of the last load, or yes. Until it is filled the loads are the harvest so far, and the projected yield stays.",
  movesNothing: [{ why: "Any day from the last load on ends the harvest with that load; a day before it is told." }],
});

/** Yes, or the day of the last load; `null` where the harvest is still to come or under way. */
function harvestDoneIn(row: CellReader): Field["harvestDone"] {
  const typed = row.text(doneOn);
  if (typed === null || /^(no|n|false)$/i.test(typed)) return null;
  if (/^(yes|y|true|done)$/i.test(typed)) return { on: null };
  const on = row.date(doneOn);
  return on === null ? null : { on };
}

export const fieldColumns = declared("Fields", {
  field: fieldColumn({ hint: "The field's name." }),
  crop: cropColumn(),
  acres: quantity("Acres", {
    unit: "area",
    required: true,
    range: "above zero",
    hint: "Planted area, in the area unit of the season.",
    words: acresWords,
  }),
  variety: text("Hybrid or variety", {
    hint: "What is grown.",
    words: ["hybrid", "variety", "var", "hyb", "cultivar", "seedvariety"],
    width: 24,
  }),
  yieldGoal: quantity("Yield goal", {
    unit: "yield",
    required: true,
    hint: "Yield per area that the plan rests on. It is never overwritten.",
    words: [
      "goal",
      "targetyield",
      "budgetyield",
      "planyield",
      "yield",
      "goalyield",
      "yieldtarget",
      "expectedyield",
      "plannedyield",
      "goalbuperacre",
      "yieldgoalbuperacre",
      "targetbuperacre",
      "goalbu",
    ],
  }),
  plannedPlanting: date("Planned planting date", {
    hint: "The date that the goal assumes.",
    words: ["planneddate", "plantingdate", "plantdate"],
    movesNothing: [
      {
        where: { column: "Planted date", says: "" },
        why:
          "It waits for a planted date to move the projected yield; before that it is the day on which costs without a date are paid, " +
          "where there are any.",
      },
    ],
  }),
  planted: date("Planted date", { hint: "The day it was planted.", words: ["planted", "dateplanted", "plantingdate", "plantdate"] }),
  seedsDropped: quantity("Seeds dropped", {
    unit: "seeds per area",
    hint: "Seeds per area.",
    words: ["seedingrate", "seedrate", "seedsperacre", "population", "pop", "seeddrop"],
  }),
  targetStand: quantity("Target stand", {
    unit: "plants per area",
    hint: "Plants per area that the goal assumes.",
    words: ["finalstand", "standgoal", "plantsperacre", "population", "pop", "targetpopulation"],
  }),
  rowWidth: quantity("Row width", {
    unit: "across",
    range: "above zero",
    hint: "Inches (centimetres with hectares).",
    words: rowWidthWords,
  }),
  tenure: choice("Tenure", tenures, { hint: "How the land is held.", words: ["ownperrent", "landtenure"], width: 14 }),
  rent: money("Rent per acre", {
    unit: "money per area",
    hint: "Cash rent, money per area and year. Of a flexible rent its base, paid whatever comes.",
    words: ["rent", "cashrent", "landrent", "baserent"],
  }),
  baseGross: money("Base gross per acre", {
    unit: "money per area",
    hint: "Of a flexible rent: price × yield per area up to which the base rent is all.",
    words: ["basegross", "renttrigger", "baseincome"],
  }),
  shareAbove: share("Share above base %", {
    hint: "Of a flexible rent: the landlord's part of what price × yield exceeds the base gross.",
    words: ["shareabovebase", "rentshare", "flexshare"],
  }),
  mostRent: money("Most rent", {
    unit: "money per area",
    hint: "Of a flexible rent: the most per area, the base included. Blank: no limit.",
    words: ["maximumrent", "maxrent", "rentcap"],
  }),
  landCharge: money("Land charge per acre", {
    unit: "money per area",
    hint: "What owned land should earn, money per area and year.",
    words: ["landcharge", "landcost"],
  }),
  operatorShare: share("Operator share of crop %", {
    hint: "On crop-shared land: the operator's part.",
    words: ["operatorshare", "cropshare", "myshare"],
  }),
  provenYield: quantity("Proven yield", {
    unit: "yield",
    hint: "Yield per area by production history.",
    words: ["aph", "aphyield", "averageyield", "avgyield", "historicyield", "yield", "approvedyield"],
  }),
  uniformityLoss: share("Uniformity loss %", {
    hint: "Yield lost to gaps and late plants, beyond the number of plants. Leave blank for none.",
  }),
  weatherPlace: text("Weather place", {
    hint: "Where its weather is recorded, a Place of the table Weather. Blank: the only one.",
    width: 18,
  }),
  harvestDone: { ...doneOn, read: (row: CellReader) => harvestDoneIn(row) },
  sameLandAs: text("Same land as", {
    hint: "Of a second crop in the year: the field whose acres it uses again. They count once, and the rent stands on one of the two.",
    width: 22,
  }),
});
