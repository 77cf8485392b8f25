/** Files in and out of the page. Nothing leaves it: a file is read here, and saving hands it to the browser's downloads. */
import { carriedFile } from "./carried";
import { acceptedTypes, contentType } from "./contentType";
import { picker, type FileInPlace, type PlacedFile } from "./fileInPlace";

/** A workbook file as it was picked, dropped or fetched. */
export type DeskFile = {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** The file itself, where the browser handed it over: it is saved in its place. */
  readonly placed?: PlacedFile;
};

/** The files that the file picker offers. */
export const acceptedFiles = [...Object.values(acceptedTypes).flat(), ...Object.keys(acceptedTypes)].join(",");

/** Reads a picked or dropped file. Rejects when the browser may not read it. */
export const readFile = async (file: File): Promise<DeskFile> => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });

/** Reads a file that the browser handed over itself. */
export async function readInPlace(handle: FileInPlace): Promise<DeskFile> {
  const file = await handle.getFile();
  return { ...(await readFile(file)), placed: { handle, changedAt: file.lastModified } };
}

/** Lets the user pick a file that can be saved in its place; `null` where nothing was picked. */
export async function pickInPlace(): Promise<FileInPlace | null> {
  try {
    const [handle = null] = (await picker()?.({ types: [{ description: "Excel workbook", accept: acceptedTypes }] })) ?? [];
    return handle;
  } catch (fault) {
    if (fault instanceof DOMException && fault.name === "AbortError") return null;
    throw fault;
  }
}

/**
 * Fetches a workbook that lies beside the page, or is carried inside it.
 *
 * @throws Error in words when it is not there
 */
export async function fetchWorkbook(name: string): Promise<DeskFile> {
  const carried = carriedFile(name);
  if (carried !== null) return { name, bytes: carried };
  const response = await fetch(new URL(name, document.baseURI));
  if (!response.ok) throw new Error(`${name} is not where this page came from (answer ${response.status}).`);
  return { name: name.split("/").at(-1) ?? name, bytes: new Uint8Array(await response.arrayBuffer()) };
}

/** Hands a workbook to the browser's downloads. Whether it arrives there a page is never told. @throws where the browser refuses at once */
export function download({ name, bytes }: Pick<DeskFile, "name" | "bytes">): void {
  const address = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: contentType(name) }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the file over by then; the address would keep its bytes in memory.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
