/** The small workbook in memory behind the bridge: plain data, with just the operations that the object model needs. */
import type { Cell } from "../../../src/workbook/cell";
import { HostRefusal } from "./hostRefusal";

export type Looks = { numberFormat: string; bold: boolean; [other: string]: unknown };
export type CellModel = { value: Cell; formula?: string; looks: Looks };
export type ChartModel = {
  id: string;
  title: string;
  series: { name: string; values: string; categories: string }[];
  place: string;
  valuesFrom?: number;
};
export type NameModel = { name: string; formula: string; visible: boolean };
export type ValidationModel = { rule?: unknown; prompt?: unknown; errorAlert?: unknown };

/** A block of a sheet; `rows` and `columns` are counts, everything counts from 0. */
export type Block = { sheet: SheetModel; row: number; column: number; rows: number; columns: number };
/** `row` is that of the headings, also where they are switched off. */
export type TableModel = {
  id: string;
  name: string;
  sheet: SheetModel;
  row: number;
  column: number;
  bodyRows: number;
  columns: number;
  totals: boolean;
  showHeaders: boolean;
};
export type Change = { readonly sheet: SheetModel; readonly table?: TableModel };

export class SheetModel {
  readonly cells: CellModel[][] = [];
  readonly charts: ChartModel[] = [];
  readonly names: NameModel[] = [];
  readonly validations = new Map<string, ValidationModel>();
  readonly widths = new Map<number, number>();
  readonly page: Record<string, unknown> = {};
  merges: string[] = [];
  frozenRows = 0;
  locked = false;
  /** Cells that may be changed on a locked sheet, as `row,column`. */
  readonly unlocked = new Set<string>();
  visibility = "Visible";
  constructor(
    readonly id: string,
    readonly name: string,
  ) {}

  isUnlocked = (row: number, column: number): boolean => this.unlocked.has(`${row},${column}`);

  cell(row: number, column: number): CellModel | undefined {
    return this.cells[row]?.[column];
  }

  /** The cell, made if need be. */
  cellToChange(row: number, column: number): CellModel {
    const cells = (this.cells[row] ??= []);
    return (cells[column] ??= { value: "", looks: { numberFormat: "General", bold: false } });
  }
}

export class WorkbookModel {
  readonly sheets: SheetModel[] = [];
  readonly tables: TableModel[] = [];
  readonly changes: Change[] = [];
  /** Names that the whole workbook knows; those of one sheet are the sheet's. */
  readonly names: NameModel[] = [];
  /** Names of tables whose cells this Excel does not hand over, for whatever reason of its own. */
  readonly unreadable = new Set<string>();
  /** Other workbooks that were opened from here: the files, in base 64. */
  readonly opened: string[] = [];
  date1904 = false;
  structureLocked = false;
  selected: Block | null = null;
  private ids = 0;

  id = (kind: string): string => `{${kind}-${++this.ids}}`;

  sheet = (name: string): SheetModel | undefined => this.sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());

  addSheet(name: string): SheetModel {
    if (this.structureLocked) throw new HostRefusal("AccessDenied", "You cannot perform the requested operation.");
    if (name.length > 31 || /[:\\/?*[\]]/.test(name) || /^'|'$/.test(name))
      throw new HostRefusal("InvalidArgument", `The name ${name} is not allowed`);
    if (this.sheet(name)) throw new HostRefusal("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
    const sheet = new SheetModel(this.id("sheet"), name);
    this.sheets.push(sheet);
    return sheet;
  }

  removeSheet(sheet: SheetModel): void {
    if (this.structureLocked) throw new HostRefusal("AccessDenied", "You cannot perform the requested operation.");
    if (this.sheets.filter(({ visibility }) => visibility === "Visible").length < 2)
      throw new HostRefusal("GeneralException", "A workbook must contain at least one visible worksheet.");
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    for (const table of this.tables.filter((each) => each.sheet === sheet)) this.tables.splice(this.tables.indexOf(table), 1);
  }

  /** Changes what a cell holds; refuses a locked cell of a locked sheet. */
  put({ sheet }: { sheet: SheetModel }, row: number, column: number, value: Cell, formula?: string): void {
    if (sheet.locked && sheet.isUnlocked(row, column)) this.note({ sheet });
    else this.touch(sheet);
    const cell = sheet.cellToChange(row, column);
    cell.value = value;
    if (formula === undefined) delete cell.formula;
    else cell.formula = formula;
  }

  /** Notes a change, for the events, and refuses it on a locked sheet. */
  touch(sheet: SheetModel, table?: TableModel): void {
    if (sheet.locked) throw new HostRefusal("AccessDenied", "You cannot perform the requested operation.");
    this.note(table ? { sheet, table } : { sheet });
  }

  private note(change: Change): void {
    if (this.changes.at(-1)?.sheet !== change.sheet) this.changes.push(change);
  }

  /** Makes room for body rows under a table, moving what is below in its columns down, and goes on with calculated columns. */
  growTable(table: TableModel, count: number): void {
    const { sheet, column, columns } = table;
    this.touch(sheet, table);
    const below = table.row + 1 + table.bodyRows;
    for (let row = sheet.cells.length - 1; row >= below; row -= 1) {
      for (let each = column; each < column + columns; each += 1) {
        const cell = sheet.cell(row, each);
        if (cell === undefined) continue;
        (sheet.cells[row + count] ??= [])[each] = cell;
        delete sheet.cells[row]?.[each];
      }
    }
    table.bodyRows += count;
    for (let each = column; each < column + columns; each += 1) {
      const above = sheet.cell(below - 1, each);
      if (above?.formula === undefined) continue;
      for (let row = below; row < below + count; row += 1) this.put(table, row, each, above.value, above.formula);
    }
  }

  /** Takes a body row out of a table and moves what is below in its columns up; the only row is left, blank, as in Excel. */
  shrinkTable(table: TableModel, index: number): void {
    const { sheet, column, columns } = table;
    this.touch(sheet, table);
    const isOnly = table.bodyRows === 1;
    for (let row = table.row + 1 + index; row < sheet.cells.length; row += 1) {
      for (let each = column; each < column + columns; each += 1) {
        const next = isOnly ? undefined : sheet.cell(row + 1, each);
        if (next === undefined) delete sheet.cells[row]?.[each];
        else (sheet.cells[row] ??= [])[each] = next;
      }
      if (isOnly) return;
    }
    table.bodyRows -= 1;
  }
}
