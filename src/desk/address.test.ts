import { expect, it } from "vitest";
import { blockName, cellName, columnName } from "./address";

it.each([[0, "A"], [25, "Z"], [26, "AA"], [701, "ZZ"], [702, "AAA"], [16_383, "XFD"]])("names column %d %s, up to Excel's last", (column, name) => {
  expect(columnName(column)).toBe(name);
});

it("names a cell, and a block by its corners", () => {
  expect(cellName({ row: 3, column: 1 })).toBe("B4");
  expect(blockName({ top: 3, left: 1, bottom: 3, right: 1 })).toBe("B4");
  expect(blockName({ top: 3, left: 1, bottom: 8, right: 3 })).toBe("B4:D9");
});
