/** A problem as one line of a terminal: where, what was found, what to do. */
import { explain, placed } from "../workbook/explain";
import { gradeOf, type Problem } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";
import { around, spelledText } from "../workbook/spelling";
import { onOneLine } from "./terminalText";

export const problemLine = (problem: Problem, report: SeasonReport): string =>
  onOneLine(
    around(
      `${gradeOf(problem) === "check" ? "To check: " : ""}${placed(problem, report)} ${explain(problem).remedy}`,
      problem.found,
      (ours) => spelledText(ours, report),
    ),
  );
