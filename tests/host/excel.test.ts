/** The contract of a workbook host, and what is Excel's own, through the real Office library. */
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/host/excel/attempt";
import { knownCodes } from "../../src/host/excel/refusal";
import { HostError, type HostState, type WorkbookHost } from "../../src/host/workbookHost";
import type { Cell } from "../../src/workbook/cell";
import type { InputTable } from "../../src/workbook/inputTable";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { waitsForCell, writes } from "../support/officeBridge/bridge";
import { HostRefusal } from "../support/officeBridge/hostRefusal";
import { openExcel } from "../support/officeBridge/openExcel";
import { farm, fields, ownCounts, untaken } from "./contractWorkbooks";
import type { Fixture, FixtureSheet } from "./fixture";
import { describeWorkbookHost } from "./workbookHost.contract";

describeWorkbookHost("Excel", async (fixture) => openExcel(fixture));

/** Tables of the grower's own, which a table Season names, so that they are read. */
const manyTables = (count: number, rows: number): Fixture => ({
  sheets: [seasonNaming(Array.from({ length: count }, (_, index) => `Table_${index + 1}`)), ...ownTables(count, rows)],
});
const seasonNaming = (names: readonly string[]): FixtureSheet => ({
  name: "Season",
  cells: [
    ["Setting", "Value"],
    ["Stand response", names.join("; ")],
  ],
  tables: [{ name: "Season", range: "A1:B2" }],
});
const ownTables = (count: number, rows: number): readonly FixtureSheet[] =>
  Array.from({ length: count }, (_, index) => ({
    name: `Sheet${index + 1}`,
    cells: [["Item", "Amount"], ...Array.from({ length: rows }, (_row, row) => [`item ${row}`, row])],
    tables: [{ name: `Table_${index + 1}`, range: `A1:B${rows + 1}` }],
  }));

const report = (name: string): ResultSheet => ({
  name,
  columns: [20, 12],
  rows: [[{ value: "Cost per acre", style: { bold: true } }], [{ value: "Seed" }, { value: 118.25 }]],
  headingRows: 1,
  page: { orientation: "portrait", paper: "a4", pagesTall: 2, footer: "Hill & Dale" },
  charts: [],
});

const kinds = Array.from({ length: 30 }, (_, index) => `kind of cost ${index + 1}`);
const otherCosts: InputTable = {
  name: "Other_costs",
  sheet: "Other costs",
  columns: [
    { heading: "Kind", width: 18, choices: kinds, hint: "What the money is for.", required: true },
    { heading: "Amount", width: 12, numberFormat: "#,##0.00", hint: "In dollars.", required: true },
  ],
  rows: [["kind of cost 1", 1200]],
};

const writingTrips = (opened: ReturnType<typeof openExcel>) => opened.bridge.trips.filter(({ flags }) => flags & writes);

const refusalFrom = async (doing: Promise<unknown>): Promise<HostError> => {
  const error: unknown = await doing.then(
    () => null,
    (refused: unknown) => refused,
  );
  expect(error).toBeInstanceOf(HostError);
  return error as HostError;
};

