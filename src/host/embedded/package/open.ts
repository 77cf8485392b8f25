/** Opening a file, and making a new one. */
import { ParseError } from "@xmldom/xmldom";
import { failed, ok, type Result } from "../../../result";
import { bookOf, sheetDataOf, tablesOf } from "../book";
import { choiceLists } from "../sheet/choices";
import { EmbeddedWorkbook, type Options } from "../embeddedWorkbook";
import { hasTooManyElements } from "./elementCount";
import { Damaged, type WorkbookFault } from "./fault";
import { worksheet } from "../edit/newSheets";
import { binaryWorkbook, officeDocument, packedFile } from "./otherFile";
import { workbookPart } from "./packageParts";
import { emptyStyles, stylesOf } from "./styles";
import { bytesOf, documentOf } from "./xml";
import { unpack, type Parts } from "./zip";

/** A workbook over the bytes of an `.xlsx` file, or why it cannot be opened. */
export function openWorkbook(bytes: Uint8Array, options: Options = {}): Result<EmbeddedWorkbook, WorkbookFault> {
  const unpacked = unpack(bytes);
  return unpacked.ok ? fromParts(unpacked.value, options) : unpacked;
}

/** Every sheet and table is read once, so that a damaged file is refused here and not in the middle of work. */
function fromParts(parts: Parts, options: Options): Result<EmbeddedWorkbook, WorkbookFault> {
  const other = packedFile(parts);
  if (other !== null) return failed(other);
  if (hasTooManyElements(parts))
    return failed<WorkbookFault>({
      code: "too-large",
      message: "The workbook has far more styles, tables or links between its parts than can be read, so it is not opened.",
    });
  try {
    for (const [name, bytes] of parts) if (name === "[Content_Types].xml" || name.endsWith(".rels")) documentOf(bytes);
    const main = workbookPart(parts);
    if (main.endsWith(".bin")) return failed(binaryWorkbook);
    if (documentOf(parts.get(main)!).documentElement!.localName !== "workbook") return failed(officeDocument);
    const { sheets } = bookOf(parts);
    if (sheets.length === 0) throw new Damaged("it has no sheet with cells");
    for (const { part } of sheets) choiceLists(sheetDataOf(parts, part));
    tablesOf(parts);
    stylesOf(parts);
    return ok(new EmbeddedWorkbook(parts, options));
  } catch (cause) {
    // What a parser says of broken XML is the cause; everything else is a fault of ours.
    if (!(cause instanceof Damaged) && !(cause instanceof ParseError)) throw cause;
    const { message } = cause.cause instanceof Damaged ? cause.cause : cause;
    return failed<WorkbookFault>({ code: "damaged", message: `The workbook is damaged: ${message}.` });
  }
}

/** An empty workbook with one sheet, called Notes. */
export function newWorkbook(options: Options = {}): EmbeddedWorkbook {
  const type = (name: string) => `application/vnd.openxmlformats-officedocument.spreadsheetml.${name}+xml`;
  const relationships = "http://schemas.openxmlformats.org/package/2006/relationships";
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  const parts: Record<string, string> = {
    "[Content_Types].xml":
      `${head}<Types ` +
      `xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default ` +
      `Extension="rels" ` +
      `ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default ` +
      `Extension="xml" ` +
      `ContentType="application/xml"/><Override ` +
      `PartName="/xl/workbook.xml" ` +
      `ContentType="${type("sheet.main")}"/>` +
      `<Override PartName="/xl/worksheets/sheet1.xml" ` +
      `ContentType="${type("worksheet")}"/><Override ` +
      `PartName="/xl/styles.xml" ` +
      `ContentType="${type("styles")}"/></Types>`,
    "_rels/.rels":
      `${head}<Relationships xmlns="${relationships}"><Relationship Id="rId1" Type="${office}/officeDocument" ` +
      'Target="xl/workbook.xml"/></Relationships>',
    "xl/workbook.xml":
      `${head}<workbook ` +
      `xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ` +
      `xmlns:r="${office}">` +
      `<bookViews><workbookView/></bookViews><sheets><sheet name="Notes" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels":
      `${head}<Relationships xmlns="${relationships}"><Relationship Id="rId1" Type="${office}/worksheet" ` +
      `Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${office}/styles" Target="styles.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml": worksheet("", ""),
    "xl/styles.xml": emptyStyles,
  };
  return new EmbeddedWorkbook(new Map(Object.entries(parts).map(([name, text]) => [name, bytesOf(text)])), options);
}
