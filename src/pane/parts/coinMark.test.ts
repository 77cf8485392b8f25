import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { coinBox, coinCopper, coinStrips, coinSvg, stripPath } from "./coinMark";

/** The colour of a pixel of one of our icons, which have one block of unfiltered lines. */
function pixel(size: number, column: number, row: number): string {
  const file = readFileSync(`shared/icons/icon-${size}.png`);
  const start = file.indexOf("IDAT");
  const lines = inflateSync(file.subarray(start + 4, start + 4 + file.readUInt32BE(start - 4)));
  const at = row * (size * 4 + 1) + 1 + column * 4;
  return lines[at + 3] === 0 ? "nothing" : `#${lines.subarray(at, at + 3).toString("hex")}`;
}

describe("the mark", () => {
  it("stands in the icons' folder as it is described (npm run icons writes it)", () => {
    expect(readFileSync("shared/icons/coin.svg", "utf8")).toBe(coinSvg);
  });

  it("leaves the cuts between strips, that they can be told apart in the smallest icon", () => {
    const pixelOfSmallest = coinBox / 16;
    coinStrips.slice(1).forEach(({ from }, index) => expect(from - coinStrips[index]!.to).toBeGreaterThan(pixelOfSmallest));
    expect(coinStrips.map(({ from, to }) => stripPath(from, to)).join("")).not.toContain("NaN");
  });

  it.each([16, 32, 80, 128])("is drawn at %i pixels: a rim, the three strips from pale to dark, and nothing in the corners", (size) => {
    const across = Array.from({ length: size }, (_, column) => pixel(size, column, Math.floor(size / 2)));
    const places = coinStrips.map(({ colour }) => across.indexOf(colour));
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(across).toContain(coinCopper);
    expect(pixel(size, 0, 0)).toBe("nothing");
  });
});
