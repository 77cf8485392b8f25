import { describe, expect, it } from "vitest";
import { openExcel } from "../../../tests/support/officeBridge/openExcel";
import { untaken } from "../../../tests/host/contractWorkbooks";
import { fileOf } from "../../../tests/support/xlsx/fixtureFile";
import { opened } from "../../../tests/support/xlsx/opened";
import { takeRowsIn } from "./takeRowsIn";

/** Plants are needed in a count, and its date: both stand in the row below the range. */
const counts = {
  sheets: [
    {
      name: "My counts",
      cells: [["", "Where", "Day", "Stood"], ["", "Creek", "2031-05-20", 28], [], ["", "Hill", "2031-05-20", 31], ["", "as of May"]],
    },
    {
      name: "Matches",
      cells: [
        ["Table", "Range", "Column", "Heading"],
        ["Stand counts", "'My counts'!$B$1:D2", "Field", "Where"],
        ["Stand counts", "'My counts'!$B$1:D2", "Date", "Day"],
        ["Stand counts", "'My counts'!$B$1:D2", "Plants", "Stood"],
      ],
      tables: [{ name: "Matches", range: "A1:D4" }],
    },
  ],
};

describe.each([
  ["the embedded workbook", (fixture: typeof counts | typeof untaken) => opened(fileOf(fixture))],
  ["Excel", (fixture: typeof counts | typeof untaken) => openExcel(fixture).host],
])("taking rows in, in %s", (_name, open) => {
  it("draws the table over the entries below it, and answers how many", async () => {
    const host = open(untaken);
    expect(await takeRowsIn(host, "Fields")).toEqual({ ok: true, value: 1 });
    expect((await host.read()).tables.find(({ name }) => name === "Fields")!.rows).toEqual([
      ["Creek", "Soybeans", 81],
      ["West", "Corn", 40],
    ]);
    // What is left below has no crop, so that it may be something else.
    expect(await takeRowsIn(host, "Fields")).toMatchObject({ ok: false, failure: { what: "No entries stand below Fields any more." } });
  });

  it("makes the matched range longer in every row that names it", async () => {
    const host = open(counts);
    expect(await takeRowsIn(host, "Stand counts")).toEqual({ ok: true, value: 1 });
    const { tables, ranges } = await host.read();
    expect(tables[0]!.rows.map((row) => row[1])).toEqual(Array(3).fill("'My counts'!B1:D4"));
    expect(ranges.get("'My counts'!B1:D4")!.rows).toEqual([
      ["Creek", "2031-05-20", 28],
      ["", "", ""],
      ["Hill", "2031-05-20", 31],
    ]);
  });
});

describe("taking rows in on the desk", () => {
  it("is one step to undo", async () => {
    const workbook = opened(fileOf(untaken));
    const before = (await workbook.read()).tables[0];
    await takeRowsIn(workbook, "Fields");
    workbook.undo();
    expect((await workbook.read()).tables[0]).toEqual(before);
    expect(workbook.canUndo).toBe(false);
  });
});
