/** A workbook over the parts of an `.xlsx` file: the port of the rest of the program, and the cells for a grid. */
import type { Cell, DateSystem, SheetPlace, WorkbookContent } from "../../workbook/cell";
import type { InputTable } from "../../workbook/inputTable";
import type { ResultSheet } from "../../workbook/resultSheet";
import { sameName } from "../sheetNames";
import { HostError, type CellChange, type NewColumn, type TableRows, type WorkbookHost } from "../workbookHost";
import { parseArea, splitSheet, type Block, type At } from "../address";
import { bodyOf, bookOf, tablesOf } from "./book";
import { withEntries, type CellEntry } from "./edit/cellEntries";
import { choicesAt } from "./sheet/choices";
import { withColumnWidth } from "./sheet/columnWidth";
import { contentOf } from "./sheet/content";
import { gridCell, gridSheets, numberFormatAt, type GridCell, type GridSheet } from "./sheet/gridView";
import { writeResultSheet } from "./edit/newSheets";
import { writeInputTable } from "./edit/newTables";
import { PackageEdit } from "./package/packageParts";
import type { Engine } from "./recalculation/engine";
import { draftBytes, savedBytes, savedParts } from "./package/save";
import { sheetCharts, type SheetChart } from "./sheet/chartsOfSheet";
import { addressOf, alikeRanges, blockPicked, headingsOf, type Picked } from "./sheet/selection";
import { sheetNamed, stateOf, type State } from "./state";
import { entryWords, type StepWords } from "./edit/stepWords";
import { StyleMaker } from "./package/styles";
import { withTableCells } from "./edit/tableCells";
import { withTableColumn } from "./edit/tableColumns";
import { withInsertedRows, withoutRows, withSortedRows } from "./edit/tableOrder";
import { tableNamed, withGrownTable, withTableRows } from "./edit/tableRows";
import { workbookKind, type WorkbookKind } from "./package/workbookKind";
import { WorkbookSteps } from "./edit/workbookSteps";
import type { Parts } from "./package/zip";

export type Options = {
  /** Works formulas out after a change; without it the cells that depend on a change are marked as old. */
  readonly engine?: Engine;
  /** Milliseconds of quiet after a change before it is told. */
  readonly quiet?: number;
};

const plain = (table: string): string => table.replaceAll("_", " ");

/** A grid tells each entry once, so that there is nothing to wait for but the end of the task. */
const usualQuiet = 0;

export class EmbeddedWorkbook implements WorkbookHost {
  private readonly steps: WorkbookSteps;
  private readonly showers = new Set<(place: SheetPlace) => void>();
  private picked: Picked | null = null;

  constructor(
    parts: Parts,
    private readonly options: Options = {},
  ) {
    this.steps = new WorkbookSteps(stateOf(parts), options.engine ?? null);
  }

  /** What the package says it holds: with macros, a template, or neither. */
  get kind(): WorkbookKind {
    return workbookKind(this.steps.now.parts);
  }

  // The port.

  /** Waits until formulas are worked out, so that no figure rests on a value that is about to change. */
  async read(): Promise<WorkbookContent> {
    await this.settled();
    return contentOf(this.steps.now);
  }

  async write(sheets: readonly ResultSheet[]): Promise<readonly string[]> {
    const names: string[] = [];
    this.steps.becomeWithSheets(
      this.edited((edit, styles, { edited: before }) => {
        const written = new Set<string>();
        const edited = new Map(before);
        for (const sheet of sheets) {
          const name = writeResultSheet(edit, styles, sheet, written);
          written.add(name);
          names.push(name);
          edited.delete(bookOf(edit.parts).sheets.find((each) => each.name === name)!.part);
        }
        return edited;
      }),
      { words: `results written: ${names.join(", ")}`, place: null },
    );
    return names;
  }

  async makeTables(tables: readonly InputTable[]): Promise<readonly string[]> {
    const there = tablesOf(this.steps.now.parts);
    const wanted = tables.filter(({ name }) => !there.some((table) => sameName(table.name, name)));
    if (wanted.length === 0) return [];
    this.steps.become(
      this.edited((edit, styles, { edited }) => {
        for (const table of wanted) writeInputTable(edit, styles, table);
        return edited;
      }),
      { words: `tables made: ${wanted.map(({ name }) => plain(name)).join(", ")}`, place: null },
    );
    return wanted.map(({ name }) => name);
  }

