/** A small workbook as plain data. Each host's test makes it real in its own way and shows it again as a snapshot. */
import type { Cell, DateSystem } from "../../src/workbook/cell";

export type Fixture = {
  readonly dateSystem?: DateSystem;
  readonly sheets: readonly FixtureSheet[];
  /** The file asks for all formulas to be worked out as it is opened, because the program that wrote it worked none out. */
  readonly asksForCalculation?: boolean;
};

export type FixtureSheet = {
  readonly name: string;
  /** Rows from A1. An error is its text, such as `#N/A`; a date is its serial number. */
  readonly cells: readonly (readonly Cell[])[];
  /** Formulas by cell (`B2`), beginning with `=`; `cells` has the value each gives. */
  readonly formulas?: Readonly<Record<string, string>>;
  readonly tables?: readonly FixtureTable[];
  /** Rows hidden by hand or by a filter, from 1 as Excel counts them. */
  readonly hiddenRows?: readonly number[];
  /** The sheet is protected without a password, with all cells locked but those of `unlocked`. */
  readonly locked?: boolean;
  /** Cells that are not locked, by address (`B2`). */
  readonly unlocked?: readonly string[];
  readonly hidden?: boolean;
  /** The sheet bears our mark (`resultSheetMark`), as if we had made it earlier. */
  readonly ours?: boolean;
};

/** `range` holds the headings, the body and, if there is one, the totals row: `A1:C5`. */
export type FixtureTable = { readonly name: string; readonly range: string; readonly totalsRow?: boolean };

/** What a workbook holds, as far as the contract asks. */
export type Snapshot = {
  readonly sheets: readonly SheetSnapshot[];
  /** The selected cell or range, without quotes round the sheet: sheet and first cell. */
  readonly selected: { readonly sheet: string; readonly cell: string } | null;
};

export type SheetSnapshot = {
  readonly name: string;
  /** Cells with a value or a formula, by address (`B2`). */
  readonly cells: Readonly<Record<string, CellSnapshot>>;
  readonly tables: readonly { readonly name: string; readonly range: string }[];
  readonly merges: readonly string[];
  /** Widths in characters of as many columns as have one of their own, from A. */
  readonly columnWidths: readonly number[];
  readonly frozenRows: number;
  /** Rows repeated on each page, as `1:3`; null if none. */
  readonly titleRows: string | null;
  readonly orientation: "portrait" | "landscape";
  /** Columns repeated on each page, as `A:A`; null if none. */
  readonly titleColumns: string | null;
  /** How many pages wide it prints at most; null where it prints at its own size. */
  readonly pagesWide: number | null;
  readonly charts: readonly { readonly title: string; readonly series: number }[];
  /** Drop-down lists: the first cell of each and its words. */
  readonly choices: readonly { readonly cell: string; readonly words: readonly string[] }[];
};

export type CellSnapshot = { readonly value: Cell; readonly formula?: string; readonly numberFormat: string; readonly bold: boolean };
