import type { RawTable, WorkbookContent } from "../../workbook/cell";

/** Whether two names of tables or headings are the same to a person: capitals, spaces and underscores aside. */
export const sameName = (a: string, b: string): boolean => bare(a) === bare(b);

const bare = (name: string): string => name.toLowerCase().replace(/[\s_]+/g, "");

/** The table of the workbook that bears one of our names, however it is spelled; `null` where there is none. */
export const tableNamed = (content: WorkbookContent, name: string): RawTable | null =>
  content.tables.find((table) => sameName(table.name, name)) ?? null;
