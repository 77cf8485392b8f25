import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { outcome, type Outcome } from "../failure";
import type { EntryRow } from "./entryRow";
import { rowsForTable } from "./newRows";

/**
 * Adds rows to one of our tables as one step; one that the workbook lacks is made with them.
 *
 * A value whose column the table lacks cannot be written; the names of those come back, so that nothing is lost unsaid.
 */
export async function addEntries(
  host: WorkbookHost,
  content: WorkbookContent,
  name: string,
  rows: readonly EntryRow[],
): Promise<Outcome<readonly string[]>> {
  const ready = rowsForTable(content, name, rows);
  if (!ready.ok) return ready;
  const { isThere, lost, ...entry } = ready.value;
  return outcome(async () => {
    await (isThere ? host.addRows(entry.table.name, entry.rows) : host.enterRows([entry]));
    return lost;
  });
}

/** What is said behind "was added" of values that had no column, by their headings; empty where there are none. */
export const lostWords = (lost: readonly string[]): string =>
  lost.length === 0 ? "" : ` The table has no column for ${lost.join(", ")}, which was not written.`;
