import type { Block } from "../../address";
import { CellMap, cellsIn, CellSet } from "./cellSet";
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
  const { byCell, ofAreas } = readersIn(known);
  const found = new Set<KnownFormula>(without);
  const spread = new CellSet([]);
  const open: FormulaPlace[] = [];
  const reach = (cell: FormulaPlace | FormulaCell) => {
    for (const at of "fills" in cell && cell.fills !== undefined ? [cell, ...cellsIn(cell.sheet, cell.fills)] : [cell]) {
      open.push(at);
      if (ofAreas.length > 0) spread.add(at);
    }
  };
  const take = (formula: KnownFormula) => {
    if (found.has(formula)) return;
    found.add(formula);
    reach(formula.cell);
  };
  for (const cell of cells) reach(cell);
  while (open.length > 0) {
    // Chains of single cells are followed at once, in whatever order they stand: a pass for each link would never end.
    for (let at = open.pop(); at !== undefined; at = open.pop()) for (const formula of byCell.get(at) ?? []) take(formula);
    // Formulas mostly read areas above them, so one pass goes far; where they read cells below, the next pass goes on.
    for (const formula of ofAreas) if (!found.has(formula) && reads(formula, spread)) take(formula);
  }
  return known.filter((formula) => found.has(formula) && !without.has(formula));
}

type Readers = {
  /** Which formulas read a single cell as such. */
  readonly byCell: CellMap<KnownFormula[]>;
  /** Those that read areas, or anything. */
  readonly ofAreas: readonly KnownFormula[];
};
const readersKnown = new WeakMap<readonly KnownFormula[], Readers>();

/** Who reads what, worked out once for a list of formulas. */
function readersIn(known: readonly KnownFormula[]): Readers {
  const before = readersKnown.get(known);
  if (before !== undefined) return before;
  const byCell = new CellMap<KnownFormula[]>();
  const ofAreas: KnownFormula[] = [];
  for (const formula of known) {
    const { reads: areas, readsAnything } = formula.understood;
    if (readsAnything || areas.some(({ area }) => !isOneCell(area))) ofAreas.push(formula);
    for (const { sheet, area } of areas) {
      if (!isOneCell(area)) continue;
      const at = { sheet, row: area.top, column: area.left };
      const there = byCell.get(at);
      if (there === undefined) byCell.set(at, [formula]);
      else there.push(formula);
    }
  }
  const readers = { byCell, ofAreas };
  readersKnown.set(known, readers);
  return readers;
}

const isOneCell = ({ top, bottom, left, right }: Block): boolean => top === bottom && left === right;

const reads = ({ understood: { reads: areas, readsAnything } }: KnownFormula, cells: CellSet): boolean =>
  cells.size > 0 && (readsAnything || areas.some((area) => cells.meets(area)));
