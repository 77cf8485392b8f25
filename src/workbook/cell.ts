/** Cells as a host hands them over, before anything is understood. */

/** A blank cell is `""`. A cell in error is its text, such as `#N/A`. A date is its serial number. */
export type Cell = string | number | boolean;

/**
 * Where a block of cells begins, so that the pane can jump to one of them. Rows and columns count from 0. `isOwn`: a cell of the
 * grower's own that entries are made of, which no number of a row tells, so that its sheet is named with it.
 */
export type SheetPlace = { readonly sheet: string; readonly row: number; readonly column: number; readonly isOwn?: true };

/** A table or a matched range: its headings and its body rows, hidden and filtered rows included, the totals row not. */
export type RawTable = {
  readonly name: string;
  readonly headers: readonly string[];
  /** The headings as the grower has them, where a match puts ours in their place; left out where it is their own. */
  readonly called?: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** The first cell of the first body row. */
  readonly body: SheetPlace;
  /** Body cells (row, column from 0) whose formula could not be recalculated, so that their value may be old. */
  readonly stale?: readonly { readonly row: number; readonly column: number }[];
  /** Body cells whose formula has one value in the file and another when it is worked out, with the one that is not counted. */
  readonly differing?: readonly { readonly row: number; readonly column: number; readonly notCounted: string }[];
  /** Body cells with a rate that only its number format tells, and that show it in percent; left out where there are none. */
  readonly percents?: readonly { readonly row: number; readonly column: number }[];
  /**
   * Where the cells of each row stand, of a table that is put together from cells of the grower's own; left out where they stand
   * one below the other from `body` on.
   */
  readonly origins?: readonly RowOrigin[];
  /** The ranges that it is put together from, where they are several. */
  readonly parts?: readonly RawTable[];
  /** Columns whose cells stand nowhere, such as the name of the sheet: a fault in one is shown at the row's first cell. */
  readonly made?: readonly number[];
  /**
   * Rows below the last one with something in them, which the table or range does not take in, up to the next one; left out where
   * there are none.
   */
  readonly below?: readonly RowBelow[];
};

/** The cells that a row is made of: on one row of a sheet, a column for each heading. Rows and columns count from 0. */
export type RowOrigin = { readonly sheet: string; readonly row: number; readonly columns: readonly number[] };

/** A row below a table or range, as wide as that is. `by`: so many rows below the last body row, 1 being right under it. */
export type RowBelow = { readonly by: number; readonly cells: readonly Cell[] };

export type DateSystem = "1900" | "1904";

/** Everything that is read from a workbook in one go. */
export type WorkbookContent = {
  readonly dateSystem: DateSystem;
  readonly tables: readonly RawTable[];
  /**
   * The ranges that the table `Matches` points at, by the text in its column Range; the first row is the headings.
   * A range that the workbook does not have is absent.
   */
  readonly ranges: ReadonlyMap<string, RawTable>;
  /** Tables that the workbook would not hand over, and why; left out where there are none. */
  readonly unreadable?: readonly { readonly name: string; readonly why: string }[];
  /** Names of tables that are none of ours and that nothing in ours names, whose cells were not read; left out where all were. */
  readonly others?: readonly string[];
};
