/**
 * The cells of a worksheet part. A scanner of our own, because a season's sheet may hold a million cells and all of them
 * but the few that change must come out of it byte for byte as they went in.
 */
import type { Cell } from "../../workbook/cell";
import { cellName, columnNumber, parseArea, type Area } from "./address";
import { Damaged } from "./fault";
import { escapeText, unescapeText } from "./xml";

/** A formula as it stands in a cell, without its `=`. `shared`: this cell follows the master of a group. */
export type CellFormula = {
  readonly text: string;
  readonly kind: "plain" | "shared" | "array" | "table";
  /** The number of a shared group. */
  readonly group?: string;
  /** The cells of an array formula, or of a shared group at its master. */
  readonly area?: string;
};

export type SheetCell = {
  readonly column: number;
  readonly value: Cell;
  readonly formula?: CellFormula;
  /** Number of the cell's style. */
  readonly style: number;
  /** Where it stands in the part as it was read; absent for a cell of ours. */
  readonly source?: readonly [from: number, to: number];
};

export type SheetRow = {
  /** The attributes of the row as written, from the blank before the first. */
  readonly attributes: string;
  readonly hidden: boolean;
  readonly cells: readonly SheetCell[];
  /** Where it stands, unchanged; absent once a cell of it has changed. */
  readonly source?: readonly [from: number, to: number];
};

/** A worksheet part: its rows, and the text before and after them. */
export type SheetData = {
  readonly text: string;
  /** Prefix of the spreadsheet namespace with its colon, mostly empty. */
  readonly prefix: string;
  /** Where the rows begin and end in `text`. */
  readonly rowsFrom: number;
  readonly rowsTo: number;
  /** Whether `sheetData` is written as an empty element. */
  readonly emptyElement: boolean;
  readonly rows: ReadonlyMap<number, SheetRow>;
  /** The masters of shared formulas, by the number of their group. */
  readonly masters: ReadonlyMap<string, SharedMaster>;
};

/** A formula that other cells share, and the cell that it is written for. */
export type SharedMaster = { readonly text: string; readonly row: number; readonly column: number };

const attribute = (tag: string, name: string): string | null => {
  let at = tag.indexOf(`${name}="`);
  while (at > 0 && !/\s/.test(tag[at - 1]!)) at = tag.indexOf(`${name}="`, at + 1);
  if (at < 0) {
    const quoted = new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
    return quoted === null ? null : quoted[1] ?? quoted[2] ?? "";
  }
  return tag.slice(at + name.length + 2, tag.indexOf("\"", at + name.length + 2));
};

export function scanSheet(text: string, sharedStrings: readonly string[]): SheetData {
  const root = /<(?:([A-Za-z_][\w.-]*):)?worksheet[\s>]/.exec(text);
  if (root === null) throw new Damaged("a sheet has no worksheet element");
  const prefix = root[1] === undefined ? "" : `${root[1]}:`;
  const open = new RegExp(`<${prefix}sheetData(\\s[^>]*?)?(/?)>`).exec(text);
  if (open === null) throw new Damaged("a sheet has no sheetData element");
  const from = open.index + open[0].length;
  if (open[2] === "/") return { text, prefix, rowsFrom: open.index, rowsTo: from, emptyElement: true, rows: new Map(), masters: new Map() };
  const to = text.indexOf(`</${prefix}sheetData`, from);
  if (to < 0) throw new Damaged("a sheet's data has no end");
  const masters = new Map<string, SharedMaster>();
  return { text, prefix, rowsFrom: from, rowsTo: to, emptyElement: false, masters, rows: scanRows(text, prefix, from, to, sharedStrings, masters) };
}

function scanRows(text: string, prefix: string, from: number, to: number, sharedStrings: readonly string[], masters: Map<string, SharedMaster>): Map<number, SheetRow> {
  const rows = new Map<number, SheetRow>();
  const opening = `<${prefix}row`;
  const closing = `</${prefix}row>`;
  let number = -1;
  for (let at = text.indexOf(opening, from); at >= 0 && at < to; at = text.indexOf(opening, at)) {
    const tagEnd = text.indexOf(">", at);
    const empty = text[tagEnd - 1] === "/";
    const attributes = text.slice(at + opening.length, empty ? tagEnd - 1 : tagEnd);
    const end = empty ? tagEnd + 1 : text.indexOf(closing, tagEnd);
    if (end < 0) throw new Damaged("a row has no end");
    const named = attribute(attributes, "r");
    number = named === null ? number + 1 : Number(named) - 1;
    const cells = empty ? [] : scanCells(text, prefix, tagEnd + 1, end, sharedStrings, { masters, row: number });
    const stop = empty ? end : end + closing.length;
    rows.set(number, { attributes, hidden: /^(1|true)$/.test(attribute(attributes, "hidden") ?? ""), cells, source: [at, stop] });
    at = stop;
  }
  return rows;
}

