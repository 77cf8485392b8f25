import type { CellStyle, ResultSheet, SheetCell } from "../../workbook/resultSheet";
import { fillColours, widthInPoints } from "../sheetLook";
import { rectanglesByKey } from "./rectangles";
import { asTyped } from "./typedCells";

/** Cells, number formats, looks, column widths and merges of a result sheet on an empty sheet. */
export function putBlock(sheet: Excel.Worksheet, { rows, columns, merges = [] }: ResultSheet): void {
  columns.forEach((characters, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).untrack().format.columnWidth = widthInPoints(characters);
  });
  const width = Math.max(0, ...rows.map((row) => row.length));
  if (width === 0) return;

  const cells = rows.map((row) => Array.from({ length: width }, (_, column): SheetCell => row[column] ?? { value: "" }));
  const block = sheet.getRangeByIndexes(0, 0, cells.length, width).untrack();
  block.numberFormat = cells.map((row) => row.map(({ style }) => style?.numberFormat ?? "General"));
  block.formulas = cells.map((row) => row.map(({ value, formula }) => formula ?? asTyped(value)));

  for (const { key, at } of rectanglesByKey(
    cells,
    ({ style }) => lookKey(style),
    (key) => !lookOf(key).border,
  )) {
    putLook(sheet.getRangeByIndexes(at.row, at.column, at.rows, at.columns).untrack(), lookOf(key), at.columns);
  }
  for (const range of merges) sheet.getRange(range).untrack().merge(false);
}

/** What of a style is not its number format. */
type Look = Omit<CellStyle, "numberFormat">;

function lookKey(style: CellStyle | undefined): string | null {
  if (style === undefined) return null;
  const { bold, italic, size, align, wrap, border, fill } = style;
  const key = JSON.stringify({ bold, italic, size, align, wrap, border, fill });
  return key === "{}" ? null : key;
}

const lookOf = (key: string) => JSON.parse(key) as Look;

const alignments = { left: "Left", center: "Center", right: "Right" } as const;
const edges = { top: ["EdgeTop"], bottom: ["EdgeBottom"], box: ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] } as const;

/** A look on cells of one row where it has a border, which is drawn around each of them. */
function putLook({ format }: Excel.Range, { bold, italic, size, align, wrap, border, fill }: Look, columns: number): void {
  if (bold !== undefined) format.font.bold = bold;
  if (italic !== undefined) format.font.italic = italic;
  if (size !== undefined) format.font.size = size;
  if (align !== undefined) format.horizontalAlignment = alignments[align];
  if (wrap !== undefined) format.wrapText = wrap;
  if (border !== undefined) {
    const between = border === "box" && columns > 1 ? ["InsideVertical" as const] : [];
    for (const edge of [...edges[border], ...between]) format.borders.getItem(edge).style = "Continuous";
  }
  if (fill !== undefined) format.fill.color = fillColours[fill];
}
