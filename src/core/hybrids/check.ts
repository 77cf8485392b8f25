/** The hybrid that the others of its crop are held against. */
import { zero, type Decimal } from "../numbers/decimal";
import type { Season } from "../season";
import { hybridKey, type Plots } from "./trials";

export type Check = {
  readonly key: string;
  readonly name: string;
  /** Whether the grower marked it; else it is the one on most acres of those that stood in a trial. */
  readonly isChosen: boolean;
};

/**
 * The hybrid marked in the table Hybrids, the first where two are; else the one that is grown on most acres and stood in a trial.
 *
 * @returns `null` where none is marked, and none that is grown stood in a trial
 */
export function checkOf(
  crop: string,
  { hybrids, fields }: Pick<Season, "hybrids" | "fields">,
  plots: ReadonlyMap<string, Plots>,
): Check | null {
  const marked = hybrids.find((hybrid) => hybrid.crop === crop && hybrid.isCheck);
  if (marked !== undefined) return { key: hybridKey(marked.name), name: marked.name, isChosen: true };
  const acres = new Map<string, Decimal>();
  for (const { crop: grown, variety, area } of fields) {
    const key = grown === crop && variety !== null ? hybridKey(variety) : null;
    if (key !== null && plots.has(key)) acres.set(key, (acres.get(key) ?? zero).plus(area));
  }
  const most = [...acres].reduce<readonly [string, Decimal] | null>(
    (best, each) => (best === null || each[1].gt(best[1]) ? each : best),
    null,
  );
  if (most === null) return null;
  const [key] = most;
  return { key, name: hybrids.find(({ name }) => hybridKey(name) === key)?.name ?? plots.get(key)!.name, isChosen: false };
}
