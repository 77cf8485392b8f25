/** Rows of a range of the grower's own that say one word and no number, such as INPUTS above some costs, or a remark below them. */
import type { Cell, RawTable } from "./cell";
import { isBlank } from "./numbers";

/** Fewer needed columns than this and one word may be an entry. */
const fewestNeeded = 2;

/** @param needed how many of its columns an entry cannot do without */
export function withoutSections(range: RawTable, needed: number): RawTable {
  if (needed < fewestNeeded || !range.rows.some(isSection)) return range;
  return { ...range, rows: range.rows.map((cells) => (isSection(cells) ? cells.map(() => "") : cells)) };
}

/** One cell of words alone. A digit in it may be money, which is told as of an entry that cannot be read. */
function isSection(cells: readonly Cell[]): boolean {
  const [first, ...others] = cells.filter((cell) => !isBlank(cell));
  return typeof first === "string" && others.length === 0 && !/\d|#/.test(first);
}
