/** Why the outlook of a crop is not its plan: the reasons, largest first, adding up exactly. */
import { sum, zero, type Decimal } from "../numbers/decimal";
import type { Budget, Charge, CropFigures, FieldFigures, StageFigures } from "../figures";
import { countsIn, type Kind, type Layer } from "../kinds";
import { docked } from "../salesFigures";
import { money, type Money } from "../numbers/units";

export type Reason = {
  /** `yield`: another yield at the same price; `dock`: what buyers take off light grain; otherwise the cost that changed. */
  readonly of:
    | "yield"
    | "dock"
    | "cost that moves with yield"
    | {
        readonly kind: Kind;
        readonly name: string;
        /** Whether it is what fields have of it whose plan has nothing of it. */
        readonly unplanned: boolean;
      };
  /** What it does to the net return of the crop, in all; negative where it lowers it. */
  readonly effect: Money;
};

/**
 * As what a charge of a field is told. Where a budget line stands, the line, what is billed and what is left of it bear other
 * names and are one cost: its kind moved by the difference of them all.
 */
export const toldAs = (
  { lined }: Pick<FieldFigures, "lined">,
  { kind, name, unplanned }: Pick<Charge, "kind" | "name" | "unplanned">,
): { readonly kind: Kind; readonly name: string; readonly unplanned: boolean } =>
  lined.some((line) => line.kind === kind) ? { kind, name: kind, unplanned: false } : { kind, name, unplanned };

/**
 * The difference of a crop's net return, outlook less plan, reason by reason. In each field
 *
 *     yield   (p − v of the plan)·s·area × (outlook yield − plan yield)
 *     moving  −(v of the outlook − v of the plan)·s·area × outlook yield
 *     dock    −d of the outlook·s·area × outlook yield
 *     cost    −(outlook amount − plan amount), for each kind and name, apart in fields whose plan has nothing of it; for each
 * kind where a budget line stands
 *
 * and the four add up to the difference of (p − d − v)·s·Y·area + o·area − F·area.
 */
export function reasons({ fields }: CropFigures, layer: Layer): readonly Reason[] {
  const costs = new Map<string, { kind: Kind; name: string; unplanned: boolean; effect: Decimal }>();
  const add = (field: FieldFigures, charge: Charge, sign: "1" | "-1", { chargesCapital }: StageFigures) => {
    if (!countsIn(charge.kind, layer) && !(layer === "full" && charge.kind === "term interest" && !chargesCapital)) return;
    const { kind, name, unplanned } = toldAs(field, charge);
    const key = `${kind}\n${name.toLowerCase()}\n${unplanned}`;
    const soFar = costs.get(key);
    costs.set(key, { kind, name, unplanned, effect: (soFar?.effect ?? zero).plus(charge.amount.times(sign)) });
  };
  for (const field of fields) {
    const { plan, outlook } = field;
    plan.charges.forEach((charge) => {
      add(field, charge, "1", plan);
    });
    outlook.charges.forEach((charge) => {
      add(field, charge, "-1", outlook);
    });
  }
  const all: readonly Reason[] = [
    { of: "yield", effect: money(sum(fields.map((field) => yieldEffect(field, layer)))) },
    { of: "cost that moves with yield", effect: money(sum(fields.map((field) => movingEffect(field, layer)))) },
    { of: "dock", effect: money(sum(fields.map(({ plan, outlook }) => docked(plan.budget).minus(docked(outlook.budget))))) },
    ...[...costs.values()].map(({ effect, ...of }) => ({ of, effect: money(effect) })),
  ];
  return all.filter(({ effect }) => !effect.isZero()).sort((a, b) => b.effect.abs().comparedTo(a.effect.abs()));
}

const operatorArea = ({ operatorShare, area }: Budget): Decimal => operatorShare.times(area);

function yieldEffect({ plan: { budget: plan }, outlook: { budget: outlook } }: FieldFigures, layer: Layer): Decimal {
  const perUnit = plan.price.minus(plan.moving.layers[layer]);
  return perUnit.times(operatorArea(plan)).times(outlook.yields.used.minus(plan.yields.used));
}

function movingEffect({ plan: { budget: plan }, outlook: { budget: outlook } }: FieldFigures, layer: Layer): Decimal {
  return plan.moving.layers[layer].minus(outlook.moving.layers[layer]).times(operatorArea(outlook)).times(outlook.yields.used);
}
