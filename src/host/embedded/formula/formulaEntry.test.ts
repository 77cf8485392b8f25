import { describe, expect, it } from "vitest";
import { asFiled, asTyped } from "./formulaEntry";
import { formulaFault } from "./formulaSyntax";

describe("formulaFault", () => {
  it.each([
    "1",
    "A1",
    "-A1%",
    "1+2*3",
    "SUM(A1:A3)",
    "sum(A1,,2)",
    "NOW()",
    "(A1+B2)*-1",
    '"a ""quoted"" text"&A1',
    "'Grower''s bills'!B2",
    "Sheet1!$A:$C",
    "2:5",
    "Bills[Amount]",
    "Bills[[#This Row],[Rate (per ac)]]",
    "[@Acres]",
    "[@[Rate (per ac)]]",
    'IF(A1>=2,"yes",#N/A)',
    "A1<>B1",
    "{1,2;3,4}",
    'SUM({1,-2;"a",TRUE})',
    "Price*2",
    "INDEX(A1:A9,2):B3",
    "1.5E-3",
    ".5",
    "IF(A1,B1,)",
    "SUM((A1,B2))",
    "A1#",
    "@A1:A3",
    "[1]Prices!A1",
    "-2^2",
    "--(A1>2)",
    "TRUE",
  ])("finds nothing wrong with %s", (formula) => expect(formulaFault(formula)).toBeNull());

  it.each([
    ["", /breaks off/],
    ["1+", /breaks off/],
    ["SUM(A1", /"\)" is missing/],
    ["SUM(A1))", /\) cannot stand/],
    ["A1 B1", /B1 cannot/],
    ['"open', /closing quote/],
    ["*2", /\* cannot/],
    ["SUM(A1;B1)", /commas/],
    ["1 2", /cannot/],
    ["{1,A1}", /A1 cannot/],
    ["Sheet1!", /breaks off/],
    ["A1,B1", /, cannot/],
    ["(".repeat(65) + "1" + ")".repeat(65), /too many brackets/],
    ["Bills[Amount", /cannot/],
    ["()", /\) cannot/],
  ])("says what is wrong with %s", (formula, words) => expect(formulaFault(formula)).toMatch(words));
});

describe("asFiled", () => {
  it.each([
    ["sum(a1:b2)", "SUM(A1:B2)"],
    ["[@Acres]*[@[Rate (per ac)]]", "Seed[[#This Row],[Acres]]*Seed[[#This Row],[Rate (per ac)]]"],
    ["SUM([Acres])", "SUM(Seed[Acres])"],
    ["Other[@Acres]", "Other[[#This Row],[Acres]]"],
    ["Other[Acres]", "Other[Acres]"],
    ["[@[A '#1]:[B]]", "Seed[[#This Row],[A '#1]:[B]]"],
    ["[#Totals]", "Seed[[#Totals]]"],
    ["xlookup(1,A1:A2,B1:B2)", "_xlfn.XLOOKUP(1,A1:A2,B1:B2)"],
    ["FILTER(A1:A2,B1:B2)", "_xlfn._xlws.FILTER(A1:A2,B1:B2)"],
    ['"sum(a1)"', '"sum(a1)"'],
    ["Other[[#Totals],[Acres]]", "Other[[#Totals],[Acres]]"],
  ])("writes %s as %s", (typed, filed) => expect(asFiled(typed, "Seed")).toBe(filed));

  it("refuses a column alone outside tables, a formula that is none, and one that is too long", () => {
    expect(() => asFiled("[@Acres]", null)).toThrow(/table's name/);
    expect(() => asFiled("SUM(", null)).toThrow(/no formula.*apostrophe/);
    expect(() => asFiled(`1${"+1".repeat(5000)}`, null)).toThrow(/8192/);
  });

  it("gives back what was typed", () => {
    for (const typed of ["XLOOKUP(1,A1:A2,B1:B2)", "FILTER(A1:A2,B1:B2)", "SUM(A1)"]) expect(asTyped(asFiled(typed, null))).toBe(typed);
    expect(asTyped("_xlfn.NEVERHEARD(1)")).toBe("_xlfn.NEVERHEARD(1)");
  });
});
