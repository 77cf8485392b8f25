/**
 * Whether the values that a file stores for its formulas say anything. A file of ours asks Excel to work everything out as
 * it is opened, so it also notes that its values were worked out, and which of them could not be. The note holds for the
 * cells with which it was saved: a check number tells whether another program has written them since.
 */
import { parseArea, quotedSheet } from "../../address";
import { bookOf, type Book } from "../book";
import { definedNames } from "../edit/newSheets";
import { isOfType, relationshipsOf, type PackageEdit } from "../package/packageParts";
import type { StoredValues } from "../recalculation/formulaBook";
import type { State } from "../state";
import { children, documentOf, first, sibling } from "../package/xml";
import { checksum } from "../package/zipFormat";
import type { Parts } from "../package/zip";

const workedOut = "Pennyacre_worked_out";
const oldValues = "Pennyacre_old_values";
/** Longer formulas cannot be kept in a name; without the note all values are worked out again, and those that cannot be are told. */
const longest = 8_000;

/** What the file as opened says of the values of its formulas. */
export function storedValues({ parts }: State): StoredValues {
  const book = bookOf(parts);
  const calculation = first(documentOf(parts.get(book.part)!).documentElement!, "calcPr");
  const isSet = (name: string) => /^(1|true)$/.test(calculation?.getAttribute(name) ?? "");
  const areRounded = /^(0|false)$/.test(calculation?.getAttribute("fullPrecision") ?? "");
  if (!isSet("fullCalcOnLoad")) return { areToBeWorkedOut: false, old: [], areRounded };
  const isOurs = book.names.some(({ name, refersTo }) => name === workedOut && refersTo === noteFor(parts, book));
  if (!isOurs) return { areToBeWorkedOut: true, old: [], areRounded };
  const listed = book.names.filter(({ name }) => name === oldValues).flatMap(({ refersTo }) => placesIn(refersTo));
  return {
    areToBeWorkedOut: false,
    areRounded,
    old: listed.flatMap(({ sheet: name, row, column }) => {
      const sheet = book.sheets.findIndex((each) => each.name === name);
      return sheet < 0 ? [] : [{ sheet, row, column }];
    }),
  };
}

/** Notes in the workbook about to be saved, whose cells are in place, which values its formulas could not be given. */
export function noteStoredValues(edit: PackageEdit, { unworked }: State): void {
  const book = bookOf(edit.parts);
  const places = [...unworked].map((key) => {
    const split = key.lastIndexOf("!");
    const sheet = quotedSheet(book.sheets.find((each) => each.part === key.slice(0, split))!.name);
    return `${sheet}!${key.slice(split + 1).replace(/^([A-Z]+)/, "$$$1$$")}`;
  });
  const list = places.join(",");
  const notes = list.length > longest ? [] : [[workedOut, noteFor(edit.parts, book)], ...(list === "" ? [] : [[oldValues, list]])];
  edit.edit(book.part, (root) => {
    const names = definedNames(root);
    for (const each of children(names, "definedName"))
      if ([workedOut, oldValues].includes(each.getAttribute("name") ?? "")) names.removeChild(each);
    for (const [name, refersTo] of notes) {
      const entry = sibling(names, "definedName", { name: name!, hidden: "1" });
      entry.appendChild(names.ownerDocument!.createTextNode(refersTo!));
      names.appendChild(entry);
    }
  });
}

/** The check numbers of all sheets and of their strings, as a text formula. */
function noteFor(parts: Parts, book: Book): string {
  const strings = relationshipsOf(parts, book.part)
    .filter((each) => isOfType(each, "sharedStrings"))
    .map(({ target }) => target);
  const numbers = [...book.sheets.map(({ part }) => part), ...strings].map((part) =>
    checksum(parts.get(part) ?? new Uint8Array()).toString(16),
  );
  return `"${checksum(new TextEncoder().encode(numbers.join(" "))).toString(16)}"`;
}

/** The cells of a list as `noteStoredValues` writes it. */
const placesIn = (list: string): readonly { sheet: string; row: number; column: number }[] =>
  [...list.matchAll(/(?:'((?:[^']|'')+)'|([\w.]+))!(\$[A-Z]+\$\d+)/g)].map(([, quoted, plain, cell]) => {
    const { top, left } = parseArea(cell!)!;
    return { sheet: quoted?.replaceAll("''", "'") ?? plain!, row: top, column: left };
  });
