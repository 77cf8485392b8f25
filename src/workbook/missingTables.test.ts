import { describe, expect, it } from "vitest";
import { countedContent } from "../../tests/support/paneWorkbook";
import type { RawTable } from "./cell";
import { seasonReport } from "./report";
import { lenderPages } from "./sheets/lender/lenderPages";
import { resultSheets } from "./sheets/resultSheets";

/** Everything that is worked out only where somebody looks at it, looked at. */
function lookedAt(tables: readonly RawTable[]): number {
  const report = seasonReport({ ...countedContent, tables });
  const { crops, items, changes, stands, overlays } = report.figures;
  const sheets = [...resultSheets(report), ...(crops.length === 0 ? [] : [lenderPages(report, { date: "2031-06-15" })])];
  return crops.length + items.length + changes.length + stands.length + overlays.length + sheets.length;
}

describe("a workbook that lacks some tables", () => {
  const all = countedContent.tables;
  it("gives what figures there are, whichever one or two of them it lacks", { timeout: 120_000 }, () => {
    for (const one of all)
      for (const other of all) expect(lookedAt(all.filter((table) => table !== one && table !== other))).toBeGreaterThan(0);
  });
  it("gives them also where it has only one or two: bills without a field to bear them", () => {
    for (const one of all) for (const other of all) expect(lookedAt([one, other])).toBeGreaterThan(0);
  });
});
