import { describe, expect, it, vi } from "vitest";
import type { WorkbookHost } from "../../host/workbookHost";
import type { RawTable, WorkbookContent } from "../../workbook/cell";
import { keepSeason } from "./keepSeason";

const table: RawTable = {
  name: "Past_seasons",
  headers: ["Season", "Field", "Crop", "Acres", "Yield", "Planted"],
  rows: [
    [2030, "Alder", "Corn", 100, 180, ""],
    ["2031", "alder", "corn", 100, 150, ""],
  ],
  body: { sheet: "Past seasons", row: 1, column: 0 },
};
function hostOf(tables: readonly RawTable[], dateSystem: WorkbookContent["dateSystem"] = "1900") {
  const host = {
    read: () => Promise.resolve({ dateSystem, tables, ranges: new Map() }),
    changeCells: vi.fn<WorkbookHost["changeCells"]>(() => Promise.resolve()),
    addRows: vi.fn<WorkbookHost["addRows"]>(() => Promise.resolve()),
    enterRows: vi.fn<WorkbookHost["enterRows"]>(() => Promise.resolve()),
  };
  return { ...host, host: host as unknown as WorkbookHost };
}
const row = (field: string, bushels: number) =>
  new Map<string, string | number>([
    ["Season", 2031],
    ["Field", field],
    ["Crop", "Corn"],
    ["Acres", 100],
    ["Yield", bushels],
    ["Planted", 47976],
  ]);

describe("keeping a season", () => {
  it("gives a row that is there the figures of today, and adds the others", async () => {
    const { host, changeCells, addRows, enterRows } = hostOf([table]);
    expect(await keepSeason(host, { rows: [row("Alder", 190), row("Birch", 170)] })).toEqual({
      ok: true,
      value: { added: 1, replaced: 1, lost: [] },
    });
    expect(changeCells.mock.calls[0]![0].map(({ row: at, column, value }) => [at, column, value])).toEqual([
      [2, "Season", 2031],
      [2, "Field", "Alder"],
      [2, "Crop", "Corn"],
      [2, "Yield", 190],
      [2, "Planted", 47976],
    ]);
    expect(addRows.mock.calls[0]![1].map((cells) => [cells.get("Field"), cells.get("Planted")])).toEqual([["Birch", 47976]]);
    expect(enterRows).not.toHaveBeenCalled();
  });

  it("changes nothing where everything is as it was, and makes the table where there is none", async () => {
    const same = hostOf([{ ...table, rows: [[2031, "Alder", "Corn", 100, 190, 47976]] }]);
    await keepSeason(same.host, { rows: [row("Alder", 190)] });
    expect(same.changeCells).not.toHaveBeenCalled();
    const none = hostOf([]);
    await keepSeason(none.host, { rows: [row("Alder", 190)] });
    expect(none.enterRows.mock.calls[0]![0].map(({ table: { name }, rows }) => [name, rows.length])).toEqual([["Past_seasons", 1]]);
  });

  it("counts days as the workbook does", async () => {
    const { host, changeCells, addRows } = hostOf([table], "1904");
    await keepSeason(host, { rows: [row("Alder", 190), row("Birch", 170)] });
    expect(changeCells.mock.calls[0]![0].find(({ column }) => column === "Planted")!.value).toBe(47976 - 1462);
    expect(addRows.mock.calls[0]![1][0]!.get("Planted")).toBe(47976 - 1462);
  });
});
