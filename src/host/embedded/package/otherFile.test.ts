import { strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { openWorkbook } from "./open";

const text = (words: string) => strToU8(words);
const utf16 = (words: string) => new Uint8Array([0xff, 0xfe, ...[...words].flatMap((letter) => [letter.charCodeAt(0), 0])]);
const packed = (parts: Readonly<Record<string, string>>) =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, content]) => [name, strToU8(content)])));
/** The compound file of MS-CFB begins with this mark; names of its streams are UTF-16. */
const compound = (stream: string) => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600), ...utf16(stream).slice(2)]);

const saveAs = /spreadsheet program and save it there as an Excel workbook \(\.xlsx\)/;
const paste = /copy its rows there, and paste them under the headings of a table/;

it.each([
  ["columns parted by commas", text("Date,Item,Quantity\n2025-04-02,Urea,12\n"), [/\.csv/, saveAs, paste]],
  [
    "columns parted by semicolons, in Western letters",
    new Uint8Array([...text("Schlag;Fl"), 0xe4, ...text("che\r\n")]),
    [/\.csv/, saveAs, paste],
  ],
  ["text as Excel writes it with every letter", utf16("Date\tItem\r\n"), [/\.tsv/, saveAs, paste]],
  ["an old workbook", compound("Workbook"), [/old format \(\.xls\)/, saveAs]],
  ["a web page under another name", text("\n<html><table><tr><td>1</td></tr></table>"), [/a web page/, saveAs]],
  ["a workbook in plain XML", text('<?xml version="1.0"?><Workbook/>'), [/\.xml/, saveAs]],
  [
    "an OpenDocument spreadsheet",
    packed({ mimetype: "application/vnd.oasis.opendocument.spreadsheet", "content.xml": "<a/>" }),
    [/\.ods/, saveAs],
  ],
  ["a Numbers document", packed({ "Index/Document.iwa": "", "preview.jpg": "" }), [/\.numbers/, /export it as an Excel workbook/]],
  ["a page to print", new Uint8Array([...text("%PDF-1.7\n%"), 0xe2, 0, 1]), [/\.pdf/, /workbook that it was printed from/]],
  ["a workbook packed with others", packed({ "farm/season.xlsx": "", "farm/notes.txt": "" }), [/Unpack it first, and open season\.xlsx\./]],
  ["a picture", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0]), [/a file of another kind/]],
])("says of %s what it is and what to do", (_, bytes, sentences) => {
  const opened = openWorkbook(bytes);
  if (opened.ok) throw new Error("It was opened.");
  expect(opened.problems).toHaveLength(1);
  for (const sentence of sentences) expect(opened.problems[0]!.message).toMatch(sentence);
});
