import { describe, expect, it, vi } from "vitest";
import { decimal } from "../../../tests/support/paneSeason";
import { HostError, type WorkbookHost } from "../../host/workbookHost";
import type { RawTable, WorkbookContent } from "../../workbook/cell";
import { addEntries } from "./addEntries";
import { enterTables } from "./enterTables";

const content = (...tables: readonly RawTable[]): WorkbookContent => ({ dateSystem: "1904", ranges: new Map(), tables });
const counts = (name: string, ...headers: readonly string[]): RawTable => ({
  name,
  headers,
  rows: [],
  body: { sheet: "S", row: 1, column: 0 },
});
const rows = [
  new Map<string, string | ReturnType<typeof decimal> | { day: string }>([
    ["Field", "Mill"],
    ["Date", { day: "2011-08-22" }],
    ["Plants", decimal("29.5")],
  ]),
  new Map([
    ["Field", "Mill"],
    ["Odd", "x"],
  ]),
];
function hostOf() {
  const addRows = vi.fn<WorkbookHost["addRows"]>(() => Promise.resolve());
  const enterRows = vi.fn<WorkbookHost["enterRows"]>(() => Promise.resolve());
  return { host: { addRows, enterRows } as unknown as WorkbookHost, addRows, enterRows };
}
const matches = {
  name: "Matches",
  headers: ["Table", "Range", "Column", "Heading"],
  rows: [["Stand counts", "A!A1:B9", "Field", "Where"]],
  body: { sheet: "M", row: 1, column: 0 },
};
const matched = {
  ...content(matches),
  ranges: new Map([["A!A1:B9", { name: "", headers: ["Where"], rows: [], body: { sheet: "A", row: 1, column: 0 } }]]),
};

describe("adding entries", () => {
  it("makes a table that is missing with all of them, in one step, and names what it has no column for", async () => {
    const { host, addRows, enterRows } = hostOf();
    expect(await addEntries(host, content(), "Stand counts", rows)).toEqual({ ok: true, value: ["Odd"] });
    expect(enterRows.mock.calls[0]![0].map(({ table: { name }, rows: entered }) => [name, ...entered])).toEqual([
      [
        // The 1904 system counts 1,462 days less than the 40777 that Microsoft's documentation of DATEVALUE gives.
        "Stand_counts",
        new Map<string, unknown>([
          ["Field", "Mill"],
          ["Date", 39315],
          ["Plants", 29.5],
        ]),
        new Map([["Field", "Mill"]]),
      ],
    ]);
    expect(addRows).not.toHaveBeenCalled();
  });

  it("adds all rows in one call to a table that is there", async () => {
    const { host, addRows, enterRows } = hostOf();
    await addEntries(host, content(counts("STANDCOUNTS", "field", "ODD")), "Stand counts", rows);
    expect(enterRows).not.toHaveBeenCalled();
    expect(addRows).toHaveBeenCalledExactlyOnceWith("STANDCOUNTS", [
      new Map([["field", "Mill"]]),
      new Map([
        ["field", "Mill"],
        ["ODD", "x"],
      ]),
    ]);
  });

  it("does not put a table of ours over a range that was matched", async () => {
    const { host, addRows, enterRows } = hostOf();
    expect(await addEntries(host, matched, "Stand counts", rows)).toMatchObject({
      ok: false,
      failure: { remedy: "Add the entries there.", again: false },
    });
    expect([addRows, enterRows].map((each) => each.mock.calls.length)).toEqual([0, 0]);
  });

  it("gives back what the host could not do, and no fault of ours", async () => {
    const { host, enterRows } = hostOf();
    enterRows.mockRejectedValueOnce(new HostError("protected", "The structure of this workbook is protected."));
    expect(await addEntries(host, content(), "Stand counts", rows)).toMatchObject({
      ok: false,
      failure: { written: "no", what: "The structure of this workbook is protected." },
    });
    enterRows.mockRejectedValueOnce(new RangeError("ours"));
    await expect(addEntries(host, content(), "Stand counts", rows)).rejects.toThrow("ours");
  });
});

describe("entering rows in several tables", () => {
  const entries = [
    { table: "Crops", rows: [new Map([["Crop", "Oats"]])] },
    { table: "Stand counts", rows },
  ];

  it("is one step, in tables that are there and in those that are made", async () => {
    const { host, enterRows } = hostOf();
    expect(await enterTables(host, content(counts("stand_counts", "Field", "Date", "Plants", "Odd")), entries)).toEqual({
      ok: true,
      value: undefined,
    });
    expect(enterRows.mock.calls.map(([asked]) => asked.map(({ table: { name } }) => name))).toEqual([["Crops", "stand_counts"]]);
  });

  it("writes nothing where one of them lacks a column, or is matched", async () => {
    const { host, enterRows } = hostOf();
    expect(await enterTables(host, content(counts("stand_counts", "Field", "Date")), entries)).toMatchObject({
      ok: false,
      failure: { what: "The table Stand counts has no column Plants, Odd, so nothing was written." },
    });
    expect(await enterTables(host, matched, entries)).toMatchObject({ ok: false, failure: { remedy: "Add the entries there." } });
    expect(enterRows).not.toHaveBeenCalled();
  });
});
