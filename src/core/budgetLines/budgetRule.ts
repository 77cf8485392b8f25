/** Rough and fine: what a budget line adds to the rows and bills of its field and kind at each stage. */
import { larger, sum, zero, type Decimal } from "../numbers/decimal";
import { isLeft, type Cost, type MovingCost, type StageCosts } from "../cost";
import { yieldAt, type FieldFacts } from "../fieldFacts";
import type { LinedKind, Stage } from "../figures";
import type { Kind } from "../kinds";
import { money, moneyPerUnit } from "../numbers/units";
import type { FieldLine } from "./fieldLine";

/** The costs of a field at each stage, those that move with yield apart. */
export type FieldCosts = { readonly fixed: StageCosts; readonly moving: StageCosts<MovingCost> };

/** Kinds whose lines move with yield. */
const moveWithYield: ReadonlySet<Kind> = new Set<Kind>(["drying", "haul"]);

/** How the line is called where its rest stands among the costs: nobody has billed it. */
export const notBilled = "Budget, no bill yet";

/**
 * The costs of a field with its budget lines among them.
 *
 *     plan      the line, in place of the plan's rows of its kind
 *     outlook   what is done, billed and left of the rows, and of the line whatever it has beyond all of them
 *     final     what is done and billed, and of the line whatever it has beyond that
 *
 * A line that is all in adds nothing to outlook and final. Lines of drying and haul move with yield, at line ÷ (share × goal)
 * a unit; where there is no goal or no share to move with, they stay as they are.
 */
export function withLines(
  facts: FieldFacts,
  lines: readonly FieldLine[],
  costs: FieldCosts,
): FieldCosts & { readonly lined: readonly LinedKind[] } {
  const fixed = { plan: [...costs.fixed.plan], outlook: [...costs.fixed.outlook], final: [...costs.fixed.final] };
  const moving = { plan: [...costs.moving.plan], outlook: [...costs.moving.outlook], final: [...costs.moving.final] };
  const lined = lines.map((line): LinedKind => {
    const of = ofKind(line.kind, facts, costs);
    const [plan, outlook, final] = [planOf(line, facts), restOf(line, facts, of, "outlook"), restOf(line, facts, of, "final")];
    // What a line plans for is not unplanned, whatever it is called.
    const planned = (all: readonly Cost[]) =>
      all.map((cost) => (cost.kind === line.kind && cost.unplanned === true ? { ...cost, unplanned: false } : cost));
    fixed.plan = [...fixed.plan.filter(({ kind }) => kind !== line.kind), ...plan.fixed];
    moving.plan = [...moving.plan.filter(({ kind }) => kind !== line.kind), ...plan.moving];
    fixed.outlook = [...planned(fixed.outlook), ...outlook.fixed];
    moving.outlook = [...moving.outlook, ...outlook.moving];
    // Before the harvest there is no final.
    if (facts.harvested !== null) fixed.final = [...planned(fixed.final), ...final.fixed];
    moving.final = [...moving.final, ...final.moving];
    const soFar = sum(of.outlook.fixed.filter((cost) => !isLeft(cost)).map(({ amount }) => amount));
    const all = of.outlook.amount.plus(outlook.amount);
    return {
      kind: line.kind,
      budgeted: money(line.ours),
      rows: money(of.plan.amount),
      soFar: money(soFar),
      left: money(all.minus(soFar)),
      outlook: money(all),
      rest: {
        amount: money(outlook.amount),
        isMoving: outlook.moving.length > 0,
        perUnit: sum(outlook.moving.map(({ perUnit }) => perUnit)),
        line,
      },
      allIn: line.allIn,
    };
  });
  return { fixed, moving, lined };
}

type OfKind = { readonly [S in Stage]: { readonly fixed: readonly Cost[]; readonly perUnit: Decimal; readonly amount: Decimal } };

/** What rows and bills of a kind come to at each stage, what moves with yield at the stage's yield. */
function ofKind(kind: Kind, facts: FieldFacts, costs: FieldCosts): OfKind {
  const at = (stage: Stage) => {
    const fixed = costs.fixed[stage].filter((cost) => cost.kind === kind);
    const perUnit = sum(costs.moving[stage].filter((cost) => cost.kind === kind).map((cost) => cost.perUnit));
    return { fixed, perUnit, amount: sum(fixed.map(({ amount }) => amount)).plus(perUnit.times(unitsAt(facts, stage))) };
  };
  return { plan: at("plan"), outlook: at("outlook"), final: at("final") };
}

/** The operator's units of the crop. */
export const unitsAt = (facts: FieldFacts, stage: Stage): Decimal =>
  facts.field.operatorShare.times(yieldAt(facts, stage)).times(facts.field.area);

/** What a line adds to a stage. */
type Added = { readonly fixed: readonly Cost[]; readonly moving: readonly MovingCost[]; readonly amount: Decimal };

/** Money per unit of the operator's crop; `null` where the line does not move with yield. */
function perUnitOf({ kind, ours }: FieldLine, facts: FieldFacts): Decimal | null {
  const units = unitsAt(facts, "plan");
  return moveWithYield.has(kind) && !units.isZero() ? ours.div(units) : null;
}

function planOf(line: FieldLine, facts: FieldFacts): Added {
  const perUnit = perUnitOf(line, facts);
  return perUnit === null ? fixedOf(line, line.ours, "Budget") : movingOf(line, perUnit, line.ours, "Budget");
}

function restOf(line: FieldLine, facts: FieldFacts, of: OfKind, stage: "outlook" | "final"): Added {
  if (line.allIn) return { fixed: [], moving: [], amount: zero };
  const perUnit = perUnitOf(line, facts);
  const [{ amount, fixed, perUnit: ofRows }, units] = [of[stage], unitsAt(facts, stage)];
  if (perUnit === null) return fixedOf(line, larger(line.ours.minus(amount), zero), notBilled);
  // Of no crop there is nothing to move, whatever was credited; a price is still judged by what a unit would cost.
  const rest = units.isZero() ? zero : larger(perUnit.times(units).minus(amount), zero);
  const restPerUnit = units.isZero()
    ? fixed.every((cost) => cost.amount.isZero())
      ? larger(perUnit.minus(ofRows), zero)
      : zero
    : rest.div(units);
  return movingOf(line, restPerUnit, rest, notBilled);
}

function fixedOf(line: FieldLine, amount: Decimal, name: string): Added {
  const { kind, cash, entries, days } = line;
  return {
    fixed: [{ kind, name, cash, amount: money(amount), moneyDays: amount.times(days), progress: "left", entries: () => entries }],
    moving: [],
    amount,
  };
}

/** What moves with yield bears interest only from a month that is entered, beside its amount. */
function movingOf(line: FieldLine, perUnit: Decimal, amount: Decimal, name: string): Added {
  const {
    fixed: [none],
  } = fixedOf(line, amount, name);
  const { kind, cash, entries } = line;
  return {
    fixed: none!.moneyDays.isZero() ? [] : [{ ...none!, amount: money(zero) }],
    moving: [{ kind, name, perUnit: moneyPerUnit(perUnit), cash, entries: () => entries }],
    amount,
  };
}
