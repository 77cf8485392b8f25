/** The hint of a column, for hosts and tables that show none by themselves as a cell is selected. */
import { hintWords } from "./inputTable";
import { inputTables } from "./templates";
import { plain, plainHeading } from "./words";

/** What to enter in a column of one of our tables; empty for columns and tables of the grower's own. */
export function columnHint(table: string, heading: string): string {
  const column = inputTables.find(({ name }) => plain(name) === plain(table))?.columns.find((each) => plainHeading(each.heading) === plainHeading(heading));
  return column === undefined ? "" : hintWords(column);
}
