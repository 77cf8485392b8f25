/** A row that the pane adds to a table: what is entered, by the heading of its column. */
import type { Decimal } from "../../core/numbers/decimal";
import type { Named } from "../../workbook/columns/column";

/** Text, a decimal or a day. */
export type Entry = string | Decimal | { readonly day: string };

/** A row that may be written: what stands in it by the heading of its column. */
export type EntryRow = ReadonlyMap<string, Entry>;

/** The row of what is entered; cells with nothing in them are left out. */
export const entryRow = (cells: readonly (readonly [Named, Entry | null])[]): EntryRow =>
  new Map(cells.flatMap(([{ heading }, entry]) => (entry === null || entry === "" ? [] : [[heading, entry] as const])));
