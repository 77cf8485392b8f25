import type { Cell } from "../../workbook/cell";
import { HostError } from "../workbookHost";
import { isTooBig } from "./refusal";

/** Cells asked for in one round trip at first: 5 MB allow some 125 bytes for each. */
const cellsAtFirst = 40_000;

/** A range of known size; `range` asks Excel for it anew, since a range of a batch that failed cannot be used again. */
export type Sized = { readonly rows: number; readonly columns: number; readonly range: () => Excel.Range };

/** Some rows of the range `of`. */
type Piece = { readonly of: number; readonly row: number; readonly rows: number };

/**
 * Reads ranges in as many round trips as it takes, each of some rows, and in smaller ones where Excel still refuses.
 * For workbooks that are too big for one answer; everything else is read at once.
 */
export async function readInPieces(context: Excel.RequestContext, ranges: readonly Sized[]): Promise<Cell[][][]> {
  const cells = ranges.map((): Cell[][] => []);
  let limit = cellsAtFirst;
  let pieces = nextPieces(ranges, cells, limit);
  while (pieces.length > 0) {
    const asked = pieces.map((piece) => ({ of: piece.of, range: askPiece(ranges[piece.of] as Sized, piece) }));
    try {
      await context.sync();
      for (const { of, range } of asked) for (const row of valuesOf(range)) cells[of]?.push(row);
    } catch (error) {
      const smallest = pieces.length === 1 && pieces[0]?.rows === 1;
      if (!isTooBig(error) || smallest) throw error;
      limit = Math.ceil(limit / 4);
    }
    pieces = nextPieces(ranges, cells, limit);
  }
  return cells;
}

/** The values of a range, for which Excel now and then gives nothing at all. */
function valuesOf({ values }: Excel.Range): readonly Cell[][] {
  if (!Array.isArray(values)) throw new HostError("failed", "Excel gives no values for its cells.");
  return values as Cell[][];
}

/** The rows that come next, of as many ranges as have room within `limit` cells; at least one row while any is left. */
function nextPieces(ranges: readonly Sized[], read: readonly Cell[][][], limit: number): Piece[] {
  const pieces: Piece[] = [];
  let room = limit;
  ranges.forEach(({ rows, columns }, of) => {
    const row = read[of]?.length ?? 0;
    if (row >= rows || (room < columns && pieces.length > 0)) return;
    const count = Math.min(rows - row, Math.max(1, Math.floor(room / columns)));
    pieces.push({ of, row, rows: count });
    room -= count * columns;
  });
  return pieces;
}

const askPiece = ({ range, columns }: Sized, { row, rows }: Piece): Excel.Range =>
  range()
    .getCell(row, 0)
    .untrack()
    .getResizedRange(rows - 1, columns - 1)
    .untrack()
    .load("values");
