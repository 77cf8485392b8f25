import { describe, expect, it } from "vitest";
import type { DeskSheet, GridTable } from "./gridBook";
import { entriesIn, extentOf, firstView, viewAt, viewsOf } from "./views";

const table = (name: string, block: Partial<GridTable["block"]> = {}): GridTable => ({
  name,
  headingRow: block.top ?? 0,
  block: { top: 0, left: 0, bottom: 4, right: 2, ...block },
});
const sheet = (name: string, more: Partial<DeskSheet> = {}): DeskSheet => ({
  name,
  isResult: false,
  used: { rows: 5, columns: 3 },
  tables: [],
  merges: [],
  widthOf: () => 64,
  ...more,
});
const rail = (sheets: readonly DeskSheet[]) => viewsOf(sheets).map(({ group, title }) => `${group}: ${title}`);

describe("the views of a workbook", () => {
  it("are our tables as the work goes, then sheets of the grower's own, then results", () => {
    expect(
      rail([
        sheet("Notes"),
        sheet("Sales", { tables: [table("Sales")] }),
        sheet("Lender pages", { isResult: true }),
        sheet("Other costs", { tables: [table("other_costs")] }),
        sheet("Crops", { tables: [table("Crops")] }),
      ]),
    ).toEqual(["Plan: Crops", "Bought and done: Other costs", "Grain and money: Sales", "Own sheets: Notes", "Results: Lender pages"]);
  });

  it("show a sheet as it is as well where anything lies outside our tables", () => {
    expect(rail([sheet("Sales", { tables: [table("Sales")], used: { rows: 5, columns: 4 } })])).toEqual([
      "Grain and money: Sales",
      "Own sheets: Sales, whole sheet",
    ]);
    expect(rail([sheet("Farm", { tables: [table("Sales", { top: 2 })] })])).toEqual(["Grain and money: Sales", "Own sheets: Farm"]);
    expect(rail([sheet("Farm", { tables: [table("Sales"), table("Prices", { top: 7, bottom: 9 })] })])).toEqual([
      "Grain and money: Sales",
      "Own sheets: Farm",
    ]);
    // The words of our drop-down lists are nothing to look at.
    expect(rail([sheet("Sales", { tables: [table("Sales")], used: { rows: 5, columns: 6 }, columnsBesideLists: 3 })])).toEqual([
      "Grain and money: Sales",
    ]);
    // What stands right below its columns is shown with the table.
    expect(rail([sheet("Sales", { tables: [table("Sales")], used: { rows: 9, columns: 3 } })])).toEqual(["Grain and money: Sales"]);
  });

  it("leave a table of the grower's own on its sheet, and one without headings", () => {
    expect(rail([sheet("Bins", { tables: [table("Bins")] })])).toEqual(["Own sheets: Bins"]);
    expect(rail([sheet("Sales", { tables: [{ ...table("Sales"), headingRow: null }] })])).toEqual(["Own sheets: Sales"]);
  });

  it("begin where bills are entered, else with the first that holds something", () => {
    const [crops, bills, notes] = [
      sheet("Crops", { tables: [table("Crops")] }),
      sheet("Purchases", { tables: [table("Purchases")] }),
      sheet("Notes", { used: { rows: 0, columns: 0 } }),
    ];
    expect(firstView(viewsOf([notes, crops, bills]))).toBe("table Purchases");
    expect(firstView(viewsOf([notes, crops]))).toBe("table Crops");
    expect(firstView(viewsOf([notes]))).toBe("sheet Notes");
  });

  it("show a cell in its table, right below it too, else on its sheet", () => {
    const views = viewsOf([sheet("Farm", { tables: [table("Sales", { top: 2, bottom: 4 })], used: { rows: 9, columns: 5 } })]);
    const at = (row: number, column: number) => viewAt(views, { sheet: "Farm", row, column })?.id;
    expect([at(3, 0), at(5, 2), at(6, 0), at(2, 0), at(3, 4)]).toEqual([
      "table Sales",
      "table Sales",
      "sheet Farm",
      "sheet Farm",
      "sheet Farm",
    ]);
    expect(viewAt(views, { sheet: "Elsewhere", row: 0, column: 0 })).toBeUndefined();
  });
});

describe("what a view shows", () => {
  const [sales] = viewsOf([
    sheet("Sales", { tables: [table("Sales", { top: 2, left: 1, bottom: 5, right: 3 })], used: { rows: 6, columns: 4 } }),
  ]);

  it("is the rows of a table, its own columns and one row to go on with", () => {
    expect(extentOf(sales!, [sales!.first])).toEqual({ first: { row: 3, column: 1 }, rows: 7, columns: 4 });
    expect(entriesIn(sales!)).toBe(3);
  });

  it("is also what has been written below a table that did not grow", () => {
    expect(extentOf({ ...sales!, used: { rows: 20, columns: 4 } }, [sales!.first]).rows).toBe(20);
  });

  it("is a sheet with room to go on", () => {
    const [notes] = viewsOf([sheet("Notes")]);
    expect(extentOf(notes!, [{ row: 60, column: 12 }])).toEqual({ first: { row: 0, column: 0 }, rows: 110, columns: 16 });
    expect(entriesIn(notes!)).toBeNull();
  });
});
