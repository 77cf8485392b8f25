import type { Cell, DateSystem, WorkbookContent } from "../../workbook/cell";
import type { WorkbookHost } from "../../host/workbookHost";
import { outcome, type Outcome } from "../failure";
import type { PurchaseRow } from "../purchase/purchaseDraft";
import { plainHeading } from "../../workbook/words";
import { tableNamed } from "./tableNamed";

/**
 * Adds a purchase as a row of the table Purchases, under the workbook's own spelling of the headings.
 *
 * A value whose column the table lacks cannot be written; the names of those come back, so that nothing is lost unsaid.
 */
export function addPurchase(host: WorkbookHost, content: WorkbookContent, row: PurchaseRow): Promise<Outcome<readonly string[]>> {
  const table = tableNamed(content, "Purchases");
  if (table === null) {
    return Promise.resolve({ ok: false, failure: { what: "The workbook has no table Purchases to add a row to.", remedy: "Make it under Tables, or add the row to your own range.", again: true } });
  }
  const cells = new Map<string, Cell>();
  const lost: string[] = [];
  for (const [heading, value] of row) {
    const own = table.headers.find((header) => plainHeading(header) === plainHeading(heading));
    if (own === undefined) lost.push(heading);
    else cells.set(own, typeof value === "string" ? value : "day" in value ? serialOf(value.day, content.dateSystem) : Number(value.toFixed()));
  }
  return outcome(async () => {
    await host.addRows(table.name, [cells]);
    return lost;
  });
}

const dayLength = 86_400_000;
const firstDays: Record<DateSystem, number> = { "1900": Date.UTC(1899, 11, 30), "1904": Date.UTC(1904, 0, 1) };

/** The serial number of a day as Excel counts it; right from March 1900 on, where the 1900 system's false leap day is past. */
export const serialOf = (day: string, system: DateSystem): number => (Date.parse(`${day}T00:00:00Z`) - firstDays[system]) / dayLength;
