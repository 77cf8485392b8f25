/** The formulas of a workbook for recalculation, and what comes of it. */
import { oncePer } from "../oncePer";
import { bookOf, sheetPosition, tablesOf } from "../book";
import { staleKey } from "../sheet/content";
import { isCellError, type CalculatedValue, type FormulaBook, type FormulaCell } from "../recalculation/formulaBook";
import type { Recalculated } from "../recalculation/recalculation";
import type { FormulaPlace, FormulaTable } from "../recalculation/tableReference";
import { formulaArea, type SheetData } from "../sheet/sheetXml";
import type { StoredCell } from "../sheet/sheetRow";
import { dataOf, formulaIn, withCells, type CellEdit, type State } from "../state";

/** The workbook as recalculation sees it. Sheets without cells are left out here as everywhere. */
export function formulaBook(state: State): FormulaBook {
  const { sheets, names, date1904 } = bookOf(state.parts);
  const data = sheets.map(({ part }) => dataOf(state, part));
  const positions = new Map(sheets.map(({ name }, index) => [sheetPosition(state.parts, name), index]));
  const used = data.map(({ rows }) => rows.used());
  return {
    dateSystem: date1904 ? "1904" : "1900",
    sheets: sheets.map(({ name }) => name),
    tables: tablesOf(state.parts).map((table): FormulaTable => ({
      ...table,
      sheet: sheets.findIndex(({ name }) => name === table.sheet),
      columns: table.columns.map(({ name }) => name),
    })),
    names: names.map(({ name, refersTo, sheet }) => ({ name, refersTo, sheet: sheet === null ? null : (positions.get(sheet) ?? -1) })),
    formulas: data.flatMap((each, sheet) => formulasOf(each)(sheet)),
    used: (sheet) => ({ rows: (used[sheet]?.bottom ?? -1) + 1, columns: (used[sheet]?.right ?? -1) + 1 }),
    valueAt: valuesOf(data),
    hasHiddenRow: ({ sheet, area: { top, bottom } }) => data[sheet]!.rows.hiddenRows().some((row) => row >= top && row <= bottom),
  };
}

/** The formulas of a sheet, worked out once for each number under which it is known. */
const formulasOf = oncePer((data: SheetData) => {
  const known = new Map<number, readonly FormulaCell[]>();
  return (sheet: number): readonly FormulaCell[] => {
    const before = known.get(sheet);
    if (before !== undefined) return before;
    const formulas: FormulaCell[] = [];
    for (const row of data.rows.withFormulas()) {
      for (const cell of data.rows.get(row)!.cells) {
        const { column, formula, isUnknown } = cell;
        if (formula === undefined) continue;
        const area = formula.kind === "array" || formula.kind === "table" ? formulaArea(formula) : null;
        // What a data table works out is Excel's own affair: it may read anything.
        const text = formula.kind === "table" ? "INDIRECT()" : (formulaIn(data, { row, column }, cell) ?? "");
        const found = { sheet, row, column, formula: text, value: isUnknown === true ? null : calculated(cell) };
        const fillsMore = area !== null && (area.top !== area.bottom || area.left !== area.right);
        formulas.push(fillsMore ? { ...found, fills: area } : found);
      }
    }
    known.set(sheet, formulas);
    return formulas;
  };
});

const calculated = ({ value, isError }: Pick<StoredCell, "value" | "isError">): CalculatedValue =>
  isError === true ? { error: String(value) } : value;

/** Looks rows up once each, because recalculation asks for cells column by column. */
function valuesOf(data: readonly SheetData[]): FormulaBook["valueAt"] {
  const known = data.map(() => new Map<number, CalculatedValue[]>());
  return ({ sheet, row, column }) => {
    const rows = known[sheet];
    if (rows === undefined) return "";
    let values = rows.get(row);
    if (values === undefined) {
      const read: CalculatedValue[] = [];
      data[sheet]!.rows.eachValue(row, (at, value, isError) => {
        read[at] = isError ? { error: String(value) } : value;
      });
      rows.set(row, (values = read));
    }
    return values[column] ?? "";
  };
}

