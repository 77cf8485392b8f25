/** Rows inside a table put in another order, added or taken away; what pointed at them still does. */
import type { Cell } from "../../../workbook/cell";
import { HostError } from "../../workbookHost";
import { cellName, contains, parseArea, type Block } from "../../address";
import { attribute } from "../package/attribute";
import { bodyOf, bookOf, tablesOf, type TableEntry } from "../book";
import { changedEverywhere } from "../formula/referencesEverywhere";
import { lookOf } from "../sheet/looks";
import { moveFormula } from "../formula/moveFormula";
import { isOfType, relationshipsOf } from "../package/packageParts";
import { withReferences } from "../formula/references";
import { isProtected } from "./refusals";
import type { SheetData } from "../sheet/sheetXml";
import { cellIn, dataOf, formulaIn, sheetNamed, valueIn, withCells, type CellEdit, type State } from "../state";
import { freeBelow, tableNamed, totalsMoved, withArea } from "./tableRows";
import { textOf } from "../package/xml";

/** So many cells are named where a change would break them. */
const mostNamed = 5;

/** The state with blank rows above a row of a table's body, rows counted as on the sheet. Calculated columns are filled in them. */
export function withInsertedRows(state: State, name: string, above: number, count: number): State {
  const table = tableNamed(state, name);
  const rows = bodyRows(table);
  const at = rows.indexOf(above);
  if (at < 0) throw new HostError("missing", `The table "${table.name}" has no entry ${above + 1}.`);
  return withBody(state, table, [...rows.slice(0, at), ...Array<null>(count).fill(null), ...rows.slice(at)]);
}

/**
 * The state without some rows of a table's body. The last one left is only emptied, because a table has at least one.
 *
 * @throws HostError where a formula elsewhere reads nothing but what goes, with the cells that do
 */
export function withoutRows(state: State, name: string, gone: readonly number[]): State {
  const table = tableNamed(state, name);
  const rows = bodyRows(table);
  const going = new Set(gone.filter((row) => rows.includes(row)));
  if (going.size === 0) throw new HostError("missing", `Select entries of the table "${table.name}" that are to be deleted.`);
  const readers = readersOf(
    state,
    table,
    (area) => rowsOf(area).every((row) => going.has(row)),
    (row) => going.has(row),
  );
  if (readers.length > 0)
    throw new HostError(
      "failed",
      `Nothing was deleted: ${listed(readers)} ${readers.length === 1 ? "reads" : "read"} what would go. Change the formula there first.`,
    );
  const left = rows.filter((row) => !going.has(row));
  return withBody(state, table, left.length === 0 ? [null] : left);
}

/**
 * The state with a table's body sorted by one of its columns, rows moved whole: numbers and dates first, then words, blanks last.
 *
 * @throws HostError where a formula would then say something else, with the cells that would
 */
export function withSortedRows(state: State, name: string, column: number, downwards: boolean): State {
  const table = tableNamed(state, name);
  const { part } = sheetNamed(state, table.sheet);
  const data = dataOf(state, part);
  const rows = bodyRows(table);
  const isWhole = (area: Block) =>
    rows.length > 1 && rowsOf(area).length >= rows.length && area.top <= rows[0]! && area.bottom >= rows.at(-1)!;
  const readers = readersOf(
    state,
    table,
    (area, row) => !isWhole(area) && !(area.top === row && area.bottom === row),
    () => false,
  );
  if (readers.length > 0)
    throw new HostError(
      "failed",
      `Nothing was sorted: ${listed(readers)} ${readers.length === 1 ? "reads" : "read"} single entries of ${plainName(table)} and ` +
        "would read others then. Change the formula there first.",
    );
  const values = new Map(rows.map((row) => [row, valueIn(data, { row, column })]));
  const order = [...rows].sort((one, other) => compared(values.get(one)!, values.get(other)!, downwards) || one - other);
  return withBody(state, table, order);
}

function compared(one: Cell, other: Cell, downwards: boolean): number {
  const rank = (cell: Cell) => (cell === "" ? 3 : typeof cell === "number" ? 0 : typeof cell === "string" ? 1 : 2);
  if (rank(one) === 3 || rank(other) === 3 || rank(one) !== rank(other)) return rank(one) - rank(other);
  const up =
    typeof one === "number" && typeof other === "number"
      ? one - other
      : String(one).localeCompare(String(other), "en", { numeric: true, sensitivity: "base" });
  return downwards ? -up : up;
}

const plainName = ({ name }: TableEntry): string => name.replaceAll("_", " ");
const rowsOf = ({ top, bottom }: Block): number[] => Array.from({ length: bottom - top + 1 }, (_, index) => top + index);
const bodyRows = (table: TableEntry): number[] => rowsOf(bodyOf(table));
const listed = (readers: readonly string[]): string =>
  `${readers.slice(0, mostNamed).join(", ")}${readers.length > mostNamed ? ` and ${readers.length - mostNamed} more` : ""}`;

/**
 * Cells, names and charts whose formula reads an area of a table's body that `matters`; formulas in rows that are left aside do
 * not count. `row` is where the formula stands if that is in the body, else -1.
 */
