import { isArithmetic } from "./arithmetic";
import { CellMap, cellsIn, CellSet } from "./cellSet";
import { cellsRead } from "./cellsRead";
import type { Engine, EngineAnswer } from "./engine";
import { asWorkedOut, isCellError, type CalculatedValue, type FormulaBook, type FormulaCell, type StoredValues } from "./formulaBook";
import { atOnce, readsTooMuch, stagesOf } from "./stages";
import { readersOf, staleFormulas } from "./stale";
import type { FormulaPlace } from "./tableReference";
import { understoodFormula, type KnownFormula, type UnderstoodFormula } from "./understood";

/** What a calculation found. */
export type Recalculated = {
  /** The formulas whose value is another than the book has. */
  readonly values: readonly (FormulaPlace & { readonly value: CalculatedValue })[];
  /** The formulas whose value may be old. */
  readonly stale: readonly FormulaPlace[];
  /** Those of them that could not be worked out themselves; the others only read one of these. */
  readonly unworked: readonly FormulaPlace[];
  /** Formulas for which the file as opened had one value and the engine another, with the one that does not count. */
  readonly differing: readonly (FormulaPlace & { readonly notCounted: CalculatedValue })[];
};

/** What the file's own values say of the engine, and the engine of them. */
type Trust = {
  /**
   * Formulas that the engine gets wrong, by place and formula, and by formula alone for those elsewhere, such as in new rows of
   * the table.
   */
  readonly wrong: ReadonlySet<string>;
  /** Formulas that keep a value which says nothing. */
  readonly doubtful: ReadonlySet<string>;
  readonly differing: ReadonlyMap<
    string,
    { readonly file: CalculatedValue; readonly worked: CalculatedValue; readonly counts: "file" | "worked" }
  >;
};

/**
 * As long as a formula that the engine has wrong spoils others, they are worked out again without it; after that they all count
 * as wrong.
 */
const mostRounds = 6;
/** An engine that broke or fell silent so often is not asked any more. */
const mostFaults = 3;
/** Sums in another order differ by about this, as a share of the value; a wrong formula by more. */
const agreement = 1e-9;

/**
 * Recalculates a workbook as it is edited. The engine is believed where it gives, for the workbook as it was opened, the
 * values that the file itself has, where the file asks for all to be worked out, and in bare arithmetic, of which there is
 * one value only; all other formulas keep their value, which is told, and are called stale once something that they read
 * has changed, and from the start where the file's value says nothing. Without an engine that goes for all of them.
 */
export class Recalculation {
  /** What was understood last of the formula of each cell. */
  private readonly understood = new CellMap<{ readonly formula: string; readonly understood: UnderstoodFormula }>();
  private surroundings = "";
  private readonly known = new WeakMap<FormulaBook, KnownFormula[]>();
  private trust: Promise<Trust> | null = null;
  private readonly old: CellSet;
  private faults = 0;
  private chainAtOnce: number = atOnce.first;
  /** What went wrong in the engine itself when it was asked last; null while nothing has. */
  fault: Error | null = null;

  /** @param opened the workbook as its file has it */
  constructor(
    private readonly opened: FormulaBook,
    private readonly engine: Engine | null,
    private readonly stored: StoredValues = asWorkedOut,
  ) {
    this.old = new CellSet(stored.old);
  }

  /** Whether there is an engine to ask: one that went wrong may be replaced, and is asked again, but not for ever. */
  get canWork(): boolean {
    return this.engine !== null && this.faults < mostFaults;
  }

  /**
   * The workbook's formulas anew.
   * @param changed cells whose value or formula is not what it was in `opened`; results of formulas need not be named
   */
  async of(book: FormulaBook, changed: readonly FormulaPlace[]): Promise<Recalculated> {
    if (this.engine === null || !this.canWork) return this.withoutEngine(book, changed);
    try {
      const found = await this.worked(this.engine, book, this.know(book), changed);
      this.fault = null;
      return found;
    } catch (fault) {
      // It may have been a chain of formulas too long for it; with fewer at once it may be able.
      if (this.chainAtOnce === atOnce.first && book.formulas.length > atOnce.afterBreakdown) {
        this.chainAtOnce = atOnce.afterBreakdown;
        this.trust = null;
        return this.of(book, changed);
      }
      // Everything that it would have told is called stale instead.
      this.faults += 1;
      this.trust = null;
      this.fault = fault instanceof Error ? fault : new Error(String(fault));
      return this.withoutEngine(book, changed);
    }
  }

  /** What may be old where nothing can be worked out: all that reads a changed cell. */
  withoutEngine(book: FormulaBook, changed: readonly FormulaPlace[]): Recalculated {
    const { areToBeWorkedOut } = this.stored;
    const { roots, all } = staleFormulas(
      this.know(book),
      changed,
      () => true,
      ({ cell }) => areToBeWorkedOut || this.old.has(cell),
    );
    return { values: [], stale: cellsOf(all), unworked: cellsOf(roots), differing: [] };
  }

