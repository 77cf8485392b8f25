import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entered, entryText, type EntrySettings } from "./cellEntry";

const general: EntrySettings = { numberFormat: "General", dateSystem: "1900", decimalComma: false };

describe("entered", () => {
  it.each([
    ["12", { value: 12 }],
    [" -3.25 ", { value: -3.25 }],
    ["1,234.5", { value: 1234.5 }],
    ["$1,234.50", { value: 1234.5, numberFormat: expect.stringContaining("$") }],
    ["12%", { value: 0.12, numberFormat: "0%" }],
    ["4/15/2026", { value: 46127, numberFormat: "m/d/yyyy" }],
    ["2026-04-15", { value: 46127, numberFormat: "yyyy-mm-dd" }],
    ["15 Apr 2026", { value: 46127, numberFormat: "m/d/yyyy" }],
    ["=B2*2", { formula: "B2*2" }],
    ["=", { value: "=" }],
    ["'007", { value: "007" }],
    ["28-0-0", { value: "28-0-0" }],
    ["4-10-10", { value: "4-10-10" }],
    ["1/2", { value: "1/2" }],
    ["2.5 gal", { value: "2.5 gal" }],
    ["Home farm", { value: "Home farm" }],
    ["TRUE", { value: true }],
    ["", { value: "" }],
    ["   ", { value: "" }],
  ])("takes %j for what it is", (typed, expected) => expect(entered(typed, general)).toEqual(expected));

  // What a number would not give back stays text, which is read as a number where one is wanted.
  it.each(["00123", "0", "007", "4012888888881881999", "3E2", "12e4"])("loses nothing of %j", (typed) => {
    const taken = entered(typed, general);
    expect("value" in taken && String(taken.value)).toBe(typed);
    expect("value" in taken && entryText(taken.value, null, general)).toBe(typed);
  });

  it("takes a time for a time, which was shown as a day of 1900, and leaves it to be told in a cell of a day", () => {
    expect(entered("1:30", general)).toEqual({ value: 0.0625, numberFormat: expect.stringMatching(/^h:mm/) });
    expect(entered("13:45", { ...general, numberFormat: "h:mm" })).toEqual({ value: 13.75 / 24 });
    expect(entered("1:30", { ...general, numberFormat: "m/d/yyyy" })).toEqual({ value: "1:30" });
  });

  it("keeps the format of a cell that has one", () => {
    expect(entered("4/15/2026", { ...general, numberFormat: "d mmm yyyy" })).toEqual({ value: 46127 });
    expect(entered("$3.50", { ...general, numberFormat: "0.000" })).toEqual({ value: 3.5 });
  });

  it("gives a date in a column of numbers a date's format, so that it is not shown as 46127", () => {
    expect(entered("4/15/2026", { ...general, numberFormat: "#,##0.00" })).toEqual({ value: 46127, numberFormat: "m/d/yyyy" });
  });

  it("keeps the cents of money typed without any, so that 3.30 below $24 is not shown as $3", () => {
    const cents = "$#,##0.00_);[Red]($#,##0.00)";
    expect(entered("$24", general)).toEqual({ value: 24, numberFormat: cents });
    expect(entered("3.30", { ...general, numberFormat: cents })).toEqual({ value: 3.3 });
    expect(entered("-$1,250", general)).toEqual({ value: -1250, numberFormat: cents });
    expect(entered("$1,250.5", general)).toEqual({ value: 1250.5, numberFormat: cents });
  });

  it("gives a percentage the places that it is typed with", () => {
    expect(entered("3.5%", { ...general, numberFormat: "0%" })).toEqual({ value: 0.035, numberFormat: "0.0%" });
    expect(entered("3%", { ...general, numberFormat: "0.0#%" })).toEqual({ value: 0.03 });
    expect(entered("0.035", { ...general, numberFormat: "0%" })).toEqual({ value: 0.035, numberFormat: "0.0%" });
  });

  // 2031-05-03 is the day 47971 of the 1900 system, 2031-03-05 the day 47912.
  it.each([
    ["5/3", 47971],
    ["5-3", 47971],
    ["May 3", 47971],
    ["3 May", 47971],
    ["5/3/2030", 47606],
  ])("takes %j in a date's cell for a day of the season's year", (typed, value) => {
    expect(entered(typed, { ...general, seasonYear: "2031", numberFormat: "yyyy-mm-dd" })).toEqual({ value });
  });

  it("takes the day first where the season has decimal commas, and a named month anywhere", () => {
    expect(entered("5/3", { ...general, seasonYear: "2031", decimalComma: true, numberFormat: "yyyy-mm-dd" })).toEqual({ value: 47912 });
    expect(entered("May 3", { ...general, seasonYear: "2031" })).toMatchObject({ value: 47971 });
    expect(entered("5/3", { ...general, seasonYear: "2031" })).toEqual({ value: "5/3" });
  });

  it("counts days from 1904 in a workbook that does", () => {
    expect(entered("4/15/2026", { ...general, dateSystem: "1904" })).toMatchObject({ value: 44665 });
  });

  it("keeps all as typed in a cell of text format", () => {
    expect(entered("=12", { ...general, numberFormat: "@" })).toEqual({ value: "=12" });
  });

  it.each([
    ["1,5", { value: 1.5 }],
    ["1.234,5", { value: 1234.5 }],
    ["1 234,50", { value: 1234.5 }],
    ["1.234", { value: 1234 }],
    ["1,234.5", { value: "1,234.5" }],
  ])("takes %j with a decimal comma where the season says so", (typed, expected) => {
    expect(entered(typed, { ...general, decimalComma: true })).toEqual(expected);
  });
});

