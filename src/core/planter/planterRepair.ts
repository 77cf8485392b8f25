/** Parts of a planter that were looked at: what is due, what it takes to set right, and what that costs. */
import { one, sum, zero, type Decimal } from "../numbers/decimal";
import type { ItemFigures } from "../figures";
import type { Item, Season } from "../season";
import { money, moneyPerArea, type Area, type Money, type MoneyPerArea } from "../numbers/units";
import type { PlanterCheck } from "./planterCheck";
import { soonFrom, wearUsed } from "./partWear";

/** What is to be done: replace now, replace soon, adjust, nothing, it is done; or nobody can tell yet. */
export type PartState = "due" | "soon" | "adjust" | "good" | "done" | "not judged";

/** A part with what it takes: `cost` is `null` where a price or the wage that it needs is not known. */
export type PlanterPart = {
  readonly check: PlanterCheck;
  readonly state: PartState;
  /** The share of the allowed wear that is used up; `null` where it is not measured. */
  readonly wear: Decimal | null;
  /** Of a part that is due, soon or to adjust; 0 of the others. */
  readonly bought: Money | null;
  readonly labour: Money | null;
  readonly cost: Money | null;
};

export type PlanterRepair = {
  readonly machine: string;
  readonly parts: readonly PlanterPart[];
  /** What is due and to adjust costs, as far as it is known. */
  readonly cost: Money;
  /** The same of what is due soon. */
  readonly soonCost: Money;
  /** What was needed and is not known, so that it counts as nothing: items without a price, the wage. */
  readonly unpriced: readonly string[];
  readonly needsWage: boolean;
  /** Area that this machine goes over in the season, passes counted; nothing where no row of Operations names it. */
  readonly area: Area | null;
  readonly costPerArea: MoneyPerArea | null;
};

/** Sizes and eye may differ: the worse of the two counts, because a worn part is dearer than a part too many. */
export function stateOf(check: PlanterCheck): { readonly state: PartState; readonly wear: Decimal | null } {
  const { whenNew, replaceAt, measured, finding, doneOn } = check;
  const wear = whenNew === null || replaceAt === null || measured === null ? null : wearUsed({ whenNew, replaceAt, measured });
  if (doneOn !== null) return { state: "done", wear };
  if (finding === "replace" || wear?.gte(one) === true) return { state: "due", wear };
  if (finding === "adjust") return { state: "adjust", wear };
  if (wear?.gte(soonFrom) === true) return { state: "soon", wear };
  return { state: wear === null && finding === null ? "not judged" : "good", wear };
}

/** A part that the eye found good although its size says that it is due. */
export const isUnlike = ({ state, check }: PlanterPart): boolean =>
  state === "due" && check.finding !== null && check.finding !== "replace";

/** Money per base unit at the best known price; `null` where none is known. */
function pricePerUnit(item: string, items: readonly Item[], figures: readonly ItemFigures[]): Decimal | null {
  const packPrice = figures.find((each) => each.item === item)?.averagePrice ?? null;
  return packPrice === null ? null : packPrice.div(items.find(({ name }) => name === item)!.packSize);
}

/**
 * Every planter that was looked at, in the order of the table. Cost of a part = quantity × best known price of its item + hours ×
 * labour per hour. It is no cost of the season: that is what is bought and done, or planned in the tables of costs.
 *
 * @param worked area that a machine goes over in the season, passes counted; `null` where no row of Operations names it
 */
export function planterRepairs(
  { planterChecks, items, settings: { labourPerHour } }: Pick<Season, "planterChecks" | "items" | "settings">,
  figures: readonly ItemFigures[],
  worked: (machine: string) => Area | null,
): readonly PlanterRepair[] {
  return [...new Set(planterChecks.map(({ machine }) => machine))].map((machine) => {
    const parts = planterChecks
      .filter((each) => each.machine === machine)
      .map((check) => partOf(check, (item) => pricePerUnit(item, items, figures), labourPerHour));
    const now = parts.filter(({ state }) => state === "due" || state === "adjust");
    const [cost, area] = [knownCost(now), worked(machine)];
    return {
      machine,
      parts,
      cost,
      soonCost: knownCost(parts.filter(({ state }) => state === "soon")),
      unpriced: [...new Set(now.flatMap(({ check: { item }, bought }) => (bought === null && item !== null ? [item] : [])))],
      needsWage: now.some(({ labour }) => labour === null),
      area,
      costPerArea: area === null || area.isZero() ? null : moneyPerArea(cost.div(area)),
    };
  });
}

const knownCost = (parts: readonly PlanterPart[]): Money =>
  money(sum(parts.map(({ bought, labour }) => (bought ?? zero).plus(labour ?? zero))));

function partOf(check: PlanterCheck, price: (item: string) => Decimal | null, wage: Money | null): PlanterPart {
  const { item, quantity, hours } = check;
  const { state, wear } = stateOf(check);
  const asked = state === "due" || state === "adjust" || state === "soon";
  const perUnit = asked && item !== null ? price(item) : zero;
  const bought = perUnit === null ? null : money(perUnit.times(quantity));
  const isWorked = asked && hours !== null && !hours.isZero();
  const labour = !isWorked ? money(zero) : wage === null ? null : money(wage.times(hours));
  return { check, state, wear, bought, labour, cost: bought === null || labour === null ? null : money(bought.plus(labour)) };
}
