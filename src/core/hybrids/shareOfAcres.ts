/** How a crop's acres are spread over its hybrids, and when each is projected to mature: whether the harvest comes all at once. */
import { sum, zero } from "../numbers/decimal";
import { area, share, type Area, type Share } from "../numbers/units";
import type { IsoDate } from "../row";
import type { Season } from "../season";
import type { Maturing } from "../weather/maturing";
import type { Hybrid } from "./hybridEntries";
import { hybridKey } from "./trials";

export type HybridShare = {
  readonly crop: string;
  /** `null`: fields that name no hybrid. */
  readonly hybrid: string | null;
  readonly area: Area;
  /** Of the crop's acres. */
  readonly share: Share;
  readonly fields: readonly string[];
  /** Its rating in days; `null` where it is not entered. */
  readonly days: Hybrid["days"];
  /** From the first field projected to mature to the last; `null` where none is projected. */
  readonly matures: { readonly first: IsoDate; readonly last: IsoDate } | null;
  /** Its fields that are not planted yet, whose maturity is projected from their planned planting on. */
  readonly byPlan: readonly string[];
  /** Its fields of which no maturity is projected. */
  readonly notProjected: readonly string[];
};

/**
 * The crops of which a field names a hybrid, in the order of the tables; within a crop the one that matures first comes first, and
 * what has no date last.
 *
 * @param maturing what is projected of fields, planted or not
 */
export function sharesOfAcres(
  { crops, fields, hybrids }: Pick<Season, "crops" | "fields" | "hybrids">,
  maturing: readonly Maturing[],
): readonly HybridShare[] {
  const projected = new Map(maturing.map((each) => [each.field, each]));
  const offered = new Map(hybrids.map((hybrid) => [hybridKey(hybrid.name), hybrid]));
  return crops.flatMap((crop): readonly HybridShare[] => {
    const grown = fields.filter((field) => field.crop === crop.name);
    if (grown.every(({ variety }) => variety === null)) return [];
    const whole = sum(grown.map((field) => field.area));
    const keys = [...new Set(grown.map(({ variety }) => hybridKey(variety ?? "")))];
    const shares = keys.map((key): HybridShare => {
      const own = grown.filter(({ variety }) => hybridKey(variety ?? "") === key);
      const here = sum(own.map((field) => field.area));
      const mature = own.flatMap(({ name }) => projected.get(name)?.date ?? []).sort();
      return {
        crop: crop.name,
        hybrid: own[0]!.variety === null ? null : (offered.get(key)?.name ?? own[0]!.variety),
        area: area(here),
        share: share(whole.isZero() ? zero : here.div(whole)),
        fields: own.map(({ name }) => name),
        days: offered.get(key)?.days ?? null,
        matures: mature.length === 0 ? null : { first: mature[0]!, last: mature.at(-1)! },
        byPlan: own.filter(({ name }) => projected.get(name)?.byPlan === true).map(({ name }) => name),
        notProjected: own.filter(({ name }) => !projected.has(name)).map(({ name }) => name),
      };
    });
    const order = ({ matures }: HybridShare) => matures?.first ?? "9";
    return shares.sort((a, b) => order(a).localeCompare(order(b)));
  });
}
