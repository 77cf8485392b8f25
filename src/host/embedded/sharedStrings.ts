/** The texts that cells share. */
import { unescapeText } from "./xml";

/** The strings of the part sharedStrings, in their order. */
export function scanSharedStrings(text: string): readonly string[] {
  const root = /<(?:([A-Za-z_][\w.-]*):)?sst[\s>]/.exec(text);
  if (root === null) return [];
  const prefix = root[1] === undefined ? "" : `${root[1]}:`;
  const strings: string[] = [];
  const closing = `</${prefix}si>`;
  for (let at = text.indexOf(`<${prefix}si`, root.index); at >= 0; at = text.indexOf(`<${prefix}si`, at)) {
    const tagEnd = text.indexOf(">", at);
    const end = text[tagEnd - 1] === "/" ? tagEnd : text.indexOf(closing, tagEnd);
    strings.push(text[tagEnd - 1] === "/" ? "" : richText(text.slice(tagEnd + 1, end), prefix));
    at = end + 1;
  }
  return strings;
}

/** The text of a string item: its runs joined, phonetic guides left out. */
export function richText(item: string, prefix: string): string {
  const spoken = `<${prefix}rPh`;
  const plain = item.includes(spoken) ? item.replace(new RegExp(`${spoken}[\\s>][\\s\\S]*?</${prefix}rPh>`, "g"), "") : item;
  const mark = `<${prefix}t`;
  let text = "";
  for (let at = plain.indexOf(mark); at >= 0; at = plain.indexOf(mark, at + 1)) {
    const after = plain[at + mark.length];
    if (after !== ">" && after !== " " && after !== "/" && after !== "\n") continue;
    const tagEnd = plain.indexOf(">", at);
    if (plain[tagEnd - 1] !== "/") text += unescapeText(plain.slice(tagEnd + 1, plain.indexOf(`</${prefix}t>`, tagEnd)));
  }
  return text;
}
