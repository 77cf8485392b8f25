/** The columns of the table Harvest. */
import type { Wetness } from "../../core/season";
import { yieldUnits } from "../yieldUnits";
import { choice, declared, moisture, quantity, text } from "./column";
import { dateColumn, fieldColumn } from "./shared";

export const wetnesses = ["wet", "dry"] as const satisfies readonly Wetness[];

const unitSaid = {
  hint:
    "Of the weight or bushels. Blank: the crop's yield unit. Gross and Tare are in it where it is a weight, else in pounds (kilograms " +
    "with hectares).",
  words: ["uom", "um", "units"],
};

export const harvestColumns = declared("Harvest", {
  field: fieldColumn({ hint: "A name from the table Fields." }),
  date: dateColumn({
    required: true,
    hint: "The day it came off the field.",
    movesNothing: [{ why: "The last load of a field ends its work of the season; any other day counts the same bushels." }],
  }),
  net: quantity("Weight or bushels", {
    required: true,
    hint: "One load, or the whole field; 0 for a crop that was lost. Leave it blank where Gross and Tare are typed.",
    words: ["bushels", "bu", "weight", "net", "netweight", "netbushels", "pounds", "lbs"],
  }),
  unit: { ...text("Unit", unitSaid), choices: yieldUnits },
  gross: quantity("Gross", {
    range: "above zero",
    hint: "The truck full, from the scale ticket, instead of a net weight.",
    words: ["grossweight", "grosslbs", "full"],
  }),
  tare: quantity("Tare", { hint: "The truck empty.", words: ["tareweight", "tarelbs", "empty"] }),
  are: choice("Bushels are", wetnesses, { hint: "Wet as weighed, or dry: already shrunk to the standard moisture. Blank: wet." }),
  moisture: moisture("Moisture", {
    required: true,
    hint: "As weighed, percent. Drying is charged load by load.",
    words: ["moist", "mst", "h2o"],
  }),
  testWeight: quantity("Test weight", {
    range: "above zero",
    hint: "Pounds in a bushel. The table that the setting Test weight dock names says what is taken off the price for it.",
    words: ["tw", "testwt"],
  }),
  ticket: text("Ticket", {
    hint: "The number on the scale ticket: one that comes twice is told.",
    words: ["ticketno", "ticketnumber", "scaleticket", "loadno"],
  }),
  buyer: text("Buyer", { hint: "Who took the load.", width: 22, words: ["elevator", "deliveredto", "soldto", "destination"] }),
});
