/** The columns of the table Purchases. */
import { operatingKinds, type Kind } from "../../core/kinds";
import { choice, date, declared, money, quantity, text, yesOrNo } from "./column";
import { amountWords, dateColumn, itemColumn, quantityWords, remarkWords, unitWords } from "./shared";

/** Kinds of what bills may be charged directly: land, loans and what is no cash stand in tables of their own. */
export const billKinds = [
  ...operatingKinds.filter((kind) => kind !== "operating interest"),
  "land tax",
  "overhead",
  "family living",
  "income tax",
] as const satisfies readonly Kind[];

export const purchaseColumns = declared("Purchases", {
  date: dateColumn({
    required: true,
    hint: "Date of the invoice.",
    movesNothing: [{ where: { column: "Paid on", says: "filled" }, why: "Paid on says when the money goes." }],
  }),
  item: itemColumn({ hint: "A name from the table Items." }),
  quantity: quantity("Quantity", {
    required: true,
    range: "any",
    hint: "How many of the unit; negative for a return.",
    words: quantityWords,
  }),
  unit: text("Unit", { required: true, hint: "The pack's name, or any unit of its kind.", words: unitWords }),
  unitPrice: money("Unit price", {
    hint: "Money per unit; leave it or the amount blank.",
    words: ["unitcost", "price", "priceperunit", "costperunit", "$perunit", "priceeach", "each", "cost"],
  }),
  amount: money("Amount", { range: "any", hint: "Money for the line before freight and rebate.", words: amountWords }),
  freight: money("Freight", {
    range: "any",
    hint: "Money paid to bring it.",
    words: ["shipping", "delivery", "carriage", "haulage", "freightin"],
  }),
  rebate: money("Rebate", { range: "any", hint: "Money given back.", words: ["discount", "credit"] }),
  kind: choice("Kind", billKinds, {
    hint: "With For: what kind of cost the line is. Blank: the item's own.",
    width: 18,
    words: ["costkind"],
  }),
  over: text("For", {
    hint:
      "A field, a crop, or all: the line is charged there directly, by acres, and is no stock. Blank: the item is charged as it is " +
      "used.",
    width: 20,
  }),
  supplier: text("Supplier", { hint: "Who sold it.", width: 26, words: ["vendor", "dealer", "seller", "retailer", "boughtfrom"] }),
  paidOn: date("Paid on", {
    hint: "When it is paid. Blank: the date of the invoice.",
    words: ["datepaid", "paid", "paiddate", "paymentdate"],
  }),
  forSeason: text("For season", {
    hint: "The year whose crop it is for, where that is another: it is paid now and no cost of this season. Blank: this season.",
    width: 12,
    words: ["cropyear", "seasonyear"],
  }),
  opening: yesOrNo("Opening stock", {
    offered: false,
    hint: "Yes: left over from last season or paid then. It counts in quantity and price, is not paid again and bears no interest.",
  }),
  note: text("Note", { hint: "Anything to remember.", width: 36, words: ["notes", "remark", ...remarkWords] }),
});
