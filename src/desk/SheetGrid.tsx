/** A table or a sheet as an accessible grid: only the rows and columns in sight are in the page, and the active cell always is. */
import { defaultRangeExtractor, useVirtualizer, type Range } from "@tanstack/react-virtual";
import { useCallback, useLayoutEffect, useMemo, useRef, type ClipboardEvent, type KeyboardEvent, type PointerEvent } from "react";
import { columnName, contains, type At } from "../host/address";
import { isNeeded, isWrittenInNumbers } from "../workbook/columnHints";
import { GridRow } from "./GridRow";
import type { CellFaults } from "./cellFaults";
import type { GridBook, DeskSheet } from "./gridBook";
import { scrolledTo } from "./scrolledTo";
import { isBlock, selectBlock, selectCell, selectedBlock, type Selection } from "./gridSelection";
import { tableAt } from "./tableAt";
import type { WorkspaceCommands } from "./workspaceCommands";
import { extentOf, lastInUse, type View } from "./views";
import type { Editing } from "./workspace";

const rowHeight = 28;
/** Of a table: the heading, and whether it is needed. */
const tableHeadingHeight = 44;
const addressHeight = 26;
const rowNameWidth = 52;

export type SheetGridProps = {
  readonly book: GridBook;
  readonly sheet: View;
  readonly faults: CellFaults;
  readonly version: number;
  readonly selection: Selection;
  readonly editing: Editing | null;
  /** Grows each time the grid should take the focus; zero when it should not. */
  readonly focusRequest: number;
  readonly commands: WorkspaceCommands;
};

/** Keeps an index among those in the page although it is out of sight, so that the focus is never lost by scrolling. */
const keeping =
  (index: number) =>
  (range: Range): number[] => {
    const inSight = defaultRangeExtractor(range);
    return inSight.includes(index) || index >= range.count ? inSight : [...inSight, index].sort((a, b) => a - b);
  };

/** The heading row of the table that the active cell is in, where it has been scrolled out of sight: the column is named by it then. */
function headingOutOfSight(sheet: DeskSheet, active: At, column: number, firstInSight: number): number | null {
  const table = tableAt(sheet, active);
  if (table === undefined || table.headingRow === null || table.headingRow >= firstInSight) return null;
  return column >= table.block.left && column <= table.block.right ? table.headingRow : null;
}

