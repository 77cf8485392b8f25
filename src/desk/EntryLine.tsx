import { cellName, type At } from "../host/address";
import { faultKey, type CellFaults } from "./cellFaults";
import type { GridBook, DeskSheet } from "./gridBook";
import { spelled } from "../workbook/spelling";
import { hintAt } from "./hintAt";
import { tableAt } from "./tableAt";
import type { WorkspaceCommands } from "./workspaceCommands";
import type { Editing } from "./workspace";

export type EntryLineProps = {
  /** Hints are spelled as its country spells; blank until the workbook is read. */
  readonly currency: string;
  readonly book: GridBook;
  readonly sheet: DeskSheet;
  readonly faults: CellFaults;
  readonly active: At;
  readonly editing: Editing | null;
  readonly commands: WorkspaceCommands;
};

/** Where a cell is in words: its table, the row of the sheet and the heading; the address alone outside tables. */
function placeInTable(book: GridBook, sheet: DeskSheet, at: At): string {
  const table = tableAt(sheet, at);
  if (table === undefined) return cellName(at);
  const { headingRow } = table;
  const name = table.name.replaceAll("_", " ");
  if (at.row === headingRow) return `${name}, heading`;
  const heading = headingRow === null ? "" : `, ${book.cell(sheet.name, { row: headingRow, column: at.column }).text}`;
  return `${name}, row ${at.row + 1}${heading}`;
}

/**
 * The line below the grid: where the active cell is and what it holds, a formula as a formula; what to enter there, and what is
 * wrong with it.
 */
export function EntryLine({ book, currency, sheet, faults, active, editing, commands }: EntryLineProps) {
  const cell = book.cell(sheet.name, active);
  const name = cellName(active);
  const place = placeInTable(book, sheet, active);
  const hint = spelled(hintAt(book, sheet, active), currency);
  const fault = faults.get(faultKey(active));
  return (
    <div className="entry-line">
      <span className="place">
        {place}
        {place === name ? "" : " "}
        <span className={place === name ? "address unseen" : "address"}>{name}</span>
      </span>
      <input
        aria-label={`Entry in ${place}`}
        value={editing === null ? cell.entry : editing.text}
        spellCheck={false}
        autoComplete="off"
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
      <span className="hint">
        {fault !== undefined && (
          <strong>
            {fault.isToFix ? "To fix: " : "To check: "}
            {fault.words}{" "}
          </strong>
        )}
        {hint}
        {cell.isStale && <strong> Old value: this formula could not be recalculated here.</strong>}
      </span>
    </div>
  );
}
