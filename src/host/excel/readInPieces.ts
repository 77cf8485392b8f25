import type { Cell } from "../../workbook/cell";
import { isTooBig } from "./refusal";

/** Cells asked for in one round trip at first: 5 MB allow some 125 bytes for each. */
const cellsAtFirst = 40_000;

type Piece = { readonly of: number; readonly range: Excel.Range };

/**
 * Reads ranges in as many round trips as it takes, each of some rows, and in smaller ones where Excel still refuses.
 * For workbooks that are too big for one answer; everything else is read at once. The place and the size of each range are
 * loaded with it.
 */
export async function readInPieces(context: Excel.RequestContext, ranges: readonly Excel.Range[]): Promise<Cell[][][]> {
  for (const range of ranges) range.load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const cells = ranges.map((): Cell[][] => []);
  let limit = cellsAtFirst;
  let [of, row] = [0, 0];
  while (of < ranges.length) {
    const { pieces, next } = nextPieces(ranges, of, row, limit);
    try {
      await context.sync();
    } catch (error) {
      if (!isTooBig(error) || limit <= 1) throw error;
      limit = Math.ceil(limit / 4);
      continue;
    }
    for (const piece of pieces) cells[piece.of]?.push(...(piece.range.values as Cell[][]));
    [of, row] = next;
  }
  return cells;
}

/** Asks for the rows from `row` of range `of` on, through the ranges after it, until `limit` cells are reached. */
function nextPieces(ranges: readonly Excel.Range[], of: number, row: number, limit: number) {
  const pieces: Piece[] = [];
  let room = limit;
  while (of < ranges.length && (room > 0 || pieces.length === 0)) {
    const range = ranges[of] as Excel.Range;
    const rowsLeft = range.isNullObject ? 0 : range.rowCount - row;
    if (rowsLeft > 0) {
      const count = Math.min(rowsLeft, Math.max(1, Math.floor(room / range.columnCount)));
      const first = range.getCell(row, 0).untrack();
      pieces.push({ of, range: first.getResizedRange(count - 1, range.columnCount - 1).untrack().load("values") });
      room -= count * range.columnCount;
      row += count;
    }
    if (rowsLeft <= 0 || row >= range.rowCount) [of, row] = [of + 1, 0];
  }
  return { pieces, next: [of, row] as [number, number] };
}