describe("round trips to Excel", () => {
  it.each([1, 50])("are two to read a workbook of %i tables", async (count) => {
    const { host, bridge } = openExcel(manyTables(count, 20));
    expect((await host.read()).tables).toHaveLength(count + 1);
    expect(bridge.trips).toHaveLength(2);
  });

  it("are three where rows stand below a table, of which no more is asked than is in use, and of other tables only the place", async () => {
    const [first] = ownTables(1, 5000);
    // The grower's own table stands below ours and is not read; between them is one row.
    const below = {
      ...farm.sheets[0]!,
      cells: [...farm.sheets[0]!.cells, ["West", "Corn", 40], [], ...first!.cells],
      tables: [
        { name: "Fields", range: "A1:C3" },
        { name: "Ledger", range: "A6:B5006" },
      ],
    };
    const { host, bridge } = openExcel({ sheets: [below] });
    const { tables, others } = await host.read();
    expect([tables[0]!.below, others]).toEqual([[{ by: 1, cells: ["West", "Corn", 40] }], ["Ledger"]]);
    expect(bridge.trips).toHaveLength(3);
    expect(bridge.trips.reduce((sum, { answerBytes }) => sum + answerBytes, 0)).toBeLessThan(20_000);
  });

  it("change nothing, in Excel's eyes, when the workbook is read again", async () => {
    const opened = openExcel(farm);
    await opened.host.read();
    opened.bridge.trips.length = 0;
    await opened.host.read();
    expect(opened.bridge.trips).toHaveLength(2);
    expect(writingTrips(opened)).toEqual([]);
  });

  it("are one that writes, after one that reads, for three sheets, new or again", async () => {
    const opened = openExcel(farm);
    const sheets = ["Cost per acre", "Break-even", "Stand"].map(report);
    for (const _time of ["new", "again"]) {
      opened.bridge.trips.length = 0;
      await opened.host.write(sheets);
      expect(opened.bridge.trips).toHaveLength(2);
      expect(writingTrips(opened)).toHaveLength(1);
    }
  });

  it("are one that writes for new tables, one for new rows and one for changed cells", async () => {
    const opened = openExcel(farm);
    await opened.host.makeTables([otherCosts]);
    expect(writingTrips(opened)).toHaveLength(1);
    opened.bridge.trips.length = 0;
    await opened.host.addRows("Fields", [new Map([["Field", "West"]]), new Map([["Field", "East"]])]);
    expect(writingTrips(opened)).toHaveLength(1);
    opened.bridge.trips.length = 0;
    await opened.host.changeCells([
      { table: "Fields", row: 1, column: "Acres", value: 1 },
      { table: "Purchases", row: 1, column: "Paid", value: false },
    ]);
    expect(writingTrips(opened)).toHaveLength(1);
  });

  it("all wait for a cell that is being typed into", async () => {
    const { host, bridge } = openExcel(farm);
    await host.read();
    await host.write([report("Stand")]);
    await host.makeTables([otherCosts]);
    await host.addRows("Fields", [new Map([["Field", "West"]])]);
    await host.growTable("Fields", 1);
    await host.changeCells([{ table: "Fields", row: 1, column: "Acres", value: 1 }]);
    await host.select({ sheet: "Fields", row: 1, column: 1 });
    await host.selection();
    await (
      await host.onChanged(() => undefined)
    )();
    expect(bridge.trips.length).toBeGreaterThan(8);
    expect(bridge.trips.filter(({ flags }) => (flags & waitsForCell) === 0)).toEqual([]);
  });

  // "Undo support with the Excel JavaScript API", Microsoft Learn, table "Unsupported APIs" (read in the edition of May 2025).
  it("use nothing that takes the user's undo steps away", async () => {
    const { host, bridge } = openExcel(farm);
    for (const _time of ["new", "again"]) await host.write([{ ...report("Stand"), charts: [chart, { ...chart, startsAtZero: true }] }]);
    await host.makeTables([otherCosts]);
    await host.addRows("Fields", [new Map([["Field", "West"]])]);
    const used = new Set(bridge.trips.flatMap(({ members }) => members));
    expect(used).toContain("RangeObject.Formulas=");
    expect(used).toContain("ChartValueAxis.Minimum=");
    for (const forbidden of [
      "Worksheet.Delete",
      "Worksheet.Copy",
      "Worksheet.Name=",
      "Worksheet.Position=",
      "Worksheet.Visibility=",
      "Worksheet.StandardWidth=",
      "NamedItem.Comment=",
      "Protection.Protect",
      "Protection.Unprotect",
      "WorkbookObject.Save",
    ])
      expect(used).not.toContain(forbidden);
  });
});

const chart = {
  kind: "line",
  title: "Price",
  categories: "A1:A2",
  series: [{ name: "Net", values: "B1:B2" }],
  from: "D2",
  to: "H9",
} as const;

