/** The columns of the table Planter checks. */
import { findings } from "../../core/planter/planterCheck";
import { choice, date, declared, quantity, text } from "./column";

export const planterCheckColumns = declared("Planter checks", {
  machine: text("Machine", {
    required: true,
    hint: "The planter, as Operations and Machines name it.",
    width: 22,
    words: ["planter", "implement"],
  }),
  row: text("Row", {
    hint: "Which row of the planter. Blank: the whole of it.",
    movesNothing: [{ why: "It says which row of the planter; every row costs the same." }],
    words: ["rowunit", "unitno", "rowno"],
  }),
  part: text("Part", { required: true, hint: "What was looked at, such as opener disc.", width: 26, words: ["component", "checked"] }),
  whenNew: quantity("New", {
    hint: "Its size when new. Common for an opener disc: 15 in; the operator's manual rules.",
    words: ["newsize", "newdiameter"],
  }),
  replaceAt: quantity("Replace at", {
    hint: "The size at which it is replaced. Common for a 15 in opener disc: 14.5 in; the operator's manual rules.",
    words: ["wearlimit", "limit"],
  }),
  measured: quantity("Measured", { hint: "Its size now, in the same unit.", words: ["reading", "actual", "now"] }),
  unit: text("Unit", {
    hint: "Of the three sizes, such as in.",
    movesNothing: [{ why: "It is printed beside the sizes." }],
    words: ["uom"],
  }),
  finding: choice("Finding", findings, { hint: "What the eye says. Where size and eye differ, the worse of the two counts." }),
  item: text("Item", {
    hint: "The part as it is bought, a name from the table Items. Blank: nothing is bought.",
    width: 22,
    words: ["product"],
  }),
  quantity: quantity("Quantity", { range: "above zero", hint: "How many, in the unit of the item. Blank: 1.", words: ["qty", "count"] }),
  hours: quantity("Hours", { unit: "hours", hint: "Hours in the shop for it.", words: ["shophours", "labourhours"] }),
  doneOn: date("Done on", { hint: "The day it was set right. From then on it is not due.", words: ["repaired", "replacedon", "fixedon"] }),
});
