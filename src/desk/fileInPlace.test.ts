import { describe, expect, it } from "vitest";
import { writeInPlace, type FileInPlace } from "./fileInPlace";

/** A file of which nothing can be seen of a writing that was not ended. */
function fileOf(leave: PermissionState, breaks = false) {
  const file = { text: "old", lastModified: 1, aborted: 0 };
  const handle = {
    name: "season.xlsx",
    queryPermission: async () => "prompt" as const,
    requestPermission: async () => leave,
    getFile: async () => ({ lastModified: file.lastModified }) as File,
    createWritable: async () => {
      let written = "";
      return {
        write: async (bytes: Uint8Array) => {
          written = new TextDecoder().decode(bytes);
          if (breaks) throw new Error("the disk is full");
        },
        close: async () => Object.assign(file, { text: written, lastModified: file.lastModified + 1 }),
        abort: async () => {
          file.aborted += 1;
        },
      };
    },
  } as unknown as FileInPlace;
  return { file, handle };
}
const bytes = new TextEncoder().encode("new");

describe("writeInPlace", () => {
  it("puts the whole in the file's place and knows the file again", async () => {
    const { file, handle } = fileOf("granted");
    const placed = await writeInPlace({ handle, changedAt: 1 }, bytes);
    expect(file.text).toBe("new");
    expect((await writeInPlace(placed, bytes)).changedAt).toBe(3);
  });

  it("writes nothing without leave, over another's change, or half", async () => {
    const refused = fileOf("denied");
    await expect(writeInPlace({ handle: refused.handle, changedAt: 1 }, bytes)).rejects.toThrow("no leave");
    const changed = fileOf("granted");
    await expect(writeInPlace({ handle: changed.handle, changedAt: 0 }, bytes)).rejects.toThrow("has changed the file");
    const full = fileOf("granted", true);
    await expect(writeInPlace({ handle: full.handle, changedAt: 1 }, bytes)).rejects.toThrow("the disk is full");
    expect([refused.file.text, changed.file.text, full.file.text]).toEqual(["old", "old", "old"]);
    expect(full.file.aborted).toBe(1);
  });
});