describe("an Excel with ExcelApi 1.7 only", () => {
  it("is refused newer members by the library itself, so that the tests below mean something", async () => {
    const { bridge } = openExcel(farm);
    bridge.excelApi = "1.7";
    await expect(Excel.run(async (context) => context.workbook.worksheets.getItem("Fields").pageLayout.load("zoom"))).rejects.toMatchObject(
      { code: "ApiNotFound", message: expect.stringContaining("ExcelApi 1.9") as string },
    );
  });

  it("reads, writes, makes tables, adds rows and tells changes, only without page setup and lists", async () => {
    const opened = openExcel(farm);
    const { host, bridge, snapshot, type } = opened;
    bridge.excelApi = "1.7";
    let calls = 0;
    const stop = await host.onChanged(() => (calls += 1));
    await host.read();
    await host.write([{ ...report("Stand"), charts: [chart] }]);
    await host.makeTables([otherCosts]);
    await host.addRows("Fields", [new Map([["Field", "West"]])]);
    await host.changeCells([{ table: "Fields", row: 1, column: "Acres", value: 1 }]);
    await host.select({ sheet: "Stand", row: 0, column: 0 });
    await host.selection();
    const stand = (await snapshot()).sheets.find(({ name }) => name === "Stand");
    expect(stand).toMatchObject({ frozenRows: 1, titleRows: null, charts: [{ title: "Price", series: 1 }] });
    expect((await snapshot()).sheets.at(-1)?.choices).toEqual([]);
    await new Promise((resolve) => setTimeout(resolve, 300));
    const before = calls;
    await type("Fields", "C2", 9);
    await expect.poll(() => calls).toBe(before + 1);
    expect(bridge.watched.size).toBe(2);
    await stop();
    expect(bridge.watched.size).toBe(0);
  });
});

describe("a cell that is being typed into", () => {
  it("is waited for", async () => {
    const { host, bridge } = openExcel(farm);
    bridge.editing = true;
    const reading = host.read();
    await new Promise((resolve) => setTimeout(resolve, 50));
    bridge.leaveCell();
    expect((await reading).tables).toHaveLength(2);
  });

  it("is mentioned when the wait is too long, and what was given up before writing is never written", async () => {
    const { host, bridge, snapshot } = openExcel(farm, { seconds: 0.1 });
    bridge.editing = true;
    const error = await refusalFrom(host.write([report("Stand")]));
    expect(error.reason).toBe("busy");
    expect(error.message).toMatch(/typing in a cell, press Enter or Esc/);
    expect(error.written).toBe("no");
    bridge.leaveCell();
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect((await snapshot()).sheets.map(({ name }) => name)).not.toContain("Stand");
  });
});

describe("an Excel that does not answer", () => {
  it("is given up after the time limit", async () => {
    const { host, bridge } = openExcel(farm, { seconds: 0.1 });
    bridge.silent = true;
    expect((await refusalFrom(host.read())).reason).toBe("busy");
  });
});

describe("tables that nobody knows", () => {
  it("are not read, only named; those that Season names and those that are nearly named as ours are", async () => {
    const own = ownTables(3, 4);
    const nearly = { ...farm.sheets[0]!, name: "Other", tables: [{ name: "Fields_2031", range: "A1:C3" }] };
    const { host, bridge } = openExcel({ sheets: [...farm.sheets, seasonNaming(["table_2"]), nearly, ...own] });
    const { tables, others } = await host.read();
    expect(tables.map(({ name }) => name)).toEqual(["Fields", "Purchases", "Season", "Fields_2031", "Table_2"]);
    expect(others).toEqual(["Table_1", "Table_3"]);
    expect(bridge.trips).toHaveLength(2);
  });

  it("cost nothing, however large they are", async () => {
    const answer = async (rows: number) => {
      const { host, bridge } = openExcel({ sheets: [...farm.sheets, ...ownTables(2, rows)] });
      await host.read();
      return bridge.trips.reduce((sum, { answerBytes }) => sum + answerBytes, 0);
    };
    expect(await answer(5000)).toBe(await answer(1));
  });

  it("are read all the same where a range of the grower's own stands for Season, which may name them", async () => {
    const { host } = openExcel({ sheets: [...ownCounts.sheets, ...ownTables(1, 2)] });
    expect((await host.read()).tables.map(({ name }) => name)).toContain("Table_1");
  });
});

