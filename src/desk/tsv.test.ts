import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseTsv, writeTsv } from "./tsv";

describe("parseTsv", () => {
  it.each([
    ["one cell", "Urea", [["Urea"]]],
    ["a last line break that ends the row", "Urea\t12\r\n", [["Urea", "12"]]],
    [
      "rows of a Unix program",
      "a\tb\nc\td\n",
      [
        ["a", "b"],
        ["c", "d"],
      ],
    ],
    ["rows of an old Mac program", "a\rb", [["a"], ["b"]]],
    [
      "blank cells",
      "\t\r\n\tx\r\n",
      [
        ["", ""],
        ["", "x"],
      ],
    ],
    ["a blank row in the middle", "a\n\nb\n", [["a"], [""], ["b"]]],
    ["a line break within quotes", '"two\nlines"\tx\r\n', [["two\nlines", "x"]]],
    ["a tab within quotes", '"a\tb"\n', [["a\tb"]]],
    ["quotes written twice", '"30"" rows"\n', [['30" rows']]],
    ["a quote in the middle of a plain field", '30" rows\tx', [['30" rows', "x"]]],
    ["words in quotes followed by more", '"Big" bin\tx', [['"Big" bin', "x"]]],
    ["a quote that is never closed", '"open\tx', [['"open', "x"]]],
    [
      "rows of unequal length",
      "a\tb\nc\n",
      [
        ["a", "b"],
        ["c", ""],
      ],
    ],
    ["nothing", "", []],
  ])("reads %s", (_what, text, rows) => expect(parseTsv(text)).toEqual(rows));
});

describe("writeTsv", () => {
  it("quotes only what would be misread", () => {
    expect(
      writeTsv([
        ["Urea", '30" rows'],
        ["a\tb", "two\nlines"],
      ]),
    ).toBe('Urea\t"30"" rows"\r\n"a\tb"\t"two\nlines"\r\n');
  });

  it("is read back as it was, whatever the cells hold", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", "1", " ", '"', "\t", "\n", "\r", "é", "=") });
    const block = fc
      .integer({ min: 1, max: 4 })
      .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }));
    fc.assert(
      fc.property(block, (rows) => {
        expect(parseTsv(writeTsv(rows))).toEqual(rows);
      }),
    );
  });
});
