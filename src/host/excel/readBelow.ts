/** The rows below tables and matched ranges, read only where the sheet goes on in their columns. */
import type { RowBelow } from "../../workbook/cell";
import type { Block } from "../address";
import { filledRows, lastRowBelow } from "../below";
import { readInPieces, type Sized } from "./readInPieces";
import type { Asked } from "./sources";

/** A table that is not read; its first row ends what stands above it. */
export type Neighbour = { readonly sheet: Excel.Worksheet; readonly block: Excel.Range };

/** Asks where a table begins, and nothing of its cells. */
export const askNeighbour = (table: Excel.Table): Neighbour => ({
  sheet: table.worksheet.load("name"),
  block: table.getRange().untrack().load("rowIndex,columnIndex,columnCount"),
});

type OnSheet = Block & { readonly sheet: string };

const blockOf = ({ body, sheet, edges: { block } }: Asked): OnSheet | null =>
  body.isNullObject
    ? null
    : {
        sheet: sheet.name,
        top: block.rowIndex,
        left: block.columnIndex,
        bottom: block.rowIndex + block.rowCount - 1,
        right: block.columnIndex + block.columnCount - 1,
      };

/**
 * What stands below each of the sources as they were asked, in one more round trip where anything does and in none where nothing
 * does. Cells are asked for down to the last one in use, and no further than the next table or matched range.
 *
 * @param lastBody the last body row of each source
 */
export async function readBelow(
  context: Excel.RequestContext,
  asked: readonly Asked[],
  lastBody: readonly number[],
  neighbours: readonly Neighbour[],
): Promise<readonly (readonly RowBelow[])[]> {
  const blocks = asked.map(blockOf);
  const begun = neighbours.map(({ sheet, block: { rowIndex, columnIndex, columnCount } }): OnSheet => ({
    sheet: sheet.name,
    top: rowIndex,
    left: columnIndex,
    bottom: rowIndex,
    right: columnIndex + columnCount - 1,
  }));
  const wanted = asked.map(({ sheet, edges: { used } }, index): Sized => {
    const block = blocks[index] ?? null;
    const nothing = { rows: 0, columns: 0, range: () => sheet.getRange("A1") };
    if (block === null || used.isNullObject) return nothing;
    const others = [...blocks, ...begun].filter(
      (other): other is OnSheet => other !== null && other !== block && other.sheet === block.sheet,
    );
    const rows = Math.min(used.rowIndex + used.rowCount - 1, lastRowBelow(block, others)) - block.bottom;
    const columns = block.right - block.left + 1;
    return rows <= 0 ? nothing : { rows, columns, range: () => sheet.getRangeByIndexes(block.bottom + 1, block.left, rows, columns) };
  });
  if (wanted.every(({ rows }) => rows === 0)) return asked.map(() => []);
  const cells = await readInPieces(context, wanted);
  return cells.map((rows, index) => filledRows(rows, (blocks[index]?.bottom ?? 0) + 1 - lastBody[index]!));
}
