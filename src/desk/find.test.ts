import { describe, expect, it } from "vitest";
import { newBook } from "./embeddedBook";
import { found } from "./find";
import type { GridBook } from "./gridBook";
import { countShown, rowsShown } from "./rowsShown";
import { viewsOf } from "./views";

/** Bills, and a sheet of notes that speaks of one of them. */
async function season(): Promise<GridBook> {
  const book = newBook({});
  const column = (heading: string) => ({ heading, width: 12, hint: "", required: true });
  await book.host.makeTables([
    { name: "Purchases", sheet: "Purchases", columns: ["Item", "Supplier"].map(column), rows: [["Potash", "Elevator"]] },
  ]);
  await book.host.addRows(
    "Purchases",
    [
      ["Seed", "Potash dealer"],
      ["Fuel", ""],
      ["", "Elevator"],
    ].map(
      ([item, supplier]) =>
        new Map([
          ["Item", item!],
          ["Supplier", supplier!],
        ]),
    ),
  );
  book.enter("Notes", [{ at: { row: 4, column: 1 }, text: "ask about potash" }]);
  return book;
}
const at = (row: number, column: number) => ({ row, column });

describe("found", () => {
  it("goes through all tables and sheets in the order of the rail, round at the ends, either way", async () => {
    const book = await season();
    const views = viewsOf(book.sheets());
    const [table, notes] = ["Purchases", "Notes"].map((title) => views.find((view) => view.title === title)!.id) as [string, string];
    const next = (view: string, from: { row: number; column: number }, by: 1 | -1 = 1) => {
      const place = found(book, views, " POTASH ", { view, at: from }, by);
      return place === null ? null : [place.view.title, place.at.row, place.at.column, place.index, place.count];
    };
    expect(next(table, at(1, 0))).toEqual(["Purchases", 2, 1, 2, 3]);
    expect(next(table, at(2, 1))).toEqual(["Notes", 4, 1, 3, 3]);
    expect(next(notes, at(4, 1))).toEqual(["Purchases", 1, 0, 1, 3]);
    expect(next(table, at(1, 0), -1)).toEqual(["Notes", 4, 1, 3, 3]);
    expect(found(book, views, "  ", { view: table, at: at(1, 0) }, 1)).toBeNull();
    expect(found(book, views, "barley", { view: table, at: at(1, 0) }, 1)).toBeNull();
  });
});

describe("rowsShown", () => {
  it("keeps in sight what holds the text, the selected row, and what is typed below since", async () => {
    const book = await season();
    const view = viewsOf(book.sheets()).find(({ title }) => title === "Purchases")!;
    const rows = (text: string, column: number | null, active = 1) => rowsShown(book, view, { text, column, lastRow: 4 }, at(active, 0));
    expect(rows("potash", null)).toEqual([1, 2, 5]);
    expect(rows("potash", 0)).toEqual([1, 5]);
    expect(rows("potash", 0, 3)).toEqual([1, 3, 5]);
    expect(rowsShown(book, view, undefined, at(1, 0))).toBeNull();
    expect(countShown(view, rows("potash", null)!)).toEqual({ shown: 2, hidden: 2 });
    book.enter("Purchases", [{ at: at(5, 0), text: "Lime" }]);
    const longer = viewsOf(book.sheets()).find(({ title }) => title === "Purchases")!;
    expect(rowsShown(book, longer, { text: "potash", column: null, lastRow: 4 }, at(1, 0))).toEqual([1, 2, 5, 6]);
  });
});
