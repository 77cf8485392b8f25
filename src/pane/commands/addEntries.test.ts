import { describe, expect, it, vi } from "vitest";
import { decimal } from "../../../tests/support/paneSeason";
import { HostError, type WorkbookHost } from "../../host/workbookHost";
import type { RawTable, WorkbookContent } from "../../workbook/cell";
import { addEntries } from "./addEntries";

const content = (...tables: readonly RawTable[]): WorkbookContent => ({ dateSystem: "1904", ranges: new Map(), tables });
const rows = [
  new Map<string, string | ReturnType<typeof decimal> | { day: string }>([["Field", "Mill"], ["Date", { day: "2011-08-22" }], ["Plants", decimal("29.5")]]),
  new Map([["Field", "Mill"], ["Odd", "x"]]),
];
function hostOf() {
  const addRows = vi.fn<WorkbookHost["addRows"]>(() => Promise.resolve());
  const makeTables = vi.fn<WorkbookHost["makeTables"]>(() => Promise.resolve(["Stand_counts"]));
  return { host: { addRows, makeTables } as unknown as WorkbookHost, addRows, makeTables };
}

describe("adding entries", () => {
  it("makes a table that is missing, the first of them as its first row", async () => {
    const { host, addRows, makeTables } = hostOf();
    expect(await addEntries(host, content(), "Stand counts", rows)).toEqual({ ok: true, value: ["Odd"] });
    const made = makeTables.mock.calls[0]![0][0]!;
    // The 1904 system counts 1,462 days less than the 40777 that Microsoft's documentation of DATEVALUE gives.
    expect([made.name, made.rows]).toEqual(["Stand_counts", [["Mill", 39315, "", "", "", 29.5, "", ""]]]);
    expect(addRows).toHaveBeenCalledWith("Stand_counts", [new Map([["Field", "Mill"]])]);
  });

  it("adds all rows in one call to a table that is there", async () => {
    const { host, addRows, makeTables } = hostOf();
    await addEntries(host, content({ name: "STANDCOUNTS", headers: ["field", "ODD"], rows: [], body: { sheet: "S", row: 1, column: 0 } }), "Stand counts", rows);
    expect(makeTables).not.toHaveBeenCalled();
    expect(addRows).toHaveBeenCalledExactlyOnceWith("STANDCOUNTS", [new Map([["field", "Mill"]]), new Map([["field", "Mill"], ["ODD", "x"]])]);
  });

  it("does not put a table of ours over a range that was matched", async () => {
    const { host, makeTables } = hostOf();
    const matches = { name: "Matches", headers: ["Table", "Range", "Column", "Heading"], rows: [["Stand counts", "A!A1:B9", "Field", "Where"]], body: { sheet: "M", row: 1, column: 0 } };
    const matched = { ...content(matches), ranges: new Map([["A!A1:B9", { name: "", headers: ["Where"], rows: [], body: { sheet: "A", row: 1, column: 0 } }]]) };
    expect(await addEntries(host, matched, "Stand counts", rows)).toMatchObject({ ok: false, failure: { remedy: "Add the rows there." } });
    expect(makeTables).not.toHaveBeenCalled();
  });

  it("adds all rows where somebody else has made the table meanwhile", async () => {
    const { host, addRows, makeTables } = hostOf();
    makeTables.mockResolvedValueOnce([]);
    await addEntries(host, content(), "Stand counts", rows);
    expect(addRows.mock.calls[0]![1].map((row) => row.get("Plants"))).toEqual([29.5, undefined]);
  });

  it("says that the first row is there where only the others were refused", async () => {
    const { host, addRows } = hostOf();
    addRows.mockRejectedValueOnce(new HostError("protected", "The sheet is protected."));
    expect(await addEntries(host, content(), "Stand counts", rows)).toMatchObject({ ok: false, failure: { written: "partly", what: "The sheet is protected. The new table Stand_counts has the first row already: delete it there before you try again." } });
  });
});
