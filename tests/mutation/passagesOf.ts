/** Which files of tests pass through which mutation, and how long they take. */
import { readFileSync, rmSync } from "node:fs";
import { relative } from "node:path";
import type { Mutation } from "./mutations";
import { TestProcess } from "./testProcess";

/** The files of tests that pass through a mutation, with the seconds that each takes by itself. */
export type Passage = readonly { readonly tests: string; readonly seconds: number }[];

/** For each mutation its passage: each file of tests in a process of its own, because what another worked out is not passed through. */
export async function passagesOf(sample: readonly Mutation[], notes: string): Promise<readonly Passage[]> {
  rmSync(notes, { force: true });
  process.env.PENNYACRE_PASSAGES = notes;
  const tests = new TestProcess();
  const answer = await tests.answer({ passages: sample });
  tests.end();
  delete process.env.PENNYACRE_PASSAGES;
  if (!("seconds" in answer)) throw new Error("the tests do not end without a mutation");
  const passages: { tests: string; seconds: number }[][] = sample.map(() => []);
  for (const line of readFileSync(notes, "utf8").split("\n").slice(0, -1)) {
    const { tests: path, passed } = JSON.parse(line) as { tests: string; passed: readonly number[] };
    const file = relative(".", path).replaceAll("\\", "/");
    for (const number of passed) passages[number]!.push({ tests: file, seconds: answer.seconds[file] ?? 0 });
  }
  return passages;
}
