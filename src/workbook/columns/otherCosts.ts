/** The columns of the table Other costs. */
import { kinds } from "../../core/kinds";
import { basisColumn } from "./basis";
import { choice, declared, money, text, yesOrNo } from "./column";
import { amountWords, itemColumn, kindWords } from "./shared";

const otherBases = ["per acre", "per unit of yield", "whole farm"] as const;

export const otherCostColumns = declared("Other costs", {
  item: itemColumn({ hint: "What it is for.", width: 34 }),
  kind: choice("Kind", kinds, { required: true, hint: "What kind of cost it is.", width: 18, words: kindWords }),
  amount: money("Amount", { required: true, range: "any", hint: "Money by the basis.", words: amountWords }),
  basis: basisColumn(otherBases, { required: true, hint: "What the amount is for.", width: 18 }),
  sharedOver: text("Shared over", {
    hint: 'all, a crop or a field; add "by revenue" to share by income. Blank: all, by acres.',
    words: ["allocateto", "sharedby"],
    width: 20,
  }),
  cash: yesOrNo("Cash", { hint: "Whether money is paid." }),
  month: text("Month", {
    hint: "The month or date of payment.",
    movesNothing: [
      { where: { column: "Basis", says: "per unit of yield" }, why: "What follows the yield is paid in the months in which the grain is." },
      { where: { column: "Cash", says: "no" }, why: "What is no cash is never paid." },
    ],
  }),
});
