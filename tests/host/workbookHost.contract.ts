/** What every workbook host must do, whichever workbook is behind it. Each host's test file calls `describeWorkbookHost`. */
import { afterEach, describe, expect, it } from "vitest";
import { HostError, type WorkbookHost } from "../../src/host/workbookHost";
import type { Cell, RawTable } from "../../src/workbook/cell";
import type { InputTable } from "../../src/workbook/inputTable";
import type { ResultSheet, SheetCell } from "../../src/workbook/resultSheet";
import { fields, farm, aSheetAField, ownCounts, rates, untaken } from "./contractWorkbooks";
import type { Fixture, SheetSnapshot, Snapshot } from "./fixture";

/** A host over a workbook made from a fixture, and hands on that workbook beside the host. */
export type OpenedHost = {
  readonly host: WorkbookHost;
  /** What the workbook holds now. */
  snapshot(): Promise<Snapshot>;
  /** Somebody types a value into a cell. */
  type(sheet: string, cell: string, value: Cell): Promise<void>;
  /** Somebody selects a range, such as `B2:D9` or `B:D`. */
  pick(sheet: string, range: string): Promise<void>;
  close(): Promise<void>;
};

/** Runs the contract on hosts that `open` makes. */
export function describeWorkbookHost(name: string, open: (fixture: Fixture) => Promise<OpenedHost>): void {
  describe(`${name} as a workbook host`, () => {
    let opened: OpenedHost | undefined;
    const workbook = async (fixture: Fixture) => (opened = await open(fixture));
    afterEach(async () => {
      await opened?.close();
      opened = undefined;
    });

    describe("read", () => {
      it("gives every table with its headings, its body and where the body begins", async () => {
        const { host } = await workbook(farm);
        const { tables } = await host.read();
        expect(tables.map(({ name: table }) => table).sort()).toEqual(["Fields", "Purchases"]);
        expect(tableOf(tables, "Fields")).toEqual(fields);
      });

      it("gives hidden and filtered rows, and not the totals row", async () => {
        const { host } = await workbook(farm);
        const purchases = tableOf((await host.read()).tables, "Purchases");
        expect(purchases.rows.map((row) => row[1])).toEqual(["Seed, early", "Urea", "Diesel", ""]);
        expect(purchases.body).toEqual({ sheet: "Grower's bills", row: 3, column: 1 });
      });

      it("hands cells over as they are: blanks, errors, dates, yes or no, and text that looks like a number", async () => {
        const { host } = await workbook(farm);
        const purchases = tableOf((await host.read()).tables, "Purchases");
        expect(purchases.headers).toEqual(["Date", "Item", "Quantity", "Paid"]);
        expect(purchases.rows).toEqual([
          [46117, "Seed, early", "1,200.50", true],
          [46120.5, "Urea", "#N/A", false],
          [46121, "Diesel", 0.1, ""],
          ["", "", "", ""],
        ]);
      });

      it("knows the workbook's date system", async () => {
        const { host } = await workbook(farm);
        expect((await host.read()).dateSystem).toBe("1900");
        await opened?.close();
        const { host: old } = await workbook({ ...farm, dateSystem: "1904" });
        expect((await old.read()).dateSystem).toBe("1904");
      });

      it("gives the ranges that Matches points at, and leaves out those that are not there", async () => {
        const { host } = await workbook(ownCounts);
        const { ranges } = await host.read();
        expect([...ranges.keys()].sort()).toEqual(["'My counts'!B2:C4", "'My counts'!B:C"]);
        const expected = {
          headers: ["Where", "Plants"],
          rows: [
            ["North forty", 28],
            ["Creek", "31"],
          ],
          body: { sheet: "My counts", row: 2, column: 1 },
        };
        expect(ranges.get("'My counts'!B2:C4")).toMatchObject(expected);
        expect(ranges.get("'My counts'!B:C")).toMatchObject(expected); // whole columns, as far as they are used
      });

      it("gives the cells beside a range that Matches takes a name from", async () => {
        const { host } = await workbook(aSheetAField);
        const { ranges } = await host.read();
        expect([...ranges.keys()].sort()).toEqual(["'North forty'!A4:B6", "'North forty'!B2", "Creek!A4:B6", "Creek!B2"]);
        expect(ranges.get("'North forty'!B2")).toMatchObject({ headers: ["NORTH FORTY"], rows: [] });
      });

      it("gives nothing, and no error, in a workbook without tables", async () => {
        const { host } = await workbook({ sheets: [{ name: "Sheet1", cells: [] }] });
        expect(await host.read()).toEqual({ dateSystem: "1900", tables: [], ranges: new Map() });
      });

      it("gives what stands below a table and a matched range, with how far below, up to the next of either", async () => {
        const { host } = await workbook(untaken);
        const { tables, ranges } = await host.read();
        expect(tableOf(tables, "Fields").below).toEqual([
          { by: 1, cells: ["West", "Corn", 40] },
          { by: 3, cells: ["East", "", "22"] },
        ]);
        // Below a totals row too, which is none of them.
        expect(tableOf(tables, "Purchases").below).toEqual([{ by: 2, cells: ["Oil", 3] }]);
        expect(tableOf(tables, "Loans").below).toBeUndefined();
        expect(ranges.get("Counts!A1:B2")).toMatchObject({ rows: [["Creek", 28]], below: [{ by: 1, cells: ["Hill", 31] }] });
        expect(ranges.get("Counts!A5:B6")).toMatchObject({ rows: [["Alder", 30]] });
        expect(ranges.get("Counts!A5:B6")?.below).toBeUndefined();
      });

      it("tells which rates between two fifths and one show percent", async () => {
        const { host } = await workbook(rates);
        await host.makeTables([
          {
            name: "Loans",
            sheet: "Loans",
            columns: [
              { heading: "Name", width: 20, hint: "", required: true },
              { heading: "Rate", width: 9, numberFormat: "0.0#%", hint: "", required: true },
            ],
            rows: [["Note", 0.5]],
          },
        ]);
        await host.addRows("Loans", [
          new Map<string, Cell>([
            ["Name", "Line"],
            ["Rate", 0.08],
          ]),
          new Map<string, Cell>([
            ["Name", "Old"],
            ["Rate", 0.75],
          ]),
        ]);
        const { tables } = await host.read();
        expect(tableOf(tables, "Loans").percents?.map(({ row }) => row)).toContain(0);
        expect(tableOf(tables, "Loans").percents?.map(({ row }) => row)).not.toContain(1);
        // A plain number of 0.5 in another table shows none.
        expect(tableOf(tables, "Changes").percents).toBeUndefined();
      });

      it("sees what was typed since", async () => {
        const { host, type } = await workbook(farm);
        await host.read();
        await type("Fields", "C2", 161.5);
        expect(tableOf((await host.read()).tables, "Fields").rows[0]?.[2]).toBe(161.5);
      });
    });

    describe("write", () => {
      it("puts values, formulas, number formats and bold in place", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.write([costs]);
        const { cells } = sheetOf(await snapshot(), "Cost per acre");
        expect(cells["A1"]).toMatchObject({ value: "Cost per acre", bold: true });
        expect(cells["B3"]).toMatchObject({ value: 118.25, numberFormat: "#,##0.00", bold: false });
        expect(cells["B5"]).toMatchObject({ formula: "=SUM(B3:B4)", numberFormat: "#,##0.00" });
        expect(cells["C4"]).toMatchObject({ value: true });
        expect(cells["C3"]).toBeUndefined();
      });

      it.each(["=1+1", "+44", "-5 to 3", "@home", "'quoted", "1-2", "00123", "TRUE", "12%", "May 5", "#N/A"])(
        "writes the text %s as that text, not as what Excel would make of it",
        async (text) => {
          const { host, snapshot } = await workbook(farm);
          await host.write([{ ...costs, rows: [[{ value: text }]], charts: [], merges: [] }]);
          const cell = sheetOf(await snapshot(), "Cost per acre").cells["A1"];
          expect(cell?.value).toBe(text);
          expect(cell?.formula).toBeUndefined();
        },
      );

      it("sets widths, merges, headings in view and on each page, orientation and charts", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.write([costs]);
        const sheet = sheetOf(await snapshot(), "Cost per acre");
        expect(sheet.columnWidths.map(Math.round)).toEqual([30, 12, 10]);
        expect(sheet.merges).toEqual(["A1:C1"]);
        expect(sheet).toMatchObject({ frozenRows: 2, titleRows: "1:2", orientation: "landscape" });
        expect(sheet.charts).toEqual([{ title: "Cost per acre by kind", series: 2 }]);
      });

      it("makes a sheet of ours again, leaving nothing of the old one", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.write([costs]);
        await host.write([{ ...costs, rows: [[{ value: "Shorter" }]], merges: [], charts: [], headingRows: 0, columns: [9] }]);
        const { sheets } = await snapshot();
        expect(sheets.map(({ name: sheet }) => sheet)).toEqual(["Fields", "Grower's bills", "Cost per acre"]);
        const sheet = sheetOf({ sheets, selected: null }, "Cost per acre");
        expect(Object.keys(sheet.cells)).toEqual(["A1"]);
        expect(sheet.cells["A1"]?.bold).toBe(false);
        expect(sheet).toMatchObject({ merges: [], charts: [], frozenRows: 0 });
        expect(Math.round(sheet.columnWidths[0] ?? 0)).toBe(9);
      });

      it("leaves a sheet of somebody else's alone and takes the next free name, the same one each time", async () => {
        const theirs: Fixture = {
          sheets: [
            { name: "break-even", cells: [["mine"]] },
            { name: "Break-even (2)", cells: [["also mine"]] },
          ],
        };
        const { host, snapshot } = await workbook(theirs);
        await host.write([named("Break-even", "first")]);
        expect(await host.write([named("Break-even", "second")])).toEqual(["Break-even (3)"]);
        const after = await snapshot();
        expect(after.sheets.map((sheet) => [sheet.name, sheet.cells["A1"]?.value])).toEqual([
          ["break-even", "mine"],
          ["Break-even (2)", "also mine"],
          ["Break-even (3)", "second"],
        ]);
      });

      it("knows a sheet of ours by its mark, whichever host made it", async () => {
        const { host, snapshot } = await workbook({ sheets: [{ name: "Stand", cells: [["old"], ["old"]], ours: true }] });
        await host.write([named("Stand", "new")]);
        const after = await snapshot();
        expect(after.sheets.map((sheet) => sheet.name)).toEqual(["Stand"]);
        expect(after.sheets[0]?.cells["A2"]).toBeUndefined();
      });

      it("gives two sheets that are to have one name a name each", async () => {
        const { host, snapshot } = await workbook(farm);
        expect(await host.write([named("Change", "one"), named("change", "two")])).toEqual(["Change", "change (2)"]);
        const after = await snapshot();
        expect(sheetOf(after, "Change").cells["A1"]?.value).toBe("one");
        expect(sheetOf(after, "change (2)").cells["A1"]?.value).toBe("two");
      });

      it("cuts a name that Excel refuses to one that it takes", async () => {
        const { host, snapshot } = await workbook(farm);
        expect(await host.write([named("Change – closing wheels: spiked/rubber, both", "x")])).toEqual(["Change – closing wheels  spiked"]);
        expect((await snapshot()).sheets.at(-1)?.name).toBe("Change – closing wheels  spiked");
      });

      it("changes nothing in the entries", async () => {
        const { host, snapshot } = await workbook(farm);
        const before = await snapshot();
        await host.write([costs]);
        expect((await snapshot()).sheets.slice(0, 2)).toEqual(before.sheets);
      });
    });

    describe("makeTables", () => {
      it("makes a table on a sheet of its own, with headings, formats, choices and a first row", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.makeTables([loans]);
        const sheet = sheetOf(await snapshot(), "Loans");
        expect(sheet.tables).toEqual([{ name: "Loans", range: "A1:C2" }]);
        expect(sheet.cells["B2"]).toMatchObject({ value: 125000, numberFormat: "#,##0.00" });
        expect(sheet.choices).toEqual([{ cell: "C2", words: ["operating", "term"] }]);
        expect(sheet).toMatchObject({ frozenRows: 1, titleRows: "1:1", orientation: "landscape", titleColumns: null, pagesWide: 1 });
        const table = tableOf((await host.read()).tables, "Loans");
        expect(table).toMatchObject({ headers: ["Name", "Balance", "Kind"], rows: [["Tractor note", 125000, "term"]] });
      });

      it("prints a table that is too wide to be read on one page on more of them, each with its first column", async () => {
        const { host, snapshot } = await workbook(farm);
        const column = (heading: string, width: number) => ({ heading, width, hint: "", required: false });
        // 720 points of paper, at three fifths of the size, hold 1,200; the columns take 1,194 and 1,210.
        const columns = (last: number) => [
          column("Machine", 24.76),
          ...Array.from({ length: 7 }, (_, index) => column(`Part ${index}`, 24.76)),
          column("Last", last),
        ];
        const wide = (name: string, last: number) => ({ name, sheet: name, columns: columns(last), rows: [columns(last).map(() => "")] });
        await host.makeTables([wide("Just", 23), wide("Over", 26)]);
        const after = await snapshot();
        expect(sheetOf(after, "Just")).toMatchObject({ titleRows: "1:1", titleColumns: null, pagesWide: 1 });
        expect(sheetOf(after, "Over")).toMatchObject({ titleRows: "1:1", titleColumns: "A:A", pagesWide: 2 });
      });

      it("leaves a table that is there already alone, however its name is written", async () => {
        const { host, snapshot } = await workbook(farm);
        const before = await snapshot();
        await host.makeTables([{ ...loans, name: "FIELDS", sheet: "Fields" }]);
        expect(await snapshot()).toEqual(before);
      });

      it("does not touch a sheet that has the name but not the table", async () => {
        const { host, snapshot } = await workbook({ sheets: [{ name: "Loans", cells: [["my notes"]] }] });
        await host.makeTables([loans]);
        const after = await snapshot();
        expect(sheetOf(after, "Loans").cells["A1"]?.value).toBe("my notes");
        expect(sheetOf(after, "Loans (2)").tables).toEqual([{ name: "Loans", range: "A1:C2" }]);
      });
    });

    describe("enterRows", () => {
      const entries = [
        {
          table: { ...loans, rows: [] },
          rows: [
            new Map<string, Cell>([
              ["Name", "Barn"],
              ["Balance", 9000],
            ]),
            new Map<string, Cell>([
              ["Name", "=Line"],
              ["Kind", "operating"],
            ]),
          ],
        },
        {
          table: { ...loans, name: "Fields", sheet: "Fields" },
          rows: [
            new Map<string, Cell>([
              ["Field", "West"],
              ["Acres", 40.25],
            ]),
          ],
        },
      ];

      it("adds rows to tables that are there, and makes the others with theirs", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.enterRows(entries);
        const { tables } = await host.read();
        expect(tableOf(tables, "Fields").rows).toEqual([...fields.rows, ["West", "", 40.25]]);
        expect(tableOf(tables, "Loans").rows).toEqual([
          ["Barn", 9000, ""],
          ["=Line", "", "operating"],
        ]);
        const sheet = sheetOf(await snapshot(), "Loans");
        expect(sheet.tables).toEqual([{ name: "Loans", range: "A1:C3" }]);
        expect(sheet.cells["B2"]).toMatchObject({ value: 9000, numberFormat: "#,##0.00" });
      });

      it("writes nothing where one of them cannot be", async () => {
        const { host, snapshot } = await workbook(farm);
        const before = await snapshot();
        const odd = { table: { ...loans, name: "Fields" }, rows: [new Map<string, Cell>([["Colour", "red"]])] };
        await expect(host.enterRows([entries[0]!, odd])).rejects.toMatchObject({ reason: "missing" });
        expect(await snapshot()).toEqual(before);
      });
    });

    describe("addRows", () => {
      it("adds rows under the last one, by heading, and leaves the rest blank", async () => {
        const { host } = await workbook(farm);
        await host.addRows("Fields", [
          new Map<string, Cell>([
            ["Acres", 40.25],
            ["field", "West"],
          ]),
          new Map<string, Cell>([["Field", "=A1"]]),
        ]);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual([...fields.rows, ["West", "", 40.25], ["=A1", "", ""]]);
      });

      it.each([1, 2])("fills the blank row of a new table first, with %i rows to add", async (count) => {
        const { host } = await workbook(farm);
        await host.makeTables([{ ...loans, rows: [["", "", ""]] }]);
        const names = ["Tractor note", "Line"].slice(0, count);
        await host.addRows(
          "Loans",
          names.map((name) => new Map<string, Cell>([["Name", name]])),
        );
        expect(tableOf((await host.read()).tables, "Loans").rows).toEqual(names.map((name) => [name, "", ""]));
      });

      it("keeps the totals row below", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.addRows("Purchases", [new Map<string, Cell>([["Item", "Oil"]])]);
        expect(tableOf((await host.read()).tables, "Purchases").rows.at(-1)).toEqual(["", "Oil", "", ""]);
        const { cells } = sheetOf(await snapshot(), "Grower's bills");
        expect(cells["C8"]?.value).toBe("Oil");
        expect(cells["B9"]?.value).toBe("Total");
      });

      it("names a table or a heading that is not there", async () => {
        const { host } = await workbook(farm);
        await expectRefusal(host.addRows("Sales", [new Map()]), "missing", /Sales/);
        await expectRefusal(host.addRows("Fields", [new Map([["Colour", "red"]])]), "missing", /Colour/);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual(fields.rows);
      });

      it("says so when the sheet is protected", async () => {
        const [sheet, ...others] = farm.sheets;
        const { host } = await workbook({ sheets: [{ ...sheet!, locked: true }, ...others] });
        await expectRefusal(host.addRows("Fields", [new Map([["Field", "West"]])]), "protected", /protect/i);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual(fields.rows);
      });
    });

    describe("growTable", () => {
      it("draws a table over the rows below it, gaps and all, and changes no cell", async () => {
        const { host, snapshot } = await workbook(untaken);
        const before = sheetOf(await snapshot(), "Fields").cells;
        await host.growTable("fields", 3);
        const table = tableOf((await host.read()).tables, "Fields");
        expect(table.rows).toEqual([
          ["Creek", "Soybeans", 81],
          ["West", "Corn", 40],
          ["", "", ""],
          ["East", "", "22"],
        ]);
        expect(table.below).toBeUndefined();
        expect(sheetOf(await snapshot(), "Fields").cells).toEqual(before);
      });

      it("is refused at a totals row, at another table, on a protected sheet and for a table that is not there", async () => {
        const { host, snapshot } = await workbook(untaken);
        const before = await snapshot();
        await expectRefusal(host.growTable("Purchases", 2), "failed", /totals row/);
        await expectRefusal(host.growTable("Fields", 6), "failed", /in the way|right below/);
        await expectRefusal(host.growTable("Sales", 1), "missing", /Sales/);
        expect(await snapshot()).toEqual(before);
        const { host: locked } = await workbook({ sheets: untaken.sheets.map((sheet) => ({ ...sheet, locked: true })) });
        await expectRefusal(locked.growTable("Fields", 1), "protected", /protect/i);
      });
    });

    describe("changeCells", () => {
      const [fieldsSheet, ...others] = farm.sheets;
      const filled: Fixture = { sheets: [{ ...fieldsSheet!, formulas: { C3: "=80+1" } }, ...others] };

      it("puts values into cells of several tables, by heading, and leaves all others as they are", async () => {
        const { host } = await workbook(farm);
        await host.changeCells([
          { table: "fields", row: 2, column: "acres", value: 79.5 },
          { table: "Fields", row: 1, column: "Field", value: "=A1" },
          { table: "Purchases", row: 4, column: "Paid", value: "'no" },
        ]);
        const { tables } = await host.read();
        expect(tableOf(tables, "Fields").rows).toEqual([
          ["=A1", "Corn", 38.5],
          ["Creek", "Soybeans", 79.5],
        ]);
        expect(tableOf(tables, "Purchases").rows.map((row) => row[3])).toEqual([true, false, "", "'no"]);
      });

      it("keeps the number format", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.makeTables([loans]);
        await host.changeCells([{ table: "Loans", row: 1, column: "Balance", value: 99000.5 }]);
        expect(sheetOf(await snapshot(), "Loans").cells["B2"]).toMatchObject({ value: 99000.5, numberFormat: "#,##0.00" });
      });

      it("changes a row that says what it said, and refuses one that was sorted elsewhere or edited", async () => {
        const { host, type } = await workbook(farm);
        const row = new Map<string, Cell>([
          ["Field", "Creek"],
          ["Crop", "Soybeans"],
          ["Acres", 81],
        ]);
        const change = { table: "Fields", row: 2, column: "Acres", value: 79.5, says: row };
        await host.changeCells([change]);
        await host.changeCells([change]); // it has its new value already
        await type("Fields", "A3", "Hill");
        await expectRefusal(
          host.changeCells([
            { table: "Fields", row: 1, column: "Acres", value: 1 },
            { ...change, value: 78 },
          ]),
          "moved",
          /entry 2 says something else by now: Field was “Creek” and is “Hill”/,
        );
        expect(tableOf((await host.read()).tables, "Fields").rows.map((cells) => cells[2])).toEqual([38.5, 79.5]);
      });

      it("leaves a formula where it stands, and with it everything else", async () => {
        const { host, snapshot } = await workbook(filled);
        const before = await snapshot();
        await expectRefusal(
          host.changeCells([
            { table: "Fields", row: 1, column: "Acres", value: 1 },
            { table: "Fields", row: 2, column: "Acres", value: 2 },
          ]),
          "formula",
          /Fields, entry 2, Acres/,
        );
        expect(await snapshot()).toEqual(before);
      });

      it("names a place that is not there, and changes nothing", async () => {
        const { host } = await workbook(farm);
        const sound = { table: "Fields", row: 1, column: "Acres", value: 1 };
        await expectRefusal(host.changeCells([sound, { ...sound, table: "Sales" }]), "missing", /Sales/);
        await expectRefusal(host.changeCells([sound, { ...sound, column: "Colour" }]), "missing", /Colour/);
        await expectRefusal(host.changeCells([sound, { ...sound, row: 3 }]), "missing", /entry 3/);
        await expectRefusal(host.changeCells([sound, { ...sound, row: 0 }]), "missing", /entry 0/);
        // Entry 5 is the totals row.
        await expectRefusal(host.changeCells([sound, { table: "Purchases", row: 5, column: "Quantity", value: 4 }]), "missing", /entry 5/);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual(fields.rows);
      });

      it("says so when the sheet is protected", async () => {
        const { host } = await workbook({ sheets: [{ ...fieldsSheet!, locked: true }, ...others] });
        await expectRefusal(host.changeCells([{ table: "Fields", row: 1, column: "Acres", value: 1 }]), "protected", /protect/i);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual(fields.rows);
      });

      it("changes the cells of a protected sheet that are not locked, and none where one of them is", async () => {
        const { host } = await workbook({ sheets: [{ ...fieldsSheet!, locked: true, unlocked: ["C2"] }, ...others] });
        const free = { table: "Fields", row: 1, column: "Acres", value: 40.5 };
        await expectRefusal(host.changeCells([free, { ...free, row: 2 }]), "protected", /protect/i);
        expect(tableOf((await host.read()).tables, "Fields").rows).toEqual(fields.rows);
        await host.changeCells([free]);
        expect(tableOf((await host.read()).tables, "Fields").rows[0]).toEqual([...fields.rows[0]!.slice(0, 2), 40.5]);
      });
    });

    describe("addColumn", () => {
      const [fieldsSheet, ...others] = farm.sheets;
      const loss = { table: "fields", heading: "Uniformity loss %", numberFormat: "0.0#%", cells: new Map<number, Cell>([[2, 0.05]]) };
      const withCells = (...rows: readonly (readonly Cell[])[]): Fixture => ({
        sheets: [{ ...fieldsSheet!, cells: fieldsSheet!.cells.map((row, index) => [...row, ...(rows[index] ?? [])]) }, ...others],
      });

      it("adds a column at the right end, with its values and their format", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.addColumn(loss);
        expect(tableOf((await host.read()).tables, "Fields")).toMatchObject({
          headers: [...fields.headers, "Uniformity loss %"],
          rows: [
            [...fields.rows[0]!, ""],
            [...fields.rows[1]!, 0.05],
          ],
        });
        const sheet = sheetOf(await snapshot(), "Fields");
        expect(sheet.tables).toEqual([{ name: "Fields", range: "A1:D3" }]);
        expect(sheet.cells["D3"]).toMatchObject({ value: 0.05, numberFormat: "0.0#%" });
        await host.addRows("Fields", [
          new Map<string, Cell>([
            ["Field", "Hill"],
            ["Uniformity loss %", 0.02],
          ]),
        ]);
        expect(tableOf((await host.read()).tables, "Fields").rows[2]).toEqual(["Hill", "", "", 0.02]);
      });

      it("leaves a totals row blank, and text that looks like a formula a text", async () => {
        const { host, snapshot } = await workbook(farm);
        const before = sheetOf(await snapshot(), "Grower's bills").tables[0]!.range;
        await host.addColumn({ table: "Purchases", heading: "=Note", cells: new Map<number, Cell>([[4, "-1"]]) });
        const table = tableOf((await host.read()).tables, "Purchases");
        expect([table.headers.at(-1), ...table.rows.map((row) => row.at(-1))]).toEqual(["=Note", "", "", "", "-1"]);
        expect(sheetOf(await snapshot(), "Grower's bills").tables[0]!.range).toBe(before.replace(/:E/, ":F"));
      });

      it("keeps what stands further right, and what is below", async () => {
        const { host, snapshot } = await workbook(withCells([], ["", "", "mine"]));
        await host.addColumn(loss);
        expect(sheetOf(await snapshot(), "Fields").cells["F2"]).toMatchObject({ value: "mine" });
      });

      it("is refused where something stands right of its rows, and changes nothing", async () => {
        const { host, snapshot } = await workbook(withCells([], [], ["mine"]));
        const before = await snapshot();
        await expectRefusal(host.addColumn(loss), "failed", /Something stands right of the table.*D3/);
        expect(await snapshot()).toEqual(before);
      });

      it("is refused where the column, the table or a row is not as it should be, or the sheet is protected", async () => {
        const { host, snapshot } = await workbook(farm);
        const before = await snapshot();
        await expectRefusal(host.addColumn({ ...loss, heading: "ACRES" }), "failed", /already/);
        await expectRefusal(host.addColumn({ ...loss, table: "Sales" }), "missing", /Sales/);
        await expectRefusal(host.addColumn({ ...loss, cells: new Map([[3, 0.05]]) }), "missing", /entry 3/);
        expect(await snapshot()).toEqual(before);
        const { host: locked } = await workbook({ sheets: [{ ...fieldsSheet!, locked: true }, ...others] });
        await expectRefusal(locked.addColumn(loss), "protected", /protect/i);
      });
    });

    describe("select and selection", () => {
      it("shows a cell and selects it", async () => {
        const { host, snapshot } = await workbook(farm);
        await host.select({ sheet: "Grower's bills", row: 4, column: 2 });
        expect((await snapshot()).selected).toEqual({ sheet: "Grower's bills", cell: "C5" });
      });

      it("names a sheet that is not there", async () => {
        const { host } = await workbook(farm);
        await expectRefusal(host.select({ sheet: "Gone", row: 0, column: 0 }), "missing", /Gone/);
      });

      it("gives the address and the headings of what is selected, as Matches wants them", async () => {
        const { host, pick } = await workbook(ownCounts);
        await pick("My counts", "B2:C4");
        expect(await host.selection()).toEqual({ address: "'My counts'!B2:C4", headings: ["Where", "Plants"] });
        await pick("My counts", "B:C");
        expect(await host.selection()).toEqual({ address: "'My counts'!B:C", headings: ["Where", "Plants"] });
      });

      it("takes one cell for the block around it, and leaves titles above the headings aside", async () => {
        const { host, pick } = await workbook(aSheetAField);
        await pick("Creek", "B5");
        expect(await host.selection()).toEqual({ address: "Creek!A4:B6", headings: ["Cost of", "$/ac"] });
        const titled = await workbook({ sheets: [{ name: "Sheet1", cells: [["My costs"], ["Cost of", "$/ac"], ["Seed", 110]] }] });
        for (const cells of ["A1", "B3", "A1:B3"]) {
          await titled.pick("Sheet1", cells);
          expect(await titled.host.selection()).toEqual({ address: "Sheet1!A2:B3", headings: ["Cost of", "$/ac"] });
        }
      });

      it("takes in the columns after a blank one where the headings go on there", async () => {
        const { host, pick } = await workbook({
          sheets: [
            {
              name: "Plan",
              cells: [
                ["Costs 2031", "", "", ""],
                ["Field", "Seed", "", "Fuel"],
                ["Creek", 110, "", 18],
              ],
            },
          ],
        });
        for (const cell of ["A3", "B2"]) {
          await pick("Plan", cell);
          expect(await host.selection()).toEqual({ address: "Plan!A2:D3", headings: ["Field", "Seed", "", "Fuel"] });
        }
      });

      it("finds the other sheets that can be seen and have the same headings in the same cells", async () => {
        const { host } = await workbook(aSheetAField);
        expect(await host.alike("'North forty'!A4:B6")).toEqual(["Creek!A4:B6"]);
        expect(await host.alike("Notes!A4:B5")).toEqual([]);
        expect(await host.alike("Gone!A4:B5")).toEqual([]);
      });
    });

    describe("onChanged", () => {
      it("calls back after a change, once for a burst, and no more once stopped", async () => {
        const { host, type } = await workbook(farm);
        let calls = 0;
        const stop = await host.onChanged(() => (calls += 1));
        await type("Fields", "C2", 1);
        await type("Fields", "C2", 2);
        await type("Fields", "C3", 3);
        await expect.poll(() => calls, { timeout: 3000 }).toBe(1);
        await type("Fields", "C2", 4);
        await expect.poll(() => calls, { timeout: 3000 }).toBe(2);
        await stop();
        await type("Fields", "C2", 5);
        await new Promise((resolve) => setTimeout(resolve, 700));
        expect(calls).toBe(2);
      });
    });
  });
}

