import { strFromU8, strToU8 } from "fflate";
import { areaName, cellName, parseArea } from "../../../src/host/address";
import { newWorkbook } from "../../../src/host/embedded";
import { pack } from "../../../src/host/embedded/package/zip";
import { resultSheetMark } from "../../../src/host/sheetNames";
import type { Fixture, FixtureSheet } from "../../host/fixture";

const spreadsheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packageRelationships = "http://schemas.openxmlformats.org/package/2006/relationships";
const escape = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");

/** A fixture as a real file, written part by part. */
export function fileOf({ sheets, dateSystem, asksForCalculation }: Fixture): Uint8Array {
  const parts = new Map(newWorkbook().parts());
  const put = (name: string, text: string) => parts.set(name, strToU8(text));
  const types: string[] = [];
  const relationships: string[] = [];
  const names: string[] = [];
  let tables = 0;
  sheets.forEach((sheet, index) => {
    const own: string[] = [];
    for (const table of sheet.tables ?? []) {
      tables += 1;
      own.push(`<Relationship Id="rId${own.length + 1}" Type="${office}/table" Target="../tables/table${tables}.xml"/>`);
      put(`xl/tables/table${tables}.xml`, tableXml(sheet, table, tables));
      types.push(
        `<Override PartName="/xl/tables/table${tables}.xml" ` +
          `ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/>`,
      );
    }
    put(`xl/worksheets/sheet${index + 1}.xml`, sheetXml(sheet, own.length));
    if (own.length > 0)
      put(
        `xl/worksheets/_rels/sheet${index + 1}.xml.rels`,
        `<Relationships xmlns="${packageRelationships}">${own.join("")}</Relationships>`,
      );
    types.push(
      `<Override PartName="/xl/worksheets/sheet${index + 1}.xml" ` +
        `ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>`,
    );
    relationships.push(`<Relationship Id="rId${index + 10}" Type="${office}/worksheet" Target="worksheets/sheet${index + 1}.xml"/>`);
    if (sheet.ours) names.push(`<definedName name="${resultSheetMark}" localSheetId="${index}" hidden="1">1</definedName>`);
  });
  const content = strFromU8(parts.get("[Content_Types].xml")!)
    .replace(/<Override PartName="\/xl\/worksheets[^>]*>/, "")
    .replace("</Types>", `${types.join("")}</Types>`);
  put("[Content_Types].xml", content);
  put(
    "xl/_rels/workbook.xml.rels",
    `<Relationships xmlns="${packageRelationships}"><Relationship Id="rId2" Type="${office}/styles" Target="styles.xml"/>` +
      `${relationships.join("")}</Relationships>`,
  );
  put(
    "xl/workbook.xml",
    `<workbook xmlns="${spreadsheet}" xmlns:r="${office}">` +
      `<workbookPr${dateSystem === "1904" ? ' date1904="1"' : ""}/>` +
      `<sheets>${sheets.map(({ name, hidden }, index) => `<sheet name="${escape(name)}" sheetId="${index + 1}"${hidden === true ? ' state="hidden"' : ""} r:id="rId${index + 10}"/>`).join("")}</sheets>${names.length === 0 ? "" : `<definedNames>${names.join("")}</definedNames>`}${asksForCalculation === true ? '<calcPr calcId="124519" fullCalcOnLoad="1"/>' : ""}</workbook>`,
  );
  put(
    "xl/styles.xml",
    strFromU8(parts.get("xl/styles.xml")!)
      .replace('<cellXfs count="1">', '<cellXfs count="2">')
      .replace(
        "</cellXfs>",
        '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" applyProtection="1"><protection locked="0"/></xf></cellXfs>',
      ),
  );
  return pack(parts);
}

/** The style of cells that are not locked, by its place in the list of styles. */
const unlockedStyle = 1;

function sheetXml(sheet: FixtureSheet, tables: number): string {
  const rows = sheet.cells.map((cells, row) => {
    const xml = cells.flatMap((value, column) => {
      const formula = sheet.formulas?.[cellName({ row, column })];
      if (value === "" && formula === undefined) return [];
      const name = cellName({ row, column });
      const style = sheet.unlocked?.includes(name) ? ` s="${unlockedStyle}"` : "";
      const f = formula === undefined ? "" : `<f>${escape(formula.slice(1))}</f>`;
      if (typeof value === "number") return [`<c r="${name}"${style}>${f}<v>${value}</v></c>`];
      if (typeof value === "boolean") return [`<c r="${name}"${style} t="b">${f}<v>${value ? 1 : 0}</v></c>`];
      if (formula !== undefined && !value.startsWith("#"))
        return [value === "" ? `<c r="${name}"${style}>${f}</c>` : `<c r="${name}"${style} t="str">${f}<v>${escape(value)}</v></c>`];
      if (value.startsWith("#")) return [`<c r="${name}"${style} t="e">${f}<v>${value}</v></c>`];
      return [`<c r="${name}"${style} t="inlineStr"><is><t xml:space="preserve">${escape(value)}</t></is></c>`];
    });
    return `<row r="${row + 1}"${sheet.hiddenRows?.includes(row + 1) ? ' hidden="1"' : ""}>${xml.join("")}</row>`;
  });
  const parts =
    tables === 0
      ? ""
      : `<tableParts count="${tables}">${Array.from({ length: tables }, (_, index) => `<tablePart r:id="rId${index + 1}"/>`).join("")}</tableParts>`;
  return (
    `<worksheet xmlns="${spreadsheet}" xmlns:r="${office}">` +
    `<sheetData>${rows.join("")}</sheetData>${sheet.locked ? '<sheetProtection sheet="1"/>' : ""}${parts}</worksheet>`
  );
}

function tableXml(sheet: FixtureSheet, { name, range, totalsRow }: NonNullable<FixtureSheet["tables"]>[number], id: number): string {
  const area = parseArea(range)!;
  const headings = Array.from({ length: area.right - area.left + 1 }, (_, index) =>
    String(sheet.cells[area.top]?.[area.left + index] ?? ""),
  );
  const filtered = areaName({ ...area, bottom: area.bottom - (totalsRow ? 1 : 0) });
  return (
    `<table xmlns="${spreadsheet}" id="${id}" name="${name}" displayName="${name}" ` +
    `ref="${range}"${totalsRow ? ' totalsRowCount="1"' : ""}><autoFilter ref="${filtered}"/><tableColumns count="${headings.length}">` +
    `${headings.map((heading, index) => `<tableColumn id="${index + 1}" name="${escape(heading)}"/>`).join("")}</tableColumns></table>`
  );
}
