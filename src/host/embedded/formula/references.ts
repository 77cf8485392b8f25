/** Formulas when a table grows or a heading changes: what pointed at it still does. */
import { columnName, parseArea, type Block } from "../../address";
import { formulaTokens, type FormulaToken } from "../recalculation/formulaTokens";

/** What becomes of references. */
export type ReferenceChange = {
  /** The area that takes the place of another on a sheet; the same one where it stays. */
  readonly area?: (sheet: string, area: Block) => Block;
  /** A column of a table with a new name. */
  readonly column?: { readonly table: string; readonly from: string; readonly to: string };
};

/**
 * A formula with its references changed.
 *
 * @param sheet the sheet that the formula stands on
 * @param ownTable the table that it stands in, for references that name a column alone
 */
export function withReferences(formula: string, sheet: string, ownTable: string | null, change: ReferenceChange): string {
  const tokens = formulaTokens(formula);
  return tokens.map((token, index) => changed(token, tokens[index - 1], { sheet, ownTable, change })).join("");
}

type Around = { readonly sheet: string; readonly ownTable: string | null; readonly change: ReferenceChange };

function changed({ kind, text }: FormulaToken, before: FormulaToken | undefined, { sheet, ownTable, change }: Around): string {
  if (kind === "area" && change.area !== undefined) {
    const area = parseArea(text);
    const on = before?.kind === "sheet" ? sheetName(before.text) : sheet;
    if (area === null) return text;
    const next = change.area(on, area);
    return next === area ? text : areaLike(text, next);
  }
  if (kind === "table" && change.column !== undefined) {
    const open = text.indexOf("[");
    const table = open === 0 ? ownTable : text.slice(0, open);
    if (table?.toLowerCase() !== change.column.table.toLowerCase()) return text;
    return text.slice(0, open) + renamed(text.slice(open), change.column.from, change.column.to);
  }
  return text;
}

const sheetName = (prefix: string): string =>
  prefix
    .slice(0, -1)
    .replace(/^'(.*)'$/s, "$1")
    .replaceAll("''", "'");

/** Another area, with the `$` marks and the shape (cell, block, whole columns) that the old text has. */
function areaLike(text: string, { top, left, bottom, right }: Block): string {
  const corners = text.split(":");
  const places =
    corners.length === 1
      ? [{ row: top, column: left }]
      : [
          { row: top, column: left },
          { row: bottom, column: right },
        ];
  return corners
    .map((corner, index) => {
      const [, columnMark = "", letters = "", rowMark = "", digits = ""] = /^(\$?)([A-Za-z]*)(\$?)(\d*)$/.exec(corner)!;
      const { row, column } = places[index]!;
      return `${columnMark}${letters === "" ? "" : columnName(column)}${rowMark}${digits === "" ? "" : row + 1}`;
    })
    .join(":");
}

/** Signs that structured references put an apostrophe before. */
const guarded = (name: string): string => name.replace(/[[\]#'@]/g, "'$&");

/** The column's name changed wherever it stands in brackets of its own. */
function renamed(brackets: string, from: string, to: string): string {
  return brackets.replace(/\[((?:'.|[^[\]'])*)\]/gs, (whole, inside: string) =>
    inside.replace(/'(.)/gs, "$1").toLowerCase() === from.toLowerCase() ? `[${guarded(to)}]` : whole,
  );
}
