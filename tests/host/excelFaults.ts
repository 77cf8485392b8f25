/** The commands of the Excel host as the tests of its faults call them, each in a small workbook where it has something to do. */
import type { HostState, WorkbookHost } from "../../src/host/workbookHost";
import type { Cell } from "../../src/workbook/cell";
import type { InputTable } from "../../src/workbook/inputTable";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { farm, untaken } from "./contractWorkbooks";
import type { Fixture } from "./fixture";
import type { OpenedHost } from "./workbookHost.contract";

export type FaultCase = {
  readonly command: string;
  readonly workbook: Fixture;
  /** Done before, without a fault. */
  readonly before?: (host: WorkbookHost, hands: OpenedHost) => Promise<unknown>;
  readonly does: (host: WorkbookHost) => Promise<unknown>;
};

const cell = (value: Cell) => ({ value });
const report = (name: string, figure: number): ResultSheet => ({
  name,
  columns: [20, 12],
  headingRows: 1,
  merges: ["A1:B1"],
  rows: [
    [{ value: "Cost per acre", style: { bold: true } }],
    [cell("Seed"), cell(figure)],
    [cell("In all"), { value: figure, formula: "=SUM(B2:B2)", style: { border: "top", numberFormat: "0.00" } }],
  ],
  page: { orientation: "landscape", paper: "letter", pagesTall: 1, footer: "Hill farm" },
  charts: [{ kind: "line", title: "Price", categories: "A2:A3", series: [{ name: "Net", values: "B2:B3" }], from: "D2", to: "H9" }],
});
const reports = (figure: number) => [report("Cost per acre", figure), report("Stand", figure + 1)];

const kinds = Array.from({ length: 30 }, (_, index) => `kind of cost ${index + 1}`);
const tables: readonly InputTable[] = [
  {
    name: "Other_costs",
    sheet: "Other costs",
    columns: [
      { heading: "Kind", width: 18, choices: kinds, hint: "What the money is for.", required: true },
      { heading: "Amount", width: 12, numberFormat: "#,##0.00", hint: "In dollars.", required: true },
    ],
  },
  {
    name: "Loans",
    sheet: "Loans",
    rows: [["Tractor note", 125000]],
    columns: [
      { heading: "Name", width: 18, hint: "", required: true },
      { heading: "Balance", width: 12, numberFormat: "#,##0.00", hint: "", required: true },
    ],
  },
];
const rows = [
  new Map<string, Cell>([
    ["Field", "West"],
    ["Acres", 40.25],
  ]),
  new Map<string, Cell>([["Field", "=East"]]),
];
const changes = [
  { table: "Fields", row: 1, column: "Acres", value: 41.5 },
  { table: "Fields", row: 2, column: "Acres", value: 79 },
];
const column = { table: "Fields", heading: "Uniformity loss %", numberFormat: "0.0#%", cells: new Map<number, Cell>([[2, 0.05]]) };
/** More than 1,500 cells, which the library hands over in pieces. */
const many = { ...column, cells: new Map<number, Cell>(Array.from({ length: 1600 }, (_, row) => [row + 1, row / 1000])) };
const longTable: Fixture = {
  sheets: [
    {
      name: "Fields",
      cells: [["Field"], ...Array.from({ length: 1600 }, (_, row) => [`Field ${row}`])],
      tables: [{ name: "Fields", range: "A1:A1601" }],
    },
  ],
};

const entries = [
  {
    table: tables[0]!,
    rows: [
      new Map<string, Cell>([
        ["Kind", kinds[0]!],
        ["Amount", 12.5],
      ]),
      new Map<string, Cell>([["Kind", kinds[1]!]]),
    ],
  },
  { table: { name: "Fields", sheet: "Fields", columns: [] }, rows },
  {
    table: tables[1]!,
    rows: [
      new Map<string, Cell>([
        ["Name", "Barn"],
        ["Balance", 9000],
      ]),
    ],
  },
];

const takeBack = async (host: WorkbookHost) => {
  let state: HostState | undefined;
  host.follow!((told) => {
    state = told;
  })();
  await state!.lastEntry!.takeBack();
};

export const faultCases: readonly FaultCase[] = [
  { command: "Read", workbook: farm, does: (host) => host.read() },
  { command: "Listen to changes", workbook: farm, does: (host) => host.onChanged(() => undefined) },
  { command: "Show a cell", workbook: farm, does: (host) => host.select({ sheet: "Fields", row: 1, column: 1 }) },
  {
    command: "Ask what is selected",
    workbook: farm,
    before: (_host, { pick }) => pick("Fields", "A1:C2"),
    does: (host) => host.selection(),
  },
  { command: "Write result sheets", workbook: farm, does: (host) => host.write(reports(100)) },
  {
    command: "Write result sheets again",
    workbook: farm,
    before: (host) => host.write(reports(100)),
    does: (host) => host.write(reports(200)),
  },
  { command: "Make tables", workbook: farm, does: (host) => host.makeTables(tables) },
  { command: "Add rows", workbook: farm, does: (host) => host.addRows("Fields", rows) },
  { command: "Enter rows in tables that are there and not", workbook: farm, does: (host) => host.enterRows(entries) },
  {
    command: "Add the first row of a new table",
    workbook: farm,
    before: (host) => host.makeTables([{ ...tables[0]!, rows: [["", ""]] }]),
    does: (host) => host.addRows("Other_costs", [new Map<string, Cell>([["Amount", 40.25]])]),
  },
  { command: "Take in rows below a table", workbook: untaken, does: (host) => host.growTable("Fields", 3) },
  { command: "Change cells", workbook: farm, does: (host) => host.changeCells(changes) },
  { command: "Add a column", workbook: farm, does: (host) => host.addColumn(column) },
  { command: "Add a column of 1,600 cells", workbook: longTable, does: (host) => host.addColumn(many) },
  {
    command: "Take back what was entered in tables that are there and not",
    workbook: farm,
    before: (host) => host.enterRows(entries),
    does: takeBack,
  },
  { command: "Take rows back", workbook: farm, before: (host) => host.addRows("Fields", rows), does: takeBack },
  { command: "Give up rows that a table took in", workbook: untaken, before: (host) => host.growTable("Fields", 3), does: takeBack },
  { command: "Take changed cells back", workbook: farm, before: (host) => host.changeCells(changes), does: takeBack },
];
