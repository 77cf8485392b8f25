import type { FormulaPlace } from "./tableReference";
import type { SheetArea } from "./understood";

/** Cells of several sheets, to be asked whether an area holds one of them. */
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
    let rows = this.sheets.get(sheet);
    if (rows === undefined) this.sheets.set(sheet, (rows = new Map<number, Set<number>>()));
    let columns = rows.get(row);
    if (columns === undefined) rows.set(row, (columns = new Set<number>()));
    columns.add(column);
  }

  addArea({ sheet, area }: SheetArea): void {
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) this.add({ sheet, row, column });
    }
  }

  has({ sheet, row, column }: FormulaPlace): boolean {
    return this.sheets.get(sheet)?.get(row)?.has(column) ?? false;
  }

  /** Whether a cell lies in the area. Goes through the rows of the area or of the set, whichever are fewer. */
  meets({ sheet, area: { top, bottom, left, right } }: SheetArea): boolean {
    const rows = this.sheets.get(sheet);
    if (rows === undefined) return false;
    const meetsRow = (columns: ReadonlySet<number>) => [...columns].some((column) => column >= left && column <= right);
    if (bottom - top > rows.size) {
      for (const [row, columns] of rows) if (row >= top && row <= bottom && meetsRow(columns)) return true;
      return false;
    }
    for (let row = top; row <= bottom; row += 1) {
      const columns = rows.get(row);
      if (columns !== undefined && meetsRow(columns)) return true;
    }
    return false;
  }
}
