import { describe, expect, it } from "vitest";
import { inputTables } from "../workbook/templates";
import { newBook } from "./embeddedBook";
import { hintAt } from "./hintAt";

describe("the hint of the cell that is selected", () => {
  it("is that of its column, in the table's rows, at its heading and in the row that is begun under it", async () => {
    const book = newBook({});
    await book.host.makeTables(inputTables.filter(({ name }) => name === "Crops"));
    const sheet = book.sheets().find(({ name }) => name === "Crops")!;
    const price = sheet.tables[0]!.block.left + 4;
    const hints = [0, 1, 2, 3].map((row) => hintAt(book, sheet, { row, column: price }));
    expect(hints).toEqual([...Array.from({ length: 3 }, () => "Money per unit of yield, before selling costs. Needed."), ""]);
    expect(hintAt(book, sheet, { row: 1, column: 40 })).toBe("");
  });
});
