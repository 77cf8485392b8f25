import { describe, expect, it } from "vitest";
import { describe as described, explain } from "../../src/workbook/explain";
import { problemCodes } from "../../src/workbook/problem";
import { readSeason } from "../../src/workbook/readSeason";
import { seasonReport } from "../../src/workbook/report";
import { contentFromText } from "../support/tableFromText";
import { cases } from "./cases";

describe("a workbook whose owner", () => {
  it.each(cases)("$slip has the problem $code, with its place", ({ code, workbook, at: [table, row, column], found, brings }) => {
    const { problems } = seasonReport(contentFromText(workbook));
    const problem = problems.find((each) => each.code === code);
    expect(problem, problems.map((each) => `${each.code} ${JSON.stringify(each.at)}`).join("; ")).toBeDefined();
    expect(problem!.at).toEqual({ table, ...(row === undefined ? {} : { row }), ...(column === undefined ? {} : { column }) });
    if (found !== undefined) expect(problem!.found).toBe(found);
    expect(problem!.touches.length).toBeGreaterThan(0);
    // And nothing else is said: one slip is one problem. Most of these workbooks are too small to have a cost, which is told beside it.
    if (brings === undefined)
      expect(problems.map((each) => each.code).filter((each) => each === code || each !== "cost-none")).toEqual([code]);
  });

  it("has a formula that could not be worked out again has a stale value", () => {
    const content = contentFromText(
      cases.find(({ code }) => code === "blank")!.workbook.replace("| Alder | Corn | |", "| Alder | Corn | 100 |"),
    );
    const stale = {
      ...content,
      tables: content.tables.map((table) =>
        table.name === "Fields" ? { ...table, stale: [2, 3].map((column) => ({ row: 0, column })) } : table,
      ),
    };
    expect(readSeason(stale).problems.map(({ code, at, found }) => [code, at, found])).toEqual([
      ["stale-value", { table: "Fields", row: 1, column: "Acres" }, "100"],
      ["stale-value", { table: "Fields", row: 1, column: "Yield goal" }, "200"],
    ]);
  });

  it("has a formula that could not be worked out at all is told so, in a filled row and in one that only looks blank", () => {
    const content = contentFromText(`${cases.find(({ code }) => code === "blank")!.workbook}| | | | |`);
    const stale = {
      ...content,
      tables: content.tables.map((table) =>
        table.name === "Fields"
          ? {
              ...table,
              stale: [
                { row: 0, column: 2 },
                { row: 1, column: 0 },
              ],
            }
          : table,
      ),
    };
    const { problems } = readSeason(stale);
    expect(problems.map(({ code, at, found }) => [code, at, found])).toEqual([
      ["stale-value", { table: "Fields", row: 1, column: "Acres" }, ""],
      ["stale-value", { table: "Fields", row: 2, column: "Field" }, ""],
    ]);
    expect(explain(problems[0]!).what).toBe("Fields, entry 1, Acres: the formula could not be worked out, so the cell counts as blank.");
  });

  it("has a formula with one value in the file and another worked out is told which of them counts, and no figure waits for it", () => {
    const content = contentFromText(
      cases.find(({ code }) => code === "blank")!.workbook.replace("| Alder | Corn | |", "| Alder | Corn | 100 |"),
    );
    const differing = {
      ...content,
      tables: content.tables.map((table) =>
        table.name === "Fields" ? { ...table, differing: [{ row: 0, column: 2, notCounted: "120" }] } : table,
      ),
    };
    const { problems, problemsOf } = readSeason(differing);
    expect(problems.map(({ code, at, found, like }) => [code, at, found, like])).toEqual([
      ["value-differs", { table: "Fields", row: 1, column: "Acres" }, "100", "120"],
    ]);
    expect(explain(problems[0]!).what).toBe(
      'Fields, entry 1, Acres: the value that the file stores for this formula is not what it works out to. "100" is counted, not "120".',
    );
    expect(problemsOf({ of: "farm" })).toEqual([]);
  });

  it("has a table that Excel does not hand over is told so, once, with every figure incomplete", () => {
    const content = contentFromText(
      cases.find(({ code }) => code === "blank")!.workbook.replace("| Alder | Corn | |", "| Alder | Corn | 100 |"),
    );
    const without = {
      ...content,
      tables: content.tables.filter(({ name }) => name !== "Fields"),
      unreadable: [{ name: "FIELDS", why: "Excel met a fault of its own." }],
    };
    const { problems, problemsOf } = readSeason(without);
    expect(problems.map(({ code, at }) => [code, at])).toEqual([["table-unreadable", { table: "Fields" }]]);
    expect(problemsOf({ of: "farm" })).toHaveLength(1);
    expect(explain(problems[0]!)).toEqual({
      what: "The table Fields could not be read. Excel met a fault of its own.",
      remedy: "Set that right, or move the table's cells to a new table; all else was read.",
    });
  });

  it("matched a heading that the range has not is told so, and shown the place", () => {
    const loads = {
      name: "",
      headers: ["Where", "When", "Bushels", "Wet"],
      rows: [["Alder", "2031-10-01", 900, 16]],
      body: { sheet: "Loads", row: 1, column: 0 },
    };
    const match = (theirs: string) =>
      readSeason({
        ...contentFromText(`${cases[0]!.workbook}
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Matches
| Table | Range | Column | Heading |
| Harvest | Loads!A1:D9 | Field | Where |
| Harvest | Loads!A1:D9 | Date | When |
| Harvest | Loads!A1:D9 | Weight or bushels | ${theirs} |
| Harvest | Loads!A1:D9 | Moisture | Wet |`),
        ranges: new Map([["Loads!A1:D9", loads]]),
      });
    expect(match("bushels").season.harvest.map(({ field, quantity }) => [field, quantity.toFixed()])).toEqual([["Alder", "900"]]);
    const { problems, placeOf } = match("Bushel");
    const problem = problems.find(({ code }) => code === "match-missing")!;
    expect(problem).toMatchObject({
      code: "match-missing",
      at: { table: "Matches", row: 3, column: "Heading" },
      found: "Bushel",
      like: "Bushels",
    });
    expect(placeOf(problem.at)).toEqual({ sheet: "Matches", row: 3, column: 3 });
    expect(match("Bushel").season.harvest).toEqual([]);
  });

  it("made any slip at all still gets every figure that does not rest on it", () => {
    for (const { workbook } of cases) expect(() => seasonReport(contentFromText(workbook))).not.toThrow();
  });
});

describe("the problems", () => {
  it("each have a workbook here", () => {
    const covered = new Set<string>(cases.map(({ code }) => code));
    expect(
      problemCodes.filter(
        (code) => !covered.has(code) && !["stale-value", "match-missing", "value-differs", "table-unreadable", "row-open"].includes(code),
      ),
    ).toEqual([]);
  });

  it("say in one sentence what is wrong and in one what to do", () => {
    for (const { workbook, code } of cases) {
      const problem = seasonReport(contentFromText(workbook)).problems.find((each) => each.code === code)!;
      const { what, remedy } = explain(problem);
      expect(what, code).toMatch(/^\S.*[.?]$/);
      expect(remedy, code).toMatch(/^\S.*\.$/);
      expect(`${what} ${remedy}`).not.toMatch(/undefined|null|NaN/);
      expect(`${what}\n${remedy}`).toMatchSnapshot(code);
      expect(Object.keys(described(problem))).toEqual(["code", "grade", "table", "row", "column", "found", "other", "what", "remedy"]);
    }
  });
});
