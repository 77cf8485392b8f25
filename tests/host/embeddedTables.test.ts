/** Tables of the embedded workbook: rows, headings and totals, and what points at them. */
import { Element } from "@xmldom/xmldom";
import { describe, expect, it, vi } from "vitest";
import { newWorkbook, type EmbeddedWorkbook } from "../../src/host/embedded";
import type { Cell } from "../../src/workbook/cell";
import { entries, opened, partsOf, place, sound } from "../support/xlsx/opened";
import { richParts, richWorkbook } from "../support/xlsx/richWorkbook";

const sheet1 = "xl/worksheets/sheet1.xml";
const table1 = "xl/tables/table1.xml";
const formula = (workbook: EmbeddedWorkbook, cell: string, sheet = "Bills") => workbook.cellAt(sheet, place(cell)).formula;
const value = (workbook: EmbeddedWorkbook, cell: string, sheet = "Bills") => workbook.cellAt(sheet, place(cell)).value;
/** The rich workbook without what stands below its table. */
const roomy = richWorkbook();

describe("a table read again after a change", () => {
  const rowsOf = async (workbook: EmbeddedWorkbook) => (await workbook.read()).tables.find(({ name }) => name === "Bills")!.rows;

  it("has the changed row anew and the others as they were read, back and forth", async () => {
    const workbook = opened(roomy);
    const before = await rowsOf(workbook);
    workbook.setCells("Bills", entries({ B5: 77 }));
    const after = await rowsOf(workbook);
    expect([before[1]![1], after[1]![1]]).toEqual([value(opened(roomy), "B5"), 77]);
    expect(after.map((row, index) => row === before[index])).toEqual([true, false, true]);
    workbook.undo();
    expect(await rowsOf(workbook)).toEqual(before);
    workbook.redo();
    expect(await rowsOf(workbook)).toEqual(after);
  });
});

describe("rows added to a table with a totals row", () => {
  const longer = async (rows = 2) => {
    const workbook = opened(roomy);
    await workbook.addRows(
      "bills",
      Array.from(
        { length: rows },
        (_, index) =>
          new Map<string, Cell>([
            ["Item", `Oil ${index + 1}`],
            ["quantity", 5],
          ]),
      ),
    );
    return workbook;
  };

  it("push the totals down and fill calculated columns", async () => {
    const workbook = await longer();
    expect(["A7", "B7", "C7", "D7"].map((cell) => value(workbook, cell))).toEqual(["Oil 1", 5, "", ""]);
    expect(formula(workbook, "D8")).toBe("Bills[[#This Row],[Quantity]]*Bills[[#This Row],[Price]]");
    expect([value(workbook, "A9"), formula(workbook, "B9")]).toEqual(["Total", "SUBTOTAL(109,Bills[Quantity])"]);
    expect(workbook.sheets()[0]!.tables[0]).toMatchObject({ area: { top: 2, left: 0, bottom: 8, right: 3 }, body: { top: 3, bottom: 7 } });
    const saved = partsOf(sound(workbook));
    expect(saved[table1]).toContain('ref="A3:D9"');
    expect(saved[table1]).toContain('<autoFilter ref="A3:D8"/>');
  });

  it("take the look of the row above", async () => {
    const workbook = await longer();
    expect(workbook.cellAt("Bills", place("C8")).numberFormat).toBe('"$"#,##0.00');
  });

  it("carry along what took in all rows or pointed at the totals: formulas, formats, lists, names and charts", async () => {
    const workbook = await longer();
    expect(formula(workbook, "A10")).toBe("SUM(B4:B8)");
    expect(formula(workbook, "B10")).toBe("D9*Factor");
    const saved = partsOf(sound(workbook));
    expect(saved[sheet1]).toContain('<conditionalFormatting sqref="D4:D8">');
    expect(saved[sheet1]).toContain('sqref="A4:A8"');
    expect(saved["xl/charts/chart1.xml"]).toContain("<c:f>Bills!$D$4:$D$8</c:f>");
  });

  it("leave what points at a part of the rows, at other columns or at other sheets", async () => {
    const cells = { F12: "=SUM(B4:B5)", G12: "=SUM(B4:E6)", H12: "=SUM(Summary!B4:B6)+B6", A13: "=SUM($A$3:$D$7)", B13: '="B4:B6"&B7' };
    const workbook = opened(roomy);
    workbook.setCells("Bills", entries(cells));
    await workbook.addRows("Bills", [new Map([["Item", "Oil"]])]);
    expect(Object.keys(cells).map((cell) => formula(workbook, cell))).toEqual([
      "SUM(B4:B5)",
      "SUM(B4:E6)",
      "SUM(Summary!B4:B6)+B6",
      "SUM($A$3:$D$8)",
      '"B4:B6"&B8',
    ]);
    sound(workbook);
  });

  it("keep a group of shared formulas right when one of it must change", async () => {
    const shared = richParts[sheet1]!.replace("B4*2", "SUM(B$4:B$6)+B4").replace('</row><row r="12"', '</row><row r="12"');
    const workbook = opened(richWorkbook({ [sheet1]: shared }));
    await workbook.addRows("Bills", [new Map([["Item", "Oil"]])]);
    expect(["F4", "F5", "F6"].map((cell) => formula(workbook, cell))).toEqual(["SUM(B$4:B$7)+B4", "SUM(B$4:B$7)+B5", "SUM(B$4:B$7)+B6"]);
    sound(workbook);
  });

  it("are refused where they would run over something, and nothing is changed then", async () => {
    const workbook = opened(roomy);
    const before = workbook.save();
    await expect(
      workbook.addRows(
        "Bills",
        Array.from({ length: 3 }, () => new Map([["Item", "Oil"]])),
      ),
    ).rejects.toMatchObject({ name: "HostError", reason: "failed", message: expect.stringMatching(/row 10/) as string });
    expect(partsOf(workbook.save())).toEqual(partsOf(before));
    expect(workbook.canUndo).toBe(false);
  });

  it("go away again with one undo", async () => {
    const workbook = await longer();
    workbook.undo();
    expect(partsOf(workbook.save())).toEqual(partsOf(roomy));
  });
});

