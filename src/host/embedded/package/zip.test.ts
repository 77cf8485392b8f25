import fc from "fast-check";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { mostParts, mostRatio, pack, packBeside, ratioMatters, unpack, type Parts } from "./zip";
import { centralDirectory, checksum, zipFile } from "./zipFormat";

const refusal = (bytes: Uint8Array) => {
  const unpacked = unpack(bytes);
  if (unpacked.ok) throw new Error("It was unpacked.");
  return unpacked.problems[0]!;
};
const parts = (bytes: Uint8Array): Parts => {
  const unpacked = unpack(bytes);
  if (!unpacked.ok) throw new Error(unpacked.problems[0]!.message);
  return unpacked.value;
};

const small = zipSync({ "a.xml": [strToU8("<a/>".repeat(500)), { level: 6 }], "media/b.png": [strToU8("picture"), { level: 0 }] });

describe("unpack", () => {
  it("gives every part, packed or stored, in the order of the file", () => {
    expect([...parts(small)].map(([name, content]) => [name, content.length])).toEqual([
      ["a.xml", 2000],
      ["media/b.png", 7],
    ]);
  });

  it("takes a file with a comment at its end", () => {
    const words = strToU8("made by hand");
    const commented = new Uint8Array([...small, ...words]);
    new DataView(commented.buffer).setUint16(small.length - 2, words.length, true);
    expect(parts(commented).size).toBe(2);
  });

  it.each([
    ["nothing", new Uint8Array(), "not-a-workbook"],
    ["a text", strToU8("Date,Item\n"), "not-a-workbook"],
    ["a page", strToU8("<html></html>"), "not-a-workbook"],
    ["a file that was cut off", small.subarray(0, small.length - 30), "damaged"],
    ["a file whose first half alone came through", small.subarray(0, small.length / 2), "damaged"],
  ])("refuses %s", (_, bytes, code) => {
    expect(refusal(bytes).code).toBe(code);
  });

  it("notices a single bit that is wrong", () => {
    for (const at of [40, 45, 50, 55]) {
      const broken = small.slice();
      broken[at]! ^= 4;
      expect(refusal(broken).code).toBe("damaged");
    }
  });

  // The compound file of MS-CFB begins with this mark; names of its streams are UTF-16.
  const compound = (stream: string) =>
    new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600), ...[...stream].flatMap((letter) => [letter.charCodeAt(0), 0])]);
  it.each([
    ["EncryptedPackage", "encrypted", /password/],
    ["Workbook", "old-format", /\.xls\b.*\.xlsx/],
    ["WordDocument", "not-a-workbook", /not an Excel workbook/],
  ])("tells a compound file with a stream %s as %s", (stream, code, words) => {
    expect(refusal(compound(stream))).toMatchObject({ code, message: expect.stringMatching(words) as string });
  });

  it("refuses a part that packs like nothing a person wrote, before it is unpacked", () => {
    const bomb = zipSync({ "xl/worksheets/sheet1.xml": new Uint8Array(ratioMatters * 5) });
    expect(bomb.length).toBeLessThan((ratioMatters * 5) / mostRatio);
    expect(refusal(bomb).code).toBe("too-large");
  });

  it("refuses a part that holds more than it says", () => {
    const liar = zipSync({ "a.xml": [new Uint8Array(1_000_000), { level: 9 }] });
    const view = new DataView(liar.buffer);
    const entry = centralDirectory(liar, mostParts)[0]!;
    expect(entry.size).toBe(1_000_000);
    const directory = view.getUint32(liar.length - 6, true);
    view.setUint32(directory + 24, 2_000, true);
    expect(refusal(liar).code).toBe("damaged");
  });

  it("refuses parts that share their bytes", () => {
    const two = zipSync({ "a.xml": [strToU8("x".repeat(400)), { level: 0 }], "b.xml": [strToU8("y".repeat(400)), { level: 0 }] });
    const view = new DataView(two.buffer);
    const first = view.getUint32(two.length - 6, true);
    const second = first + 46 + 5;
    view.setUint32(second + 42, 0, true); // the second part's content is the first's
    view.setUint32(second + 20, 700, true);
    view.setUint32(first + 20, 700, true);
    expect(refusal(two).code).toBe("damaged");
  });

  it("refuses more parts than any workbook has", () => {
    const many = zipFile(
      Array.from({ length: mostParts + 1 }, (_, index) => ({
        name: `p${index}`,
        method: "stored" as const,
        size: 0,
        checksum: 0,
        content: new Uint8Array(),
      })),
    );
    expect(refusal(many)).toMatchObject({ code: "damaged", message: expect.stringContaining(String(mostParts + 1)) as string });
  });
});

