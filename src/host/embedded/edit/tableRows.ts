/** Tables that grow: rows added under the last one, and entries typed right beneath. */
import type { Cell } from "../../../workbook/cell";
import { sameName } from "../../sheetNames";
import { totalsInTheWay } from "../../below";
import { HostError } from "../../workbookHost";
import { areaName, type Block } from "../../address";
import { bodyOf, tablesOf, type TableEntry } from "../book";
import { changedEverywhere } from "../formula/referencesEverywhere";
import { lookOf } from "../sheet/looks";
import { moveFormula } from "../formula/moveFormula";
import { PackageEdit } from "../package/packageParts";
import type { SheetData } from "../sheet/sheetXml";
import { isProtected, refuseImpossible, refuseLocked } from "./refusals";
import { cellIn, dataOf, formulaIn, sheetNamed, valueIn, withCells, type CellEdit, type State } from "../state";
import { children } from "../package/xml";

export function tableNamed(state: State, name: string): TableEntry {
  const table = tablesOf(state.parts).find((each) => sameName(each.name, name));
  if (table === undefined) throw new HostError("missing", `The workbook has no table "${name}".`);
  return table;
}

/** The state with rows added at the end of a table, and the first of them. */
export function withTableRows(
  state: State,
  name: string,
  rows: readonly ReadonlyMap<string, Cell>[],
): { readonly state: State; readonly first: { sheet: string; row: number; column: number } } {
  const table = tableNamed(state, name);
  const filled = rows.map((row) => byColumn(table, row));
  const sheet = sheetNamed(state, table.sheet);
  const body = bodyOf(table);
  // A new table has one blank row, which is the first to be filled.
  const start = body.top === body.bottom && isBlankRow(dataOf(state, sheet.part), body) ? body.top : body.bottom + 1;
  const longer = withLongerTable(state, table, Math.max(0, start + rows.length - 1 - body.bottom));
  const data = dataOf(longer, sheet.part);
  const edits = filled.flatMap((cells, index) => rowEdits(table, data, start + index, cells));
  refuseImpossible(edits);
  refuseLocked(state, sheet, edits);
  const edited = new Map(longer.edited).set(sheet.part, withCells(data, edits));
  return { state: { ...longer, edited, touched: true }, first: { sheet: sheet.name, row: start, column: body.left } };
}

/**
 * The state with a table drawn over rows below it, whatever stands in them.
 *
 * @throws HostError `failed` where a totals row, another table or joined cells are in the way, `protected` on a locked sheet
 */
export function withGrownTable(state: State, name: string, rows: number): State {
  const table = tableNamed(state, name);
  const { area } = table;
  if (table.totalsRows > 0) throw new HostError("failed", totalsInTheWay(table.name));
  const sheet = sheetNamed(state, table.sheet);
  const cells = Array.from({ length: rows }, (_, down) =>
    Array.from({ length: area.right - area.left + 1 }, (_, across) => ({ row: area.bottom + 1 + down, column: area.left + across })),
  ).flat();
  refuseImpossible(cells);
  if (isProtected(dataOf(state, sheet.part))) refuseLocked(state, sheet, cells);
  return { ...withLongerTable(state, table, rows, hasNoBlock(state, table)), touched: true };
}

/**
 * The state and the edits of a sheet after entries right beneath tables without a totals row made them longer. Columns that
 * are calculated are filled in the new rows.
 */
export function withGrownTables(
  before: State,
  sheet: string,
  edits: readonly CellEdit[],
): { readonly state: State; readonly edits: readonly CellEdit[] } {
  let state = before;
  let all = edits;
  for (const table of tablesOf(before.parts).filter((each) => each.sheet === sheet && each.totalsRows === 0)) {
    const { area } = table;
    const ofTable = edits.filter(({ column }) => column >= area.left && column <= area.right);
    const rows = new Set(ofTable.filter(({ value, formula }) => value !== "" || formula !== undefined).map(({ row }) => row));
    const isFree = freeBelow(state, table);
    let more = 0;
    while (rows.has(area.bottom + more + 1) && isFree(area.bottom + more + 1)) more += 1;
    if (more === 0) continue;
    const given = new Set(ofTable.map(({ row, column }) => `${row},${column}`));
    const data = dataOf(state, sheetNamed(state, sheet).part);
    const filled = Array.from({ length: more }, (_, index) => rowEdits(table, data, area.bottom + 1 + index, new Map())).flat();
    const styles = new Map(filled.map(({ row, column, style }) => [`${row},${column}`, style]));
    all = [
      ...filled.filter(({ row, column }) => !given.has(`${row},${column}`)),
      // A cell that has no look of its own takes that of the row above, as its neighbours do.
      ...all.map((edit) =>
        edit.style === 0 && styles.get(`${edit.row},${edit.column}`) !== undefined
          ? { ...edit, style: styles.get(`${edit.row},${edit.column}`)! }
          : edit,
      ),
    ];
    state = withLongerTable(state, table, more);
  }
  return { state, edits: all };
}

function byColumn(table: TableEntry, row: ReadonlyMap<string, Cell>): ReadonlyMap<number, Cell> {
  return new Map(
    [...row].map(([heading, cell]) => {
      const index = table.columns.findIndex((column) => sameName(column.name, heading));
      if (index < 0) throw new HostError("missing", `The table "${table.name}" has no column "${heading}".`);
      return [index, cell];
    }),
  );
}

