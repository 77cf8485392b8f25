/** The columns of the table Season, and the settings that its rows are. */
import { choice, declared, text } from "./column";
import { remarkWords } from "./shared";

/** The settings that we know, as they are spelled. */
export const settingNames = [
  "Farm",
  "Season year",
  "Currency",
  "Area unit",
  "Decimal comma",
  "Operating interest rate",
  "Interest method",
  "Interest months",
  "Repayment date",
  "Labour per hour",
  "Fuel per gallon",
  "Drying charge per point",
  "Drying counted on",
  "Test weight dock",
  "Stand response",
  "Landlord's inputs",
  "Temperature unit",
  "Heat units",
  "First killing frost",
] as const;

export const seasonColumns = declared("Season", {
  setting: choice("Setting", settingNames, { required: true, hint: "One of the settings listed.", width: 26 }),
  value: text("Value", {
    required: true,
    hint: "The value of the setting.",
    width: 38,
    movesNothing: [
      {
        where: { column: "Setting", says: "Interest months" },
        why: "Interest months counts by the Interest method months alone; by date each cost has its own days.",
      },
    ],
  }),
  note: text("Note", { hint: "Anything to remember about it.", width: 40, words: ["notes", "remark", ...remarkWords] }),
});
