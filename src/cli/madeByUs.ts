/**
 * Which files are copies that we wrote: the comment at the end of the package says so. A program that saves the file packs it
 * anew and without that comment, so that a copy somebody has worked in since counts as theirs.
 */
const mark = new TextEncoder().encode("Copy written by Pennyacre");

/** The file with the mark at its end; the two bytes before it are its length, which a new package has at zero. */
export function marked(file: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(file.length + mark.length);
  bytes.set(file);
  bytes.set(mark, file.length);
  new DataView(bytes.buffer).setUint16(file.length - 2, mark.length, true);
  return bytes;
}

export const isMarked = (file: Uint8Array): boolean =>
  file.length > mark.length && mark.every((byte, index) => file[file.length - mark.length + index] === byte);
