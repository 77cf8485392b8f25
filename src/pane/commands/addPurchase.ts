import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import type { Outcome } from "../failure";
import { addEntries } from "./addEntries";
import type { EntryRow } from "./entryRow";

/**
 * Adds a purchase as a row of the table Purchases, under the workbook's own spelling of the headings; a workbook that has none
 * gets it with the row.
 *
 * A value whose column the table lacks cannot be written; the names of those come back, so that nothing is lost unsaid.
 */
export const addPurchase = (host: WorkbookHost, content: WorkbookContent, row: EntryRow): Promise<Outcome<readonly string[]>> =>
  addEntries(host, content, "Purchases", [row]);
