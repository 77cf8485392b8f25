/** Files that the browser hands over themselves, where it can: what is saved takes the file's place, as a whole or not at all. */

/** A file that the user has picked, with leave to read it. */
export type FileInPlace = Pick<FileSystemFileHandle, "name" | "getFile" | "createWritable"> & {
  readonly queryPermission?: (wish: { readonly mode: "readwrite" }) => Promise<PermissionState>;
  readonly requestPermission?: (wish: { readonly mode: "readwrite" }) => Promise<PermissionState>;
};

/** A file in place, and the time of its last change as it was read or written here, in milliseconds since 1970. */
export type PlacedFile = { readonly handle: FileInPlace; readonly changedAt: number };

type Picker = (wish: {
  readonly types: readonly { readonly description: string; readonly accept: Readonly<Record<string, readonly string[]>> }[];
}) => Promise<readonly FileInPlace[]>;

/** The browser's own picker of files; `null` where it has none, and files are read as copies. */
export const picker = (): Picker | null => (window as unknown as { showOpenFilePicker?: Picker }).showOpenFilePicker?.bind(window) ?? null;

/**
 * Writes a workbook into its file. The browser writes beside the file and puts the whole in its place at the end, so that a
 * crash half way leaves the old file.
 *
 * @throws Error in words where the user gives no leave, or where another program or tab has changed the file since
 */
export async function writeInPlace({ handle, changedAt }: PlacedFile, bytes: Uint8Array): Promise<PlacedFile> {
  const wish = { mode: "readwrite" } as const;
  const leave = (await handle.queryPermission?.(wish)) ?? "granted";
  if (leave !== "granted" && (await handle.requestPermission?.(wish)) !== "granted")
    throw new Error("the browser was given no leave to write the file");
  if ((await handle.getFile()).lastModified !== changedAt)
    throw new Error("another program or tab has changed the file since it was opened here");
  const stream = await handle.createWritable();
  try {
    await stream.write(new Uint8Array(bytes));
    await stream.close();
  } catch (fault) {
    await stream.abort().catch(() => undefined);
    throw fault;
  }
  return { handle, changedAt: (await handle.getFile()).lastModified };
}
