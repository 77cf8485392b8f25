import type { FormulaBook } from "./formulaBook";
import type { FormulaPlace } from "./tableReference";
import type { SheetArea } from "./understood";

/**
 * The cells of all areas, each once, as far as the sheets are used. Areas overlap much (running totals read `A$2:A2`,
 * `A$2:A3` …), so they are joined column by column before any cell is looked at.
 */
export function cellsRead(book: FormulaBook, areas: readonly SheetArea[]): FormulaPlace[] {
  const spans = new Map<string, { sheet: number; column: number; rows: [number, number][] }>();
  for (const { sheet, area } of areas) {
    const used = book.used(sheet);
    const bottom = Math.min(area.bottom, used.rows - 1);
    for (let column = area.left; column <= Math.min(area.right, used.columns - 1); column += 1) {
      const key = `${sheet}/${column}`;
      let span = spans.get(key);
      if (span === undefined) spans.set(key, (span = { sheet, column, rows: [] }));
      if (area.top <= bottom) span.rows.push([area.top, bottom]);
    }
  }
  const places: FormulaPlace[] = [];
  for (const { sheet, column, rows } of spans.values()) {
    let next = 0;
    for (const [top, bottom] of rows.sort(([one], [other]) => one - other)) {
      for (let row = Math.max(top, next); row <= bottom; row += 1) places.push({ sheet, row, column });
      next = Math.max(next, bottom + 1);
    }
  }
  return places;
}
