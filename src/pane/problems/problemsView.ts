/** What the page of problems says: every problem, grouped by its table, in the order of the workbook. */
import { cellOf, type Places } from "../../workbook/cellName";
import { explain, placeWords } from "../../workbook/explain";
import type { Place, Problem, Subject } from "../../workbook/problem";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { Format } from "../format";

export type ProblemView = {
  readonly key: string;
  /** "row 3, Unit"; "heading Unit"; "the table". */
  readonly where: string;
  /** The cell as the sheet names it, such as "C6", since a row of a table has another number there; empty for none. */
  readonly cell: string;
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
  /** How many are not listed yet. */
  readonly more: number;
};

/** @param most so many are listed; the rest are counted in `more` */
export function problemsView(report: Pick<SeasonReport, "problems" | "problemsOf" | "placeOf">, of: Subject | null, { count }: Pick<Format, "count">, most = Infinity): ProblemsView {
  const concerned = of === null ? report.problems : report.problemsOf(of);
  const shown = concerned.slice(0, most);
  return {
    summary: summary(concerned.length, report.problems.length, of, count),
    isPart: of !== null && concerned.length < report.problems.length,
    more: concerned.length - shown.length,
    groups: [...groupsByTable(shown)].map(([table, problems]) => ({ table, problems: problems.map((problem, index) => problemView(problem, index, report)) })),
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

function problemView(problem: Problem, index: number, places: Places): ProblemView {
  const { at, found } = problem;
  const { what, remedy } = explain(problem);
  const words = placeWords(at);
  const after = at.row !== undefined && what.startsWith(words) ? what.slice(words.length) : `: ${what}`;
  return { key: `${index} ${problem.code}`, where: where(at), cell: cellOf(places, at), what: after, found: what.includes(found) ? "" : found, remedy, at };
}

function where({ row, column }: Place): string {
  if (row !== undefined) return column === undefined ? `row ${row}` : `row ${row}, ${column}`;
  return column === undefined ? "the table" : `heading ${column}`;
}

function summary(shown: number, all: number, of: Subject | null, count: Format["count"]): string {
  if (all === 0) return "No problems: every entry was understood.";
  const problems = `${count(all)} ${all === 1 ? "problem" : "problems"}`;
  if (of === null || of.of === "farm") return all === 1 ? `${problems}. Figures that it touches are incomplete until it is put right.` : `${problems}. Figures that they touch are incomplete until they are put right.`;
  return shown === 0 ? `No problem touches ${of.name} any more.` : `${count(shown)} of ${problems} ${shown === 1 ? "touches" : "touch"} ${of.name}.`;
}