/** A refusal for the user: a HostError with its reason and with words that name the thing. */
async function expectRefusal(doing: Promise<unknown>, reason: HostError["reason"], words: RegExp): Promise<void> {
  const error: unknown = await doing.then(
    () => undefined,
    (refused: unknown) => refused,
  );
  expect(error).toBeInstanceOf(HostError);
  expect(error).toMatchObject({ reason, message: expect.stringMatching(words) as string });
}

function tableOf(tables: readonly RawTable[], name: string): RawTable {
  const found = tables.find((table) => table.name === name);
  if (found === undefined) throw new Error(`No table ${name} among ${tables.map((table) => table.name).join(", ")}`);
  return found;
}

function sheetOf(snapshot: Snapshot, name: string): SheetSnapshot {
  const found = snapshot.sheets.find((sheet) => sheet.name === name);
  if (found === undefined) throw new Error(`No sheet ${name} among ${snapshot.sheets.map((sheet) => sheet.name).join(", ")}`);
  return found;
}

const money = { numberFormat: "#,##0.00" };
const row = (...cells: readonly (SheetCell | Cell)[]): SheetCell[] =>
  cells.map((cell) => (typeof cell === "object" ? cell : { value: cell }));

const costs: ResultSheet = {
  name: "Cost per acre",
  columns: [30, 12, 10],
  rows: [
    row({ value: "Cost per acre", style: { bold: true, size: 14 } }),
    row({ value: "Kind", style: { bold: true, fill: "heading" } }, { value: "$ per ac", style: { bold: true, fill: "heading" } }, ""),
    row("Seed", { value: 118.25, style: money }, ""),
    row("Fertilizer", { value: 92, style: money }, true),
    row("Operating", { value: 210.25, formula: "=SUM(B3:B4)", style: { ...money, border: "top" } }),
  ],
  merges: ["A1:C1"],
  headingRows: 2,
  page: { orientation: "landscape", paper: "letter", pagesTall: 1, footer: "Hill & Dale farm" },
  charts: [
    {
      kind: "column",
      title: "Cost per acre by kind",
      startsAtZero: true,
      categories: "A3:A4",
      series: [
        { name: "Plan", values: "B3:B4" },
        { name: "Projected", values: "B3:B4" },
      ],
      from: "E2",
      to: "K15",
    },
  ],
};

const named = (name: string, text: string): ResultSheet => ({
  ...costs,
  name,
  rows: [[{ value: text }]],
  merges: [],
  headingRows: 0,
  charts: [],
});

const loans: InputTable = {
  name: "Loans",
  sheet: "Loans",
  columns: [
    { heading: "Name", width: 20, hint: "What the loan is called.", required: true },
    { heading: "Balance", width: 14, numberFormat: "#,##0.00", hint: "What is owed now, in dollars.", required: true },
    { heading: "Kind", width: 12, choices: ["operating", "term"], hint: "operating or term.", required: false },
  ],
  rows: [["Tractor note", 125000, "term"]],
};
