import { cellKey, CellSet } from "./cellSet";
import type { FormulaCell } from "./formulaBook";
import type { FormulaPlace } from "./tableReference";
import type { KnownFormula } from "./understood";

/**
 * The formulas whose value may be old: those for which nothing could be worked out (`isHeld`) and that read something
 * that has changed, that have changed themselves, or that never had a value or one that says nothing (`isDoubtful`). They
 * come first; all that read one of these are stale with them.
 */
export function staleFormulas(
  known: readonly KnownFormula[],
  changed: readonly FormulaPlace[],
  isHeld: (formula: KnownFormula) => boolean,
  isDoubtful: (formula: KnownFormula) => boolean = () => false,
): { readonly roots: readonly KnownFormula[]; readonly all: readonly KnownFormula[] } {
  const moved = new CellSet(changed);
  const first = known.filter(
    (formula) =>
      isHeld(formula) && (formula.cell.value === null || isDoubtful(formula) || moved.has(formula.cell) || reads(formula, moved)),
  );
  return { roots: first, all: [...first, ...readersOf(known, placesOf(first), new Set(first))] };
}

const placesOf = (formulas: readonly KnownFormula[]): readonly FormulaCell[] => formulas.map(({ cell }) => cell);

/**
 * The formulas that read one of these cells, directly or through other formulas; a cell that is a formula itself only if it is read so.
 *
 * @param without formulas that are not looked for, whose cells are among these
 */
export function readersOf(
  known: readonly KnownFormula[],
  cells: readonly (FormulaPlace | FormulaCell)[],
  without: ReadonlySet<KnownFormula> = new Set(),
): KnownFormula[] {
  if (cells.length === 0 || without.size === known.length) return [];
  const spread = new CellSet([]);
  for (const cell of cells) add(spread, cell);
  const readers = readersByCell(known);
  const found = new Set<KnownFormula>(without);
  let fresh: KnownFormula[] = [];
  const take = (formula: KnownFormula) => {
    if (found.has(formula)) return;
    found.add(formula);
    add(spread, formula.cell);
    fresh.push(formula);
  };
  // Formulas mostly read cells above them, so one pass goes far; where they read cells below, the next pass goes on.
  for (let before = -1; before < found.size;) {
    before = found.size;
    for (const formula of known) if (!found.has(formula) && reads(formula, spread)) take(formula);
    // Chains of single cells are followed at once, in whatever order they stand: a pass for each link would never end.
    while (fresh.length > 0) {
      const last = fresh;
      fresh = [];
      for (const { cell } of last) for (const formula of readers.get(cellKey(cell)) ?? []) take(formula);
    }
  }
  return known.filter((formula) => found.has(formula) && !without.has(formula));
}

const readersKnown = new WeakMap<readonly KnownFormula[], ReadonlyMap<number, readonly KnownFormula[]>>();

/** Which formulas read a single cell as such, worked out once for a list of formulas. */
function readersByCell(known: readonly KnownFormula[]): ReadonlyMap<number, readonly KnownFormula[]> {
  const before = readersKnown.get(known);
  if (before !== undefined) return before;
  const readers = new Map<number, KnownFormula[]>();
  readersKnown.set(known, readers);
  for (const formula of known) {
    for (const {
      sheet,
      area: { top, bottom, left, right },
    } of formula.understood.reads) {
      if (top !== bottom || left !== right) continue;
      const at = cellKey({ sheet, row: top, column: left });
      const there = readers.get(at);
      if (there === undefined) readers.set(at, [formula]);
      else there.push(formula);
    }
  }
  return readers;
}

function add(cells: CellSet, cell: FormulaPlace | FormulaCell): void {
  cells.add(cell);
  if ("fills" in cell && cell.fills !== undefined) cells.addArea({ sheet: cell.sheet, area: cell.fills });
}

const reads = ({ understood: { reads: areas, readsAnything } }: KnownFormula, cells: CellSet): boolean =>
  cells.size > 0 && (readsAnything || areas.some((area) => cells.meets(area)));
