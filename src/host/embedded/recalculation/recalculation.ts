import { CellSet } from "./cellSet";
import { cellsRead } from "./cellsRead";
import type { Engine, EngineAnswer } from "./engine";
import { isCellError, type CalculatedValue, type FormulaBook, type FormulaCell } from "./formulaBook";
import { readersOf, staleFormulas } from "./stale";
import type { FormulaPlace } from "./tableReference";
import { understoodFormula, type KnownFormula, type UnderstoodFormula } from "./understood";

/** What a calculation found: the formulas whose value is another than the book has, and those whose value may be old. */
export type Recalculated = {
  readonly values: readonly (FormulaPlace & { readonly value: CalculatedValue })[];
  readonly stale: readonly FormulaPlace[];
};

/** As long as a formula that the engine has wrong spoils others, they are worked out again without it; after that they all count as wrong. */
const mostRounds = 6;
/** Sums in another order differ by about this, as a share of the value; a wrong formula by more. */
const agreement = 1e-9;

/**
 * Recalculates a workbook as it is edited. The engine is believed only where it gives, for the workbook as it was opened,
 * the values that the file itself has; all other formulas keep their value and are called stale once something that they
 * read has changed. Without an engine that goes for all of them.
 */
export class Recalculation {
  private readonly understood = new Map<string, UnderstoodFormula>();
  private surroundings = "";
  private distrusted: Promise<ReadonlySet<string>> | null = null;
  /** What went wrong in the engine itself, after which it is not asked any more; null while nothing has. */
  fault: Error | null = null;

  /** @param opened the workbook as its file has it */
  constructor(private readonly opened: FormulaBook, private readonly engine: Engine | null) {}

  /** Whether there is an engine to ask. */
  get canWork(): boolean {
    return this.engine !== null && this.fault === null;
  }

  /**
   * The workbook's formulas anew.
   * @param changed cells whose value or formula is not what it was in `opened`; results of formulas need not be named
   */
  async of(book: FormulaBook, changed: readonly FormulaPlace[]): Promise<Recalculated> {
    if (this.engine === null || this.fault !== null) return this.withoutEngine(book, changed);
    try {
      return await this.worked(this.engine, book, this.know(book), changed);
    } catch (fault) {
      // An engine that broke once cannot be relied on; everything it would have told is called stale instead.
      this.fault = fault instanceof Error ? fault : new Error(String(fault));
      return this.withoutEngine(book, changed);
    }
  }

  /** What may be old where nothing can be worked out: all that reads a changed cell. */
  withoutEngine(book: FormulaBook, changed: readonly FormulaPlace[]): Recalculated {
    return { values: [], stale: cellsOf(staleFormulas(this.know(book), changed, () => true)) };
  }

  private async worked(engine: Engine, book: FormulaBook, known: readonly KnownFormula[], changed: readonly FormulaPlace[]): Promise<Recalculated> {
    if (known.length === 0) return { values: [], stale: [] };
    this.distrusted ??= this.findDistrusted(engine);
    const distrusted = await this.distrusted;
    const isHeld = ({ cell }: KnownFormula) => distrusted.has(keyOf(cell)) || distrusted.has(cell.formula);
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
    return { values, stale: cellsOf(staleFormulas(known, [...changed, ...moved], (formula) => unanswered.has(formula))) };
  }

  /** Formulas that the engine gets wrong, by place and formula; and formulas of the same words elsewhere, such as in new rows of the table. */
  private async findDistrusted(engine: Engine): Promise<ReadonlySet<string>> {
    const { opened } = this;
    const known = this.know(opened);
    const wrong = new Set<KnownFormula>();
    for (let round = 0; round < mostRounds; round += 1) {
      const answers = await this.ask(engine, opened, known, (formula) => wrong.has(formula));
      const found = known.filter(({ cell, understood }, index) => {
        const answer = answers[index] ?? null;
        return answer !== null && cell.value !== null && !understood.isVolatile && !isSame(answer, cell.value, agreement);
      });
      // What rests on the day or on chance is another value than in the file, and right.
      const changing = new Set(readersOf(known, placesOf(known.filter(({ understood }) => understood.isVolatile))));
      const real = found.filter((formula) => !changing.has(formula));
      if (real.length === 0) break;
      // Those that read no other wrong one are wrong themselves; the rest may only have been led astray.
      const led = new Set(readersOf(known, placesOf(real)));
      const roots = round === mostRounds - 1 ? real : real.filter((formula) => !led.has(formula));
      for (const formula of roots.length === 0 ? real : roots) wrong.add(formula);
    }
    return new Set([...wrong].flatMap(({ cell }) => [keyOf(cell), cell.formula]));
  }

