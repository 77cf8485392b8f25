/** A sheet that is laid out in blocks side by side: cells are put where they belong, and formulas point at their places. */
import { cellName, columnName } from "../../cellName";
import type { SheetCell } from "../../resultSheet";

/** Each crop takes so many columns, one for each layer. */
export const blockWidth = 4;
/** So many crops stand side by side. */
export const abreast = 3;

/** A cell by row and column, both from 0. */
export type Spot = { readonly row: number; readonly column: number };

/** `$C$5` for the formulas of the sheet. */
export const reference = ({ row, column }: Spot): string => `$${columnName(column)}$${row + 1}`;

/** `B5:E5` for charts and merges. */
export const range = (from: Spot, to: Spot): string => `${cellName(from)}:${cellName(to)}`;
export const corner = (spot: Spot): string => cellName(spot);

export class LenderPage {
  readonly merges: string[] = [];
  private readonly grid: (SheetCell | undefined)[][] = [];

  /** The row below everything put so far. */
  get next(): number {
    return this.grid.length;
  }

  /** Puts cells in a row from a spot to the right and answers the spot below the first. */
  put(spot: Spot, ...cells: readonly SheetCell[]): Spot {
    while (this.grid.length <= spot.row) this.grid.push([]);
    cells.forEach((cell, index) => {
      this.grid[spot.row]![spot.column + index] = cell;
    });
    return { row: spot.row + 1, column: spot.column };
  }

  /** Puts one cell across several columns. */
  across(spot: Spot, columns: number, cell: SheetCell): Spot {
    const filler: SheetCell = cell.style === undefined ? { value: "" } : { value: "", style: cell.style };
    if (columns > 1) this.merges.push(range(spot, { row: spot.row, column: spot.column + columns - 1 }));
    return this.put(spot, cell, ...Array.from({ length: columns - 1 }, () => filler));
  }

  /** Leaves so many rows free. */
  skip(rows: number): void {
    for (let count = 0; count < rows; count += 1) this.grid.push([]);
  }

  rows(): readonly (readonly SheetCell[])[] {
    return this.grid.map((row) => Array.from(row, (cell) => cell ?? { value: "" }));
  }
}