describe("entries right under a table", () => {
  const loans = async () => {
    const workbook = newWorkbook();
    await workbook.makeTables([
      {
        name: "Loans",
        sheet: "Loans",
        rows: [["Note", 100, "term"]],
        columns: [
          { heading: "Name", width: 20, hint: "", required: true },
          { heading: "Balance", width: 12, numberFormat: "#,##0.00", hint: "", required: true },
          { heading: "Kind", width: 10, choices: ["operating", "term"], hint: "", required: false },
        ],
      },
    ]);
    return workbook;
  };

  it("make it longer, row by row as far as they reach without a gap", async () => {
    const workbook = await loans();
    workbook.setCells("Loans", entries({ A3: "Two", B4: 3, A6: "apart" }));
    expect((await workbook.read()).tables[0]!.rows).toEqual([
      ["Note", 100, "term"],
      ["Two", "", ""],
      ["", 3, ""],
    ]);
    expect(workbook.cellAt("Loans", place("B4")).numberFormat).toBe("#,##0.00");
    sound(workbook);
  });

  it("look into the parts of the workbook no more often for many rows than for few", async () => {
    const looking = vi.spyOn(Element.prototype, "getElementsByTagNameNS");
    const looks = async (rows: number) => {
      const workbook = await loans();
      looking.mockClear();
      workbook.setCells(
        "Loans",
        Array.from({ length: rows }, (_, index) => ({ row: 2 + index, column: 0, value: "x" })),
      );
      const count = looking.mock.calls.length;
      expect((await workbook.read()).tables[0]!.rows).toHaveLength(1 + rows);
      return count;
    };
    expect(await looks(400)).toBe(await looks(4));
    looking.mockRestore();
  });

  it("fill its calculated columns", () => {
    const bare = richParts[table1]!.replace(' totalsRowCount="1"', "")
      .replace("A3:D7", "A3:D6")
      .replaceAll(/ totalsRow\w+="\w+"/g, "");
    const rows = richParts[sheet1]!.replace(/<row r="7"[\s\S]*?<\/row>/, "");
    const workbook = opened(richWorkbook({ [table1]: bare, [sheet1]: rows }));
    workbook.setCells("Bills", entries({ A7: "Oil", B7: 2 }));
    expect(formula(workbook, "D7")).toBe("Bills[[#This Row],[Quantity]]*Bills[[#This Row],[Price]]");
    expect(workbook.sheets()[0]!.tables[0]!.body.bottom).toBe(6);
    expect(formula(workbook, "A10")).toBe("SUM(B4:B7)");
    sound(workbook);
  });

  it("do not when they are blank, beside it, or under a totals row", async () => {
    const workbook = await loans();
    workbook.setCells("Loans", entries({ A3: "", D3: "beside" }));
    expect((await workbook.read()).tables[0]!.rows).toHaveLength(1);
    const rich = opened(roomy);
    rich.setCells("Bills", entries({ A8: "under the total" }));
    expect(rich.sheets()[0]!.tables[0]!.area.bottom).toBe(6);
  });
});

