import { describe, expect, it } from "vitest";
import { paneProblems, paneSeason, reportOf } from "../../../tests/support/paneSeason";
import type { Problem } from "../../workbook/problem";
import { problemsView } from "./problemsView";

const report = reportOf(paneSeason, paneProblems);

describe("the page of problems", () => {
  it("groups them by table and says where, what was found and what to do", () => {
    const { summary, groups } = problemsView(report, null);
    expect(summary).toMatch(/^2 problems\./);
    expect(groups.map(({ table, problems }) => [table, problems.length])).toEqual([["Purchases", 1], ["Applications", 1]]);
    expect(groups[0]!.problems[0]).toMatchObject({
      where: "row 5, Quantity", what: ": \"two loads\" is not a number.", found: "", remedy: "Enter a number alone, without words.",
      at: { table: "Purchases", row: 5, column: "Quantity" },
    });
  });

  it("goes on after the place where the words have no colon", () => {
    const blank: Problem = { code: "blank", at: { table: "Fields", row: 2, column: "Acres" }, found: "", touches: [] };
    expect(problemsView(reportOf(paneSeason, [blank]), null).groups[0]!.problems[0]).toMatchObject({ where: "row 2, Acres", what: " is blank." });
  });

  it("names a table or a heading where no row is at fault", () => {
    const column: Problem = { code: "column-missing", at: { table: "Fields", column: "Acres" }, found: "", touches: [] };
    expect(problemsView(reportOf(paneSeason, [column]), null).groups[0]!.problems[0]).toMatchObject({ where: "heading Acres", what: ": The table Fields has no column Acres." });
  });

  it("shows one subject's alone when asked, and says that there are more", () => {
    expect(problemsView(report, { of: "item", name: "Urea" })).toMatchObject({ summary: "1 of 2 problems touches Urea.", isPart: true });
    expect(problemsView(report, { of: "field", name: "Mill Road" }).summary).toBe("No problem touches Mill Road any more.");
  });

  it("says when there is nothing to put right", () => {
    expect(problemsView(reportOf(), null)).toEqual({ summary: "No problems: every entry was understood.", isPart: false, groups: [] });
  });
});
