import { seasonFigures } from "../core/seasonFigures";
import type { WorkbookContent } from "./cell";
import { costChecks } from "./costChecks";
import { inOrder, readSeason } from "./readSeason";
import type { SeasonReading, SeasonReport } from "./seasonReport";
import { problemsBySubject } from "./touched";

/** Reads a workbook and computes its season: all that can be, whatever problems there are. */
export function seasonReport(content: WorkbookContent): SeasonReport {
  const reading = withCosts(readSeason(content));
  return { ...reading, figures: seasonFigures(reading.season) };
}

/** What is read is right without a cost, and so is a change, which adds and takes away; a cost per acre is not. */
function withCosts(reading: SeasonReading): SeasonReading {
  const without = costChecks(reading.season);
  if (without.length === 0) return reading;
  const problems = inOrder([...reading.problems, ...without]);
  const problemsOf = problemsBySubject(reading.season, problems);
  return { ...reading, problems, problemsOf: (subject) => (subject.of === "change" ? reading.problemsOf(subject) : problemsOf(subject)) };
}
