/** Small files that are made, or broken, so that a careless reader never ends: each is refused in words or read within the time. */
import { readFileSync } from "node:fs";
import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, it } from "vitest";
import { openWorkbook } from "../../src/host/embedded";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";

const parts = () => unzipSync(readFileSync("shared/demo-season.xlsx"));
const withPart = (name: string, text: string) => openWorkbook(zipSync({ ...parts(), [name]: strToU8(text) }), { engine: engineInNode });
const sheet = (rows: string) =>
  `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`;
const relationships = (inside: string) =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${inside}</Relationships>`;
const styles = (inside: string) => `<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${inside}</styleSheet>`;

it.each([
  ["styles that end in the middle", "xl/styles.xml", "<styleSheet><fonts><font>"],
  ["styles that are no text", "xl/styles.xml", "\u0000\u0001\u0002"],
  ["empty styles", "xl/styles.xml", ""],
  ["relationships that end in the middle", "xl/_rels/workbook.xml.rels", '<Relationships><Relationship Id="rId1"'],
  ["empty relationships", "xl/_rels/workbook.xml.rels", ""],
  ["relationships without targets", "xl/_rels/workbook.xml.rels", relationships('<Relationship Id="rId1" Type="x/worksheet"/>')],
  ["a package that says nothing of its parts", "_rels/.rels", relationships("")],
  ["a cell without an end", "xl/worksheets/sheet1.xml", sheet('<row r="1"><c r="A1"><v>1</v></row>')],
])("refuses %s", (_, part, text) => {
  const opened = withPart(part, text);
  expect(opened.ok ? "opened" : opened.problems.map(({ code }) => code)).toEqual(["damaged"]);
});

it.each([
  ["without any content", ""],
  ["that point at fonts and formats that are not there", '<cellXfs><xf numFmtId="9999" fontId="88" fillId="77"/></cellXfs>'],
  ["whose numbers are words", '<cellXfs><xf numFmtId="many" fontId="-1" fillId="x"/></cellXfs>'],
])("reads a workbook with styles %s", async (_, inside) => {
  const opened = withPart("xl/styles.xml", styles(inside));
  if (!opened.ok) throw new Error(opened.problems[0]!.message);
  expect((await opened.value.read()).tables.length).toBeGreaterThan(5);
});

it.each([
  ["three", "a row has no number that a row can have"],
  ["0", "a row has no number that a row can have"],
  ["1.5", "a row has no number that a row can have"],
  ["1", "the row 1 is there twice"],
])("is told in words of a row named %s", (name, words) => {
  const text = sheet(`<row r="1"><c r="A1"><v>1</v></c></row><row r="${name}"><c r="A2"><v>1</v></c></row>`);
  const opened = withPart("xl/worksheets/sheet1.xml", text);
  expect(opened.ok ? "opened" : opened.problems[0]!.message).toBe(`The workbook is damaged: ${words}.`);
});

it("saves rows that stand out of order in the part once each, in order, so that the file opens again", () => {
  const row = (number: number) => `<row r="${number}"><c r="A${number}"><v>${number}</v></c></row>`;
  const opened = withPart("xl/worksheets/sheet1.xml", sheet([5, 4, 8, 7, 6, 9].map(row).join("")));
  if (!opened.ok) throw new Error(opened.problems[0]!.message);
  const [first] = opened.value.sheets();
  opened.value.setCells(first!.name, [{ row: 20, column: 0, value: 21 }]);
  const again = openWorkbook(opened.value.save());
  if (!again.ok) throw new Error(again.problems[0]!.message);
  const text = new TextDecoder().decode(again.value.parts().get("xl/worksheets/sheet1.xml"));
  expect([...text.matchAll(/<row r="(\d+)"/g)].map(([, number]) => number)).toEqual(["4", "5", "6", "7", "8", "9", "21"]);
});
