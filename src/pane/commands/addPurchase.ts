import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import type { Outcome } from "../failure";
import { addEntries } from "./addEntries";
import type { EntryRow } from "./entryRow";
import { tableNamed } from "./tableNamed";

/**
 * Adds a purchase as a row of the table Purchases, under the workbook's own spelling of the headings.
 *
 * A value whose column the table lacks cannot be written; the names of those come back, so that nothing is lost unsaid.
 */
export function addPurchase(host: WorkbookHost, content: WorkbookContent, row: EntryRow): Promise<Outcome<readonly string[]>> {
  if (tableNamed(content, "Purchases") !== null) return addEntries(host, content, "Purchases", [row]);
  return Promise.resolve({ ok: false, failure: { what: "The workbook has no table Purchases to add an entry to.", remedy: "Make it under Tables, or add the entry to your own range.", again: true } });
}
