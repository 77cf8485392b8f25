/** Sheets and cells as a grid shows them. */
import { daysBetweenSystems } from "../../../workbook/daySerial";
import { format, isDateFormat } from "numfmt";
import type { Cell } from "../../../workbook/cell";
import { contains, parseArea, type Block, type At } from "../../address";
import { resultSheetMark } from "../../sheetNames";
import { oncePer } from "../oncePer";
import { bodyOf, bookOf, sheetPosition, tablesOf } from "../book";
import { staleKey } from "./content";
import { asTyped } from "../formula/formulaEntry";
import { lookOf, type SheetLook } from "./looks";
import { choiceLists } from "./choices";
import { listHeading } from "../edit/newTables";
import { usedArea, type SheetData } from "./sheetXml";
import { cellIn, dataOf, formulaIn, sheetNamed, valueIn, type State } from "../state";
import { stylesOf, usual } from "../package/styles";

/** A table for a grid: `body` holds its rows without headings and totals. */
type GridTable = { readonly name: string; readonly area: Block; readonly body: Block; readonly totalsRows: number };
/** A sheet for a grid: `used` is the smallest block that holds every cell. */
export type GridSheet = SheetLook & {
  readonly name: string;
  readonly hidden: boolean;
  /** A result sheet of ours, made again at each writing. */ readonly isResult: boolean;
  readonly used: Block | null;
  /** How many columns are in use without the words of our drop-down lists, which stand beside a table. */
  readonly columnsBesideLists: number;
  readonly tables: readonly GridTable[];
};
export type GridCell = {
  readonly value: Cell;
  /** The value is an error such as `#N/A`, and not a text that looks like one. */
  readonly isError: boolean;
  /** As it is typed, without its `=`; null where there is none. */
  readonly formula: string | null;
  /** As it is shown. */
  readonly text: string;
  readonly numberFormat: string;
  readonly bold: boolean;
  readonly italic: boolean;
  /** `null`: by what the cell holds. */
  readonly align: "left" | "center" | "right" | null;
  /** Whether the cell has a fill of its own, of whatever colour. */
  readonly shaded: boolean;
  /** The formula could not be worked out again after a change, so that the value may be old. */
  readonly stale: boolean;
};

export function gridSheets(state: State): readonly GridSheet[] {
  const tables = tablesOf(state.parts);
  const { sheets, names } = bookOf(state.parts);
  const marked = new Set(names.filter(({ name }) => name === resultSheetMark).map(({ sheet }) => sheet));
  return sheets.map(({ name, part, hidden }) => {
    const data = dataOf(state, part);
    const own = tables.filter(({ sheet }) => sheet === name);
    return {
      name,
      hidden,
      isResult: marked.has(sheetPosition(state.parts, name)),
      used: usedArea(data),
      columnsBesideLists: columnsBesideLists(data),
      ...lookOf(data),
      tables: own.map((table) => ({ name: table.name, area: table.area, body: bodyOf(table), totalsRows: table.totalsRows })),
    };
  });
}

/** Columns in use from the left, those aside that hold nothing but the words of a list that we put there. */
function columnsBesideLists(data: SheetData): number {
  const used = usedArea(data);
  if (used === null) return 0;
  const words = choiceLists(data).flatMap(({ source }) => {
    const area = parseArea(source);
    const isOurs =
      area !== null &&
      area.top === 1 &&
      area.left === area.right &&
      String(valueIn(data, { row: 0, column: area.left })).startsWith(listHeading(""));
    return isOurs ? [{ ...area, top: 0 }] : [];
  });
  if (words.length === 0) return used.right + 1;
  let right = -1;
  for (const row of data.rows.numbers())
    data.rows.eachValue(row, (column, value) => {
      if (value !== "" && !words.some((area) => contains(area, { row, column }))) right = Math.max(right, column);
    });
  return right + 1;
}

/** What every cell of a state asks: a state is never changed, so that it is looked up once and not for each cell. */
const factsOf = oncePer(({ parts }: State) => ({ styles: stylesOf(parts), isFrom1904: bookOf(parts).date1904 }));
const lookedUp = oncePer((_: State) => new Map<string, { readonly part: string; readonly data: SheetData }>());

function sheetIn(state: State, name: string): { readonly part: string; readonly data: SheetData } {
  const known = lookedUp(state);
  let sheet = known.get(name);
  if (sheet === undefined) {
    const { part } = sheetNamed(state, name);
    known.set(name, (sheet = { part, data: dataOf(state, part) }));
  }
  return sheet;
}

/** How a cell shows its number. */
export const numberFormatAt = (state: State, sheet: string, at: At): string =>
  (factsOf(state).styles[cellIn(sheetIn(state, sheet).data, at)?.style ?? 0] ?? usual).numberFormat;

export function gridCell(state: State, sheet: string, at: At): GridCell {
  const { part, data } = sheetIn(state, sheet);
  const cell = cellIn(data, at);
  const { numberFormat, bold, italic, align, shaded } = factsOf(state).styles[cell?.style ?? 0] ?? usual;
  const { value = "", isError = false } = cell ?? {};
  const formula = formulaIn(data, at, cell);
  return {
    value,
    isError,
    formula: formula === null ? null : asTyped(formula),
    text: shown(state, value, numberFormat),
    numberFormat,
    bold,
    italic,
    align,
    shaded,
    stale: state.stale.has(staleKey(part, at.row, at.column)),
  };
}

function shown(state: State, value: Cell, numberFormat: string): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") return value;
  const isShifted = factsOf(state).isFrom1904 && isDateFormat(numberFormat);
  return format(numberFormat, isShifted ? value + daysBetweenSystems : value, { throws: false });
}
