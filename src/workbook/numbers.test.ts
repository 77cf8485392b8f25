import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal } from "../core/numbers/decimal";
import { decimalOf, readNumber } from "./numbers";

const shown = (text: string, decimalComma = false) => {
  const reading = readNumber(text, { decimalComma });
  return typeof reading === "string" ? reading : `${reading.value.toFixed()}${reading.percent ? " %" : ""}`;
};

/** Numbers as people write them: at most 15 digits, of which some stand behind the point. */
const written = fc
  .record({ digits: fc.bigInt({ min: -(10n ** 15n) + 1n, max: 10n ** 15n - 1n }), behind: fc.integer({ min: 0, max: 12 }) })
  .map(({ digits, behind }) => new Decimal(`${digits}e-${behind}`));
const grouped = (digits: string, sign: string): string => digits.replace(/\B(?=(\d{3})+$)/g, sign);
/** With thousands and a decimal sign, brackets for a minus. */
const typed = (value: Decimal, thousands: string, point: string): string => {
  const [whole = "", fraction] = value.abs().toFixed().split(".");
  const text = `${grouped(whole, thousands)}${fraction === undefined ? "" : `${point}${fraction}`}`;
  return value.isNegative() && !value.isZero() ? `(${text})` : text;
};

describe("a number cell", () => {
  it("is read at the 15 digits that Excel keeps", () => {
    expect(decimalOf(0.1 + 0.2).toFixed()).toBe("0.3");
    expect(decimalOf(1234.5678901234567).toFixed()).toBe("1234.56789012346");
    expect(decimalOf(0.1).times("3").toFixed()).toBe("0.3");
  });

  it("is none that money or a quantity could be from a thousand million million on, and below the thirtieth part behind the point", () => {
    expect(
      ["999999999999999", "-999999999999999.9", "0.000000000000000000000000000001", "0"].map(
        (text) => typeof readNumber(text, { decimalComma: false }),
      ),
    ).toEqual(Array<string>(4).fill("object"));
    for (const text of ["1000000000000000", "-1000000000000000", "0.00000000000000000000000000000099"])
      expect(readNumber(text, { decimalComma: false })).toBe("number-beyond");
    expect([readNumber(1e15, { decimalComma: false }), readNumber(-1e-31, { decimalComma: false })]).toEqual([
      "number-beyond",
      "number-beyond",
    ]);
  });

  it("gives back any number of up to 15 digits as it was typed", () => {
    fc.assert(
      fc.property(written, (value) => {
        expect(decimalOf(Number(value.toFixed())).toFixed()).toBe(value.toFixed().replace(/^-0$/, "0"));
      }),
    );
  });

  it("is the same number however many others were read before it", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1, maxLength: 50 }), (numbers) => {
        numbers.forEach(decimalOf);
        for (const number of numbers) expect(Number(decimalOf(number).toString())).toBe(Number(number.toPrecision(15)));
      }),
    );
  });
});

describe("a number typed as text", () => {
  it.each([
    ["$1,234.50", "1234.5"],
    ["US$ 1,000", "1000"],
    ["€5", "5"],
    ["5 USD", "5"],
    ["1'234.5", "1234.5"],
    [" 1\u00a0234.5 ", "1234.5"],
    ["\u200b5", "5"],
    ["(1,234.50)", "-1234.5"],
    ["($5)", "-5"],
    ["$ (5.00)", "-5"],
    ["-$5", "-5"],
    ["5-", "-5"],
    ["\u22125", "-5"],
    ["12%", "0.12 %"],
    ["12.5 %", "0.125 %"],
    [".5", "0.5"],
    ["5.", "5"],
    ["1.5e3", "1500"],
  ])("%j is %s", (text, value) => expect(shown(text)).toBe(value));

  it.each(["two", "$", "1..5", "--5", "(-5)", "1,23,456", "5 lb", "5/0", "3 5/4", "0x10", "Infinity", "NaN", "1_000"])(
    "%j is none",
    (text) => {
      expect(shown(text)).toBe("not-a-number");
    },
  );

  it.each(["1 234,50", "12,5", "1.234,5", "1,2345"])("%j is none before the workbook says that it has decimal commas", (text) => {
    expect(shown(text)).toBe("decimal-comma");
  });

  it("has its decimal comma where the workbook says so, and then no decimal point", () => {
    expect([shown("1 234,50", true), shown("1.234,50", true), shown("12,5 %", true), shown("1,234.50", true)]).toEqual([
      "1234.5",
      "1234.5",
      "0.125 %",
      "not-a-number",
    ]);
  });

  it("comes out as it went in, with any sign between thousands", () => {
    fc.assert(
      fc.property(written, fc.constantFrom("", ",", " ", "'", "\u00a0", "\u202f"), (value, thousands) => {
        expect(shown(typed(value, thousands, "."))).toBe(value.toFixed().replace(/^-0$/, "0"));
      }),
    );
    fc.assert(
      fc.property(written, fc.constantFrom("", ".", " ", "\u00a0"), (value, thousands) => {
        expect(shown(typed(value, thousands, ","), true)).toBe(value.toFixed().replace(/^-0$/, "0"));
      }),
    );
  });
});

describe("a cell that is no number", () => {
  it("is told apart: an error of a formula, a yes or no, words", () => {
    expect(["#N/A", "#DIV/0!", "#NAME?", "#SPILL!"].map((text) => shown(text))).toEqual([
      "formula-error",
      "formula-error",
      "formula-error",
      "formula-error",
    ]);
    expect(readNumber(true, { decimalComma: false })).toBe("not-a-number");
    expect(readNumber(Number.NaN, { decimalComma: false })).toBe("not-a-number");
  });
});

it("takes cents for no number, which would be a hundred times the money", () => {
  for (const cents of ["300¢", "¢300", "85 ¢"]) expect(readNumber(cents, { decimalComma: false })).toBe("not-a-number");
});
