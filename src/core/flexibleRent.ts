/**
 * Cash rent that follows the crop. Above the base rent the landlord gets a share of what the gross of an area, price × yield of
 * the whole crop, exceeds a base, as far as the most that is agreed:
 *
 *     rent = base + min(most − base, share × max(0, price × yield − base gross))
 *
 * The base is paid whatever comes and stands among the costs that do not move. What is above it goes by the gross alone, in straight
 * pieces: a step at which a share begins, and one at which it ends.
 */
import { larger, sum, zero, type Decimal } from "./numbers/decimal";
import { moneyPerArea, share, type Area, type MoneyPerArea, type Share, type Yield } from "./numbers/units";

/** What a flexible rent is agreed to be, beside its base. */
export type FlexibleRent = {
  /** Gross per area up to which the base rent is all. */
  readonly baseGross: MoneyPerArea;
  /** The landlord's share of what the gross exceeds it. */
  readonly shareAbove: Share;
  /** The most that is paid, the base included; `null`: no limit. */
  readonly most: MoneyPerArea | null;
};

/** From a gross on, so much more of each further unit of gross is rent; so much less where a limit is reached. */
export type RentStep = { readonly from: MoneyPerArea; readonly share: Share };

/**
 * The steps of one field, in order of their gross; none where the rent cannot move.
 *
 * @param base the base rent, which counts in the most that is paid
 */
function rentSteps({ baseGross, shareAbove, most }: FlexibleRent, base: MoneyPerArea): readonly RentStep[] {
  if (shareAbove.isZero()) return [];
  const begins: RentStep = { from: baseGross, share: shareAbove };
  if (most === null) return [begins];
  const room = larger(most.minus(base), zero);
  if (room.isZero()) return [];
  return [begins, { from: moneyPerArea(baseGross.plus(room.div(shareAbove))), share: share(shareAbove.neg()) }];
}

/** How a field is rented: at a base, and by terms above it. */
type RentOfField = { readonly rentPerArea: MoneyPerArea | null; readonly flexibleRent?: FlexibleRent | null };

/** The steps of a field's rent, as it is entered. */
export const stepsOfField = ({ flexibleRent, rentPerArea }: RentOfField): readonly RentStep[] =>
  flexibleRent ? rentSteps(flexibleRent, rentPerArea ?? moneyPerArea(zero)) : [];

/** Rent above the base at a gross. */
export const rentAbove = (steps: readonly RentStep[], gross: Decimal): MoneyPerArea =>
  moneyPerArea(sum(steps.map(({ from, share: part }) => larger(gross.minus(from), zero).times(part))));

/** A field of a crop as its rent sees it. */
type Rented = { readonly steps: readonly RentStep[]; readonly area: Area; readonly yield: Yield };

/**
 * The steps of several fields as one crop: by its mean gross, of which each field has the part that its yield has of the mean yield.
 * Where nothing grows every field has the mean.
 */
export function stepsOfCrop(fields: readonly Rented[]): readonly RentStep[] {
  if (fields.every(({ steps }) => steps.length === 0)) return [];
  const whole = sum(fields.map(({ area }) => area));
  const grown = sum(fields.map((field) => field.yield.times(field.area)));
  return fields
    .flatMap(({ steps, area, yield: here }) => {
      if (grown.isZero()) return steps.map(({ from, share: part }) => ({ from, share: share(part.times(area).div(whole)) }));
      // A field that yields nothing has no gross whatever the price.
      if (here.isZero()) return [];
      return steps.map(({ from, share: part }) => ({
        from: moneyPerArea(from.times(grown).div(whole).div(here)),
        share: share(part.times(here).times(area).div(grown)),
      }));
    })
    .sort((a, b) => a.from.comparedTo(b.from));
}

/** Slopes nearer to nothing than this are what rounding leaves of a landlord who takes all of a further unit. */
const flat = "1e-24";

/**
 * The least quantity, of yield or of price, at which what each unit brings has paid so much and the rent that it moves:
 *
 *     perUnit × x − rent above base (grossPerUnit × x) = toPay
 *
 * piece by piece from the lowest. Where the landlord takes more of a further unit than it leaves, more of it pays less; then a later
 * piece pays, beyond the most that is agreed, or none does.
 *
 * @param perUnit what a unit leaves before the rent that it moves; above zero
 * @returns `null` where no quantity pays
 */
export function leastToPay(perUnit: Decimal, grossPerUnit: Decimal, steps: readonly RentStep[], toPay: Decimal): Decimal | null {
  let [at, paid, slope] = [zero, zero, perUnit];
  if (grossPerUnit.gt("0")) {
    for (const { from, share: part } of steps) {
      const next = from.div(grossPerUnit);
      const reached = pays(slope, toPay.minus(paid));
      if (reached !== null && at.plus(reached).lte(next)) return at.plus(reached);
      [at, paid] = [next, paid.plus(slope.times(next.minus(at)))];
      slope = slope.minus(part.times(grossPerUnit));
    }
  }
  const reached = pays(slope, toPay.minus(paid));
  return reached === null ? null : at.plus(reached);
}

const pays = (slope: Decimal, missing: Decimal): Decimal | null => (slope.lte(flat) ? null : missing.div(slope));

/** What of a further unit of gross is rent: the steps that a gross is beyond; on a step itself, what the next unit pays. */
export const shareOfNext = (steps: readonly RentStep[], gross: Decimal): Share =>
  share(sum(steps.filter(({ from }) => gross.gte(from)).map(({ share: part }) => part)));
