/** Runs a property over many random seasons, as many as this run asks for, and says with which seed. */
import fc, { type Arbitrary } from "fast-check";
import { expect } from "vitest";
import type { Season } from "../../src/core/season";

/** How many seasons each judge looks at: 500, and 10,000 in `npm test -- long`. */
export const runs = process.env.PENNYACRE_JUDGE === "long" ? 10_000 : 500;

/** Another seed at each run, unless PENNYACRE_SEED names one to look at a run again. */
const seedOf = (): number => {
  const asked = process.env.PENNYACRE_SEED;
  if (asked === undefined) return Date.now() % 2 ** 31;
  if (!/^-?\d+$/.test(asked)) throw new RangeError(`PENNYACRE_SEED is a whole number, got ${asked}`);
  return Number(asked);
};

/** A random season that is printed without the published tables, which are the same in all of them. */
type Shown = Season & { [fc.toStringMethod]?: () => string };
const shown = (season: Season): Season => {
  const { published: _published, ...entries } = season;
  const printed: Shown = { ...season, [fc.toStringMethod]: () => JSON.stringify(entries, null, 1) };
  return printed;
};

/**
 * Judges random seasons: `faults` says what is wrong with one, in sentences, and nothing must be.
 *
 * @param title said with the number of seasons and the seed, so that a failing run can be repeated
 */
export function judge(title: string, seasons: Arbitrary<Season>, faults: (season: Season) => readonly string[], numRuns = runs): void {
  const seed = seedOf();
  console.log(`${title}: ${numRuns} seasons, seed ${seed}`);
  fc.assert(fc.property(seasons.map(shown), (season) => { expect(faults(season)).toEqual([]); }), { numRuns, seed });
}
