import { describe, expect, it } from "vitest";
import { entered, type EntrySettings } from "./entry";

const general: EntrySettings = { numberFormat: "General", dateSystem: "1900", decimalComma: false };

describe("entered", () => {
  it.each([
    ["12", { value: 12 }],
    [" -3.25 ", { value: -3.25 }],
    ["1,234.5", { value: 1234.5 }],
    ["$1,234.50", { value: 1234.5, numberFormat: expect.stringContaining("$") }],
    ["12%", { value: 0.12, numberFormat: "0%" }],
    ["4/15/2026", { value: 46127, numberFormat: "m/d/yyyy" }],
    ["2026-04-15", { value: 46127, numberFormat: "m/d/yyyy" }],
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

  it("keeps the format of a cell that has one", () => {
    expect(entered("4/15/2026", { ...general, numberFormat: "d mmm yyyy" })).toEqual({ value: 46127 });
    expect(entered("$3.50", { ...general, numberFormat: "0.000" })).toEqual({ value: 3.5 });
  });

  it("gives a date in a column of numbers a date's format, so that it is not shown as 46127", () => {
    expect(entered("4/15/2026", { ...general, numberFormat: "#,##0.00" })).toEqual({ value: 46127, numberFormat: "m/d/yyyy" });
  });

  it("counts days from 1904 in a workbook that does", () => {
    expect(entered("4/15/2026", { ...general, dateSystem: "1904" })).toMatchObject({ value: 44665 });
  });

  it("keeps all as typed in a cell of text format", () => {
    expect(entered("=12", { ...general, numberFormat: "@" })).toEqual({ value: "=12" });
  });

  it.each([
    ["1,5", { value: 1.5 }], ["1.234,5", { value: 1234.5 }], ["1 234,50", { value: 1234.5 }], ["1.234", { value: 1234 }],
    ["1,234.5", { value: "1,234.5" }],
  ])("takes %j with a decimal comma where the season says so", (typed, expected) => {
    expect(entered(typed, { ...general, decimalComma: true })).toEqual(expected);
  });
});
