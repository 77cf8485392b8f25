/** Which one row of the workbook changed between two readings. */
import type { Cell, RawTable, WorkbookContent } from "../../workbook/cell";

export type ChangedRow = {
  readonly table: string;
  readonly headers: readonly string[];
  /** As it was; `null`: it is new. */
  readonly was: readonly Cell[] | null;
  /** As it is; `null`: it is gone. */
  readonly is: readonly Cell[] | null;
};

/** "none": nothing changed; "several": more than one row, a table or a heading did. */
export type Changed = ChangedRow | "none" | "several";

export function changedRow(before: WorkbookContent, after: WorkbookContent): Changed {
  if (before === after) return "none";
  if (before.tables.length !== after.tables.length || !sameRanges(before, after)) return "several";
  const changed = after.tables.map((table, index) => changedIn(before.tables[index]!, table)).filter((each) => each !== "none");
  return changed.length > 1 ? "several" : (changed[0] ?? "none");
}

function changedIn(before: RawTable, after: RawTable): Changed {
  if (before === after || (before.name === after.name && before.headers === after.headers && before.rows === after.rows)) return "none";
  if (before.name !== after.name || !sameCells(before.headers, after.headers)) return "several";
  const [old, now] = [filled(before), filled(after)];
  const longer = now.length - old.length;
  if (Math.abs(longer) > 1) return "several";
  const first = now.findIndex((row, index) => !sameCells(row, old[index] ?? []));
  const at = first === -1 ? Math.min(old.length, now.length) : first;
  if (longer === 0 && first === -1) return "none";
  const rest = (rows: readonly (readonly Cell[])[], from: number) => rows.slice(from);
  const [restOld, restNow] = [rest(old, longer === 1 ? at : at + 1), rest(now, longer === -1 ? at : at + 1)];
  if (restOld.length !== restNow.length || !restNow.every((row, index) => sameCells(row, restOld[index]!))) return "several";
  return { table: after.name, headers: after.headers, was: longer === 1 ? null : old[at]!, is: longer === -1 ? null : now[at]! };
}

/** The rows in which something stands: blank ones at the end come and go with the table's size. */
const filled = ({ rows }: RawTable): readonly (readonly Cell[])[] =>
  rows.slice(0, rows.findLastIndex((row) => row.some((cell) => said(cell) !== "")) + 1);
const said = (cell: Cell | undefined): string => String(cell ?? "").trim();
/** A row that nobody touched is mostly the very same one, and so are its cells. */
const sameCells = (one: readonly Cell[], other: readonly Cell[]): boolean => {
  if (one === other) return true;
  const [long, short] = one.length < other.length ? [other, one] : [one, other];
  return long.every((cell, index) => cell === short[index] || said(cell) === said(short[index]));
};
const sameRanges = ({ ranges: one }: WorkbookContent, { ranges: other }: WorkbookContent): boolean =>
  one.size === other.size &&
  [...one].every(([name, table]) => {
    const there = other.get(name);
    return there !== undefined && (there === table || changedIn(table, there) === "none");
  });
