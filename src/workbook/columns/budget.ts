/** The columns of the table Budget. */
import { kinds } from "../../core/kinds";
import { basisColumn } from "./basis";
import { choice, declared, money, share, text } from "./column";

export const budgetBases = ["per acre", "whole"] as const;

export const budgetColumns = declared("Budget", {
  over: text("For", {
    required: true,
    hint: "A field, a crop for all its fields, or all. A field's line counts before its crop's, a crop's before all.",
    width: 20,
  }),
  kind: choice("Kind", kinds, { required: true, hint: "What kind of cost it is.", width: 18, words: ["category", "costtype"] }),
  amount: money("Amount", {
    required: true,
    hint: "Money per area, or for all that the line names. On crop share the whole cost.",
    words: ["budget", "cost"],
  }),
  basis: basisColumn(budgetBases, {
    hint: "Per acre, or whole: shared by acres over all the fields that the line names. Blank: per acre.",
  }),
  month: text("Month", { hint: "When it is paid. Blank: as is usual for its kind, such as at planned planting." }),
  operatorCostShare: share("Operator share of cost %", { hint: "On crop-shared land. Blank: all of it." }),
  allIn: choice("All in", ["yes", "no"], { hint: "yes: nothing more will come, so what is not billed leaves the figures." }),
  note: text("Note", { hint: "Anything to remember. It also tells two lines apart that are alike.", width: 36 }),
});
