/** Words that growers and dealers write above a column instead of ours. Common practice, from memory. */

/**
 * Other words for a heading of ours, spelled as they are compared: small letters, no spaces, no points. A word that stands under
 * two headings of one table (a cost may be a price or an amount) proposes neither there; it serves the tables that have only one of them.
 */
export const tradeHeadings: Readonly<Record<string, readonly string[]>> = {
  "Crop": ["commodity"],

  "Field": ["fieldname", "paddock", "block", "parcel", "name"],
  "Acres": ["plantedacres", "acreage"],
  "Hybrid or variety": ["hybrid", "variety", "var", "hyb", "cultivar", "seedvariety"],
  "Yield goal": ["goal", "targetyield", "budgetyield", "planyield", "yield", "goalyield", "yieldtarget", "expectedyield", "plannedyield", "goalbuperacre", "yieldgoalbuperacre", "targetbuperacre", "goalbu"],
  "Planned planting date": ["planneddate", "plantingdate", "plantdate"],
  "Planted date": ["planted", "dateplanted", "plantingdate", "plantdate"],
  "Seeds dropped": ["seedingrate", "seedrate", "seedsperacre", "population", "pop", "seeddrop"],
  "Target stand": ["finalstand", "standgoal", "plantsperacre", "population", "pop", "targetpopulation"],
  "Row width": ["rowspacing", "spacing"],
  "Tenure": ["ownperrent", "landtenure"],
  "Rent per acre": ["rent", "cashrent", "landrent"],
  "Land charge per acre": ["landcharge", "landcost"],
  "Operator share of crop %": ["operatorshare", "cropshare", "myshare"],
  "Proven yield": ["aph", "aphyield", "averageyield", "avgyield", "historicyield", "yield", "approvedyield"],

  "Kind": ["type", "category", "costtype"],

  "Date": ["invoicedate", "datebought", "purchasedate", "datesold", "saledate", "harvestdate", "dateapplied", "when", "day", "invdate", "purchdate"],
  "Quantity": ["qty", "count", "units", "quantitybought", "qtyshipped", "qtybought", "quantityshipped"],
  "Unit": ["uom", "um", "uperm", "measure", "units", "unitofmeasure"],
  "Unit price": ["unitcost", "price", "priceperunit", "costperunit", "$perunit", "priceeach", "each", "cost"],
  "Freight": ["shipping", "delivery", "carriage", "haulage", "freightin"],
  "Rebate": ["discount", "credit"],
  "Supplier": ["vendor", "dealer", "seller", "retailer", "boughtfrom"],
  "Paid on": ["datepaid", "paid", "paiddate", "paymentdate"],
  "Note": ["notes", "comment", "comments", "remark", "remarks", "memo"],

  "Rate": ["applicationrate", "customrate", "interestrate", "apr"],
  "Machine": ["implement", "equipment"],

  "Name": ["loan", "lender"],
  "Balance": ["owed", "outstanding", "loanbalance"],
  "Payment": ["pmt", "installment", "instalment"],
  "Payments a year": ["paymentsperyear", "pmtsperyear"],
  "Next due": ["duedate", "due", "nextpayment"],

  "Approved yield": ["aph", "aphyield", "guaranteeyield"],
  "Coverage": ["coveragelevel", "level"],
  "Projected price": ["springprice", "baseprice"],
  "Harvest price": ["fallprice"],

  "Price": ["pricepaid", "contractprice", "cashprice", "priceperbu", "priceperbushel", "$perbu", "unitprice", "unitcost", "saleprice", "salesprice"],
  "Delivery month": ["delivery", "deliver", "deliveryperiod"],
};
