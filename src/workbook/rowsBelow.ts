/** Rows below a table or a matched range that it does not take in: entries among them would count nowhere. */
import type { Cell, RawTable, RowBelow } from "./cell";
import { isBlank } from "./numbers";
import { headingThere } from "./oldHeadings";
import type { Problem, Subject } from "./problem";
import { inputTables } from "./templates";
import { isSumRow, isTotalRow } from "./totalRows";
import { plain } from "./words";

export type RowsBelow = {
  /** Rows that read as entries of the table. */
  readonly entries: readonly RowBelow[];
  /** Rows with a number in them that may be something else, such as a reckoning of the grower's own. */
  readonly near: readonly RowBelow[];
};

/**
 * What stands below. Totals and lines of words alone are ignored. What has all that a row of the table needs is an entry;
 * right under the table two cells make one, but after a blank row a grower may keep other things.
 */
export function rowsBelow({ name, headers, rows, below = [] }: RawTable): RowsBelow {
  const needed = neededColumns(name, headers);
  const [entries, near]: [RowBelow[], RowBelow[]] = [[], []];
  let under = 0;
  for (const row of below) {
    const { by, cells } = row;
    const isRightUnder = by === under + 1;
    if (isRightUnder) under = by;
    const filled = cells.filter((cell) => !isBlank(cell));
    const isSum = isSumRow(cells, rows);
    if (isTotalRow(cells) || (isSum && filled.every((cell) => typeof cell === "number"))) continue;
    const isWhole = needed !== null && needed.every((is) => is(cells));
    if (isWhole || (isRightUnder && filled.length > 1 && !isSum)) entries.push(row);
    else if (filled.some(isNumberLike)) near.push(row);
  }
  return { entries, near };
}

const isNumberLike = (cell: Cell): boolean => typeof cell === "number" || (typeof cell === "string" && /^\W*\d/.test(cell));

/** Tells of each cell that an entry needs whether it is there; `null` for a table that is none of ours. */
function neededColumns(name: string, headers: readonly string[]): readonly ((cells: readonly Cell[]) => boolean)[] | null {
  const table = inputTables.find((each) => plain(each.name) === plain(name));
  if (table === undefined) return null;
  return table.columns
    .filter(({ required }) => required)
    .flatMap(({ heading, numberFormat }) => {
      const at = headers.indexOf(headingThere(name, headers, heading) ?? "");
      const isNumber = numberFormat !== undefined;
      return at < 0 ? [] : [(cells: readonly Cell[]) => (isNumber ? isNumberLike(cells[at] ?? "") : !isBlank(cells[at] ?? ""))];
    });
}

/** What is told of the rows below a table: one problem for those that read as entries, one for the others. */
export function problemsBelow(raw: RawTable, called: string, touches: readonly Subject[]): readonly Problem[] {
  const { entries, near } = rowsBelow(raw);
  const told = (code: "rows-below" | "rows-near", [first, ...others]: readonly RowBelow[]): readonly Problem[] =>
    first === undefined
      ? []
      : [
          {
            code,
            at: { table: called, row: raw.rows.length + first.by },
            found: String(1 + others.length),
            touches,
            like: first.by === 1 ? "right under" : `${first.by} rows below`,
          },
        ];
  return [...told("rows-below", entries), ...told("rows-near", near)];
}

/**
 * A range of the grower's own with the rows that were typed right under it, as far as they are entries: it grows with them, and
 * stops at a gap or a total.
 */
export function grown(raw: RawTable, entries: readonly RowBelow[] = rowsBelow(raw).entries): RawTable {
  const reached = new Set(entries.map(({ by }) => by));
  let more = 0;
  while (reached.has(more + 1)) more += 1;
  if (more === 0) return raw;
  const { below = [], ...rest } = raw;
  return {
    ...rest,
    rows: [...raw.rows, ...below.slice(0, more).map(({ cells }) => cells)],
    below: below.slice(more).map(({ by, cells }) => ({ by: by - more, cells })),
  };
}