describe("pack", () => {
  it("writes parts that have not changed as they were packed, and the others anew", () => {
    const before = parts(small);
    const after = new Map(before).set("a.xml", strToU8("<b/>")).set("c.xml", strToU8("<c/>"));
    const written = centralDirectory(pack(after), mostParts);
    expect(written.map(({ name }) => name)).toEqual(["a.xml", "media/b.png", "c.xml"]);
    expect(written[1]!.content).toEqual(centralDirectory(small, mostParts)[1]!.content);
    expect([...parts(pack(after))].map(([name, content]) => [name, [...content]])).toEqual(
      [...after].map(([name, content]) => [name, [...content]]),
    );
  });

  it("gives the same bytes for the same parts", () => {
    expect(pack(parts(pack(parts(small))))).toEqual(pack(parts(small)));
  });
});

describe("checksum", () => {
  // "123456789" is the check word of the catalogue of parametrised CRC algorithms; its CRC-32 (ISO-HDLC) is CBF43926.
  it("is the CRC-32 of ZIP", () => {
    expect(checksum(strToU8("123456789"))).toBe(0xcbf43926);
  });

  it("is, however many bytes it takes at a time, what the definition gives bit by bit", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 50 }), (bytes) => {
        let value = 0xffffffff;
        for (const byte of bytes) {
          value ^= byte;
          for (let bit = 0; bit < 8; bit += 1) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
        }
        expect(checksum(bytes)).toBe((value ^ 0xffffffff) >>> 0);
      }),
    );
  });
});

describe("packBeside", () => {
  it("unpacks to the same parts as pack, those that the browser packed among them, and changes nothing of what pack writes", async () => {
    const large = strToU8(Array.from({ length: 200_000 }, (_, row) => `<row r="${row}">${row * 7}</row>`).join(""));
    const before = parts(small);
    const after = new Map(before).set("large.xml", large).set("c.xml", strToU8("<c/>"));
    const [beside, bytes] = [await packBeside(after), pack(after)];
    const saidOf = (file: Uint8Array) => [...parts(file)].map(([name, content]) => [name, checksum(content), content.length]);
    expect(saidOf(beside)).toEqual(saidOf(bytes));
    expect(centralDirectory(beside, mostParts).map(({ method }) => method)).toEqual(["deflated", "stored", "deflated", "deflated"]);
    expect(checksum(pack(after))).toBe(checksum(bytes));
    expect(checksum(pack(new Map(after).set("large.xml", large.slice())))).toBe(checksum(bytes));
    expect(checksum(beside)).not.toBe(checksum(bytes));
  });

  it("packs by itself where the browser has no packer of its own", async () => {
    const { CompressionStream: theirs } = globalThis;
    const large = new Map([["large.xml", strToU8("<row/>".repeat(300_000))]]);
    try {
      Object.assign(globalThis, {
        CompressionStream: class {
          constructor() {
            throw new TypeError("Unsupported format: deflate-raw");
          }
        },
      });
      expect(checksum(await packBeside(large))).toBe(checksum(pack(large)));
    } finally {
      Object.assign(globalThis, { CompressionStream: theirs });
    }
  });
});