describe("entryText", () => {
  it.each([
    [0.1 + 0.2, "General", "0.3"],
    [1234.5, "$#,##0.00", "1234.5"],
    [0.0725, "0.00%", "7.25%"],
    [46127, "m/d/yyyy", "2026-04-15"],
    [46127.5, "m/d/yyyy h:mm", "46127.5"],
    [true, "General", "TRUE"],
    ["7", "General", "'7"],
    ["007", "General", "007"],
    ["007", "@", "007"],
    ["=1+1", "General", "'=1+1"],
    ["'quoted", "General", "''quoted"],
    ["28-0-0", "General", "28-0-0"],
    ["", "General", ""],
  ])("is what gives %j in format %s", (value, numberFormat, text) => {
    expect(entryText(value, null, { ...general, numberFormat })).toBe(text);
  });

  it("is a formula with its sign of equality", () => expect(entryText(4, "2*2", general)).toBe("=2*2"));

  it("gives the same value when it is entered again", () => {
    const texts = fc
      .string({ unit: fc.constantFrom("1", "2", "-", "/", ".", ",", "%", "$", "'", "=", "e", "T", "a", "p", "r") })
      .map((text) => text.trim());
    const decimals = fc
      .tuple(fc.integer({ min: -9_999_999, max: 9_999_999 }), fc.integer({ min: 0, max: 4 }))
      .map(([whole, places]) => Number(`${whole}e-${places}`));
    const formats = fc.constantFrom("General", "@", "0.00", "#,##0", "0.0%", "m/d/yyyy");
    fc.assert(
      fc.property(
        fc.oneof(texts, decimals, fc.boolean()),
        formats,
        fc.boolean(),
        fc.constantFrom("1900" as const, "1904" as const),
        (value, numberFormat, decimalComma, dateSystem) => {
          fc.pre(numberFormat !== "@" || typeof value === "string");
          const settings = { numberFormat, decimalComma, dateSystem };
          const again = entered(entryText(value, null, settings), settings);
          expect("value" in again && again.value).toEqual(value);
        },
      ),
      { numRuns: 3000 },
    );
  });
});
