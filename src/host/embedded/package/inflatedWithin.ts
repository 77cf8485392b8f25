import { Inflate } from "fflate";

const slice = 64 * 1024;

/**
 * The content of a packed part, which is given up as soon as it is larger than it says it is.
 *
 * @throws Error where it is
 */
export function inflatedWithin(packed: Uint8Array, size: number): Uint8Array {
  const content = new Uint8Array(size);
  let at = 0;
  const stream = new Inflate((piece) => {
    if (at + piece.length > size) throw new Error("the part is larger than it says");
    content.set(piece, at);
    at += piece.length;
  });
  for (let from = 0; from < packed.length; from += slice) stream.push(packed.subarray(from, from + slice), from + slice >= packed.length);
  return content.subarray(0, at);
}