export function SheetGrid({ book, sheet, faults, version, selection, editing, focusRequest, commands }: SheetGridProps) {
  const scroller = useRef<HTMLDivElement>(null);
  const { active, corner } = selection;
  const { first, ...end } = extentOf(sheet, [active, corner]);
  const rowsInSight = sheet.rowsShown ?? null;
  const [rowCount, columnCount] = [rowsInSight === null ? end.rows - first.row : rowsInSight.length, end.columns - first.column];
  /** Where a row stands among those in sight. */
  const lineOf = (row: number) =>
    rowsInSight === null
      ? row - first.row
      : Math.max(
          rowsInSight.findLastIndex((each) => each <= row),
          0,
        );
  const [activeLine, cornerLine] = [lineOf(active.row), lineOf(corner.row)];
  const headingHeight = sheet.table === null ? addressHeight : tableHeadingHeight;
  const block = selectedBlock(selection);
  // Of a whole entry or column there is no end to be brought in sight: the view stays where somebody pressed its name.
  const last = lastInUse(sheet);
  const isWholeRows = isBlock(selection) && block.left === first.column && block.right >= last.column;
  const isWholeColumns = isBlock(selection) && block.top === first.row && block.bottom >= last.row;

  const rows = useVirtualizer({
    count: rowCount,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeight,
    overscan: 4,
    paddingStart: headingHeight,
    rangeExtractor: useMemo(() => keeping(activeLine), [activeLine]),
  });
  const columns = useVirtualizer({
    horizontal: true,
    count: columnCount,
    getScrollElement: () => scroller.current,
    estimateSize: (index) => sheet.widthOf(index + first.column),
    overscan: 1,
    paddingStart: rowNameWidth,
    rangeExtractor: useMemo(() => keeping(active.column - first.column), [active.column, first.column]),
  });
  // Widths belong to the sheet: measured again when another view is shown.
  useLayoutEffect(() => columns.measure(), [columns, sheet.id, version]);

  useLayoutEffect(() => {
    const element = scroller.current;
    const column = columns.measurementsCache[corner.column - first.column];
    if (element === null) return;
    const top = cornerLine * rowHeight;
    if (!isWholeColumns) element.scrollTop = scrolledTo(element.scrollTop, top, rowHeight, element.clientHeight - headingHeight);
    if (column !== undefined && !isWholeRows) {
      element.scrollLeft = scrolledTo(element.scrollLeft, column.start - rowNameWidth, column.size, element.clientWidth - rowNameWidth);
    }
  }, [columns, sheet.id, cornerLine, corner.column, first.column, headingHeight, isWholeRows, isWholeColumns]);

  const columnItems = columns.getVirtualItems().map(({ index, start, size }) => ({ index: index + first.column, start, size }));
  const rowItems = rows
    .getVirtualItems()
    .map(({ index, start }) => ({ index: rowsInSight === null ? index + first.row : (rowsInSight[index] ?? first.row), start }));
  const isEditing = editing !== null;
  const isFilled = rowItems.length > 0 && columnItems.length > 0;
  useLayoutEffect(() => {
    if (focusRequest > 0 && !isEditing) {
      scroller.current?.querySelector<HTMLElement>("[data-active]")?.focus({ preventScroll: true });
    }
  }, [focusRequest, sheet.id, active.row, active.column, isEditing, isFilled]);

  const pageRows = () => Math.max(1, Math.floor(((scroller.current?.clientHeight ?? 0) - headingHeight) / rowHeight) - 1);
  const onKeyDown = (event: KeyboardEvent) => {
    if (!isEditing) commands.key(event, pageRows());
  };
  const onCopy = (event: ClipboardEvent) => {
    if (isEditing) return;
    event.preventDefault();
    event.clipboardData.setData("text/plain", commands.copy());
    if (event.type === "cut") commands.clear();
  };
  const onPaste = (event: ClipboardEvent) => {
    if (isEditing) return;
    event.preventDefault();
    commands.paste(event.clipboardData.getData("text/plain"));
  };

  const onPointer = usePointerSelection(selection, sheet, commands);
  const width = columns.getTotalSize();
  const firstInSight = Math.floor((rows.scrollOffset ?? 0) / rowHeight) + first.row;
  const headingOf = (column: number): string => {
    const heading = sheet.table?.headingRow ?? headingOutOfSight(sheet, active, column, firstInSight);
    const words = heading === null ? "" : book.cell(sheet.name, { row: heading, column }).text;
    if (sheet.table !== null) return words;
    return words === "" ? columnName(column) : `${columnName(column)} · ${words}`;
  };

  return (
    <div
      ref={scroller}
      className="sheet"
      role="grid"
      aria-label={sheet.table === null ? `Sheet ${sheet.name}` : `Table ${sheet.title}`}
      data-kind={sheet.kind}
      aria-multiselectable="true"
      aria-rowcount={rowCount + 1}
      aria-colcount={columnCount + 1}
      aria-describedby="grid-help"
      onKeyDown={onKeyDown}
      onCopy={onCopy}
      onCut={onCopy}
      onPaste={onPaste}
      {...onPointer}
    >
      <div className="sheet-inside" role="presentation" style={{ height: rows.getTotalSize(), width }}>
        <div className="names" role="row" aria-rowindex={1} style={{ width, height: headingHeight }}>
          <span className="corner" role="columnheader" aria-colindex={1}>
            <span className="unseen">{sheet.table === null ? "Row" : "Entry"}</span>
          </span>
          {columnItems.map(({ index, start, size }) => {
            const heading = headingOf(index);
            const table = sheet.table?.name ?? null;
            return (
              <span
                key={index}
                className="column-name"
                role="columnheader"
                aria-colindex={index - first.column + 2}
                data-column-name={index}
                data-numbers={table !== null && (isWrittenInNumbers(table, heading) || holdsNumbers(book, sheet, index)) ? "" : undefined}
                data-within={index >= block.left && index <= block.right ? "" : undefined}
                style={{ left: start, width: size }}
              >
                {heading}
                {table !== null && isNeeded(table, heading) && <span className="needed">needed</span>}
                <ColumnEdge width={size} set={(wide) => commands.setWidth(index, wide)} />
              </span>
            );
          })}
        </div>
        {rowItems.map(({ index, start }) => (
          <GridRow
            key={index}
            book={book}
            sheet={sheet}
            faults={faults}
            version={version}
            row={index}
            top={start}
            width={width}
            columns={columnItems}
            activeColumn={index === active.row ? active.column : null}
            from={index >= block.top && index <= block.bottom ? block.left : -1}
            to={index >= block.top && index <= block.bottom ? block.right : -1}
            editing={index === active.row && editing?.where === "cell" ? editing : null}
            commands={commands}
          />
        ))}
      </div>
    </div>
  );
}

