/** What field work costs each field: at a rate, or by what the machine costs. */
import type { Decimal } from "./decimal";
import type { Cost, StageCosts } from "./cost";
import type { Stage } from "./figures";
import type { Kind } from "./kinds";
import type { MachineCost } from "./machines/machineCost";
import type { DaysOut } from "./operatingInterest";
import type { Operation } from "./season";
import { Tally } from "./tally";
import { money } from "./units";
import { doneAndLeft, type FieldWork, type Work } from "./work";

/** What each machine costs at a stage, by its name: the hours that carry its ownership differ with the work of the stage. */
export type MachineCosts = { readonly [S in Stage]: ReadonlyMap<string, MachineCost> };

/** The work of each stage: what is planned; what is done and what is left of the plan; what is done. */
export const workAt = (work: FieldWork<Operation>, stage: Stage): readonly Work<Operation>[] =>
  stage === "plan" ? work.planned : stage === "final" ? work.done : doneAndLeft(work);

/** The costs of the work of one operation in one field: one cost for each kind that its rows bring; no final before the harvest. */
export function operationCosts(work: FieldWork<Operation>, daysOut: DaysOut, machines: MachineCosts, isHarvested: boolean): StageCosts {
  const at = (stage: Stage) => costsByKind(workAt(work, stage), daysOut, machines[stage]);
  const plan = at("plan");
  // Where nothing is done yet and no machine is at work, the outlook is the plan.
  const isPlan = work.left === work.planned && work.done.length === 0 && work.planned.every(({ row }) => row.cost.basis !== "machine");
  return { plan, outlook: isPlan ? plan : at("outlook"), final: isHarvested ? at("final") : [] };
}

/** What one row brings of one kind: so much for each of a quantity, such as dollars an acre on so many acres. */
type Part = { readonly kind: Kind; readonly cash: boolean; readonly perUnit: Decimal; readonly quantity: Decimal };

/** Kinds of machine cost that are no payment of this season. */
const notPaid: ReadonlySet<Kind> = new Set<Kind>(["unpaid labour", "machine ownership"]);

function costsByKind(works: readonly Work<Operation>[], daysOut: DaysOut, machines: ReadonlyMap<string, MachineCost>): readonly Cost[] {
  const byKind = new Map<Kind, { cash: boolean; name: string; amount: Tally; moneyDays: Tally; rows: Operation[] }>();
  for (const work of works) {
    const days = daysOut(work.row.date);
    for (const { kind, cash, perUnit, quantity } of partsOf(work, machines)) {
      let cost = byKind.get(kind);
      if (cost === undefined) byKind.set(kind, (cost = { cash, name: work.row.operation, amount: new Tally(), moneyDays: new Tally(), rows: [] }));
      cost.amount.addProduct(perUnit, quantity);
      cost.moneyDays.addProduct(perUnit, quantity, days);
      cost.rows.push(work.row);
    }
  }
  return [...byKind].map(([kind, { cash, name, amount, moneyDays, rows }]) =>
    ({ kind, name, cash, amount: money(amount.total()), moneyDays: moneyDays.total(), entries: () => rows.map(({ source }) => source) }));
}

/** One part for a row at a rate; for a row by machine one for each kind that the machine costs. */
export function partsOf(work: Work<Operation>, machines: ReadonlyMap<string, MachineCost>): readonly Part[] {
  const { row, areaPasses, part } = work;
  const atRate = (perUnit: Decimal, quantity: Decimal): readonly Part[] => [{ kind: row.kind, cash: true, perUnit, quantity }];
  switch (row.cost.basis) {
    case "per acre": return atRate(row.cost.rate, areaPasses);
    case "per hour": return atRate(row.cost.rate.times(row.cost.hours), part);
    case "lump sum": return atRate(row.cost.rate, part);
    case "machine": break;
  }
  const cost = machines.get(row.cost.machine);
  if (cost === undefined) throw new RangeError(`operation ${row.operation} is by a machine that the season does not have: ${row.cost.machine}`);
  return [...cost.byKind].filter(([, perArea]) => !perArea.isZero()).map(([kind, perArea]) =>
    ({ kind, cash: !notPaid.has(kind), perUnit: perArea, quantity: areaPasses }));
}
