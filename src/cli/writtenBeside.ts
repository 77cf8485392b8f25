/** A file written whole or not at all. */
import { open, realpath, rename, rm, stat, type FileHandle } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** No file of that name yet, which is no fault. */
export const isMissing = (cause: unknown): boolean => cause instanceof Error && "code" in cause && cause.code === "ENOENT";

/**
 * Writes beside the file and gives the new one its name when all of it lies on the disk: a full disk or an interrupt leaves
 * the old file whole. A link stays a link, and the file that it points to keeps its permissions.
 */
export async function writtenBeside(path: string, bytes: Uint8Array): Promise<void> {
  const target = await realpath(path).catch((cause: unknown) => {
    if (isMissing(cause)) return path;
    throw cause;
  });
  const mode = await stat(target).then(
    (found) => found.mode,
    (cause: unknown) => {
      if (isMissing(cause)) return null;
      throw cause;
    },
  );
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`);
  let file: FileHandle | null = null;
  try {
    file = await open(beside, "wx");
    await file.writeFile(bytes);
    if (mode !== null) await file.chmod(mode);
    await file.sync();
    await file.close();
    await rename(beside, target);
  } catch (cause) {
    await file?.close();
    if (file !== null) await rm(beside, { force: true });
    throw cause;
  }
}
