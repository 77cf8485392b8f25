/** Words of the trade as they are used here. */
import { terms, type HelpPart } from "./part";

export const glossaryPart: HelpPart = {
  id: "glossary",
  title: "Words",
  blocks: [
    terms(
      ["Annualized", "A cost that serves several years, spread over them with interest."],
      [
        "Cash rent, crop share, flexible rent",
        "Land paid in money; land paid with part of the crop, and often part of the costs; a base rent and a share of what price × yield " +
          "exceeds a base gross.",
      ],
      ["Coverage (loan)", "Money there is for term payments, divided by the payments due. 1.5 means half as much again as is due."],
      ["Custom rate", "What somebody is paid for a pass with their machine."],
      ["Emergence", "Plants standing out of seeds dropped."],
      ["Guarantee per acre", "Of crop insurance: approved yield × coverage × price."],
      ["GDD, CHU", "Growing degree days and corn heat units: heat added up day by day, which corn grows by."],
      ["Land charge", "What owned land should earn, or its rent if you rented it out: a full cost, not money paid."],
      ["Loan peak", "The most that the operating loan reaches, and the month."],
      [
        "Partial budget",
        "A change weighed by what it adds and saves: added returns and reduced costs against added costs and reduced returns.",
      ],
      ["Plan price", "The price in Items that the plan is worked out with, until something is bought."],
      ["Proven yield", "What the field has made in past years; for insurance, the actual production history (APH)."],
      ["Replant (reseed)", "To end a stand and plant again."],
      ["Salvage value", "What a machine or part is worth when you are done with it."],
      ["Shrink", "Weight lost as grain is dried to the standard moisture."],
      ["Sites of action", "How a herbicide works, by number, from its label. Two that control a weed are better than one."],
      ["Spot", "One place in a field where plants were counted."],
      ["Spread", "The range in which the true figure likely lies, 19 times in 20. More spots make it narrower."],
      ["Stand", "Plants that live, per acre."],
      [
        "Term loan",
        "One that is paid off over years, as for land or machines. Interest is a cash cost; principal counts in the cash need alone.",
      ],
      ["Weak plant", "One that may live; each counts half."],
    ),
  ],
};
