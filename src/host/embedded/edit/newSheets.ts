/** Our result sheets in a package. */
import type { ResultSheet } from "../../../workbook/resultSheet";
import { asFooter, pageOf } from "../../sheetLook";
import { resultSheetMark, sheetNameChoices } from "../../sheetNames";
import { HostError } from "../../workbookHost";
import { columnName, quotedSheet } from "../../address";
import { bookOf, sheetDataOf, sheetPosition, type SheetEntry } from "../book";
import { cellXml } from "../sheet/cellXml";
import { chartXml, drawingXml } from "../package/chartXml";
import { isOfType, relationshipsOf, type PackageEdit } from "../package/packageParts";
import { isProtected, refuseLockedStructure } from "./refusals";
import type { StyleMaker } from "../package/styles";
import { children, escapeText, first, sibling, type Element } from "../package/xml";

export const spreadsheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
export const contentType = (name: string): string => `application/vnd.openxmlformats-officedocument.${name}+xml`;

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
function placeFor(
  edit: PackageEdit,
  wanted: string,
  written: ReadonlySet<string>,
): { readonly name: string; readonly existing: SheetEntry | null } {
  const book = bookOf(edit.parts);
  const marked = new Set(book.names.filter(({ name }) => name === resultSheetMark).map(({ sheet }) => sheet));
  for (const name of sheetNameChoices(wanted)) {
    const existing = book.sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (existing === undefined) return { name, existing: null };
    if (written.has(existing.name) || !marked.has(sheetPosition(edit.parts, existing.name))) continue;
    if (isProtected(sheetDataOf(edit.parts, existing.part)))
      throw new HostError("protected", `The sheet ${existing.name} is protected. Unprotect it, then try again.`);
    return { name: existing.name, existing };
  }
  throw new RangeError("there is always another name");
}

/** Adds an empty sheet at the end of the workbook; answers its part. */
export function addSheet(edit: PackageEdit, name: string, xml: string): string {
  refuseLockedStructure(edit.parts);
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
  const pane =
    rows === 0
      ? ""
      : `<pane ySplit="${rows}" topLeftCell="A${rows + 1}" activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft"/>`;
  const widths = sheet.columns
    .map((width, index) => `<col min="${index + 1}" max="${index + 1}" width="${width}" customWidth="1"/>`)
    .join("");
  const before =
    `${page.scale === undefined ? '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>' : ""}<sheetViews><sheetView showGridLines="0" ` +
    `workbookViewId="0">${pane}</sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/>` +
    `${widths === "" ? "" : `<cols>${widths}</cols>`}`;
  const merges =
    sheet.merges === undefined || sheet.merges.length === 0
      ? ""
      : `<mergeCells count="${sheet.merges.length}">${sheet.merges.map((area) => `<mergeCell ref="${area}"/>`).join("")}</mergeCells>`;
  const setup =
    '<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/><pageSetup ' +
    `paperSize="${page.paper === "a4" ? 9 : 1}"${page.scale === undefined ? "" : ` scale="${page.scale}"`} ` +
    `orientation="${page.orientation}"${page.pages === undefined ? "" : ' firstPageNumber="1" useFirstPageNumber="1"'}${page.scale === undefined ? ` fitToWidth="1" fitToHeight="${page.pagesTall}"` : ""}/>` +
    `<headerFooter><oddFooter>${escapeText(`&L&8${asFooter(page.footer)}&R&8${pageOf(page.pages)}`)}</oddFooter></headerFooter>` +
    `${breaksXml(page.breakAfter ?? [])}`;
  return worksheet(before, dataXml(styles, sheet), merges + setup + drawing);
}

const breaksXml = (rows: readonly number[]): string =>
  rows.length === 0
    ? ""
    : `<rowBreaks count="${rows.length}" ` +
      `manualBreakCount="${rows.length}">${rows.map((row) => `<brk id="${row}" max="16383" man="1"/>`).join("")}</rowBreaks>`;

function dataXml(styles: StyleMaker, { rows }: ResultSheet): string {
  return rows
    .map((row, number) => {
      const cells = row.flatMap(({ value, formula, style }, column) => {
        const styled = style === undefined || Object.keys(style).length === 0 ? 0 : styles.number(style);
        if (value === "" && formula === undefined && styled === 0) return [];
        return [
          cellXml("", number, {
            column,
            value,
            style: styled,
            ...(formula === undefined ? {} : { formula: { text: formula.replace(/^=/, ""), kind: "plain" } }),
          }),
        ];
      });
      return cells.length === 0 ? "" : `<row r="${number + 1}">${cells.join("")}</row>`;
    })
    .join("");
}

/** Our mark, the rows repeated on each page, and the area that is printed. */
function setNames(edit: PackageEdit, name: string, sheet: ResultSheet): void {
  const widest = Math.max(sheet.columns.length, ...sheet.rows.map((row) => row.length), 1);
  setNamesOfSheet(edit, name, {
    "_xlnm.Print_Area": `${quotedSheet(name)}!$A$1:$${columnName(widest - 1)}$${Math.max(sheet.rows.length, 1)}`,
    ...(sheet.headingRows === 0 ? {} : printTitles(name, sheet.headingRows)),
    [resultSheetMark]: "1",
  });
}

/** The name under which a file keeps how many of a sheet's first rows are repeated on each page. */
export function printTitles(sheet: string, rows: number, firstColumn = false): Readonly<Record<string, string>> {
  const at = `${quotedSheet(sheet)}!`;
  return { "_xlnm.Print_Titles": `${firstColumn ? `${at}$A:$A,` : ""}${at}$1:$${rows}` };
}

/** Puts names of ours that belong to a sheet, with what they refer to, in the place of those it has. Our mark is hidden. */
export function setNamesOfSheet(edit: PackageEdit, name: string, wanted: Readonly<Record<string, string>>): void {
  const position = String(sheetPosition(edit.parts, name));
  edit.edit(bookOf(edit.parts).part, (root) => {
    const names = definedNames(root);
    for (const each of children(names, "definedName")) {
      const ours = [resultSheetMark, "_xlnm.Print_Area", "_xlnm.Print_Titles"].includes(each.getAttribute("name") ?? "");
      if (ours && each.getAttribute("localSheetId") === position) names.removeChild(each);
    }
    for (const [label, refersTo] of Object.entries(wanted)) {
      const entry = sibling(names, "definedName", {
        name: label,
        localSheetId: position,
        ...(label === resultSheetMark ? { hidden: "1" } : {}),
      });
      entry.appendChild(names.ownerDocument!.createTextNode(refersTo));
      names.appendChild(entry);
    }
  });
}

/** The list of names, made in its place after the sheets where there is none. */
export function definedNames(root: Element): Element {
  const found = children(root, "definedNames")[0];
  if (found !== undefined) return found;
  const list = sibling(root, "definedNames");
  const before = children(root, "externalReferences")[0] ?? children(root, "functionGroups")[0] ?? children(root, "sheets")[0]!;
  root.insertBefore(list, before.nextSibling);
  return list;
}