describe("one table that cannot be read", () => {
  it("is named with the reason, and blinds nothing else", async () => {
    const { host, bridge, workbook } = openExcel({ sheets: [...farm.sheets, ...manyTables(1, 3).sheets] });
    workbook.unreadable.add("Purchases");
    const { tables, unreadable } = await host.read();
    expect(tables.map(({ name }) => name)).toEqual(["Fields", "Season", "Table_1"]);
    expect(unreadable).toEqual([{ name: "Purchases", why: expect.stringMatching(/Excel met a fault of its own/) as string }]);
    expect(bridge.requests).toBe(2 + 4);
    workbook.unreadable.clear();
    expect(await host.read()).not.toHaveProperty("unreadable");
  });

  it("is not told of where Excel as a whole is busy", async () => {
    const { host, bridge } = openExcel(farm);
    bridge.faultOf = (request) => (request === 1 ? { how: "refused", code: "HostIsBusy" } : null);
    expect((await refusalFrom(host.read())).reason).toBe("busy");
    expect(bridge.requests).toBe(2);
  });
});

describe("a workbook that is too big for one answer", () => {
  it("is read in pieces, to the same content", async () => {
    const big = { sheets: [...manyTables(3, 2000).sheets, ...farm.sheets] };
    const whole = await openExcel(big).host.read();
    const { host, bridge } = openExcel(big);
    bridge.answerLimit = 40_000;
    expect(await host.read()).toEqual(whole);
    expect(bridge.trips.length).toBeGreaterThan(4);
  });

  it("is given up in words, for the one table of which not even a single row gets through", async () => {
    const cells = [
      ["Item", "Note"],
      ["Seed", "x".repeat(5000)],
    ];
    const { host, bridge } = openExcel({ sheets: [...farm.sheets, { name: "Items", cells, tables: [{ name: "Items", range: "A1:B2" }] }] });
    bridge.answerLimit = 4000;
    const { tables, unreadable } = await host.read();
    expect(tables.map(({ name }) => name)).toEqual(["Fields", "Purchases"]);
    expect(unreadable).toEqual([{ name: "Items", why: expect.stringMatching(/5 MB/) as string }]);
  });
});

describe("what Excel refuses", () => {
  it.each([
    ["AccessDenied", "protected"],
    ["InvalidOperationInCellEditMode", "busy"],
    ["ItemNotFound", "missing"],
    ["ApiNotFound", "unsupported"],
    ["InsertDeleteConflict", "failed"],
    ["SomethingNew", "failed"],
  ] as const)("%s is told as %s, with the library's error as its cause", async (code, reason) => {
    const { host, bridge } = openExcel(farm);
    bridge.refusesNext = new HostRefusal(code, "as Excel says it");
    const error = await refusalFrom(host.read());
    expect(error.reason).toBe(reason);
    expect(error.cause).toMatchObject({ code, message: "as Excel says it" });
    expect(error.message.length).toBeGreaterThan(20);
  });

  it("is not mixed up with a fault of ours", async () => {
    openExcel(farm);
    const fault = new TypeError("ours");
    await expect(attempt({ seconds: 5 }, () => Promise.reject(fault))).rejects.toBe(fault);
  });

  it("is a new sheet where the workbook's structure is protected", async () => {
    const { host, workbook } = openExcel(farm);
    workbook.structureLocked = true;
    expect((await refusalFrom(host.write([report("Stand")]))).reason).toBe("protected");
    expect(await refusalFrom(host.makeTables([otherCosts]))).toMatchObject({
      reason: "protected",
      message: expect.stringMatching(/structure/) as string,
    });
  });

  it("is writing on a sheet of ours that the user has protected; nothing of it is done then", async () => {
    const { host, snapshot } = openExcel({ sheets: [{ name: "Stand", cells: [["kept"]], ours: true, locked: true }] });
    const before = await snapshot();
    const error = await refusalFrom(host.write([report("Break-even"), report("Stand")]));
    expect(error).toMatchObject({ reason: "protected", message: expect.stringMatching(/Stand/) as string });
    expect(await snapshot()).toEqual(before);
  });

  it("is selecting on a hidden sheet", async () => {
    const { host, workbook } = openExcel(farm);
    workbook.sheets[0]!.visibility = "Hidden";
    const reason = async (sheet: string) => (await refusalFrom(host.select({ sheet, row: 0, column: 0 }))).message;
    expect(await reason("Fields")).toMatch(/Fields is hidden/);
    expect(await reason("Gone")).not.toMatch(/hidden/);
  });
});

