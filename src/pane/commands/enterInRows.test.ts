import { describe, expect, it } from "vitest";
import { memoryHost } from "../../../tests/support/memoryHost";
import { HostError, type NewColumn } from "../../host/workbookHost";
import type { RawTable } from "../../workbook/cell";
import { changeColumns } from "../../workbook/columns/changes";
import { enterInRows } from "./enterInRows";

const changes: RawTable = {
  name: "CHANGES",
  headers: ["change", "Item", "COUNTED IN"],
  body: { sheet: "Changes", row: 1, column: 0 },
  rows: [
    ["Wheels", "Wheels", "no"],
    ["Fewer seeds", "Seed", "yes"],
    [" wheels ", "Upkeep", ""],
  ],
};
const hostWith = (table: RawTable) => memoryHost({ dateSystem: "1900", tables: [table], ranges: new Map() });
const { change, countedIn } = changeColumns.columns;
const on = { table: "Changes", named: change, name: "Wheels", column: countedIn, value: "yes" } as const;
const field = { heading: "Field" };
const loss = { heading: "Uniformity loss %" };

describe("entering a value in the rows of one name", () => {
  it("changes that column of all of them and nothing else", async () => {
    const host = hostWith(changes);
    expect(await enterInRows(host, on)).toEqual({ ok: true, value: 2 });
    expect(host.table("CHANGES")).toEqual([
      ["Wheels", "Wheels", "yes"],
      ["Fewer seeds", "Seed", "yes"],
      [" wheels ", "Upkeep", "yes"],
    ]);
  });

  it("enters into the column with an older heading where the table has that, and beside today's heading into today's", async () => {
    const old = hostWith({ ...changes, headers: ["Change", "Item", "active"] });
    expect(await enterInRows(old, on)).toEqual({ ok: true, value: 2 });
    expect(old.table("CHANGES").map(([, , says]) => says)).toEqual(["yes", "yes", "yes"]);
    const both = hostWith({ ...changes, headers: ["Change", "Active", "Counted in"] });
    expect(await enterInRows(both, on)).toEqual({ ok: true, value: 2 });
    expect(both.table("CHANGES")).toEqual([
      ["Wheels", "Wheels", "yes"],
      ["Fewer seeds", "Seed", "yes"],
      [" wheels ", "Upkeep", "yes"],
    ]);
  });

  it("finds a heading by what it says, its percent sign aside", async () => {
    const host = hostWith({ ...changes, name: "Fields", headers: ["Field", "Acres", "Uniformity loss"] });
    expect(await enterInRows(host, { table: "Fields", named: field, name: "Fewer Seeds", column: loss, value: 0.05 })).toEqual({
      ok: true,
      value: 1,
    });
    expect(host.table("Fields")[1]).toEqual(["Fewer seeds", "Seed", 0.05]);
  });

  it("says what is missing and what to do", async () => {
    const without = await enterInRows(hostWith({ ...changes, headers: ["Change", "Item", "Remark"] }), on);
    expect(without).toEqual({
      ok: false,
      failure: {
        what: "The table CHANGES has no column Counted in.",
        remedy: "Add a column with that heading to the table, then try again.",
        again: true,
      },
      lacks: "CHANGES",
    });
    expect(await enterInRows(hostWith({ ...changes, name: "Mine" }), on)).toMatchObject({ ok: false, failure: { again: false } });
    expect(await enterInRows(hostWith(changes), { ...on, name: "Rent" })).toMatchObject({
      ok: false,
      failure: { what: "The table CHANGES no longer has an entry for Rent." },
    });
  });

  it("adds the column that is missing, with the look that it has in a table of ours, when it is asked to", async () => {
    const host = hostWith({ ...changes, name: "fields", headers: ["Field", "Item", "Remark"] });
    const asked: NewColumn[] = [];
    const { addColumn } = host;
    host.addColumn = (column) => (asked.push(column), addColumn(column));
    const entry = { table: "Fields", named: field, name: "Wheels", column: loss, value: 0.05 } as const;
    expect(await enterInRows(host, entry, true)).toEqual({ ok: true, value: 2 });
    expect(asked).toEqual([
      {
        table: "fields",
        heading: "Uniformity loss %",
        numberFormat: "0.0#%",
        cells: new Map([
          [1, 0.05],
          [3, 0.05],
        ]),
      },
    ]);
    expect(await enterInRows(host, { ...entry, value: 0.04 }, true)).toEqual({ ok: true, value: 2 });
    expect(host.table("fields").map((row) => row[3])).toEqual([0.04, "", 0.04]);
    expect(await enterInRows(hostWith({ ...changes, headers: ["Item", "Remark", "Note"] }), on, true)).toMatchObject({
      ok: false,
      failure: { what: "The table CHANGES has no column Change." },
    });
  });

  it("gives back what the host could not do, and no fault of ours", async () => {
    const host = hostWith(changes);
    host.refusals.changeCells.push(
      new HostError("formula", "CHANGES, entry 1, COUNTED IN holds a formula, which is not written over."),
      new RangeError("ours") as HostError,
    );
    expect(await enterInRows(host, on)).toMatchObject({
      ok: false,
      failure: { remedy: "Change the formula in the cell itself, or clear the cell first." },
    });
    await expect(enterInRows(host, on)).rejects.toThrow("ours");
    expect(host.table("CHANGES")).toEqual(changes.rows);
  });
});
