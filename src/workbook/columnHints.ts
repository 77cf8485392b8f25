/** The hint of a column, for hosts and tables that show none by themselves as a cell is selected. */
import { hintWords, type InputColumn } from "./inputTable";
import { inputTables } from "./templates";
import { plain, plainHeading } from "./words";

const columnOf = (table: string, heading: string): InputColumn | undefined =>
  inputTables
    .find(({ name }) => plain(name) === plain(table))
    ?.columns.find((each) => [each.heading, ...(each.was ?? [])].some((words) => plainHeading(words) === plainHeading(heading)));

/** What to enter in a column of one of our tables; empty for columns and tables of the grower's own. */
export function columnHint(table: string, heading: string): string {
  const column = columnOf(table, heading);
  return column === undefined ? "" : hintWords(column);
}

/** Whether a column of one of our tables is written in numbers or dates; not known of columns of the grower's own. */
export const isWrittenInNumbers = (table: string, heading: string): boolean => columnOf(table, heading)?.numberFormat !== undefined;

/** Whether an entry of one of our tables needs this column. */
export const isNeeded = (table: string, heading: string): boolean => columnOf(table, heading)?.required === true;
