/** What field work costs each field: at a rate, or by what the machine costs. */
import { sum, type Decimal } from "./decimal";
import { weightedMean, type Cost, type StageCosts } from "./cost";
import type { Stage } from "./figures";
import type { Kind } from "./kinds";
import type { MachineCost } from "./machines/machineCost";
import type { DaysOut } from "./operatingInterest";
import type { Operation } from "./season";
import { money } from "./units";
import { workLeft, type FieldWork, type Work } from "./work";

/** What each machine costs at a stage, by its name: the hours that carry its ownership differ with the work of the stage. */
export type MachineCosts = { readonly [S in Stage]: ReadonlyMap<string, MachineCost> };

/** The work of each stage: what is planned; what is done and what is left of the plan; what is done. */
export const workAt = (work: FieldWork<Operation>, stage: Stage): readonly Work<Operation>[] =>
  stage === "plan" ? work.planned : stage === "final" ? work.done : [...work.done, ...workLeft(work)];

/** The costs of the work of one operation in one field: one cost for each kind that its rows bring; no final before the harvest. */
export function operationCosts(work: FieldWork<Operation>, daysOut: DaysOut, machines: MachineCosts, isHarvested: boolean): StageCosts {
  // A row at a rate costs the same at every stage that has it.
  const amounts = new Map<Work<Operation>, Decimal>();
  const amountOnce = (of: Work<Operation>): Decimal => {
    let amount = amounts.get(of);
    if (amount === undefined) amounts.set(of, (amount = amountOf(of)));
    return amount;
  };
  const at = (stage: Stage) => costsByKind(workAt(work, stage), daysOut, machines[stage], amountOnce);
  return { plan: at("plan"), outlook: at("outlook"), final: isHarvested ? at("final") : [] };
}

type Part = { readonly kind: Kind; readonly amount: Decimal; readonly cash: boolean; readonly row: Operation };

/** Kinds of machine cost that are no payment of this season. */
const notPaid: ReadonlySet<Kind> = new Set<Kind>(["unpaid labour", "machine ownership"]);

type AmountOf = (work: Work<Operation>) => Decimal;

function costsByKind(works: readonly Work<Operation>[], daysOut: DaysOut, machines: ReadonlyMap<string, MachineCost>, amountOnce: AmountOf): readonly Cost[] {
  const parts = works.flatMap((work) => partsOf(work, machines, amountOnce));
  return [...new Set(parts.map(({ kind }) => kind))].map((kind) => {
    const ofKind = parts.filter((part) => part.kind === kind);
    return {
      kind, name: ofKind[0]!.row.operation, cash: ofKind[0]!.cash,
      amount: money(sum(ofKind.map(({ amount }) => amount))),
      days: weightedMean(ofKind.map(({ row, amount }) => ({ value: daysOut(row.date), weight: amount }))),
      sources: [ofKind.map(({ row }) => row.source)],
    };
  });
}

/** One part for a row at a rate; for a row by machine one for each kind that the machine costs. */
export function partsOf(work: Work<Operation>, machines: ReadonlyMap<string, MachineCost>, amountAtRate: AmountOf = amountOf): readonly Part[] {
  const { row } = work;
  if (row.cost.basis !== "machine") return [{ kind: row.kind, amount: amountAtRate(work), cash: true, row }];
  const cost = machines.get(row.cost.machine);
  if (cost === undefined) throw new RangeError(`operation ${row.operation} is by a machine that the season does not have: ${row.cost.machine}`);
  return [...cost.byKind].filter(([, perArea]) => !perArea.isZero()).map(([kind, perArea]) =>
    ({ kind, amount: perArea.times(work.areaPasses), cash: !notPaid.has(kind), row }));
}

/** Money for the part of a row at a rate that falls to a field. */
function amountOf({ row, areaPasses, part }: Work<Operation>): Decimal {
  switch (row.cost.basis) {
    case "per acre": return row.cost.rate.times(areaPasses);
    case "per hour": return row.cost.rate.times(row.cost.hours).times(part);
    case "lump sum": return row.cost.rate.times(part);
    case "machine": throw new RangeError(`operation ${row.operation} is by machine, which has no rate`);
  }
}
