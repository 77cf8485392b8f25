/** What the page of problems says: entries to fix, then entries to check, each grouped by table in the order of the workbook. */
import { cellOf, type Places } from "../../workbook/cellName";
import { explain } from "../../workbook/explain";
import { placeWords } from "../../workbook/placeWords";
import { gradeOf, toCheck, toFix, type Grade, type Place, subjectName, type Problem, type Subject } from "../../workbook/problem";
import type { SeasonReport } from "../../workbook/seasonReport";
import { around } from "../../workbook/spelling";
import type { Format } from "../format";

export type ProblemView = {
  readonly key: string;
  /** "entry 3, Unit"; "heading Unit"; "the table". */
  readonly where: string;
  /** The cell as the sheet names it, such as "C6", since a row of a table has another number there; empty for none. */
  readonly cell: string;
  /** Goes on after `where`: ": "two loads" is not a number.", " is blank." */
  readonly what: string;
  /** What the cell holds; empty where nothing was found, or `what` says it. */
  readonly found: string;
  readonly remedy: string;
  readonly at: Place;
  /** The second place, where two entries do not go together; `null`: there is one place only. */
  readonly other: { readonly words: string; readonly at: Place } | null;
  /** Words of the button that takes rows below the table in; `null`: there are none. */
  readonly takesIn: string | null;
  /** The grower's own table that a button reads as the table of the problem; `null`: there is none. */
  readonly readsAs: string | null;
};

type ProblemGroup = { readonly table: string; readonly grade: Grade; readonly problems: readonly ProblemView[] };

/** What stands above the groups of a grade. */
export const gradeTitles: Readonly<Record<Grade, string>> = { fix: "Entries to fix", check: "To check: counted as they stand" };

export type ProblemsView = {
  /** "3 entries to fix", "2 of 5 entries to fix touch Corn", "Nothing to fix …" */
  readonly summary: string;
  /** Whether some problems are left out because only one subject's are shown. */
  readonly isPart: boolean;
  readonly groups: readonly ProblemGroup[];
  /** How many are not listed yet. */
  readonly more: number;
};

/** @param most so many are listed; the rest are counted in `more` */
export function problemsView(
  report: Pick<SeasonReport, "problems" | "problemsOf" | "placeOf">,
  of: Subject | null,
  { count, words }: Pick<Format, "count" | "words">,
  most = Infinity,
): ProblemsView {
  const [fix, check] = [toFix(report.problems), toCheck(report.problems)];
  const concerned = of === null ? [...fix, ...check] : report.problemsOf(of);
  const shown = concerned.slice(0, most);
  return {
    summary: [
      summary(concerned.length - (of === null ? check.length : 0), fix.length, of, count),
      checks(of === null ? check.length : 0, count),
    ].join(""),
    isPart: of !== null && concerned.length < report.problems.length,
    more: concerned.length - shown.length,
    groups: groups(shown).map(({ problems, ...group }) => ({
      ...group,
      problems: problems.map((problem, index) => problemView(problem, index, report, words)),
    })),
  };
}

function groups(problems: readonly Problem[]) {
  const byTable = new Map<string, { readonly table: string; readonly grade: Grade; readonly problems: Problem[] }>();
  for (const problem of problems) {
    const [table, grade] = [problem.at.table, gradeOf(problem)];
    const group = byTable.get(`${grade} ${table}`);
    if (group === undefined) byTable.set(`${grade} ${table}`, { table, grade, problems: [problem] });
    else group.problems.push(problem);
  }
  return [...byTable.values()];
}

const checks = (number: number, count: Format["count"]): string =>
  number === 0 ? "" : ` ${count(number)} to check: counted as ${number === 1 ? "it stands" : "they stand"}.`;

function problemView(problem: Problem, index: number, places: Places, ours: Format["words"]): ProblemView {
  const { at, found, other } = problem;
  const { what, remedy } = explain(problem);
  const words = placeWords(at);
  // What the grower typed stays as it was typed.
  const say = (told: string) => around(told, found, ours);
  const after = at.row !== undefined && what.startsWith(words) ? what.slice(words.length) : `: ${what}`;
  return {
    key: `${index} ${problem.code}`,
    where: ours(where(at)),
    cell: cellOf(places, at),
    what: say(after),
    found: what.includes(found) ? "" : found,
    remedy: say(remedy),
    at,
    other: other === undefined ? null : { words: ours(placeWords(other)), at: other },
    takesIn: takesInWords(problem),
    readsAs: problem.code === "table-almost" ? found : null,
  };
}

const takesInWords = ({ code, found }: Problem): string | null =>
  code === "rows-below" ? (found === "1" ? "Take it in" : `Take the ${found} entries in`) : null;

function where({ row, column }: Place): string {
  if (row !== undefined) return column === undefined ? `entry ${row}` : `entry ${row}, ${column}`;
  return column === undefined ? "the table" : `heading ${column}`;
}

function summary(shown: number, all: number, of: Subject | null, count: Format["count"]): string {
  if (all === 0 && (of === null || shown === 0)) return "Nothing to fix: every entry was understood.";
  const entries = `${count(all)} ${all === 1 ? "entry" : "entries"} to fix`;
  if (of === null || of.of === "farm")
    return all === 1
      ? `${entries}. Figures that it touches are incomplete until it is put right.`
      : `${entries}. Figures that they touch are incomplete until they are put right.`;
  return shown === 0
    ? `No entry to fix touches ${subjectName(of)} any more.`
    : `${count(shown)} of ${entries} ${shown === 1 ? "touches" : "touch"} ${subjectName(of)}.`;
}
