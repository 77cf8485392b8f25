/** Formulas as people write them, word by word; whatever the words, together they are the formula again. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formulaTokens } from "../../src/host/embedded/recalculation/formulaTokens";
import { formulas } from "../support/xlsx/formulaSample";

const words = (formula: string) => formulaTokens(formula).map(({ kind, text }) => `${kind} ${text}`);

describe("the words of a formula", () => {
  it.each([
    ["'My sheet'!$B$2", ["sheet 'My sheet'!", "area $B$2"]],
    ["[1]Prices!x", ["sheet [1]Prices!", "name x"]],
    ["Sheet1:Sheet3!A1:B2", ["sheet Sheet1:Sheet3!", "area A1:B2"]],
    ["SUM(Bills[[#This Row],[a!b]])", ["function SUM", "other (", "table Bills[[#This Row],[a!b]]", "other )"]],
    ['"A1""B2"&D:F', ['text "A1""B2"', "other &", "area D:F"]],
    ["-2^TRUE", ["other -", "other 2", "other ^", "name TRUE"]],
    ["Sheet1!#REF!", ["sheet Sheet1!", "error #REF!"]],
    ["LOG10(1)+ABC1_x", ["function LOG10", "other (", "other 1", "other )", "other +", "name ABC1_x"]],
  ])("are told apart: %s", (formula, told) => {
    expect(words(formula)).toEqual(told);
  });

  it("are the formula again", () => {
    const pieces = fc.constantFrom(
      ...formulas.map(String),
      "A1",
      "$A$1:B",
      "'x y'!",
      "T[a]",
      "[@b]",
      "#N/A",
      '"',
      "'",
      "!",
      "[",
      "{1;2}",
      "1e5",
      " ",
      "é",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 6 }), (parts) => {
        const formula = parts.join("");
        expect(
          formulaTokens(formula)
            .map(({ text }) => text)
            .join(""),
        ).toBe(formula);
      }),
      { numRuns: 500 },
    );
  });
});
