/** From a state to the bytes of a file: only the parts that changed are written again. */
import { bookOf } from "../book";
import { isOfType, PackageEdit, relationshipsOf } from "./packageParts";
import { sheetText, type SheetData } from "../sheet/sheetXml";
import { dataOf, hasFormulas, type State } from "../state";
import { noteStoredValues } from "../sheet/storedValues";
import { pack, packBeside, type Parts } from "./zip";
import { bytesOf, children, first, sibling } from "./xml";

export const savedBytes = (state: State): Uint8Array => pack(savedParts(state));

/** The same for a draft, of the state as it is now: packed beside the page, which goes on meanwhile. */
export const draftBytes = (state: State): Promise<Uint8Array> => packBeside(savedParts(state));

/** The sheets of a file as they were written last, by their part. Older ones are not kept: each may be as large as the file. */
const written = new WeakMap<Parts, Map<string, { readonly data: SheetData; readonly bytes: Uint8Array }>>();

function bytesOfSheet({ parts }: State, part: string, data: SheetData): Uint8Array {
  let last = written.get(parts);
  if (last === undefined) written.set(parts, (last = new Map()));
  const known = last.get(part);
  if (known?.data === data) return known.bytes;
  const bytes = bytesOf(sheetText(data));
  last.set(part, { data, bytes });
  return bytes;
}

/** The parts as they are to be saved. */
export function savedParts(state: State): Parts {
  if (!state.touched) return state.parts;
  const edit = new PackageEdit(state.parts);
  for (const [part, data] of state.edited) edit.put(part, bytesOfSheet(state, part, data));
  const book = bookOf(state.parts);
  if (book.sheets.some((sheet) => hasFormulas(dataOf(state, sheet.part)))) {
    dropChain(edit, book.part);
    calculateOnLoad(edit, book.part);
    noteStoredValues(edit, state);
  }
  return edit.parts;
}

/** The order of calculation is Excel's own note; a wrong one is taken for damage, none is made anew. */
function dropChain(edit: PackageEdit, book: string): void {
  for (const chain of relationshipsOf(edit.parts, book).filter((each) => isOfType(each, "calcChain"))) {
    edit.unrelate(book, chain.target);
    edit.remove(chain.target);
  }
}

function calculateOnLoad(edit: PackageEdit, book: string): void {
  edit.edit(book, (root) => {
    let calculation = first(root, "calcPr");
    if (calculation === null) {
      calculation = sibling(root, "calcPr", { calcId: "191029" });
      const before = ["definedNames", "externalReferences", "functionGroups", "sheets"].flatMap((name) => children(root, name))[0]!;
      root.insertBefore(calculation, before.nextSibling);
    }
    calculation.setAttribute("fullCalcOnLoad", "1");
  });
}