  /**
   * What the engine answers, in the order of `known`. Formulas that it has no answer for, and those that are held, take
   * part with the value they have; what reads one that has none has no answer either.
   */
  private async ask(engine: Engine, book: FormulaBook, known: readonly KnownFormula[], isHeld: (formula: KnownFormula) => boolean): Promise<EngineAnswer> {
    const held = new Set(known.filter((formula) => formula.understood.engineFormula === null || formula.cell.fills !== undefined || isHeld(formula)));
    for (let round = 0; ; round += 1) {
      const blank = [...held].filter(({ cell }) => cell.value === null);
      const lost = new Set(readersOf(known, placesOf(blank)));
      const asked = known.filter((formula) => !held.has(formula) && !lost.has(formula));
      const answers = await askOnce(engine, book, asked);
      const silent = asked.filter((formula) => (answers.get(formula) ?? null) === null);
      if (silent.length === 0 || round === mostRounds) return known.map((formula) => answers.get(formula) ?? null);
      const led = new Set(readersOf(known, placesOf(silent)));
      const roots = silent.filter((formula) => !led.has(formula));
      for (const formula of roots.length === 0 ? silent : roots) held.add(formula);
    }
  }

  /** Formulas whose value is not what it was when the workbook was opened. */
  private differentFromOpened(known: readonly KnownFormula[], answers: EngineAnswer): FormulaPlace[] {
    return known.flatMap(({ cell }, index) => {
      const now = answers[index] ?? cell.value;
      const then = cell.sheet < this.opened.sheets.length ? this.opened.valueAt(cell) : "";
      return now !== null && !isSame(now, then, agreement) ? [cell] : [];
    });
  }

  private know(book: FormulaBook): KnownFormula[] {
    const surroundings = JSON.stringify([book.sheets, book.tables, book.names]);
    if (surroundings !== this.surroundings) this.understood.clear();
    this.surroundings = surroundings;
    return book.formulas.map((cell) => {
      const key = keyOf(cell);
      let understood = this.understood.get(key);
      if (understood === undefined) this.understood.set(key, (understood = understoodFormula(cell.formula, cell, book)));
      return { cell, understood };
    });
  }
}

const placesOf = (formulas: readonly KnownFormula[]): FormulaCell[] => formulas.map(({ cell }) => cell);

async function askOnce(engine: Engine, book: FormulaBook, asked: readonly KnownFormula[]): Promise<ReadonlyMap<KnownFormula, CalculatedValue | null>> {
  if (asked.length === 0) return new Map();
  const isAsked = new CellSet(placesOf(asked));
  const constants = cellsRead(book, asked.flatMap(({ understood }) => understood.reads)).flatMap((place) => {
    if (isAsked.has(place)) return [];
    const value = book.valueAt(place);
    return value === "" ? [] : [{ ...place, value }];
  });
  const formulas = asked.map(({ cell: { sheet, row, column }, understood }) => ({ sheet, row, column, formula: understood.engineFormula! }));
  const answers = await engine({ sheets: book.sheets, constants, formulas });
  return new Map(asked.map((formula, index) => [formula, answers[index] ?? null]));
}

/** The cells of formulas, those included that an array formula fills. */
const cellsOf = (formulas: readonly KnownFormula[]): FormulaPlace[] => formulas.flatMap(({ cell: { sheet, row, column, fills } }): FormulaPlace[] => {
  if (fills === undefined) return [{ sheet, row, column }];
  const width = fills.right - fills.left + 1;
  return Array.from({ length: width * (fills.bottom - fills.top + 1) }, (_, index) =>
    ({ sheet, row: fills.top + Math.floor(index / width), column: fills.left + (index % width) }));
});

const placeKey = ({ sheet, row, column }: FormulaPlace): string => `${sheet}/${row}/${column}`;
const keyOf = (cell: FormulaCell): string => `${placeKey(cell)}/${cell.formula}`;

/** Whether two values are the same, numbers up to a share of the larger. */
function isSame(one: CalculatedValue, other: CalculatedValue, share: number): boolean {
  if (typeof one === "number" && typeof other === "number") return Math.abs(one - other) <= share * Math.max(1, Math.abs(one), Math.abs(other));
  if (isCellError(one) || isCellError(other)) return isCellError(one) && isCellError(other) && one.error === other.error;
  return one === other;
}
