/** XML of a package: small parts as documents, and the few marks that we write ourselves. */
import { oncePer } from "../oncePer";
import { DOMParser, XMLSerializer, type Document, type Element } from "@xmldom/xmldom";
import { strFromU8, strToU8 } from "fflate";
import { Damaged } from "./fault";

export type { Document, Element };

/** The text of a part. A byte-order mark is dropped; a document type, which no workbook has, is refused. */
export function textOf(bytes: Uint8Array): string {
  const [first, second] = bytes;
  const wide = first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : null;
  const text =
    wide !== null ? new TextDecoder(wide).decode(bytes) : bytes.length < 4096 ? strFromU8(bytes) : new TextDecoder("utf-8").decode(bytes);
  const start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  if (text.slice(0, 2048).includes("<!DOCTYPE")) throw new Damaged("a part has a document type");
  return start === 0 ? text : text.slice(1);
}

/** The bytes of a part in UTF-8, and a declaration that says so. */
export function bytesOf(text: string): Uint8Array {
  const declared = /^<\?xml[^>]*encoding=["']([^"']*)/.exec(text)?.[1] ?? "UTF-8";
  const utf8 = declared.toUpperCase() === "UTF-8" ? text : text.replace(declared, "UTF-8");
  return utf8.length < 4096 ? strToU8(utf8) : new TextEncoder().encode(utf8);
}

/** A part as a document. It is kept for the same bytes: do not change it, clone it. */
export const documentOf: (bytes: Uint8Array) => Document = oncePer((bytes) => freshDocument(bytes));

/** A part as a document of one's own, to be changed and written again. */
export function freshDocument(bytes: Uint8Array): Document {
  const complain = (level: string, message: string) => {
    if (level !== "warning") throw new Damaged(message);
  };
  return new DOMParser({ onError: complain }).parseFromString(textOf(bytes), "text/xml");
}

export function serialized(document: Document): Uint8Array {
  const text = new XMLSerializer().serializeToString(document);
  return bytesOf(text.startsWith("<?xml") ? text : `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${text}`);
}

/** All elements of a local name, whatever prefix their namespace has. */
export const elements = (within: Document | Element, name: string): readonly Element[] => [...within.getElementsByTagNameNS("*", name)];
export const first = (within: Document | Element, name: string): Element | null => elements(within, name)[0] ?? null;

/** The child elements of a local name. */
export const children = (within: Element, name: string): readonly Element[] =>
  [...within.childNodes].filter((node): node is Element => node.nodeType === 1 && node.localName === name);

/** A new element in the namespace and with the prefix of another. */
export function sibling(like: Element, name: string, attributes: Readonly<Record<string, string>> = {}): Element {
  const element = like.ownerDocument!.createElementNS(like.namespaceURI, like.prefix ? `${like.prefix}:${name}` : name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
}

/**
 * Text for an element. Signs that XML cannot hold are written as Excel writes them, `_x0007_`; words that only look so get
 * their first sign written like that; half of a pair of signs becomes the sign for "unknown".
 */
export const escapeText = (text: string): string =>
  text
    .replace(/_(?=x[0-9a-f]{4}_)/gi, "_x005F_")
    .replace(/[&<>]/g, (mark) => (mark === "&" ? "&amp;" : mark === "<" ? "&lt;" : "&gt;"))
    .replace(/[\u0000-\u0008\u000b-\u001f]/g, (control) => `_x${control.charCodeAt(0).toString(16).padStart(4, "0").toUpperCase()}_`)
    // A whole pair is matched first, and stays.
    .replace(/[\ud800-\udbff][\udc00-\udfff]|[\ufffe\uffff\ud800-\udfff]/g, (sign) => (sign.length === 2 ? sign : "\ufffd"));

export const escapeAttribute = (text: string): string => escapeText(text).replaceAll('"', "&quot;").replaceAll("\n", "&#10;");

/** Text content back to what it says: entities, and Excel's own `_x000D_`. */
export function unescapeText(xml: string): string {
  const plain = xml.includes("&")
    ? xml.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, decimal?: string, name?: string) =>
        hex !== undefined ? signOf(parseInt(hex, 16)) : decimal !== undefined ? signOf(Number(decimal)) : (entities[name!] ?? whole),
      )
    : xml;
  return plain.includes("_x") ? plain.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16))) : plain;
}

function signOf(code: number): string {
  if (code > 0x10ffff) throw new Damaged("a text has a sign that does not exist");
  return String.fromCodePoint(code);
}

const entities: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };
