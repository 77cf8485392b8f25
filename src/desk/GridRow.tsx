import { memo } from "react";
import { CellEditor } from "./CellEditor";
import { faultKey, type CellFaults } from "./cellFaults";
import type { GridBook, DeskCell, GridLook, DeskSheet } from "./gridBook";
import type { View } from "./views";
import type { Editing } from "./workspace";
import type { WorkspaceCommands } from "./workspaceCommands";

export type GridRowProps = {
  readonly book: GridBook;
  readonly sheet: View;
  readonly faults: CellFaults;
  /** Changes with the workbook, so that the row is drawn again. */
  readonly version: number;
  readonly row: number;
  readonly top: number;
  readonly width: number;
  /** Columns in sight, numbered as on the sheet. */
  readonly columns: readonly { readonly index: number; readonly start: number; readonly size: number }[];
  /** The column of the active cell, if it is in this row. */
  readonly activeColumn: number | null;
  /** The selected columns of this row; -1 where none is. */
  readonly from: number;
  readonly to: number;
  readonly editing: Editing | null;
  readonly commands: WorkspaceCommands;
};

/** A row of cells, drawn again only when something in it changes. */
export const GridRow = memo(function GridRow(props: GridRowProps) {
  const { book, sheet, faults, row, top, width, columns, activeColumn, from, to, editing, commands } = props;
  const { first } = sheet;
  const isNext = sheet.table !== null && row === sheet.table.block.bottom + 1;
  const parts = columns.map((item) => ({ item, part: partOfTable(sheet, row, item.index) }));
  return (
    <div
      className="row"
      role="row"
      aria-rowindex={row - first.row + 2}
      data-row={row}
      data-next={isNext ? "" : undefined}
      data-editing={editing === null ? undefined : ""}
      style={{ top, width }}
    >
      <span className="row-name" role="rowheader" aria-colindex={1} data-row-name="" data-within={from >= 0 ? "" : undefined}>
        {row + 1}
      </span>
      {parts.map(({ item: { index, start, size }, part }) => {
        const cell = book.cell(sheet.name, { row, column: index });
        const isActive = index === activeColumn;
        const joined = joinedWidth(sheet, row, index);
        const isSpilling = part === undefined && spills(cell, book, sheet.name, row, index);
        const isEdited = isActive && editing !== null;
        const isSelected = index >= from && index <= to;
        const fault = faults.get(faultKey({ row, column: index }));
        return (
          <div
            key={index}
            className="cell"
            role={part === "heading" ? "columnheader" : "gridcell"}
            aria-colindex={index - first.column + 2}
            aria-selected={isSelected}
            tabIndex={isActive ? 0 : -1}
            style={{ left: start, width: joined === null ? size : joined }}
            data-joined={joined === null ? undefined : ""}
            data-column={index}
            data-kind={cell.kind}
            data-part={part}
            data-active={isActive ? "" : undefined}
            data-overflows={isSpilling || isEdited ? "" : undefined}
            data-stale={cell.isStale ? "" : undefined}
            data-look={lookWords(cell.look)}
            data-fault={fault === undefined ? undefined : fault.isToFix ? "fix" : "check"}
            title={fault?.words ?? (cell.text.length * 7 > size ? cell.text : undefined)}
          >
            {fault !== undefined && (
              <span className="fault-mark" aria-hidden="true">
                {fault.isToFix ? "⚠" : "?"}
              </span>
            )}
            {isEdited ? (
              <CellEditor book={book} sheet={sheet} at={{ row, column: index }} editing={editing} commands={commands} />
            ) : isSpilling ? (
              <span className="spilling">{cell.text}</span>
            ) : (
              cell.text
            )}
            {isNext && index === first.column && cell.kind === "blank" && !isActive && (
              <span className="next">next entry: type here, or paste a block</span>
            )}
            {fault !== undefined && (
              <span className="unseen">
                {" "}
                ({fault.isToFix ? "to fix" : "to check"}: {fault.words})
              </span>
            )}
            {cell.isStale && <span className="unseen"> (old value, not recalculated)</span>}
          </div>
        );
      })}
    </div>
  );
});

/** The look as words for the style sheet, e.g. `bold right`; none for a plain cell. */
const lookWords = ({ bold, italic, align, shaded }: GridLook): string | undefined =>
  [bold && "bold", italic && "italic", shaded && "shaded", align].filter(Boolean).join(" ") || undefined;

type TablePart = "heading" | "body" | undefined;

function partOfTable({ tables }: DeskSheet, row: number, column: number): TablePart {
  for (const { block, headingRow } of tables) {
    if (column < block.left || column > block.right || row < block.top || row > block.bottom) continue;
    return row === headingRow ? "heading" : "body";
  }
  return undefined;
}

/** The width of cells joined across from this one; `null` where none are. */
function joinedWidth({ merges, widthOf }: DeskSheet, row: number, column: number): number | null {
  const join = merges.find(({ top, left }) => top === row && left === column);
  if (join === undefined || join.left === join.right) return null;
  let width = 0;
  for (let each = join.left; each <= join.right; each += 1) width += widthOf(each);
  return width;
}

/** A text outside tables runs on over a blank neighbour, as on paper. */
const spills = (cell: DeskCell, book: GridBook, sheet: string, row: number, column: number): boolean =>
  cell.kind === "text" && (cell.look.align ?? "left") === "left" && book.cell(sheet, { row, column: column + 1 }).kind === "blank";
