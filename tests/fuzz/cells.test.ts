/** Random workbooks with strange values in random cells: always a report, always with figures or none, and each fault has its place. */
import { it } from "vitest";
import type { Cell, WorkbookContent } from "../../src/workbook/cell";
import { explain } from "../../src/workbook/explain";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { resultSheets } from "../../src/workbook/sheets/resultSheets";
import { randomWorkbook } from "../exact/randomWorkbook";
import type { Habits } from "../exact/typing";
import { fuzz, longest, noValues } from "./cases";
import { strangeText } from "./strangeTexts";

const strangeCell = (habits: Habits): Cell =>
  habits.pick<() => Cell>(
    () => strangeText(habits),
    () => habits.pick(-1, 0, 1e308, -1e308, 5e-324, 1e15 + 0.3, 2_958_466, -1e-9, Number.MAX_SAFE_INTEGER),
    () => habits.pick(true, false),
  )();

function spoiled(content: WorkbookContent, habits: Habits): WorkbookContent {
  const tables = content.tables.map((table) => ({ ...table, headers: [...table.headers], rows: table.rows.map((row) => [...row]) }));
  for (let left = 1 + habits.below(12); left > 0; left -= 1) {
    const table = tables[habits.below(tables.length)];
    if (table === undefined) break;
    const row = table.rows[habits.below(Math.max(1, table.rows.length))];
    const column = habits.below(Math.max(1, table.headers.length));
    if (row === undefined) continue;
    if (habits.below(12) === 0) table.headers[column] = strangeText(habits);
    else row[column] = strangeCell(habits);
  }
  return { ...content, tables };
}

it("cells", { timeout: longest }, () =>
  fuzz("cells", 150, (habits) => {
    const content = spoiled(randomWorkbook(habits.below(1_000_000)), habits);
    const report = seasonReport(content);
    const unplaced = report.problems.filter(({ at }) => at.table === "").map(({ code }) => `${code} has no place`);
    const unsaid = report.problems.flatMap((problem) => noValues(explain(problem), problem.code));
    return Promise.resolve([
      ...unplaced,
      ...unsaid,
      ...noValues(reportJson(report), "report"),
      ...noValues(resultSheets(report), "sheets"),
    ]);
  }),
);
