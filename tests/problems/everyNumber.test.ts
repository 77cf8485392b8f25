/**
 * Nothing is dropped in silence: every number of a workbook in which each column counts, put up and down, moves a figure or
 * is told; or its column is listed among those that move nothing, with the reason.
 */
import { describe, expect, it } from "vitest";
import { isListed, isPercent, movesNothing } from "../support/movesNothing";
import { everyColumn } from "../support/everyColumn";
import type { Cell, RawTable, WorkbookContent } from "../../src/workbook/cell";
import { describe as described } from "../../src/workbook/explain";
import { plainHeading } from "../../src/workbook/words";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { inputTables } from "../../src/workbook/templates";
import { cashFlowSheet } from "../../src/workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../../src/workbook/sheets/lender/lenderPages";
import { resultSheets } from "../../src/workbook/sheets/resultSheets";
import { isLong } from "../exact/judge";
import { sheetLines } from "../support/sheetLines";

/** A little up, nothing, and slips of the comma: by one place up and by two down; in the long run the others too. */
const factors = isLong ? [1.04, 0.96, 0, 10, 0.1, 100, 0.01] : [1.04, 0, 10, 0.01];
const content = everyColumn();

/** Every figure of the report and of the sheets, and what is told beside them. */
function figuresOf(changed: WorkbookContent) {
  const report = seasonReport(changed);
  const { problems: _problems, complete: _complete, ...json } = reportJson(report);
  const sheets = () =>
    JSON.stringify([...resultSheets(report), lenderPages(report, { date: "2031-06-15" }), cashFlowSheet(report)].flatMap(sheetLines));
  return { json: JSON.stringify(json), sheets, told: JSON.stringify(report.problems.map(described)) };
}

/** Whether a change of the workbook moves no figure and nothing is told of it. Most change the report, and the sheets need not be made. */
function isSilent(changed: WorkbookContent): boolean {
  const { json, sheets, told } = figuresOf(changed);
  return told === before.told && json === before.json && sheets() === sheetsBefore;
}

const put = (table: RawTable, row: number, column: number, value: Cell): WorkbookContent => ({
  ...content,
  tables: content.tables.map((each) =>
    each !== table
      ? each
      : {
          ...each,
          rows: each.rows.map((cells, at) => (at !== row ? cells : cells.map((cell, index) => (index === column ? value : cell)))),
        },
  ),
});

const numbers = content.tables.flatMap((table) =>
  table.rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) => {
      const percent = typeof cell === "string" ? /^(\d+(?:\.\d+)?)%$/.exec(cell) : null;
      const number = percent === null ? cell : Number(percent[1]);
      return typeof number === "number" ? [{ table, row, column, number, sign: percent === null ? "" : "%" }] : [];
    }),
  ),
);
const days = content.tables.flatMap((table) =>
  table.rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) =>
      typeof cell === "string" && /^\d{4}-\d\d-\d\d$/.test(cell) ? [{ table, row, column, date: cell }] : [],
    ),
  ),
);
const before = figuresOf(content);
const sheetsBefore = before.sheets();

/** Of a table of yields of the grower's own only the cells around the day and the stand in question are asked. */
const isOurs = ({ name }: RawTable): boolean => inputTables.some(({ sheet }) => plainHeading(sheet) === plainHeading(name));

describe("in a workbook in which every column counts", () => {
  it("nothing is told, and every column of numbers that we offer has one", () => {
    expect(before.told).toBe("[]");
    const filled = new Set(numbers.map(({ table, column }) => `${plainHeading(table.name)} ${plainHeading(table.headers[column]!)}`));
    const offered = inputTables.flatMap(({ sheet, columns }) =>
      columns.filter(({ numberFormat = "yyyy" }) => !numberFormat.includes("yyyy")).map(({ heading }) => ({ sheet, heading })),
    );
    expect(
      offered
        .filter(({ sheet, heading }) => !filled.has(`${plainHeading(sheet)} ${plainHeading(heading)}`))
        .map(({ sheet, heading }) => `${sheet}: ${heading}`),
    ).toEqual([]);
  });

  it(
    "each number moves a figure or is told, up, down, to nothing and by a slip of the comma, unless its column is listed",
    { timeout: 600_000 },
    () => {
      const silent = numbers
        .filter(({ table }) => isOurs(table))
        .flatMap(({ table, row, column, number, sign }) =>
          factors.flatMap((factor) => {
            const moved = Number((number * factor).toPrecision(12));
            // 55 and 0.55 are the same share, and 8 and 0.08 the same rate.
            if (factor === 0.01 && sign === "" && isPercent(table, column)) return [];
            return isSilent(put(table, row, column, sign === "" ? moved : `${moved}%`))
              ? [{ table, row, column, words: `${table.name}, row ${row + 1}, ${table.headers[column]!}: ${moved}` }]
              : [];
          }),
        );
      expect(silent.filter(({ table, row, column }) => !isListed(table, row, column)).map(({ words }) => words)).toEqual([]);
    },
  );

  it("the cells of the grower's own table of yields that answer for the day and the stand do too", () => {
    const own = numbers.filter(({ table }) => !isOurs(table));
    const moving = own.filter(({ table, row, column, number }) => figuresOf(put(table, row, column, number * 1.04)).json !== before.json);
    // Planned 1 May at the target of 32,000 and planted 5 May at fewer than 28,000 to 34,000: the four cells around them, and the
    // row of the day after.
    expect([own.length, moving.length]).toEqual([9, 4]);
  });

  it("each date moves a figure or is told, a month and a half earlier and later, unless its column is listed", { timeout: 600_000 }, () => {
    const silent = days
      .filter(({ table }) => isOurs(table))
      .flatMap(({ table, row, column, date }) =>
        [-45, 45].flatMap((by) => {
          const moved = new Date(Date.parse(date) + by * 86_400_000).toISOString().slice(0, 10);
          return isSilent(put(table, row, column, moved))
            ? [{ table, row, column, words: `${table.name}, row ${row + 1}, ${table.headers[column]!}: ${moved}` }]
            : [];
        }),
      );
    expect(silent.filter(({ table, row, column }) => !isListed(table, row, column)).map(({ words }) => words)).toEqual([]);
  });

  it("what is listed is of columns that there are, and each is met in the workbook", () => {
    const met = (entry: (typeof movesNothing)[number]) =>
      content.tables.some(
        (table) =>
          plainHeading(table.name) === plainHeading(entry.table) &&
          table.rows.some((cells, row) =>
            cells.some(
              (cell, column) =>
                cell !== "" && plainHeading(table.headers[column]!) === plainHeading(entry.column) && isListed(table, row, column),
            ),
          ),
      );
    expect(movesNothing.filter((entry) => !met(entry))).toEqual([]);
  });

  it.each([1, 2, 30])("a row below a table is told, %i rows down", { timeout: 900_000 }, (by) => {
    const silent = content.tables
      .flatMap((table) => table.rows.map((cells) => ({ table, cells })))
      .filter(({ table, cells }) => {
        const below = { ...content, tables: content.tables.map((each) => (each === table ? { ...each, below: [{ by, cells }] } : each)) };
        return figuresOf(below).told === before.told;
      });
    expect(silent.map(({ table, cells }) => `${table.name}: ${String(cells[0])}`)).toEqual([]);
  });
});
