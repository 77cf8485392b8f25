/** What the desk carries inside where its page is one file: files that otherwise lie beside the page. */
import { unzipSync } from "fflate";
import { carriedId } from "../pane/helpAddress";

/** The bytes of a carried file by its name; `null` where the page carries none of that name, and it may lie beside the page. */
export function carriedFile(name: string): Uint8Array<ArrayBuffer> | null {
  const text = document.getElementById(carriedId)?.textContent;
  if (text === undefined || text === null) return null;
  const bytes = Uint8Array.from(atob(text.trim()), (character) => character.charCodeAt(0));
  const found = unzipSync(bytes, { filter: (file) => file.name === name })[name];
  return found === undefined ? null : new Uint8Array(found);
}
