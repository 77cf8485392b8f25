import { describe, expect, it } from "vitest";
import type { InputTable } from "../workbook/inputTable";
import { newBook, openBook } from "./embeddedBook";
import type { GridBook } from "./gridBook";
import { viewsOf } from "./views";

const bills: InputTable = {
  name: "Purchases",
  sheet: "Purchases",
  rows: [[46127, "seed", 12.5]],
  columns: [
    { heading: "Date", width: 12, numberFormat: "m/d/yyyy", hint: "The day.", required: true },
    { heading: "Kind", width: 20, choices: ["seed", "fuel"], hint: "What it is.", required: true },
    { heading: "Amount", width: 10, numberFormat: "#,##0.00", hint: "Money.", required: true },
  ],
};

async function bookWithBills(): Promise<GridBook> {
  const book = newBook({});
  await book.host.makeTables([bills]);
  return book;
}
const at = (row: number, column: number) => ({ row, column });
const sheetOf = (book: GridBook) => book.sheets().find(({ name }) => name === "Purchases")!;
/** Heading row and body of the table, found where the workbook has put it. */
const areaOf = (book: GridBook) => sheetOf(book).tables[0]!.block;

describe("the rail of a workbook with a list that is too long for its cells", () => {
  it("has the table alone, and the sheet too once the grower types beside the list", async () => {
    const words = Array.from({ length: 40 }, (_, index) => `a rather long word, number ${index}`);
    const book = newBook({});
    await book.host.makeTables([{ ...bills, columns: [bills.columns[0]!, { ...bills.columns[1]!, choices: words }, bills.columns[2]!] }]);
    const titles = () =>
      viewsOf(book.sheets())
        .filter(({ kind }) => kind === "own")
        .map(({ title }) => title);
    expect(titles()).toEqual(["Notes"]);
    book.enter("Purchases", [{ at: at(60, 4), text: "mine" }]);
    expect(titles()).toEqual(["Notes", "Purchases, whole sheet"]);
  });
});

