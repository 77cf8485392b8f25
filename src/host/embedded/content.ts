/** What is read of a workbook in one go. */
import type { Cell, RawTable, WorkbookContent } from "../../workbook/cell";
import { sameName } from "../sheetNames";
import { HostError } from "../workbookHost";
import { areaName, cellName, parseArea, splitSheet, type Area } from "../address";
import { bodyOf, bookOf, tablesOf, type TableEntry } from "./book";
import type { SheetData } from "./sheetXml";
import { dataOf, sheetNamed, valueIn, type State } from "./state";

/** More cells than any season has. A table drawn over a whole sheet has 17 billion, which no memory holds. */
const mostCells = 20_000_000;
const isTooLarge = ({ top, left, bottom, right }: Area): boolean => (bottom - top + 1) * (right - left + 1) > mostCells;
const tooLarge = (area: Area): string => `It covers ${areaName(area)}, which is more than can be read.`;

export function contentOf(state: State): WorkbookContent {
  const all = tablesOf(state.parts);
  const unreadable = all.filter(({ area }) => isTooLarge(area)).map(({ name, area }) => ({ name, why: tooLarge(area) }));
  const tables = all.filter(({ area }) => !isTooLarge(area)).map((table) => rawTable(state, table));
  const matches = tables.find(({ name }) => sameName(name, "Matches"));
  const column = matches?.headers.findIndex((heading) => sameName(heading, "Range")) ?? -1;
  const wanted = new Set((matches?.rows ?? []).map((row) => String(row[column] ?? "").trim()).filter((text) => text !== ""));
  const ranges = new Map([...wanted].flatMap((text) => {
    const range = rangeNamed(state, text);
    return range === null ? [] : [[text, range] as const];
  }));
  return { dateSystem: bookOf(state.parts).date1904 ? "1904" : "1900", tables, ranges, ...(unreadable.length > 0 && { unreadable }) };
}

function rawTable(state: State, table: TableEntry): RawTable {
  const { part } = sheetNamed(state, table.sheet);
  const data = dataOf(state, part);
  const body = bodyOf(table);
  const headers = table.columns.map(({ name }, index) => {
    const cell = table.headerRows === 0 ? "" : valueIn(data, { row: table.area.top, column: table.area.left + index });
    return cell === "" ? name : String(cell);
  });
  return { name: table.name, headers, rows: rowsOf(data, body), body: { sheet: table.sheet, row: body.top, column: body.left }, ...staleIn(state, part, body), ...(table.totalsRows > 0 ? {} : belowIn(state, table.sheet, data, table.area)) };
}

const rowsOf = ({ rows }: SheetData, area: Area): readonly (readonly Cell[])[] => rows.valuesOf(area);

/** The rows with entries that follow a block without a gap, up to another table. */
function belowIn(state: State, sheet: string, data: SheetData, { left, right, bottom }: Area): Pick<RawTable, "below"> {
  const others = tablesOf(state.parts).filter((other) => other.sheet === sheet && other.area.left <= right && other.area.right >= left);
  const below: (readonly Cell[])[] = [];
  for (let row = bottom + 1; !others.some(({ area }) => row >= area.top && row <= area.bottom); row += 1) {
    const [cells = []] = rowsOf(data, { top: row, bottom: row, left, right });
    if (cells.every((cell) => cell === "")) break;
    below.push(cells);
  }
  return below.length === 0 ? {} : { below };
}

/** What recalculation has to tell of the cells of a body. */
function staleIn({ stale, differing }: State, part: string, body: Area): Pick<RawTable, "stale" | "differing"> {
  const within = (key: string): { row: number; column: number } | null => {
    if (!key.startsWith(`${part}!`)) return null;
    const at = parseArea(key.slice(part.length + 1))!;
    return at.top >= body.top && at.top <= body.bottom && at.left >= body.left && at.left <= body.right ? { row: at.top - body.top, column: at.left - body.left } : null;
  };
  const old = [...stale].flatMap((key) => within(key) ?? []);
  const other = [...differing].flatMap(([key, notCounted]) => {
    const at = within(key);
    return at === null ? [] : [{ ...at, notCounted }];
  });
  return { ...(old.length === 0 ? {} : { stale: old }), ...(other.length === 0 ? {} : { differing: other }) };
}

/** The range that a text names, by its address or by a name of the workbook; `null` where there is none. */
export function rangeNamed(state: State, text: string): RawTable | null {
  const { sheet, area } = splitSheet(text);
  const found = parseArea(area);
  if (sheet !== null && found !== null) return rangeAt(state, text, sheet, found);
  const name = bookOf(state.parts).names.find((each) => each.name.toLowerCase() === text.toLowerCase());
  if (name === undefined) return null;
  const target = splitSheet(name.refersTo);
  const named = parseArea(target.area);
  return target.sheet === null || named === null ? null : rangeAt(state, text, target.sheet, named);
}

function rangeAt(state: State, text: string, sheet: string, area: Area): RawTable | null {
  const entry = bookOf(state.parts).sheets.find((each) => each.name.toLowerCase() === sheet.toLowerCase());
  if (entry === undefined) return null;
  const data = dataOf(state, entry.part);
  const within = usedPart(data, area);
  if (within === null) return { name: text, headers: [], rows: [], body: { sheet: entry.name, row: area.top + 1, column: area.left } };
  if (isTooLarge(within)) throw new HostError("failed", `The range ${text} of the table Matches cannot be read. ${tooLarge(within)}`);
  const [headers = [], ...rows] = rowsOf(data, within);
  const body = { ...within, top: within.top + 1 };
  const below = within.bottom === area.bottom ? belowIn(state, entry.name, data, within) : {};
  return { name: text, ...below, headers: headers.map(String), rows, body: { sheet: entry.name, row: body.top, column: body.left }, ...staleIn(state, entry.part, body) };
}

/** The smallest block within an area that holds everything in it, as Excel's used range does; null where nothing is. */
export function usedPart({ rows }: SheetData, area: Area): Area | null {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const row of rows.numbers()) {
    if (row < area.top || row > area.bottom) continue;
    rows.eachValue(row, (column, value) => {
      if (value === "" || column < area.left || column > area.right) return;
      top = Math.min(top, row);
      bottom = row;
      left = Math.min(left, column);
      right = Math.max(right, column);
    });
  }
  return bottom < 0 ? null : { top, left, bottom, right };
}

export const staleKey = (part: string, row: number, column: number): string => `${part}!${cellName({ row, column })}`;
