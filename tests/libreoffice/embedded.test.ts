/** Files of the embedded workbook in LibreOffice, and the calculation engine against LibreOffice's. */
import { beforeAll, describe, expect, it } from "vitest";
import { newWorkbook } from "../../src/host/embedded";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";
import type { Cell } from "../../src/workbook/cell";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { recalculated, type CellTexts } from "../support/libreOffice";
import { entries, opened, place, sound } from "../support/xlsx/opened";
import { formulas, sampleCells, unlike } from "../support/xlsx/formulaSample";
import { richWorkbook } from "../support/xlsx/richWorkbook";

const costs: ResultSheet = {
  name: "Cost per acre",
  columns: [30, 12],
  headingRows: 1,
  merges: [],
  rows: [
    [{ value: "Kind", style: { bold: true, fill: "heading" } }, { value: "$ per ac" }],
    [{ value: "=Seed" }, { value: 118.25 }],
    [{ value: "Fuel" }, { value: 21.5 }],
    [{ value: "All" }, { value: 0, formula: "=SUM(B2:B3)" }],
  ],
  page: { orientation: "landscape", paper: "letter", pagesTall: 1, footer: "Hill & Dale" },
  charts: [{ kind: "column", title: "Cost", categories: "A2:A3", series: [{ name: "$ per ac", values: "B2:B3" }], from: "D2", to: "J15" }],
};

async function written(): Promise<Uint8Array> {
  const workbook = newWorkbook();
  await workbook.makeTables([
    {
      name: "Purchases",
      sheet: "Purchases",
      rows: [["Seed", 2, 90]],
      columns: ["Item", "Quantity", "Price"].map((heading) => ({ heading, width: 12, hint: "As invoiced.", required: true })),
    },
  ]);
  await workbook.addRows("Purchases", [
    new Map<string, Cell>([
      ["Item", "Diesel & oil"],
      ["Quantity", 0.1],
      ["Price", 3.5],
    ]),
    new Map([["Item", "=not a formula"]]),
  ]);
  workbook.setCells("Notes", entries({ A1: "=SUMPRODUCT(Purchases[Quantity],Purchases[Price])", A2: "'quoted", A3: true, B1: "=1/0" }));
  await workbook.write([costs]);
  return sound(workbook);
}

/** The rich workbook with a number changed, rows added under its table, and a heading renamed. */
async function changed(): Promise<Uint8Array> {
  const workbook = opened(richWorkbook(), { engine: engineInNode });
  workbook.setCells("Bills", entries({ B4: 100, B3: "Bags" }));
  await workbook.addRows("Bills", [
    new Map<string, Cell>([
      ["Item", "Oil"],
      ["Bags", 4],
      ["Price", 2],
    ]),
  ]);
  await workbook.settled();
  return sound(workbook);
}

const sample = () => {
  const workbook = newWorkbook({ engine: engineInNode });
  workbook.setCells("Notes", entries(sampleCells));
  // With a number format of the cell, LibreOffice does not show days and shares in one of its own.
  workbook.setCells(
    "Notes",
    entries(Object.fromEntries(formulas.map((formula, index) => [`H${index + 1}`, `=${formula}`]))).map((entry) => ({
      ...entry,
      numberFormat: "0.00",
    })),
  );
  return workbook;
};

let books: ReadonlyMap<string, ReadonlyMap<string, CellTexts>>;
beforeAll(async () => {
  books = recalculated({ written: await written(), changed: await changed(), sample: sound(sample()) }, false);
});
const text = (book: string, sheet: string, cell: string) => {
  const { row, column } = place(cell);
  return books.get(book)?.get(sheet)?.[row]?.[column];
};

describe("LibreOffice", () => {
  it("finds what was written: tables, added rows, texts that are no formulas, formulas", () => {
    expect(
      books
        .get("written")!
        .get("Purchases")!
        .slice(0, 4)
        .map((row) => row.slice(0, 3)),
    ).toEqual([
      ["Item", "Quantity", "Price"],
      ["Seed", "2", "90"],
      ["Diesel & oil", "0.1", "3.5"],
      ["=not a formula", "", ""],
    ]);
    expect(["A1", "A2", "A3", "B1"].map((cell) => text("written", "Notes", cell))).toEqual(["180.35", "'quoted", "TRUE", "#DIV/0!"]);
    expect(["A2", "B2", "B4"].map((cell) => text("written", "Cost per acre", cell))).toEqual(["=Seed", "118.25", "139.75"]);
  });

  it("gives a workbook that was changed here the same values as we did", async () => {
    const ours = opened(await changed());
    for (const cell of ["D4", "D5", "D6", "D7", "A10", "F4", "F5"]) {
      expect([cell, Number(text("changed", "Bills", cell))]).toEqual([cell, ours.cellAt("Bills", place(cell)).value]);
    }
    expect(ours.cellAt("Bills", place("A10")).formula).toBe("SUM(B4:B7)");
  });

  it("leaves hidden rows out of a total where we leave the total to Excel", async () => {
    const workbook = opened(await changed());
    expect(Number(text("changed", "Bills", "B8"))).toBe(105);
    expect(workbook.cellAt("Bills", place("B8"))).toMatchObject({ formula: "SUBTOTAL(109,Bills[Bags])", value: 131.5 });
  });

  it.each(Object.entries(unlike))("and our engine differ on %s: %s", async (formula) => {
    expect(formulas).toContain(formula);
  });

  it("and our engine agree on every other formula of the sample", async () => {
    const workbook = sample();
    await workbook.settled();
    const differing = formulas.flatMap((formula, index) => {
      const cell = workbook.cellAt("Notes", place(`H${index + 1}`));
      const theirs = text("sample", "Notes", `H${index + 1}`)!;
      return !cell.stale && agrees(cell.value, theirs)
        ? []
        : [`${formula}: ${cell.stale ? "not worked out" : String(cell.value)} against ${theirs}`];
    });
    expect(differing.filter((line) => !Object.keys(unlike).some((formula) => line.startsWith(`${formula}: `)))).toEqual([]);
    expect(differing).toHaveLength(Object.keys(unlike).length);
  });
});

/** LibreOffice writes fifteen digits and, in a cell with a number format, 1 and 0 for yes and no. */
const agrees = (ours: Cell, theirs: string): boolean =>
  typeof ours === "string"
    ? ours === theirs
    : theirs !== "" && Math.abs(Number(ours) - Number(theirs)) <= 1e-12 * Math.max(1, Math.abs(Number(ours)));
