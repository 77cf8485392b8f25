import type { FormulaPlace } from "./tableReference";
import type { SheetArea } from "./understood";

/** A cell as one number, which a map finds sooner than a text. */
export const cellKey = ({ sheet, row, column }: FormulaPlace): number => (sheet * mostRows + row) * mostColumns + column;
const [mostRows, mostColumns] = [2 ** 20, 2 ** 14];

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

  addArea({ sheet, area }: SheetArea): void {
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) this.add({ sheet, row, column });
    }
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
