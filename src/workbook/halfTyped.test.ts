/** A row that somebody has begun: no fault while it is the last one and somebody is there, never counted, and never kept from sight. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { explain } from "./explain";
import { seasonReport } from "./report";
import { reportJson } from "./reportJson";

const farm = `Crops\n| Crop | Expected price |\n| Corn | 4 |
Fields\n| Field | Crop | Acres | Yield goal |\n| Alder | Corn | 100 | 200 |
`;
const costs = (...rows: readonly string[]) =>
  `${farm}Other costs\n| Item | Kind | Amount | Basis |\n| Office | overhead | 900 | whole farm |\n` +
  `${rows.map((row) => `| ${row} |\n`).join("")}`;
const told = (text: string, isTyping: boolean) => {
  const report = seasonReport(contentFromText(text), isTyping);
  return {
    codes: report.problems.map(({ code, at }) => `${code} ${at.table} ${at.row ?? ""} ${at.column ?? ""}`.trim()),
    complete: reportJson(report).complete,
    report,
  };
};

describe("a half-typed row", () => {
  it("is being entered while it is the last one and somebody types, and says so", () => {
    const { codes, complete, report } = told(costs("Fees | | 8100 |"), true);
    expect([codes, complete]).toEqual([["row-open Other costs 2"], true]);
    expect(explain(report.problems[0]!)).toEqual({
      what: "Other costs, entry 2 is being entered (Fees, 8100) and not counted yet.",
      remedy: "Fill Kind, Basis, or delete the entry.",
    });
    expect(report.season.otherCosts.map(({ item }) => item)).toEqual(["Office"]);
  });

  it("is a fault where nobody is there to finish it, and above a later row", () => {
    expect(told(costs("Fees | | 8100 |"), false)).toMatchObject({
      codes: ["blank Other costs 2 Kind", "blank Other costs 2 Basis"],
      complete: false,
    });
    expect(told(costs("Fees | | 8100 |", "Tax | overhead | 20 | whole farm"), true)).toMatchObject({
      codes: ["blank Other costs 2 Kind", "blank Other costs 2 Basis"],
      complete: false,
    });
  });

  it("is a fault at once where what is typed is wrong", () => {
    expect(told(costs("Fees | | two loads |"), true).codes).toContain("not-a-number Other costs 2 Amount");
  });

  it("hides no other entry: one that names its field is told", () => {
    const begun =
      `${farm.trimEnd()}\n| Birch | Corn | | |\nOperations\n` +
      `| Field or Crop | Operation | Rate | Basis | Status |\n` +
      `| Birch | Disking | 90 | per acre | plan |\n` +
      `| Alder | Disking | 9 | per acre | plan |\n`;
    expect(told(begun, true)).toMatchObject({ codes: ["row-open Fields 2", "unknown-name Operations 1 Field or Crop"], complete: false });
    expect(told(begun, false)).toMatchObject({ codes: ["blank Fields 2 Acres", "blank Fields 2 Yield goal"], complete: false });
  });
});
