/** Structured references, such as `Purchases[[#This Row],[Quantity]]`, as areas of cells. */
import type { Block } from "../../address";

/** A table as formulas know it. */
export type FormulaTable = {
  readonly name: string;
  /** Position of its sheet among the sheets of the workbook. */
  readonly sheet: number;
  /** Headings, body and totals row together. */
  readonly area: Block;
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly string[];
};

/** The row and sheet of the cell that a formula stands in. */
export type FormulaPlace = { readonly sheet: number; readonly row: number; readonly column: number };

/** What a structured reference says: a table (null: the one that the cell is in), which rows, and which columns. */
export type TableReference = {
  readonly table: string | null;
  readonly rows: ReadonlySet<"#all" | "#data" | "#headers" | "#totals" | "#this row">;
  /** None: all columns. */
  readonly columns: readonly string[];
};

/** Reads a token of kind `table`. */
export function tableReference(text: string): TableReference {
  const open = text.indexOf("[");
  const inside = text.slice(open + 1, -1).trim();
  const rows = new Set<"#all" | "#data" | "#headers" | "#totals" | "#this row">();
  const columns: string[] = [];
  const part = (raw: string, isBracketed: boolean) => {
    const word = isBracketed ? raw : raw.trim();
    const special = word.trim().toLowerCase();
    if (special === "#all" || special === "#data" || special === "#headers" || special === "#totals" || special === "#this row")
      rows.add(special);
    else if (word !== "") columns.push(word.replace(/'(.)/gs, "$1"));
  };
  const rest = inside.startsWith("@") ? inside.slice(1).trim() : inside;
  if (inside.startsWith("@")) rows.add("#this row");
  if (!rest.startsWith("[")) part(rest, false);
  else for (const [, raw = ""] of rest.matchAll(/\[((?:'.|[^[\]'])*)\]/gs)) part(raw, true);
  return { table: open === 0 ? null : text.slice(0, open), rows, columns };
}

/** The cells that a reference means for a formula in `place`; null where there are none, such as a table that has gone. */
export function tableArea(
  { table: name, rows, columns }: TableReference,
  place: FormulaPlace,
  tables: readonly FormulaTable[],
): { readonly sheet: number; readonly area: Block } | null {
  const table =
    name === null
      ? tables.find((each) => each.sheet === place.sheet && holds(each.area, place))
      : tables.find((each) => same(each.name, name));
  if (table === undefined) return null;
  const span = rowSpan(table, rows, place);
  const positions = columns.map((column) => table.columns.findIndex((each) => same(each, column)));
  if (span === null || positions.includes(-1)) return null;
  const left = table.area.left + (positions.length === 0 ? 0 : Math.min(...positions));
  const right = positions.length === 0 ? table.area.right : table.area.left + Math.max(...positions);
  return { sheet: table.sheet, area: { ...span, left, right } };
}

function rowSpan(
  { area, headerRows, totalsRows, sheet }: FormulaTable,
  rows: TableReference["rows"],
  place: FormulaPlace,
): { top: number; bottom: number } | null {
  const body = { top: area.top + headerRows, bottom: area.bottom - totalsRows };
  if (rows.has("#this row"))
    return place.sheet === sheet && place.row >= body.top && place.row <= body.bottom ? { top: place.row, bottom: place.row } : null;
  if (rows.has("#all")) return { top: area.top, bottom: area.bottom };
  const spans = [
    ...(rows.has("#headers") && headerRows > 0 ? [{ top: area.top, bottom: body.top - 1 }] : []),
    ...(rows.has("#data") || rows.size === 0 ? [body] : []),
    ...(rows.has("#totals") && totalsRows > 0 ? [{ top: body.bottom + 1, bottom: area.bottom }] : []),
  ];
  return spans.length === 0
    ? null
    : { top: Math.min(...spans.map(({ top }) => top)), bottom: Math.max(...spans.map(({ bottom }) => bottom)) };
}

const holds = (area: Block, { row, column }: FormulaPlace): boolean =>
  row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
const same = (one: string, other: string): boolean => plain(one) === plain(other);
/** Names are the same in any case; a line break in a heading is a blank to formulas. */
const plain = (name: string): string => name.toLowerCase().replace(/_x000a_|\r?\n/g, " ");
