/** Formulas in stages, so that the calculation engine never has to follow a long chain of them at once. */
import type { FormulaBook } from "./formulaBook";
import type { FormulaPlace } from "./tableReference";
import type { KnownFormula } from "./understood";

/**
 * How many formulas of a chain are given to the engine at once. It follows a formula to those that it reads and on, each on top of the
 * other, and breaks down at about 700 plain ones and at less than 200 of many parts: then it is asked again with few.
 */
export const atOnce = { first: 200, afterBreakdown: 20 } as const;
/** Longer chains than a running balance of five thousand lines are not worked out to their end. */
const longestChain = 5_000;
/** Above so many reads of one formula by another only the engine itself can follow them. */
const mostReads = 2_000_000;

/** Reading so many cells, over all formulas, takes the engine a second or two. */
const mostCellsRead = 30_000_000;
/** A formula that reads no more than this is never in the way. */
const fewCells = 1_000;

/** Whether a formula reads so much, beside others that do, that nobody would wait for the engine. */
export function readsTooMuch(book: FormulaBook, formulas: readonly KnownFormula[]): (formula: KnownFormula) => boolean {
  const cellsOf = ({ understood }: KnownFormula): number =>
    understood.reads.reduce((sum, { sheet, area }) => {
      const { rows, columns } = book.used(sheet);
      const [height, width] = [Math.min(area.bottom, rows - 1) - area.top + 1, Math.min(area.right, columns - 1) - area.left + 1];
      return sum + Math.max(0, height) * Math.max(0, width);
    }, 0);
  const all = formulas.reduce((sum, formula) => sum + cellsOf(formula), 0);
  return all <= mostCellsRead ? () => false : (formula) => cellsOf(formula) > fewCells;
}

type ColumnOfFormulas = { readonly rows: number[]; readonly indices: number[] };

/**
 * The formulas, each in a stage after those that it reads, or in one with them where they are few. Formulas that lie too deep, and those
 * of a ring that is too long, are in none. Where the formulas read more than can be followed here they are one stage.
 *
 * @param depth how long a chain within one stage may be
 */
export function stagesOf(formulas: readonly KnownFormula[], depth: number): readonly (readonly KnownFormula[])[] {
  if (formulas.length <= depth) return [formulas];
  const readers = readersOfEach(formulas);
  if (readers === null) return [formulas];
  const { depths, isInRing } = depthsOf(formulas.length, readers);
  const stages: KnownFormula[][] = [];
  const ring: KnownFormula[] = [];
  formulas.forEach((formula, index) => {
    if (isInRing(index)) ring.push(formula);
    else (stages[Math.floor(depths[index]! / depth)] ??= []).push(formula);
  });
  // A ring is shown whole to the engine, which says what it is.
  return [...stages.slice(0, longestChain / depth), ...(ring.length > 0 && ring.length <= depth ? [ring] : [])];
}

/** For each formula, by its place in the list, the places of those that read it; null where there are too many to follow. */
function readersOfEach(formulas: readonly KnownFormula[]): readonly (readonly number[])[] | null {
  const columns = columnsOf(formulas.map(({ cell }) => cell));
  const readers = formulas.map((): number[] => []);
  let reads = 0;
  for (const [reader, { understood }] of formulas.entries()) {
    for (const { sheet, area } of understood.reads) {
      for (const [column, { rows, indices }] of columns.get(sheet) ?? []) {
        if (column < area.left || column > area.right) continue;
        for (let at = firstFrom(rows, area.top); at < rows.length && rows[at]! <= area.bottom; at += 1) {
          reads += 1;
          if (reads > mostReads) return null;
          readers[indices[at]!]!.push(reader);
        }
      }
    }
  }
  return readers;
}

/** Where formulas stand, by sheet and column, from top to bottom. */
function columnsOf(cells: readonly FormulaPlace[]): ReadonlyMap<number, ReadonlyMap<number, ColumnOfFormulas>> {
  const sheets = new Map<number, Map<number, ColumnOfFormulas>>();
  const inOrder = cells.map(({ row }, index) => ({ row, index })).sort((one, other) => one.row - other.row);
  for (const { row, index } of inOrder) {
    const { sheet, column } = cells[index]!;
    const columns = sheets.get(sheet) ?? new Map<number, ColumnOfFormulas>();
    sheets.set(sheet, columns);
    const there = columns.get(column) ?? { rows: [], indices: [] };
    columns.set(column, there);
    there.rows.push(row);
    there.indices.push(index);
  }
  return sheets;
}

/** The first place in ascending rows that is at or below a row. */
function firstFrom(rows: readonly number[], row: number): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]! < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** How many formulas lie in a chain below each; those of a ring, and all that read one, are never reached. */
function depthsOf(count: number, readers: readonly (readonly number[])[]) {
  const waitsFor = new Array<number>(count).fill(0);
  for (const of of readers) for (const reader of of) waitsFor[reader]! += 1;
  const depths = new Array<number>(count).fill(0);
  const ready = waitsFor.flatMap((waits, index) => (waits === 0 ? [index] : []));
  // Grows as it is gone through.
  for (const index of ready) {
    for (const reader of readers[index]!) {
      depths[reader] = Math.max(depths[reader]!, depths[index]! + 1);
      waitsFor[reader]! -= 1;
      if (waitsFor[reader] === 0) ready.push(reader);
    }
  }
  return { depths, isInRing: (index: number): boolean => waitsFor[index]! > 0 };
}