  async enterRows(entries: readonly TableRows[]): Promise<void> {
    if (entries.length === 0) return;
    const there = tablesOf(this.steps.now.parts);
    const missing = entries.filter(({ table }) => !there.some(({ name }) => sameName(name, table.name)));
    const made = this.edited((edit, styles, { edited }) => {
      for (const { table } of missing) writeInputTable(edit, styles, table);
      return edited;
    });
    const state = entries.reduce(
      (before, { table, rows }) => (rows.length === 0 ? before : withTableRows(before, table.name, rows).state),
      made,
    );
    this.steps.become(state, { words: `entries added to ${entries.map(({ table: { name } }) => plain(name)).join(", ")}`, place: null });
  }

  async addRows(table: string, rows: readonly ReadonlyMap<string, Cell>[]): Promise<void> {
    if (rows.length === 0) tableNamed(this.steps.now, table);
    else {
      const { state, first } = withTableRows(this.steps.now, table, rows);
      this.steps.become(state, {
        words: `${rows.length === 1 ? "an entry" : `${rows.length} entries`} added to ${plain(table)}`,
        place: first,
      });
    }
  }

  async growTable(table: string, rows: number): Promise<void> {
    this.steps.become(withGrownTable(this.steps.now, table, rows), { words: `entries below ${plain(table)} taken in`, place: null });
  }

  async changeCells(changes: readonly CellChange[]): Promise<void> {
    if (changes.length === 0) return;
    const tables = [...new Set(changes.map(({ table }) => plain(table)))].join(", ");
    this.steps.become(withTableCells(this.steps.now, changes), {
      words: `${changes.length === 1 ? "an entry" : `${changes.length} entries`} changed in ${tables}`,
      place: null,
    });
  }

  async addColumn(column: NewColumn): Promise<void> {
    this.steps.become(withTableColumn(this.steps.now, column), { words: `a column added to ${plain(column.table)}`, place: null });
  }

  async select(place: SheetPlace): Promise<void> {
    const { name, hidden } = sheetNamed(this.steps.now, place.sheet);
    if (hidden) throw new HostError("missing", `The sheet ${name} is hidden. Unhide it in Excel to see the cell.`);
    this.picked = { sheet: name, area: { top: place.row, bottom: place.row, left: place.column, right: place.column } };
    for (const show of this.showers) show({ ...place, sheet: name });
  }

  async selection(): Promise<{ readonly address: string; readonly headings: readonly string[] }> {
    const picked = this.picked ?? { sheet: bookOf(this.steps.now.parts).sheets[0]!.name, area: { top: 0, left: 0, bottom: 0, right: 0 } };
    const block = blockPicked(this.steps.now, picked);
    return { address: addressOf(block), headings: headingsOf(this.steps.now, block) };
  }

  async alike(address: string): Promise<readonly string[]> {
    const { sheet, area } = splitSheet(address);
    const cells = parseArea(area);
    return sheet === null || cells === null ? [] : alikeRanges(this.steps.now, { sheet, area: cells });
  }

  async onChanged(changed: () => void): Promise<() => Promise<void>> {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const stop = this.subscribe(() => {
      clearTimeout(waiting);
      waiting = setTimeout(changed, this.options.quiet ?? usualQuiet);
    });
    return async () => {
      stop();
      clearTimeout(waiting);
    };
  }

  // The cells, for a grid. Each change is one step to undo.

  /** All sheets with cells, in order, hidden ones included. */
  sheets(): readonly GridSheet[] {
    return gridSheets(this.steps.now);
  }

  /** The charts on a sheet, with what their cells say now. */
  charts(sheet: string): readonly SheetChart[] {
    return sheetCharts(this.steps.now, sheet);
  }

  /** How the workbook counts days. */
  get dateSystem(): DateSystem {
    return bookOf(this.steps.now.parts).date1904 ? "1904" : "1900";
  }

  /** The number format of a cell alone. */
  numberFormatAt(sheet: string, at: At): string {
    return numberFormatAt(this.steps.now, sheet, at);
  }

  cellAt(sheet: string, at: At): GridCell {
    return gridCell(this.steps.now, sheet, at);
  }

  /** The words of a cell's drop-down list; none where it has none. */
  choices(sheet: string, at: At): readonly string[] {
    return choicesAt(this.steps.now, sheet, at);
  }

  /**
   * Puts entries into cells of a sheet. Entries right under a table's last row make the table longer.
   *
   * @throws HostError where Excel would refuse them, too: a protected sheet, a part of an array formula, no formula
   */
  setCells(sheet: string, entries: readonly CellEntry[]): void {
    if (entries.length > 0) this.steps.become(withEntries(this.steps.now, sheet, entries), entryWords(this.steps.now, sheet, entries));
  }

  /** Adds a blank row at the end of a table; answers its first cell. */
  addTableRow(table: string): SheetPlace {
    const { state, first: place } = withTableRows(this.steps.now, table, [new Map()]);
    this.steps.become(state, { words: `an entry added to ${plain(table)}`, place });
    return place;
  }