  private async worked(
    engine: Engine,
    book: FormulaBook,
    known: readonly KnownFormula[],
    changed: readonly FormulaPlace[],
  ): Promise<Recalculated> {
    if (known.length === 0) return { values: [], stale: [], unworked: [], differing: [] };
    this.trust ??= this.findTrust(engine);
    const trust = await this.trust;
    const isHeld = ({ cell }: KnownFormula) => trust.wrong.has(keyOf(cell)) || trust.wrong.has(cell.formula);
    const answers = await this.ask(engine, book, known, isHeld);

    const values: Recalculated["values"][number][] = [];
    const unanswered = new Set<KnownFormula>();
    known.forEach((formula, index) => {
      const answer = answers[index] ?? null;
      const { sheet, row, column, value } = formula.cell;
      if (answer === null) unanswered.add(formula);
      else if (value === null || !isSame(answer, value, 1e-14)) values.push({ sheet, row, column, value: answer });
    });
    const moved = this.differentFromOpened(known, answers);
    const isDoubtful = ({ cell }: KnownFormula) => this.stored.areToBeWorkedOut || trust.doubtful.has(keyOf(cell));
    const { roots, all } = staleFormulas(known, [...changed, ...moved], (formula) => unanswered.has(formula), isDoubtful);
    const stale = cellsOf(all);
    const unworked = roots.length === all.length ? stale : cellsOf(roots);
    return { values, stale, unworked, differing: differingNow(known, answers, trust, new Set(all)) };
  }

  /** Sets the file's values beside the engine's, for the workbook as it was opened. */
  private async findTrust(engine: Engine): Promise<Trust> {
    const { opened, stored } = this;
    // The file says nothing of any value, so that none can be set beside the engine's.
    if (stored.areToBeWorkedOut && stored.old.length === 0) return { wrong: new Set(), doubtful: new Set(), differing: new Map() };
    const known = this.know(opened);
    const wrong = new Set(known.filter(({ cell }) => this.old.has(cell)));
    const doubtful = new Set(wrong);
    const right = new Set<KnownFormula>();
    // A program that writes formulas without working them out stores 0 for each.
    let storesZeros = false;
    const differing = new Map<string, { file: CalculatedValue; worked: CalculatedValue; counts: "file" | "worked" }>();
    for (let round = 0; round < mostRounds && !stored.areToBeWorkedOut; round += 1) {
      const answers = await this.ask(engine, opened, known, (formula) => wrong.has(formula));
      const answerOf = new Map(known.map((formula, index) => [formula, answers[index] ?? null]));
      const found = known.filter(({ cell, understood }, index) => {
        const answer = answers[index] ?? null;
        return answer !== null && cell.value !== null && !understood.isVolatile && !isSame(answer, cell.value, agreement);
      });
      // What rests on the day, on chance or on what the file has not worked out is another value than in the file, and right.
      const changing = new Set(readersOf(known, placesOf(known.filter((formula) => formula.understood.isVolatile || right.has(formula)))));
      const real = found.filter((formula) => !changing.has(formula) && !right.has(formula));
      if (real.length === 0) break;
      // Those that read no other wrong one are wrong themselves; the rest may only have been led astray.
      const led = new Set(readersOf(known, placesOf(real)));
      const roots = round === mostRounds - 1 ? real : real.filter((formula) => !led.has(formula));
      const asked = roots.length === 0 ? real : roots;
      const certain = new Set(
        stored.areRounded ? [] : asked.filter((formula) => !isCellError(answerOf.get(formula)!) && isArithmetic(formula, opened)),
      );
      storesZeros ||= [...certain].some(({ cell }) => cell.value === 0);
      for (const formula of asked) {
        const [file, worked] = [formula.cell.value!, answerOf.get(formula)!];
        const isRight = certain.has(formula) || (storesZeros && file === 0);
        (isRight ? right : wrong).add(formula);
        if (file !== 0) differing.set(keyOf(formula.cell), { file, worked, counts: isRight ? "worked" : "file" });
        // Of a 0 where something else comes out nobody can say that it may well be right.
        else if (!isRight) doubtful.add(formula);
      }
    }
    if (storesZeros) for (const formula of known) if (formula.cell.value === 0 && !right.has(formula)) doubtful.add(formula);
    return {
      wrong: new Set(
        [...wrong].flatMap((formula) => (this.old.has(formula.cell) ? [keyOf(formula.cell)] : [keyOf(formula.cell), formula.cell.formula])),
      ),
      doubtful: new Set([...doubtful].map(({ cell }) => keyOf(cell))),
      differing,
    };
  }

  /**
   * What the engine answers, in the order of `known`. Formulas that it has no answer for, and those that are held, take
   * part with the value they have; what reads one that has none has no answer either.
   */
  private async ask(
    engine: Engine,
    book: FormulaBook,
    known: readonly KnownFormula[],
    isHeld: (formula: KnownFormula) => boolean,
  ): Promise<EngineAnswer> {
    const isTooMuch = readsTooMuch(book, known);
    const held = new Set(
      known.filter(
        (formula) => formula.understood.engineFormula === null || formula.cell.fills !== undefined || isHeld(formula) || isTooMuch(formula),
      ),
    );
    for (let round = 0; ; round += 1) {
      const blank = [...held].filter(({ cell }) => cell.value === null);
      const lost = new Set(readersOf(known, placesOf(blank)));
      const asked = known.filter((formula) => !held.has(formula) && !lost.has(formula));
      const answers = await askOnce(engine, book, asked, this.chainAtOnce);
      // What lies too deep is in no stage, nor is anything that reads it: asking again would not help.
      const silent = asked.filter((formula) => answers.get(formula) === null);
      if (silent.length === 0 || round === mostRounds) return known.map((formula) => answers.get(formula) ?? null);
      const led = new Set(readersOf(known, placesOf(silent)));
      const roots = silent.filter((formula) => !led.has(formula));
      for (const formula of roots.length === 0 ? silent : roots) held.add(formula);
    }
  }

