import { describe, expect, it, vi } from "vitest";
import { decimal } from "../../../tests/support/paneSeason";
import { HostError, type WorkbookHost } from "../../host/workbookHost";
import type { WorkbookContent } from "../../workbook/cell";
import { serialOfDay } from "../../workbook/daySerial";
import { addPurchase } from "./addPurchase";

const headed = (name: string, headers: readonly string[]): WorkbookContent => ({
  dateSystem: "1900",
  ranges: new Map(),
  tables: [{ name, headers, rows: [], body: { sheet: name, row: 1, column: 0 } }],
});
const row = new Map<string, string | ReturnType<typeof decimal> | { day: string }>([
  ["Date", { day: "2031-04-20" }],
  ["Item", "Urea"],
  ["Quantity", decimal("10.5")],
  ["Unit", "lb"],
  ["Unit price", decimal("0.285")],
  ["Note", "=1+1"],
]);
const hostWith = (addRows: WorkbookHost["addRows"]) => ({ addRows }) as unknown as WorkbookHost;

describe("adding a purchase", () => {
  it("writes under the workbook's own table name and headings, whatever their capitals", async () => {
    const addRows = vi.fn<WorkbookHost["addRows"]>(() => Promise.resolve());
    const done = await addPurchase(hostWith(addRows), headed("PURCHASES", ["ITEM", "date", "quantity", "Unit", "unit_price", "note"]), row);
    expect(done).toEqual({ ok: true, value: [] });
    expect(addRows).toHaveBeenCalledWith("PURCHASES", [
      new Map<string, unknown>([
        ["date", 47958],
        ["ITEM", "Urea"],
        ["quantity", 10.5],
        ["Unit", "lb"],
        ["unit_price", 0.285],
        ["note", "=1+1"],
      ]),
    ]);
  });

  it("names what the table has no column for", async () => {
    const done = await addPurchase(
      hostWith(() => Promise.resolve()),
      headed("Purchases", ["Date", "Item", "Quantity", "Unit"]),
      row,
    );
    expect(done).toEqual({ ok: true, value: ["Unit price", "Note"] });
  });

  it("gives back what the host could not do", async () => {
    const refused = await addPurchase(
      hostWith(() => Promise.reject(new HostError("protected", "The sheet is protected."))),
      headed("Purchases", ["Item"]),
      row,
    );
    expect(refused).toMatchObject({ ok: false, failure: { what: "The sheet is protected." } });
  });

  it("makes the table with its first row where the workbook has none", async () => {
    const enterRows = vi.fn<WorkbookHost["enterRows"]>(() => Promise.resolve());
    expect(await addPurchase({ enterRows } as unknown as WorkbookHost, headed("Other", []), row)).toEqual({ ok: true, value: [] });
    const [[[made]]] = enterRows.mock.calls as unknown as [[Parameters<WorkbookHost["enterRows"]>[0]]];
    expect(made!.table.name).toBe("Purchases");
    expect(made!.rows[0]!.get("Item")).toBe("Urea");
  });

  it("does not swallow a fault of ours", async () => {
    await expect(
      addPurchase(
        hostWith(() => Promise.reject(new RangeError("ours"))),
        headed("Purchases", ["Item"]),
        row,
      ),
    ).rejects.toThrow("ours");
  });
});

describe("the serial number of a day", () => {
  // Microsoft's documentation of DATEVALUE gives 40777 for 22 August 2011 and DATE 39448 for 1 January 2008 in the 1900 system.
  it.each([
    ["2011-08-22", 40777],
    ["2008-01-01", 39448],
  ] as const)("of %s is %i", (day, serial) => {
    expect(serialOfDay(day, "1900")).toBe(serial);
  });
  it("is 1,462 less in the 1904 system", () => {
    expect(serialOfDay("2011-08-22", "1904")).toBe(40777 - 1462);
  });
});
