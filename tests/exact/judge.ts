/** Runs a property over many random seasons, as many as this run asks for, and says with which seed. */
import fc, { type Arbitrary } from "fast-check";
import { expect } from "vitest";

/** Whether this is `npm test -- long`, which looks at more. */
export const isLong = process.env.PENNYACRE_JUDGE === "long";
/** How many seasons each judge looks at. */
export const runs = isLong ? 10_000 : 500;

/** Another seed at each run, unless PENNYACRE_SEED names one to look at a run again. */
const seedOf = (): number => {
  const asked = process.env.PENNYACRE_SEED;
  if (asked === undefined) return Date.now() % 2 ** 31;
  if (!/^-?\d+$/.test(asked)) throw new RangeError(`PENNYACRE_SEED is a whole number, got ${asked}`);
  return Number(asked);
};

/**
 * Judges random cases: `faults` says what is wrong with one, in sentences, and nothing must be.
 *
 * @param title said with the number of cases and the seed, so that a failing run can be repeated
 */
export function judge<Case>(title: string, cases: Arbitrary<Case>, faults: (of: Case) => readonly string[], numRuns = runs): void {
  const seed = seedOf();
  console.log(`${title}: ${numRuns} cases, seed ${seed}`);
  fc.assert(
    fc.property(cases, (of) => {
      expect(faults(of)).toEqual([]);
    }),
    { numRuns, seed },
  );
}
