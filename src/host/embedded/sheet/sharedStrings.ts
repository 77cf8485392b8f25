/** The texts that cells share. */
import { Damaged } from "../package/fault";
import { unescapeText } from "../package/xml";

/**
 * The strings of the part sharedStrings, in their order.
 *
 * @throws Damaged where one has no end
 */
export function scanSharedStrings(text: string): readonly string[] {
  const root = /<(?:([A-Za-z_][\w.-]*):)?sst[\s>]/.exec(text);
  if (root === null) return [];
  const prefix = root[1] === undefined ? "" : `${root[1]}:`;
  const strings: string[] = [];
  const closing = `</${prefix}si>`;
  for (let at = text.indexOf(`<${prefix}si`, root.index); at >= 0; at = text.indexOf(`<${prefix}si`, at)) {
    const tagEnd = text.indexOf(">", at);
    const end = text[tagEnd - 1] === "/" ? tagEnd : text.indexOf(closing, tagEnd);
    if (tagEnd < 0 || end < 0) throw new Damaged("a shared text has no end");
    const item = text.slice(tagEnd + 1, end);
    if (withoutSpoken(item, prefix) === null) throw new Damaged("the reading of a shared text has no end");
    strings.push(text[tagEnd - 1] === "/" ? "" : richText(item, prefix));
    at = end + 1;
  }
  return strings;
}

/**
 * The text of a string item: its runs joined, phonetic guides left out. Of a guide without an end nothing is left out, so that no
 * word is lost.
 */
export function richText(item: string, prefix: string): string {
  const plain = withoutSpoken(item, prefix) ?? item;
  const mark = `<${prefix}t`;
  const closing = `</${prefix}t>`;
  let text = "";
  for (let at = plain.indexOf(mark); at >= 0; at = plain.indexOf(mark, at + 1)) {
    const after = plain[at + mark.length];
    if (after !== ">" && after !== " " && after !== "/" && after !== "\n") continue;
    const tagEnd = plain.indexOf(">", at);
    if (tagEnd < 0) break;
    if (plain[tagEnd - 1] === "/") continue;
    const end = plain.indexOf(closing, tagEnd);
    // Without an end the rest is the text; looking for one again from every mark would take for ever.
    text += unescapeText(plain.slice(tagEnd + 1, end < 0 ? plain.length : end));
    if (end < 0) break;
  }
  return text;
}

/** An item without its phonetic guides, each found once; `null` where one has no end. */
function withoutSpoken(item: string, prefix: string): string | null {
  const opening = `<${prefix}rPh`;
  const closing = `</${prefix}rPh>`;
  let plain = "";
  let from = 0;
  for (let at = item.indexOf(opening); at >= 0; at = item.indexOf(opening, at)) {
    const after = item[at + opening.length];
    if (after === undefined || !/[\s>]/.test(after)) {
      at += 1;
      continue;
    }
    const end = item.indexOf(closing, at);
    if (end < 0) return null;
    plain += item.slice(from, at);
    from = at = end + closing.length;
  }
  return plain + item.slice(from);
}
