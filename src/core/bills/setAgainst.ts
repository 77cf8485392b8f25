/** Bills charged directly are set against what is left of their field and kind, so that neither counts beside the other. */
import type { FieldCosts } from "../budgetLines/budgetRule";
import { isLeft, type Cost, type MovingCost } from "../cost";
import { larger, one, sum, zero, type Decimal } from "../numbers/decimal";
import type { Stage } from "../figures";
import type { Kind } from "../kinds";
import { money, moneyPerUnit } from "../numbers/units";

/** What bills take off a cost that was still to come, in money that the operator bears. */
export type SetAgainst = { readonly cost: Cost; readonly amount: Decimal };

/** Whether a cost is still to come and no bill covers it: rows of the plan, other costs, what is still to be bought. */
const isUnbilled = (cost: Cost): boolean => isLeft(cost) && cost.billed !== true;

/**
 * The costs of a field with its bills among them. With B = what is billed of a kind and L = what is left of it and not billed,
 * in money that the operator bears, max(L − B, 0) of L stays; what moves with yield is part of L at the yield of the stage.
 * More sent back than billed leaves L as it is.
 *
 * @param units the operator's units of the crop at a stage
 * @returns `off`: what the bills take off the outlook's costs, those that move with yield aside
 */
export function withBills(
  costs: FieldCosts,
  bills: readonly Cost[],
  hasFinal: boolean,
  units: (stage: Stage) => Decimal,
): FieldCosts & { readonly off: readonly SetAgainst[] } {
  const at = (stage: Stage) => atStage({ fixed: costs.fixed[stage], moving: costs.moving[stage] }, bills, units(stage));
  const [outlook, final] = [at("outlook"), hasFinal ? at("final") : { fixed: costs.fixed.final, moving: costs.moving.final }];
  return {
    fixed: { plan: costs.fixed.plan, outlook: outlook.fixed, final: final.fixed },
    moving: { plan: costs.moving.plan, outlook: outlook.moving, final: final.moving },
    off: outlook.off,
  };
}

type AtStage = { readonly fixed: readonly Cost[]; readonly moving: readonly MovingCost[] };

function atStage({ fixed, moving }: AtStage, bills: readonly Cost[], units: Decimal): AtStage & { readonly off: readonly SetAgainst[] } {
  const kept = new Map<Kind, Decimal>();
  for (const kind of new Set(bills.map((bill) => bill.kind))) {
    const billed = sum(bills.filter((bill) => bill.kind === kind).map(({ amount }) => amount));
    const left = sum(fixed.filter((cost) => cost.kind === kind && isUnbilled(cost)).map(({ amount }) => amount)).plus(
      sum(moving.filter((cost) => cost.kind === kind).map(({ perUnit }) => perUnit)).times(units),
    );
    if (left.gt("0") && billed.gt("0")) kept.set(kind, larger(left.minus(billed), zero).div(left));
  }
  const partOf = (cost: Cost): Decimal => (isUnbilled(cost) ? (kept.get(cost.kind) ?? one) : one);
  return {
    fixed: [...fixed.map((cost) => lessened(cost, partOf(cost))), ...bills],
    moving: moving.map((cost): MovingCost => ({ ...cost, perUnit: moneyPerUnit(cost.perUnit.times(kept.get(cost.kind) ?? one)) })),
    // A cost of which the operator bears nothing is nothing less by them.
    off: fixed.flatMap((cost) =>
      partOf(cost) === one || cost.amount.isZero() ? [] : [{ cost, amount: cost.amount.times(one.minus(partOf(cost))) }],
    ),
  };
}

const lessened = (cost: Cost, part: Decimal): Cost =>
  part === one ? cost : { ...cost, amount: money(cost.amount.times(part)), moneyDays: cost.moneyDays.times(part) };
