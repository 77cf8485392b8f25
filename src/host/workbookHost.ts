import type { Cell, SheetPlace, WorkbookContent } from "../workbook/cell";
import type { InputTable } from "../workbook/inputTable";
import type { ResultSheet } from "../workbook/resultSheet";

/** The workbook as the rest of the program sees it. Two hosts provide it: Excel, and the embedded workbook. */
export interface WorkbookHost {
  /** Every table of the workbook, and every range that its table `Matches` points at. */
  read(): Promise<WorkbookContent>;
  /**
   * Puts our result sheets in place as one step, which one Undo takes back. A sheet of that name which we made is made
   * again; one that somebody else made is left alone, and ours gets the next free name (`Break-even (2)`). Resolves to the
   * names that they have in the workbook, in the order of the sheets.
   */
  write(sheets: readonly ResultSheet[]): Promise<readonly string[]>;
  /**
   * Makes input tables, each on a sheet of its own; a table that is there already is left alone. Resolves to the names of those
   * that were made.
   */
  makeTables(tables: readonly InputTable[]): Promise<readonly string[]>;
  /**
   * Adds rows to several tables as one step, under the last body row of each; a table that the workbook lacks is made with them, on
   * a sheet of its own. Nothing is written where one of them cannot be.
   */
  enterRows(entries: readonly TableRows[]): Promise<void>;
  /** Adds rows under the last body row of a table, as one step. Cells are given by heading; a heading left out stays blank. */
  addRows(table: string, rows: readonly ReadonlyMap<string, Cell>[]): Promise<void>;
  /**
   * Draws a table over so many rows below its last body row, as one step: what stands there becomes part of it as it is. Nothing is
   * changed where the table has a totals row, or another table or joined cells are in the way.
   */
  growTable(table: string, rows: number): Promise<void>;
  /**
   * Puts values into single cells of tables' body rows, as one step. A number format stays. Nothing is changed where one of the
   * places is not there, or where a cell holds a formula, which the grower typed.
   */
  changeCells(changes: readonly CellChange[]): Promise<void>;
  /**
   * Adds a column at the right end of a table, with values in some of its rows, as one step. Nothing is changed where the table
   * has such a column already, or where anything stands right of its rows, which is the grower's.
   */
  addColumn(column: NewColumn): Promise<void>;
  /** Shows a cell to the user and selects it. */
  select(place: SheetPlace): Promise<void>;
  /**
   * The address (`Sheet!A1:F20`) and headings of what the user has selected, to match a range of their own: of one cell the block
   * around it, and of both what is left without titles above the headings.
   */
  selection(): Promise<{ readonly address: string; readonly headings: readonly string[] }>;
  /**
   * The same cells of other sheets that can be seen, where their first row says the same as that of `address`: their addresses,
   * in the order of the sheets.
   */
  alike(address: string): Promise<readonly string[]>;
  /**
   * Calls back after a change to any cell, whoever made it, and resolves to what stops the calls. Excel may miss a
   * change, so a caller reads everything again at each call and never trusts the calls to be complete.
   */
  onChanged(changed: () => void): Promise<() => Promise<void>>;
  /** Tells at once and at each change what the host is at; answers what stops it. Left out by a host that has nothing to tell. */
  follow?(told: (state: HostState) => void): () => void;
  /** Whether the pane opens by itself with this workbook; left out by a host that has nothing to open. */
  readonly opensWith?: OpensWith;
}

/** The choice that the pane opens by itself with a workbook: kept in that, and off unless somebody chose it. */
export type OpensWith = {
  readonly isOn: () => boolean;
  /** @throws HostError where the workbook does not take it; then it is as it was */
  readonly choose: (isOn: boolean) => Promise<void>;
};

/** Rows for a table, cells by its own headings; `table` says what it is to be where it is not there. */
export type TableRows = { readonly table: InputTable; readonly rows: readonly ReadonlyMap<string, Cell>[] };

/** What a host tells of itself. */
export type HostState = {
  /** Why it is not known yet whether the last command was written; `null` where it is. */
  readonly waiting: string | null;
  /** That something was written after all of which the user was told that it is not there; `null` where there is nothing of the kind. */
  readonly late: string | null;
  /** The last entry of the pane, where the host's own Undo may not take it back. */
  readonly lastEntry: LastEntry | null;
};

/** An entry that can be taken back, as long as the cells say what was entered. */
export type LastEntry = { readonly words: string; readonly takeBack: () => Promise<void> };

/**
 * A new value for one cell of a table. `row` counts the body rows from 1, hidden ones too. `says` is what the row said, by heading,
 * when it was read: one that says something else by now, because the table was sorted or edited, is refused.
 */
export type CellChange = {
  readonly table: string;
  readonly row: number;
  readonly column: string;
  readonly value: Cell;
  readonly says?: ReadonlyMap<string, Cell>;
};

/** A column that a table is to have. `cells` are values by body row, counted from 1, hidden ones too; the other rows stay blank. */
export type NewColumn = {
  readonly table: string;
  readonly heading: string;
  readonly numberFormat?: string;
  readonly cells: ReadonlyMap<number, Cell>;
};

/** What is in the workbook of a command that failed. */
export type Written = "no" | "partly" | "unknown";

/**
 * What a host could not do, in words for the user. `busy`: the host did not answer in time or is editing a cell, and
 * trying again may work. `protected`: a sheet or workbook is locked. `formula`: a formula stands where a value was to go.
 * `moved`: a row says something else than when it was read. `taken`: a name stands for something else already.
 * `unsupported`: this Excel is too old for it.
 */
export class HostError extends Error {
  override readonly name = "HostError";
  readonly written: Written;
  constructor(
    readonly reason: "busy" | "protected" | "missing" | "formula" | "moved" | "taken" | "unsupported" | "failed",
    message: string,
    options: ErrorOptions & { readonly written?: Written } = {},
  ) {
    super(message, options);
    this.written = options.written ?? "no";
  }
}
