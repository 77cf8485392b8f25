import type { Cell } from "../workbook/cell";
import type { Block, At } from "./address";

/** A heading row has at least so many filled cells; a title has one. */
const fewestHeadings = 2;

type ValueAt = (at: At) => Cell;

/**
 * The block of the grower's own that a selection means, its headings in the first row: of one selected cell all that hangs
 * together around it, without blank rows between, and with columns after a blank one where their headings go on in the same row;
 * of both what is left without titles above the headings.
 *
 * @param used the smallest block of the sheet that holds every cell
 * @param region what hangs together around one selected cell, where the host has found it already
 * @returns the selection itself where it holds no row of headings
 */
export function blockOf(picked: Block, used: Block | null, valueAt: ValueAt, region: Block | null = null): Block {
  if (used === null) return picked;
  const isFilled = (row: number, column: number) => valueAt({ row, column }) !== "";
  const isOneCell = picked.top === picked.bottom && picked.left === picked.right;
  const block = isOneCell ? (region ?? around(picked, used, isFilled)) : picked;
  const top = headingRow(block, used, valueAt);
  if (top === null) return block;
  if (isOneCell) return withColumnsBeside({ ...block, top }, used, valueAt);
  return top === Math.max(block.top, used.top) ? picked : { ...block, top };
}

/**
 * The row of headings: the fullest one of words alone above the numbers, since a title may stand in two cells and a line over the
 * headings may group them; without numbers the first. `null` where there is none.
 */
function headingRow(block: Block, used: Block, valueAt: ValueAt): number | null {
  const rows: { readonly row: number; readonly filled: number }[] = [];
  for (let row = Math.max(block.top, used.top); row <= Math.min(block.bottom, used.bottom); row += 1) {
    const filled = columns(block, used).filter((column) => valueAt({ row, column }) !== "");
    if (filled.length < fewestHeadings) continue;
    // Numbers stand under headings: what comes below them is no heading any more.
    if (!filled.every((column) => typeof valueAt({ row, column }) === "string")) {
      const most = Math.max(...rows.map((each) => each.filled));
      return rows.find((each) => each.filled === most)?.row ?? null;
    }
    rows.push({ row, filled: filled.length });
  }
  return rows[0]?.row ?? null;
}

/** The block with what goes on after one blank column on either side: headings in its row that it does not have, and numbers under them. */
function withColumnsBeside(block: Block, used: Block, valueAt: ValueAt): Block {
  const heading = (column: number) =>
    String(valueAt({ row: block.top, column }))
      .trim()
      .toLowerCase();
  const isHeading = (column: number) =>
    column >= used.left && column <= used.right && heading(column) !== "" && typeof valueAt({ row: block.top, column }) === "string";
  let wide = block;
  for (const step of [1, -1]) {
    for (;;) {
      const from = (step > 0 ? wide.right : wide.left) + 2 * step;
      let to = from;
      while (isHeading(to + step)) to += step;
      const run = Array.from({ length: Math.abs(to - from) + 1 }, (_, index) => from + index * step);
      const has = new Set(columns(wide, used).map(heading));
      const isMore =
        isHeading(from) && run.every((column) => !has.has(heading(column))) && run.some((column) => hasNumber(column, wide, used, valueAt));
      if (!isMore) break;
      wide = step > 0 ? { ...wide, right: to } : { ...wide, left: to };
    }
  }
  return wide;
}

function hasNumber(column: number, { top, bottom }: Block, used: Block, valueAt: ValueAt): boolean {
  for (let row = top + 1; row <= Math.min(bottom, used.bottom); row += 1) {
    const value = valueAt({ row, column });
    if (typeof value === "number" || (typeof value === "string" && /^\W*\d/.test(value))) return true;
  }
  return false;
}
const columns = ({ left, right }: Block, used: Block): number[] => {
  const from = Math.max(left, used.left);
  return Array.from({ length: Math.max(0, Math.min(right, used.right) - from + 1) }, (_, index) => from + index);
};

/** The block grown on each side for as long as something filled touches it. */
function around(cell: Block, used: Block, isFilled: (row: number, column: number) => boolean): Block {
  let block = cell;
  for (;;) {
    const { top, left, bottom, right } = block;
    const rowTouches = (row: number) =>
      row >= used.top &&
      row <= used.bottom &&
      columns({ ...block, left: left - 1, right: right + 1 }, used).some((column) => isFilled(row, column));
    const columnTouches = (column: number) => {
      if (column < used.left || column > used.right) return false;
      for (let row = Math.max(top - 1, used.top); row <= Math.min(bottom + 1, used.bottom); row += 1)
        if (isFilled(row, column)) return true;
      return false;
    };
    const next = {
      top: rowTouches(top - 1) ? top - 1 : top,
      bottom: rowTouches(bottom + 1) ? bottom + 1 : bottom,
      left: columnTouches(left - 1) ? left - 1 : left,
      right: columnTouches(right + 1) ? right + 1 : right,
    };
    if (next.top === top && next.bottom === bottom && next.left === left && next.right === right) return block;
    block = next;
  }
}
