import type { WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { matchesTable } from "../../workbook/findTables";
import { inputTables } from "../../workbook/templates";
import { outcome, type Outcome } from "../failure";
import { sameName, tableNamed } from "./tableNamed";

/** Writes a match into the table Matches, which is made first where the workbook has none: its first row is then the match's own. */
export function keepMatch(host: WorkbookHost, content: WorkbookContent, rows: readonly ReadonlyMap<string, string>[]): Promise<Outcome<void>> {
  return outcome(async () => {
    const there = tableNamed(content, matchesTable);
    if (there !== null) return host.addRows(there.name, rows);
    const [first = new Map<string, string>(), ...rest] = rows;
    const made = inputTables.filter(({ name }) => sameName(name, matchesTable));
    const names = await host.makeTables(made.map((table) => ({ ...table, rows: [table.columns.map(({ heading }) => first.get(heading) ?? "")] })));
    const left = names.length === 0 ? rows : rest;
    if (left.length > 0) await host.addRows(matchesTable, left);
  });
}
