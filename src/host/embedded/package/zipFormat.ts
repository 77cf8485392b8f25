/**
 * The ZIP format, as far as packages use it: APPNOTE.TXT of PKWARE, sections 4.3 and 4.5.3. A reader and writer of our own,
 * because a part that has not changed is to be written again as it was packed, and because sizes must be known before
 * anything is unpacked.
 */
import { Damaged } from "./fault";

/** A part in its packed form. */
export type ZipEntry = {
  readonly name: string;
  readonly method: "stored" | "deflated";
  /** Bytes when unpacked, and the CRC-32 of them. */
  readonly size: number;
  readonly checksum: number;
  readonly content: Uint8Array;
};

const endMark = 0x06054b50;
const entryMark = 0x02014b50;
const localMark = 0x04034b50;
const locator64Mark = 0x07064b50;
const end64Mark = 0x06064b50;
const endLength = 22;
const longestComment = 65_535;
/** In the 32-bit field: the real size stands in the 64-bit extra field. */
const in64 = 0xffff_ffff;

/** The parts of a file in the order of its directory. Nothing is unpacked. */
export function centralDirectory(bytes: Uint8Array, mostParts: number): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { count, at: first } = directoryPlace(view);
  if (count > mostParts) throw new Damaged(`it has ${count} parts`);
  const entries: ZipEntry[] = [];
  let packedBytes = 0;
  for (let at = first, index = 0; index < count; index += 1) {
    const { entry, next } = entryAt(bytes, view, at);
    packedBytes += entry.content.length;
    if (packedBytes > bytes.length) throw new Damaged("its parts overlap");
    entries.push(entry);
    at = next;
  }
  return entries;
}

function directoryPlace(view: DataView): { count: number; at: number } {
  for (let at = view.byteLength - endLength; at >= Math.max(0, view.byteLength - endLength - longestComment); at -= 1) {
    if (view.getUint32(at, true) !== endMark) continue;
    const count = view.getUint16(at + 10, true);
    const start = view.getUint32(at + 16, true);
    if (count !== 0xffff && start !== in64) return { count, at: start };
    if (at < 20 || view.getUint32(at - 20, true) !== locator64Mark) throw new Damaged("its directory is missing");
    const end64 = Number(view.getBigUint64(at - 12, true));
    if (end64 + 56 > view.byteLength || view.getUint32(end64, true) !== end64Mark) throw new Damaged("its directory is missing");
    return { count: Number(view.getBigUint64(end64 + 32, true)), at: Number(view.getBigUint64(end64 + 48, true)) };
  }
  throw new Damaged("its end is missing");
}

