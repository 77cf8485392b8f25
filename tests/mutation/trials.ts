/** Tries mutations: on the tests nearest to them, on the frozen reports, on the compiler, and then on all that pass through. */
import { basename, dirname } from "node:path";
import { compiler } from "./compiler";
import { codeOf, type Mutation } from "./mutations";
import type { Passage } from "./passagesOf";
import { TestProcess } from "./testProcess";

/** Who noticed a mutation, if anybody, and by which of their tests. */
type Outcome = { readonly outcome: Noticed | "unnoticed" | "nowhere passed through"; readonly by: string | null };
type Noticed =
  "noticed by tests nearby" | "noticed by the frozen reports" | "refused by the compiler" | "noticed by other tests" | "endless";

const frozenReports = "tests/exact/frozenReports.test.ts";
/** Tests nearby are asked for so many seconds at most, before the frozen reports. */
const nearbySeconds = 5;

/** How near tests stand to the code that is mutated, 0 the nearest. */
function distance(tests: string, code: string): number {
  const [test, module] = [tests, code].map((path) => path.replace(/(\.test)?\.tsx?$/, ""));
  if (test === module) return 0;
  if (basename(test!) === basename(module!)) return 1;
  return dirname(test!) === dirname(module!) ? 2 : 3;
}

/** The tests that a mutation is tried on, in two rounds. */
function rounds(code: string, passage: Passage): readonly [near: readonly string[], others: readonly string[]] {
  const ranked = passage
    .filter(({ tests }) => tests !== frozenReports)
    .map((each) => ({ ...each, distance: distance(each.tests, code) }))
    .sort((one, other) => one.distance - other.distance || one.seconds - other.seconds);
  let seconds = 0;
  const near = ranked.filter((each) => each.distance < 2 || (each.distance === 2 && (seconds += each.seconds) <= nearbySeconds));
  // The small workbooks of all problems notice most of what the tests nearby do not.
  const last = ({ tests, seconds: needed }: Passage[number]) => (tests.startsWith("tests/problems/") ? 0 : needed);
  const others = ranked.filter((each) => !near.includes(each)).sort((one, other) => last(one) - last(other));
  return [near.map(({ tests }) => tests), others.map(({ tests }) => tests)];
}

export function trials() {
  const tests = new TestProcess();
  let refused: ReturnType<typeof compiler> | null = null;

  async function asked(noticed: Noticed, mutation: Mutation, files: readonly string[], only?: string): Promise<Outcome | null> {
    if (files.length === 0) return null;
    const answer = await tests.answer({ mutation, files, ...(only === undefined ? {} : { only }) });
    if ("endless" in answer) return { outcome: "endless", by: null };
    if ("noticed" in answer && answer.noticed !== null) return { outcome: noticed, by: answer.noticed };
    return null;
  }

  /** The tests nearby and the frozen reports, which together take seconds; `null` where none of them notices. */
  async function tried(mutation: Mutation, passage: Passage): Promise<Outcome | null> {
    const [near] = rounds(codeOf(mutation), passage);
    const frozen = passage.filter((each) => each.tests === frozenReports).map((each) => each.tests);
    const nearby = await asked("noticed by tests nearby", mutation, near);
    if (nearby !== null) return nearby;
    return asked("noticed by the frozen reports", mutation, frozen, "are what they were");
  }

  /** The compiler, and all other tests that pass through the place, which may take a minute and more. */
  async function triedOnOthers(mutation: Mutation, passage: Passage): Promise<Outcome> {
    if ((refused ??= compiler())(mutation)) return { outcome: "refused by the compiler", by: null };
    const [, others] = rounds(codeOf(mutation), passage);
    const byOthers = await asked("noticed by other tests", mutation, others);
    return byOthers ?? { outcome: passage.length === 0 ? "nowhere passed through" : "unnoticed", by: null };
  }

  return { tried, triedOnOthers, end: () => tests.end() };
}