function scanCells(text: string, prefix: string, from: number, to: number, sharedStrings: readonly string[], { masters, row }: { masters: Map<string, SharedMaster>; row: number }): SheetCell[] {
  const cells: SheetCell[] = [];
  const opening = `<${prefix}c`;
  const closing = `</${prefix}c>`;
  let column = -1;
  for (let at = text.indexOf(opening, from); at >= 0 && at < to;) {
    const after = text.charCodeAt(at + opening.length);
    if (after !== 32 && after !== 62 && after !== 47 && after !== 10 && after !== 13 && after !== 9) {
      at = text.indexOf(opening, at + 1);
      continue;
    }
    const tagEnd = text.indexOf(">", at);
    const empty = text.charCodeAt(tagEnd - 1) === 47;
    const tag = text.slice(at + opening.length, empty ? tagEnd - 1 : tagEnd);
    const bodyEnd = empty ? tagEnd + 1 : text.indexOf(closing, tagEnd);
    const end = empty ? bodyEnd : bodyEnd + closing.length;
    const name = attribute(tag, "r");
    column = name === null ? column + 1 : columnNumber(name.replace(/\d+$/, ""));
    const style = Number(attribute(tag, "s") ?? "0");
    const body = empty ? "" : text.slice(tagEnd + 1, bodyEnd);
    const formula = body === "" ? undefined : formulaIn(body, prefix);
    if (formula?.kind === "shared" && formula.text !== "" && formula.group !== undefined) masters.set(formula.group, { text: formula.text, row, column });
    const value = body === "" ? "" : valueIn(body, prefix, attribute(tag, "t"), sharedStrings);
    cells.push({ column, value, style, source: [at, end], ...(formula === undefined ? {} : { formula }) });
    at = text.indexOf(opening, end);
  }
  return cells;
}

function between(body: string, prefix: string, name: string): { tag: string; text: string } | null {
  const at = body.indexOf(`<${prefix}${name}`);
  if (at < 0) return null;
  const tagEnd = body.indexOf(">", at);
  const tag = body.slice(at + 1 + prefix.length + name.length, tagEnd);
  if (tag.endsWith("/")) return { tag: tag.slice(0, -1), text: "" };
  const end = body.indexOf(`</${prefix}${name}>`, tagEnd);
  return { tag, text: body.slice(tagEnd + 1, end) };
}

function formulaIn(body: string, prefix: string): CellFormula | undefined {
  const found = between(body, prefix, "f");
  if (found === null) return undefined;
  const text = unescapeText(found.text);
  const kind = attribute(found.tag, "t");
  const area = attribute(found.tag, "ref");
  const group = attribute(found.tag, "si");
  return {
    text, kind: kind === "shared" ? "shared" : kind === "array" ? "array" : kind === "dataTable" ? "table" : "plain",
    ...(group === null ? {} : { group }), ...(area === null ? {} : { area }),
  };
}

function valueIn(body: string, prefix: string, type: string | null, sharedStrings: readonly string[]): Cell {
  if (type === "inlineStr") return richText(body, prefix);
  const raw = between(body, prefix, "v")?.text;
  if (raw === undefined || (raw === "" && type !== "str")) return "";
  switch (type) {
    case "s": return sharedStrings[Number(raw)] ?? "";
    case "str": return unescapeText(raw);
    case "b": return raw.trim() === "1" || raw.trim() === "true";
    case "e": return unescapeText(raw);
    case "d": return serialOf(raw);
    default: return Number(raw);
  }
}

/** A date written as text in the file, as its serial number of the 1900 system. */
const serialOf = (iso: string): number => (Date.parse(`${iso.includes("T") ? iso : `${iso}T00:00:00`}Z`) - Date.UTC(1899, 11, 30)) / 86_400_000;

/** The text of a string item: its runs joined, phonetic guides left out. */
export function richText(item: string, prefix: string): string {
  let text = "";
  const spoken = new RegExp(`<${prefix}rPh[\\s>][\\s\\S]*?</${prefix}rPh>`, "g");
  const plain = item.includes(`<${prefix}rPh`) ? item.replace(spoken, "") : item;
  for (let at = plain.indexOf(`<${prefix}t`); at >= 0; at = plain.indexOf(`<${prefix}t`, at + 1)) {
    const after = plain[at + prefix.length + 2];
    if (after !== ">" && after !== " " && after !== "/") continue;
    const tagEnd = plain.indexOf(">", at);
    if (plain[tagEnd - 1] === "/") continue;
    text += unescapeText(plain.slice(tagEnd + 1, plain.indexOf(`</${prefix}t>`, tagEnd)));
  }
  return text;
}

/** The strings of the part sharedStrings. */
export function scanSharedStrings(text: string): readonly string[] {
  const root = /<(?:([A-Za-z_][\w.-]*):)?sst[\s>]/.exec(text);
  if (root === null) return [];
  const prefix = root[1] === undefined ? "" : `${root[1]}:`;
  const strings: string[] = [];
  const closing = `</${prefix}si>`;
  for (let at = text.indexOf(`<${prefix}si`, root.index); at >= 0; at = text.indexOf(`<${prefix}si`, at)) {
    const tagEnd = text.indexOf(">", at);
    const end = text[tagEnd - 1] === "/" ? tagEnd : text.indexOf(closing, tagEnd);
    strings.push(text[tagEnd - 1] === "/" ? "" : richText(text.slice(tagEnd + 1, end), prefix));
    at = end + 1;
  }
  return strings;
}

