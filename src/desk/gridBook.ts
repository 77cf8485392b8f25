/** The workbook as the grid sees it: sheets and cells as texts, entries, steps to undo. */
import type { Decimal } from "../core/numbers/decimal";
import type { SheetChart, StepWords } from "../host/embedded";
import type { WorkbookHost } from "../host/workbookHost";
import type { SheetPlace } from "../workbook/cell";
import type { Block, At } from "../host/address";

/** A table on a sheet. `block` holds its heading row, where it has one, and its body, without a totals row. */
export type GridTable = { readonly name: string; readonly headingRow: number | null; readonly block: Block };

/** A sheet: how much of it is used, its tables, joined cells and column widths in pixels. */
export type DeskSheet = {
  readonly name: string;
  /** One of our result sheets. */
  readonly isResult: boolean;
  readonly used: { readonly rows: number; readonly columns: number };
  /** Columns in use without the words of our drop-down lists beside a table; left out: all that are in use. */
  readonly columnsBesideLists?: number;
  readonly tables: readonly GridTable[];
  readonly merges: readonly Block[];
  readonly widthOf: (column: number) => number;
};

/** How a cell looks; `align` is `null` where that depends on what it holds. */
export type GridLook = {
  readonly bold: boolean;
  readonly italic: boolean;
  readonly align: "left" | "center" | "right" | null;
  readonly shaded: boolean;
};

/** A cell to be shown. `entry` is what is edited: the formula with its `=`, or the value as it would be typed. */
export type DeskCell = {
  readonly text: string;
  readonly entry: string;
  readonly kind: "blank" | "text" | "number" | "error" | "yes-no";
  readonly look: GridLook;
  readonly isFormula: boolean;
  /** The number that it holds; `null` for a date and for what is no number. */
  readonly amount: Decimal | null;
  /** The formula could not be recalculated here, so that the value may be old. */
  readonly isStale: boolean;
};

/** A text to be entered in a cell; an empty one clears it. */
export type GridEntry = { readonly at: At; readonly text: string };

/** Everything the grid asks of a workbook. Each change is one step to undo. */
export interface GridBook {
  /** Tells one opened workbook from the next. */
  readonly id: string;
  readonly host: WorkbookHost;
  /** The sheets that are not hidden, in order. */
  sheets(): readonly DeskSheet[];
  cell(sheet: string, at: At): DeskCell;
  /** The charts on a sheet, with what their cells say now. */
  charts(sheet: string): readonly SheetChart[];
  /** What the cell's drop-down list offers; none where it has no list. */
  choices(sheet: string, at: At): readonly string[];
  /** Entries right under a table's last row make the table longer. Throws a `HostError` where the sheet is protected. */
  enter(sheet: string, entries: readonly GridEntry[]): void;
  /** Adds a blank row at the end of a table and returns the row's first cell. */
  addRow(table: string): SheetPlace;
  /** Blank entries above a row of a table, rows counted as on the sheet. Throws a `HostError` in words where it cannot be. */
  insertRows(table: string, above: number, count: number): void;
  /** Throws a `HostError` where that would break a formula. */
  deleteRows(table: string, rows: readonly number[]): void;
  /** Whole entries in the order of a column of the sheet. Throws a `HostError` where a formula would say something else. */
  sort(table: string, column: number, downwards: boolean): void;
  /** A column so many pixels wide. */
  widen(sheet: string, column: number, pixels: number): void;
  undo(): boolean;
  redo(): boolean;
  /** What the next undo takes back, in words and with its place; `null` where there is nothing. */
  toUndo(): StepWords | null;
  toRedo(): StepWords | null;
  /** Whether there is something that no saved file has. */
  hasChanges(): boolean;
  /** A number that grows with every change, for the page to know that it must draw again. */
  version(): number;
  /** Calls back after each change; returns what stops the calls. */
  subscribe(changed: () => void): () => void;
  /** Calls back when the pane asks to show a cell; returns what stops the calls. */
  onShow(show: (place: SheetPlace) => void): () => void;
  /** Tells the workbook what is selected, for the pane to ask. */
  selected(sheet: string, block: Block): void;
  /** Why formulas cannot be worked out here any more, in words; `null` while they can. */
  engineFault(): string | null;
  /** The workbook as the bytes of an `.xlsx` file, once its formulas are worked out, or after a while without them. */
  save(): Promise<BytesToSave>;
  /** The workbook as it is at this moment, for a draft: formulas that are still being worked out are marked as old. */
  draft(): Promise<Uint8Array>;
  /** What was handed out did not arrive: the workbook lies in no file. */
  notSaved(): void;
}

/** The bytes of a file, and what is to be called once they lie in one: until then the workbook counts as unsaved. */
type BytesToSave = { readonly bytes: Uint8Array; readonly keep: () => void };