describe("the words for what Excel refuses", () => {
  it("are there for every code of the library, and none passes on what only a programmer can read", () => {
    openExcel(farm);
    const { ErrorCodes: ofExcel } = Excel as unknown as { ErrorCodes: Record<string, string> };
    const ofLibrary = (OfficeExtension as unknown as { ErrorCodes: Record<string, unknown> }).ErrorCodes;
    // Faults of ours that the library finds before anything is sent.
    const ours = ["InvalidRequestContext", "RunMustReturnPromise", "CannotUpdateReadOnlyProperty"];
    const codes = [...Object.values(ofExcel), ...Object.values(ofLibrary).filter((code) => typeof code === "string")].filter(
      (code) => !ours.includes(code),
    );
    expect(codes.length).toBeGreaterThan(30);
    expect(codes.filter((code) => knownCodes[code] === undefined)).toEqual([]);
    for (const [, words] of Object.values(knownCodes)) expect(words).toMatch(/^[A-Z][^{}<>_]{19,}\.$/);
  });

  // Microsoft, "Error handling with the application-specific JavaScript APIs", both tables for Excel (edition of 1 March 2024).
  it.each([
    "AccessDenied",
    "ActivityLimitReached",
    "ApiNotAvailable",
    "ApiNotFound",
    "BadPassword",
    "Client Error",
    "Conflict",
    "ContentLengthRequired",
    "GeneralException",
    "HostRestartNeeded",
    "InsertDeleteConflict",
    "InvalidArgument",
    "InvalidBinding",
    "InvalidOperation",
    "InvalidReference",
    "InvalidRequest",
    "InvalidSelection",
    "ItemAlreadyExists",
    "ItemNotFound",
    "MemoryLimitReached",
    "NotImplemented",
    "RequestAborted",
    "RequestPayloadSizeLimitExceeded",
    "ResponsePayloadSizeLimitExceeded",
    "ServiceNotAvailable",
    "Unauthenticated",
    "UnsupportedFeature",
    "UnsupportedOperation",
    "EmptyChartSeries",
    "FilteredRangeConflict",
    "FormulaLengthExceedsLimit",
    "InactiveWorkbook",
    "InvalidOperationInCellEditMode",
    "MergedRangeConflict",
    "NonBlankCellOffSheet",
    "OperationCellsExceedLimit",
    "PivotTableRangeConflict",
    "RangeExceedsLimit",
    "RefreshWorkbookLinksBlocked",
    "UnsupportedSheet",
  ])("are there for the documented %s", (code) => expect(knownCodes[code]).toBeDefined());

  it("say to bring the workbook to the front where another one is", async () => {
    const { host, bridge } = openExcel(farm);
    bridge.refusesNext = new HostRefusal("InactiveWorkbook", "as Excel says it");
    expect(await refusalFrom(host.read())).toMatchObject({
      reason: "busy",
      message: "Another workbook is in front. Bring this one to the front, then try again.",
    });
  });
});

