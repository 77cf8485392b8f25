import type { Decimal } from "../../src/core/numbers/decimal";
import { seasonFigures } from "../../src/core/seasonFigures";
import type { Season } from "../../src/core/season";
import { exactSeason } from "./exactSeason";
import { flatFigures } from "./flatFigures";
import { agree, isZero, type Fraction } from "./fraction";

/** Every figure of a season on which the core and exact fractions differ in the first 25 digits, in words. */
export function differences(of: Season): readonly string[] {
  const actual = flatFigures(seasonFigures(of));
  const exact = exactSeason(of);
  const names = [...exact.keys(), ...[...actual.keys()].filter((name) => !exact.has(name))];
  return names
    .filter((name) => !same(actual.get(name), exact.get(name)))
    .map((name) => {
      const fraction = exact.get(name);
      return `${name}: core ${String(actual.get(name)?.toFixed())}, exact ${String(fraction?.over)}/${String(fraction?.under)}`;
    });
}

/** A kind that costs nothing may be absent on one side and zero on the other. */
function same(actual: Decimal | null | undefined, exact: Fraction | null | undefined): boolean {
  if (actual === undefined) return exact !== undefined && exact !== null && isZero(exact);
  if (exact === undefined) return actual !== null && actual.isZero();
  return actual === null || exact === null ? actual === exact : agree(actual, exact);
}
