/** Small files that keep a careless reader busy for ever or fill its memory, each a whole workbook but for what is meant. */
import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { fileOf } from "./fixtureFile";

type HeavyFile = {
  readonly name: string;
  readonly bytes: () => Uint8Array;
  /** What the command line ends with: 0 or 1 with figures, 2 refused. */
  readonly ends: readonly (0 | 1 | 2)[];
};

const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const packageRelationships = 'xmlns="http://schemas.openxmlformats.org/package/2006/relationships"';
const demo = (): Record<string, Uint8Array> => unzipSync(readFileSync("shared/demo-season.xlsx"));
const sharedStrings = "xl/sharedStrings.xml";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The demo's workbook with parts changed; a file that packs too well is refused for that alone, so its parts are stored. */
function withParts(change: (text: (part: string) => string) => Readonly<Record<string, string>>): Uint8Array {
  const parts = demo();
  const changed = change((part) => strFromU8(parts[part] ?? new Uint8Array()));
  for (const [part, text] of Object.entries(changed)) parts[part] = strToU8(text);
  return zipSync(parts, { level: 0 });
}

/** The demo with shared strings of its own making beside what it has, listed in the package as a workbook lists them. */
const withStrings = (text: string): Uint8Array =>
  withParts((part) => ({
    [sharedStrings]: text,
    "[Content_Types].xml": part("[Content_Types].xml").replace(
      "</Types>",
      `<Override PartName="/${sharedStrings}" ` +
        'ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/></Types>',
    ),
    "xl/_rels/workbook.xml.rels": part("xl/_rels/workbook.xml.rels").replace(
      "</Relationships>",
      `<Relationship Id="rIdS" Type="${office}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
    ),
  }));

/** A sheet of formulas that each read the one above, and a table whose acres are the last of them. */
export function chain(depth: number, formula: (row: number) => string): Uint8Array {
  const cells = Array.from({ length: depth }, (_, index) => [index === 0 ? 1 : ""]);
  const formulas = Object.fromEntries(Array.from({ length: depth - 1 }, (_, index) => [`A${index + 2}`, `=${formula(index + 2)}`]));
  return fileOf({
    sheets: [
      {
        name: "Crops",
        cells: [
          ["Crop", "Yield unit", "Expected price"],
          ["Corn", "bu", 4],
        ],
        tables: [{ name: "Crops", range: "A1:C2" }],
      },
      {
        name: "Fields",
        cells: [
          ["Field", "Crop", "Acres", "Yield goal"],
          ["One", "Corn", "", 200],
        ],
        formulas: { C2: `=Chain!A${depth}` },
        tables: [{ name: "Fields", range: "A1:D2" }],
      },
      { name: "Chain", cells, formulas },
    ],
    asksForCalculation: true,
  });
}

const wholeSheets = (count: number): Uint8Array =>
  fileOf({
    sheets: Array.from({ length: count }, (_, index) => ({
      name: index === 0 ? "Sales" : `Sales ${index}`,
      cells: [
        ["Crop", "Date", "Quantity", "Price"],
        ["Corn", 48_000, 900, 4],
      ],
      tables: [{ name: index === 0 ? "Sales" : `Sales_${index}`, range: "A1:XFD1048576" }],
    })),
  });

const styles = (inside: string) => ({ "xl/styles.xml": `<styleSheet ${main}>${inside}</styleSheet>` });
const relationships = (inside: string) => ({
  "xl/_rels/workbook.xml.rels": `<Relationships ${packageRelationships}>${inside}</Relationships>`,
});
const million = 1_000_000;

export const heavyFiles: readonly HeavyFile[] = [
  {
    name: "one shared string without an end, 60 MB",
    bytes: () => withStrings(`<sst ${main}><si><t>${"a".repeat(60 * million)}`),
    ends: [2],
  },
  {
    name: "four million shared strings that each begin and never end",
    bytes: () => withStrings(`<sst ${main}>${"<si><t>".repeat(4 * million)}`),
    ends: [2],
  },
  {
    name: "four million empty shared strings that no cell uses",
    bytes: () => withStrings(`<sst ${main}>${"<si/>".repeat(4 * million)}</sst>`),
    ends: [0, 1],
  },
  {
    name: "a shared string of a million runs",
    bytes: () => withStrings(`<sst ${main}><si>${"<r><t>a</t></r>".repeat(million)}</si></sst>`),
    ends: [0, 1],
  },
  {
    name: "a shared string of two million runs without ends",
    bytes: () => withStrings(`<sst ${main}><si>${"<r><t>a".repeat(2 * million)}</si></sst>`),
    ends: [0, 1, 2],
  },
  {
    name: "an unclosed phonetic run",
    bytes: () => withStrings(`<sst ${main}><si><t>Corn</t><rPh sb="0" eb="1"><t>x</si></sst>`),
    ends: [2],
  },
  {
    name: "two million unclosed phonetic runs",
    bytes: () => withStrings(`<sst ${main}><si><t>Corn</t>${'<rPh sb="0">'.repeat(2 * million)}</si></sst>`),
    ends: [2],
  },
  {
    name: "300,000 shared strings with an unclosed phonetic run each",
    bytes: () => withStrings(`<sst ${main}>${'<si><t>Corn</t><rPh sb="0"></si>'.repeat(300_000)}</sst>`),
    ends: [2],
  },
  { name: "a table over the whole sheet", bytes: () => wholeSheets(1), ends: [1] },
  { name: "fifty tables over their whole sheets", bytes: () => wholeSheets(50), ends: [2] },
  { name: "formulas chained 100,000 deep", bytes: () => chain(100_000, (row) => `A${row - 1}+1`), ends: [0, 1] },
  {
    name: "formulas chained 100,000 deep in a circle",
    bytes: () => chain(100_000, (row) => (row === 2 ? "A100000" : `A${row - 1}+1`)),
    ends: [0, 1],
  },
  { name: "20,000 formulas that each add up all above", bytes: () => chain(20_000, (row) => `SUM(A$1:A${row - 1})`), ends: [0, 1] },
  {
    name: "100,000 formulas that each name two above",
    bytes: () => chain(100_000, (row) => `A${row - 1}+A${Math.max(1, row - 2)}`),
    ends: [0, 1],
  },
  {
    name: "a formula nested 8,000 deep",
    bytes: () => chain(3, (row) => (row === 3 ? `${"(".repeat(8_000)}A2${")".repeat(8_000)}` : "A1+1")),
    ends: [0, 1],
  },
  { name: "a formula of 8,000 minus signs", bytes: () => chain(3, (row) => (row === 3 ? `${"-".repeat(8_000)}A2` : "A1+1")), ends: [0, 1] },
  {
    name: "styles with a million formats",
    bytes: () => withParts(() => styles(`<cellXfs>${'<xf numFmtId="0"/>'.repeat(million)}</cellXfs>`)),
    ends: [0, 1, 2],
  },
  {
    name: "styles nested 200,000 deep",
    bytes: () => withParts(() => styles(`${"<font>".repeat(200_000)}${"</font>".repeat(200_000)}`)),
    ends: [0, 1, 2],
  },
  {
    name: "styles whose formats are 200,000 different codes",
    bytes: () =>
      withParts(() =>
        styles(
          `<numFmts>${Array.from({ length: 200_000 }, (_, index) => `<numFmt numFmtId="${index}" formatCode="0.0${index}"/>`).join("")}</numFmts>`,
        ),
      ),
    ends: [0, 1, 2],
  },
  {
    name: "70,000 relationships to one sheet",
    bytes: () =>
      withParts((part) =>
        relationships(
          `${/<Relationship .*\/>/s.exec(part("xl/_rels/workbook.xml.rels"))![0]}${Array.from({ length: 70_000 }, (_, index) => `<Relationship Id="x${index}" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/>`).join("")}`,
        ),
      ),
    ends: [0, 1],
  },
  {
    name: "200,000 relationships to one sheet",
    bytes: () =>
      withParts((part) =>
        relationships(
          `${/<Relationship .*\/>/s.exec(part("xl/_rels/workbook.xml.rels"))![0]}${Array.from({ length: 200_000 }, (_, index) => `<Relationship Id="x${index}" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/>`).join("")}`,
        ),
      ),
    ends: [2],
  },
  {
    name: "relationships nested 200,000 deep",
    bytes: () => withParts(() => relationships("<Relationship>".repeat(200_000) + "</Relationship>".repeat(200_000))),
    ends: [2],
  },
  {
    name: "a relationship that points at itself",
    bytes: () =>
      withParts(() => relationships('<Relationship Id="rId1" Type="http://x/worksheet" Target="../xl/_rels/workbook.xml.rels"/>')),
    ends: [2],
  },
  {
    name: "a comment without an end in the styles, 60 MB",
    bytes: () => withParts(() => ({ "xl/styles.xml": `<styleSheet ${main}><!-- ${"- -".repeat(20 * million)}` })),
    ends: [2],
  },
  {
    name: "an attribute without an end in a sheet, 60 MB",
    bytes: () => withParts(() => ({ "xl/worksheets/sheet1.xml": `<worksheet ${main}><sheetData><row r="${"1".repeat(60 * million)}` })),
    ends: [2],
  },
  {
    name: "a sheet of two million rows without ends",
    bytes: () =>
      withParts(() => ({
        "xl/worksheets/sheet1.xml": `<worksheet ${main}><sheetData>${'<row r="1">'.repeat(2 * million)}</sheetData></worksheet>`,
      })),
    ends: [0, 1, 2],
  },
  {
    name: "a sheet of two million cells without ends",
    bytes: () =>
      withParts(() => ({
        "xl/worksheets/sheet1.xml": `<worksheet ${main}><sheetData><row r="1">${'<c r="A1">'.repeat(2 * million)}</row></sheetData></worksheet>`,
      })),
    ends: [0, 1, 2],
  },
];
