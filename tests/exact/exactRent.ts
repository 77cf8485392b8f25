/** Rent that goes by price and yield, in exact fractions, worked out again from the definition of the product. */
import type { Stage } from "../../src/core/figures";
import type { Field, Season } from "../../src/core/season";
import { areaOf, cropOf, yieldAt } from "./exactFields";
import { compare, divided, isZero, larger, minus, one, plus, read, smaller, times, total, zero, type Fraction } from "./fraction";

/** The rent of one field among those of a crop: its part of the land, and its yield as a part of the crop's mean. */
export type Rent = {
  readonly weight: Fraction;
  readonly ratio: Fraction;
  readonly baseGross: Fraction;
  readonly part: Fraction;
  /** What may be paid above the base; `null`: no limit. */
  readonly room: Fraction | null;
};

export function rentsOf({ flexibleRent, rentPerArea }: Field): readonly Rent[] {
  if (!flexibleRent) return [];
  const { baseGross, shareAbove, most } = flexibleRent;
  const room = most === null ? null : larger(minus(read(most), rentPerArea === null ? zero : read(rentPerArea)), zero);
  return [{ weight: one, ratio: one, baseGross: read(baseGross), part: read(shareAbove), room }];
}

/** The fields of a crop, each at its own part of the crop's yield. */
export function rentsOfCrop(
  fields: readonly { readonly area: Fraction; readonly used: Fraction; readonly rents: readonly Rent[] }[],
): readonly Rent[] {
  const whole = total(fields.map(({ area }) => area));
  const mean = divided(total(fields.map(({ area, used }) => times(area, used))), whole);
  return fields.flatMap(({ area, used, rents }) =>
    rents.map((rent) => ({ ...rent, weight: divided(area, whole), ratio: isZero(mean) ? one : divided(used, mean) })),
  );
}

/** What is paid above the base at a gross per area. */
export const above = (rents: readonly Rent[], gross: Fraction): Fraction =>
  total(
    rents.map(({ weight, ratio, baseGross, part, room }) => {
      const share = times(part, larger(minus(times(gross, ratio), baseGross), zero));
      return times(weight, room === null ? share : smaller(room, share));
    }),
  );

/**
 * The least quantity at which so much a unit, less the rent that its gross moves, comes to `toPay`: between two points where the
 * rent bends it is a straight line.
 */
export function leastToPay(perUnit: Fraction, grossPerUnit: Fraction, rents: readonly Rent[], toPay: Fraction): Fraction | null {
  if (compare(toPay, zero) <= 0n) return divided(toPay, perUnit);
  const paid = (at: Fraction): Fraction => minus(times(perUnit, at), above(rents, times(grossPerUnit, at)));
  const bends = rents
    .filter(({ ratio, part }) => !isZero(ratio) && !isZero(part) && compare(grossPerUnit, zero) > 0n)
    .flatMap(({ ratio, baseGross, part, room }) =>
      [baseGross, ...(room === null ? [] : [plus(baseGross, divided(room, part))])].map((gross) =>
        divided(gross, times(ratio, grossPerUnit)),
      ),
    )
    .sort((a, b) => Number(compare(a, b) > 0n) - Number(compare(a, b) < 0n));
  let from = zero;
  for (const to of bends) {
    if (compare(paid(to), toPay) >= 0n && compare(to, from) > 0n) return between(from, to, paid, toPay);
    from = to;
  }
  const beyond = plus(from, one);
  return compare(paid(beyond), paid(from)) > 0n ? between(from, beyond, paid, toPay) : null;
}

const between = (from: Fraction, to: Fraction, paid: (at: Fraction) => Fraction, toPay: Fraction): Fraction =>
  plus(from, times(minus(to, from), divided(minus(toPay, paid(from)), minus(paid(to), paid(from)))));

/** What a field pays above its base at a stage, on all of it. */
export const rentAboveOf = (season: Season, field: Field, stage: Stage): Fraction =>
  times(above(rentsOf(field), times(read(cropOf(season, field).price), yieldAt(season, field, stage))), areaOf(field));
