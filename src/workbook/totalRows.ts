/** Rows that add up others: typed under the entries or between them, they are no entries themselves. */
import { zero } from "../core/numbers/decimal";
import type { Cell } from "./cell";
import { decimalOf, isBlank } from "./numbers";

const totalWords = /^((grand|sub|running)[ -]?)?totals?:?$|[\w).] (sub-?)?totals?:?$|^(sub-?totals?|total (of|for)) /i;

/** Whether the first thing that a row says is that it is a total: "Total", "Subtotal", "Corn total". */
export function isTotalRow(cells: readonly Cell[]): boolean {
  const first = cells.find((cell) => !isBlank(cell));
  return typeof first === "string" && totalWords.test(first.trim());
}

/** Whether each number of a row is the sum of those above it in its column, of two or more; a row without a number is none. */
export function isSumRow(cells: readonly Cell[], above: readonly (readonly Cell[])[]): boolean {
  const sums = cells.flatMap((cell, column) =>
    typeof cell === "number"
      ? [
          isSumOf(
            cell,
            above.map((row) => row[column] ?? ""),
          ),
        ]
      : [],
  );
  return sums.length > 0 && sums.every((isSum) => isSum);
}

/** Whether a number adds up the numbers among some cells, of which there are two at least. */
function isSumOf(number: number, cells: readonly Cell[]): boolean {
  const parts = cells.filter((cell): cell is number => typeof cell === "number" && cell !== 0);
  if (parts.length < 2) return false;
  return parts.reduce((sum, part) => sum.plus(decimalOf(part)), zero).eq(decimalOf(number));
}
