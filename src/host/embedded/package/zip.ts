/** The package of an `.xlsx` file: its parts by name, unpacked within limits, and packed again. */
import { deflateSync, inflateSync } from "fflate";
import { failed, ok, type Result } from "../../../result";
import { Damaged, type WorkbookFault } from "./fault";
import { inflatedWithin } from "./inflatedWithin";
import { startsWith, unpackedFile } from "./otherFile";
import { centralDirectory, checksum, zipFile, type ZipEntry } from "./zipFormat";

/** The file as it lies on the disk: a season of 100,000 rows takes about 5 MB. */
const mostFileBytes = 100 * 1024 * 1024;
/** All parts unpacked: more than that does not fit beside the page that shows it, and no text in a browser may be longer than 512 MB. */
const mostUnpackedBytes = 500 * 1024 * 1024;
/** Spreadsheet XML packs about one to ten, rarely one to fifty; one to a thousand is made to burst. */
export const mostRatio = 400;
/** Below this size a part may pack as well as it likes. */
export const ratioMatters = 10 * 1024 * 1024;
/** A workbook of a hundred sheets with a chart each has about a thousand. */
export const mostParts = 20_000;
/**
 * Up to this packed size a part that lies about its size can only cost seconds; above it, the size is watched while it unpacks,
 * which is slower.
 */
const trustedPackedBytes = 8 * 1024 * 1024;

export type Parts = ReadonlyMap<string, Uint8Array>;

const fault = (code: WorkbookFault["code"], message: string) => failed<WorkbookFault>({ code, message });
const bursting = () => fault("too-large", "The file unpacks to far more than a workbook holds, so it is not opened.");

/** Parts as they were read, still packed: what has not changed is written again without being packed anew. */
const packed = new WeakMap<Uint8Array, ZipEntry>();

export function unpack(bytes: Uint8Array): Result<Parts, WorkbookFault> {
  if (bytes.length === 0) return fault("not-a-workbook", "The file is empty.");
  if (bytes.length > mostFileBytes)
    return fault("too-large", `The file has ${megabytes(bytes.length)} MB; files of up to ${megabytes(mostFileBytes)} MB can be opened.`);
  if (!startsWith(bytes, [0x50, 0x4b])) return failed(unpackedFile(bytes));
  try {
    const entries = centralDirectory(bytes, mostParts).filter(({ name }) => !name.endsWith("/"));
    if (bursts(entries)) return bursting();
    const parts = new Map<string, Uint8Array>();
    for (const entry of entries) {
      const content = unpacked(entry);
      packed.set(content, entry);
      if (parts.has(entry.name)) throw new Damaged(`the part ${entry.name} is there twice`);
      parts.set(entry.name, content);
    }
    return ok(parts);
  } catch (cause) {
    if (!(cause instanceof Damaged)) throw cause;
    return fault("damaged", `The file is damaged and cannot be unpacked: ${cause.message}.`);
  }
}

/** How many bytes the parts say that they have unpacked; `null` for what is no package. Nothing is unpacked. */
export function declaredSize(bytes: Uint8Array): number | null {
  try {
    return centralDirectory(bytes, mostParts).reduce((sum, { size }) => sum + size, 0);
  } catch (cause) {
    if (!(cause instanceof Damaged)) throw cause;
    return null;
  }
}

/** What the parts say of their sizes is checked before anything is unpacked, and again while it is. */
function bursts(entries: readonly ZipEntry[]): boolean {
  const declared = entries.reduce((sum, { size }) => sum + size, 0);
  return declared > mostUnpackedBytes || entries.some(({ size, content }) => size > ratioMatters && size > content.length * mostRatio);
}

function unpacked(entry: ZipEntry): Uint8Array {
  const content = entry.method === "stored" ? entry.content : inflated(entry);
  if (content.length !== entry.size || checksum(content) !== entry.checksum)
    throw new Damaged(`the part ${entry.name} is not what the file says it is`);
  // A stored part is a view of the file; a copy of the view is a key of its own.
  return entry.method === "stored" ? content.subarray() : content;
}

function inflated({ name, content, size }: ZipEntry): Uint8Array {
  try {
    return content.length > trustedPackedBytes ? inflatedWithin(content, size) : inflateSync(content, { out: new Uint8Array(size) });
  } catch (cause) {
    throw new Damaged(`the part ${name} cannot be unpacked`, { cause });
  }
}

/** Packs the parts again, in their order, with a fixed time so that the same workbook gives the same bytes. */
export const pack = (parts: Parts): Uint8Array =>
  zipFile(
    [...parts].map(([name, content]) => {
      const known = packed.get(content) ?? deflated(name, content);
      packed.set(content, known);
      return { ...known, name };
    }),
  );

/**
 * The same parts, the large ones packed by the browser beside the page, which goes on meanwhile. The bytes may be others than
 * those of `pack`; what they unpack to is the same.
 */
export async function packBeside(parts: Parts): Promise<Uint8Array> {
  const canBeside = packsBeside();
  const entries = [...parts].map(async ([name, content]) => {
    const known = packed.get(content) ?? packedBeside.get(content);
    if (known !== undefined) return { ...known, name };
    if (!canBeside || content.length <= largePart) return deflated(name, content);
    const stream = new Blob([content as BlobPart]).stream().pipeThrough(new CompressionStream("deflate-raw"));
    const small = new Uint8Array(await new Response(stream).arrayBuffer());
    const entry: ZipEntry = { name, method: "deflated", size: content.length, checksum: checksum(content), content: small };
    packedBeside.set(content, entry);
    return entry;
  });
  return zipFile(await Promise.all(entries));
}

/** Whether there is a packer of the browser's own that packs as ZIP does; the oldest browsers that the page runs in have none. */
function packsBeside(): boolean {
  try {
    return new CompressionStream("deflate-raw") !== null;
  } catch (cause) {
    if (cause instanceof TypeError || cause instanceof ReferenceError) return false;
    throw cause;
  }
}

/** What was packed beside the page: a file that is saved has bytes of its own. */
const packedBeside = new WeakMap<Uint8Array, ZipEntry>();

/** Large parts are packed a little less well and much sooner. */
const largePart = 1024 * 1024;

function deflated(name: string, content: Uint8Array): ZipEntry {
  const small = deflateSync(content, { level: content.length > largePart ? 3 : 6 });
  return { name, method: "deflated", size: content.length, checksum: checksum(content), content: small };
}

const megabytes = (bytes: number): string => (bytes / 1024 / 1024).toFixed(0);
