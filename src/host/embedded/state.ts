/** A workbook at one moment. States are never changed: each edit makes the next one, and undo goes back to the last. */
import type { Cell } from "../../workbook/cell";
import { HostError } from "../workbookHost";
import { areaName, contains, type Area, type At } from "./address";
import { bookOf, sheetDataOf, type SheetEntry } from "./book";
import { moveFormula } from "./moveFormula";
import { formulaArea, type SheetCell, type SheetData, type SheetRow } from "./sheetXml";
import { styleAt } from "./styles";
import type { Parts } from "./zip";

export type State = {
  readonly parts: Parts;
  /** Sheets whose cells have changed since their part was read, by the part's name. */
  readonly edited: ReadonlyMap<string, SheetData>;
  /** Whether a cell has changed, so that formulas must be worked out again when Excel opens the file. */
  readonly touched: boolean;
  /** Formula cells that could not be worked out again after a change, as `part!A1`. */
  readonly stale: ReadonlySet<string>;
};

export const dataOf = (state: State, part: string): SheetData => state.edited.get(part) ?? sheetDataOf(state.parts, part);

export function sheetNamed(state: State, name: string): SheetEntry {
  const sheet = bookOf(state.parts).sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
  if (sheet === undefined) throw new HostError("missing", `The workbook has no sheet "${name}".`);
  return sheet;
}

export function cellIn(data: SheetData, { row, column }: At): SheetCell | undefined {
  const cells = data.rows.get(row)?.cells;
  if (cells === undefined) return undefined;
  let [low, high] = [0, cells.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const cell = cells[middle]!;
    if (cell.column === column) return cell;
    if (cell.column < column) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}

export const valueIn = (data: SheetData, at: At): Cell => cellIn(data, at)?.value ?? "";

/** The formula of a cell without its `=`; one that follows a shared formula is moved to its place. */
export function formulaIn(data: SheetData, at: At, cell: SheetCell | undefined = cellIn(data, at)): string | null {
  const formula = cell?.formula;
  if (formula === undefined || formula.kind === "table") return null;
  if (formula.text !== "" || formula.kind !== "shared") return formula.text;
  const master = data.masters.get(formula.group!);
  return master === undefined ? "" : moveFormula(master.text, { rows: at.row - master.row, columns: at.column - master.column });
}

/** What is put into a cell. What is left out stays as it is; a value without a formula takes an old formula away. */
export type CellEdit = At & { readonly value: Cell; readonly formula?: string; readonly style?: number };

/** The sheet with cells changed. Cells that followed a shared formula whose master is overwritten get their own. */
export function withCells(data: SheetData, edits: readonly CellEdit[]): SheetData {
  const rows = new Map(data.rows);
  const masters = new Map(data.masters);
  for (const [group, master] of orphaned(data, edits)) {
    freeFollowers(data, rows, group, master.text, master);
    masters.delete(group);
  }
  const byRow = new Map<number, CellEdit[]>();
  for (const edit of edits) byRow.set(edit.row, [...(byRow.get(edit.row) ?? []), edit]);
  for (const [number, ofRow] of byRow) rows.set(number, withRowCells(rows.get(number), number, ofRow));
  return { ...data, rows, masters };
}

function withRowCells(row: SheetRow | undefined, number: number, edits: readonly CellEdit[]): SheetRow {
  const cells = new Map((row?.cells ?? []).map((cell) => [cell.column, cell]));
  for (const { column, value, formula, style } of edits) {
    const before = cells.get(column);
    const number = style ?? before?.style ?? 0;
    if (value === "" && formula === undefined && number === 0) cells.delete(column);
    else cells.set(column, { column, value, style: number, ...(formula === undefined ? {} : { formula: { text: formula, kind: "plain" } }) });
  }
  return { attributes: row?.attributes ?? ` r="${number + 1}"`, hidden: row?.hidden ?? false, cells: [...cells.values()].sort((a, b) => a.column - b.column) };
}

/** The shared formulas whose master is about to go. */
function orphaned(data: SheetData, edits: readonly CellEdit[]): readonly (readonly [string, { text: string; row: number; column: number }])[] {
  if (data.masters.size === 0) return [];
  const touched = new Set(edits.map(({ row, column }) => `${row},${column}`));
  return [...data.masters].filter(([, { row, column }]) => touched.has(`${row},${column}`));
}

function freeFollowers(data: SheetData, rows: Map<number, SheetRow>, group: string, text: string, from: At): void {
  for (const [number, row] of data.rows) {
    if (!row.cells.some((cell) => cell.formula?.kind === "shared" && cell.formula.group === group)) continue;
    const cells = row.cells.map((cell): SheetCell => {
      if (cell.formula?.kind !== "shared" || cell.formula.group !== group) return cell;
      const { source: _, ...rest } = cell;
      return { ...rest, formula: { kind: "plain", text: moveFormula(text, { rows: number - from.row, columns: cell.column - from.column }) } };
    });
    const { source: _, ...rest } = row;
    rows.set(number, { ...rest, cells });
  }
}

/** Refuses what Excel would refuse: a locked cell, or a part of an array formula. */
export function refuseLocked(state: State, sheet: SheetEntry, edits: readonly At[]): void {
  const data = dataOf(state, sheet.part);
  if (isProtected(data) && edits.some((at) => styleAt(state.parts, cellIn(data, at)?.style ?? 0).locked)) {
    throw new HostError("protected", `The sheet "${sheet.name}" is protected. Take the protection off in Excel (Review, Unprotect Sheet) and try again.`);
  }
  const whole = new Set(edits.map(({ row, column }) => `${row},${column}`));
  for (const area of arrayAreas(data)) {
    if (!edits.some((at) => contains(area, at))) continue;
    for (let row = area.top; row <= area.bottom; row += 1) {
      for (let column = area.left; column <= area.right; column += 1) {
        if (!whole.has(`${row},${column}`)) throw new HostError("failed", `A part of the array formula in ${areaName(area)} cannot be changed alone. Change or clear all of it.`);
      }
    }
  }
}

export const isProtected = (data: SheetData): boolean =>
  new RegExp(`<${data.prefix}sheetProtection[^>]*\\ssheet="(1|true)"`).test(data.text.slice(data.rowsTo));

const areas = new WeakMap<SheetData, readonly Area[]>();

/** The blocks of array formulas that fill more than one cell. */
function arrayAreas(data: SheetData): readonly Area[] {
  let found = areas.get(data);
  if (found === undefined) {
    found = [...data.rows.values()].flatMap(({ cells }) => cells.flatMap(({ formula }) => {
      const area = formula?.kind === "array" ? formulaArea(formula) : null;
      return area === null || (area.top === area.bottom && area.left === area.right) ? [] : [area];
    }));
    areas.set(data, found);
  }
  return found;
}

/** Whether a cell of the sheet has a formula. */
export const hasFormulas = (data: SheetData): boolean => [...data.rows.values()].some(({ cells }) => cells.some(({ formula }) => formula !== undefined));
