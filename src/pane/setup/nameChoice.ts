/** Names that a matched range has for all its rows: the sheet's, or a cell's. */
import { cellWords, constantSaid } from "../../workbook/matchConstants";

/** Columns that name a field or crop, which one text can fill in every row. */
export const namingColumns: ReadonlySet<string> = new Set(["For", "Field", "Crop", "Field or Crop"]);

const [before, after] = cellWords("|").split("|") as [string, string];

export const isCellChoice = (value: string): boolean => value.startsWith(before) && value.endsWith(after);
/** The cell of such a choice, as far as it is typed. */
export const cellSaid = (value: string): string => value.slice(before.length, -after.length).trim();

/** What is still wrong with a choice; empty where it can be kept. */
export const nameMissing = (value: string): string =>
  isCellChoice(value) && constantSaid(value) === null ? "Say which cell names the field or crop, such as B2." : "";

/** The rows of a match for each of several ranges of one layout. */
export const forEach = (
  addresses: readonly string[],
  rows: readonly ReadonlyMap<string, string>[],
): readonly ReadonlyMap<string, string>[] => addresses.flatMap((address) => rows.map((row) => new Map([...row, ["Range", address]])));
