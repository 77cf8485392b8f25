/** New sheets in a package: our result sheets, and input tables on sheets of their own. */
import type { InputTable } from "../../workbook/inputTable";
import type { ResultSheet } from "../../workbook/resultSheet";
import { asFooter, pageNumber } from "../sheetLook";
import { resultSheetMark, sheetNameChoices } from "../sheetNames";
import { areaName, cellName, columnName, quotedSheet } from "./address";
import { bookOf, sheetPosition, type SheetEntry } from "./book";
import { cellXml } from "./cellXml";
import { chartXml, drawingXml } from "./chartXml";
import { isOfType, relationshipsOf, type PackageEdit } from "./packageParts";
import type { StyleMaker } from "./styles";
import { children, escapeAttribute, escapeText, first, sibling, type Element } from "./xml";

const spreadsheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
const contentType = (name: string): string => `application/vnd.openxmlformats-officedocument.${name}+xml`;

/** Writes one result sheet: over a sheet of ours of that name, else as a new one with the first free name. */
export function writeResultSheet(edit: PackageEdit, styles: StyleMaker, sheet: ResultSheet, written: ReadonlySet<string>): string {
  const { name, existing } = placeFor(edit, sheet.name, written);
  const part = existing?.part ?? addSheet(edit, name, worksheet("", ""));
  if (existing !== null) clearDrawings(edit, part);
  const drawing = sheet.charts.length === 0 ? "" : `<drawing r:id="${addCharts(edit, part, name, sheet)}"/>`;
  edit.put(part, resultSheetXml(styles, sheet, drawing));
  setNames(edit, name, sheet);
  return name;
}

/** The first name of the row that is free or that belongs to a sheet of ours not written in the same step. */
function placeFor(edit: PackageEdit, wanted: string, written: ReadonlySet<string>): { readonly name: string; readonly existing: SheetEntry | null } {
  const book = bookOf(edit.parts);
  const marked = new Set(book.names.filter(({ name }) => name === resultSheetMark).map(({ sheet }) => sheet));
  for (const name of sheetNameChoices(wanted)) {
    const existing = book.sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (existing === undefined) return { name, existing: null };
    if (!written.has(existing.name) && marked.has(sheetPosition(edit.parts, existing.name))) return { name: existing.name, existing };
  }
  throw new RangeError("there is always another name");
}

/** Adds an empty sheet at the end of the workbook; answers its part. */
export function addSheet(edit: PackageEdit, name: string, xml: string): string {
  const book = bookOf(edit.parts);
  const part = edit.freeName("xl/worksheets/sheet", ".xml");
  edit.add(part, xml, contentType("spreadsheetml.worksheet"));
  const id = edit.relate(book.part, "worksheet", part);
  edit.edit(book.part, (root) => {
    const sheets = first(root, "sheets")!;
    const numbers = children(sheets, "sheet").map((each) => Number(each.getAttribute("sheetId")));
    const entry = sibling(sheets, "sheet", { name, sheetId: String(Math.max(0, ...numbers) + 1) });
    entry.setAttributeNS(relationships, "r:id", id);
    sheets.appendChild(entry);
  });
  return part;
}

export const worksheet = (before: string, data: string, after = ""): string =>
  `${head}<worksheet xmlns="${spreadsheet}" xmlns:r="${relationships}">${before}<sheetData>${data}</sheetData>${after}</worksheet>`;

function clearDrawings(edit: PackageEdit, part: string): void {
  for (const drawing of relationshipsOf(edit.parts, part).filter((each) => isOfType(each, "drawing"))) {
    for (const chart of relationshipsOf(edit.parts, drawing.target)) edit.remove(chart.target);
    edit.remove(drawing.target);
    edit.unrelate(part, drawing.target);
  }
}

function addCharts(edit: PackageEdit, part: string, name: string, { charts, rows }: ResultSheet): string {
  const drawing = edit.freeName("xl/drawings/drawing", ".xml");
  const value = (row: number, column: number) => rows[row]?.[column]?.value ?? "";
  edit.add(drawing, "<placeholder/>", contentType("drawing"));
  const ids = charts.map((model) => {
    const chart = edit.freeName("xl/charts/chart", ".xml");
    edit.add(chart, chartXml(model, name, value), contentType("drawingml.chart"));
    return edit.relate(drawing, "chart", chart);
  });
  edit.put(drawing, drawingXml(charts, ids));
  return edit.relate(part, "drawing", drawing);
}

