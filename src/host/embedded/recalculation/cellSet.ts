import { lastRow, type Block } from "../../address";
import type { FormulaPlace } from "./tableReference";
import type { SheetArea } from "./understood";

/** Something for each of many cells. Found by small whole numbers: a text for each cell, or one number for all sheets, takes longer. */
export class CellMap<Value> {
  private readonly sheets = new Map<number, Map<number, Value>>();

  get({ sheet, row, column }: FormulaPlace): Value | undefined {
    return this.sheets.get(sheet)?.get(column * mostRows + row);
  }

  set({ sheet, row, column }: FormulaPlace, value: Value): void {
    let cells = this.sheets.get(sheet);
    if (cells === undefined) this.sheets.set(sheet, (cells = new Map<number, Value>()));
    cells.set(column * mostRows + row, value);
  }

  clear(): void {
    this.sheets.clear();
  }
}
const mostRows = lastRow + 1;

/** The cells of an area, row by row. */
export function cellsIn(sheet: number, { top, bottom, left, right }: Block): FormulaPlace[] {
  const cells: FormulaPlace[] = [];
  for (let row = top; row <= bottom; row += 1) for (let column = left; column <= right; column += 1) cells.push({ sheet, row, column });
  return cells;
}

/** Cells of several sheets, to be asked whether an area holds one of them. Formulas mostly stand in few columns and many rows. */
export class CellSet {
  private readonly sheets = new Map<number, Map<number, Set<number>>>();

  constructor(places: readonly FormulaPlace[]) {
    for (const place of places) this.add(place);
  }

  /** Zero if it is empty; else how many sheets have a cell in it. */
  get size(): number {
    return this.sheets.size;
  }

  add({ sheet, row, column }: FormulaPlace): void {
    let columns = this.sheets.get(sheet);
    if (columns === undefined) this.sheets.set(sheet, (columns = new Map<number, Set<number>>()));
    let rows = columns.get(column);
    if (rows === undefined) columns.set(column, (rows = new Set<number>()));
    rows.add(row);
  }

  has({ sheet, row, column }: FormulaPlace): boolean {
    return this.sheets.get(sheet)?.get(column)?.has(row) ?? false;
  }

  /** Whether a cell lies in the area. Goes through the columns, and the rows, of the area or of the set, whichever are fewer. */
  meets({ sheet, area: { top, bottom, left, right } }: SheetArea): boolean {
    const columns = this.sheets.get(sheet);
    if (columns === undefined) return false;
    const meetsColumn = (rows: ReadonlySet<number> | undefined): boolean => {
      if (rows === undefined) return false;
      if (bottom - top > rows.size) {
        for (const row of rows) if (row >= top && row <= bottom) return true;
        return false;
      }
      for (let row = top; row <= bottom; row += 1) if (rows.has(row)) return true;
      return false;
    };
    if (right - left > columns.size) {
      for (const [column, rows] of columns) if (column >= left && column <= right && meetsColumn(rows)) return true;
      return false;
    }
    for (let column = left; column <= right; column += 1) if (meetsColumn(columns.get(column))) return true;
    return false;
  }
}
