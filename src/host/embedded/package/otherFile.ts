/** What a file is that is no `.xlsx`, and how its entries get into a season workbook, in words for its owner. */
import { strFromU8 } from "fflate";
import type { WorkbookFault } from "./fault";

/** How a spreadsheet of another kind becomes one that can be opened. */
const saveAs = "Open it in a spreadsheet program and save it there as an Excel workbook (.xlsx).";
const orPaste = "Or copy its rows there, and paste them under the headings of a table in a season workbook.";

const fault = (code: WorkbookFault["code"], message: string): WorkbookFault => ({ code, message });
const other = (what: string, ...remedy: readonly string[]): WorkbookFault =>
  fault("not-a-workbook", [`This is ${what}, and not an Excel workbook (.xlsx).`, ...remedy].join(" "));

export const binaryWorkbook = fault("old-format", `This is a binary workbook (.xlsb). ${saveAs}`);
export const officeDocument = other(
  "a document of another Office program",
  "If it holds a table, copy that into a spreadsheet program and save it there as an Excel workbook (.xlsx).",
);

/** A file that is not packed: told by its first bytes, whatever its name says. */
export function unpackedFile(bytes: Uint8Array): WorkbookFault {
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return compoundFile(bytes);
  const text = textOf(bytes.subarray(0, looksAt));
  if (text === null)
    return other("a file of another kind", "If its program can save or export it as an Excel workbook (.xlsx), open that one.");
  const start = text.trimStart().slice(0, 300).toLowerCase();
  if (start.startsWith("%pdf")) return other("a page to print (.pdf)", "Open the workbook that it was printed from.");
  if (start.startsWith("<")) return other(/<html|<!doctype html|<table/.test(start) ? "a web page" : "text with marks (.xml)", saveAs);
  return other("plain text, as in a .csv, .tsv or .txt file", saveAs, orPaste);
}

/** A packed file of another kind, told by the names of its parts; `null` where none of them says what it is. */
export function packedFile(parts: ReadonlyMap<string, Uint8Array>): WorkbookFault | null {
  const mimetype = parts.get("mimetype");
  if (mimetype !== undefined && strFromU8(mimetype).includes("opendocument.spreadsheet"))
    return other("an OpenDocument spreadsheet (.ods)", saveAs);
  const names = [...parts.keys()];
  if (names.some((name) => name.endsWith(".iwa") || name.endsWith("Index.zip")))
    return other("a document as Numbers keeps it (.numbers)", "Open it in Numbers and export it as an Excel workbook (.xlsx).");
  if (parts.has("[Content_Types].xml") && parts.has("_rels/.rels")) return null;
  const inside = names.find((name) => /\.xls[xm]$/i.test(name));
  return other(
    "a packed file",
    inside === undefined
      ? "If there is a workbook in it, unpack it first and open that."
      : `Unpack it first, and open ${inside.split("/").at(-1)!}.`,
  );
}

/** Old workbooks and encrypted ones come in the same kind of container; the encrypted one says so inside. */
function compoundFile(bytes: Uint8Array): WorkbookFault {
  const names = strFromU8(bytes, true);
  const has = (name: string) => names.includes([...name].join("\u0000"));
  if (has("EncryptedPackage"))
    return fault("encrypted", "The workbook is protected with a password. Open it in Excel, take the password off, and save it again.");
  if (has("Workbook") || has("Book")) return fault("old-format", `This is a workbook of the old format (.xls). ${saveAs}`);
  return other(
    "a file of an older Office program",
    "If it holds a table, copy that into a spreadsheet program and save it there as an Excel workbook (.xlsx).",
  );
}

/** Enough to tell text from anything else. */
const looksAt = 4000;

/** The start of a file as text; `null` where it is none. Excel's own “Unicode text” is UTF-16 and begins with a mark. */
function textOf(start: Uint8Array): string | null {
  if (startsWith(start, [0xff, 0xfe])) return new TextDecoder("utf-16le").decode(start);
  const text = new TextDecoder("latin1").decode(startsWith(start, [0xef, 0xbb, 0xbf]) ? start.subarray(3) : start);
  // Text holds no control signs but tabs, escapes and ends of lines and pages.
  return /[\u0000-\u0008\u000e-\u001a\u001c-\u001f]/.test(text) && !text.startsWith("%PDF") ? null : text;
}

export const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean => start.every((byte, index) => bytes[index] === byte);
