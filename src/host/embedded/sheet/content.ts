/** What is read of a workbook in one go. */
import type { Cell, RawTable, WorkbookContent } from "../../../workbook/cell";
import { matchColumns } from "../../../workbook/columns/matches";
import { cellsBeside } from "../../../workbook/matchConstants";
import { showsPercent, unclearRates } from "../../../workbook/percentCells";
import { matchesTable } from "../../../workbook/tableNames";
import { sameName } from "../../sheetNames";
import { HostError } from "../../workbookHost";
import { areaName, cellName, parseArea, splitSheet, type Block } from "../../address";
import { filledRows, lastRowBelow } from "../../below";
import { bodyOf, bookOf, tablesOf, type TableEntry } from "../book";
import type { SheetData } from "./sheetXml";
import { cellIn, dataOf, sheetNamed, valueIn, type State } from "../state";
import { styleAt } from "../package/styles";

/** More cells than any season has. A table drawn over a whole sheet has 17 billion, which no memory holds. */
const mostCells = 20_000_000;
const isTooLarge = ({ top, left, bottom, right }: Block): boolean => (bottom - top + 1) * (right - left + 1) > mostCells;
const tooLarge = (area: Block): string => `It covers ${areaName(area)}, which is more than can be read.`;

export function contentOf(state: State): WorkbookContent {
  const all = tablesOf(state.parts);
  const unreadable = all.filter(({ area }) => isTooLarge(area)).map(({ name, area }) => ({ name, why: tooLarge(area) }));
  const read = all.filter(({ area }) => !isTooLarge(area)).map((table) => ({ table, raw: rawTable(state, table) }));
  const tables = read.map(({ raw }) => raw);
  const matches = tables.find(({ name }) => sameName(name, matchesTable));
  const [range, heading] = [matchColumns.columns.range, matchColumns.columns.heading].map(
    ({ heading: of }) => matches?.headers.findIndex((each) => sameName(each, of)) ?? -1,
  ) as [number, number];
  const matched = (matches?.rows ?? [])
    .map((row) => ({ range: String(row[range] ?? "").trim(), heading: String(row[heading] ?? "") }))
    .filter((each) => each.range !== "");
  const wanted = new Set(matched.map((each) => each.range));
  const ranges = new Map(
    [...new Set([...wanted, ...cellsBeside(matched)])].flatMap((text) => {
      const range = rangeNamed(state, text, wanted);
      return range === null ? [] : [[text, range] as const];
    }),
  );
  const withBelow = read.map(({ table, raw }): RawTable => {
    const { sheet, area } = table;
    return { ...raw, ...belowIn(dataOf(state, sheetNamed(state, sheet).part), area, bodyOf(table).bottom, blocksOn(state, sheet, wanted)) };
  });
  return {
    dateSystem: bookOf(state.parts).date1904 ? "1904" : "1900",
    tables: withBelow,
    ranges,
    ...(unreadable.length > 0 && { unreadable }),
  };
}

function rawTable(state: State, table: TableEntry): RawTable {
  const { part } = sheetNamed(state, table.sheet);
  const data = dataOf(state, part);
  const body = bodyOf(table);
  const headers = table.columns.map(({ name }, index) => {
    const cell = table.headerRows === 0 ? "" : valueIn(data, { row: table.area.top, column: table.area.left + index });
    return cell === "" ? name : String(cell);
  });
  return {
    name: table.name,
    headers,
    rows: rowsOf(data, body),
    body: { sheet: table.sheet, row: body.top, column: body.left },
    ...staleIn(state, part, body),
    ...percentsIn(state, part, table.name, headers, body),
  };
}

const rowsOf = ({ rows }: SheetData, area: Block): readonly (readonly Cell[])[] => rows.valuesOf(area);

/** The rows below a block with something in them. `body`: its last body row, below which a totals row may stand. */
function belowIn(data: SheetData, block: Block, body: number, others: readonly Block[]): Pick<RawTable, "below"> {
  const { left, right, bottom } = block;
  const last = lastRowBelow(block, others);
  const below = data.rows
    .numbers()
    .filter((row) => row > bottom && row <= last)
    .flatMap((row) => filledRows(rowsOf(data, { top: row, bottom: row, left, right }), row - body));
  return below.length === 0 ? {} : { below };
}

