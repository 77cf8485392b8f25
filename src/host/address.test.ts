import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaName, areaOf, cellName, columnName, columnNumber, contains, parseArea, rangeOnSheet } from "./address";

const rows = fc.nat(1_048_575);
const columns = fc.nat(16_383);

describe("columns, cells and areas", () => {
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [701, "ZZ"],
    [702, "AAA"],
    [16_383, "XFD"],
  ])("names column %d %s, up to Excel's last", (column, name) => {
    expect(columnName(column)).toBe(name);
    expect(columnNumber(name)).toBe(column);
  });

  it("names a cell, and an area by its corners", () => {
    expect(cellName({ row: 3, column: 1 })).toBe("B4");
    expect(areaName({ top: 3, left: 1, bottom: 3, right: 1 })).toBe("B4");
    expect(areaName({ top: 3, left: 1, bottom: 8, right: 3 })).toBe("B4:D9");
  });

  it("finds the area of two cells again by its name, with both cells in it", () => {
    fc.assert(
      fc.property(rows, columns, rows, columns, (row, column, toRow, toColumn) => {
        const [one, other] = [
          { row, column },
          { row: toRow, column: toColumn },
        ];
        const area = areaOf(one, other);
        expect(parseArea(areaName(area))).toEqual(area);
        expect(contains(area, one) && contains(area, other)).toBe(true);
        expect(contains(area, { row: area.bottom + 1, column })).toBe(false);
      }),
    );
  });
});

describe("a range on a sheet", () => {
  it.each([
    ["Sheet1!A1", "Sheet1", "A1"],
    ["'My counts'!$B$2:$C$40", "My counts", "B2:C40"],
    ["'Grower''s bills'!b:c", "Grower's bills", "B:C"],
    [" Sheet1!2:9 ", "Sheet1", "2:9"],
    ["Sheet1!XFD1048576", "Sheet1", "XFD1048576"],
  ])("is taken from %s", (address, sheet, range) => {
    expect(rangeOnSheet(address)).toEqual({ sheet, range });
  });

  it.each([
    "",
    "A1:B2",
    "somewhere",
    "Sheet1!",
    "!A1",
    "Sheet1!A0",
    "Sheet1!XFE1",
    "Sheet1!A1048577",
    "Sheet1!A1:B",
    "Sheet1!A1,B2",
    "Sheet1!A",
    "Sheet1!A1:B2:C3",
  ])("is null for %j, which Excel would refuse", (address) => {
    expect(rangeOnSheet(address)).toBeNull();
  });

  it("finds every cell again by the address it gave it", () => {
    fc.assert(
      fc.property(rows, columns, (row, column) => {
        expect(rangeOnSheet(`S!${cellName({ row, column })}`)).toEqual({ sheet: "S", range: cellName({ row, column }) });
      }),
    );
  });
});
