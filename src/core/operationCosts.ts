/** What field work at a rate costs each field. */
import { sum, type Decimal } from "./decimal";
import { weightedMean, type Cost, type StageCosts } from "./cost";
import type { DaysOut } from "./operatingInterest";
import type { Operation } from "./season";
import { money } from "./units";
import { workLeft, type FieldWork, type Work } from "./work";

/** The costs of the work of one operation in one field: one cost for each kind that its rows name. */
export function operationCosts(work: FieldWork<Operation>, daysOut: DaysOut): StageCosts {
  const costs = (works: readonly Work<Operation>[]) => costsByKind(works, daysOut);
  return { plan: costs(work.planned), outlook: costs([...work.done, ...workLeft(work)]), final: costs(work.done) };
}

function costsByKind(works: readonly Work<Operation>[], daysOut: DaysOut): readonly Cost[] {
  const kinds = [...new Set(works.map(({ row }) => row.kind))];
  return kinds.map((kind) => {
    const rows = works.filter(({ row }) => row.kind === kind).map((work) => ({ row: work.row, amount: amountOf(work) }));
    return {
      kind, name: rows[0]!.row.operation, cash: true,
      amount: money(sum(rows.map(({ amount }) => amount))),
      days: weightedMean(rows.map(({ row, amount }) => ({ value: daysOut(row.date), weight: amount }))),
      entries: rows.map(({ row }) => row.source),
    };
  });
}

/** Money for the part of a row that falls to a field. */
export function amountOf({ row, areaPasses, part }: Work<Operation>): Decimal {
  switch (row.cost.basis) {
    case "per acre": return row.cost.rate.times(areaPasses);
    case "per hour": return row.cost.rate.times(row.cost.hours).times(part);
    case "lump sum": return row.cost.rate.times(part);
    case "machine": throw new RangeError(`operation ${row.operation} is by machine, which has no rate`);
  }
}