/** One of our cells as XML. A text is written into the cell itself, so that the shared strings stay as they are. */
export function cellXml(prefix: string, row: number, { column, value, formula, style }: SheetCell): string {
  const attributes = ` r="${cellName({ row, column })}"${style === 0 ? "" : ` s="${style}"`}`;
  const p = prefix;
  if (formula !== undefined) {
    const type = typeof value === "string" ? (isError(value) ? " t=\"e\"" : " t=\"str\"") : typeof value === "boolean" ? " t=\"b\"" : "";
    const kind = formula.kind === "array" ? ` t="array" ref="${formula.area!}"` : "";
    return `<${p}c${attributes}${type}><${p}f${kind}>${escapeText(formula.text)}</${p}f><${p}v>${valueText(value)}</${p}v></${p}c>`;
  }
  if (value === "") return `<${p}c${attributes}/>`;
  if (typeof value === "string") {
    return `<${p}c${attributes} t="inlineStr"><${p}is><${p}t xml:space="preserve">${escapeText(value)}</${p}t></${p}is></${p}c>`;
  }
  return `<${p}c${attributes}${typeof value === "boolean" ? " t=\"b\"" : ""}><${p}v>${valueText(value)}</${p}v></${p}c>`;
}

export const isError = (value: string): boolean => /^#(N\/A|[A-Z0-9/]+[!?])$/.test(value);
const valueText = (value: Cell): string => (typeof value === "boolean" ? (value ? "1" : "0") : escapeText(String(value)));

/** The part with its rows as they are now: what has not changed is copied. */
export function sheetText(data: SheetData): string {
  const { text, prefix, rows } = data;
  const numbers = [...rows.keys()].sort((a, b) => a - b);
  const pieces = numbers.map((number) => rowXml(data, number, rows.get(number)!));
  const before = withDimension(text.slice(0, data.rowsFrom), prefix, usedArea(data));
  if (data.emptyElement) return `${before}<${prefix}sheetData>${pieces.join("")}</${prefix}sheetData>${text.slice(data.rowsTo)}`;
  return `${before}${pieces.join("")}${text.slice(data.rowsTo)}`;
}

function rowXml({ text, prefix }: SheetData, number: number, row: SheetRow): string {
  if (row.source !== undefined) return withPlace(text.slice(row.source[0], row.source[1]), `${prefix}row`, String(number + 1));
  const named = attribute(row.attributes, "r") === null ? ` r="${number + 1}"${row.attributes}` : row.attributes.replace(/\sr="\d+"/, ` r="${number + 1}"`);
  // The span of columns is an optional hint; a wrong one is worse than none.
  const attributes = named.replace(/\sspans="[^"]*"/, "");
  const cells = row.cells.map((cell) => (cell.source === undefined ? cellXml(prefix, number, cell) : withPlace(text.slice(cell.source[0], cell.source[1]), `${prefix}c`, cellName({ row: number, column: cell.column }))));
  return cells.length === 0 ? `<${prefix}row${attributes}/>` : `<${prefix}row${attributes}>${cells.join("")}</${prefix}row>`;
}

/** An element as it was, given the place that it had only by its position among others. */
function withPlace(xml: string, name: string, place: string): string {
  const tagEnd = xml.indexOf(">");
  return attribute(xml.slice(0, tagEnd), "r") === null ? `<${name} r="${place}"${xml.slice(name.length + 1)}` : xml;
}

/** The smallest block that holds every cell; `null` for a sheet without any. */
export function usedArea({ rows }: SheetData): Area | null {
  let area: { top: number; left: number; bottom: number; right: number } | null = null;
  for (const [number, { cells }] of rows) {
    const [firstCell, lastCell] = [cells[0], cells[cells.length - 1]];
    if (firstCell === undefined || lastCell === undefined) continue;
    if (area === null) area = { top: number, left: firstCell.column, bottom: number, right: lastCell.column };
    else {
      area.top = Math.min(area.top, number);
      area.bottom = Math.max(area.bottom, number);
      area.left = Math.min(area.left, firstCell.column);
      area.right = Math.max(area.right, lastCell.column);
    }
  }
  return area;
}

function withDimension(before: string, prefix: string, used: Area | null): string {
  if (used === null) return before;
  const area = `${cellName({ row: used.top, column: used.left })}:${cellName({ row: used.bottom, column: used.right })}`;
  return before.replace(new RegExp(`(<${prefix}dimension\\s+ref=")[^"]*"`), (_, start: string) => `${start}${area}"`);
}

/** The area of an array formula or of a shared group. */
export const formulaArea = (formula: CellFormula): Area | null => (formula.area === undefined ? null : parseArea(formula.area));
