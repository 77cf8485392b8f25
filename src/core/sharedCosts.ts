/** Costs that are no field work, and what the land costs. */
import { one, zero, type Decimal } from "./numbers/decimal";
import type { Cost, MovingCost, StageCosts } from "./cost";
import { sharingWeights, type FieldFacts } from "./fieldFacts";
import { landWeights } from "./land";
import type { Stage } from "./figures";
import { pointsPerUnit } from "./loadDrying";
import type { DaysOut } from "./operatingInterest";
import { isOver } from "./over";
import type { OtherCost } from "./season";
import { splitToTheCent } from "./numbers/split";
import { money, moneyPerUnit, type MoneyPerArea } from "./numbers/units";

/** The fields that a cost is spread over. */
const fieldsOf = ({ over }: OtherCost, facts: readonly FieldFacts[]): readonly FieldFacts[] =>
  facts.filter(({ field }) => isOver(over, field));

/**
 * The costs of each field that do not move with yield, at each stage asked for. A whole-farm amount is split so that its
 * cents add up; an amount per area is charged on the area of each field concerned, on land that two of them use but once.
 */
export function otherCosts(
  costs: readonly OtherCost[],
  facts: readonly FieldFacts[],
  stages: readonly Stage[],
  daysOut: DaysOut,
): ReadonlyMap<string, StageCosts> {
  const byField = new Map(facts.map(({ field }) => [field.name, { plan: [] as Cost[], outlook: [] as Cost[], final: [] as Cost[] }]));
  for (const cost of costs) {
    if (cost.basis === "per unit of yield") continue;
    const over = fieldsOf(cost, facts);
    if (over.length === 0) continue;
    const days = over.map(({ field }) => daysOut.of(cost.kind, cost.paidOn, field));
    const shares = (stage: Stage): readonly Cost[] => {
      const amounts =
        cost.basis === "whole farm"
          ? splitToTheCent(money(cost.amount), sharingWeights(over, cost.by, stage))
          : landWeights(over.map(({ field }) => field)).map((land) => money(cost.amount.times(land)));
      return amounts.map((amount, index) => ({
        kind: cost.kind,
        name: cost.item,
        amount,
        moneyDays: amount.times(days[index]!),
        cash: cost.cash,
        progress: "left",
        due: () => [{ on: cost.paidOn, field: over[index]!.field, weight: one }],
        entries: () => [cost.source],
      }));
    };
    // Only revenue differs from stage to stage.
    const alike = cost.basis === "whole farm" && cost.by === "revenue" ? null : shares("plan");
    for (const stage of stages)
      (alike ?? shares(stage)).forEach((share, index) => byField.get(over[index]!.field.name)![stage].push(share));
  }
  return byField;
}

/** Cash rent, of a flexible one its base, and the charge for owned land: the same at every stage. */
export function landCosts({ field }: FieldFacts): readonly Cost[] {
  const costs: Cost[] = [];
  const add = (kind: "cash rent" | "land charge", name: string, perArea: typeof field.rentPerArea, cash: boolean) => {
    if (perArea !== null)
      costs.push({
        kind,
        name,
        amount: money(perArea.times(field.area)),
        moneyDays: zero,
        cash,
        progress: "left",
        entries: () => [field.source],
      });
  };
  add("cash rent", field.tenure === "flexible rent" ? "Base rent" : "Cash rent", field.rentPerArea, true);
  add("land charge", "Land charge", field.landChargePerArea, false);
  return costs;
}

/** What of a flexible rent goes by price and yield, as a cost beside its base; none where it comes to nothing. */
export const rentAboveCosts = ({ field, crop }: FieldFacts, perArea: MoneyPerArea): readonly Cost[] =>
  perArea.isZero()
    ? []
    : [
        {
          kind: "cash rent",
          name: rentAboveName,
          amount: money(perArea.times(field.area)),
          moneyDays: zero,
          cash: true,
          progress: "left",
          entries: () => [field.source, crop.source],
        },
      ];

/** How what is paid above the base of a flexible rent is called among the costs. */
const rentAboveName = "Rent above the base";

/**
 * The costs that move with yield: the crop's selling cost, drying down to standard moisture, and other costs per unit
 * of yield.
 *
 * @param perPoint money per unit of yield and point; `null` where no drying is charged
 */
export function movingCosts(facts: FieldFacts, costs: readonly OtherCost[], perPoint: Decimal | null, stage: Stage): readonly MovingCost[] {
  const { crop, weighed } = facts;
  const moving: MovingCost[] = [
    { kind: "haul", name: "Selling cost", perUnit: crop.sellingCostPerUnit, cash: true, entries: () => [crop.source] },
  ];
  if (perPoint !== null) {
    const entries = () => [crop.source, ...(stage === "plan" || weighed === null ? [] : weighed.entries)];
    moving.push({
      kind: "drying",
      name: "Drying",
      perUnit: moneyPerUnit(pointsPerUnit(facts, stage).times(perPoint)),
      cash: true,
      entries,
    });
  }
  for (const cost of costs) {
    if (cost.basis !== "per unit of yield" || fieldsOf(cost, [facts]).length === 0) continue;
    moving.push({ kind: cost.kind, name: cost.item, perUnit: moneyPerUnit(cost.amount), cash: cost.cash, entries: () => [cost.source] });
  }
  return moving;
}
