/** The columns of the table Operations. */
import { operatingKinds } from "../../core/kinds";
import { basisColumn } from "./basis";
import { choice, declared, money, quantity, text } from "./column";
import { acresWords, dateColumn, kindWords, placeColumns, rateWords, statusColumn } from "./shared";

const operationBases = ["per acre", "per hour", "lump sum"] as const;
const ofLumpSum = { column: "Basis", says: "lump sum" };

export const operationColumns = declared("Operations", {
  ...placeColumns({ required: true, hint: "A field, or a crop for all its fields." }),
  operation: text("Operation", {
    required: true,
    hint: "The pass, by one name all season.",
    width: 28,
    words: ["pass", "task", "job", "work", "activity", "fieldwork"],
  }),
  acres: quantity("Acres", {
    unit: "area",
    range: "above zero",
    hint: "Blank: the whole field or crop.",
    words: acresWords,
    movesNothing: [{ where: ofLumpSum, why: "A lump sum is the money for the whole row, whatever part of the field it goes over." }],
  }),
  passes: quantity("Passes", {
    unit: "passes",
    range: "above zero",
    hint: "How often it goes over the area.",
    words: ["trips", "times", "timesover"],
    movesNothing: [{ where: ofLumpSum, why: "A lump sum is the money for the whole row, its passes included." }],
  }),
  rate: money("Rate", { hint: "Money by the basis; leave it blank for a machine of your own.", words: rateWords }),
  basis: basisColumn(operationBases, { hint: "What the rate is for." }),
  machine: text("Machine", { hint: "A name from the table Machines, instead of a rate.", width: 20, words: ["implement", "equipment"] }),
  hours: quantity("Hours", { unit: "hours", hint: "Hours of the whole row, where the rate is per hour." }),
  date: dateColumn({ hint: "When it is planned or was done." }),
  status: statusColumn(),
  kind: choice("Kind", operatingKinds, { hint: "What kind of cost a rate is.", width: 18, words: kindWords }),
});
