/** A small season beside sheets of the grower's own, for tests of how those are read. */
import type { RawTable } from "../../src/workbook/cell";
import { contentFromText } from "./tableFromText";

/** What `matches` (rows of the table Matches) and `sheets` say beside two fields of corn; `own`: the sheets, apart from our tables. */
export function besideOwnSheets(matches: string, sheets: string) {
  const all = contentFromText(`
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
| Birch | Corn | 50 | 200 |
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 300 | whole farm |
Matches
| Table | Range | Column | Heading |
${matches}
${sheets}`);
  const ours = new Set(["Crops", "Fields", "Other costs", "Matches"]);
  const isOwn = ({ name }: RawTable) => !ours.has(name);
  return { content: { ...all, tables: all.tables.filter((table) => !isOwn(table)) }, own: all.tables.filter(isOwn) };
}
