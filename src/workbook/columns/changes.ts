/** The columns of the table Changes. */
import { lineBases, quadrants } from "../../core/partialBudget/change";
import { layoutNames } from "../../core/partialBudget/layouts/layout";
import { basisColumn } from "./basis";
import { choice, declared, money, quantity, rate, text, yesOrNo } from "./column";
import { acresWords, itemColumn, placeColumns, priceWords, quantityWords, unitWords } from "./shared";

export const changeColumns = declared("Changes", {
  change: text("Change", { required: true, hint: "What is weighed; all lines of one change have the same name.", width: 30 }),
  quadrant: choice("Quadrant", quadrants, { required: true, hint: "Which of the four boxes the line belongs to.", width: 18 }),
  item: itemColumn({ hint: "What the line is.", width: 30 }),
  quantity: quantity("Quantity", {
    range: "any",
    hint: "How many. A yield gain may stay blank: then the answer is the gain that pays.",
    words: quantityWords,
  }),
  unit: text("Unit", { hint: "Of what. For a yield, the yield unit of the crop.", words: unitWords }),
  price: money("Price", {
    hint: "Money per unit. Blank on a yield of the crop: its expected price less hauling, drying and selling, times the operator's share.",
    words: priceWords,
  }),
  basis: basisColumn(lineBases, { hint: "Per acre, per year in all, or once. Blank: per acre, or once where Years kept is filled." }),
  yearsKept: quantity("Years kept", { unit: "years", range: "above zero", hint: "Of a lump sum: the years that it serves." }),
  salvage: money("Salvage", { hint: "What is left of it then, money." }),
  ...placeColumns({ hint: "What the change is about, on one of its lines. Blank: the whole farm." }),
  acres: quantity("Acres", {
    unit: "area",
    range: "above zero",
    hint: "The area that it is about, on one of its lines. Blank: all of the field, crop or farm.",
    words: acresWords,
  }),
  rate: rate("Interest rate", { hint: "A year, on equipment kept more than a year. Blank: the operating interest rate." }),
  countedIn: yesOrNo("Counted in", {
    was: ["Active"],
    hint: "yes: the change is laid over the projected return of its crop.",
    words: ["counted", "include", "included"],
  }),
  layout: choice("Layout", layoutNames, {
    hint: "The ready layout that it came from, on one of its lines: its cautions go by it, whatever the change is called.",
    width: 26,
  }),
});