describe("gridBook", () => {
  it("shows a table's cells as they look and gives them as they are typed", async () => {
    const book = await bookWithBills();
    const { top, left } = areaOf(book);
    expect(sheetOf(book).tables[0]).toMatchObject({ name: "Purchases", headingRow: top });
    expect(book.cell("Purchases", at(top, left))).toMatchObject({ text: "Date", kind: "text" });
    expect(book.cell("Purchases", at(top + 1, left))).toMatchObject({ text: "4/15/2026", entry: "2026-04-15", kind: "number" });
    expect(book.cell("Purchases", at(top + 1, left + 2))).toMatchObject({ text: "12.50", entry: "12.5", kind: "number", isFormula: false });
    expect(book.choices("Purchases", at(top + 1, left + 1))).toEqual(["seed", "fuel"]);
  });

  it("takes entries as one step, makes the table longer, and undoes both", async () => {
    const book = await bookWithBills();
    const before = areaOf(book);
    const row = before.bottom + 1;
    book.enter("Purchases", [
      { at: at(row, before.left), text: "5/1/2026" },
      { at: at(row, before.left + 2), text: "$1,200" },
    ]);
    expect(areaOf(book).bottom).toBe(row);
    expect(book.cell("Purchases", at(row, before.left)).text).toBe("5/1/2026");
    expect(book.cell("Purchases", at(row, before.left + 2)).text).toBe("1,200.00"); // the look of the row above
    const { tables } = await book.host.read();
    expect(tables.find(({ name }) => name === "Purchases")?.rows.at(-1)).toEqual([46143, "", 1200]);
    expect(book.undo()).toBe(true);
    expect(areaOf(book)).toEqual(before);
    expect(book.cell("Purchases", at(row, before.left)).kind).toBe("blank");
    expect(book.redo()).toBe(true);
    expect(areaOf(book).bottom).toBe(row);
  });

  it("shows how a cell looks: bold, slanted, shaded, to the right", async () => {
    const book = newBook({});
    await book.host.write([
      {
        name: "Lender pages",
        columns: [20, 10],
        headingRows: 1,
        charts: [],
        merges: ["A1:B1"],
        page: { orientation: "portrait", paper: "letter", pagesTall: 0, footer: "" },
        rows: [
          [{ value: "Costs", style: { bold: true, fill: "heading" } }],
          [{ value: "plain" }, { value: "–", style: { italic: true, align: "right" } }],
        ],
      },
    ]);
    const look = (row: number, column: number) => book.cell("Lender pages", at(row, column)).look;
    expect(look(0, 0)).toEqual({ bold: true, italic: false, align: null, shaded: true });
    expect(look(1, 0)).toEqual({ bold: false, italic: false, align: null, shaded: false });
    expect(look(1, 1)).toEqual({ bold: false, italic: true, align: "right", shaded: false });
    expect(book.sheets().find(({ name }) => name === "Lender pages")?.merges).toEqual([{ top: 0, left: 0, bottom: 0, right: 1 }]);
  });

  it("shows a formula's value and gives the formula to edit", async () => {
    const book = await bookWithBills();
    const { bottom, left } = areaOf(book);
    book.enter("Purchases", [{ at: at(bottom, left + 2), text: "=2*6" }]);
    expect(book.cell("Purchases", at(bottom, left + 2))).toMatchObject({ entry: "=2*6", isFormula: true });
  });

  it("reads a decimal comma where the season says so", async () => {
    const book = newBook({});
    await book.host.makeTables([
      {
        name: "Season",
        sheet: "Season",
        rows: [["Decimal comma", "yes"]],
        columns: [
          { heading: "Setting", width: 20, hint: "Its name.", required: true },
          { heading: "Value", width: 12, hint: "What it is.", required: true },
        ],
      },
    ]);
    const { used } = book.sheets().find(({ name }) => name === "Season")!;
    const below = at(used.rows + 3, 0);
    book.enter("Season", [{ at: below, text: "1.234,5" }]);
    expect(book.cell("Season", below)).toMatchObject({ kind: "number", entry: "1234,5" });
  });

  it("knows whether anything is unsaved, and opens what it saved", async () => {
    const book = await bookWithBills();
    expect(book.hasChanges()).toBe(true);
    const { bytes, keep } = await book.save();
    expect(book.hasChanges()).toBe(true);
    keep();
    expect(book.hasChanges()).toBe(false);
    const again = openBook(bytes, {});
    expect(again.ok && again.value.sheets().map(({ name }) => name)).toEqual(book.sheets().map(({ name }) => name));
  });

  it("shows each of 25 sheets of the grower's own, to be edited in place and undone where it was", async () => {
    const book = newBook({});
    const names = Array.from({ length: 24 }, (_, index) => `Field ${index + 1}`);
    await book.host.makeTables(names.map((name, index) => ({ ...bills, name: `Own_${index + 1}`, sheet: name })));
    const own = viewsOf(book.sheets()).filter(({ kind }) => kind === "own");
    expect(own.map(({ title }) => title)).toEqual(["Notes", ...names]);
    expect(own.every(({ table, first }) => table === null && first.row === 0 && first.column === 0)).toBe(true);
    book.enter("Field 24", [{ at: at(30, 6), text: "12.5" }]);
    expect(book.cell("Field 24", at(30, 6))).toMatchObject({ text: "12.5", entry: "12.5" });
    expect(book.toUndo()).toMatchObject({ words: "Field 24, G31", place: { sheet: "Field 24", row: 30, column: 6 } });
    book.undo();
    expect(book.cell("Field 24", at(30, 6)).kind).toBe("blank");
  });

  it("says in words why a file is none", () => {
    const opened = openBook(new TextEncoder().encode("Dear Sirs"), {});
    expect(opened.ok).toBe(false);
    expect(!opened.ok && opened.problems.join()).toMatch(/\w+ .*\./);
  });
});
