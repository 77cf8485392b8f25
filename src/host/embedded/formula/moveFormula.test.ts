import { expect, it } from "vitest";
import { moveFormula } from "./moveFormula";

it.each([
  ["B2*2", "C4*2"],
  ["$B2+B$2+$B$2", "$B4+C$2+$B$2"],
  ["SUM(A1:B9)", "SUM(B3:C11)"],
  ["Crops!E2", "Crops!F4"],
  ["'Home A1 farm'!E2", "'Home A1 farm'!F4"],
  ['IF(A1="B2 or ""C3""",1,0)', 'IF(B3="B2 or ""C3""",1,0)'],
  ["LOG10(A1)", "LOG10(B3)"],
  ["[@Quantity]*Table1[Price B2]", "[@Quantity]*Table1[Price B2]"],
  ["Table2[[#This Row],[A1]]", "Table2[[#This Row],[A1]]"],
  ["rate2026+A1", "rate2026+B3"],
  ["Z1", "AA3"],
])("moves %s one column and two rows to %s", (formula, moved) => expect(moveFormula(formula, { rows: 2, columns: 1 })).toBe(moved));

it("says that a reference fell off the sheet", () => {
  expect(moveFormula("A1+B2", { rows: -1, columns: -1 })).toBe("#REF!+A1");
});
