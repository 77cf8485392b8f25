/** Runs a property over many random seasons, as many as this run asks for, and says with which seed. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc, { type Arbitrary } from "fast-check";
import { expect } from "vitest";
import { once } from "../../src/core/once";

/** Whether this is `npm test -- long`, which looks at more. */
export const isLong = process.env.PENNYACRE_JUDGE === "long";
/** How many seasons each judge looks at. */
export const runs = isLong ? 10_000 : process.env.PENNYACRE_JUDGE === "short" ? 10 : 500;

/** Everything that decides what a judge sees and says: the same of it looks at the same seasons everywhere. */
const judged = once((): string => {
  const hash = createHash("sha256");
  for (const folder of ["src/core", "src/workbook", "tests/exact"]) {
    const at = fileURLToPath(new URL(`../../${folder}/`, import.meta.url));
    const files = readdirSync(at, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
    for (const name of files.map((each) => each.replaceAll("\\", "/")).sort())
      hash.update(`${folder}/${name}\n`).update(readFileSync(at + name));
  }
  return hash.digest("hex");
});

/**
 * The seed follows from the code, so that a commit is good or bad and not now one and now the other, and from the title; the next
 * commit looks at other seasons. PENNYACRE_SEED names one to look at a run again, and `random` takes a new one.
 */
export function seedOf(title: string): number {
  const asked = process.env.PENNYACRE_SEED;
  if (asked === "random") return Date.now() % 2 ** 31;
  if (asked === undefined) return Number.parseInt(createHash("sha256").update(judged()).update(title).digest("hex").slice(0, 7), 16);
  if (!/^-?\d+$/.test(asked)) throw new RangeError(`PENNYACRE_SEED is a whole number or random, got ${asked}`);
  return Number(asked);
}

/**
 * Judges random cases: `faults` says what is wrong with one, in sentences, and nothing must be.
 *
 * @param title said with the number of cases and the seed, so that a failing run can be repeated
 */
export function judge<Case>(title: string, cases: Arbitrary<Case>, faults: (of: Case) => readonly string[], numRuns = runs): void {
  const seed = seedOf(title);
  console.log(`${title}: ${numRuns} cases, seed ${seed}`);
  fc.assert(
    fc.property(cases, (of) => {
      expect(faults(of)).toEqual([]);
    }),
    { numRuns, seed },
  );
}
