/** Which of the grower's headings may mean a column of ours: words that the trade uses alike, and slips of the pen. */
import type { InputTable } from "../../workbook/inputTable";
import { editDistance, plainHeading } from "../../workbook/words";
import type { Matching } from "./matchView";

/** Other words for our headings, in small letters without spaces; common practice in farm records, from memory. */
export const alsoCalled: Readonly<Record<string, readonly string[]>> = {
  Item: ["product", "input", "material", "description"],
  Quantity: ["qty", "quant", "quantitybought"],
  Unit: ["uom", "units", "unitofmeasure"],
  "Unit price": ["price", "unitcost", "priceperunit", "costperunit"],
  Amount: ["total", "totalcost", "cost", "totalprice", "linetotal", "invoiceamount"],
  Supplier: ["vendor", "dealer", "seller"],
  "Paid on": ["paid", "datepaid", "paiddate", "paymentdate"],
  Date: ["day", "invoicedate", "purchasedate", "datebought"],
  Note: ["notes", "remark", "remarks", "comment", "comments", "memo"],
  Remark: ["remarks", "note", "notes", "comment", "comments"],
  Kind: ["type", "category", "class"],
  Field: ["fieldname", "fieldno", "fieldnumber"],
  "Field or Crop": ["field", "fieldname", "crop"],
  Crop: ["cropname", "commodity"],
  Acres: ["acreage", "plantedacres", "tillableacres"],
  "Hybrid or variety": ["hybrid", "variety", "seedvariety"],
  "Yield goal": ["goal", "goalyield", "targetyield", "yieldtarget", "expectedyield", "plannedyield"],
  "Planted date": ["planted", "dateplanted", "plantdate", "plantingdate"],
  "Seeds dropped": ["seedingrate", "population", "seeddrop"],
  "Target stand": ["targetpopulation", "finalstand"],
  "Rent per acre": ["rent", "cashrent", "rentac"],
  "Operator share of crop %": ["cropshare", "operatorshare", "myshare"],
  "Proven yield": ["aph", "aphyield", "averageyield", "approvedyield"],
  "Pack name": ["pack", "package", "container"],
  "Pack size": ["packagesize", "containersize"],
  "Plan price per pack": ["planprice", "budgetprice", "budgetedprice"],
  Rate: ["applicationrate", "rateperacre"],
  "Rate unit": ["unit", "units", "uom"],
  Operation: ["pass", "job", "fieldwork"],
  "Expected price": ["price", "budgetprice", "planprice"],
  Price: ["unitprice", "saleprice", "salesprice", "contractprice"],
  "Weight or bushels": ["weight", "bushels", "netweight", "netbushels"],
  Moisture: ["moist", "moisturepct"],
  Plants: ["plantcount", "count", "plantscounted"],
  Balance: ["owed", "outstanding", "principal"],
};

/** A slip of the pen: two letters of a long word, one of a shorter. A word of three letters may mean anything. */
const slips = (length: number): number => (length >= 7 ? 2 : length >= 4 ? 1 : 0);

const bare = (heading: string): string => plainHeading(heading).replace(/[^\p{L}\p{N}]/gu, "");

/**
 * Headings that may stand for the columns that have none yet. A column that several of them may stand for, and a heading
 * that may stand for several columns, are left to the grower; so is everything else, because these are proposals only.
 */
export function nearHeadings(table: InputTable, headings: readonly string[], matching: Matching): Matching {
  const used = new Set(matching.values());
  const open = table.columns.map(({ heading }) => heading).filter((heading) => (matching.get(heading) ?? "") === "");
  const free = headings.filter((own) => !used.has(own));
  const pairs = open.flatMap((heading) => free.filter((own) => mayMean(own, heading)).map((own) => ({ heading, own })));
  return new Map(pairs
    .filter(({ heading, own }) => pairs.every((other) => (other.heading === heading) === (other.own === own)))
    .map(({ heading, own }) => [heading, own]));
}

function mayMean(own: string, heading: string): boolean {
  const [theirs, ours] = [bare(own), bare(heading)];
  if ((alsoCalled[heading] ?? []).includes(theirs)) return true;
  return editDistance(theirs, ours) <= slips(Math.min(theirs.length, ours.length));
}

/** What is proposed, in words: `“Qty” for Quantity, “Vendor” for Supplier`; empty where nothing is. */
export const proposalWords = (proposed: Matching): string => [...proposed].map(([heading, own]) => `“${own}” for ${heading}`).join(", ");
