import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { gradeOf } from "./problem";
import { seasonReport } from "./report";

const farm = (headings: string, row: string, loads: readonly string[], more = "") =>
  seasonReport(
    contentFromText(`
Crops
| Crop | Expected price | Standard moisture |
| Corn | 4 | 15.5 |
Fields
| Field | Crop | Acres | Yield goal |${headings}
| Alder | Corn | 100 | 200 |${row}
Other costs
| Item | Kind | Amount | Basis |
| Office | overhead | 900 | whole farm |
${loads.length === 0 ? "" : `Harvest\n| Field | Date | Weight or bushels | Moisture |\n` + `${loads.map((load) => `| Alder | ${load} |`).join("\n")}`}
${more}`),
  );
const told = (...of: Parameters<typeof farm>) => farm(...of).problems.map((problem) => `${problem.code} ${gradeOf(problem)}`);
const load = "2031-10-10 | 900 | 15";

describe("a harvest", () => {
  it("in a workbook from before the column is asked about once, and leaves the figures complete", () => {
    const two = farm("", "\n| Birch | Corn | 50 | 200 |", [load, "2031-10-11 | 900 | 15"]);
    expect(two.problems.map(({ code, found, at }) => [code, found, at])).toEqual([
      ["harvest-open", "Alder", { table: "Fields", column: "Harvest done" }],
    ]);
    expect(two.problemsOf({ of: "farm" })).toEqual([]);
    expect(told("", "", [])).toEqual([]);
  });

  it("under way asks nothing, until all that was looked for is weighed", () => {
    expect(told(" Harvest done |", " |", [load])).toEqual([]);
    expect(told(" Harvest done |", " |", [load, "2031-10-12 | 19100 | 15"])).toEqual(["harvest-open check"]);
    expect(told(" Harvest done |", " no |", [load])).toEqual([]);
  });

  it("has no end without a load, and none before its last load", () => {
    expect(told(" Harvest done |", " yes |", [])).toEqual(["harvest-without-load fix"]);
    expect(told(" Harvest done |", " 2031-10-09 |", [load])).toEqual(["load-after-done check"]);
    expect(told(" Harvest done |", " 2031-10-10 |", [load])).toEqual([]);
    expect(told(" Harvest done |", " soon |", [load])).toEqual(["not-a-date fix"]);
  });

  it("that is done makes the loads the yield", () => {
    const yields = (done: string) => farm(" Harvest done |", ` ${done} |`, [load]).figures.crops[0]!;
    expect([yields("").outlook.yields.used.toFixed(), yields("").final]).toEqual(["200", null]);
    expect([yields("yes").outlook.yields.used.toFixed(), yields("Y").final!.yields.used.toFixed()]).toEqual(["9", "9"]);
  });
});

describe("land that grows two crops", () => {
  const second = (row: string, more = "", alder = " | 200 |") => told(" Same land as | Rent per acre |", `${alder}\n| ${row} |`, [], more);
  it("has no more of the second crop than there is land, one rent, and its name", () => {
    expect(second("Alder peas | Corn | 60 | 40 | alder |")).toEqual([]);
    expect(second("Alder peas | Corn | 60 | 40 | Alder |\n| Alder oats | Corn | 50 | 40 | Alder |")).toEqual(["same-land fix"]);
    expect(second("Alder peas | Corn | 60 | 40 | Alder | 150")).toEqual(["same-land fix"]);
    expect(second("Alder peas | Corn | 60 | 40 | Alder | 150", "", " | |")).toEqual([]);
    expect(second("Alder peas | Corn | 60 | 40 | Aldr |")).toEqual(["unknown-name fix"]);
    expect(second("Alder peas | Corn | 60 | 40 | Alder peas |")).toEqual(["same-land fix"]);
    expect(second("Alder peas | Corn | 60 | 40 | Alder |\n| Alder oats | Corn | 50 | 40 | Alder peas |")).toEqual(["same-land fix"]);
  });

  it("asks for the share of the second crop on crop-shared land", () => {
    const shared = (peas: string) =>
      told(" Same land as | Operator share of crop % |", ` | 60 |\n| Alder peas | Corn | 60 | 40 | Alder | ${peas} |`, []);
    expect([shared(""), shared("60")]).toEqual([["same-land fix"], []]);
  });
});