  /** Puts blank rows above a row of a table's body, rows counted as on the sheet. @throws HostError where something would not move along */
  insertTableRows(table: string, above: number, count: number): void {
    this.steps.become(
      withInsertedRows(this.steps.now, table, above, count),
      this.rowWords(`${count === 1 ? "an entry" : `${count} entries`} inserted in`, table, above),
    );
  }

  /** Takes rows out of a table's body. @throws HostError where that would break a formula elsewhere, or something would not move along */
  deleteTableRows(table: string, rows: readonly number[]): void {
    this.steps.become(
      withoutRows(this.steps.now, table, rows),
      this.rowWords(`${rows.length === 1 ? "an entry" : `${rows.length} entries`} deleted from`, table, rows[0] ?? 0),
    );
  }

  /** Sorts a table's body by a column of the sheet, whole rows together. @throws HostError where a formula would then say something else */
  sortTable(table: string, column: number, downwards: boolean): void {
    const words = this.rowWords("sorting of", table, null);
    this.steps.become(
      withSortedRows(this.steps.now, table, column, downwards),
      words.place === null ? words : { ...words, place: { ...words.place, column } },
    );
  }

  /** Makes a column of a sheet so many characters wide. */
  widenColumn(sheet: string, column: number, width: number): void {
    const { name } = sheetNamed(this.steps.now, sheet);
    this.steps.become(withColumnWidth(this.steps.now, name, column, width), { words: `width of a column of ${name}`, place: null });
  }

  private rowWords(what: string, table: string, row: number | null): StepWords {
    const { sheet, name, ...entry } = tableNamed(this.steps.now, table);
    const { top, left } = bodyOf({ sheet, name, ...entry });
    return { words: `${what} ${plain(name)}${row === null ? "" : `, row ${row + 1}`}`, place: { sheet, row: row ?? top, column: left } };
  }

  /** Tells what is selected, for `selection` to answer; a whole column runs to the end of the sheet. */
  pick(sheet: string, area: Block | string): void {
    const found = typeof area === "string" ? parseArea(area) : area;
    if (found === null) throw new RangeError(`no such range: ${String(area)}`);
    this.picked = { sheet: sheetNamed(this.steps.now, sheet).name, area: found };
  }

  /** What is selected. */
  get selected(): Picked | null {
    return this.picked;
  }

  undo(): boolean {
    return this.steps.undo();
  }

  redo(): boolean {
    return this.steps.redo();
  }

  get canUndo(): boolean {
    return this.toUndo !== null;
  }

  get canRedo(): boolean {
    return this.toRedo !== null;
  }

  /** What the next undo takes back, in words and with its place; `null` where there is nothing. */
  get toUndo(): StepWords | null {
    return this.steps.toUndo;
  }

  get toRedo(): StepWords | null {
    return this.steps.toRedo;
  }

  /** Grows with every change. */
  get version(): number {
    return this.steps.version;
  }

  /** Whether there is something that `save` has not handed out. */
  get unsaved(): boolean {
    return this.steps.isUnsaved;
  }

  /** Calls back at once after each change; returns what stops the calls. */
  subscribe(changed: () => void): () => void {
    return this.steps.subscribe(changed);
  }

  /** Calls back when a cell is to be shown. */
  onShow(show: (place: SheetPlace) => void): () => void {
    this.showers.add(show);
    return () => this.showers.delete(show);
  }

  /** Resolves when no formula is being worked out any more. */
  settled(): Promise<void> {
    return this.steps.settled();
  }

  /** What went wrong in the calculation engine itself, after which values are only marked as old; null while nothing has. */
  get engineFault(): Error | null {
    return this.steps.engineFault;
  }

  /** The bytes of the file as it is now, which then counts as saved. */
  save(): Uint8Array {
    const { bytes, keep } = this.toSave();
    keep();
    return bytes;
  }

  /** The bytes of the file as it is now, and what is to be called once they lie in a file. Waits for no formula. */
  toSave(): { readonly bytes: Uint8Array; readonly keep: () => void } {
    const { now, toStore } = this.steps;
    return { bytes: savedBytes(toStore), keep: () => this.steps.keep(now) };
  }

  /** The bytes of a file of the workbook as it is at this moment. Waits for no formula. */
  toDraft(): Promise<Uint8Array> {
    return draftBytes(this.steps.toStore);
  }

  /** The parts as they would be saved, for tests of what is kept. */
  parts(): Parts {
    return savedParts(this.steps.now);
  }

  private edited(change: (edit: PackageEdit, styles: StyleMaker, before: State) => State["edited"]): State {
    const { now } = this.steps;
    const edit = new PackageEdit(now.parts);
    const edited = change(edit, new StyleMaker(edit), now);
    return { ...now, parts: edit.parts, edited, touched: true };
  }
}
