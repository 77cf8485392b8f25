/** Workbooks as they come when people have worked in them are read to the end: what is wrong is a problem, never an exception. */
import { describe as inWords } from "../../src/workbook/explain";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import { expect, it } from "vitest";
import { Habits } from "../exact/typing";
import { everyColumn } from "../support/everyColumn";
import { damaged } from "../support/messyWorkbook";

const rounds = 60;
const mostDamages = 12;

it(
  `${rounds} workbooks with up to ${mostDamages} damages each have a report without a number that is none, and words for every ` +
    "problem",
  () => {
    const told = new Set<string>();
    for (let seed = 1; seed <= rounds; seed += 1) {
      const report = seasonReport(damaged(everyColumn(), new Habits(seed * 7919, false, "1900"), 1 + (seed % mostDamages)));
      expect(JSON.stringify(reportJson(report)), `seed ${seed}`).not.toMatch(/NaN|Infinity|undefined/);
      for (const problem of report.problems) {
        told.add(problem.code);
        expect(inWords(problem).what, `seed ${seed}`).not.toBe("");
      }
    }
    // The damages reach deep: tables, headings, rows and cells.
    expect(told.size).toBeGreaterThan(20);
  },
);
