/** The columns of the table Purchases. */
import { date, declared, money, quantity, text } from "./column";
import { amountWords, dateColumn, itemColumn, quantityWords, remarkWords, unitWords } from "./shared";

export const purchaseColumns = declared("Purchases", {
  date: dateColumn({
    required: true, hint: "Date of the invoice.", movesNothing: [{ where: { column: "Paid on", says: "filled" }, why: "Paid on says when the money goes." }],
  }),
  item: itemColumn({ hint: "A name from the table Items." }),
  quantity: quantity("Quantity", { required: true, range: "any", hint: "How many of the unit; negative for a return.", words: quantityWords }),
  unit: text("Unit", { required: true, hint: "The pack's name, or any unit of its kind.", words: unitWords }),
  unitPrice: money("Unit price", {
    hint: "Money per unit; leave it or the amount blank.",
    words: ["unitcost", "price", "priceperunit", "costperunit", "$perunit", "priceeach", "each", "cost"],
  }),
  amount: money("Amount", { range: "any", hint: "Money for the line before freight and rebate.", words: amountWords }),
  freight: money("Freight", { range: "any", hint: "Money paid to bring it.", words: ["shipping", "delivery", "carriage", "haulage", "freightin"] }),
  rebate: money("Rebate", { range: "any", hint: "Money given back.", words: ["discount", "credit"] }),
  supplier: text("Supplier", { hint: "Who sold it.", width: 26, words: ["vendor", "dealer", "seller", "retailer", "boughtfrom"] }),
  paidOn: date("Paid on", { hint: "When it is paid. Blank: the date of the invoice.", words: ["datepaid", "paid", "paiddate", "paymentdate"] }),
  note: text("Note", { hint: "Anything to remember.", width: 36, words: ["notes", "remark", ...remarkWords] }),
});
