/** A workbook over the parts of an `.xlsx` file: the port of the rest of the program, and the cells for a grid. */
import { format } from "numfmt";
import type { Cell, DateSystem, SheetPlace, WorkbookContent } from "../../workbook/cell";
import type { InputTable } from "../../workbook/inputTable";
import type { ResultSheet } from "../../workbook/resultSheet";
import { sameName } from "../sheetNames";
import { HostError, type WorkbookHost } from "../workbookHost";
import { areaName, columnName, contains, lastRow, parseArea, quotedSheet, type Area, type At } from "./address";
import { bodyOf, bookOf, tablesOf, type SheetEntry } from "./book";
import { contentOf, staleKey, usedPart } from "./content";
import { asFiled, asTyped } from "./formulaEntry";
import { changedCells, formulaBook, needsCalculation, withResults } from "./formulas";
import { choicesAt } from "./choices";
import { lookOf, type SheetLook } from "./looks";
import { writeInputTable, writeResultSheet } from "./newSheets";
import { PackageEdit } from "./packageParts";
import type { Engine } from "./recalculation/engine";
import { Recalculation, type Recalculated } from "./recalculation/recalculation";
import { savedBytes, savedParts } from "./save";
import { usedArea } from "./sheetXml";
import { refuseCovered, refuseImpossible, refuseLocked } from "./refusals";
import { cellIn, dataOf, formulaIn, sheetNamed, valueIn, withCells, type CellEdit, type State } from "./state";
import { StyleMaker, styleAt } from "./styles";
import { withTableEdges } from "./tableEdges";
import { tableNamed, withGrownTables, withTableRows } from "./tableRows";
import { documentOf, first } from "./xml";
import type { Parts } from "./zip";

export type Options = {
  /** Works formulas out after a change; without it the cells that depend on a change are marked as old. */
  readonly engine?: Engine;
  /** Milliseconds of quiet after a change before it is told. */
  readonly quiet?: number;
};

/** A table for a grid: `body` holds its rows without headings and totals. */
export type GridTable = { readonly name: string; readonly area: Area; readonly body: Area; readonly totalsRows: number };
export type GridSheet = SheetLook & { readonly name: string; readonly hidden: boolean; readonly used: Area | null; readonly tables: readonly GridTable[] };
export type GridCell = {
  readonly value: Cell;
  /** Without its `=`. */
  readonly formula: string | null;
  /** As it is shown. */
  readonly text: string;
  readonly numberFormat: string;
  readonly bold: boolean;
  readonly stale: boolean;
};

/** What goes into a cell: a value, or a formula without its `=`; the number format stays unless another is given. */
export type Entry = At & ({ readonly value: Cell } | { readonly formula: string }) & { readonly numberFormat?: string };

const usualQuiet = 300;

export class EmbeddedWorkbook implements WorkbookHost {
  private state: State;
  private readonly past: State[] = [];
  private readonly future: State[] = [];
  private readonly listeners = new Set<() => void>();
  private readonly showers = new Set<(place: SheetPlace) => void>();
  private picked: { readonly sheet: string; readonly area: Area } | null = null;
  private saved: State;
  private count = 0;
  private readonly opened: State;
  private readonly recalculation: Recalculation;
  /** States whose formulas are worked out as far as they can be. */
  private readonly calculated = new WeakSet<State>();
  private calculating: Promise<void> | null = null;

  constructor(parts: Parts, private readonly options: Options = {}) {
    this.opened = this.state = this.saved = { parts, edited: new Map(), touched: false, stale: new Set() };
    this.recalculation = new Recalculation(formulaBook(this.opened), options.engine ?? null);
    if (needsCalculation(this.opened)) this.calculate();
  }

  // The port.

  /** Waits until formulas are worked out, so that no figure rests on a value that is about to change. */
  async read(): Promise<WorkbookContent> {
    await this.settled();
    return contentOf(this.state);
  }

  write(sheets: readonly ResultSheet[]): Promise<void> {
    return this.edit((edit, styles) => {
      this.refuseLockedStructure();
      const written = new Set<string>();
      const edited = new Map(this.state.edited);
      for (const sheet of sheets) {
        const name = writeResultSheet(edit, styles, sheet, written);
        written.add(name);
        edited.delete(bookOf(edit.parts).sheets.find((each) => each.name === name)!.part);
      }
      return edited;
    });
  }

  makeTables(tables: readonly InputTable[]): Promise<void> {
    const there = tablesOf(this.state.parts);
    const wanted = tables.filter(({ name }) => !there.some((table) => sameName(table.name, name)));
    if (wanted.length === 0) return Promise.resolve();
    return this.edit((edit, styles) => {
      this.refuseLockedStructure();
      for (const table of wanted) writeInputTable(edit, styles, table);
      return this.state.edited;
    });
  }

  addRows(table: string, rows: readonly ReadonlyMap<string, Cell>[]): Promise<void> {
    return attempt(() => {
      if (rows.length === 0) tableNamed(this.state, table);
      else this.become(withTableRows(this.state, table, rows).state);
    });
  }

