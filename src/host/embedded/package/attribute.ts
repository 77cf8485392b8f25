/** The value of an attribute in an opening mark, as it is written; null where it is not there. */
export function attribute(tag: string, name: string): string | null {
  const start = `${name}="`;
  for (let at = tag.indexOf(start); at > 0; at = tag.indexOf(start, at + 1)) {
    if (tag.charCodeAt(at - 1) <= 32) return tag.slice(at + start.length, tag.indexOf('"', at + start.length));
  }
  if (!tag.includes(name)) return null;
  // Blanks around the sign and single quotes are allowed, and rare.
  const spaced = new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return spaced === null ? null : (spaced[1] ?? spaced[2] ?? "");
}
