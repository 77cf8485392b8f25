import { describe, expect, it } from "vitest";
import { openExcel } from "../../../tests/support/officeBridge/openExcel";
import type { Fixture } from "../../../tests/host/fixture";
import { fileOf } from "../../../tests/support/xlsx/fixtureFile";
import { opened } from "../../../tests/support/xlsx/opened";
import { seasonReport } from "../../workbook/report";
import { readTableAs } from "./readTableAs";
import { takeRowsIn } from "./takeRowsIn";

const crops = {
  name: "Crops",
  cells: [
    ["Crop", "Yield unit", "Expected price"],
    ["Corn", "bu", 4],
  ],
  tables: [{ name: "Crops", range: "A1:C2" }],
};
const fields = {
  name: "Fields",
  cells: [
    ["Field", "Crop", "Acres", "Yield goal"],
    ["Alder", "Corn", 100, 200],
  ],
  tables: [{ name: "Fields", range: "A1:D2" }],
};
const costs = (name: string, kind = "Kind") => ({
  name: "Costs",
  cells: [
    ["Item", kind, "Amount", "Basis"],
    ["Office", "overhead", 900, "whole farm"],
    ["Fees", "overhead", 8100, "whole farm"],
  ],
  tables: [{ name, range: "A1:D2" }],
});

describe.each([
  ["the embedded workbook", (fixture: Fixture) => opened(fileOf(fixture))],
  ["Excel", (fixture: Fixture) => openExcel(fixture).host],
])("a table that is almost named as ours, in %s", (_name, open) => {
  const costsOf = async (host: ReturnType<typeof open>) => {
    const { season, problems } = seasonReport(await host.read());
    return { counted: season.otherCosts.map(({ item }) => item), told: problems.map(({ code }) => code) };
  };

  it("is read as ours by a match that names it, and grows with its rows", async () => {
    const host = open({ sheets: [crops, fields, costs("OtherCost_2026")] });
    expect(await costsOf(host)).toMatchObject({ counted: [], told: ["cost-none", "table-almost"] });
    expect(await readTableAs(host, "Other costs", "OtherCost_2026")).toEqual({ ok: true, value: undefined });
    expect(await costsOf(host)).toEqual({ counted: ["Office"], told: ["rows-below"] });
    expect(await takeRowsIn(host, "Other costs")).toEqual({ ok: true, value: 1 });
    expect(await costsOf(host)).toEqual({ counted: ["Office", "Fees"], told: [] });
  });

  it("is not matched by half, and never beside ours", async () => {
    const half = open({ sheets: [crops, fields, costs("OtherCost", "Sort")] });
    expect(await readTableAs(half, "Other costs", "OtherCost")).toMatchObject({
      ok: false,
      failure: { what: "Match Kind as well: an entry of Other costs needs it." },
    });
    const both = open({ sheets: [crops, fields, costs("Other_costs"), { ...costs("OtherCost"), name: "Mine" }] });
    expect(await readTableAs(both, "Other costs", "OtherCost")).toMatchObject({ ok: false });
    expect(await costsOf(both)).toMatchObject({ counted: ["Office"] });
  });
});

it("a match that names a table beside ours counts ours alone, and is told", async () => {
  const matches = {
    name: "Matches",
    cells: [
      ["Table", "Range", "Column", "Heading"],
      ["Other costs", "Ledger", "Amount", "Amount"],
    ],
    tables: [{ name: "Matches", range: "A1:D2" }],
  };
  const host = openExcel({ sheets: [crops, fields, costs("Other_costs"), { ...costs("Ledger"), name: "Mine" }, matches] }).host;
  const { season, problems } = seasonReport(await host.read());
  expect([season.otherCosts.length, problems.map(({ code }) => code)]).toEqual([1, ["table-twice", "rows-below"]]);
});
