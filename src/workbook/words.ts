/** How names are compared: people type them with other capitals, spaces and plurals. */

/** Case, spaces and underscores aside. */
export const plain = (text: string): string => text.toLowerCase().replace(/[\s_\u00a0\u2007\u202f]+/g, "");

/** A word of a list or a heading: as spelled on either side of the Atlantic. */
export const plainWord = (text: string): string => plain(text).replace("labor", "labour").replace("fertiliser", "fertilizer");

/** A heading without its unit in brackets, percent sign or star; words for hectares are taken as those for acres. */
export const plainHeading = (heading: string): string =>
  plainWord(heading.replace(/\([^)]*\)/g, "").replace(/[%*★:]/g, ""))
    .replace(/perhectare$|perha$/, "peracre")
    .replace(/^(hectares|area|ha|ac)$/, "acres");

/** The name among `known` that is most like `text`: at most a third of its letters differ. */
export function nearest(text: string, known: Iterable<string>): string | null {
  const typed = plain(text);
  let best: { name: string; distance: number } | null = null;
  for (const name of known) {
    const other = plain(name);
    const distance = other.startsWith(typed) && typed.length > 2 ? 0.5 : editDistance(typed, other);
    if (distance <= Math.max(typed.length, other.length) / 3 && (best === null || distance < best.distance)) best = { name, distance };
  }
  return best?.name ?? null;
}

/** Letters to put in, take out or change (Levenshtein). */
export function editDistance(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let row = 1; row <= a.length; row += 1) {
    const line = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const change = above[column - 1]! + (a[row - 1] === b[column - 1] ? 0 : 1);
      line.push(Math.min(change, above[column]! + 1, line[column - 1]! + 1));
    }
    above = line;
  }
  return above[b.length]!;
}
