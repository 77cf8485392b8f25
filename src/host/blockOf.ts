import type { Cell } from "../workbook/cell";
import type { Area, At } from "./address";

/** A heading row has at least so many filled cells; a title has one. */
const fewestHeadings = 2;

/**
 * The block of the grower's own that a selection means, its headings in the first row: of one selected cell all that hangs
 * together around it, without blank rows and columns between; of both what is left without titles above the headings.
 *
 * @param used the smallest block of the sheet that holds every cell
 * @returns the selection itself where it holds no row of headings
 */
export function blockOf(picked: Area, used: Area | null, valueAt: (at: At) => Cell): Area {
  if (used === null) return picked;
  const isFilled = (row: number, column: number) => valueAt({ row, column }) !== "";
  const isOneCell = picked.top === picked.bottom && picked.left === picked.right;
  const block = isOneCell ? around(picked, used, isFilled) : picked;
  const bottom = Math.min(block.bottom, used.bottom);
  for (let row = Math.max(block.top, used.top); row <= bottom; row += 1) {
    const filled = columns(block, used).filter((column) => isFilled(row, column));
    if (filled.length >= fewestHeadings && filled.every((column) => typeof valueAt({ row, column }) === "string")) {
      return row === Math.max(block.top, used.top) && !isOneCell ? picked : { ...block, top: row };
    }
    // Numbers stand under headings: what comes below them is no heading any more.
    if (filled.length >= fewestHeadings) return block;
  }
  return block;
}

const columns = ({ left, right }: Area, used: Area): number[] => {
  const from = Math.max(left, used.left);
  return Array.from({ length: Math.max(0, Math.min(right, used.right) - from + 1) }, (_, index) => from + index);
};

/** The block grown on each side for as long as something filled touches it. */
function around(cell: Area, used: Area, isFilled: (row: number, column: number) => boolean): Area {
  let block = cell;
  for (;;) {
    const { top, left, bottom, right } = block;
    const rowTouches = (row: number) => row >= used.top && row <= used.bottom && columns({ ...block, left: left - 1, right: right + 1 }, used).some((column) => isFilled(row, column));
    const columnTouches = (column: number) => {
      if (column < used.left || column > used.right) return false;
      for (let row = Math.max(top - 1, used.top); row <= Math.min(bottom + 1, used.bottom); row += 1) if (isFilled(row, column)) return true;
      return false;
    };
    const next = {
      top: rowTouches(top - 1) ? top - 1 : top, bottom: rowTouches(bottom + 1) ? bottom + 1 : bottom,
      left: columnTouches(left - 1) ? left - 1 : left, right: columnTouches(right + 1) ? right + 1 : right,
    };
    if (next.top === top && next.bottom === bottom && next.left === left && next.right === right) return block;
    block = next;
  }
}
