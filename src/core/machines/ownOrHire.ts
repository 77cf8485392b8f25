/** Owning a machine against hiring the work done. */
import { area, moneyPerArea, type Area, type MoneyPerArea, type MoneyPerYear } from "../numbers/units";

export type OwnOrHire = {
  readonly own: MoneyPerArea;
  readonly hire: MoneyPerArea;
  /** hire − own, per area: what owning saves; negative where hiring is cheaper. */
  readonly saved: MoneyPerArea;
  /** Area a year above which owning is cheaper; `null` where hiring is never dearer than running one's own. */
  readonly breakEvenArea: Area | null;
};

/**
 * Break-even area = ownership a year ÷ (custom rate − own running cost per area). Ownership a year is taken as it is:
 * that more use also wears a machine faster is not in it.
 *
 * @param perYear area worked in a year, above zero
 */
export function ownOrHire(ownership: MoneyPerYear, running: MoneyPerArea, customRate: MoneyPerArea, perYear: Area): OwnOrHire {
  if (perYear.lte("0")) throw new RangeError("own or hire needs an area above zero");
  const own = moneyPerArea(ownership.div(perYear).plus(running));
  const margin = customRate.minus(running);
  return {
    own,
    hire: customRate,
    saved: moneyPerArea(customRate.minus(own)),
    breakEvenArea: margin.lte("0") ? null : area(ownership.div(margin)),
  };
}