/** The blocks of a sheet that have rows of their own: its tables, and the ranges that the table Matches names. */
function blocksOn({ parts }: State, sheet: string, matched: Iterable<string>): readonly Block[] {
  const isHere = (name: string | null) => name !== null && sameName(name, sheet);
  return [
    ...tablesOf(parts)
      .filter((table) => isHere(table.sheet))
      .map(({ area }) => area),
    ...[...matched].flatMap((text) => {
      const { sheet: on, area } = splitSheet(text);
      return isHere(on) ? (parseArea(area) ?? []) : [];
    }),
  ];
}

/** The rates that only their number format tells, and that show percent. */
function percentsIn(state: State, part: string, table: string | null, headers: readonly string[], body: Block): Pick<RawTable, "percents"> {
  const data = dataOf(state, part);
  const percents = unclearRates(table, { headers, rows: rowsOf(data, body) }).filter(({ row, column }) =>
    showsPercent(styleAt(state.parts, cellIn(data, { row: body.top + row, column: body.left + column })?.style ?? 0).numberFormat),
  );
  return percents.length === 0 ? {} : { percents };
}

/** What recalculation has to tell of the cells of a body. */
function staleIn({ stale, differing }: State, part: string, body: Block): Pick<RawTable, "stale" | "differing"> {
  const within = (key: string): { row: number; column: number } | null => {
    if (!key.startsWith(`${part}!`)) return null;
    const at = parseArea(key.slice(part.length + 1))!;
    return at.top >= body.top && at.top <= body.bottom && at.left >= body.left && at.left <= body.right
      ? { row: at.top - body.top, column: at.left - body.left }
      : null;
  };
  const old = [...stale].flatMap((key) => within(key) ?? []);
  const other = [...differing].flatMap(([key, notCounted]) => {
    const at = within(key);
    return at === null ? [] : [{ ...at, notCounted }];
  });
  return { ...(old.length === 0 ? {} : { stale: old }), ...(other.length === 0 ? {} : { differing: other }) };
}

/**
 * The range that a text names, by its address or by a name of the workbook; `null` where there is none.
 *
 * @param matched all that the table Matches names
 */
function rangeNamed(state: State, text: string, matched: Iterable<string> = []): RawTable | null {
  const { sheet, area } = splitSheet(text);
  const found = parseArea(area);
  if (sheet !== null && found !== null) return rangeAt(state, text, sheet, found, matched);
  const name = bookOf(state.parts).names.find((each) => each.name.toLowerCase() === text.toLowerCase());
  if (name === undefined) return null;
  const target = splitSheet(name.refersTo);
  const named = parseArea(target.area);
  return target.sheet === null || named === null ? null : rangeAt(state, text, target.sheet, named, matched);
}

function rangeAt(state: State, text: string, sheet: string, area: Block, matched: Iterable<string>): RawTable | null {
  const entry = bookOf(state.parts).sheets.find((each) => each.name.toLowerCase() === sheet.toLowerCase());
  if (entry === undefined) return null;
  const data = dataOf(state, entry.part);
  const within = usedPart(data, area);
  if (within === null) return { name: text, headers: [], rows: [], body: { sheet: entry.name, row: area.top + 1, column: area.left } };
  if (isTooLarge(within)) throw new HostError("failed", `The range ${text} of the table Matches cannot be read. ${tooLarge(within)}`);
  const [headers = [], ...rows] = rowsOf(data, within);
  const body = { ...within, top: within.top + 1 };
  const below = belowIn(data, { ...within, bottom: area.bottom }, within.bottom, blocksOn(state, entry.name, matched));
  // A range takes in entries right under it, so that what is to be told of its cells is told of those as well.
  const withBelow = { ...body, bottom: body.bottom + Math.max(0, ...(below.below ?? []).map(({ by }) => by)) };
  return {
    name: text,
    ...below,
    headers: headers.map(String),
    rows,
    body: { sheet: entry.name, row: body.top, column: body.left },
    ...staleIn(state, entry.part, withBelow),
    ...percentsIn(state, entry.part, null, headers.map(String), withBelow),
  };
}

/** The smallest block within an area that holds everything in it, as Excel's used range does; null where nothing is. */
export function usedPart({ rows }: SheetData, area: Block): Block | null {
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
