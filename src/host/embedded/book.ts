/** What the parts of a workbook say of it: its sheets, names, tables and strings. */
import { oncePer } from "./oncePer";
import { parseArea, type Block } from "../address";
import { Damaged } from "./package/fault";
import { isOfType, relationshipsOf, relationshipsPart, workbookPart } from "./package/packageParts";
import { scanSharedStrings } from "./sheet/sharedStrings";
import { scanSheet, type SheetData } from "./sheet/sheetXml";
import type { Parts } from "./package/zip";
import { children, documentOf, elements, first, textOf, type Element } from "./package/xml";

export type SheetEntry = { readonly name: string; readonly part: string; readonly hidden: boolean };
type DefinedName = {
  readonly name: string;
  readonly refersTo: string;
  /** Position of the sheet it belongs to. */ readonly sheet: number | null;
};
export type Book = {
  readonly part: string;
  readonly sheets: readonly SheetEntry[];
  readonly names: readonly DefinedName[];
  readonly date1904: boolean;
};

export type TableEntry = {
  readonly part: string;
  readonly sheet: string;
  readonly name: string;
  /** Headings, body and totals row together. */
  readonly area: Block;
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly { readonly name: string; readonly formula: string | null }[];
};

const books = new WeakMap<Uint8Array, { readonly relationships: Uint8Array | undefined; readonly book: Book }>();

/** The workbook as its main part describes it. Chart sheets and dialogs have no cells and are left aside. */
export function bookOf(parts: Parts): Book {
  const part = workbookPart(parts);
  const [bytes, relationships] = [parts.get(part)!, parts.get(relationshipsPart(part))];
  const found = books.get(bytes);
  if (found !== undefined && found.relationships === relationships) return found.book;
  const book = readBook(parts);
  books.set(bytes, { relationships, book });
  return book;
}

function readBook(parts: Parts): Book {
  const part = workbookPart(parts);
  const root = documentOf(parts.get(part)!).documentElement!;
  const targets = new Map(relationshipsOf(parts, part).map((each) => [each.id, each]));
  const sheets = sheetElements(root).flatMap((element): readonly (SheetEntry | null)[] => {
    const id = [...element.attributes].find(({ localName, namespaceURI }) => localName === "id" && namespaceURI !== null)?.value ?? "";
    const relationship = targets.get(id);
    if (relationship === undefined || !parts.has(relationship.target))
      throw new Damaged(`the sheet ${element.getAttribute("name") ?? ""} is missing`);
    if (!isOfType(relationship, "worksheet")) return [null];
    return [
      {
        name: element.getAttribute("name") ?? "",
        part: relationship.target,
        hidden: (element.getAttribute("state") ?? "visible") !== "visible",
      },
    ];
  });
  const names = elements(root, "definedName").map((element) => {
    const local = element.getAttribute("localSheetId");
    return { name: element.getAttribute("name") ?? "", refersTo: element.textContent ?? "", sheet: local === null ? null : Number(local) };
  });
  const date1904 = /^(1|true)$/.test(first(root, "workbookPr")?.getAttribute("date1904") ?? "");
  // Local names count all sheets; the position among those with cells would be another.
  return { part, sheets: sheets.filter((sheet) => sheet !== null), names, date1904 };
}

const sheetElements = (root: Element): readonly Element[] => children(root, "sheets").flatMap((sheets) => children(sheets, "sheet"));

/** The position of a sheet among all sheets of the workbook, as local names count. */
export function sheetPosition(parts: Parts, name: string): number {
  const root = documentOf(parts.get(bookOf(parts).part)!).documentElement!;
  return sheetElements(root).findIndex((each) => each.getAttribute("name") === name);
}

const stringsIn = oncePer((bytes: Uint8Array): readonly string[] => scanSharedStrings(textOf(bytes)));

function sharedStringsOf(parts: Parts): readonly string[] {
  const part = relationshipsOf(parts, bookOf(parts).part).find((each) => isOfType(each, "sharedStrings"))?.target;
  const bytes = part === undefined ? undefined : parts.get(part);
  return bytes === undefined ? [] : stringsIn(bytes);
}

const scanned = new WeakMap<Uint8Array, SheetData>();

/** The cells of a sheet's part. */
export function sheetDataOf(parts: Parts, part: string): SheetData {
  const bytes = parts.get(part)!;
  let data = scanned.get(bytes);
  if (data === undefined)
    scanned.set(bytes, (data = scanSheet(textOf(bytes), { sharedStrings: sharedStringsOf(parts), date1904: bookOf(parts).date1904 })));
  return data;
}

/** The tables of all sheets, in the order of the sheets. */
export function tablesOf(parts: Parts): readonly TableEntry[] {
  return bookOf(parts).sheets.flatMap((sheet) =>
    relationshipsOf(parts, sheet.part)
      .filter((each) => isOfType(each, "table"))
      .flatMap((each) => {
        const bytes = parts.get(each.target);
        if (bytes === undefined) throw new Damaged(`a table of the sheet ${sheet.name} is missing`);
        const root = documentOf(bytes).documentElement!;
        const area = parseArea(root.getAttribute("ref") ?? "");
        if (area === null) throw new Damaged(`the table ${root.getAttribute("name") ?? ""} has no range`);
        return [
          {
            part: each.target,
            sheet: sheet.name,
            name: root.getAttribute("displayName") ?? root.getAttribute("name") ?? "",
            area,
            headerRows: Number(root.getAttribute("headerRowCount") ?? "1"),
            totalsRows: Number(root.getAttribute("totalsRowCount") ?? "0"),
            columns: elements(root, "tableColumn").map((column) => ({
              name: (column.getAttribute("name") ?? "").replace(/_x000[aA]_|\n/g, " "),
              formula: children(column, "calculatedColumnFormula")[0]?.textContent ?? null,
            })),
          },
        ];
      }),
  );
}

/** The body of a table: neither its headings nor its totals. */
export const bodyOf = ({ area, headerRows, totalsRows }: TableEntry): Block => ({
  ...area,
  top: area.top + headerRows,
  bottom: area.bottom - totalsRows,
});
