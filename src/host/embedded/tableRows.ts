/** Tables that grow: rows added under the last one, and entries typed right beneath. */
import type { Cell } from "../../workbook/cell";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import { areaName, type Area } from "./address";
import { bodyOf, tablesOf, type TableEntry } from "./book";
import { moveFormula } from "./moveFormula";
import { PackageEdit } from "./packageParts";
import type { SheetData } from "./sheetXml";
import { cellIn, dataOf, formulaIn, refuseLocked, sheetNamed, valueIn, withCells, type CellEdit, type State } from "./state";
import { children } from "./xml";

export function tableNamed(state: State, name: string): TableEntry {
  const table = tablesOf(state.parts).find((each) => sameName(each.name, name));
  if (table === undefined) throw new HostError("missing", `The workbook has no table "${name}".`);
  return table;
}

/** The state with rows added at the end of a table, and the first of them. */
export function withTableRows(state: State, name: string, rows: readonly ReadonlyMap<string, Cell>[]): { readonly state: State; readonly first: { sheet: string; row: number; column: number } } {
  const table = tableNamed(state, name);
  const sheet = sheetNamed(state, table.sheet);
  const data = dataOf(state, sheet.part);
  const filled = rows.map((row) => byColumn(table, row));
  const body = bodyOf(table);
  // A new table has one blank row, which is the first to be filled.
  const start = body.top === body.bottom && isBlankRow(data, body) ? body.top : body.bottom + 1;
  const more = Math.max(0, start + rows.length - 1 - body.bottom);
  const edits = [
    ...moveTotals(table, data, more),
    ...filled.flatMap((cells, index) => rowEdits(table, data, body, start + index, cells)),
  ];
  refuseLocked(state, sheet, edits);
  const grown = more === 0 ? state : { ...state, parts: withArea(state, table, { ...table.area, bottom: table.area.bottom + more }) };
  const edited = new Map(state.edited).set(sheet.part, withCells(data, edits));
  return { state: { ...grown, edited, touched: true }, first: { sheet: sheet.name, row: start, column: body.left } };
}

function byColumn(table: TableEntry, row: ReadonlyMap<string, Cell>): ReadonlyMap<number, Cell> {
  return new Map([...row].map(([heading, cell]) => {
    const index = table.columns.findIndex((column) => sameName(column.name, heading));
    if (index < 0) throw new HostError("missing", `The table "${table.name}" has no column "${heading}".`);
    return [index, cell];
  }));
}

/** A new row: what is given, the formulas of calculated columns, and the looks of the last row. */
function rowEdits(table: TableEntry, data: SheetData, body: Area, row: number, cells: ReadonlyMap<number, Cell>): readonly CellEdit[] {
  return table.columns.flatMap((column, index): readonly CellEdit[] => {
    const at = { row, column: body.left + index };
    const above = { row: body.bottom, column: at.column };
    const like = cellIn(data, above);
    const style = like === undefined ? {} : { style: like.style };
    const given = cells.get(index);
    if (given !== undefined) return [{ ...at, value: given, ...style }];
    const formula = column.formula === null ? null : formulaIn(data, above, like);
    if (formula !== null && formula !== "") return [{ ...at, value: like?.value ?? "", formula: moveFormula(formula, { rows: row - above.row, columns: 0 }), ...style }];
    return row === body.bottom || like === undefined ? [] : [{ ...at, value: "", ...style }];
  });
}

const isBlankRow = (data: SheetData, { top, left, right }: Area): boolean => {
  for (let column = left; column <= right; column += 1) if (valueIn(data, { row: top, column }) !== "") return false;
  return true;
};

/** The totals row moved down, where there is one; refuses to run over what stands below the table. */
function moveTotals(table: TableEntry, data: SheetData, rows: number): readonly CellEdit[] {
  const { bottom, left, right } = table.area;
  for (let row = bottom + 1; row <= bottom + rows; row += 1) {
    for (let column = left; column <= right; column += 1) {
      if (valueIn(data, { row, column }) !== "") throw new HostError("failed", `There are entries right below the table "${table.name}" (row ${row + 1}). Move them, so that the table can grow.`);
    }
  }
  if (table.totalsRows === 0 || rows === 0) return [];
  return Array.from({ length: right - left + 1 }, (_, index) => left + index).flatMap((column): readonly CellEdit[] => {
    const cell = cellIn(data, { row: bottom, column });
    if (cell === undefined) return [];
    const formula = formulaIn(data, { row: bottom, column }, cell);
    return [
      { row: bottom, column, value: "", style: 0 },
      { row: bottom + rows, column, value: cell.value, style: cell.style, ...(formula === null ? {} : { formula }) },
    ];
  });
}

/** The parts with a table over another area, its filter with it. */
export function withArea({ parts }: State, table: TableEntry, area: Area): State["parts"] {
  const edit = new PackageEdit(parts);
  edit.edit(table.part, (root) => {
    root.setAttribute("ref", areaName(area));
    const filtered = { ...area, bottom: area.bottom - table.totalsRows };
    for (const filter of children(root, "autoFilter")) filter.setAttribute("ref", areaName(filtered));
  });
  return edit.parts;
}

/** The parts after entries right beneath tables without a totals row made them longer. */
export function withGrownTables(state: State, sheet: string, edits: readonly CellEdit[]): State["parts"] {
  let { parts } = state;
  for (const table of tablesOf(parts).filter((each) => each.sheet === sheet && each.totalsRows === 0)) {
    const { area } = table;
    const rows = new Set(edits.filter(({ value, formula, column }) => (value !== "" || formula !== undefined) && column >= area.left && column <= area.right).map(({ row }) => row));
    let bottom = area.bottom;
    while (rows.has(bottom + 1)) bottom += 1;
    if (bottom > area.bottom) parts = withArea({ ...state, parts }, table, { ...area, bottom });
  }
  return parts;
}
