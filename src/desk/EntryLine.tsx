import { cellName, type At } from "../host/address";
import type { GridBook, GridSheet } from "./gridBook";
import { hintAt } from "./hintAt";
import type { WorkspaceCommands } from "./useWorkspace";
import type { Editing } from "./workspace";

export type EntryLineProps = {
  readonly book: GridBook;
  readonly sheet: GridSheet;
  readonly active: At;
  readonly editing: Editing | null;
  readonly commands: WorkspaceCommands;
};

/** Where a cell is in words: its table, row and heading; empty outside tables. */
export function placeInTable(book: GridBook, sheet: GridSheet, { row, column }: At): string {
  const table = sheet.tables.find(({ block }) => row >= block.top && row <= block.bottom && column >= block.left && column <= block.right);
  if (table === undefined) return "";
  const { headingRow, block } = table;
  if (row === headingRow) return `${table.name}, heading`;
  const heading = headingRow === null ? "" : `, ${book.cell(sheet.name, { row: headingRow, column }).text}`;
  return `${table.name}, row ${row - (headingRow ?? block.top - 1)}${heading}`;
}

/** The line above the grid: the active cell's address and what it holds, a formula as a formula. */
export function EntryLine({ book, sheet, active, editing, commands }: EntryLineProps) {
  const cell = book.cell(sheet.name, active);
  const name = cellName(active);
  const place = placeInTable(book, sheet, active);
  const hint = hintAt(book, sheet, active);
  return (
    <div className="entry-line">
      <span className="address">{name}</span>
      <input
        aria-label={`Entry in ${name}`} value={editing === null ? cell.entry : editing.text} spellCheck={false} autoComplete="off"
        onFocus={() => {
          if (editing === null) commands.edit(null, "edit", "line");
        }}
        onChange={(event) => commands.changeText(event.target.value)}
        onBlur={() => commands.commit(null)}
        onKeyDown={(event) => {
          if (event.nativeEvent.isComposing) return;
          if (event.key === "Enter") commands.commit({ key: "Enter", shift: event.shiftKey, ctrl: false });
          else if (event.key === "Escape") commands.cancel();
          else return;
          event.preventDefault();
        }}
      />
      <span className="place">
        {place}
        {hint !== "" && <span className="hint">{place === "" ? "" : ": "}{hint}</span>}
        {cell.isStale && <strong> Old value: this formula could not be recalculated here.</strong>}
      </span>
    </div>
  );
}