/** Whether any cell is a formula. */
export const hasFormulas = (state: State): boolean =>
  bookOf(state.parts).sheets.some(({ part }) => dataOf(state, part).rows.withFormulas().length > 0);

/** Cells whose entry is another than when the workbook was opened. A formula with the same words is the same entry. */
export function changedCells(opened: State, now: State): FormulaPlace[] {
  const before = new Map(bookOf(opened.parts).sheets.map(({ part }) => [part, dataOf(opened, part)]));
  return bookOf(now.parts).sheets.flatMap(({ part }, sheet) => {
    const old = before.get(part);
    const data = dataOf(now, part);
    if (old === data) return [];
    const rows = old?.rows.isOfOnePart(data.rows)
      ? data.rows.changedRows()
      : [...new Set([...data.rows.numbers(), ...(old?.rows.numbers() ?? [])])];
    return rows.flatMap((row) => changedColumns(old, data, row).map((column) => ({ sheet, row, column })));
  });
}

function changedColumns(old: SheetData | undefined, data: SheetData, row: number): number[] {
  const before = new Map((old?.rows.get(row)?.cells ?? []).map((cell) => [cell.column, cell]));
  const now = new Map((data.rows.get(row)?.cells ?? []).map((cell) => [cell.column, cell]));
  return [...new Set([...before.keys(), ...now.keys()])].filter((column) => {
    const at = { row, column };
    const [one, other] = [before.get(column), now.get(column)];
    const formula = other === undefined ? null : formulaIn(data, at, other);
    if (formula !== null || one?.formula !== undefined)
      return old === undefined || one === undefined || formulaIn(old, at, one) !== formula;
    return (one?.value ?? "") !== (other?.value ?? "") || one?.isError !== other?.isError;
  });
}

/**
 * The state with formulas' values as they were worked out, and marks on those that may be old or differ; the same state where
 * nothing is new.
 */
export function withResults(state: State, { values, stale, unworked, differing }: Recalculated): State {
  const { sheets } = bookOf(state.parts);
  const key = ({ sheet, row, column }: FormulaPlace) => staleKey(sheets[sheet]!.part, row, column);
  const staleKeys = new Set(stale.map(key));
  const marks = {
    stale: sameOr(state.stale, staleKeys),
    unworked: sameOr(state.unworked, unworked === stale ? staleKeys : new Set(unworked.map(key))),
    differing: sameOr(state.differing, new Map(differing.map((each) => [key(each), textOf(each.notCounted)]))),
  };
  const isMarkedSo = marks.stale === state.stale && marks.unworked === state.unworked && marks.differing === state.differing;
  if (values.length === 0 && isMarkedSo) return state;
  const edited = new Map(state.edited);
  const bySheet = new Map<number, CellEdit[]>();
  for (const { sheet, row, column, value } of values) {
    const cell = isCellError(value) ? { value: value.error, isError: true } : { value };
    const edits = bySheet.get(sheet) ?? [];
    bySheet.set(sheet, edits);
    edits.push({ row, column, ...cell });
  }
  for (const [sheet, edits] of bySheet) {
    const { part } = sheets[sheet]!;
    edited.set(part, withCells(dataOf(state, part), edits, "results"));
  }
  return { ...state, edited, ...marks };
}

/** The old marks where they are the same, so that a state in which nothing moved stays the same. */
function sameOr<Marks extends ReadonlySet<string> | ReadonlyMap<string, string>>(old: Marks, found: Marks): Marks {
  const isSame = old.size === found.size && [...found.keys()].every((each) => old.has(each));
  return isSame ? old : found;
}

const textOf = (value: CalculatedValue): string =>
  isCellError(value) ? value.error : typeof value === "boolean" ? String(value).toUpperCase() : String(value);
