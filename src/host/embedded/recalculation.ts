/** What becomes of formulas after a change: worked out again, or marked as old. */
import type { Cell } from "../../workbook/cell";
import { bookOf } from "./book";
import { staleKey } from "./content";
import { dataOf, formulaIn, hasFormulas, type State } from "./state";
import type { SheetCell, SheetData, SheetRow } from "./sheetXml";

export type SheetCells = { readonly name: string; readonly cells: readonly { readonly row: number; readonly column: number; readonly value: Cell; readonly formula: string | null }[] };

/**
 * Works all formulas of a workbook out: answers a value for each formula cell, in the order given, and `null` for one
 * that it cannot do. `tables` are for structured references.
 */
export type Recalculate = (sheets: readonly SheetCells[]) => readonly (readonly (Cell | null)[])[];

/** The next state with its formulas worked out again where an engine can, and marked as old where none can. */
export function afterRecalculation(before: State, next: State, recalculate: Recalculate | null): State {
  const sheets = bookOf(next.parts).sheets.filter(({ part }) => hasFormulas(dataOf(next, part)));
  if (sheets.length === 0) return { ...next, stale: new Set() };
  if (recalculate === null) return { ...next, stale: withDependents(before, next) };
  const all = bookOf(next.parts).sheets;
  const results = recalculate(all.map(({ name, part }) => ({ name, cells: cellsOf(dataOf(next, part)) })));
  const edited = new Map(next.edited);
  const stale = new Set<string>();
  all.forEach(({ part }, index) => {
    const data = dataOf(next, part);
    const updated = withValues(data, results[index] ?? [], (row, column) => stale.add(staleKey(part, row, column)));
    if (updated !== data) edited.set(part, updated);
  });
  return { ...next, edited, stale };
}

/** Without an engine every formula may depend on the change; those of sheets that we have just written do not. */
function withDependents(before: State, next: State): ReadonlySet<string> {
  const stale = new Set(next.stale);
  for (const { part } of bookOf(next.parts).sheets) {
    const made = before.parts.get(part) !== next.parts.get(part) && !next.edited.has(part);
    for (const [row, { cells }] of made ? [] : dataOf(next, part).rows) {
      for (const { column, formula } of cells) if (formula !== undefined) stale.add(staleKey(part, row, column));
    }
  }
  return stale;
}

const cellsOf = (data: SheetData): SheetCells["cells"] => [...data.rows].flatMap(([row, { cells }]) =>
  cells.map((cell) => ({ row, column: cell.column, value: cell.value, formula: formulaIn(data, { row, column: cell.column }, cell) })));

/** The sheet with the values of its formulas as worked out; the same one where none has changed. */
function withValues(data: SheetData, values: readonly (Cell | null)[], unknown: (row: number, column: number) => void): SheetData {
  let at = 0;
  let rows: Map<number, SheetRow> | null = null;
  for (const [number, row] of data.rows) {
    let changed: SheetCell[] | null = null;
    row.cells.forEach((cell, index) => {
      if (formulaIn(data, { row: number, column: cell.column }, cell) === null) return;
      const value = values[at] ?? null;
      at += 1;
      if (value === null) unknown(number, cell.column);
      else if (value !== cell.value) {
        const { source: _, ...rest } = cell;
        changed ??= [...row.cells];
        changed[index] = { ...rest, value };
      }
    });
    if (changed !== null) {
      const { source: _, ...rest } = row;
      rows ??= new Map(data.rows);
      rows.set(number, { ...rest, cells: changed });
    }
  }
  return rows === null ? data : { ...data, rows };
}
