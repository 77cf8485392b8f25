import type { ReadingMemory } from "../core/readingMemory";
import { seasonFigures, type SeasonFigures } from "../core/seasonFigures";
import type { WorkbookContent } from "./cell";
import { costChecks } from "./costChecks";
import { planterProblems } from "./planterProblems";
import { toFix } from "./problem";
import { inOrder, readSeason } from "./readSeason";
import type { SeasonReading, SeasonReport } from "./seasonReport";
import { problemsBySubject } from "./touched";

/**
 * Reads a workbook and computes its season: all that can be, whatever problems there are.
 *
 * @param isTyping whether somebody is at the workbook, so that a half-typed last row is being entered and no fault yet
 * @param kept of the last report of the same workbook, so that what was not touched since is not read again
 */
export function seasonReport(content: WorkbookContent, isTyping = false, kept?: ReadingMemory): SeasonReport {
  const read = withCosts(readSeason(content, isTyping, kept));
  const figures = seasonFigures(read.season);
  const reading = withPlanters(read, figures);
  return { ...reading, figures };
}

/** What is read is right without a cost, and so is a change, which adds and takes away; a cost per acre is not. */
function withCosts(reading: SeasonReading): SeasonReading {
  const without = costChecks(reading.season);
  if (without.length === 0) return reading;
  const problems = inOrder([...reading.problems, ...without]);
  const problemsOf = problemsBySubject(reading.season, problems);
  return { ...reading, problems, problemsOf: (subject) => (subject.of === "change" ? reading.problemsOf(subject) : problemsOf(subject)) };
}

/** What is found once the planter's repair is priced; the season's figures do not rest on it. */
function withPlanters(reading: SeasonReading, { planters }: SeasonFigures): SeasonReading {
  const found = planterProblems(planters);
  if (found.length === 0) return reading;
  return {
    ...reading,
    problems: inOrder([...reading.problems, ...found]),
    problemsOf: (subject) => [...reading.problemsOf(subject), ...(subject.of === "planter" ? toFix(found) : [])],
  };
}
