/** Help on what the figures mean: layers, stages, break-evens, units. */
import { cashKinds, cashNeedKinds, fullKinds, operatingKinds } from "../../core/kinds";
import { measureNames } from "../../core/numbers/measure";
import { yieldUnits } from "../../workbook/yieldUnits";
import { list, terms, words, type HelpPart } from "./part";

const and = (kinds: readonly string[]): string => `${kinds.slice(0, -1).join(", ")} and ${kinds.at(-1)}`;

export const layersPart: HelpPart = {
  id: "layers",
  title: "What counts in a cost: the four layers",
  blocks: [
    words("Every cost names its layer, because “the cost of an acre” means different things to you and to a lender."),
    terms(
      ["Operating cost", `What growing this crop costs this season: ${and(operatingKinds)}.`],
      ["Cash cost", `Operating cost, and ${and(cashKinds)}.`],
      [
        "Full cost",
        `Cash cost without term interest, and ${and(fullKinds)}. It charges interest on all capital through ownership and the land ` +
          "charge, so term interest leaves it; where you enter neither, term interest stays and the full cost is marked incomplete.",
      ],
      ["Cash need", `Cash cost, and ${and(cashNeedKinds)}. What a lender asks: does the year pay for all that must be paid?`],
    ),
    words("Machine ownership and loan principal are never added together: that would count a machine twice."),
  ],
};

export const stagesPart: HelpPart = {
  id: "stages",
  title: "Plan, projected, final",
  blocks: [
    terms(
      ["Plan", "What you set before spring: budget lines and entries of status plan, at plan prices."],
      [
        "Projected",
        "What is done and bought so far at its real cost, and what is left of the plan at the best price known. What is done is " +
          "taken off the plan, so nothing counts twice.",
      ],
      [
        "Final",
        "What was really done, once a field's Harvest done is filled. Until then its loads are shown as so much of the field harvested.",
      ],
    ),
    words(
      "Rough and fine: a line of the table Budget is enough to begin with. As bills and entries come, they take its place, kind by " +
        "kind; what is left of the line still counts until you mark it All in.",
    ),
    words(
      "Bought is not used: seed, fertilizer and crop protection are charged as they are used, and what is left over is stock. Fuel, " +
        "parts and supplies are charged as bought, spread by acres.",
    ),
  ],
};

export const breakEvenPart: HelpPart = {
  id: "break-evens",
  title: "Break-evens, and what moves them",
  blocks: [
    terms(
      ["Price needed", "The price at which your part of the yield just pays a layer. Shown rounded up to the cent."],
      [
        "Yield needed",
        "The yield that pays a layer at the expected price. None where a bushel sold brings no more than its own hauling, drying " +
          "and selling costs.",
      ],
      [
        "Net return",
        "Income less the layer, at the price you entered. Lines that speak of money to come count sold grain at its own price.",
      ],
      [
        "Projected yield",
        "Your goal, moved by planting date and stand through the table in use. An estimate from trials, with its region beside it. " +
          "The goal itself is never changed.",
      ],
    ),
    words(
      "On crop share, costs and yield are your part. Hauling, drying and per-unit selling costs follow the yield; everything else " +
        "stays when the yield moves.",
    ),
    words("What moved it lists the reasons between plan and projected, largest first; they add up to the difference shown."),
  ],
};

export const unitsPart: HelpPart = {
  id: "units",
  title: "Units",
  blocks: [
    words(
      "A workbook counts in acres or in hectares, by the setting Area unit. With acres: inches, feet, miles an hour, gallons. With " +
        "hectares: centimetres, metres, kilometres an hour, litres. “Per acre” in a heading then means per hectare.",
    ),
    terms(
      ["Yields and prices", `${yieldUnits.join(", ")}, as each crop says. Bushels are dry bushels at the crop's standard moisture.`],
      [
        "What is bought and used",
        `${measureNames.join(", ")}, or a pack by its name (bag, tote, jug) once Items says what is in it. Weight and volume are ` +
          "converted only with a density.",
      ],
      ["Nutrients", "A rate such as lb N/ac is read with the item's Analysis N-P-K."],
    ),
    words("A ton is 2,000 lb, a t (tonne) 1,000 kg. Where a unit cannot be told, it is an entry to fix, never a guess."),
    list(
      "Numbers may be typed as 1,234.50, $1,234.50, (120) for a negative, 12% or 152 ac.",
      "All arithmetic is decimal; nothing is rounded until it is shown.",
    ),
  ],
};
