/** What is selected in the grid and how keys move it. Nothing here knows the screen. */
import { areaOf, type Block, type At } from "../host/address";

/**
 * `active` has the focus and takes what is typed. The block lies between `anchor`, where selecting began, and `corner`;
 * all three are the same cell where one cell is selected. `entryColumn` is where a run of Tab entries began: Enter goes
 * back to it, one row down.
 */
export type Selection = { readonly active: At; readonly anchor: At; readonly corner: At; readonly entryColumn: number | null };

/** What a move must know of the sheet: its size on screen, the part that is used, and which cells are filled. */
export type Extent = {
  /** The first cell that is shown; nothing before it can be selected. */
  readonly first: At;
  /** Rows and columns are shown up to these, counted from the first of the sheet. */
  readonly rows: number;
  readonly columns: number;
  /** The number of rows and columns that hold something, counted from the first. */
  readonly used: { readonly rows: number; readonly columns: number };
  readonly pageRows: number;
  readonly isFilled: (cell: At) => boolean;
};

/** A key as the browser names it, with the keys held down. */
export type KeyStroke = { readonly key: string; readonly shift: boolean; readonly ctrl: boolean };

/** One cell selected. */
export const selectCell = (active: At): Selection => ({ active, anchor: active, corner: active, entryColumn: null });

/** A block selected, its first cell active. */
export const selectBlock = (block: Block): Selection => {
  const active = { row: block.top, column: block.left };
  return { active, anchor: active, corner: { row: block.bottom, column: block.right }, entryColumn: null };
};

/** The block from where selecting began to another cell. */
const extendTo = (selection: Selection, corner: At): Selection => ({ ...selection, corner, entryColumn: null });

/** The selected block. */
export const selectedBlock = ({ anchor, corner }: Selection): Block => areaOf(anchor, corner);

/** Whether more than one cell is selected. */
export const isBlock = ({ anchor, corner }: Selection): boolean => anchor.row !== corner.row || anchor.column !== corner.column;

/** Where a key takes the selection; `null` for a key that moves nothing. */
export function moved(selection: Selection, stroke: KeyStroke, extent: Extent): Selection | null {
  const { key, shift, ctrl } = stroke;
  if (key === "Enter" || key === "Tab") return entered(selection, stroke, extent);
  if (key === "a" && ctrl) return { ...selection, anchor: extent.first, corner: lastUsed(extent) };
  if (key === " " && shift) return { ...selection, ...wholeRows(selectedBlock(selection), extent) };
  if (key === " " && ctrl) return { ...selection, ...wholeColumns(selectedBlock(selection), extent) };
  const from = shift ? selection.corner : selection.active;
  const to = target(from, key, ctrl, extent);
  if (to === null) return null;
  const inside = clamp(to, extent);
  return shift ? extendTo(selection, inside) : selectCell(inside);
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

function target(from: At, key: string, ctrl: boolean, extent: Extent): At | null {
  const step = steps[key];
  if (step !== undefined) {
    return ctrl ? edge(from, step, extent) : { row: from.row + step[0], column: from.column + step[1] };
  }
  switch (key) {
    case "PageUp":
      return { ...from, row: from.row - extent.pageRows };
    case "PageDown":
      return { ...from, row: from.row + extent.pageRows };
    case "Home":
      return { row: ctrl ? extent.first.row : from.row, column: extent.first.column };
    case "End":
      return ctrl ? lastUsed(extent) : lastFilled(from, extent);
    default:
      return null;
  }
}

const lastUsed = ({ first, used, columns }: Extent): At => ({
  row: Math.max(used.rows - 1, first.row),
  column: Math.min(Math.max(used.columns - 1, first.column), columns - 1),
});

const clamp = ({ row, column }: At, { first, rows, columns }: Extent): At => ({
  row: Math.min(Math.max(row, first.row), rows - 1),
  column: Math.min(Math.max(column, first.column), columns - 1),
});

const wholeRows = ({ top, bottom }: Block, extent: Extent) => ({
  anchor: { row: top, column: extent.first.column },
  corner: { row: bottom, column: lastUsed(extent).column },
});

const wholeColumns = ({ left, right }: Block, extent: Extent) => ({
  anchor: { row: extent.first.row, column: left },
  corner: { row: lastUsed(extent).row, column: right },
});

function lastFilled(from: At, extent: Extent): At {
  let { column } = lastUsed(extent);
  while (column > extent.first.column && !extent.isFilled({ row: from.row, column })) column -= 1;
  return { row: from.row, column };
}

/** Ctrl+arrow: to the end of a run of filled cells, or over a gap to the next filled cell, or to the edge of what is used. */
function edge(from: At, [down, right]: readonly [number, number], extent: Extent): At {
  const { row: lastRow, column: lastColumn } = lastUsed(extent);
  const last = { row: Math.max(lastRow, from.row), column: Math.max(lastColumn, from.column) };
  const { first } = extent;
  const isShown = ({ row, column }: At) => row >= first.row && column >= first.column && row <= last.row && column <= last.column;
  const next = ({ row, column }: At): At => ({ row: row + down, column: column + right });
  let at = from;
  const inRun = extent.isFilled(from) && isShown(next(from)) && extent.isFilled(next(from));
  while (isShown(next(at))) {
    if (inRun && !extent.isFilled(next(at))) return at;
    at = next(at);
    if (!inRun && extent.isFilled(at)) return at;
  }
  return at;
}

/** Enter and Tab: through the block where one is selected, else down or right, Enter returning to where a run of Tabs began. */
function entered(selection: Selection, { key, shift }: KeyStroke, extent: Extent): Selection {
  const { active, entryColumn } = selection;
  const by = shift ? -1 : 1;
  if (isBlock(selection)) return { ...selection, active: nextInBlock(selection, key === "Enter", by) };
  if (key === "Enter") {
    const column = shift ? active.column : (entryColumn ?? active.column);
    return selectCell(clamp({ row: active.row + by, column }, extent));
  }
  return { ...selectCell(clamp({ ...active, column: active.column + by }, extent)), entryColumn: entryColumn ?? active.column };
}

/** The next cell of a block, column by column for Enter and row by row for Tab, round to the beginning after the last. */
function nextInBlock(selection: Selection, downFirst: boolean, by: number): At {
  const block = selectedBlock(selection);
  const height = block.bottom - block.top + 1;
  const width = block.right - block.left + 1;
  const row = selection.active.row - block.top;
  const column = selection.active.column - block.left;
  const size = height * width;
  const next = ((downFirst ? column * height + row : row * width + column) + by + size) % size;
  return downFirst
    ? { row: block.top + (next % height), column: block.left + Math.floor(next / height) }
    : { row: block.top + Math.floor(next / width), column: block.left + (next % width) };
}
