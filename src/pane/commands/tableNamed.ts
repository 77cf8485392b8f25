import type { RawTable, WorkbookContent } from "../../workbook/cell";
import { plain } from "../../workbook/words";

/** Whether two names of tables are the same to a person: capitals, spaces and underscores aside. */
export const sameName = (a: string, b: string): boolean => plain(a) === plain(b);

/** The table of the workbook that bears one of our names, however it is spelled; `null` where there is none. */
export const tableNamed = (content: WorkbookContent, name: string): RawTable | null =>
  content.tables.find((table) => sameName(table.name, name)) ?? null;
