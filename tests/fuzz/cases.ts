/** How many random cases a run looks at: a number that is always the same, or as many as the time allows that was asked for. */
import { expect } from "vitest";
import { Habits } from "../exact/typing";
import { seedOf } from "../exact/judge";

/** Seconds for all kinds together, where `npm run fuzz` asks. */
const asked = process.env["PENNYACRE_FUZZ"];
const kinds = 3;
/** As long as the runs of a kind may take together, in milliseconds. */
export const longest = 900_000 + Number(asked ?? 0) * 1000;
/** A case that takes more of the processor than this hangs, however busy others keep it: the slowest takes a second. */
const longestProcessorSeconds = 60;

/**
 * Looks at cases of a kind; `faults` says in sentences what is wrong with one. A case is known by its number, so that it can be looked at
 * again: `PENNYACRE_SEED` of the run, and the number that the failure names.
 */
export async function fuzz(kind: string, usual: number, faults: (habits: Habits) => Promise<readonly string[]>): Promise<void> {
  const seed = seedOf(`fuzz, ${kind}`);
  const until = asked === undefined ? Infinity : performance.now() + (Number(asked) * 1000) / kinds;
  // Said before, too: a run that hangs or breaks down says nothing afterwards.
  console.log(`fuzz, ${kind}: seed ${seed}`);
  let cases = 0;
  for (; asked === undefined ? cases < usual : performance.now() < until; cases += 1) {
    const began = process.cpuUsage();
    let found: readonly string[];
    try {
      found = await faults(new Habits((seed + cases * 7919) % 2147483646, cases % 3 === 2, cases % 10 === 9 ? "1904" : "1900"));
    } catch (fault) {
      found = [fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)];
    }
    expect(found, `case ${cases} of seed ${seed}`).toEqual([]);
    const { user, system } = process.cpuUsage(began);
    expect((user + system) / 1e6, `case ${cases} of seed ${seed} takes for ever`).toBeLessThan(longestProcessorSeconds);
  }
  console.log(`fuzz, ${kind}: ${cases} cases, seed ${seed}`);
}

/** Values that are no figure and no words, wherever they stand in plain data. */
export function noValues(within: unknown, at = ""): readonly string[] {
  if (typeof within === "number") return Number.isFinite(within) ? [] : [`${at} is ${within}`];
  if (typeof within === "string")
    return /\b(?:NaN|Infinity|undefined)\b|\[object/.test(within) ? [`${at} says ${within.slice(0, 200)}`] : [];
  if (Array.isArray(within)) return within.flatMap((each, index) => noValues(each, `${at}[${index}]`));
  if (within instanceof Map) return [...within].flatMap(([key, value]) => noValues(value, `${at}.${String(key)}`));
  if (typeof within === "object" && within !== null) {
    if ("toFixed" in within) return noValues(String(within), at);
    return Object.entries(within).flatMap(([key, value]) => noValues(value, `${at}.${key}`));
  }
  return [];
}
