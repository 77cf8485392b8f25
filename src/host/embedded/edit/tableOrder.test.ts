import { describe, expect, it } from "vitest";
import { parseArea } from "../../address";
import { newWorkbook } from "../package/open";
import { openWorkbook } from "../package/open";
import type { EmbeddedWorkbook } from "../embeddedWorkbook";

const place = (name: string) => {
  const { top, left } = parseArea(name)!;
  return { row: top, column: left };
};
type Typed = string | number;
const enter = (workbook: EmbeddedWorkbook, sheet: string, cells: Readonly<Record<string, Typed>>) =>
  workbook.setCells(
    sheet,
    Object.entries(cells).map(([name, value]) =>
      typeof value === "string" && value.startsWith("=") ? { ...place(name), formula: value.slice(1) } : { ...place(name), value },
    ),
  );

/** A table of bills with a calculated column and a column of the grower's own, and formulas elsewhere that read it. */
async function bills(): Promise<EmbeddedWorkbook> {
  const workbook = newWorkbook();
  const column = (heading: string) => ({ heading, width: 10, hint: heading, required: false });
  await workbook.makeTables([
    { name: "Purchases", sheet: "Purchases", columns: ["Item", "Quantity", "Price", "Mine"].map(column), rows: [["seed", 3, 100, "c"]] },
  ]);
  await workbook.addRows(
    "Purchases",
    [
      ["fuel", 1, 5, "a"],
      ["Oil", 2, 20, "b"],
    ].map(
      ([item, quantity, price, mine]) =>
        new Map([
          ["Item", item!],
          ["Quantity", quantity!],
          ["Price", price!],
          ["Mine", mine!],
        ]),
    ),
  );
  return workbook;
}
const column = (workbook: EmbeddedWorkbook, letter: string, sheet = "Purchases") =>
  ["2", "3", "4", "5"].map((row) => workbook.cellAt(sheet, place(letter + row)).value);
const formula = (workbook: EmbeddedWorkbook, name: string, sheet = "Notes") => workbook.cellAt(sheet, place(name)).formula;
const body = (workbook: EmbeddedWorkbook) => workbook.sheets().find(({ name }) => name === "Purchases")!.tables[0]!.body;
const reopened = (workbook: EmbeddedWorkbook): EmbeddedWorkbook => {
  const opened = openWorkbook(workbook.save());
  if (!opened.ok) throw new Error(opened.problems.map(({ message }) => message).join());
  return opened.value;
};