function resultSheetXml(styles: StyleMaker, sheet: ResultSheet, drawing: string): string {
  const { headingRows: rows, page } = sheet;
  const pane = rows === 0 ? "" : `<pane ySplit="${rows}" topLeftCell="A${rows + 1}" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/>`;
  const widths = sheet.columns.map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`).join("");
  const before = `${page.scale === undefined ? "<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>" : ""}<sheetViews><sheetView showGridLines="0" workbookViewId="0">${pane}</sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/>${widths === "" ? "" : `<cols>${widths}</cols>`}`;
  const merges = sheet.merges === undefined || sheet.merges.length === 0 ? "" : `<mergeCells count="${sheet.merges.length}">${sheet.merges.map((area) => `<mergeCell ref="${area}"/>`).join("")}</mergeCells>`;
  const setup = `<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/><pageSetup paperSize="${page.paper === "a4" ? 9 : 1}"${page.scale === undefined ? "" : ` scale="${page.scale}"`} orientation="${page.orientation}"${page.scale === undefined ? ` fitToWidth="1" fitToHeight="${page.pagesTall}"` : ""}/>`
    + `<headerFooter><oddFooter>${escapeText(`&L&8${asFooter(page.footer)}&R&8${pageNumber}`)}</oddFooter></headerFooter>${breaksXml(page.breakAfter ?? [])}`;
  return worksheet(before, dataXml(styles, sheet), merges + setup + drawing);
}

const breaksXml = (rows: readonly number[]): string => rows.length === 0 ? ""
  : `<rowBreaks count="${rows.length}" manualBreakCount="${rows.length}">${rows.map((row) => `<brk id="${row}" max="16383" man="1"/>`).join("")}</rowBreaks>`;

function dataXml(styles: StyleMaker, { rows }: ResultSheet): string {
  return rows.map((row, number) => {
    const cells = row.flatMap(({ value, formula, style }, column) => {
      const styled = style === undefined || Object.keys(style).length === 0 ? 0 : styles.number(style);
      if (value === "" && formula === undefined && styled === 0) return [];
      return [cellXml("", number, { column, value, style: styled, ...(formula === undefined ? {} : { formula: { text: formula.replace(/^=/, ""), kind: "plain" } }) })];
    });
    return cells.length === 0 ? "" : `<row r="${number + 1}">${cells.join("")}</row>`;
  }).join("");
}

/** Our mark, the rows repeated on each page, and the area that is printed. */
function setNames(edit: PackageEdit, name: string, sheet: ResultSheet): void {
  const position = String(sheetPosition(edit.parts, name));
  const widest = Math.max(sheet.columns.length, ...sheet.rows.map((row) => row.length), 1);
  const printed = `$A$1:$${columnName(widest - 1)}$${Math.max(sheet.rows.length, 1)}`;
  const wanted: readonly (readonly [string, string, boolean])[] = [
    ["_xlnm.Print_Area", `${quotedSheet(name)}!${printed}`, false],
    ...(sheet.headingRows === 0 ? [] : [["_xlnm.Print_Titles", `${quotedSheet(name)}!$1:$${sheet.headingRows}`, false] as const]),
    [resultSheetMark, "TRUE", true],
  ];
  edit.edit(bookOf(edit.parts).part, (root) => {
    const names = definedNames(root);
    for (const each of children(names, "definedName")) {
      const ours = [resultSheetMark, "_xlnm.Print_Area", "_xlnm.Print_Titles"].includes(each.getAttribute("name") ?? "");
      if (ours && each.getAttribute("localSheetId") === position) names.removeChild(each);
    }
    for (const [label, refersTo, hidden] of wanted) {
      const entry = sibling(names, "definedName", { name: label, localSheetId: position, ...(hidden ? { hidden: "1" } : {}) });
      entry.appendChild(names.ownerDocument!.createTextNode(refersTo));
      names.appendChild(entry);
    }
  });
}

/** The list of names, made in its place after the sheets where there is none. */
function definedNames(root: Element): Element {
  const found = children(root, "definedNames")[0];
  if (found !== undefined) return found;
  const list = sibling(root, "definedNames");
  const before = children(root, "externalReferences")[0] ?? children(root, "functionGroups")[0] ?? children(root, "sheets")[0]!;
  root.insertBefore(list, before.nextSibling);
  return list;
}

/** So many rows below the headings get the drop-down lists, for the table to grow into. */
const rowsWithChoices = 2000;

/** Makes an input table on a sheet of its own: headings, formats, drop-down lists with a hint, one example row. */
export function writeInputTable(edit: PackageEdit, styles: StyleMaker, table: InputTable): void {
  const taken = new Set(bookOf(edit.parts).sheets.map(({ name }) => name.toLowerCase()));
  let name = table.sheet;
  for (const choice of sheetNameChoices(table.sheet)) if (!taken.has(choice.toLowerCase())) { name = choice; break; }
  const { columns, example } = table;
  const part = addSheet(edit, name, inputSheetXml(styles, table, ""));
  const file = edit.freeName("xl/tables/table", ".xml");
  const range = areaName({ top: 0, left: 0, bottom: 1, right: columns.length - 1 });
  const columnsXml = columns.map(({ heading }, index) => `<tableColumn id="${index + 1}" name="${escapeAttribute(heading)}"/>`).join("");
  const id = Number(/(\d+)\.xml$/.exec(file)![1]);
  edit.add(file, `${head}<table xmlns="${spreadsheet}" id="${freeTableId(edit, id)}" name="${table.name}" displayName="${table.name}" ref="${range}" totalsRowShown="0"><autoFilter ref="${range}"/><tableColumns count="${columns.length}">${columnsXml}</tableColumns><tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>`, contentType("spreadsheetml.table"));
  edit.put(part, inputSheetXml(styles, table, `<tableParts count="1"><tablePart r:id="${edit.relate(part, "table", file)}"/></tableParts>`));
  if (example.length !== columns.length) throw new RangeError(`the table ${table.name} has ${columns.length} columns and ${example.length} examples`);
}

/** A table's number, which no other table of the workbook may have. */
function freeTableId(edit: PackageEdit, wanted: number): number {
  const taken = new Set([...edit.parts].filter(([name]) => /\/tables\//.test(name)).map(([, bytes]) => Number(/<[\w:]*table[^>]*\sid="(\d+)"/.exec(new TextDecoder().decode(bytes.subarray(0, 2000)))?.[1] ?? "0")));
  let id = wanted;
  while (taken.has(id)) id += 1;
  return id;
}

function inputSheetXml(styles: StyleMaker, { columns, example }: InputTable, tableParts: string): string {
  const heading = styles.number({ bold: true, wrap: true });
  const formats = columns.map(({ numberFormat }) => (numberFormat === undefined ? 0 : styles.number({ numberFormat })));
  const widths = columns.map(({ width }, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"${formats[index] === 0 ? "" : ` style="${formats[index]!}"`}/>`).join("");
  const head = `<row r="1">${columns.map((column, index) => cellXml("", 0, { column: index, value: column.heading, style: heading })).join("")}</row>`;
  const body = `<row r="2">${columns.map((_, index) => (example[index] === "" && formats[index] === 0 ? "" : cellXml("", 1, { column: index, value: example[index] ?? "", style: formats[index]! }))).join("")}</row>`;
  const validations = columns.map((column, index) => validation(column, `${cellName({ row: 1, column: index })}:${cellName({ row: rowsWithChoices, column: index })}`));
  const before = `<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/><cols>${widths}</cols>`;
  return worksheet(before, head + body, `<dataValidations count="${validations.length}">${validations.join("")}</dataValidations><pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup orientation="landscape" fitToHeight="0"/>${tableParts}`);
}

/** Excel allows 255 characters in a list that stands in the validation itself. */
const longestList = 255;
const longestPrompt = 255;
const longestTitle = 32;

function validation({ heading, hint, choices, required }: InputTable["columns"][number], cells: string): string {
  const list = choices?.join(",") ?? "";
  const prompt = ` showInputMessage="1" promptTitle="${escapeAttribute(heading.slice(0, longestTitle))}" prompt="${escapeAttribute(`${hint}${required ? " Required." : ""}`.slice(0, longestPrompt))}"`;
  // A comma inside a choice would cut it in two; then the hint alone has to do.
  if (list === "" || list.length > longestList || choices!.some((choice) => choice.includes(","))) return `<dataValidation allowBlank="1"${prompt} sqref="${cells}"/>`;
  return `<dataValidation type="list" errorStyle="warning" allowBlank="1" showErrorMessage="1"${prompt} sqref="${cells}"><formula1>"${escapeText(list.replaceAll("\"", "\"\""))}"</formula1></dataValidation>`;
}
