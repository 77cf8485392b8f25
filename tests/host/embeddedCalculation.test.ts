/** Formulas of the embedded workbook after a change: worked out, or marked as old. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { newWorkbook, type Engine } from "../../src/host/embedded";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { differingParts, entries, opened, partsOf, place, sound } from "../support/xlsx/opened";
import { richParts, richWorkbook } from "../support/xlsx/richWorkbook";

const sheet1 = "xl/worksheets/sheet1.xml";
const bills = (workbook: ReturnType<typeof opened>, cell: string) => workbook.cellAt("Bills", place(cell));

describe("without an engine", () => {
  it("a change marks what reads the cell, directly or not, and nothing else", async () => {
    const workbook = opened(richWorkbook());
    workbook.setCells("Bills", entries({ B4: 121 }));
    const marked = ["D4", "D5", "F4", "F5", "H4", "H5", "D7", "A10", "B10", "C10"].filter((cell) => bills(workbook, cell).stale);
    expect(marked).toEqual(["D4", "F4", "H4", "H5", "D7", "A10", "B10"]);
    expect((await workbook.read()).tables[0]!.stale).toEqual([{ row: 0, column: 3 }]);
    expect(bills(workbook, "D4").value).toBe(301.25);
  });

  it("undo takes the marks away, redo brings them back", () => {
    const workbook = opened(richWorkbook());
    workbook.setCells("Bills", entries({ B4: 121 }));
    workbook.undo();
    expect(bills(workbook, "D4").stale).toBe(false);
    workbook.redo();
    expect(bills(workbook, "D4").stale).toBe(true);
  });

  it("entering the old number again takes the marks away too", () => {
    const workbook = opened(richWorkbook());
    workbook.setCells("Bills", entries({ B4: 121 }));
    workbook.setCells("Bills", entries({ B4: 120.5 }));
    expect(bills(workbook, "D4").stale).toBe(false);
  });

  it("a formula that the file has no value for is marked from the start", () => {
    const workbook = opened(readFileSync("tests/fixtures/openpyxl.xlsx"));
    expect(workbook.cellAt("Grower's bills", place("E4"))).toMatchObject({ value: "", stale: true });
  });
});

describe("with an engine", () => {
  it("does not start it for sheets of ours in a workbook without formulas, and does where the grower's may read them", async () => {
    const sheet = {
      name: "Break-even",
      rows: [[{ value: 2 }, { value: 4, formula: "=A1*2" }]],
      columns: [],
      headingRows: 0,
      charts: [],
      page: { orientation: "portrait", paper: "letter", pagesTall: 0, footer: "" },
    } satisfies ResultSheet;
    let asked = 0;
    const counted: Engine = (request) => {
      asked += 1;
      return engineInNode(request);
    };
    const plain = newWorkbook({ engine: counted });
    await plain.write([sheet]);
    await plain.settled();
    expect(asked).toBe(0);
    expect(plain.cellAt("Break-even", place("B1"))).toMatchObject({ value: 4, stale: false });
    plain.setCells("Break-even", entries({ A1: 5 }));
    await plain.settled();
    expect(plain.cellAt("Break-even", place("B1"))).toMatchObject({ value: 10, stale: false });

    const reader = newWorkbook({ engine: counted });
    reader.setCells("Notes", entries({ A1: "=1+1" }));
    await reader.settled();
    const before = asked;
    await reader.write([sheet]);
    await reader.settled();
    expect(asked).toBeGreaterThan(before);
  });

  it("reading waits for the new values, and one undo takes entry and values back", async () => {
    const bytes = richWorkbook();
    const workbook = opened(bytes, { engine: engineInNode });
    workbook.setCells("Bills", entries({ B4: 121 }));
    const { tables } = await workbook.read();
    expect(tables[0]!.rows[0]).toEqual(["Seed, early", 121, 2.5, 302.5]);
    expect(tables[0]!.stale).toBeUndefined();
    expect([bills(workbook, "F4").value, bills(workbook, "A10").value]).toEqual([242, 132]);
    workbook.undo();
    await workbook.settled();
    expect(differingParts(bytes, workbook.save())).toEqual([]);
  });

  it("keeps what it does not work out, marked: array formulas over several cells, totals of shown rows, and what reads them", async () => {
    const workbook = opened(richWorkbook(), { engine: engineInNode });
    workbook.setCells("Bills", entries({ B4: 121 }));
    await workbook.settled();
    expect(["H4", "H5", "B7", "D7", "B10"].map((cell) => bills(workbook, cell).stale)).toEqual([true, true, true, true, true]);
    expect(bills(workbook, "D7").value).toBe(341.251);
  });

  it("works a file out that has no values, as soon as it is opened, without calling it changed", async () => {
    const workbook = opened(readFileSync("tests/fixtures/openpyxl.xlsx"), { engine: engineInNode });
    const { tables } = await workbook.read();
    expect(tables[0]!.rows.map((row) => row[4])).toEqual([32565.125, 372, 0.333333333333333, 0]);
    const value = (cell: string) => workbook.cellAt("Grower's bills", place(cell));
    expect(["I4", "I5", "I6", "I7", "I8"].map((cell) => value(cell).value)).toEqual(["#N/A", "#DIV/0!", 120.6, 32937.4583333333, "much"]);
    expect(value("I4")).toMatchObject({ isError: true, stale: false });
    expect(workbook.unsaved).toBe(false);
  });

  it("writes values into formulas' cells and leaves the formulas as the file has them", async () => {
    const volatile = richParts[sheet1]!.replace("<f>SUM(B4:B6)</f><v>131.5</v>", '<f ca="1">SUM(B4:B6)</f><v>131.5</v>');
    const workbook = opened(richWorkbook({ [sheet1]: volatile }), { engine: engineInNode });
    workbook.setCells("Bills", entries({ B6: 2 }));
    await workbook.settled();
    const saved = partsOf(sound(workbook))[sheet1]!;
    expect(saved).toContain('<f ca="1">SUM(B4:B6)</f><v>132.5</v>');
    expect(saved).toContain('<f t="shared" si="0"/><v>4</v>'.replace("/>", "></f>"));
    expect(saved).toContain('<f t="shared" ref="F4:F6" si="0">B4*2</f><v>241</v>');
  });

  it("fills calculated columns of added rows", async () => {
    const workbook = opened(richWorkbook(), { engine: engineInNode });
    await workbook.addRows("Bills", [
      new Map<string, string | number>([
        ["Item", "Oil"],
        ["Quantity", 4],
        ["Price", 2.5],
      ]),
    ]);
    expect((await workbook.read()).tables[0]!.rows[3]).toEqual(["Oil", 4, 2.5, 10]);
  });

  it("works out the last state only, when changes come faster than it", async () => {
    let asked = 0;
    const slow: Engine = async (request) => {
      asked += 1;
      await new Promise((resolve) => setTimeout(resolve, 20));
      return engineInNode(request);
    };
    const workbook = newWorkbook({ engine: slow });
    workbook.setCells("Notes", entries({ A1: 0, B1: "=A1*2" }));
    for (let number = 1; number <= 10; number += 1) workbook.setCells("Notes", entries({ A1: number }));
    await workbook.settled();
    expect(workbook.cellAt("Notes", place("B1"))).toMatchObject({ value: 20, stale: false });
    expect(asked).toBeLessThan(6);
  });

  it("marks everything that it would have told once it has broken, and says so", async () => {
    const workbook = opened(richWorkbook(), { engine: () => Promise.reject(new Error("unreachable")) });
    workbook.setCells("Bills", entries({ B4: 121 }));
    await workbook.settled();
    expect(bills(workbook, "D4").stale).toBe(true);
    expect(workbook.engineFault?.message).toBe("unreachable");
  });

  it("tells listeners when values have come", async () => {
    const workbook = newWorkbook({ engine: engineInNode });
    const shown: unknown[] = [];
    workbook.subscribe(() => shown.push(workbook.cellAt("Notes", place("B1")).value));
    workbook.setCells("Notes", entries({ A1: 2, B1: "=A1*2" }));
    await workbook.settled();
    expect(shown).toEqual(["", 4]);
  });
});