describe("making tables", () => {
  it("is refused before anything is made where a name of the workbook stands in the way, and names it", async () => {
    const { host, workbook, snapshot } = openExcel(farm);
    workbook.names.push({ name: "OTHER_COSTS", formula: "=Fields!$A$1", visible: true });
    const before = await snapshot();
    expect(await refusalFrom(host.makeTables([otherCosts]))).toMatchObject({
      reason: "taken",
      message: expect.stringContaining("The name OTHER_COSTS") as string,
    });
    expect(await snapshot()).toEqual(before);
  });

  it("uses an empty sheet of that name, and leaves one alone on which somebody typed into what was left unfinished", async () => {
    const empty = openExcel({ sheets: [{ name: "Other costs", cells: [] }] });
    await empty.host.makeTables([otherCosts]);
    expect((await empty.snapshot()).sheets).toMatchObject([{ name: "Other costs", tables: [{ name: "Other_costs" }] }]);
    const begun = openExcel({
      sheets: [
        {
          name: "Other costs",
          cells: [
            ["Kind", "Amount"],
            ["my own", 5],
          ],
        },
      ],
    });
    begun.workbook.sheets[0]!.names.push({ name: "Pennyacre_unfinished_sheet", formula: "=1", visible: false });
    await begun.host.makeTables([otherCosts]);
    expect((await begun.snapshot()).sheets).toMatchObject([
      { name: "Other costs", tables: [] },
      { name: "Other costs (2)", tables: [{ name: "Other_costs" }] },
    ]);
  });
});

describe("a command of which it is not known what became", () => {
  const west = [new Map([["Field", "West"]])];

  it("goes on waiting, says why, and is never carried out twice", async () => {
    const { host, bridge, workbook } = openExcel(farm, { seconds: 0.2 });
    let state: HostState | undefined;
    host.follow!((told) => {
      state = told;
    });
    bridge.faultOf = (_request, isWriting) => {
      if (isWriting) bridge.silent = true;
      return isWriting ? { how: "lost answer" } : null;
    };
    let isOver = false;
    const adding = host.addRows("Fields", west).finally(() => {
      isOver = true;
    });
    await expect
      .poll(() => state?.waiting, { timeout: 10_000 })
      .toMatch(/Whether it was written is known once Excel answers; do not enter it again before/);
    expect(isOver).toBe(false);
    bridge.faultOf = () => null;
    bridge.silent = false;
    await adding;
    expect(state?.waiting).toBeNull();
    expect(workbook.tables[0]!.bodyRows).toBe(3);
  });

  it("is told as unclear where others changed the same table meanwhile", async () => {
    const { host, bridge, workbook, type } = openExcel(farm);
    bridge.faultOf = (_request, isWriting) => {
      if (!isWriting) return null;
      workbook.growTable(workbook.tables[0]!, 1);
      void type("Fields", "A4", "East");
      return { how: "refused", code: "RequestAborted" };
    };
    expect(await refusalFrom(host.addRows("Fields", west))).toMatchObject({
      written: "unknown",
      message: expect.stringMatching(/others have changed the same place/) as string,
    });
  });
});

describe("a change to a row", () => {
  const says = new Map<string, Cell>([
    ["Field", fields.rows[0]![0]!],
    ["Crop", fields.rows[0]![1]!],
    ["Acres", fields.rows[0]![2]!],
  ]);
  const change = { table: "Fields", row: 1, column: "Acres", value: 12, says };

  it("is made where the row says what it said, and again where it says the new value already", async () => {
    const { host, workbook } = openExcel(farm);
    await host.changeCells([change]);
    await host.changeCells([change]);
    expect(workbook.sheet("Fields")?.cell(1, 2)?.value).toBe(12);
  });

  it("is refused, with all others of the command, where the table was sorted or edited since", async () => {
    const { host, type, snapshot } = openExcel(farm);
    await type("Fields", "A2", "Hill");
    const before = await snapshot();
    expect(await refusalFrom(host.changeCells([{ table: "Fields", row: 2, column: "Acres", value: 5 }, change]))).toMatchObject({
      reason: "moved",
      message: expect.stringMatching(/entry 1 says something else by now: Field was .* and is “Hill”/) as string,
    });
    expect(await snapshot()).toEqual(before);
  });
});

