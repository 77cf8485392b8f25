/**
 * Draws the add-in's icons from the mark's description: `npm run icons` after a change.
 *
 * Every size is sampled from the description, so that the small sizes are drawn and not shrunk.
 */
import { writeFileSync } from "node:fs";
import { crc32, deflateSync } from "node:zlib";
import { coinBox, coinCopper, coinRadius, coinStrips, coinSvg, faceRadius, tiltDegrees } from "../../src/pane/parts/coinMark";
import { ribbonBox, ribbonPictures, type Shape } from "./ribbon";

type Colour = readonly [red: number, green: number, blue: number, alpha: number];
const nothing: Colour = [0, 0, 0, 0];

/** The sizes that the manifest names for a button. */
const buttonSizes = [16, 20, 24, 32, 40, 48, 64, 80] as const;
/** Of the add-in itself: others that hosts ask for, too. */
const sizes = [...buttonSizes, 128] as const;
/** Samples across one pixel. */
const fineness = 8;
const lean = (tiltDegrees * Math.PI) / 180;

/** A colour written as `#rrggbb`. */
const opaque = (colour: string): Colour => [1, 3, 5].map((at) => parseInt(colour.slice(at, at + 2), 16)).concat(255) as unknown as Colour;

/** The colour at a point in parts of the icon's side. */
type Picture = (right: number, down: number) => Colour;

/** The mark. */
function coin(right: number, down: number): Colour {
  const [x, y] = [right, down].map((part) => (part - 0.5) * coinBox) as [number, number];
  if (x ** 2 + y ** 2 > coinRadius ** 2) return nothing;
  // Turned back, so that the strips stand upright.
  const across = x * Math.cos(lean) + y * Math.sin(lean);
  const strip = x ** 2 + y ** 2 > faceRadius ** 2 ? undefined : coinStrips.find(({ from, to }) => across >= from && across <= to);
  return opaque(strip?.colour ?? coinCopper);
}

const pictureOf =
  (shapes: readonly Shape[]): Picture =>
  (right, down) => {
    const top = shapes.findLast(({ holds }) => holds(right * ribbonBox, down * ribbonBox));
    return top === undefined || top.colour === null ? nothing : opaque(top.colour);
  };

/** One pixel: the mean of its samples, each counting by its opacity. */
function pixel(colourAt: Picture, column: number, row: number, size: number): readonly number[] {
  const total = [0, 0, 0, 0];
  for (let sample = 0; sample < fineness * fineness; sample += 1) {
    const x = (column + ((sample % fineness) + 0.5) / fineness) / size;
    const y = (row + (Math.floor(sample / fineness) + 0.5) / fineness) / size;
    const [red, green, blue, alpha] = colourAt(x, y);
    [red, green, blue].forEach((part, index) => {
      total[index] = (total[index] ?? 0) + part * alpha;
    });
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
function icon(picture: Picture, size: number): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const lines = Array.from({ length: size }, (_, row) =>
    Buffer.from([0, ...Array.from({ length: size }, (_unused, column) => pixel(picture, column, row, size)).flat()]),
  );
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(Buffer.concat(lines), { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

const write = (name: string, picture: Picture, size: number) =>
  writeFileSync(new URL(`${name}-${size}.png`, import.meta.url), icon(picture, size));
for (const size of sizes) write("icon", coin, size);
for (const [page, shapes] of Object.entries(ribbonPictures)) for (const size of buttonSizes) write(page, pictureOf(shapes), size);
writeFileSync(new URL("coin.svg", import.meta.url), coinSvg);
