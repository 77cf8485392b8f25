/** The rules for sheets, their cells, tables and styles. */
import type { Element } from "@xmldom/xmldom";
import { all, orderFaults, targetOf, value } from "./partElements";

type Documents = ReadonlyMap<string, Element>;
type Block = { readonly top: number; readonly left: number; readonly bottom: number; readonly right: number };

const sheetOrder = [
  "sheetPr",
  "dimension",
  "sheetViews",
  "sheetFormatPr",
  "cols",
  "sheetData",
  "sheetCalcPr",
  "sheetProtection",
  "protectedRanges",
  "scenarios",
  "autoFilter",
  "sortState",
  "dataConsolidate",
  "customSheetViews",
  "mergeCells",
  "phoneticPr",
  "conditionalFormatting",
  "dataValidations",
  "hyperlinks",
  "printOptions",
  "pageMargins",
  "pageSetup",
  "headerFooter",
  "rowBreaks",
  "colBreaks",
  "customProperties",
  "cellWatches",
  "ignoredErrors",
  "smartTags",
  "drawing",
  "legacyDrawing",
  "legacyDrawingHF",
  "drawingHF",
  "picture",
  "oleObjects",
  "controls",
  "webPublishItems",
  "tableParts",
  "extLst",
];

export function sheetFaults(documents: Documents): string[] {
  const strings = all(documents.get("xl/sharedStrings.xml") ?? emptyElement, "si").length;
  const styles = documents.get("xl/styles.xml");
  const formats = styles === undefined ? 1 : all(all(styles, "cellXfs")[0]!, "xf").length;
  const tables = [...documents].filter(([name]) => /^xl\/tables\//.test(name)).map(([, root]) => root);
  const sheets = [...documents].filter(([, root]) => root.localName === "worksheet");
  return [
    ...sheets.flatMap(([name, root]) => [
      ...orderFaults(
        name,
        [...root.childNodes].filter((node) => node.nodeType === 1).map((node) => (node as Element).localName!),
        sheetOrder,
      ),
      ...cellFaults(name, root, { strings, formats }),
      ...tablesOf(documents, name).flatMap((table) => tableFaults(name, root, table, documents)),
      ...overlapFaults(name, [
        ...all(root, "mergeCell").map((each) => block(value(each, "ref"))),
        ...tablesOf(documents, name).map((each) => block(value(each, "ref"))),
      ]),
      ...all(root, "dataValidation")
        .filter((each) => value(each, "prompt").length > 255 || value(each, "promptTitle").length > 32)
        .map(() => `${name} has a hint that is too long`),
      ...all(root, "formula1")
        .filter((each) => (each.textContent ?? "").length > 255 + 2)
        .map(() => `${name} has a list that is too long`),
    ]),
    ...twice(tables.map((root) => value(root, "id"))).map((id) => `two tables have the number ${id}`),
    ...twice(tables.map((root) => value(root, "displayName").toLowerCase())).map((name) => `two tables are named ${name}`),
    ...(styles === undefined ? [] : styleFaults(styles)),
    ...chainFaults(documents),
  ];
}

const emptyElement = { getElementsByTagNameNS: () => [] } as unknown as Element;
const twice = (words: readonly string[]): string[] => words.filter((word, index) => words.indexOf(word) !== index);

function cellFaults(name: string, root: Element, { strings, formats }: { strings: number; formats: number }): string[] {
  const faults: string[] = [];
  let lastRow = 0;
  for (const row of all(root, "row")) {
    const number = value(row, "r") === "" ? lastRow + 1 : Number(value(row, "r"));
    if (number <= lastRow) faults.push(`${name} has row ${number} after row ${lastRow}`);
    lastRow = number;
    let lastColumn = 0;
    for (const cell of all(row, "c")) {
      const at = value(cell, "r");
      const column = at === "" ? lastColumn + 1 : block(at).left;
      if (at !== "" && block(at).top !== number) faults.push(`${name} has ${at} in row ${number}`);
      if (column <= lastColumn) faults.push(`${name} has ${at} out of order`);
      lastColumn = column;
      if (Number(value(cell, "s") || "0") >= formats) faults.push(`${name} ${at} has a style that is not there`);
      faults.push(...contentFaults(`${name} ${at}`, cell, strings));
    }
  }
  return faults;
}

function contentFaults(name: string, cell: Element, strings: number): string[] {
  const type = value(cell, "t");
  const shown = all(cell, "v")[0]?.textContent ?? "";
  if (type === "s" && !(Number(shown) < strings)) return [`${name} points at a text that is not there`];
  if ((type === "" || type === "n") && Number.isNaN(Number(shown))) return [`${name} is no number: ${shown}`];
  if (type === "b" && !/^[01]$/.test(shown)) return [`${name} is neither yes nor no: ${shown}`];
  if (type === "e" && !/^#/.test(shown)) return [`${name} is no error: ${shown}`];
  if (type === "inlineStr" && all(cell, "is").length !== 1) return [`${name} has no text`];
  return (cell.textContent ?? "").length > 32_767 + 8_192 ? [`${name} is too long`] : [];
}

function tablesOf(documents: Documents, sheet: string): Element[] {
  const relationships = documents.get(sheet.replace(/([^/]*)$/, "_rels/$1.rels"));
  return relationships === undefined
    ? []
    : all(relationships, "Relationship")
        .filter((each) => value(each, "Type").endsWith("/table"))
        .flatMap((each) => documents.get(targetOf(sheet, value(each, "Target"))) ?? []);
}

/** Headings must be texts, the same as the columns' names, and no two the same. */
function tableFaults(sheet: string, root: Element, table: Element, documents: Documents): string[] {
  const name = `${sheet} table ${value(table, "displayName")}`;
  const area = block(value(table, "ref"));
  const columns = all(table, "tableColumn").map((each) => value(each, "name").replaceAll(/_x000a_/gi, "\n"));
  const filters = [...table.childNodes].filter((node): node is Element => (node as Element).localName === "autoFilter");
  const totals = Number(value(table, "totalsRowCount") || "0");
  const headers = value(table, "headerRowCount") === "0" ? 0 : 1;
  const strings = all(documents.get("xl/sharedStrings.xml") ?? emptyElement, "si").map((each) =>
    all(each, "t")
      .map((text) => text.textContent)
      .join(""),
  );
  const headings = headers === 0 ? columns : columns.map((_, index) => textAt(root, area.top, area.left + index, strings));
  return [
    ...(columns.length === area.right - area.left + 1 ? [] : [`${name} is not as wide as its columns`]),
    ...(Number(value(all(table, "tableColumns")[0]!, "count")) === columns.length ? [] : [`${name} counts its columns wrong`]),
    ...(area.bottom - area.top >= headers + totals ? [] : [`${name} has no row`]),
    ...twice(columns.map((each) => each.toLowerCase())).map((each) => `${name} has two columns ${each}`),
    ...columns
      .filter((each, index) => headings[index]?.replaceAll("\r\n", "\n") !== each)
      .map((each) => `${name} has the column ${each} under another heading`),
    ...filters
      .filter((each) => value(each, "ref") !== "" && block(value(each, "ref")).bottom !== area.bottom - totals)
      .map(() => `${name} has a filter over other rows`),
    ...twice(all(table, "tableColumn").map((each) => value(each, "id"))).map((id) => `${name} has two columns ${id}`),
  ];
}

function textAt(root: Element, row: number, column: number, strings: readonly string[]): string | undefined {
  const cell = all(root, "c").find((each) => {
    const at = block(value(each, "r"));
    return at.top === row && at.left === column;
  });
  if (cell === undefined) return undefined;
  return value(cell, "t") === "s"
    ? strings[Number(all(cell, "v")[0]?.textContent)]
    : all(cell, "t")
        .map((each) => each.textContent)
        .join("");
}

function overlapFaults(name: string, blocks: readonly Block[]): string[] {
  return blocks.flatMap((one, index) =>
    blocks
      .slice(index + 1)
      .filter((other) => one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom)
      .map(() => `${name} has joined cells or tables over each other`),
  );
}

function styleFaults(styles: Element): string[] {
  const count = (list: string, item: string) => {
    const found = all(styles, list)[0];
    return found === undefined ? 0 : all(found, item).filter((each) => each.parentNode === found).length;
  };
  const wrong = [
    ["fonts", "font"],
    ["fills", "fill"],
    ["borders", "border"],
    ["cellXfs", "xf"],
    ["numFmts", "numFmt"],
  ].filter(([list, item]) => {
    const found = all(styles, list!)[0];
    return found !== undefined && value(found, "count") !== "" && Number(value(found, "count")) !== count(list!, item!);
  });
  const formats = new Set(all(styles, "numFmt").map((each) => value(each, "numFmtId")));
  const xfs = all(all(styles, "cellXfs")[0]!, "xf");
  const over = (attribute: string, list: string, item: string) =>
    xfs.filter((each) => Number(value(each, attribute) || "0") >= count(list, item)).map(() => `a style has a ${item} that is not there`);
  return [
    ...wrong.map(([list]) => `the styles count their ${list!} wrong`),
    ...over("fontId", "fonts", "font"),
    ...over("fillId", "fills", "fill"),
    ...over("borderId", "borders", "border"),
    ...xfs
      .filter((each) => Number(value(each, "numFmtId")) >= 164 && !formats.has(value(each, "numFmtId")))
      .map((each) => `a style has the number format ${value(each, "numFmtId")}, which is not there`),
  ];
}

/** The chain of calculation may name only cells that have a formula. */
function chainFaults(documents: Documents): string[] {
  const chain = documents.get("xl/calcChain.xml");
  if (chain === undefined) return [];
  let sheet = "";
  return all(chain, "c").flatMap((each) => {
    sheet = value(each, "i") || sheet;
    const root = documents.get(`xl/worksheets/sheet${sheet}.xml`);
    const cell = root === undefined ? undefined : all(root, "c").find((candidate) => value(candidate, "r") === value(each, "r"));
    return cell !== undefined && all(cell, "f").length > 0
      ? []
      : [`the chain of calculation names ${value(each, "r")}, which has no formula`];
  });
}

/** `B2:C9` or `B2`; rows and columns from 1. */
function block(reference: string): Block {
  const corners = reference
    .replaceAll("$", "")
    .split(":")
    .map((corner) => {
      const [, letters = "A", row = "0"] = /^([A-Z]+)(\d+)$/.exec(corner) ?? [];
      return { row: Number(row), column: [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) };
    });
  const [first, last = first] = corners;
  return { top: first!.row, left: first!.column, bottom: last!.row, right: last!.column };
}
