import { describe, expect, it } from "vitest";
import { paneProblems, paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { faultyContent } from "../../../tests/support/paneWorkbook";
import type { Problem } from "../../workbook/problem";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { entriesLine } from "./entriesWords";
import { problemsView } from "./problemsView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = reportOf(paneSeason, paneProblems);

describe("the page of problems", () => {
  it("groups them by table and says where, what was found and what to do", () => {
    const { summary, groups } = problemsView(report, null, format);
    expect(summary).toMatch(/^2 entries to fix\./);
    expect(groups.map(({ table, problems }) => [table, problems.length])).toEqual([
      ["Purchases", 1],
      ["Applications", 1],
    ]);
    expect(groups[0]!.problems[0]).toMatchObject({
      where: "entry 5, Quantity",
      what: ': "two loads" is not a number.',
      found: "",
      remedy: "Enter a number alone, without words.",
      at: { table: "Purchases", row: 5, column: "Quantity" },
    });
  });

  it("goes on after the place where the words have no colon", () => {
    const blank: Problem = { code: "blank", at: { table: "Fields", row: 2, column: "Acres" }, found: "", touches: [] };
    expect(problemsView(reportOf(paneSeason, [blank]), null, format).groups[0]!.problems[0]).toMatchObject({
      where: "entry 2, Acres",
      what: " is blank.",
    });
  });

  it("names a table or a heading where no row is at fault", () => {
    const column: Problem = { code: "column-missing", at: { table: "Fields", column: "Acres" }, found: "", touches: [] };
    expect(problemsView(reportOf(paneSeason, [column]), null, format).groups[0]!.problems[0]).toMatchObject({
      where: "heading Acres",
      what: ": The table Fields has no column Acres.",
    });
  });

  it("shows one subject's alone when asked, and says that there are more", () => {
    expect(problemsView(report, { of: "item", name: "Urea" }, format)).toMatchObject({
      summary: "1 of 2 entries to fix touches Urea.",
      isPart: true,
    });
    expect(problemsView(report, { of: "field", name: "Mill Road" }, format).summary).toBe("No entry to fix touches Mill Road any more.");
  });

  it("names the cell as the sheet does, and the tables that lack a name", () => {
    const { problems } = problemsView(seasonReport(faultyContent), null, format).groups[0]!;
    expect(problems[0]).toMatchObject({ where: "entry 5, Quantity", cell: "C6" });
    const [application] = problemsView(seasonReport(faultyContent), null, format).groups[1]!.problems;
    expect(application).toMatchObject({
      where: "entry 8, Item",
      cell: "B9",
      what: ': "Ureah" is not in the table Items. Did you mean "Urea"?',
    });
    const target: Problem = {
      code: "unknown-name",
      at: { table: "Applications", row: 1, column: "Field or Crop" },
      found: "Milroad",
      touches: [],
    };
    expect(problemsView(reportOf(paneSeason, [target]), null, format).groups[0]!.problems[0]!.what).toBe(
      ': "Milroad" is not in the tables Fields and Crops.',
    );
  });

  it("lists so many at a time and counts the rest", () => {
    const blanks = Array.from({ length: 1200 }, (_, index): Problem => ({
      code: "blank",
      at: { table: "Fields", row: index + 1, column: "Acres" },
      found: "",
      touches: [],
    }));
    const view = problemsView(reportOf(paneSeason, blanks), null, format, 300);
    expect([view.groups[0]!.problems.length, view.more, view.summary]).toEqual([
      300,
      900,
      "1,200 entries to fix. Figures that they touch are incomplete until they are put right.",
    ]);
    expect(problemsView(reportOf(paneSeason, blanks.slice(0, 1)), null, format, 300)).toMatchObject({
      more: 0,
      summary: "1 entry to fix. Figures that it touches are incomplete until it is put right.",
    });
  });

  it("offers to take in entries below a table, and nothing where they may be something else", () => {
    const below = (code: Problem["code"], found: string): Problem => ({
      code,
      at: { table: "Fields", row: 9 },
      found,
      touches: [],
      like: "right under",
    });
    const { groups } = problemsView(
      reportOf(paneSeason, [below("rows-below", "1"), below("rows-below", "3"), below("rows-near", "1")]),
      null,
      format,
    );
    expect(groups.flatMap(({ problems }) => problems.map(({ takesIn }) => takesIn))).toEqual(["Take it in", "Take the 3 entries in", null]);
  });

  it("offers to read a table that is almost named as ours as ours, and none that stands beside it", () => {
    const table = (code: Problem["code"]): Problem => ({ code, at: { table: "Operations" }, found: "tblOperations", touches: [] });
    const { groups } = problemsView(reportOf(paneSeason, [table("table-almost"), table("table-beside")]), null, format);
    expect(groups.flatMap(({ problems }) => problems.map(({ readsAs }) => readsAs))).toEqual(["tblOperations", null]);
  });

  it("counts both grades in one line, which is empty where there is nothing to look at", () => {
    expect(
      [
        [3, 2],
        [1, 0],
        [0, 1],
        [0, 4],
        [0, 0],
      ].map(([fix, check]) => entriesLine(fix!, check!, format)),
    ).toEqual(["3 entries to fix, 2 to check", "1 entry to fix", "1 entry to check", "4 entries to check", ""]);
  });

  it("says when there is nothing to put right", () => {
    expect(problemsView(reportOf(), null, format)).toEqual({
      summary: "Nothing to fix: every entry was understood.",
      isPart: false,
      groups: [],
      more: 0,
    });
  });
});
