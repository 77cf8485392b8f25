import { describe, expect, it } from "vitest";
import type { InputTable } from "../workbook/inputTable";
import { newBook } from "./embeddedBook";
import type { GridBook } from "./gridBook";
import { offerAt } from "./offers";

const table = (
  name: string,
  firstRow: readonly string[],
  choices: Readonly<Record<string, readonly string[]>>,
  ...headings: string[]
): InputTable => ({
  name,
  sheet: name,
  rows: [firstRow],
  columns: headings.map((heading) => ({
    heading,
    width: 12,
    hint: "",
    required: false,
    ...(choices[heading] && { choices: choices[heading] }),
  })),
});

async function farm(): Promise<GridBook> {
  const book = newBook({});
  await book.host.makeTables([
    table("Items", ["Urea"], {}, "Item"),
    table("Fields", ["Home"], {}, "Field"),
    table("Crops", ["Corn"], {}, "Crop"),
    table("Purchases", ["Urea", "Mill", ""], { Status: ["plan", "done"] }, "Item", "Supplier", "Status"),
    table("Operations", ["Home"], {}, "Field or Crop"),
  ]);
  await book.host.addRows("Items", [new Map([["Item", "Diesel"]])]);
  await book.host.addRows("Purchases", [
    new Map([
      ["Item", "Diesel"],
      ["Supplier", "Co-op"],
    ]),
    new Map([["Supplier", "mill"]]),
  ]);
  return book;
}
/** What the cell right under the last row offers in a column. */
function offered(book: GridBook, name: string, column: number) {
  const sheet = book.sheets().find((each) => each.name === name)!;
  const { bottom, left } = sheet.tables[0]!.block;
  return offerAt(book, sheet, { row: bottom + 1, column: left + column });
}

describe("offerAt", () => {
  it("offers the cell's own list", async () => {
    const book = await farm();
    const sheet = book.sheets().find(({ name }) => name === "Purchases")!;
    const { bottom, left } = sheet.tables[0]!.block;
    expect(offerAt(book, sheet, { row: bottom, column: left + 2 })).toEqual({ kind: "list", words: ["plan", "done"] });
  });

  it("offers the items that the workbook has, in their order", async () => {
    expect(offered(await farm(), "Purchases", 0)).toEqual({ kind: "names", words: ["Urea", "Diesel"] });
  });

  it("offers fields and crops where a column takes either", async () => {
    expect(offered(await farm(), "Operations", 0)).toEqual({ kind: "names", words: ["Home", "Corn"] });
  });

  it("offers earlier words of the column, each once and the newest first", async () => {
    expect(offered(await farm(), "Purchases", 1)).toEqual({ kind: "earlier", words: ["Mill", "Co-op"] });
  });

  it("offers no names where they are given", async () => {
    expect(offered(await farm(), "Items", 0)).toEqual({ kind: "earlier", words: ["Diesel", "Urea"] });
  });

  it("offers nothing outside tables", async () => {
    const book = await farm();
    expect(offerAt(book, book.sheets()[0]!, { row: 90, column: 90 }).words).toEqual([]);
  });
});
