import { changedCells, formulaBook, hasFormulas, withResults } from "../formula/formulas";
import type { Engine } from "../recalculation/engine";
import { Recalculation, type Recalculated } from "../recalculation/recalculation";
import type { State } from "../state";
import type { StepWords } from "./stepWords";
import { storedValues } from "../sheet/storedValues";

/** A step keeps only the rows that it changed, but a step that fills a sheet keeps many. */
const mostSteps = 200;

/** A state to go back or on to, and what lies between it and its neighbour. */
type Step = { readonly state: State; readonly words: StepWords };

/**
 * The states that a workbook goes through: one step forward for each command, back and forth with undo and redo, and on each
 * of them the formulas worked out as far as they can be, which is no step of its own.
 */
export class WorkbookSteps {
  private state: State;
  private saved: State;
  private readonly opened: State;
  private readonly past: Step[] = [];
  private readonly future: Step[] = [];
  private readonly listeners = new Set<() => void>();
  private readonly recalculation: Recalculation;
  private readonly calculated = new WeakSet<State>();
  /** The state that a step made, of those that came of it when its formulas were worked out. */
  private readonly origins = new WeakMap<State, State>();
  private calculating: Promise<void> | null = null;
  private count = 0;

  constructor(opened: State, engine: Engine | null) {
    this.opened = this.state = this.saved = opened;
    this.recalculation = new Recalculation(formulaBook(opened), engine, storedValues(opened));
    // Even where nothing has changed, the file's values are set beside what its formulas work out to.
    if (hasFormulas(opened)) this.calculate();
  }

  /** The workbook as it is. */
  get now(): State {
    return this.state;
  }

  /**
   * Takes a step that puts sheets of ours in place, with the values of their formulas. Where the workbook has no formulas of
   * its own, nothing else can have moved, and the engine need not be started for what is known.
   */
  becomeWithSheets(next: State, words: StepWords): void {
    if (!hasFormulas(this.state)) this.calculated.add(next);
    this.become(next, words);
  }

  /** Takes a step, which one undo takes back. */
  become(next: State, words: StepWords): void {
    this.past.push({ state: this.state, words });
    if (this.past.length > mostSteps) this.past.shift();
    this.future.length = 0;
    this.goTo(next);
  }

  undo(): boolean {
    return this.step(this.past, this.future);
  }

  redo(): boolean {
    return this.step(this.future, this.past);
  }

  /** What the next undo takes back; `null` where there is nothing. */
  get toUndo(): StepWords | null {
    return this.past.at(-1)?.words ?? null;
  }

  get toRedo(): StepWords | null {
    return this.future.at(-1)?.words ?? null;
  }

  /** Grows with every change. */
  get version(): number {
    return this.count;
  }

  /** Whether the workbook is not as `keep` left it last, or as it was opened. */
  get isUnsaved(): boolean {
    return this.originOf(this.state) !== this.originOf(this.saved);
  }

  /** Notes that the workbook, as it is now or as it was at a moment, lies in a file. */
  keep(state: State = this.state): void {
    this.saved = state;
  }

  /**
   * The workbook as it can be put into a file at once. Where formulas are still being worked out, what may be old is marked so,
   * as if there were no engine: nobody who saves waits for one that may never answer.
   */
  get toStore(): State {
    if (this.calculated.has(this.state)) return this.state;
    return withResults(this.state, this.recalculation.withoutEngine(formulaBook(this.state), changedCells(this.opened, this.state)));
  }

  /** Calls back at once after each change; returns what stops the calls. */
  subscribe(changed: () => void): () => void {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  }

  /** Resolves when no formula is being worked out any more. */
  async settled(): Promise<void> {
    while (this.calculating !== null) await this.calculating;
  }

  /** What went wrong in the calculation engine itself; null while nothing has. */
  get engineFault(): Error | null {
    return this.recalculation.fault;
  }

  private step(from: Step[], to: Step[]): boolean {
    const next = from.pop();
    if (next === undefined) return false;
    to.push({ state: this.state, words: next.words });
    this.goTo(next.state);
    return true;
  }

  private goTo(next: State): void {
    this.state = next;
    this.calculate();
    this.tell();
  }

  /** Works formulas out, at once where there is no engine and only marks are to be made, else while others go on. */
  private calculate(): void {
    if (this.calculated.has(this.state)) return;
    if (this.recalculation.canWork)
      this.calculating ??= this.calculateAll().finally(() => {
        this.calculating = null;
      });
    else this.take(this.recalculation.withoutEngine(formulaBook(this.state), changedCells(this.opened, this.state)));
  }

  /** One calculation after the other, until none of them was overtaken by a change. */
  private async calculateAll(): Promise<void> {
    while (!this.calculated.has(this.state)) {
      const asked = this.state;
      const found = await this.recalculation.of(formulaBook(asked), changedCells(this.opened, asked));
      if (this.state === asked && this.take(found)) this.tell();
    }
  }

  /** Puts results into the state, which stays the same step; answers whether anything differs. */
  private take(found: Recalculated): boolean {
    const before = this.state;
    this.state = withResults(before, found);
    this.calculated.add(this.state);
    if (this.state !== before) this.origins.set(this.state, this.originOf(before));
    return this.state !== before;
  }

  private originOf(state: State): State {
    return this.origins.get(state) ?? state;
  }

  private tell(): void {
    this.count += 1;
    for (const listener of this.listeners) listener();
  }
}