  select(place: SheetPlace): Promise<void> {
    return attempt(() => {
      const { name } = sheetNamed(this.state, place.sheet);
      this.picked = { sheet: name, area: { top: place.row, bottom: place.row, left: place.column, right: place.column } };
      for (const show of this.showers) show({ ...place, sheet: name });
    });
  }

  selection(): Promise<{ readonly address: string; readonly headings: readonly string[] }> {
    return attempt(() => {
      const { sheet, area } = this.picked ?? { sheet: bookOf(this.state.parts).sheets[0]!.name, area: { top: 0, left: 0, bottom: 0, right: 0 } };
      const data = dataOf(this.state, sheetNamed(this.state, sheet).part);
      const used = usedPart(data, area);
      const headings = used === null ? [] : Array.from({ length: used.right - used.left + 1 }, (_, index) => String(valueIn(data, { row: used.top, column: used.left + index })));
      const address = area.top === 0 && area.bottom === lastRow ? `${columnName(area.left)}:${columnName(area.right)}` : areaName(area);
      return { address: `${quotedSheet(sheet)}!${address}`, headings };
    });
  }

  onChanged(changed: () => void): Promise<() => Promise<void>> {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const stop = this.subscribe(() => {
      clearTimeout(waiting);
      waiting = setTimeout(changed, this.options.quiet ?? usualQuiet);
    });
    return Promise.resolve(() => {
      stop();
      clearTimeout(waiting);
      return Promise.resolve();
    });
  }

  // The cells, for a grid.

  /** All sheets with cells, in order. */
  sheets(): readonly GridSheet[] {
    const tables = tablesOf(this.state.parts);
    return bookOf(this.state.parts).sheets.map(({ name, part, hidden }) => {
      const data = dataOf(this.state, part);
      const ofSheet = tables.filter((table) => table.sheet === name);
      return { name, hidden, used: usedArea(data), ...lookOf(data), tables: ofSheet.map((table) => ({ name: table.name, area: table.area, body: bodyOf(table), totalsRows: table.totalsRows })) };
    });
  }

  /** How the workbook counts days. */
  get dateSystem(): DateSystem {
    return bookOf(this.state.parts).date1904 ? "1904" : "1900";
  }

  cellAt(sheet: string, at: At): GridCell {
    const { part } = sheetNamed(this.state, sheet);
    const data = dataOf(this.state, part);
    const cell = cellIn(data, at);
    const { numberFormat, bold } = styleAt(this.state.parts, cell?.style ?? 0);
    const value = cell?.value ?? "";
    const formula = formulaIn(data, at, cell);
    return { value, formula: formula === null ? null : asTyped(formula), text: this.shown(value, numberFormat), numberFormat, bold, stale: this.state.stale.has(staleKey(part, at.row, at.column)) };
  }