/** The edge of a heading, which a mouse or a finger draws to make the column wider or narrower. Keys do it by the tools. */
function ColumnEdge({ width, set }: { readonly width: number; readonly set: (pixels: number) => void }) {
  const start = useRef<number | null>(null);
  return (
    <span
      className="edge"
      aria-hidden="true"
      onPointerDown={(event) => {
        event.stopPropagation();
        start.current = event.clientX;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerUp={(event) => {
        const from = start.current;
        start.current = null;
        if (from !== null && Math.abs(event.clientX - from) > 2) set(Math.min(Math.max(width + event.clientX - from, 40), 560));
      }}
      onPointerCancel={() => {
        start.current = null;
      }}
    />
  );
}

/** Selecting with a mouse, a finger or a pen: press, press with Shift, drag; names of rows and columns select whole lines. */
function usePointerSelection(selection: Selection, sheet: View, commands: WorkspaceCommands) {
  const dragging = useRef(false);
  const now = useRef(selection);
  now.current = selection;

  const onPointerDown = useCallback(
    (event: PointerEvent) => {
      const target = event.target as HTMLElement;
      if (event.button !== 0 || target.closest("[data-editor]") !== null) return;
      const { first } = sheet;
      const last = lastInUse(sheet);
      const rowName = target.closest<HTMLElement>("[data-row-name]")?.parentElement?.dataset["row"];
      const named = target.closest<HTMLElement>("[data-column-name]")?.dataset["columnName"];
      const cell = cellUnder(target);
      if (rowName !== undefined)
        commands.select(selectBlock({ top: Number(rowName), bottom: Number(rowName), left: first.column, right: last.column }));
      else if (named !== undefined)
        commands.select(selectBlock({ top: first.row, bottom: last.row, left: Number(named), right: Number(named) }));
      else if (cell !== null) {
        commands.select(event.shiftKey ? { ...now.current, corner: cell } : selectCell(cell));
        dragging.current = event.pointerType === "mouse";
      } else return;
      event.preventDefault();
    },
    [sheet, commands],
  );

  const onPointerMove = useCallback(
    (event: PointerEvent) => {
      if (!dragging.current) return;
      if (event.buttons === 0) dragging.current = false;
      const cell = cellUnder(event.target as HTMLElement);
      const { corner } = now.current;
      if (dragging.current && cell !== null && (cell.row !== corner.row || cell.column !== corner.column)) {
        commands.select({ ...now.current, corner: cell });
      }
    },
    [commands],
  );

  const onPointerUp = useCallback(() => {
    dragging.current = false;
  }, []);

  const onDoubleClick = useCallback(
    (event: { target: EventTarget }) => {
      const cell = cellUnder(event.target as HTMLElement);
      if (cell !== null && contains(selectedBlock(now.current), cell)) commands.edit(null, "edit", "cell");
    },
    [commands],
  );

  return { onPointerDown, onPointerMove, onPointerUp, onDoubleClick };
}

/** Whether the first entries of a column are numbers, so that its heading stands above their digits. */
function holdsNumbers(book: GridBook, { name, first, table }: View, column: number): boolean {
  for (let row = first.row; row <= Math.min(first.row + 4, table?.block.bottom ?? first.row); row += 1) {
    const { kind } = book.cell(name, { row, column });
    if (kind !== "blank") return kind === "number";
  }
  return false;
}

function cellUnder(target: HTMLElement): At | null {
  const cell = target.closest<HTMLElement>("[data-column]");
  const column = cell?.dataset["column"];
  const row = cell?.parentElement?.dataset["row"];
  return row === undefined || column === undefined ? null : { row: Number(row), column: Number(column) };
}
