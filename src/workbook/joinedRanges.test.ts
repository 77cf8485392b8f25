import { describe, expect, it } from "vitest";
import { besideOwnSheets } from "../../tests/support/ownSheets";
import type { RawTable, WorkbookContent } from "./cell";
import { cellOf } from "./cellName";
import { seasonReport } from "./report";
import { cellsBeside, constantSaid } from "./matchConstants";

/** A season with a sheet for each field, of one layout, matched as `matches` say. */
function content(sheets: string, matches: string, cells: Readonly<Record<string, string>> = {}): WorkbookContent {
  const { content: ours, own } = besideOwnSheets(matches, sheets);
  const beside = Object.entries(cells).map(([address, says]): [string, RawTable] => [
    address,
    { name: address, headers: [says], rows: [], body: { sheet: address.split("!")[0]!, row: 1, column: 0 } },
  ]);
  return { ...ours, ranges: new Map([...own.map((table) => [`${table.name}!A1:C9`, table] as const), ...beside]) };
}
const match = (sheet: string, pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([column, heading]) => `| Budget | ${sheet}!A1:C9 | ${column} | ${heading} |`).join("\n");
const layout = (named: string) =>
  [
    ["For", named],
    ["Kind", "Cost of"],
    ["Amount", "$/ac"],
  ] as const;
const both = (named: string) => `${match("Alder", layout(named))}\n${match("Birch", layout(named))}`;
const lines = (of: WorkbookContent) =>
  seasonReport(of).season.budget!.map(({ over, kind, amount }) => `${Object.values(over)[0]} ${kind} ${amount.toFixed()}`);
const codes = (of: WorkbookContent) => seasonReport(of).problems.map(({ code }) => code);

const sheets = `Alder
| Cost of | $/ac |
| Seed | 110 |
| Spray | 40 |
Birch
| Cost of | $/ac |
| Seed | 95 |`;

describe("the same layout on several sheets", () => {
  it("is one table, the field's name the sheet's", () => {
    const of = content(sheets, both("(sheet name)"));
    expect([lines(of), codes(of)]).toEqual([["Alder seed 110", "Alder crop protection 40", "Birch seed 95"], []]);
  });

  it("takes the field's name from a cell beside the range", () => {
    const of = content(
      sheets.replace("Alder\n", "One\n").replace("Birch\n", "Two\n"),
      both("(cell B12)").replaceAll("Alder!", "One!").replaceAll("Birch!", "Two!"),
      { "One!B12": "Birch", "Two!B12": "Alder" },
    );
    expect(lines(of)).toEqual(["Birch seed 110", "Birch crop protection 40", "Alder seed 95"]);
    // A cell that is blank names no field, which is told where the rows stand.
    const blank = content(sheets, both("(cell B12)"), { "Alder!B12": "Alder" });
    expect([lines(blank), codes(blank)]).toEqual([["Alder seed 110", "Alder crop protection 40"], ["blank"]]);
  });

  it(
    "has rows that the grower's headings and remarks stand in alone, which are no entries, with a digit or beside another cell they " +
      "are",
    () => {
      const beside = (row: string) => codes(content(sheets.replace("| Spray | 40 |", `${row}\n| Spray | 40 |`), both("(sheet name)")));
      expect([beside("| INPUTS | |"), beside("| | |\n| agreed with Pat | |")]).toEqual([[], []]);
      expect(beside("| Parts 40 | |")).toEqual(["not-in-list", "blank"]);
      expect(beside("| fuel | about 9 |")).toEqual(["not-a-number"]);
    },
  );

  it("takes what the match says of every row", () => {
    const of = content(
      sheets,
      `${both("(always all)")}\n| Budget | Alder!A1:C9 | Basis | (always whole) |\n| Budget | Birch!A1:C9 | Basis | (always whole) |`,
    );
    expect(seasonReport(of).season.budget!.map(({ over, basis }) => ("all" in over ? `all ${basis}` : ""))).toEqual([
      "all whole",
      "all whole",
      "all whole",
    ]);
  });

  it("places faults on the sheet that they stand on, rows below a range too", () => {
    const report = seasonReport(
      content(sheets.replace("| Seed | 95 |", "| Seed | soon |\n> | | |\n> | Fuel | 12 |"), both("(sheet name)")),
    );
    expect(report.problems.map((problem) => [problem.code, cellOf(report, problem.at)])).toEqual([
      ["not-a-number", "Birch!B2"],
      ["rows-below", "Birch!A4"],
    ]);
    expect(cellOf(report, report.season.budget![1]!.source)).toBe("Alder!A3");
  });

  it("tells ranges that share cells, whose entries would count twice", () => {
    const of = content(sheets, `${both("(sheet name)")}\n${match("Alder", layout("(sheet name)")).replaceAll("A1:C9", "A1:B2")}`);
    const shared: WorkbookContent = { ...of, ranges: new Map([...of.ranges, ["Alder!A1:B2", of.ranges.get("Alder!A1:C9")!]]) };
    expect([lines(shared).length, codes(shared)]).toEqual([3, ["table-twice"]]);
  });

  it("is told of a heading's unit on each sheet", () => {
    const matched = (of: string) => of.replace("| Birch!A1:C9 | Amount | $/ac |", "| Birch!A1:C9 | Amount | Cost $/ha |");
    const of = content(sheets.replace("Birch\n| Cost of | $/ac |", "Birch\n| Cost of | Cost $/ha |"), matched(both("(sheet name)")));
    expect(codes(of)).toEqual(["heading-unit"]);
  });

  it("tells of a cell that may be old in any of them, at its own place", () => {
    const of = content(sheets, both("(sheet name)"));
    const ranges = new Map(of.ranges);
    ranges.set("Birch!A1:C9", { ...ranges.get("Birch!A1:C9")!, stale: [{ row: 0, column: 1 }] });
    const { problems, placeOf, season } = seasonReport({ ...of, ranges });
    expect(problems.map(({ code, at }) => [code, at.column, placeOf(at)])).toEqual([
      ["stale-value", "Amount", { sheet: "Birch", row: 1, column: 1, isOwn: true }],
    ]);
    expect(season.budget).toHaveLength(3);
  });
});

describe("what fills a column", () => {
  it("is said in brackets, and asked of the workbook where it is a cell", () => {
    expect(["(Sheet name)", "(cell $b$12)", "(cell B)", "Name", "(always per acre)", "(always )"].map(constantSaid)).toEqual([
      { cell: null },
      { cell: "B12" },
      null,
      null,
      { text: "per acre" },
      null,
    ]);
    expect(
      cellsBeside([
        { range: "'My field'!A1:C9", heading: "(cell B12)" },
        { range: "costs", heading: "(cell B12)" },
        { range: "Home!A1:B2", heading: "Name" },
      ]),
    ).toEqual(["'My field'!B12"]);
  });
});
