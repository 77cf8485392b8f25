/** Columns that several tables have, and words that the trade writes above them. */
import { choice, date, text, type Said } from "./column";
import type { Status } from "../../core/season";

const statuses = ["plan", "done", "done as planned"] as const satisfies readonly Status[];

const dateWords = [
  "invoicedate",
  "datebought",
  "purchasedate",
  "datesold",
  "saledate",
  "harvestdate",
  "dateapplied",
  "when",
  "day",
  "invdate",
  "purchdate",
];
const fieldWords = ["fieldname", "paddock", "block", "parcel", "name"];
const itemWords = ["product", "input", "description", "desc", "material", "article", "expense", "name"];
const cropWords = ["commodity"];
export const kindWords = ["type", "category", "costtype"];
export const unitWords = ["uom", "um", "uperm", "measure", "units", "unitofmeasure"];
export const priceWords = [
  "pricepaid",
  "contractprice",
  "cashprice",
  "priceperbu",
  "priceperbushel",
  "$perbu",
  "unitprice",
  "unitcost",
  "saleprice",
  "salesprice",
];
export const quantityWords = ["qty", "count", "units", "quantitybought", "qtyshipped", "qtybought", "quantityshipped"];
export const amountWords = [
  "amt",
  "total",
  "linetotal",
  "extendedprice",
  "extension",
  "ext",
  "extprice",
  "extcost",
  "extamt",
  "extamount",
  "extendedamount",
  "extendedcost",
  "netamount",
  "cost",
  "totalcost",
  "totalprice",
  "invoiceamount",
];
export const rateWords = ["applicationrate", "customrate", "interestrate", "apr"];
export const remarkWords = ["comment", "comments", "remarks", "memo"];
export const acresWords = ["plantedacres", "acreage"];
export const rowWidthWords = ["rowspacing", "spacing"];

export const dateColumn = (said: Said) => date("Date", { words: dateWords, ...said });
export const cropColumn = () => text("Crop", { required: true, hint: "A name from the table Crops.", width: 16, words: cropWords });
export const fieldColumn = (said: Said) => text("Field", { required: true, width: 22, words: fieldWords, ...said });
export const itemColumn = (said: Said) => text("Item", { required: true, width: 24, words: itemWords, ...said });

/** What a row of work is about, in one column; or in two, as some people have it. */
export const placeColumns = (said: Said) => ({
  place: text("Field or Crop", { width: 20, words: ["field", "crop", "where", "fieldname"], ...said }),
  field: text("Field", { offered: false, hint: "A field, instead of Field or Crop.", words: fieldWords }),
  crop: text("Crop", { offered: false, hint: "A crop, instead of Field or Crop.", words: cropWords }),
});

export const statusColumn = () =>
  choice("Status", statuses, {
    required: true,
    words: ["state"],
    hint:
      "plan, done, or done as planned. A row of the plan stays and what is done is taken off it; where it was done as it stands, mark " +
      "it done as planned.",
  });
