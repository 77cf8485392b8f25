import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellAddress, columnLetters, splitAddress } from "./address";

describe("columnLetters", () => {
  it.each([[0, "A"], [25, "Z"], [26, "AA"], [701, "ZZ"], [702, "AAA"], [16_383, "XFD"]])("of %i is %s", (column, letters) => {
    expect(columnLetters(column)).toBe(letters);
  });
});

describe("splitAddress", () => {
  it.each([
    ["Sheet1!A1", "Sheet1", "A1"], ["'My counts'!$B$2:$C$40", "My counts", "B2:C40"], ["'Grower''s bills'!b:c", "Grower's bills", "B:C"],
    [" Sheet1!2:9 ", "Sheet1", "2:9"], ["Sheet1!XFD1048576", "Sheet1", "XFD1048576"],
  ])("takes %s apart", (address, sheet, range) => {
    expect(splitAddress(address)).toEqual({ sheet, range });
  });

  it.each(["", "A1:B2", "somewhere", "Sheet1!", "!A1", "Sheet1!A0", "Sheet1!XFE1", "Sheet1!A1048577", "Sheet1!A1:B", "Sheet1!A1,B2", "Sheet1!A", "Sheet1!A1:B2:C3"])(
    "is null for %j, which Excel would refuse", (address) => {
      expect(splitAddress(address)).toBeNull();
    });

  it("finds every cell again by the address it gave it", () => {
    fc.assert(fc.property(fc.nat(1_048_575), fc.nat(16_383), (row, column) => {
      expect(splitAddress(`S!${cellAddress(row, column)}`)).toEqual({ sheet: "S", range: cellAddress(row, column) });
    }));
  });
});