describe("rows inside a table", () => {
  it("are put above others: what follows moves down, and formulas everywhere go along, also in the file", async () => {
    const workbook = await bills();
    enter(workbook, "Notes", {
      A1: "=Purchases!C3",
      A2: "=SUM(Purchases!C2:C4)",
      A3: "=SUM(Purchases!$C$3:$C$4)",
      A4: "=SUM(Purchases[Price])",
    });
    workbook.insertTableRows("Purchases", 2, 1);
    for (const each of [workbook, reopened(workbook)]) {
      expect(body(each)).toMatchObject({ top: 1, bottom: 4 });
      expect(column(each, "A")).toEqual(["seed", "", "fuel", "Oil"]);
      expect(column(each, "D")).toEqual(["c", "", "a", "b"]);
      expect(["A1", "A2", "A3", "A4"].map((name) => formula(each, name))).toEqual([
        "Purchases!C4",
        "SUM(Purchases!C2:C5)",
        "SUM(Purchases!$C$4:$C$5)",
        "SUM(Purchases[Price])",
      ]);
    }
    expect(workbook.toUndo).toMatchObject({ words: "an entry inserted in Purchases, row 3", place: { sheet: "Purchases", row: 2 } });
    expect(workbook.undo()).toBe(true);
    expect(column(workbook, "A")).toEqual(["seed", "fuel", "Oil", ""]);
    expect(formula(workbook, "A1")).toBe("Purchases!C3");
    workbook.insertTableRows("Purchases", 1, 2);
    expect(formula(workbook, "A2")).toBe("SUM(Purchases!C2:C6)");
  });

  it("go: those below move up, sums grow shorter, and the file has no row too many", async () => {
    const workbook = await bills();
    enter(workbook, "Notes", { A1: "=Purchases!C4", A2: "=SUM(Purchases!C2:C4)", A3: "=SUM(Purchases!C3:C4)" });
    workbook.deleteTableRows("Purchases", [2]);
    for (const each of [workbook, reopened(workbook)]) {
      expect(body(each)).toMatchObject({ top: 1, bottom: 2 });
      expect(column(each, "A")).toEqual(["seed", "Oil", "", ""]);
      expect(["A1", "A2", "A3"].map((name) => formula(each, name))).toEqual(
        ["Purchases!C3", "SUM(Purchases!C2:C3)", "SUM(Purchases!C3)"].map((words, index) => (index === 2 ? "SUM(Purchases!C3:C3)" : words)),
      );
    }
  });

  it("stay where a formula elsewhere reads nothing but them, which is told with its cell", async () => {
    const workbook = await bills();
    enter(workbook, "Notes", { B7: "=Purchases!C3*2" });
    expect(() => workbook.deleteTableRows("Purchases", [2])).toThrow("Nothing was deleted: Notes, B7 reads what would go.");
    expect(column(workbook, "A")).toEqual(["seed", "fuel", "Oil", ""]);
    workbook.deleteTableRows("Purchases", [1, 3]);
    expect(formula(workbook, "B7")).toBe("Purchases!C2*2");
  });

  it("leave one blank row where all go", async () => {
    const workbook = await bills();
    workbook.deleteTableRows("Purchases", [1, 2, 3]);
    expect(body(workbook)).toMatchObject({ top: 1, bottom: 1 });
    expect((await workbook.read()).tables[0]?.rows).toEqual([["", "", "", ""]]);
  });

  it("are sorted whole, with the formulas of their own row, blanks last", async () => {
    const workbook = await bills();
    enter(workbook, "Purchases", { D2: "=B2*C2", D3: "=B3*$C3", D4: "=Purchases!B4*C4" });
    enter(workbook, "Notes", { A2: "=SUM(Purchases!C2:C4)" });
    workbook.sortTable("Purchases", 0, false);
    expect(column(workbook, "A")).toEqual(["fuel", "Oil", "seed", ""]);
    expect(["D2", "D3", "D4"].map((name) => formula(workbook, name, "Purchases"))).toEqual(["B2*$C2", "Purchases!B3*C3", "B4*C4"]);
    expect(formula(workbook, "A2")).toBe("SUM(Purchases!C2:C4)");
    workbook.sortTable("Purchases", 1, true);
    expect(column(workbook, "B")).toEqual([3, 2, 1, ""]);
    expect(column(reopened(workbook), "B")).toEqual([3, 2, 1, ""]);
  });

  it("stay unsorted where a formula reads single entries, in the table or elsewhere", async () => {
    const workbook = await bills();
    enter(workbook, "Notes", { B7: "=Purchases!C3" });
    expect(() => workbook.sortTable("Purchases", 0, false)).toThrow("Nothing was sorted: Notes, B7 reads single entries");
    enter(workbook, "Notes", { B7: "" });
    enter(workbook, "Purchases", { G3: "=C3" });
    expect(() => workbook.sortTable("Purchases", 0, false)).toThrow("Nothing was sorted: Purchases, G3 reads single entries");
    enter(workbook, "Purchases", { D3: "=C3+C2", G3: "" });
    expect(() => workbook.sortTable("Purchases", 0, false)).toThrow("Nothing was sorted: Purchases, D3 reads single entries");
  });

  it("stay where something stands right below", async () => {
    const workbook = await bills();
    enter(workbook, "Purchases", { A6: "my own reckoning" });
    workbook.insertTableRows("Purchases", 2, 1);
    expect(() => workbook.insertTableRows("Purchases", 2, 1)).toThrow("Something stands right below the table");
    expect(workbook.cellAt("Purchases", place("A6")).value).toBe("my own reckoning");
  });
});

describe("the width of a column", () => {
  it("is kept in the file beside those of its neighbours, and undone", async () => {
    const workbook = await bills();
    const widths = (each: EmbeddedWorkbook) => [...each.sheets().find(({ name }) => name === "Purchases")!.widths];
    const before = widths(workbook);
    workbook.widenColumn("Purchases", 1, 33);
    expect(widths(reopened(workbook))).toEqual(before.map(([index, width]) => (index === 1 ? [1, 33] : [index, width])));
    workbook.undo();
    expect(widths(workbook)).toEqual(before);
    workbook.widenColumn("Notes", 3, 20);
    expect([...reopened(workbook).sheets()[0]!.widths]).toEqual([[3, 20]]);
  });
});
