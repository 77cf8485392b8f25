import { describe, expect, it } from "vitest";
import type { Cell } from "../../../workbook/cell";
import { parseArea } from "../../address";
import type { Engine } from "./engine";
import type { CalculatedValue, FormulaBook, FormulaCell } from "./formulaBook";
import { engineInNode } from "./loadInNode";
import { Recalculation } from "./recalculation";
import type { FormulaTable } from "./tableReference";

/** A formula with the value that the file has for it. */
type Written = { readonly formula: string; readonly value: CalculatedValue | null };
const f = (formula: string, value: CalculatedValue | null): Written => ({ formula, value });
type Rows = readonly (readonly (Cell | Written)[])[];

function workbook(
  sheets: Readonly<Record<string, Rows>>,
  rest: Partial<Pick<FormulaBook, "tables" | "names" | "dateSystem">> = {},
): FormulaBook {
  const names = Object.keys(sheets);
  const grid = Object.values(sheets);
  const formulas = grid.flatMap((rows, sheet) =>
    rows.flatMap((cells, row) =>
      cells.flatMap((cell, column): FormulaCell[] => (typeof cell === "object" ? [{ sheet, row, column, ...cell }] : [])),
    ),
  );
  return {
    dateSystem: "1900",
    tables: [],
    names: [],
    sheets: names,
    formulas,
    ...rest,
    hasHiddenRow: () => false,
    used: (sheet) => ({ rows: grid[sheet]!.length, columns: Math.max(0, ...grid[sheet]!.map((row) => row.length)) }),
    valueAt: ({ sheet, row, column }) => {
      const cell = grid[sheet]?.[row]?.[column] ?? "";
      return typeof cell === "object" ? (cell.value ?? "") : cell;
    },
  };
}

const table = (name: string, range: string, columns: readonly string[], totalsRows = 0): FormulaTable => ({
  name,
  sheet: 0,
  area: parseArea(range)!,
  headerRows: 1,
  totalsRows,
  columns,
});

const at = (sheet: number, row: number, column: number) => ({ sheet, row, column });

