/** Words that growers and dealers write above a column instead of ours. Common practice, from memory. */

/**
 * Other words for a heading of ours, spelled as they are compared: small letters, no spaces, no points. A word that stands under
 * two headings of one table (a cost may be a price or an amount) proposes neither there; it serves the tables that have only one of them.
 */
export const tradeHeadings: Readonly<Record<string, readonly string[]>> = {



  "Unit price": ["unitcost", "price", "priceperunit", "costperunit", "$perunit", "priceeach", "each", "cost"],
  "Freight": ["shipping", "delivery", "carriage", "haulage", "freightin"],
  "Rebate": ["discount", "credit"],
  "Supplier": ["vendor", "dealer", "seller", "retailer", "boughtfrom"],
  "Paid on": ["datepaid", "paid", "paiddate", "paymentdate"],
  "Note": ["notes", "comment", "comments", "remark", "remarks", "memo"],




};
