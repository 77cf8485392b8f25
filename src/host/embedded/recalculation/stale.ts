import { CellSet } from "./cellSet";
import type { FormulaCell } from "./formulaBook";
import type { FormulaPlace } from "./tableReference";
import type { KnownFormula } from "./understood";

/**
 * The formulas whose value may be old: those for which nothing could be worked out (`isHeld`) and that read something
 * that has changed, that have changed themselves, or that never had a value or one that says nothing (`isDoubtful`). They
 * come first; all that read one of these are stale with them.
 */
export function staleFormulas(
  known: readonly KnownFormula[], changed: readonly FormulaPlace[], isHeld: (formula: KnownFormula) => boolean, isDoubtful: (formula: KnownFormula) => boolean = () => false,
): { readonly roots: readonly KnownFormula[]; readonly all: readonly KnownFormula[] } {
  const moved = new CellSet(changed);
  const first = known.filter((formula) => isHeld(formula)
    && (formula.cell.value === null || isDoubtful(formula) || moved.has(formula.cell) || reads(formula, moved)));
  return { roots: first, all: [...new Set([...first, ...readersOf(known, first.map(({ cell }) => cell))])] };
}

/** The formulas that read one of these cells, directly or through other formulas; a cell that is a formula itself only if it is read so. */
export function readersOf(known: readonly KnownFormula[], cells: readonly (FormulaPlace | FormulaCell)[]): KnownFormula[] {
  const spread = new CellSet([]);
  for (const cell of cells) add(spread, cell);
  const found = new Set<KnownFormula>();
  // Formulas mostly read cells above them, so one pass goes far; where they read cells below, the next pass goes on.
  for (let before = -1; before < found.size && spread.size > 0;) {
    before = found.size;
    for (const formula of known) {
      if (found.has(formula) || !reads(formula, spread)) continue;
      found.add(formula);
      add(spread, formula.cell);
    }
  }
  return [...found];
}

function add(cells: CellSet, cell: FormulaPlace | FormulaCell): void {
  cells.add(cell);
  if ("fills" in cell && cell.fills !== undefined) cells.addArea({ sheet: cell.sheet, area: cell.fills });
}

const reads = ({ understood: { reads: areas, readsAnything } }: KnownFormula, cells: CellSet): boolean =>
  cells.size > 0 && (readsAnything || areas.some((area) => cells.meets(area)));
