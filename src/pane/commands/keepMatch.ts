import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { inputTables } from "../../workbook/templates";
import { outcome, type Outcome } from "../failure";
import { sameName, tableNamed } from "./tableNamed";

/** Writes a match into the table Matches, which is made first where the workbook has none. */
export function keepMatch(host: WorkbookHost, content: WorkbookContent, rows: readonly ReadonlyMap<string, string>[]): Promise<Outcome<void>> {
  return outcome(async () => {
    const there = tableNamed(content, "Matches");
    if (there === null) await host.makeTables(inputTables.filter(({ name }) => sameName(name, "Matches")));
    await host.addRows(there?.name ?? "Matches", rows);
  });
}
