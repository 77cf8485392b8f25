/** The columns of the table Items. */
import { operatingKinds } from "../../core/kinds";
import { measureNames } from "../../core/numbers/measure";
import type { Charging } from "../../core/season";
import { choice, declared, money, quantity, share, text } from "./column";
import { itemColumn, kindWords } from "./shared";

const chargings = ["as used", "by acres", "by revenue"] as const satisfies readonly Charging[];

export const itemColumns = declared("Items", {
  item: itemColumn({ hint: "What is bought, by the name that invoices get in the table Purchases." }),
  kind: choice("Kind", operatingKinds, { required: true, hint: "What kind of cost it is.", width: 18, words: kindWords }),
  packName: text("Pack name", {
    hint: "What one pack is called: bag, tote, jug. Blank: it is bought by the unit.",
    words: ["pack", "package", "container"],
  }),
  packSize: quantity("Pack size", {
    range: "above zero",
    hint: "How much is in one pack.",
    words: ["packagesize", "containersize", "size"],
  }),
  packUnit: {
    ...text("Pack unit", { hint: "The unit of the pack size.", words: ["packageunit", "sizeunit", "uom"] }),
    choices: measureNames,
  },
  planPrice: money("Plan price per pack", {
    hint: "Money per pack that the plan assumes.",
    words: ["planprice", "budgetprice", "packprice", "price", "budgetedprice"],
  }),
  density: text("Density", { hint: "To go between weight and volume: 10.7 lb/gal." }),
  analysis: text("Analysis N-P-K", { hint: "Percent by weight, for rates of a nutrient: 46-0-0.", words: ["analysis", "grade"] }),
  sites: text("Sites of action", {
    hint: "Of a crop protection product, from its label, by number, as 15, 27.",
    words: ["moa", "siteofaction", "hracgroup", "modeofaction"],
  }),
  controls: text("Controls", {
    hint: "Weeds that its label says it controls, with commas, named as in the table Weeds; none for a fungicide.",
    width: 28,
  }),
  charged: choice("Charged", chargings, {
    hint:
      "As used, or as bought and shared by acres or by revenue. Blank: seed, fertilizer and crop protection as used, the rest by " +
      "acres.",
  }),
  operatorCostShare: share("Operator share of cost %", {
    hint: "On crop-shared land. Blank: all of it.",
    words: ["operatorshare", "costshare"],
  }),
});