describe("taking an entry back", () => {
  const lastEntry = (host: WorkbookHost) => {
    let state: HostState | undefined;
    host.follow!((told) => {
      state = told;
    })();
    return state!.lastEntry;
  };

  it("takes tables out again that were made with entries, unless they say something else by now", async () => {
    const { host, bridge, snapshot, type } = openExcel(farm);
    bridge.canUndo = false;
    const before = await snapshot();
    const made = {
      table: { name: "Loans", sheet: "Loans", columns: [{ heading: "Name", width: 20, hint: "", required: true }] },
      rows: [new Map([["Name", "Barn"]])],
    };
    const there = { table: { ...made.table, name: "Fields", sheet: "Fields" }, rows: [new Map([["Field", "West"]])] };
    await host.enterRows([made, there]);
    expect(lastEntry(host)?.words).toBe("entries in Loans, Fields");
    await type("Loans", "A3", "Line");
    expect(await refusalFrom(lastEntry(host)!.takeBack())).toMatchObject({ reason: "moved" });
    await type("Loans", "A3", "");
    await type("Loans", "A2", "Shed");
    expect(await refusalFrom(lastEntry(host)!.takeBack())).toMatchObject({ reason: "moved" });
    await type("Loans", "A2", "Barn");
    await lastEntry(host)!.takeBack();
    expect(await snapshot()).toEqual(before);
  });

  it("is offered where Excel's own Undo may not do it, and no more once it is done", async () => {
    const { host, bridge, snapshot } = openExcel(farm);
    await host.addRows("Fields", [new Map([["Field", "West"]])]);
    expect(lastEntry(host)).toBeNull();
    bridge.canUndo = false;
    const before = await snapshot();
    await host.addRows("Fields", [new Map([["Field", "East"]]), new Map([["Field", "South"]])]);
    expect(lastEntry(host)?.words).toBe("2 entries in Fields");
    await lastEntry(host)!.takeBack();
    expect(await snapshot()).toEqual(before);
    expect(lastEntry(host)).toBeNull();
  });

  it("gives up the rows that a table took in, unless the table has others by now", async () => {
    const { host, bridge } = openExcel(untaken);
    bridge.canUndo = false;
    await host.growTable("Fields", 3);
    expect(lastEntry(host)?.words).toBe("3 entries taken into Fields");
    await lastEntry(host)!.takeBack();
    expect((await host.read()).tables[0]).toMatchObject({ rows: [["Creek", "Soybeans", 81]], below: [{ by: 1 }, { by: 3 }] });
    await host.growTable("Fields", 1);
    const taken = lastEntry(host)!;
    await host.growTable("Fields", 2);
    expect(await refusalFrom(taken.takeBack())).toMatchObject({ reason: "moved" });
  });

  it("finds rows that were sorted together elsewhere, and is refused where they say something else by now", async () => {
    const { host, bridge, type, workbook } = openExcel(farm);
    bridge.canUndo = false;
    await host.addRows("Fields", [
      new Map<string, Cell>([
        ["Field", "West"],
        ["Acres", 9],
      ]),
    ]);
    await type("Fields", "C4", 10);
    expect(await refusalFrom(lastEntry(host)!.takeBack())).toMatchObject({ reason: "moved" });
    expect(workbook.tables[0]!.bodyRows).toBe(3);
    await type("Fields", "A2", "West");
    await type("Fields", "C2", 9);
    // Its crop was never entered.
    expect(await refusalFrom(lastEntry(host)!.takeBack())).toMatchObject({ reason: "moved" });
    await type("Fields", "B2", "");
    await lastEntry(host)!.takeBack();
    expect(workbook.sheet("Fields")?.cell(1, 0)?.value).toBe("Creek");
  });

  it("gives changed cells what they held, and is refused where somebody has changed them since", async () => {
    const { host, bridge, type, snapshot } = openExcel(farm);
    bridge.canUndo = false;
    const before = await snapshot();
    await host.changeCells([{ table: "Fields", row: 1, column: "Acres", value: 12 }]);
    await type("Fields", "C2", 13);
    expect(await refusalFrom(lastEntry(host)!.takeBack())).toMatchObject({ reason: "moved" });
    await type("Fields", "C2", 12);
    await lastEntry(host)!.takeBack();
    expect(await snapshot()).toEqual(before);
  });
});