describe("a heading that is typed over", () => {
  it("renames the column, and formulas follow it", () => {
    const workbook = opened(roomy);
    workbook.setCells("Bills", entries({ B3: "Bags [new]" }));
    expect(formula(workbook, "D4")).toBe("Bills[[#This Row],[Bags '[new']]]*Bills[[#This Row],[Price]]");
    expect(formula(workbook, "B7")).toBe("SUBTOTAL(109,Bills[Bags '[new']])");
    const saved = partsOf(sound(workbook));
    expect(saved[table1]).toContain('name="Bags [new]"');
    expect(saved[table1]).toContain("Bills[[#This Row],[Bags '[new']]]");
    workbook.undo();
    expect(partsOf(workbook.save())).toEqual(partsOf(roomy));
  });

  it("is a text that no other column has, whatever is entered", () => {
    const workbook = opened(roomy);
    workbook.setCells("Bills", entries({ A3: 2026, B3: "PRICE", C3: "" }));
    expect(["A3", "B3", "C3"].map((cell) => value(workbook, cell))).toEqual(["2026", "PRICE2", "Column1"]);
    expect(() => workbook.setCells("Bills", entries({ A3: "=1+1" }))).toThrow(/heading/);
    sound(workbook);
  });

  it("may have a line break", async () => {
    const workbook = opened(roomy);
    workbook.setCells("Bills", entries({ B3: "Bags\nbought" }));
    expect((await opened(sound(workbook)).read()).tables[0]!.headers[1]).toBe("Bags\nbought");
  });
});

describe("a total that is typed over", () => {
  it("is what the table's part says too", () => {
    const workbook = opened(roomy);
    workbook.setCells("Bills", entries({ A7: "All", B7: "=MAX(Bills[Quantity])", D7: 3 }));
    const saved = partsOf(sound(workbook))[table1]!;
    expect(saved).toContain('totalsRowLabel="All"');
    expect(saved).toContain("<totalsRowFormula>MAX(Bills[Quantity])</totalsRowFormula>");
    expect(saved).not.toContain('totalsRowFunction="sum"');
  });
});

describe("an input table", () => {
  const kinds = Array.from({ length: 30 }, (_, index) => `kind of cost ${index + 1}`);
  const table = (name: string, choices: readonly string[]) => ({
    name,
    sheet: name,
    rows: [["kind of cost 1", 1200] as Cell[]],
    columns: [
      { heading: "Kind", width: 18, choices, hint: "What the money is for.", required: true },
      { heading: "Amount", width: 12, hint: "In dollars.", required: false },
    ],
  });

  it("is sound in a workbook that has tables, whose numbers and names stay", async () => {
    const workbook = opened(roomy);
    await workbook.makeTables([table("Other_costs", ["seed", "fuel"]), table("Second", ["a"])]);
    expect(partsOf(sound(workbook))["xl/tables/table2.xml"]).toContain('id="8" name="Other_costs"');
    expect((await workbook.read()).tables.map(({ name }) => name)).toEqual(["Bills", "Other_costs", "Second"]);
    expect(workbook.choices("Other_costs", place("A2"))).toEqual(["seed", "fuel"]);
  });

  it("has a long list, or one with commas in its words, in cells beside it", async () => {
    const workbook = newWorkbook();
    await workbook.makeTables([table("Long", kinds), table("Commas", ["oil, engine", "oil"])]);
    sound(workbook);
    expect(workbook.choices("Long", place("A2"))).toEqual(kinds);
    expect([value(workbook, "D1", "Long"), value(workbook, "D31", "Long")]).toEqual(["Choices for Kind", "kind of cost 30"]);
    expect(workbook.choices("Commas", place("A2"))).toEqual(["oil, engine", "oil"]);
  });

  it("keeps the hint at hand, at the heading and below", async () => {
    const workbook = newWorkbook();
    await workbook.makeTables([table("Costs", ["a"])]);
    expect(
      partsOf(sound(workbook))["xl/worksheets/sheet2.xml"]!.match(/promptTitle="Kind" prompt="What the money is for. Needed."/g),
    ).toHaveLength(2);
  });

  it("is not made where the structure is protected", async () => {
    const locked = richParts["xl/workbook.xml"]!.replace("<bookViews>", '<workbookProtection lockStructure="1"/><bookViews>');
    const workbook = opened(richWorkbook({ "xl/workbook.xml": locked }));
    await expect(workbook.makeTables([table("Costs", ["a"])])).rejects.toMatchObject({ reason: "protected" });
    expect(workbook.unsaved).toBe(false);
  });
});