function readersOf(
  state: State,
  table: TableEntry,
  matters: (area: Block, row: number) => boolean,
  isLeftAside: (row: number) => boolean,
): string[] {
  const body = bodyOf(table);
  const found: string[] = [];
  const look = (formula: string, sheet: string, own: string | null, row: number, who: string) => {
    let isReader = false;
    withReferences(formula, sheet, own, {
      area: (on, each) => {
        const inside = { ...each, top: Math.max(each.top, body.top), bottom: Math.min(each.bottom, body.bottom) };
        const isHere =
          on.toLowerCase() === table.sheet.toLowerCase() &&
          each.left <= body.right &&
          each.right >= body.left &&
          inside.top <= inside.bottom;
        if (isHere && inside.top === each.top && inside.bottom === each.bottom) isReader ||= matters(inside, row);
        else if (
          isHere &&
          (each.top < body.top - table.headerRows ||
            each.bottom > body.bottom + table.totalsRows ||
            each.top > body.top ||
            each.bottom < body.bottom)
        )
          isReader ||= matters(inside, row);
        return each;
      },
    });
    if (isReader) found.push(who);
  };
  for (const { name, part } of bookOf(state.parts).sheets) {
    const data = dataOf(state, part);
    const tables = tablesOf(state.parts).filter(({ sheet }) => sheet === name);
    for (const row of data.rows.withFormulas()) {
      for (const cell of data.rows.get(row)!.cells) {
        const formula = formulaIn(data, { row, column: cell.column }, cell);
        if (cell.formula === undefined || formula === null) continue;
        const at = { row, column: cell.column };
        const isInBody = name === table.sheet && contains(body, at);
        if (isInBody && isLeftAside(row)) continue;
        look(formula, name, tables.find(({ area }) => contains(area, at))?.name ?? null, isInBody ? row : -1, `${name}, ${cellName(at)}`);
      }
    }
  }
  for (const { name, refersTo } of bookOf(state.parts).names)
    if (!name.startsWith("_xlnm") && !name.startsWith("Pennyacre_")) look(refersTo, "", null, -1, `the name ${name}`);
  return found;
}

/** The table with its body made anew: of each row which one it was before, or `null` for a blank one. */
function withBody(state: State, table: TableEntry, order: readonly (number | null)[]): State {
  const sheet = sheetNamed(state, table.sheet);
  refuseFixed(state, table);
  const body = bodyOf(table);
  const { left, right } = body;
  const more = order.length - (body.bottom - body.top + 1);
  const isFree = freeBelow(state, table);
  for (let row = table.area.bottom + 1; row <= table.area.bottom + more; row += 1) {
    if (!isFree(row))
      throw new HostError(
        "failed",
        `Something stands right below the table "${table.name}" (row ${row + 1}). Move it, so that the table can grow.`,
      );
  }
  const now = new Map(order.flatMap((before, index) => (before === null ? [] : [[before, body.top + index] as const])));
  const kept = [...now.keys()];
  const keepsOrder = kept.every((row, index) => index === 0 || row > kept[index - 1]!);
  const referring = keepsOrder ? withReferencesMoved(state, table, now, more) : state;
  const data = dataOf(referring, sheet.part);

  const edits = new Map<string, CellEdit>();
  const put = (edit: CellEdit) => edits.set(`${edit.row},${edit.column}`, edit);
  order.forEach((before, index) => {
    const row = body.top + index;
    if (before === row) return;
    for (let column = left; column <= right; column += 1)
      put(before === null ? blankCell(data, table, order, index, column, now) : movedCell(data, table, before, row, column, keepsOrder));
  });
  for (let row = body.top + order.length; row <= body.bottom; row += 1) {
    for (let column = left; column <= right; column += 1) put({ row, column, value: "", style: 0 });
  }
  if (table.totalsRows > 0 && more !== 0) {
    // Where the totals stood an entry stands now, if there are more of them.
    for (const edit of totalsMoved(table, data, more)) if (more < 0 || edit.row !== table.area.bottom) put(edit);
  }
  const changed = { ...referring, edited: new Map(referring.edited).set(sheet.part, withCells(data, [...edits.values()])), touched: true };
  return more === 0 ? changed : { ...changed, parts: withArea(changed, table, { ...table.area, bottom: table.area.bottom + more }) };
}

/** A cell at its new row. Where rows change their order its formula goes along: what it read in its own row it reads in the new one. */
function movedCell(data: SheetData, table: TableEntry, from: number, row: number, column: number, isWorded: boolean): CellEdit {
  const at = { row: from, column };
  const cell = cellIn(data, at);
  if (cell === undefined) return { row, column, value: "", style: 0 };
  const { value, style, isError = false, isUnknown = false } = cell;
  const formula = formulaIn(data, at, cell);
  const body = bodyOf(table);
  const worded =
    formula === null || isWorded
      ? formula
      : withReferences(formula, table.sheet, table.name, {
          area: (on, area) =>
            on.toLowerCase() === table.sheet.toLowerCase() &&
            area.top === from &&
            area.bottom === from &&
            area.left <= body.right &&
            area.right >= body.left
              ? { ...area, top: row, bottom: row }
              : area,
        });
  return { row, column, value, style, isError, isUnknown, ...(worded === null ? {} : { formula: worded }) };
}