/** A new row: what is given, the formulas of calculated columns, and the looks of the last row. */
function rowEdits(table: TableEntry, data: SheetData, row: number, cells: ReadonlyMap<number, Cell>): readonly CellEdit[] {
  const body = bodyOf(table);
  return table.columns.flatMap((column, index): readonly CellEdit[] => {
    const at = { row, column: body.left + index };
    const above = { row: body.bottom, column: at.column };
    const like = cellIn(data, above);
    const style = like === undefined ? {} : { style: like.style };
    const given = cells.get(index);
    if (given !== undefined) return [{ ...at, value: given, ...style }];
    const formula = column.formula === null ? null : (formulaIn(data, above, like) ?? column.formula);
    if (formula !== null && formula !== "")
      return [{ ...at, value: "", isUnknown: true, formula: moveFormula(formula, { rows: row - above.row, columns: 0 }), ...style }];
    return row === body.bottom || like === undefined ? [] : [{ ...at, value: "", ...style }];
  });
}

const isBlankRow = (data: SheetData, { top, left, right }: Block): boolean => {
  for (let column = left; column <= right; column += 1) if (valueIn(data, { row: top, column }) !== "") return false;
  return true;
};

/** Tells of rows below a table whether nothing stands in them, as wide as the table is. What is asked once is asked for all rows. */
export function freeBelow(state: State, table: TableEntry): (row: number) => boolean {
  const {
    area: { left, right },
    sheet,
  } = table;
  const data = dataOf(state, sheetNamed(state, sheet).part);
  const isOpen = hasNoBlock(state, table);
  return (row) => {
    if (!isOpen(row)) return false;
    for (let column = left; column <= right; column += 1) {
      const cell = cellIn(data, { row, column });
      if (cell !== undefined && (cell.value !== "" || cell.formula !== undefined)) return false;
    }
    return true;
  };
}

/** Tells of rows below a table whether no other table and no joined cells lie across its columns. */
function hasNoBlock(state: State, { area: { left, right }, sheet }: TableEntry): (row: number) => boolean {
  const data = dataOf(state, sheetNamed(state, sheet).part);
  const inTheWay = [
    ...tablesOf(state.parts)
      .filter((other) => other.sheet === sheet)
      .map(({ area }) => area),
    ...lookOf(data).merges,
  ].filter((area) => area.left <= right && area.right >= left);
  return (row) => !inTheWay.some((area) => row >= area.top && row <= area.bottom);
}

/**
 * The state with a table longer by some rows: its totals row moved down, and with it what points at it; formulas, lists,
 * formats and charts that took in all of its rows take in the new ones.
 *
 * @throws HostError where something stands in the way
 */
function withLongerTable(state: State, table: TableEntry, more: number, isFree = freeBelow(state, table)): State {
  if (more === 0) return state;
  const { area, totalsRows, sheet } = table;
  const body = bodyOf(table);
  for (let row = area.bottom + 1; row <= area.bottom + more; row += 1) {
    if (!isFree(row))
      throw new HostError(
        "failed",
        `Something stands right below the table "${table.name}" (row ${row + 1}). Move it, so that the table can grow.`,
      );
  }
  const isOfTable = (on: string, each: Block) =>
    on.toLowerCase() === sheet.toLowerCase() && each.left >= area.left && each.right <= area.right;
  const isTotals = (row: number) => totalsRows > 0 && row === area.bottom;
  const rows = [body.bottom + 1, area.bottom + 1];
  const concerned = new RegExp(`(?:^|[^0-9])(?:${rows.join("|")})(?![0-9])`);
  const referring = changedEverywhere(state, {
    mayConcern: (formula) => concerned.test(formula),
    area: (on, each) => {
      if (!isOfTable(on, each)) return each;
      if (isTotals(each.bottom)) return { ...each, top: isTotals(each.top) ? each.top + more : each.top, bottom: each.bottom + more };
      const takesInAll = each.bottom === body.bottom && (each.top === area.top || (each.top === body.top && body.top < body.bottom));
      return takesInAll ? { ...each, bottom: each.bottom + more } : each;
    },
    covered: (on, each) => (isOfTable(on, each) && each.bottom === body.bottom ? { ...each, bottom: each.bottom + more } : each),
  });
  const { part } = sheetNamed(referring, sheet);
  const data = dataOf(referring, part);
  const moved = totalsRows === 0 ? data : withCells(data, totalsMoved(table, data, more));
  return {
    ...referring,
    edited: new Map(referring.edited).set(part, moved),
    parts: withArea(referring, table, { ...area, bottom: area.bottom + more }),
    touched: true,
  };
}

export function totalsMoved({ area: { bottom, left, right } }: TableEntry, data: SheetData, rows: number): readonly CellEdit[] {
  return Array.from({ length: right - left + 1 }, (_, index) => left + index).flatMap((column): readonly CellEdit[] => {
    const cell = cellIn(data, { row: bottom, column });
    if (cell === undefined) return [];
    const formula = formulaIn(data, { row: bottom, column }, cell);
    const { value, style, isError = false, isUnknown = false } = cell;
    return [
      { row: bottom, column, value: "", style: 0 },
      { row: bottom + rows, column, value, style, isError, isUnknown, ...(formula === null ? {} : { formula }) },
    ];
  });
}

/** The parts with a table over another area, its filter and sorting with it. */
export function withArea({ parts }: State, table: TableEntry, area: Block): State["parts"] {
  const edit = new PackageEdit(parts);
  edit.edit(table.part, (root) => {
    root.setAttribute("ref", areaName(area));
    const filtered = { ...area, bottom: area.bottom - table.totalsRows };
    for (const filter of children(root, "autoFilter")) filter.setAttribute("ref", areaName(filtered));
    for (const sort of children(root, "sortState"))
      sort.setAttribute("ref", areaName({ ...filtered, top: filtered.top + table.headerRows }));
  });
  return edit.parts;
}
