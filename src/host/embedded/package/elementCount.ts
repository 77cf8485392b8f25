/** How many elements the parts have that are read as documents: each takes far more room there than in the file. */
import type { Parts } from "./zip";

/** A workbook of thirty tables has some thousand; one whose styles were copied together for years has a hundred thousand. */
const mostElements = 125_000;
/** Excel allows 65,530 links a sheet, each with a relationship; one of these takes far longer to read than a style. */
const mostRelationships = 80_000;
/** The parts that are read whole as documents; sheets and shared texts are scanned, and the others left as they are. */
const readAsDocument = /^[^<]*(?:<[?!][^<]*)*<(?:[A-Za-z_][\w.-]*:)?(table|styleSheet|Relationships|Types|workbook)[\s>]/;
const head = 1024;
const opening = "<".charCodeAt(0);

/** Whether so many that reading them would fill the memory. */
export function hasTooManyElements(parts: Parts): boolean {
  let count = 0;
  let relationships = 0;
  for (const bytes of parts.values()) {
    const root = readAsDocument.exec(new TextDecoder("latin1").decode(bytes.subarray(0, head)))?.[1];
    if (root === undefined) continue;
    const before = count;
    for (let at = bytes.indexOf(opening); at >= 0; at = bytes.indexOf(opening, at + 1)) {
      count += 1;
      // An element has a beginning and mostly an end.
      if (count > 2 * mostElements) return true;
    }
    if (root === "Relationships") relationships += count - before;
    if (relationships > mostRelationships) return true;
  }
  return false;
}