/** A cell of a new row: the look of the row above, else below, and the formula of a calculated column. */
function blankCell(
  data: SheetData,
  table: TableEntry,
  order: readonly (number | null)[],
  index: number,
  column: number,
  now: ReadonlyMap<number, number>,
): CellEdit {
  const row = bodyOf(table).top + index;
  const like =
    order.slice(0, index).findLast((each) => each !== null) ?? order.slice(index).find((each) => each !== null) ?? bodyOf(table).top;
  const cell = cellIn(data, { row: like, column });
  const style = cell?.style ?? 0;
  const calculated = table.columns[column - table.area.left]?.formula ?? null;
  if (calculated === null || calculated === "") return { row, column, value: "", style };
  const formula = formulaIn(data, { row: like, column }, cell);
  return {
    row,
    column,
    value: "",
    style,
    isUnknown: true,
    formula: formula === null ? calculated : moveFormula(formula, { rows: row - (now.get(like) ?? like), columns: 0 }),
  };
}

/** References to the rows of the body at their new places, where rows keep their order. */
function withReferencesMoved(state: State, table: TableEntry, now: ReadonlyMap<number, number>, more: number): State {
  const body = bodyOf(table);
  const kept = [...now.keys()];
  const isTotals = (row: number) => table.totalsRows > 0 && row === table.area.bottom;
  const area = (on: string, each: Block): Block => {
    if (on.toLowerCase() !== table.sheet.toLowerCase() || each.left < table.area.left || each.right > table.area.right) return each;
    if (each.bottom < body.top || each.top > table.area.bottom) return each;
    const takesInAll = each.top <= body.top && each.bottom >= body.bottom && (body.top < body.bottom || each.top < body.top);
    const top =
      takesInAll || each.top < body.top
        ? each.top
        : isTotals(each.top)
          ? each.top + more
          : (now.get(kept.find((row) => row >= each.top) ?? -1) ?? each.top);
    const last =
      each.bottom > body.bottom
        ? isTotals(each.bottom)
          ? each.bottom + more
          : each.bottom
        : takesInAll
          ? body.bottom + more
          : (now.get(kept.findLast((row) => row <= each.bottom) ?? -1) ?? each.bottom);
    return top === each.top && last === each.bottom ? each : { ...each, top, bottom: Math.max(top, last) };
  };
  return changedEverywhere(state, { mayConcern: (formula) => /\d/.test(formula), area, covered: area });
}

/** Refuses where something in the table's rows would not move along. */
function refuseFixed(state: State, table: TableEntry): void {
  const { part, name } = sheetNamed(state, table.sheet);
  const data = dataOf(state, part);
  const { area } = table;
  const fail = (words: string) => {
    throw new HostError("failed", `${words} Nothing was changed.`);
  };
  if (isProtected(data))
    throw new HostError(
      "protected",
      `The sheet "${name}" is protected. Take the protection off in Excel (Review, Unprotect Sheet) and try again.`,
    );
  const hidden = data.rows.hiddenRows().find((row) => row >= area.top && row <= area.bottom);
  if (hidden !== undefined)
    fail(
      `Rows of ${plainName(table)} are hidden in the workbook (row ${hidden + 1}), by hand or by a filter. Show all of them in ` +
        "Excel first.",
    );
  const joined = lookOf(data).merges.find((each) => overlap(each, area));
  if (joined !== undefined)
    fail(`Cells of ${plainName(table)} are joined (${cellName({ row: joined.top, column: joined.left })}). Unmerge them in Excel first.`);
  for (let row = area.top; row <= area.bottom; row += 1) {
    const cell = data.rows
      .get(row)
      ?.cells.find(
        ({ column, formula }) => column >= area.left && column <= area.right && (formula?.kind === "array" || formula?.kind === "table"),
      );
    if (cell !== undefined) fail(`Cell ${cellName({ row, column: cell.column })} holds an array formula, which cannot be moved.`);
  }
  const notes = relationshipsOf(state.parts, part)
    .filter((each) => isOfType(each, "comments"))
    .flatMap(({ target }) => [...textOf(state.parts.get(target)!).matchAll(/<(?:\w+:)?comment\s[^>]*>/g)]);
  const links = [...data.after.matchAll(/<(?:\w+:)?hyperlink\s[^>]*>/g)];
  const fixed = [...notes, ...links]
    .map(([tag]) => parseArea(attribute(tag, "ref") ?? ""))
    .find((each) => each !== null && overlap(each, bodyOf(table)));
  if (fixed !== undefined && fixed !== null)
    fail(
      `Cell ${cellName({ row: fixed.top, column: fixed.left })} has a note or a link, which would stay behind. Move the entries in Excel.`,
    );
}

const overlap = (one: Block, other: Block): boolean =>
  one.left <= other.right && one.right >= other.left && one.top <= other.bottom && one.bottom >= other.top;
