/** Sites of action, as labels number them: text that is told apart, and never an advice. */

/**
 * Each site in a text, once: "15, 27", "Group 9 + 4", "2; 5 and 27". Words between are ignored; letters stay as the label
 * has them, in capitals.
 */
export function sitesIn(text: string | null): readonly string[] {
  const found = (text ?? "")
    .toUpperCase()
    .split(/[\s,;/+&]+/)
    .map((word) => word.replace(/^(GROUPS?|GRP|HRAC|WSSA|SITES?|G)(?=\d)/, ""))
    .filter((word) => /^[A-Z]{0,2}\d{1,2}[A-Z]?$/.test(word));
  return inOrder(found);
}

/** Sites once each, by number and then by letter. */
export function inOrder(sites: readonly string[]): readonly string[] {
  return [...new Set(sites)].sort((a, b) => a.localeCompare(b, "en", { numeric: true }));
}

/** Names in a list that is set apart by commas, semicolons or lines. */
export const namesIn = (text: string | null): readonly string[] =>
  (text ?? "")
    .split(/[,;\n]+/)
    .map((name) => name.trim())
    .filter((name) => name !== "");

/** How names of weeds are compared: capitals, spaces and hyphens aside. */
export const plainWeed = (name: string): string => name.toLowerCase().replace(/[\s\u00a0-]+/g, "");
