import { tokenize } from "@borgar/fx";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formulaTokens } from "./formulaTokens";

const cell = fc
  .tuple(
    fc.constantFrom("", "$"),
    fc.constantFrom("A", "B", "Z", "AA", "ZZ"),
    fc.constantFrom("", "$"),
    fc.integer({ min: 1, max: 999_999 }),
  )
  .map((parts) => parts.join(""));
const operand = fc.oneof(
  cell,
  fc.tuple(cell, cell).map(([from, to]) => `${from}:${to}`),
  fc.nat({ max: 99_999 }).map(String),
  fc.tuple(fc.nat({ max: 99 }), fc.nat({ max: 99 })).map(([whole, part]) => `${whole}.${part}`),
);
/** Arithmetic over cells, as long columns have it, and now and then something that is none. */
const formulas = fc
  .array(fc.tuple(fc.constantFrom("", "(", "(("), operand, fc.constantFrom("", ")", "))"), fc.constantFrom("+", "-", "*", "/", "^", "&")), {
    minLength: 1,
    maxLength: 6,
  })
  .map((parts) => parts.map(([open, each, close, sign]) => open + each + close + sign).join(""))
  .chain((text) => fc.constantFrom(text, text.slice(0, -1)));

describe("a formula's words", () => {
  it("are those of the library, however plain the formula is", () => {
    fc.assert(
      fc.property(formulas, (formula) => {
        const words = tokenize(formula, { withLocation: false, negativeNumbers: false });
        const isArea = (type: string) => type === "range" || type === "range_beam";
        expect(formulaTokens(formula)).toEqual(words.map(({ type, value }) => ({ kind: isArea(type) ? "area" : "other", text: value })));
      }),
      { numRuns: 2_000 },
    );
  });

  it.each(["LOG10(A1)", "A1:B2:C3", "1A", "A1(2)", "TAX1+A1", "A0+1", "XFE1+1", "a1+1", "1.+A1", "A1+", "1048577+A1048577"])(
    "are one text again together: %s",
    (formula) => {
      expect(
        formulaTokens(formula)
          .map(({ text }) => text)
          .join(""),
      ).toBe(formula);
    },
  );

  it("are names beyond the last column and below the last row", () => {
    expect(formulaTokens("XFE1+1")[0]).toEqual({ kind: "name", text: "XFE1" });
    expect(formulaTokens("A1048577+1")[0]?.kind).not.toBe("area");
  });
});
