/** A workbook at one moment. States are never changed: each edit makes the next one, and undo goes back to the last. */
import type { Cell } from "../../workbook/cell";
import { HostError } from "../workbookHost";
import type { At } from "../address";
import { bookOf, sheetDataOf, type Book, type SheetEntry } from "./book";
import { oncePer } from "./oncePer";
import { moveFormula } from "./formula/moveFormula";
import type { StoredCell, SheetRow } from "./sheet/sheetRow";
import type { SharedMaster } from "./sheet/sheetRows";
import type { SheetData } from "./sheet/sheetXml";
import type { Parts } from "./package/zip";

export type State = {
  readonly parts: Parts;
  /** Sheets whose cells have changed since their part was read, by the part's name. */
  readonly edited: ReadonlyMap<string, SheetData>;
  /** Whether a cell has changed, so that formulas must be worked out again when Excel opens the file. */
  readonly touched: boolean;
  /** Formula cells that could not be worked out again after a change, and those that read one, as `part!A1`. */
  readonly stale: ReadonlySet<string>;
  /** Those of them that could not be worked out themselves. */
  readonly unworked: ReadonlySet<string>;
  /** Formula cells that have one value in the file and another worked out, as `part!A1`, with the one that does not count, as text. */
  readonly differing: ReadonlyMap<string, string>;
};

/** A workbook as a file has it, before anything is worked out. */
export const stateOf = (parts: Parts): State => ({
  parts,
  edited: new Map(),
  touched: false,
  stale: new Set(),
  unworked: new Set(),
  differing: new Map(),
});

export const dataOf = (state: State, part: string): SheetData => state.edited.get(part) ?? sheetDataOf(state.parts, part);

const sheetsByName = oncePer(
  ({ sheets }: Book): ReadonlyMap<string, SheetEntry> => new Map([...sheets].reverse().map((each) => [each.name.toLowerCase(), each])),
);

export function sheetNamed(state: State, name: string): SheetEntry {
  const sheet = sheetsByName(bookOf(state.parts)).get(name.toLowerCase());
  if (sheet === undefined) throw new HostError("missing", `The workbook has no sheet "${name}".`);
  return sheet;
}

export function cellIn(data: SheetData, { row, column }: At): StoredCell | undefined {
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
export function formulaIn(data: SheetData, at: At, cell: StoredCell | undefined = cellIn(data, at)): string | null {
  const formula = cell?.formula;
  if (formula === undefined || formula.kind === "table") return null;
  if (formula.text !== "" || formula.kind !== "shared") return formula.text;
  const master = data.rows.masters.get(formula.group!);
  return master === undefined ? "" : moveFormula(master.text, { rows: at.row - master.row, columns: at.column - master.column });
}

/** What is put into a cell. What is left out stays as it is; a value without a formula takes an old formula away. */
export type CellEdit = At & Pick<StoredCell, "value" | "isError" | "isUnknown"> & { readonly formula?: string; readonly style?: number };

/**
 * The sheet with cells changed. Cells that followed a shared formula whose master is overwritten get their own.
 *
 * @param what `entries` take the place of what is in the cells; `results` are values of formulas, which stay; `wording`
 *   is the same formula in other words, whose value and kind stay
 */
export function withCells(data: SheetData, edits: readonly CellEdit[], what: "entries" | "results" | "wording" = "entries"): SheetData {
  const rows = new Map<number, SheetRow>();
  const masters = new Map(data.rows.masters);
  for (const [group, master] of what === "results" ? [] : orphaned(data, edits)) {
    freeFollowers(data, rows, group, master);
    masters.delete(group);
  }
  const byRow = new Map<number, CellEdit[]>();
  for (const edit of edits) {
    const ofRow = byRow.get(edit.row);
    if (ofRow === undefined) byRow.set(edit.row, [edit]);
    else ofRow.push(edit);
  }
  for (const [number, ofRow] of byRow) {
    const before = rows.get(number) ?? data.rows.get(number);
    rows.set(
      number,
      what === "entries" || before === undefined ? withRowCells(before, number, ofRow) : withRowFormulas(before, ofRow, what),
    );
  }
  return { ...data, rows: data.rows.with(rows, masters) };
}

function withRowCells(row: SheetRow | undefined, number: number, edits: readonly CellEdit[]): SheetRow {
  const cells = new Map((row?.cells ?? []).map((cell) => [cell.column, cell]));
  for (const { column, value, formula, style, isError, isUnknown } of edits) {
    const kept = style ?? cells.get(column)?.style ?? 0;
    if (value === "" && formula === undefined && kept === 0) cells.delete(column);
    else {
      cells.set(column, {
        column,
        value,
        style: kept,
        ...(formula === undefined ? {} : { formula: { text: formula, kind: "plain" } }),
        ...(isError === true ? { isError } : {}),
        ...(isUnknown === true ? { isUnknown } : {}),
      });
    }
  }
  return { attributes: row?.attributes ?? ` r="${number + 1}"`, cells: [...cells.values()].sort((a, b) => a.column - b.column) };
}

function withRowFormulas(row: SheetRow, edits: readonly CellEdit[], what: "results" | "wording"): SheetRow {
  const byColumn = new Map(edits.map((edit) => [edit.column, edit]));
  return {
    ...row,
    cells: row.cells.map((cell): StoredCell => {
      const edit = byColumn.get(cell.column);
      if (edit === undefined) return cell;
      const { source: _source, ...rest } = cell;
      if (what === "wording")
        return {
          ...rest,
          formula: cell.formula?.kind === "array" ? { ...cell.formula, text: edit.formula! } : { kind: "plain", text: edit.formula! },
        };
      const { isError: _isError, isUnknown: _isUnknown, ...kept } = rest;
      return { ...kept, value: edit.value, ...(edit.isError === true ? { isError: true } : {}) };
    }),
  };
}

/** The shared formulas whose master is about to go. */
function orphaned(data: SheetData, edits: readonly CellEdit[]): readonly (readonly [string, SharedMaster])[] {
  if (data.rows.masters.size === 0) return [];
  const touched = new Set(edits.map(({ row, column }) => `${row},${column}`));
  return [...data.rows.masters].filter(([, { row, column }]) => touched.has(`${row},${column}`));
}

function freeFollowers(data: SheetData, rows: Map<number, SheetRow>, group: string, master: SharedMaster): void {
  for (const number of data.rows.withFormulas()) {
    const row = rows.get(number) ?? data.rows.get(number)!;
    if (!row.cells.some((cell) => cell.formula?.kind === "shared" && cell.formula.group === group)) continue;
    const cells = row.cells.map((cell): StoredCell => {
      if (cell.formula?.kind !== "shared" || cell.formula.group !== group) return cell;
      const { source: _, ...rest } = cell;
      return {
        ...rest,
        formula: { kind: "plain", text: moveFormula(master.text, { rows: number - master.row, columns: cell.column - master.column }) },
      };
    });
    rows.set(number, { ...row, cells });
  }
}

/** Whether a cell of the sheet has a formula. */
export const hasFormulas = (data: SheetData): boolean => data.rows.withFormulas().length > 0;
