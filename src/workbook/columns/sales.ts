/** The columns of the table Sales. */
import { declared, money, quantity, text } from "./column";
import { cropColumn, dateColumn, kindWords, priceWords, quantityWords, unitWords } from "./shared";

export const saleColumns = declared("Sales", {
  crop: cropColumn(),
  date: dateColumn({
    required: true,
    hint: "The day it was sold or contracted.",
    movesNothing: [{ where: { column: "Delivery month", says: "filled" }, why: "Grain is paid in the month of delivery." }],
  }),
  quantity: quantity("Quantity", { required: true, hint: "In the crop's yield unit.", words: quantityWords }),
  unit: text("Unit", { offered: false, hint: "Of the quantity and the price, where it is not the crop's yield unit.", words: unitWords }),
  price: money("Price", { required: true, hint: "Money per unit.", words: priceWords }),
  deliveryMonth: text("Delivery month", {
    hint: "The month in which it is delivered and paid.",
    words: ["delivery", "deliver", "deliveryperiod"],
  }),
  kind: text("Kind", { hint: "Cash, forward and so on: the lender pages say how much is sold by each.", words: kindWords }),
  cropYear: text("Crop year", { hint: "The year in which the grain grew, where it is older. Blank: this season." }),
});
