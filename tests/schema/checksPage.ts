/** What docs/checks.md says before its subjects: how much was checked, where print and we part, and what is held without print. */
import { notCompared } from "../published/disagreements";
import { laws } from "./laws";

/** The cells of each line of a table of a part, without its headings. */
export function tableAfter(part: string, heading: string): readonly (readonly string[])[] {
  const lines = part.split("\n");
  const from = lines.findIndex((line) => line.startsWith(`| ${heading} |`));
  const rest = lines.slice(from + 2);
  const end = rest.findIndex((line) => !line.startsWith("|"));
  return rest.slice(0, end < 0 ? undefined : end).map((line) =>
    line
      .split("|")
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}
const subjectOf = (part: string): string => part.slice(3, part.indexOf("\n"));
const total = (numbers: readonly (string | undefined)[]): number => numbers.reduce((sum, each) => sum + Number(each), 0);
const row = (...cells: readonly (string | number)[]): string => `| ${cells.join(" | ")} |`;
/** The sum of the last two columns by the name in a column. */
function summed(rows: readonly (readonly string[])[], by: number): readonly string[] {
  const names = [...new Set(rows.map((each) => each[by]!))].sort();
  return names.map((name) => {
    const of = rows.filter((each) => each[by] === name);
    return row(name, total(of.map((each) => each.at(-2))), total(of.map((each) => each.at(-1))));
  });
}

/** @param subjects the parts of the page that are of one subject each, as the tests wrote them */
export function checksHead(subjects: readonly string[]): string {
  const formulas = subjects.map((part) => tableAfter(part, "formula"));
  const sources = subjects.flatMap((part) => tableAfter(part, "source"));
  const figures = subjects.flatMap((part) => tableAfter(part, "figure").map((cells) => [subjectOf(part), ...cells]));
  const apart = figures.filter((cells) => cells.at(-1)!.startsWith("differs"));
  const agreeing = figures.length - apart.length;
  return [
    "# What is checked, and against what",
    "",
    "Written by the tests (`npm run docs`), and held by them: a figure here that is no longer ours makes a test fail. A",
    "figure *agrees* where ours, rounded half away from zero to the digits that the source prints, is what it prints; no",
    "other tolerance is used. *Ours* is shown with three digits more. What is not printed in the source says so under",
    "*standing*: worked out from figures that are, an example of our own, a reference",
    "library, or memory.",
    "",
    `${figures.length} figures from ${new Set(sources.map(([id]) => id)).size} sources are held against ` +
      `${new Set(formulas.flat().map(([name]) => name)).size} formulas and figures of the report: ` +
      `${agreeing} agree, ${apart.length} differ, each of those with its reason.`,
    "",
    "| subject | formulas | sources | figures | agree |",
    "|---|--:|--:|--:|--:|",
    ...subjects.map((part, index) => {
      const rows = formulas[index]!;
      const agree = total(rows.map((each) => each.at(-1)));
      return row(
        `[${subjectOf(part)}](#${anchor(subjectOf(part))})`,
        rows.length,
        tableAfter(part, "source").length,
        total(rows.map((each) => each.at(-2))),
        agree,
      );
    }),
    "",
    "| standing | figures | agree |",
    "|---|--:|--:|",
    ...summed(sources, 2),
    "",
    "### By formula",
    "",
    "`seasonReport` is a figure of a whole season workbook, read and worked out as the pane does it.",
    "",
    "| formula | figures | agree |",
    "|---|--:|--:|",
    ...summed(formulas.flat(), 0),
    "",
    "### Where a printed figure and ours differ",
    "",
    "Figure by figure. *Rounding in print* is held: what the source prints lies in what ours may be if each entry with a",
    "decimal point is anything that rounds to it. *Cut*, *rounded up* and *rounded to ten* are held too. The other reasons",
    "are the likely ones, and rounding in print does",
    "not explain them.",
    "",
    "| subject | figure | source | printed | ours | why |",
    "|---|---|---|--:|--:|---|",
    ...apart.map(([subject, figure, , source, printed, ours, verdict]) =>
      row(subject!, figure!, source!, printed!, ours!, verdict!.replace(/^differs: /, "")),
    ),
    "",
    "Read, and not compared:",
    "",
    ...notCompared.map((each) => `- ${each}`),
    "",
  ].join("\n");
}

/** The heading of the part that is of no subject. */
const lawsHeading = "## Laws and judges";
export const isLaws = (part: string): boolean => part.startsWith(lawsHeading);

/** What holds without print: the last part of the page. */
export function lawsPart(): string {
  const all = laws();
  return [
    lawsHeading,
    "",
    "### Judges",
    "",
    "The season is worked out a second time, in exact fractions or by another way, over random seasons and workbooks;",
    "nothing may differ. The seed follows from the code and is printed, so that a commit looks at the same cases everywhere",
    "and the next one at others.",
    "",
    "| judge | cases | held by |",
    "|---|--:|---|",
    ...all.filter(({ isJudge }) => isJudge).map(({ title, runs, file }) => row(title, runs, `\`${file}\``)),
    "",
    "### Laws",
    "",
    "What holds for any figures, tried on random ones at each run.",
    "",
    "| law | cases | held by |",
    "|---|--:|---|",
    ...all.filter(({ isJudge }) => !isJudge).map(({ title, runs, file }) => row(title.replaceAll("|", "/"), runs, `\`${file}\``)),
    "",
    "",
  ].join("\n");
}

const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replaceAll(/[^\w\s-]/g, "")
    .replaceAll(" ", "-");
