/** Values that a file stores for its formulas: what a program wrote that works nothing out, and what this one could not. */
import { describe, expect, it } from "vitest";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";
import { toFix } from "../../src/workbook/problem";
import { seasonReport } from "../../src/workbook/report";
import type { Cell } from "../../src/workbook/cell";
import { fileOf } from "../support/xlsx/fixtureFile";
import { entries, opened, place, sound } from "../support/xlsx/opened";
import type { Fixture } from "./fixture";

/** Ten bags and eight tons, each bill a formula: 10 × 615 + 8 × 400 = 6,150 + 3,200 = 9,350 USD. */
function bills(
  stored: readonly [Cell, Cell],
  { asks = false, formulas = ["=C2*615", "=C3*400"] }: { readonly asks?: boolean; readonly formulas?: readonly [string, string] } = {},
): Fixture {
  return {
    asksForCalculation: asks,
    sheets: [
      {
        name: "Crops",
        cells: [
          ["Crop", "Yield unit", "Expected price"],
          ["Corn", "bu", 4],
        ],
        tables: [{ name: "Crops", range: "A1:C2" }],
      },
      {
        name: "Fields",
        cells: [
          ["Field", "Crop", "Acres", "Yield goal"],
          ["Alder", "Corn", 100, 200],
        ],
        tables: [{ name: "Fields", range: "A1:D2" }],
      },
      {
        name: "Items",
        tables: [{ name: "Items", range: "A1:E3" }],
        cells: [
          ["Item", "Kind", "Pack unit", "Plan price per pack", "Charged"],
          ["Seed", "seed", "bag", 600, "by acres"],
          ["Lime", "fertilizer", "ton", 390, "by acres"],
        ],
      },
      {
        name: "Purchases",
        tables: [{ name: "Purchases", range: "A1:E3" }],
        formulas: { E2: formulas[0], E3: formulas[1] },
        cells: [
          ["Date", "Item", "Quantity", "Unit", "Amount"],
          [46_000, "Seed", 10, "bag", stored[0]],
          [46_001, "Lime", 8, "ton", stored[1]],
        ],
      },
    ],
  };
}
const engine = { engine: engineInNode };
async function counted(fixture: Fixture | Uint8Array) {
  const workbook = opened(fixture instanceof Uint8Array ? fixture : fileOf(fixture), engine);
  const { figures, problems } = seasonReport(await workbook.read());
  // What is bought is charged by acres: all of it on the one field of 100 acres.
  const paid = figures.crops[0]!.outlook.costPerArea.layers.operating.times("100").toNumber();
  return { workbook, paid, problems, told: problems.map(({ code, at }) => [code, at.row, at.column]) };
}

describe("a file that asks to be worked out as it is opened", () => {
  it.each([
    ["zeros", [0, 0]],
    ["nothing", ["", ""]],
    ["values of another year", [5000, 12]],
  ] as const)("counts what its formulas come to where it stores %s", async (_, stored) => {
    const { paid, told } = await counted(bills(stored, { asks: true }));
    expect([paid, told]).toEqual([9350, []]);
  });

  it("tells the cells that nobody can work out", async () => {
    const { told, problems } = await counted(bills([6150, 0], { asks: true, formulas: ["=FARMFUNCTION(C2)", "=C3*400"] }));
    expect(told).toEqual([["stale-value", 1, "Amount"]]);
    expect(toFix(problems)).toHaveLength(1);
  });
});

