/** What each setting of the table Season says, for the pages that explain the tables. */
import type { settingNames } from "./season";

export const settingHints: Readonly<Record<(typeof settingNames)[number], string>> = {
  Farm: "The farm's name, as printed.",
  "Season year": "The year of the harvest; short dates such as 5/3 take it.",
  Currency: "As it is printed, such as USD or CAD. Blank: USD. Nothing is converted.",
  "Area unit": "ac or ha. Blank: ac. It says what per acre in a heading means.",
  "Decimal comma": "yes where you write 1 234,50.",
  "Operating interest rate": "Interest a year on money spent before harvest. None is charged until it is entered.",
  "Interest method":
    "by date: each cost from its payment to the repayment date. months: the total for so many months. Blank: by date, or months where " +
    "Interest months alone is filled.",
  "Interest months": "With the method months: how many.",
  "Repayment date": "With the method by date: the day on which the operating money is paid back.",
  "Labour per hour": "Money per hour, for machines and shop work that give no wage of their own.",
  "Fuel per gallon": "Money per gallon (litre with hectares), for machines that give no fuel price.",
  "Drying charge per point": "Money per unit and point of moisture above the standard.",
  "Drying counted on": "wet or dry: the bushels of a load that the charge is taken on. Blank: wet.",
  "Test weight dock": "The name of a table of your own: what is taken off the price for a low test weight.",
  "Stand response": "Which table says how date and stand move the yield: a published one, or a range of your own.",
  "Landlord's inputs": "repaid: you buy all and are paid back. bought by the landlord: you never buy that part. Blank: repaid.",
  "Temperature unit": "F or C, of the table Weather.",
  "Heat units": "How heat is added up: growing degree 86/50, corn heat units, or base 10 C or 5 C.",
  "First killing frost":
    "Dates of past years, with semicolons. Blank: the first low of 28 °F or less after 1 July of the years in Weather.",
};