function entryAt(bytes: Uint8Array, view: DataView, at: number): { entry: ZipEntry; next: number } {
  if (at + 46 > bytes.length || view.getUint32(at, true) !== entryMark) throw new Damaged("its directory is broken");
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const next = at + 46 + nameLength + extraLength + view.getUint16(at + 32, true);
  if (next > bytes.length) throw new Damaged("its directory is broken");
  const name = new TextDecoder()
    .decode(bytes.subarray(at + 46, at + 46 + nameLength))
    .replaceAll("\\", "/")
    .replace(/^\//, "");
  if ((flags & 1) !== 0) throw new Damaged(`the part ${name} is encrypted`);
  if (method !== 0 && method !== 8) throw new Damaged(`the part ${name} is packed in an unknown way`);
  const wide = wideSizes(view, at, at + 46 + nameLength, extraLength);
  return {
    entry: {
      name,
      method: method === 0 ? "stored" : "deflated",
      size: wide.size,
      checksum: view.getUint32(at + 16, true),
      content: packedContent(bytes, view, wide),
    },
    next,
  };
}

/** Sizes and offset of an entry, from its 64-bit extra field where the 32-bit ones say so. */
function wideSizes(view: DataView, at: number, extraAt: number, extraLength: number) {
  const sizes = { size: view.getUint32(at + 24, true), packed: view.getUint32(at + 20, true), local: view.getUint32(at + 42, true) };
  for (let field = extraAt; field + 4 <= extraAt + extraLength; field += 4 + view.getUint16(field + 2, true)) {
    if (view.getUint16(field, true) !== 1) continue;
    let value = field + 4;
    for (const key of ["size", "packed", "local"] as const) {
      if (sizes[key] !== in64 || value + 8 > view.byteLength) continue;
      sizes[key] = Number(view.getBigUint64(value, true));
      value += 8;
    }
  }
  return sizes;
}

function packedContent(bytes: Uint8Array, view: DataView, { packed, local }: { packed: number; local: number }): Uint8Array {
  if (local + 30 > bytes.length || view.getUint32(local, true) !== localMark) throw new Damaged("a part is missing");
  const from = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (from + packed > bytes.length) throw new Damaged("a part is cut off");
  return bytes.subarray(from, from + packed);
}

/** The first day that the format knows, 1980-01-01, as its date field has it. */
const firstDay = 0x21;

/** A file of these parts. */
export function zipFile(entries: readonly ZipEntry[]): Uint8Array {
  const names = entries.map(({ name }) => new TextEncoder().encode(name));
  const length = entries.reduce((sum, { content }, index) => sum + 30 + 46 + 2 * names[index]!.length + content.length, endLength);
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  const locals: number[] = [];
  let at = 0;
  entries.forEach((entry, index) => {
    locals.push(at);
    view.setUint32(at, localMark, true);
    at = putCommon(view, at + 4, entry, names[index]!.length) + 2;
    bytes.set(names[index]!, at);
    bytes.set(entry.content, at + names[index]!.length);
    at += names[index]!.length + entry.content.length;
  });
  const directory = at;
  entries.forEach((entry, index) => {
    view.setUint32(at, entryMark, true);
    view.setUint16(at + 4, 20, true);
    putCommon(view, at + 6, entry, names[index]!.length);
    view.setUint32(at + 42, locals[index]!, true);
    bytes.set(names[index]!, at + 46);
    at += 46 + names[index]!.length;
  });
  view.setUint32(at, endMark, true);
  view.setUint16(at + 8, entries.length, true);
  view.setUint16(at + 10, entries.length, true);
  view.setUint32(at + 12, at - directory, true);
  view.setUint32(at + 16, directory, true);
  return bytes;
}

/** The fields that both headers have in a row, from "version needed" to the length of the name. */
function putCommon(view: DataView, at: number, { method, checksum: sum, content, size }: ZipEntry, nameLength: number): number {
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, 0x800, true); // names are UTF-8
  view.setUint16(at + 4, method === "stored" ? 0 : 8, true);
  view.setUint16(at + 8, firstDay, true);
  view.setUint32(at + 10, sum, true);
  view.setUint32(at + 14, content.length, true);
  view.setUint32(at + 18, size, true);
  view.setUint16(at + 22, nameLength, true);
  return at + 24;
}

/** So many bytes are taken at a time. */
const atOnce = 8;

/** For each of the bytes that are taken at once its remainder by its value, the last byte first: 256 of one, then of the next. */
const remainders = new Int32Array(256 * atOnce);
for (let byte = 0; byte < 256; byte += 1) {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  remainders[byte] = value;
}
// A byte that another one follows has the remainder of its own remainder.
for (let index = 256; index < remainders.length; index += 1) {
  const before = remainders[index - 256]!;
  remainders[index] = remainders[before & 255]! ^ (before >>> 8);
}

/** The CRC-32 that ZIP uses. */
export function checksum(bytes: Uint8Array): number {
  let value = -1;
  let at = 0;
  for (const last = bytes.length - atOnce; at <= last; at += atOnce) {
    value =
      remainders[1792 + ((value ^ bytes[at]!) & 255)]! ^
      remainders[1536 + (((value >>> 8) ^ bytes[at + 1]!) & 255)]! ^
      remainders[1280 + (((value >>> 16) ^ bytes[at + 2]!) & 255)]! ^
      remainders[1024 + ((value >>> 24) ^ bytes[at + 3]!)]! ^
      remainders[768 + bytes[at + 4]!]! ^
      remainders[512 + bytes[at + 5]!]! ^
      remainders[256 + bytes[at + 6]!]! ^
      remainders[bytes[at + 7]!]!;
  }
  for (; at < bytes.length; at += 1) value = remainders[(value ^ bytes[at]!) & 255]! ^ (value >>> 8);
  return (value ^ -1) >>> 0;
}