describe("Recalculation", () => {
  const rows = (acres: number, cost: CalculatedValue | null, total: CalculatedValue | null): Rows => [
    ["Field", "Acres", "Cost"],
    ["North", acres, f("B2*10", cost)],
    ["Creek", 50, f("B3*10", 500)],
    ["", "", f("SUM(C2:C3)", total)],
  ];
  const opened = workbook({ Fields: rows(40, 400, 900) });

  it("finds nothing to do in a workbook as it was opened", async () => {
    expect(await new Recalculation(opened, engineInNode).of(opened, [])).toMatchObject({ values: [], stale: [] });
  });

  it("gives formulas that read a changed cell their new value", async () => {
    const found = await new Recalculation(opened, engineInNode).of(workbook({ Fields: rows(41, 400, 900) }), [at(0, 1, 1)]);
    expect(found.values).toEqual([
      { ...at(0, 1, 2), value: 410 },
      { ...at(0, 3, 2), value: 910 },
    ]);
    expect(found.stale).toEqual([]);
  });

  it("works out formulas that the file has no value for", async () => {
    const found = await new Recalculation(workbook({ Fields: rows(40, null, null) }), engineInNode).of(
      workbook({ Fields: rows(40, null, null) }),
      [],
    );
    expect(found).toMatchObject({
      values: [
        { ...at(0, 1, 2), value: 400 },
        { ...at(0, 3, 2), value: 900 },
      ],
      stale: [],
    });
  });

  it("calls everything that reads a changed cell stale where there is no engine, and nothing else", async () => {
    const { values, stale } = await new Recalculation(opened, null).of(workbook({ Fields: rows(41, 400, 900) }), [at(0, 1, 1)]);
    expect(values).toEqual([]);
    expect(stale).toEqual([at(0, 1, 2), at(0, 3, 2)]);
  });

  it("keeps the value of a formula that the engine does not know, and marks it and its readers once its cells change", async () => {
    const with_ = (acres: number) =>
      workbook({
        S: [
          [acres, f("FARMFUNCTION(A1)", 7), f("B1+A1", 7 + 40)],
          [1, f("A2+1", 2), ""],
        ],
      });
    const recalculation = new Recalculation(with_(40), engineInNode);
    expect(await recalculation.of(with_(40), [])).toMatchObject({ values: [], stale: [] });
    const found = await recalculation.of(with_(41), [at(0, 0, 0)]);
    expect(found.values).toEqual([{ ...at(0, 0, 2), value: 48 }]);
    expect(found.stale).toEqual([at(0, 0, 1), at(0, 0, 2)]);
  });

  it("does not believe the engine where it disagrees with the file as opened, nor for the same formula in a new row", async () => {
    const wrong: Engine = async (request) =>
      (await engineInNode(request)).map((value, index) => (request.formulas[index]!.formula.startsWith("ROUND") ? 1 : value));
    const of = (price: number, more: Rows = []) => workbook({ S: [[price, f("ROUND(A1,2)", 4.13), f("B1*2", 8.26)], ...more] });
    const recalculation = new Recalculation(of(4.125), wrong);
    expect(await recalculation.of(of(4.125), [])).toMatchObject({ values: [], stale: [] });
    const found = await recalculation.of(of(5.125, [[1, f("ROUND(A1,2)", null), ""]]), [at(0, 0, 0), at(0, 1, 1)]);
    expect(found.values).toEqual([]);
    expect(found.stale).toEqual(expect.arrayContaining([at(0, 0, 1), at(0, 0, 2), at(0, 1, 1)]));
  });

  it("still believes the engine for formulas that only rest on one it has wrong", async () => {
    const wrong: Engine = async (request) =>
      (await engineInNode(request)).map((value, index) => (request.formulas[index]!.formula.startsWith("ROUND") ? 1 : value));
    // The engine below counts B1*2 from its own wrong B1 at first, and must not be blamed for it.
    const spoiling: Engine = async (request) => {
      const first = await wrong(request);
      const b1 = request.formulas.findIndex(({ formula }) => formula.startsWith("ROUND"));
      return first.map((value, index) => (request.formulas[index]!.formula === "B1*2" && b1 >= 0 ? 2 : value));
    };
    const of = (factor: number) => workbook({ S: [[4.125, f("ROUND(A1,2)", 4.13), f("B1*2", 8.26), factor, f("C1*D1", 8.26)]] });
    const found = await new Recalculation(of(1), spoiling).of(of(10), [at(0, 0, 3)]);
    expect(found).toMatchObject({ values: [{ ...at(0, 0, 4), value: 82.6 }], stale: [] });
  });

  it("says which formulas differ from the file as opened, as long as they have that value", async () => {
    const wrong: Engine = async (request) =>
      (await engineInNode(request)).map((value, index) => (request.formulas[index]!.formula.startsWith("ROUND") ? 1 : value));
    const of = (price: number, value = 4.13) => workbook({ S: [[price, f("ROUND(A1,2)", value), f("A1*2", 9)]] });
    const recalculation = new Recalculation(of(4.125), wrong);
    expect((await recalculation.of(of(4.125), [])).differing).toEqual([
      { ...at(0, 0, 1), notCounted: 1 },
      { ...at(0, 0, 2), notCounted: 9 },
    ]);
    const moved = await recalculation.of(of(5.125), [at(0, 0, 0)]);
    expect(moved).toMatchObject({ values: [{ ...at(0, 0, 2), value: 10.25 }], stale: [at(0, 0, 1)], differing: [] });
  });

  it("does not take arithmetic for certain where a file counts with the digits shown", async () => {
    const of = workbook({ S: [[1.26, f("A1*2", 2.6)]] });
    const stored = (areRounded: boolean) =>
      new Recalculation(of, engineInNode, { areToBeWorkedOut: false, old: [], areRounded }).of(of, []);
    expect(await stored(true)).toMatchObject({ values: [], differing: [{ notCounted: 2.52 }] });
    expect(await stored(false)).toMatchObject({ values: [{ value: 2.52 }], differing: [{ notCounted: 2.6 }] });
  });

  it("does not hold the day against the engine", async () => {
    const of = (days: number) => workbook({ S: [[days, f("TODAY()", 30000), f("B1+A1", 30001), f("A1+1", 2)]] });
    const { values, stale } = await new Recalculation(of(1), engineInNode).of(of(2), [at(0, 0, 0)]);
    const today = Math.floor(Date.now() / 86_400_000) + 25_569;
    expect(values).toEqual([
      { ...at(0, 0, 1), value: today },
      { ...at(0, 0, 2), value: today + 2 },
      { ...at(0, 0, 3), value: 3 },
    ]);
    expect(stale).toEqual([]);
  });

  it("goes on without an engine that breaks, and keeps what went wrong", async () => {
    const breaking: Engine = () => Promise.reject(new Error("unreachable"));
    const recalculation = new Recalculation(opened, breaking);
    const found = await recalculation.of(workbook({ Fields: rows(41, 400, 900) }), [at(0, 1, 1)]);
    expect(found).toMatchObject({ values: [], stale: [at(0, 1, 2), at(0, 3, 2)] });
    expect(recalculation.fault?.message).toBe("unreachable");
  });

  it("reads tables, names, other sheets and whole columns", async () => {
    const of = (acres: number) =>
      workbook(
        {
          Seed: [
            ["Acres", "Rate (per ac)", "Bags"],
            [acres, 0.4, f("Seed[[#This Row],[Acres]]*Seed[[#This Row],[Rate (per ac)]]", 16)],
            [60, 0.5, f("[@Acres]*Seed[[#This Row],[Rate (per ac)]]", null)],
            ["Total", "", f("SUBTOTAL(109,Seed[Bags])", null)],
          ],
          "Year's end": [
            [
              f("SUM(Seed[[Acres]:[Rate (per ac)]])", null),
              f("Price*SUM(Seed!C:C)", null),
              f("SUM(Bags)*Twice", null),
              f("SUMPRODUCT(--(Seed[Acres]>50),Seed[Rate (per ac)])", null),
            ],
          ],
        },
        {
          tables: [table("Seed", "A1:C4", ["Acres", "Rate (per ac)", "Bags"], 1)],
          names: [
            { name: "Price", sheet: null, refersTo: "250" },
            { name: "Bags", sheet: null, refersTo: "Seed!$C$2:$C$3" },
            { name: "Twice", sheet: 1, refersTo: "1+1" },
            { name: "Twice", sheet: null, refersTo: "3" },
          ],
        },
      );
    const { values, stale } = await new Recalculation(of(40), engineInNode).of(of(50), [at(0, 1, 0)]);
    const value = (sheet: number, row: number, column: number) =>
      values.find((each) => each.sheet === sheet && each.row === row && each.column === column)?.value;
    expect(value(0, 1, 2)).toBe(20);
    expect(value(0, 3, 2)).toBe((value(0, 2, 2) as number) + 20);
    expect(value(1, 0, 0)).toBeCloseTo(110.9, 12);
    expect(value(1, 0, 3)).toBe(0.5);
    expect(value(1, 0, 2)).toBe((value(0, 3, 2) as number) * 2);
    expect(value(1, 0, 1)).toBe((value(0, 3, 2) as number) * 2 * 250);
    expect(stale).toEqual([]);
  });

  it("leaves other workbooks, array formulas of several cells and days from 1904 as they are, and says when they may be old", async () => {
    const of = (a: number, dateSystem: "1900" | "1904" = "1904") =>
      workbook(
        {
          S: [
            [a, f("[1]Prices!A1*A1", 8), f("YEAR(A1)", 1904), f("A1+1", 2)],
            ["", 3, 3, ""],
          ],
        },
        { dateSystem },
      );
    const { values, stale } = await new Recalculation(of(1), engineInNode).of(of(2), [at(0, 0, 0)]);
    expect(values).toEqual([{ ...at(0, 0, 3), value: 3 }]);
    expect(stale).toEqual([at(0, 0, 1), at(0, 0, 2)]);

    const filled = (a: number): FormulaBook => {
      const book = workbook({ S: [[a, f("A1*{1,2}", 1), 2]] });
      return { ...book, formulas: book.formulas.map((cell) => ({ ...cell, fills: parseArea("B1:C1")! })) };
    };
    expect((await new Recalculation(filled(1), engineInNode).of(filled(5), [at(0, 0, 0)])).stale).toEqual([at(0, 0, 1), at(0, 0, 2)]);
  });

  it("tells errors, yes or no and texts apart", async () => {
    const of = (a: number) =>
      workbook({ S: [[a, "'quoted", { formula: "1/A1", value: 1 }, f("A1>0", true), f("B1&A1", "'quoted1"), f('IF(A1=0,"",A1)', 1)]] });
    const { values } = await new Recalculation(of(1), engineInNode).of(of(0), [at(0, 0, 0)]);
    expect(values.map(({ value }) => value)).toEqual([{ error: "#DIV/0!" }, false, "'quoted0", ""]);
  });
});
