/** Holds figures to what is printed, and keeps what was held for docs/checks.md, where everybody can look it up. */
import { readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { reasonOf } from "./disagreements";
import { decimalsOf, rangeOfPrint, type Range } from "./printRange";
import { citation, type Source } from "./sources";

/** One row of docs/checks.md. */
type Check = {
  readonly figure: string;
  readonly formula: string;
  readonly source: Source;
  readonly printed: string;
  readonly ours: string;
  /** `agrees`, or `differs: ` and why. */
  readonly verdict: string;
};

/** What works the figure out: a function of ours, or the words for a figure of the season's report. */
export type Formula = ((...given: never[]) => unknown) | string;

/** Checks by test file: one worker runs several files with the same modules. */
const held = new Map<string, Check[]>();
/** Which one, where a test holds several; or the whole name of the figure, where the test's title is none. */
export type Which = string | { readonly name: string };

function keep(check: Omit<Check, "figure">, which: Which | undefined): void {
  const { testPath, currentTestName } = expect.getState();
  const title = (currentTestName ?? "").replaceAll(" > ", ": ");
  const checks = held.get(testPath!) ?? [];
  const figure = which === undefined ? title : typeof which === "string" ? `${title}: ${which}` : which.name;
  checks.push({ ...check, figure });
  held.set(testPath!, checks);
}

const nameOf = (formula: Formula): string => (typeof formula === "string" ? formula : formula.name);
/** Three digits more than are printed, without noughts that say nothing. */
const shown = (actual: Decimal, printed: string): string => actual.toDecimalPlaces(decimalsOf(printed) + 3).toFixed();

/**
 * Asserts that `actual` is the figure that the source prints: rounded half-up to as many decimals as are printed. The tolerance is thus
 * the table's own, never one that was tuned until the test passed.
 */
export function check(actual: Decimal | null, printed: string, source: Source, formula: Formula, figure?: Which): void {
  const digits = actual?.toFixed(decimalsOf(printed), Decimal.ROUND_HALF_UP);
  expect(digits).toBe(printed.replaceAll(",", ""));
  keep({ formula: nameOf(formula), source, printed, ours: shown(actual!, printed), verdict: "agrees" }, figure);
}

/** The same for an answer that is a word. */
export function checkWord(actual: string | null, printed: string, source: Source, formula: Formula, figure?: Which): void {
  expect(actual).toBe(printed);
  keep({ formula: nameOf(formula), source, printed, ours: printed, verdict: "agrees" }, figure);
}

/** The same for a source that cuts what is over the digits that it prints. */
export function checkCut(actual: Decimal, printed: string, source: Source, formula: Formula, figure?: Which): void {
  expect(actual.toFixed(decimalsOf(printed), Decimal.ROUND_DOWN)).toBe(printed.replaceAll(",", ""));
  keep({ formula: nameOf(formula), source, printed, ours: shown(actual, printed), verdict: "agrees, cut as the source cuts" }, figure);
}

/**
 * Asserts that we come to something else than the source prints, and that the disagreement is listed with its reason. A reason that can be
 * held is held: what is cut is cut, and what rounding in print allows lies in the range that the printed entries leave.
 *
 * @param range what our figure may be if each entry is what it was before it was rounded to print
 */
export function checkApart(
  actual: Decimal,
  pair: { readonly prints: string; readonly ours: string },
  source: Source,
  formula: Formula,
  range?: Range,
  figure?: Which,
): void {
  const { prints, ours } = pair;
  expect(actual.toFixed(decimalsOf(ours), Decimal.ROUND_HALF_UP)).toBe(ours);
  const { why, reason } = reasonOf(source.id, prints, ours);
  const said = rangeOfPrint(prints);
  const allows = range !== undefined && range.from.lte(said.to) && range.to.gte(said.from);
  const to = (value: Decimal, rounding: typeof Decimal.ROUND_UP | typeof Decimal.ROUND_DOWN) => value.toFixed(decimalsOf(prints), rounding);
  if (why === "rounding in print")
    expect(allows, `${source.id}: ${prints} lies outside ${range?.from.toFixed()} to ${range?.to.toFixed()}`).toBe(true);
  else expect(allows, `${source.id}: rounding in print is enough for ${prints}`).toBe(false);
  if (why === "cut") expect(to(actual, Decimal.ROUND_DOWN)).toBe(prints);
  if (why === "rounded up") expect(to(actual, Decimal.ROUND_UP)).toBe(prints);
  if (why === "rounded to ten") expect(actual.div("10").toFixed(0, Decimal.ROUND_HALF_UP)).toBe(new Decimal(prints).div("10").toFixed());
  const limits = range === undefined ? "" : `; rounding in print allows ${shown(range.from, prints)} to ${shown(range.to, prints)}`;
  keep(
    { formula: nameOf(formula), source, printed: prints, ours: shown(actual, prints), verdict: `differs: ${why}: ${reason}${limits}` },
    figure,
  );
}

const cell = (text: string): string => text.replaceAll("|", "/").replaceAll(/\s+/g, " ").trim();
const row = (...cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;
const agrees = ({ verdict }: Check): boolean => verdict.startsWith("agrees");

/** How many of the checks bear each name, and how many of those agree. */
function counts(
  checks: readonly Check[],
  nameOfCheck: (of: Check) => string,
): readonly (readonly [name: string, all: string, agree: string])[] {
  const names = [...new Set(checks.map(nameOfCheck))].sort();
  return names.map((name) => {
    const of = checks.filter((each) => nameOfCheck(each) === name);
    return [name, String(of.length), String(of.filter(agrees).length)];
  });
}

function section(subject: string, file: string, checks: readonly Check[]): string {
  const sources = new Map(checks.map(({ source }) => [source.id, source]));
  return [
    `## ${subject}`,
    "",
    `${checks.length} figures, ${checks.filter(agrees).length} agree; held by \`${file}\`.`,
    "",
    "| formula | figures | agree |",
    "|---|--:|--:|",
    ...counts(checks, ({ formula }) => formula).map((each) => row(...each)),
    "",
    "| source | what it is | standing | figures | agree |",
    "|---|---|---|--:|--:|",
    ...counts(checks, ({ source }) => source.id).map(([id, all, agree]) => {
      const source = sources.get(id)!;
      return row(id, citation(source), source.standing ?? "printed", all, agree);
    }),
    "",
    "| figure | formula | source | printed | ours | verdict |",
    "|---|---|---|--:|--:|---|",
    ...checks.map(({ figure, formula, source, printed, ours, verdict }) => row(figure, formula, source.id, printed, ours, verdict)),
    "",
  ].join("\n");
}

const page = new URL("../../docs/checks.md", import.meta.url);

/** The page in parts: what stands before the first subject, and each subject. */
export const partsOfPage = (): readonly string[] => readFileSync(page, "utf8").split(/^(?=## )/m);

/** As the last test of a file: docs/checks.md says of this subject what the tests before it held (npm run docs writes it). */
export function checksPage(subject: string): void {
  it(`stands in docs/checks.md: ${subject}`, () => {
    const { testPath } = expect.getState();
    const file = `${/\/(src\/.*)\/[^/]+$/.exec(testPath!)?.[1] ?? "tests/published"}/${basename(testPath!)}`;
    const said = section(subject, file, held.get(testPath!) ?? []);
    held.delete(testPath!);
    if (process.env["PENNYACRE_DOCS"] === "write") {
      const others = partsOfPage().filter((part) => !part.startsWith(`## ${subject}\n`));
      writeFileSync(page, [...others, said].join(""));
      return;
    }
    expect(partsOfPage().find((part) => part.startsWith(`## ${subject}\n`))).toBe(said);
  });
}
