import type { TableRows, WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { failureOfWords, outcome, type Outcome } from "../failure";
import type { EntryRow } from "./entryRow";
import { rowsForTable } from "./newRows";

/**
 * Adds rows to several of our tables as one step; those that the workbook lacks are made. Nothing is written where one of them is
 * read from a range of the grower's own, or lacks a column that something is entered in.
 */
export async function enterTables(
  host: WorkbookHost,
  content: WorkbookContent,
  entries: readonly { readonly table: string; readonly rows: readonly EntryRow[] }[],
): Promise<Outcome<void>> {
  const tables: TableRows[] = [];
  for (const { table: name, rows } of entries) {
    const ready = rowsForTable(content, name, rows);
    if (!ready.ok) return ready;
    const { table, rows: cells, lost } = ready.value;
    if (lost.length > 0)
      return failureOfWords(
        `The table ${name} has no column ${lost.join(", ")}, so nothing was written.`,
        "Add the column to the table, then try again.",
      );
    tables.push({ table, rows: cells });
  }
  return outcome(() => host.enterRows(tables));
}
