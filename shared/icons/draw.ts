/**
 * Draws the add-in's icons: a penny rising over three furrows. Run `npm run icons` after a change.
 *
 * The mark is described once, in units of the icon's side, and every size is sampled from that description, so that the
 * small sizes are drawn and not shrunk.
 */
import { writeFileSync } from "node:fs";
import { crc32, deflateSync } from "node:zlib";

type Colour = readonly [red: number, green: number, blue: number, alpha: number];
const nothing: Colour = [0, 0, 0, 0];
const field: Colour = [45, 95, 67, 255];
const furrow: Colour = [242, 250, 244, 255];
const penny: Colour = [214, 132, 72, 255];

/** The sizes that the manifest names. */
const sizes = [16, 32, 64, 80, 128] as const;
/** Samples across one pixel. */
const fineness = 8;

/** Whether a point lies in the square with round corners. */
function inTile(x: number, y: number): boolean {
  const radius = 0.18;
  const dx = Math.max(radius - x, x - (1 - radius), 0);
  const dy = Math.max(radius - y, y - (1 - radius), 0);
  return dx * dx + dy * dy <= radius * radius;
}

/** Furrows run from the lower edge towards a point above the tile's middle. */
function inFurrow(x: number, y: number): boolean {
  if (y < 0.6 || y > 0.9) return false;
  const spread = (y - 0.1) / 0.8;
  return [-0.3, 0, 0.3].some((at) => Math.abs(x - (0.5 + at * spread)) < 0.065 * spread);
}

function colourAt(x: number, y: number): Colour {
  if (!inTile(x, y)) return nothing;
  if ((x - 0.5) ** 2 + (y - 0.33) ** 2 <= 0.19 ** 2) return penny;
  return inFurrow(x, y) ? furrow : field;
}

/** One pixel: the mean of its samples, each counting by its opacity. */
function pixel(column: number, row: number, size: number): readonly number[] {
  const total = [0, 0, 0, 0];
  for (let sample = 0; sample < fineness * fineness; sample += 1) {
    const x = (column + ((sample % fineness) + 0.5) / fineness) / size;
    const y = (row + (Math.floor(sample / fineness) + 0.5) / fineness) / size;
    const [red, green, blue, alpha] = colourAt(x, y);
    [red, green, blue].forEach((part, index) => { total[index] = (total[index] ?? 0) + part * alpha; });
    total[3] = (total[3] ?? 0) + alpha;
  }
  const [red = 0, green = 0, blue = 0, alpha = 0] = total;
  if (alpha === 0) return nothing;
  return [...[red, green, blue].map((part) => Math.round(part / alpha)), Math.round(alpha / (fineness * fineness))];
}

function chunk(type: string, content: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), content]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(content.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** The icon as a PNG file: 8 bits a channel with transparency, no filter. */
function icon(size: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const lines = Array.from({ length: size }, (_, row) =>
    Buffer.from([0, ...Array.from({ length: size }, (_unused, column) => pixel(column, row, size)).flat()]));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header), chunk("IDAT", deflateSync(Buffer.concat(lines), { level: 9 })), chunk("IEND", Buffer.alloc(0)),
  ]);
}

for (const size of sizes) writeFileSync(new URL(`icon-${size}.png`, import.meta.url), icon(size));
