/** Rows put into, taken out of and moved in a table that much points at: totals, lists, formats, names, charts. */
import { describe, expect, it } from "vitest";
import type { EmbeddedWorkbook } from "../../src/host/embedded";
import { opened, partsOf, place, sound } from "../support/xlsx/opened";
import { richParts, richWorkbook } from "../support/xlsx/richWorkbook";

const formula = (workbook: EmbeddedWorkbook, cell: string, sheet = "Bills") => workbook.cellAt(sheet, place(cell)).formula;
const value = (workbook: EmbeddedWorkbook, cell: string, sheet = "Bills") => workbook.cellAt(sheet, place(cell)).value;

/** The rich workbook without what keeps entries where they are: a hidden row, and a note. */
const movable = (): EmbeddedWorkbook =>
  opened(
    richWorkbook({
      "xl/worksheets/sheet1.xml": richParts["xl/worksheets/sheet1.xml"]!.replace(' hidden="1"', ""),
      "xl/comments1.xml": richParts["xl/comments1.xml"]!.replace('ref="A4"', 'ref="A12"'),
    }),
  );

describe("entries inserted into a table with totals", () => {
  it("push down what follows with the totals, fill the calculated column, and stretch what took in all of them", () => {
    const workbook = movable();
    const before = ["A4", "A5", "A6"].map((cell) => value(workbook, cell));
    workbook.insertTableRows("Bills", 4, 2);
    expect(["A4", "A5", "A6", "A7", "A8"].map((cell) => value(workbook, cell))).toEqual([before[0], "", "", before[1], before[2]]);
    expect(formula(workbook, "D5")).toBe("Bills[[#This Row],[Quantity]]*Bills[[#This Row],[Price]]");
    expect([value(workbook, "A9"), formula(workbook, "B9")]).toEqual(["Total", "SUBTOTAL(109,Bills[Quantity])"]);
    expect(formula(workbook, "A10")).toBe("SUM(B4:B8)");
    expect(formula(workbook, "B10")).toBe("D9*Factor");
    const saved = partsOf(sound(workbook));
    expect(saved["xl/tables/table1.xml"]).toContain('ref="A3:D9"');
    const grown = partsOf(sound(grownByTwo()));
    // The notes on values worked out speak of the cells, which are others.
    const plain = (xml: string | undefined) => xml?.replace(/<definedName name="Pennyacre_\w+"[^<]*<\/definedName>/g, "");
    for (const part of Object.keys(grown)) if (!part.includes("sheet1")) expect(plain(saved[part]), part).toBe(plain(grown[part]));
    const rules = (xml: string) => [...xml.matchAll(/sqref="[^"]*"|<formula1?>[^<]*</g)].map(([each]) => each);
    expect(rules(saved["xl/worksheets/sheet1.xml"]!)).toEqual(rules(grown["xl/worksheets/sheet1.xml"]!));
  });

  it("and deleted again leave the file's cells as they were", () => {
    const workbook = movable();
    const cells = () =>
      ["A3", "A4", "A5", "A6", "A7", "A8", "B7", "D7", "D5"].map((cell) => [value(workbook, cell), formula(workbook, cell)]);
    const before = cells();
    workbook.insertTableRows("Bills", 5, 1);
    workbook.deleteTableRows("Bills", [5]);
    expect(cells()).toEqual(before);
    sound(workbook);
  });

  it("stay where they are beside hidden rows and notes, which would not move along", () => {
    const workbook = opened(richWorkbook());
    expect(() => workbook.insertTableRows("Bills", 4, 1)).toThrow("Rows of Bills are hidden in the workbook (row 5)");
    const noted = opened(richWorkbook({ "xl/worksheets/sheet1.xml": richParts["xl/worksheets/sheet1.xml"]!.replace(' hidden="1"', "") }));
    for (const change of [() => noted.deleteTableRows("Bills", [4]), () => noted.sortTable("Bills", 1, false)]) expect(change).toThrow();
    expect(() => noted.insertTableRows("Bills", 4, 1)).toThrow("Cell A4 has a note or a link");
    expect(noted.unsaved).toBe(false);
  });
});

/** The same table made longer at its end, where what points at it is known to be right. */
function grownByTwo(): EmbeddedWorkbook {
  const workbook = movable();
  workbook.addTableRow("Bills");
  workbook.addTableRow("Bills");
  return workbook;
}