  /** Formulas whose value is not what it was when the workbook was opened. */
  private differentFromOpened(known: readonly KnownFormula[], answers: EngineAnswer): FormulaPlace[] {
    return placesOf(
      known.filter(({ cell }, index) => {
        const now = answers[index] ?? cell.value;
        if (now === null) return false;
        const then = cell.sheet < this.opened.sheets.length ? this.opened.valueAt(cell) : "";
        return !isSame(now, then, agreement);
      }),
    );
  }

  private know(book: FormulaBook): KnownFormula[] {
    const before = this.known.get(book);
    if (before !== undefined) return before;
    const surroundings = JSON.stringify([book.sheets, book.tables, book.names]);
    if (surroundings !== this.surroundings) this.understood.clear();
    this.surroundings = surroundings;
    const known = book.formulas.map((cell) => {
      const before = this.understood.get(cell);
      if (before?.formula === cell.formula) return { cell, understood: before.understood };
      const understood = understoodFormula(cell.formula, cell, book);
      this.understood.set(cell, { formula: cell.formula, understood });
      return { cell, understood };
    });
    this.known.set(book, known);
    return known;
  }
}

/** Of the formulas that differed at first, those that still have the value that was found then and are not told as stale. */
function differingNow(
  known: readonly KnownFormula[],
  answers: EngineAnswer,
  { differing }: Trust,
  stale: ReadonlySet<KnownFormula>,
): Recalculated["differing"] {
  if (differing.size === 0) return [];
  return known.flatMap((formula, index) => {
    const { cell } = formula;
    const found = differing.get(keyOf(cell));
    if (found === undefined || stale.has(formula)) return [];
    const [counted, notCounted] = found.counts === "file" ? [found.file, found.worked] : [found.worked, found.file];
    const now = answers[index] ?? cell.value;
    return now !== null && isSame(now, counted, agreement) ? [{ sheet: cell.sheet, row: cell.row, column: cell.column, notCounted }] : [];
  });
}

const placesOf = (formulas: readonly KnownFormula[]): FormulaCell[] => formulas.map(({ cell }) => cell);

/** Asks stage by stage, each with what the stages before it came to. */
async function askOnce(
  engine: Engine,
  book: FormulaBook,
  asked: readonly KnownFormula[],
  chainAtOnce: number,
): Promise<ReadonlyMap<KnownFormula, CalculatedValue | null>> {
  const answered = new Map<KnownFormula, CalculatedValue | null>();
  if (asked.length === 0) return answered;
  const before = new CellMap<CalculatedValue | null>();
  const stages = stagesOf(asked, chainAtOnce);
  for (const stage of stages) {
    const isAsked = new CellSet(placesOf(stage));
    const constants = cellsRead(
      book,
      stage.flatMap(({ understood }) => understood.reads),
    ).flatMap((place) => {
      if (isAsked.has(place)) return [];
      const value = before.get(place) ?? book.valueAt(place);
      return value === "" ? [] : [{ ...place, value }];
    });
    const formulas = stage.map(({ cell: { sheet, row, column }, understood }) => ({
      sheet,
      row,
      column,
      formula: understood.engineFormula!,
    }));
    const answers = await engine({ sheets: book.sheets, constants, formulas });
    for (const [index, formula] of stage.entries()) {
      const answer = answers[index] ?? null;
      answered.set(formula, answer);
      if (stages.length > 1) before.set(formula.cell, answer);
    }
  }
  return answered;
}

/** The cells of formulas, those included that an array formula fills. */
function cellsOf(formulas: readonly KnownFormula[]): FormulaPlace[] {
  const cells: FormulaPlace[] = [];
  for (const { sheet, row, column, fills } of placesOf(formulas)) {
    if (fills === undefined) cells.push({ sheet, row, column });
    else for (const cell of cellsIn(sheet, fills)) cells.push(cell);
  }
  return cells;
}

const keyOf = ({ sheet, row, column, formula }: FormulaCell): string => `${sheet}/${row}/${column}/${formula}`;

/** Whether two values are the same, numbers up to a share of the larger. */
function isSame(one: CalculatedValue, other: CalculatedValue, share: number): boolean {
  if (typeof one === "number" && typeof other === "number")
    return Math.abs(one - other) <= share * Math.max(1, Math.abs(one), Math.abs(other));
  if (isCellError(one) || isCellError(other)) return isCellError(one) && isCellError(other) && one.error === other.error;
  return one === other;
}