describe("what Excel is handed", () => {
  it("is the page setup of the sheet, with & in the footer as a plain character", async () => {
    const { host, workbook } = openExcel(farm);
    await host.write([report("Stand")]);
    expect(workbook.sheet("Stand")?.page).toEqual({
      orientation: "Portrait",
      paperSize: "A4",
      zoom: { horizontalFitToPages: 1, verticalFitToPages: 2 },
      printArea: "Stand!A1:B2",
      titleRows: "1:1",
      leftFooter: "Hill && Dale",
      rightFooter: "&P / &N",
    });
  });

  it("is the page setup of an input table, without the choices beside it", async () => {
    const { host, workbook } = openExcel(farm);
    await host.makeTables([otherCosts]);
    expect(workbook.sheet("Other costs")?.page).toEqual({
      orientation: "Landscape",
      zoom: { horizontalFitToPages: 1 },
      printArea: "'Other costs'!A:B",
      titleRows: "1:1",
      leftFooter: "&A",
      rightFooter: "&P / &N",
    });
  });

  it("is a mark that the user does not see among the names", async () => {
    const { host, workbook } = openExcel(farm);
    await host.write([report("Stand")]);
    await host.write([report("Stand")]);
    expect(workbook.sheet("Stand")?.names).toEqual([{ name: "Pennyacre_result_sheet", formula: "=1", visible: false }]);
  });

  it("is a long list of choices in cells, because Excel takes only 255 characters as text", async () => {
    const { host, workbook } = openExcel(farm);
    await host.makeTables([otherCosts]);
    const sheet = workbook.sheet("Other costs");
    expect(sheet?.validations.get("A2")).toMatchObject({
      rule: { list: { source: "=$D$2:$D$31" } },
      errorAlert: { style: "Warning" },
      prompt: { title: "Kind" },
    });
    expect([sheet?.cell(0, 3)?.value, sheet?.cell(1, 3)?.value, sheet?.cell(30, 3)?.value]).toEqual([
      "Choices for Kind",
      "kind of cost 1",
      "kind of cost 30",
    ]);
  });

  it("is nothing for a column that Excel calculates itself", async () => {
    const cells = [
      ["Acres", "Seed", "Total"],
      [10, 90, 900],
    ];
    const sheet = { name: "Seed", cells, formulas: { C2: "=[@Acres]*[@Seed]" }, tables: [{ name: "Seed", range: "A1:C2" }] };
    const { host, snapshot } = openExcel({ sheets: [sheet] });
    await host.addRows("Seed", [
      new Map([
        ["Acres", 20],
        ["Seed", 95],
      ]),
    ]);
    expect((await snapshot()).sheets[0]?.cells["C3"]?.formula).toBe("=[@Acres]*[@Seed]");
  });

  it("is asked for the names of columns where a table shows no headings", async () => {
    const { host, workbook } = openExcel(farm);
    workbook.tables[0]!.showHeaders = false;
    expect((await host.read()).tables[0]).toMatchObject({ headers: ["Field", "Crop", "Acres"], body: { row: 1 } });
  });
});
