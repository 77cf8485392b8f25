/** The columns of the table Past seasons. */
import { date, declared, money, quantity, share, text } from "./column";
import { acresWords, cropColumn, fieldColumn } from "./shared";

const perArea = (layer: string, hint: string) => money(`${layer} per acre`, { unit: "money per area", range: "any", hint, width: 24 });

export const pastSeasonColumns = declared("Past seasons", {
  season: text("Season", { required: true, hint: "The year of the harvest.", width: 10, words: ["year", "cropyear", "seasonyear"] }),
  field: fieldColumn({ hint: "The field's name, as the table Fields has it today." }),
  crop: { ...cropColumn(), hint: "What grew there." },
  hybrid: text("Hybrid or variety", { hint: "What was planted.", width: 24, words: ["hybrid", "variety"] }),
  acres: quantity("Acres", {
    unit: "area",
    required: true,
    range: "above zero",
    hint: "Planted area in that year, in the area unit of the season.",
    words: acresWords,
  }),
  yieldUnit: text("Yield unit", {
    hint: "Of goal, yield and price, as bu or t. Blank: the crop's of today. Another than the crop's of today is told.",
    width: 12,
  }),
  goal: quantity("Yield goal", { unit: "yield", hint: "The goal of that year, per area.", words: ["goal"] }),
  yield: quantity("Yield", {
    unit: "yield",
    hint: "Harvested per area, dry; 0 for a lost crop. Blank: the field's row of years ends here.",
    words: ["yieldperacre", "actualyield", "harvestedyield"],
  }),
  operating: perArea("Operating cost", "Money per area."),
  cash: perArea("Cash cost", "Operating cost with rent, taxes, overhead and interest."),
  full: perArea("Full cost", "Cash cost with ownership, land charge and unpaid labour."),
  cashNeed: perArea("Cash need", "Cash cost with principal, living and income tax."),
  planned: perArea("Planned full cost", "Full cost as it was planned in spring."),
  price: money("Price", { unit: "price", hint: "What a unit brought on the mean.", words: ["averageprice", "pricegot"] }),
  net: perArea("Net", "Left over after full cost."),
  operatorShare: share("Operator share of crop %", { hint: "On crop-shared land: the operator's part. Blank: all of it." }),
  planted: date("Planted", { hint: "The day it was planted." }),
  stand: quantity("Stand", { unit: "plants per area", hint: "Plants per area." }),
  heatUnits: quantity("Heat units", { hint: "From planting to the end of the record." }),
  rain: quantity("Rain", { hint: "Since planting, inches (millimetres with hectares)." }),
  sitesUsed: text("Sites used", { hint: "Sites of action of what was sprayed, by number, as 2, 9.", words: ["sitesofaction", "sites"] }),
});
