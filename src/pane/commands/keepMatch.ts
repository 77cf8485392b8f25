import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { matchesTable } from "../../workbook/tableNames";
import { inputTables } from "../../workbook/templates";
import { outcome, type Outcome } from "../failure";
import { sameName, tableNamed } from "./tableNamed";

/** Writes a match into the table Matches, which is made with it where the workbook has none. */
export function keepMatch(
  host: WorkbookHost,
  content: WorkbookContent,
  rows: readonly ReadonlyMap<string, string>[],
): Promise<Outcome<void>> {
  const there = tableNamed(content, matchesTable);
  const table = inputTables.find(({ name }) => sameName(name, matchesTable))!;
  return outcome(() => (there === null ? host.enterRows([{ table, rows }]) : host.addRows(there.name, rows)));
}