  private shown(value: Cell, numberFormat: string): string {
    if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
    if (typeof value === "string") return value;
    const serial = bookOf(this.state.parts).date1904 && /[ymdhs]/i.test(numberFormat.replace(/"[^"]*"|\[[^\]]*\]/g, "")) && numberFormat !== "General" ? value + 1462 : value;
    return format(numberFormat, serial, { throws: false });
  }

  /** The words of a cell's drop-down list; none where it has none. */
  choices(sheet: string, at: At): readonly string[] {
    return choicesAt(this.state, sheet, at);
  }

  /**
   * Puts entries into cells of a sheet, as one step. Entries right under a table's last row make the table longer.
   *
   * @throws HostError where the sheet is protected or a part of an array formula would change
   */
  setCells(sheet: string, entries: readonly Entry[]): void {
    if (entries.length === 0) return;
    const entry = sheetNamed(this.state, sheet);
    refuseImpossible(entries);
    refuseLocked(this.state, entry, entries);
    refuseCovered(dataOf(this.state, entry.part), entries);
    const styled = this.styled(entry, entries);
    const edges = withTableEdges({ ...this.state, parts: styled.parts }, entry.name, styled.edits);
    const { state, edits } = withGrownTables(edges.state, entry.name, edges.edits);
    const data = withCells(dataOf(state, entry.part), edits);
    this.become({ ...state, edited: new Map(state.edited).set(entry.part, data), touched: true });
  }

  /** The edits with the styles that their number formats ask for, and the parts with those styles. */
  private styled({ name, part }: SheetEntry, entries: readonly Entry[]): { readonly edits: readonly CellEdit[]; readonly parts: Parts } {
    const edit = new PackageEdit(this.state.parts);
    const styles = entries.some(({ numberFormat }) => numberFormat !== undefined) ? new StyleMaker(edit) : null;
    const data = dataOf(this.state, part);
    const tables = tablesOf(this.state.parts).filter(({ sheet }) => sheet === name);
    const edits = entries.map((entry): CellEdit => {
      const { row, column } = entry;
      const before = cellIn(data, entry);
      const style = entry.numberFormat === undefined ? before?.style ?? 0 : styles!.withFormat(before?.style ?? 0, entry.numberFormat);
      return "formula" in entry ? { row, column, value: "", isUnknown: true, formula: asFiled(entry.formula, tables.find(({ area }) => contains(area, entry))?.name ?? null), style } : { row, column, value: entry.value, style };
    });
    return { edits, parts: styles === null ? this.state.parts : edit.parts };
  }

  /** Adds a blank row at the end of a table, as one step; answers its first cell. */
  addTableRow(table: string): SheetPlace {
    const { state, first: place } = withTableRows(this.state, table, [new Map()]);
    this.become(state);
    return place;
  }

  /** Tells what is selected, for `selection` to answer; a whole column runs to the end of the sheet. */
  pick(sheet: string, area: Area | string): void {
    const found = typeof area === "string" ? parseArea(area) : area;
    if (found === null) throw new RangeError(`no such range: ${String(area)}`);
    this.picked = { sheet: sheetNamed(this.state, sheet).name, area: found };
  }

  /** What is selected: the sheet and the first cell. */
  get selected(): { readonly sheet: string; readonly area: Area } | null {
    return this.picked;
  }

  undo(): boolean {
    return this.step(this.past, this.future);
  }

  redo(): boolean {
    return this.step(this.future, this.past);
  }

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Grows with every change. */
  get version(): number {
    return this.count;
  }

  /** Whether there is something that `save` has not handed out. */
  get unsaved(): boolean {
    return this.state !== this.saved;
  }

  /** Calls back at once after each change; returns what stops the calls. */
  subscribe(changed: () => void): () => void {
    this.listeners.add(changed);
    return () => this.listeners.delete(changed);
  }

  /** Calls back when a cell is to be shown. */
  onShow(show: (place: SheetPlace) => void): () => void {
    this.showers.add(show);
    return () => this.showers.delete(show);
  }

  /** Resolves when no formula is being worked out any more. */
  async settled(): Promise<void> {
    while (this.calculating !== null) await this.calculating;
  }

  /** What went wrong in the calculation engine itself, after which values are only marked as old; null while nothing has. */
  get engineFault(): Error | null {
    return this.recalculation.fault;
  }

  /** The bytes of the file as it is now. */
  save(): Uint8Array {
    const bytes = savedBytes(this.state);
    this.saved = this.state;
    return bytes;
  }

  /** The parts as they would be saved, for tests of what is kept. */
  parts(): Parts {
    return savedParts(this.state);
  }

  private edit(change: (edit: PackageEdit, styles: StyleMaker) => State["edited"]): Promise<void> {
    return attempt(() => {
      const edit = new PackageEdit(this.state.parts);
      const edited = change(edit, new StyleMaker(edit));
      this.become({ ...this.state, parts: edit.parts, edited, touched: true });
    });
  }

  private refuseLockedStructure(): void {
    const book = documentOf(this.state.parts.get(bookOf(this.state.parts).part)!);
    if (/^(1|true)$/.test(first(book, "workbookProtection")?.getAttribute("lockStructure") ?? "")) {
      throw new HostError("protected", "The structure of the workbook is protected, so that no sheet can be added. Take the protection off in Excel (Review, Protect Workbook) and try again.");
    }
  }

  private become(next: State): void {
    this.past.push(this.state);
    this.future.length = 0;
    this.state = next;
    this.calculate();
    this.changed();
  }

  /** Works formulas out, at once where there is no engine and only marks are to be made, else while others go on. */
  private calculate(): void {
    if (this.calculated.has(this.state)) return;
    if (this.recalculation.canWork) this.calculating ??= this.calculateAll().finally(() => { this.calculating = null; });
    else this.take(this.recalculation.withoutEngine(formulaBook(this.state), changedCells(this.opened, this.state)));
  }

  /** One calculation after the other, until none of them was overtaken by a change. */
  private async calculateAll(): Promise<void> {
    while (!this.calculated.has(this.state)) {
      const asked = this.state;
      const found = await this.recalculation.of(formulaBook(asked), changedCells(this.opened, asked));
      if (this.state === asked && this.take(found)) this.changed();
    }
  }

  /** Puts results into the state, which stays the same step for undo; answers whether anything differs. */
  private take(found: Recalculated): boolean {
    const before = this.state;
    this.state = withResults(before, found);
    this.calculated.add(this.state);
    if (this.saved === before) this.saved = this.state;
    return this.state !== before;
  }

  private step(from: State[], to: State[]): boolean {
    const next = from.pop();
    if (next === undefined) return false;
    to.push(this.state);
    this.state = next;
    this.calculate();
    this.changed();
    return true;
  }

  private changed(): void {
    this.count += 1;
    for (const listener of this.listeners) listener();
  }
}

/** Does something now and answers as the port does, so that a refusal is a rejected promise. */
function attempt<Value>(act: () => Value): Promise<Value> {
  try {
    return Promise.resolve(act());
  } catch (cause) {
    return Promise.reject(cause instanceof Error ? cause : new Error(String(cause)));
  }
}
