/**
 * The part of a worksheet. A scanner of our own reads and patches it, because a season's sheet may hold a million cells
 * and all of them but the few that change must come out of it byte for byte as they went in.
 */
import { areaName, cellName, parseArea, type Block } from "../../address";
import { attribute } from "../package/attribute";
import type { CellMeaning } from "./cellScanner";
import { cellXml } from "./cellXml";
import { Damaged } from "../package/fault";
import type { CellFormula, SheetRow } from "./sheetRow";
import { SheetRows } from "./sheetRows";

/** A worksheet part: its rows, and the text before and after them. */
export type SheetData = {
  /** Prefix of the spreadsheet namespace with its colon, mostly empty. */
  readonly prefix: string;
  /** The part up to and with the opening mark of `sheetData`, and from its closing mark on. */
  readonly before: string;
  readonly after: string;
  readonly rows: SheetRows;
};

export function scanSheet(text: string, meaning: CellMeaning): SheetData {
  const root = /<(?:([A-Za-z_][\w.-]*):)?worksheet[\s>]/.exec(text);
  if (root === null) throw new Damaged("a sheet has no worksheet element");
  const prefix = root[1] === undefined ? "" : `${root[1]}:`;
  const open = new RegExp(`<${prefix}sheetData(\\s[^>]*?)?(/?)>`).exec(text);
  if (open === null) throw new Damaged("a sheet has no sheetData element");
  const from = open.index + open[0].length;
  const isEmpty = open[2] === "/";
  const to = isEmpty ? from : text.indexOf(`</${prefix}sheetData`, from);
  if (to < 0 || !text.includes(`</${prefix}worksheet>`, to)) throw new Damaged("a sheet's data has no end");
  const [before, after] = [text.slice(0, from), text.slice(to)];
  return {
    prefix,
    rows: SheetRows.read(text, prefix, from, to, meaning),
    before: isEmpty ? before.replace(/\s*\/>$/, ">") : before,
    after: isEmpty ? `</${prefix}sheetData>${after}` : after,
  };
}

/** The part with its rows as they are now: what has not changed is copied. */
export function sheetText(data: SheetData): string {
  const { prefix, before, after, rows } = data;
  const pieces = rows.pieces().map((piece) => (typeof piece === "string" ? piece : rowXml(data, piece)));
  return `${withDimension(before, prefix, rows.used())}${pieces.join("")}${after}`;
}

function rowXml({ prefix, rows }: SheetData, number: number): string {
  const source = rows.sourceOf(number);
  if (source !== null) return withPlace(source, `${prefix}row`, String(number + 1));
  const row = rows.get(number)!;
  const cells = row.cells.map((cell) =>
    cell.source === undefined
      ? cellXml(prefix, number, cell)
      : withPlace(rows.textBetween(...cell.source), `${prefix}c`, cellName({ row: number, column: cell.column })),
  );
  const attributes = rowAttributes(row, number);
  return cells.length === 0 ? `<${prefix}row${attributes}/>` : `<${prefix}row${attributes}>${cells.join("")}</${prefix}row>`;
}

function rowAttributes({ attributes }: SheetRow, number: number): string {
  const named =
    attribute(attributes, "r") === null
      ? ` r="${number + 1}"${attributes}`
      : attributes.replace(/\sr\s*=\s*["']\d+["']/, ` r="${number + 1}"`);
  // The span of columns is an optional hint; a wrong one is worse than none.
  return named.replace(/\sspans="[^"]*"/, "");
}

/** An element as it was, given the place that it had only by its position among others. */
function withPlace(xml: string, name: string, place: string): string {
  const tagEnd = xml.indexOf(">");
  return attribute(xml.slice(0, tagEnd), "r") === null ? `<${name} r="${place}"${xml.slice(name.length + 1)}` : xml;
}

function withDimension(before: string, prefix: string, used: Block | null): string {
  if (used === null) return before;
  return before.replace(new RegExp(`(<${prefix}dimension\\s+ref=")[^"]*"`), (_, start: string) => `${start}${areaName(used)}"`);
}

/** The smallest block that holds every cell; `null` for a sheet without any. */
export const usedArea = ({ rows }: SheetData): Block | null => rows.used();

/** The area of an array formula or of a shared group. */
export const formulaArea = (formula: CellFormula): Block | null => (formula.area === undefined ? null : parseArea(formula.area));
