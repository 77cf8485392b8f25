/** The package of an `.xlsx` file: its parts by name, unpacked within limits. */
import { strFromU8, unzipSync, zipSync, type Zippable } from "fflate";
import { failed, ok, type Result } from "../../result";
import type { WorkbookFault } from "./fault";

/** The file as it lies on the disk: a season of 100,000 rows takes about 5 MB. */
export const mostFileBytes = 100 * 1024 * 1024;
/** All parts unpacked: more than that does not fit beside the page that shows it. */
export const mostUnpackedBytes = 600 * 1024 * 1024;
/** Spreadsheet XML packs about one to ten, rarely one to fifty; one to a thousand is made to burst. */
export const mostRatio = 400;
/** Below this size a part may pack as well as it likes. */
export const ratioMatters = 10 * 1024 * 1024;
export const mostParts = 20_000;

export type Parts = ReadonlyMap<string, Uint8Array>;

const fault = (code: WorkbookFault["code"], message: string) => failed<WorkbookFault>({ code, message });

export function unpack(bytes: Uint8Array): Result<Parts, WorkbookFault> {
  if (bytes.length > mostFileBytes) return fault("too-large", `The file has ${megabytes(bytes.length)} MB; files of up to ${megabytes(mostFileBytes)} MB can be opened.`);
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) return compoundFile(bytes);
  if (!startsWith(bytes, [0x50, 0x4b])) return fault("not-a-workbook", "This is not an Excel workbook (.xlsx).");
  let unpacked = 0;
  let parts = 0;
  let tooLarge = false;
  try {
    const files = unzipSync(bytes, {
      filter: ({ originalSize, size, name }) => {
        unpacked += originalSize;
        parts += 1;
        const bursts = originalSize > ratioMatters && originalSize / Math.max(size, 1) > mostRatio;
        tooLarge ||= bursts || unpacked > mostUnpackedBytes || parts > mostParts;
        return !tooLarge && !name.endsWith("/");
      },
    });
    if (tooLarge) return fault("too-large", "The file unpacks to far more than a workbook holds, so it is not opened.");
    return ok(new Map(Object.entries(files)));
  } catch (cause) {
    return fault("damaged", `The file is damaged and cannot be unpacked (${cause instanceof Error ? cause.message : String(cause)}).`);
  }
}

/** Old workbooks and encrypted ones come in the same kind of container; the encrypted one says so inside. */
function compoundFile(bytes: Uint8Array) {
  const names = strFromU8(bytes.subarray(0, Math.min(bytes.length, 1024 * 1024)), true).replaceAll("\u0000", "");
  return names.includes("EncryptedPackage") || names.includes("EncryptionInfo")
    ? fault("encrypted", "The workbook is protected with a password. Open it in Excel, take the password off, and save it again.")
    : fault("old-format", "This is a workbook of the old format (.xls). Open it in Excel and save it as .xlsx.");
}

/** Packs the parts again, in their order, with a fixed time so that the same workbook gives the same bytes. */
export function pack(parts: Parts): Uint8Array {
  const files: Zippable = {};
  for (const [name, bytes] of parts) files[name] = [bytes, { level: 6, mtime: firstDay }];
  return zipSync(files);
}

const firstDay = "1980-01-01T12:00:00";
const megabytes = (bytes: number): string => (bytes / 1024 / 1024).toFixed(0);
const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean => start.every((byte, index) => bytes[index] === byte);
