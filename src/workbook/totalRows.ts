/** Rows that add up others: typed under the entries or between them, they are no entries themselves. */
import type { Cell, RawTable } from "./cell";
import { isBlank } from "./numbers";

const totalWords = /^((grand|sub|running)[ -]?)?totals?:?$|[\w)] (sub-?)?totals?:?$|^(sub-?totals?|total (of|for)) /i;

/** Whether the first thing that a row says is that it is a total: "Total", "Subtotal", "Corn total". */
export function isTotalRow(cells: readonly Cell[]): boolean {
  const first = cells.find((cell) => !isBlank(cell));
  return typeof first === "string" && totalWords.test(first.trim());
}

/** Entries right under a table, a total of it aside. */
export const entriesBelow = ({ below = [] }: RawTable): readonly (readonly Cell[])[] =>
  // A line of words alone is a remark.
  below.filter((cells) => !isTotalRow(cells) && cells.filter((cell) => !isBlank(cell)).length > 1);
