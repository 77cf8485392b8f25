import { refusalOf } from "./refusal";
import { excelSupports } from "./supports";

/** Opens a new workbook from the bytes of a file, beside the one that the pane belongs to. */
export type OpenWorkbook = (bytes: Uint8Array) => Promise<void>;

/** How this Excel opens a workbook from bytes; `null` where it cannot (before ExcelApi 1.8). */
export const workbookOpener = (): OpenWorkbook | null =>
  !excelSupports("1.8")
    ? null
    : async (bytes) => {
        try {
          await Excel.createWorkbook(inBase64(bytes));
        } catch (error) {
          throw refusalOf(error);
        }
      };

/** A piece at a time: a browser takes no hundred thousand arguments at once. */
function inBase64(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += 8192) pieces.push(String.fromCharCode(...bytes.subarray(at, at + 8192)));
  return btoa(pieces.join(""));
}
