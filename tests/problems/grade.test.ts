/** The two grades of problems: an entry to fix leaves figures incomplete, one to check does not. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../support/tableFromText";
import { formatOf } from "../../src/pane/format";
import { problemsView } from "../../src/pane/problems/problemsView";
import { summary } from "../../src/cli/summary";
import { placed } from "../../src/workbook/explain";
import { checkCodes, gradeOf, problemCodes } from "../../src/workbook/problem";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { lenderNotices } from "../../src/workbook/sheets/lender/notes";

const farm = `Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |
Items
| Item | Kind | Pack unit | Plan price per pack |
| Urea | fertilizer | lb | 0.30 |
Applications
| Field or Crop | Item | Rate | Rate unit | Date | Status |
| Corn | Urea | 100 | lb/ac | 2031-05-01 | done |
`;
const bought = (...rows: readonly string[]) =>
  seasonReport(
    contentFromText(
      `${farm}Purchases\n| Date | Item | Quantity | Unit | Amount | Supplier | Note |\n${rows.map((row) => `| ${row} |`).join("\n")}`,
    ),
  );
const codes = (...rows: readonly string[]) => bought(...rows).problems.map(({ code, at }) => `${code} ${at.row}`);
const load = "2031-04-01 | Urea | 5000 | lb | 1500";
const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");

describe("an invoice line that is like another", () => {
  it("is told with both places", () => {
    const report = bought(`${load} | | `, `${load} | | `);
    expect(report.problems).toMatchObject([
      { code: "line-twice", at: { table: "Purchases", row: 2 }, other: { table: "Purchases", row: 1 } },
    ]);
    expect(placed(report.problems[0]!, report)).toBe(
      "Purchases, entry 2 (A3): the line is like Purchases, entry 1 (A2) (Urea), and both are counted.",
    );
  });

  it("is not told where Note, supplier, day or money differ", () => {
    expect(codes(`${load} | | first load`, `${load} | | second load`)).toEqual([]);
    expect(codes(`${load} | Elevator | `, `${load} | Dealer | `)).toEqual([]);
    expect(codes(`${load} | | `, "2031-04-02 | Urea | 5000 | lb | 1500 | | ", "2031-04-01 | Urea | 5000 | lb | 1500.01 | | ")).toEqual([]);
  });

  it("is found for each after the first, in any unit", () => {
    expect(codes(`${load} | | `, "2031-04-01 | Urea | 2.5 | ton | 1500 | | ", `${load} | | `)).toEqual(["line-twice 2", "line-twice 3"]);
  });
});

describe("what is only to check", () => {
  const report = bought(`${load} | | `, `${load} | | `);

  it("leaves every figure complete, and counts as it stands: 10,000 lb for 3,000, of which 10,000 are used, 30 an acre", () => {
    expect(reportJson(report)).toMatchObject({
      complete: true,
      problems: [{ code: "line-twice", grade: "check", other: { table: "Purchases", row: 1, column: null } }],
    });
    expect(report.problemsOf({ of: "crop", name: "Corn" })).toEqual([]);
    expect(report.problemsOf({ of: "farm" })).toEqual([]);
    expect(report.figures.crops[0]!.outlook.costPerArea.byKind.get("fertilizer")!.toFixed()).toBe("30");
    expect(lenderNotices(report).map(({ code }) => code)).not.toContain("incomplete");
    expect(summary(report)).not.toContain("INCOMPLETE");
  });

  it("is listed after the entries to fix, under a name of its own", () => {
    expect(problemsView(report, null, format)).toMatchObject({
      summary: "Nothing to fix: every entry was understood. 1 to check: counted as it stands.",
      groups: [{ table: "Purchases", grade: "check", problems: [{ where: "entry 2", other: { words: "Purchases, entry 1" } }] }],
    });
    const both = bought(`${load} | | `, `${load} | | `, "x | Urea | 1 | lb | 1 | | ");
    expect(problemsView(both, null, format)).toMatchObject({
      summary: "1 entry to fix. Figures that it touches are incomplete until it is put right. 1 to check: counted as it stands.",
      groups: [
        { table: "Purchases", grade: "fix" },
        { table: "Purchases", grade: "check" },
      ],
    });
    expect(reportJson(both).complete).toBe(false);
    expect(both.problemsOf({ of: "farm" }).map(({ code }) => code)).toEqual(["not-a-date"]);
  });
});

describe("the grades", () => {
  it("are fix for all but the codes of a list, each of which is a code", () => {
    expect(problemCodes.filter((code) => gradeOf({ code }) === "check")).toEqual(problemCodes.filter((code) => checkCodes.includes(code)));
  });
});
