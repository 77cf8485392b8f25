/** What the page of problems says: every problem, grouped by its table, in the order of the workbook. */
import { placeWords } from "../../workbook/explain";
import { explain, type Place, type Problem, type Subject } from "../../workbook/problem";
import type { SeasonReport } from "../../workbook/seasonReport";

export type ProblemView = {
  readonly key: string;
  /** "row 3, Unit"; "heading Unit"; "the table". */
  readonly where: string;
  /** Goes on after `where`: ": "two loads" is not a number.", " is blank." */
  readonly what: string;
  /** What the cell holds; empty where nothing was found, or `what` says it. */
  readonly found: string;
  readonly remedy: string;
  readonly at: Place;
};

export type ProblemGroup = { readonly table: string; readonly problems: readonly ProblemView[] };

export type ProblemsView = {
  /** "3 problems", "2 of 5 problems touch Corn", "No problems …" */
  readonly summary: string;
  /** Whether some problems are left out because only one subject's are shown. */
  readonly isPart: boolean;
  readonly groups: readonly ProblemGroup[];
};

export function problemsView(report: Pick<SeasonReport, "problems" | "problemsOf">, of: Subject | null): ProblemsView {
  const shown = of === null ? report.problems : report.problemsOf(of);
  return {
    summary: summary(shown.length, report.problems.length, of),
    isPart: of !== null && shown.length < report.problems.length,
    groups: [...groupsByTable(shown)].map(([table, problems]) => ({ table, problems: problems.map(problemView) })),
  };
}

function groupsByTable(problems: readonly Problem[]): ReadonlyMap<string, readonly Problem[]> {
  const groups = new Map<string, Problem[]>();
  for (const problem of problems) {
    const group = groups.get(problem.at.table);
    if (group === undefined) groups.set(problem.at.table, [problem]);
    else group.push(problem);
  }
  return groups;
}

function problemView(problem: Problem, index: number): ProblemView {
  const { at, found } = problem;
  const { what, remedy } = explain(problem);
  const place = placeWords(at);
  const after = at.row !== undefined && what.startsWith(place) ? what.slice(place.length) : `: ${what}`;
  return { key: `${index} ${problem.code}`, where: where(at), what: after, found: what.includes(found) ? "" : found, remedy, at };
}

function where({ row, column }: Place): string {
  if (row !== undefined) return column === undefined ? `row ${row}` : `row ${row}, ${column}`;
  return column === undefined ? "the table" : `heading ${column}`;
}

function summary(shown: number, all: number, of: Subject | null): string {
  if (all === 0) return "No problems: every entry was understood.";
  const count = `${all} ${all === 1 ? "problem" : "problems"}`;
  if (of === null || of.of === "farm") return `${count}. Figures that they touch are incomplete until they are put right.`;
  return shown === 0 ? `No problem touches ${of.name} any more.` : `${shown} of ${count} ${shown === 1 ? "touches" : "touch"} ${of.name}.`;
}
