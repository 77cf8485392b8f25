/** The columns of the table Insurance. */
import { choice, declared, money, quantity, share, yesOrNo } from "./column";
import { cropColumn } from "./shared";

const policyForms = ["revenue", "yield"] as const;

export const insuranceColumns = declared("Insurance", {
  crop: cropColumn(),
  form: choice("Form", policyForms, { hint: "What is guaranteed." }),
  approvedYield: quantity("Approved yield", {
    unit: "yield",
    required: true,
    hint: "Per area, as the insurer has approved it.",
    words: ["aph", "aphyield", "guaranteeyield"],
  }),
  coverage: share("Coverage", { required: true, hint: "Level of coverage.", words: ["coveragelevel", "level"] }),
  projectedPrice: money("Projected price", {
    unit: "price",
    required: true,
    hint: "Money per unit, set before planting.",
    words: ["springprice", "baseprice"],
  }),
  harvestPrice: money("Harvest price", { unit: "price", hint: "Money per unit, once it is known.", words: ["fallprice"] }),
  harvestPriceOption: yesOrNo("Harvest price option", { hint: "Whether a higher harvest price raises the guarantee." }),
  priceCap: quantity("Price cap", {
    range: "above zero",
    hint: "The harvest price counts up to so many times the projected one. Blank: 2.",
  }),
});