describe("a file that does not ask", () => {
  it("counts what bare arithmetic comes to where it stores zeros", async () => {
    const { paid, told } = await counted(bills([0, 0]));
    expect([paid, told]).toEqual([9350, []]);
  });

  it("counts what other formulas come to where its zeros are seen to say nothing, and tells those that nobody can work out", async () => {
    expect(await counted(bills([0, 0], { formulas: ["=C2*615", "=IF(C3>0,C3*400,0)"] }))).toMatchObject({ paid: 9350, told: [] });
    expect((await counted(bills([0, 0], { formulas: ["=C2*615", "=FARMFUNCTION(C3)"] }))).told).toEqual([["stale-value", 2, "Amount"]]);
  });

  it("tells a 0 that may be one, but is another value when it is worked out", async () => {
    const { paid, told } = await counted(bills([6150, 0], { formulas: ["=C2*615", "=IF(C3>0,C3*400,0)"] }));
    expect([paid, told]).toEqual([6150, [["stale-value", 2, "Amount"]]]);
  });

  it("counts its own value of a formula that comes to another, and tells both", async () => {
    const { paid, problems } = await counted(bills([6150, 3100], { formulas: ["=C2*615", "=IF(C3>0,C3*400,0)"] }));
    expect(paid).toBe(9250);
    expect(problems.map(({ code, found, like }) => [code, found, like])).toEqual([["value-differs", "3100", "3200"]]);
    expect(toFix(problems)).toEqual([]);
  });

  it("counts what bare arithmetic comes to where it stores another value, and tells both", async () => {
    const { paid, problems } = await counted(bills([6150, 3100]));
    expect(paid).toBe(9350);
    expect(problems.map(({ code, found, like }) => [code, found, like])).toEqual([["value-differs", "3200", "3100"]]);
  });

  it("is believed about arithmetic of areas, of texts and of functions, which has more than one value", async () => {
    for (const formula of ["=D3*400", "=ROUND(C3*400,0)", "=C3^2*50", "=SUM(C2:C3*400)-4000"]) {
      const { paid, told } = await counted(bills([6150, 3100], { formulas: ["=C2*615", formula] }));
      expect([formula, paid, told.map(([code]) => code)]).toEqual([formula, 9250, ["value-differs"]]);
    }
  });
});

describe("a value that could not be worked out", () => {
  const withPrice = (formula: string) => bills([6150, 3200], { formulas: ["=C2*615", formula] });
  const unworkable = withPrice("=FARMFUNCTION(C3)");

  it("is still told after saving and opening again, and no other", async () => {
    const { workbook } = await counted(unworkable);
    expect((await counted(workbook.save())).told).toEqual([]);
    workbook.setCells("Purchases", entries({ C3: 9 }));
    await workbook.settled();
    const again = await counted(sound(workbook));
    expect(again.told).toEqual([["stale-value", 2, "Amount"]]);
    again.workbook.setCells("Purchases", entries({ C2: 11 }));
    await again.workbook.settled();
    const third = await counted(sound(again.workbook));
    expect([third.paid, third.told]).toEqual([11 * 615 + 3200, [["stale-value", 2, "Amount"]]]);
    third.workbook.setCells("Purchases", entries({ E3: 3600 }));
    await third.workbook.settled();
    expect((await counted(sound(third.workbook))).told).toEqual([]);
  });

  it("is not told of what did not change: the engine's word is still not taken for it", async () => {
    const { workbook } = await counted(withPrice("=IF(C3>0,C3*401,0)"));
    workbook.setCells("Purchases", entries({ C2: 11 }));
    await workbook.settled();
    const again = await counted(sound(workbook));
    expect([again.paid, again.told]).toEqual([11 * 615 + 3200, [["value-differs", 2, "Amount"]]]);
  });

  it("is told of all formulas that nobody can work out once another program has written the file", async () => {
    const { workbook } = await counted(unworkable);
    workbook.setCells("Purchases", entries({ C2: 11 }));
    await workbook.settled();
    const parts = new Map(workbook.parts());
    const { pack } = await import("../../src/host/embedded/package/zip");
    const part = [...parts].find(([, bytes]) => Buffer.from(bytes).toString().includes("FARMFUNCTION"))![0];
    const written = pack(parts.set(part, Buffer.from(Buffer.from(parts.get(part)!).toString().replace("<v>8</v>", "<v>20</v>"))));
    expect((await counted(written)).told).toEqual([["stale-value", 2, "Amount"]]);
  });

  it("is told of a total that reads it, and the total is worked out again once the value is entered", async () => {
    const fixture = withPrice("=G4/1");
    const sheets = fixture.sheets.map((sheet) =>
      sheet.name === "Purchases"
        ? { ...sheet, cells: [...sheet.cells, ["", "", "", "", "", "", 3200]], formulas: { ...sheet.formulas, G4: "=FARMFUNCTION(C3)" } }
        : sheet,
    );
    const { workbook } = await counted({ ...fixture, sheets });
    workbook.setCells("Purchases", entries({ C3: 9 }));
    await workbook.settled();
    const again = await counted(sound(workbook));
    expect(again.told).toEqual([["stale-value", 2, "Amount"]]);
    again.workbook.setCells("Purchases", entries({ G4: 3600 }));
    await again.workbook.settled();
    expect(again.workbook.cellAt("Purchases", place("E3"))).toMatchObject({ value: 3600, stale: false });
  });
});
