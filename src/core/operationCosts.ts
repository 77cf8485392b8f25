/** What field work costs each field: at a rate, or by what the machine costs. */
import { one, zero, type Decimal } from "./numbers/decimal";
import type { Cost, Due, StageCosts } from "./cost";
import type { FieldFacts } from "./fieldFacts";
import type { Stage } from "./figures";
import type { Kind } from "./kinds";
import type { MachineCost } from "./machines/machineCost";
import type { DaysOut } from "./operatingInterest";
import type { Field, Operation } from "./season";
import { Tally } from "./numbers/tally";
import { money } from "./numbers/units";
import { doneAndLeft, type FieldWork, type Work } from "./work";

/** What each machine costs at a stage, by its name: the hours that carry its ownership differ with the work of the stage. */
export type MachineCosts = { readonly [S in Stage]: ReadonlyMap<string, MachineCost> };

/** The work of each stage: what is planned; what is done and what is left of the plan; what is done. */
export const workAt = (work: FieldWork<Operation>, stage: Stage): readonly Work<Operation>[] =>
  stage === "plan" ? work.planned : stage === "final" ? work.done : doneAndLeft(work);

/** The costs of the work of one operation in one field: one cost for each kind that its rows bring; no final before the harvest. */
export function operationCosts(
  work: FieldWork<Operation>,
  { field, harvested }: Pick<FieldFacts, "field" | "harvested">,
  daysOut: DaysOut,
  machines: MachineCosts,
): StageCosts {
  // What a machine costs in money, of whatever kind, is paid around its work.
  const days = ({ cost, kind, date }: Operation): Decimal => daysOut.of(cost.basis === "machine" ? "custom work" : kind, date, field);
  const at = (works: readonly Work<Operation>[], stage: Stage, progress?: "left") =>
    costsByKind(works, days, machines[stage], work.planned.length === 0).map((cost): Cost =>
      progress === undefined ? cost : { ...cost, progress, due: () => dueOf(works, machines[stage], cost.kind, field) },
    );
  const plan = at(work.planned, "plan", "left");
  // Where nothing is done yet and no machine is at work, the outlook is the plan.
  const isPlan = work.left === work.planned && work.done.length === 0 && work.planned.every(({ row }) => row.cost.basis !== "machine");
  const outlook = () => [...at(work.done, "outlook"), ...at(work.left, "outlook", "left")];
  return { plan, outlook: isPlan ? plan : outlook(), final: harvested === null ? [] : at(work.done, "final") };
}

/** What the next crop is to be charged for the work that was or will be done after the last load. */
export const nextCropWork = ({ next }: FieldWork<Operation>, machines: MachineCosts): readonly Cost[] =>
  costsByKind([...next.done, ...next.left], () => zero, machines.outlook, false);

/** What one row brings of one kind: so much for each of a quantity, such as dollars an acre on so many acres. */
type Part = { readonly kind: Kind; readonly cash: boolean; readonly perUnit: Decimal; readonly quantity: Decimal };

/** Kinds of machine cost that are no payment of this season. */
const notPaid: ReadonlySet<Kind> = new Set<Kind>(["unpaid labour", "machine ownership"]);

/** One part for a row at a rate; for a row by machine one for each kind that the machine costs. */
export function partsOf(work: Work<Operation>, machines: ReadonlyMap<string, MachineCost>): readonly Part[] {
  const {
    row: { cost, kind, operation },
    areaPasses,
  } = work;
  return cost.basis === "machine"
    ? kindsOf(cost.machine, machines, operation).map(([ofMachine, perUnit]) => ({
        kind: ofMachine,
        cash: !notPaid.has(ofMachine),
        perUnit,
        quantity: areaPasses,
      }))
    : [{ kind, cash: true, ...atRate(work, cost) }];
}

type AtRate = Exclude<Operation["cost"], { readonly basis: "machine" }>;

/** Money for each of a quantity, for the part of a row that falls to a field. */
function atRate({ areaPasses, part }: Work<Operation>, cost: AtRate): Pick<Part, "perUnit" | "quantity"> {
  switch (cost.basis) {
    case "per acre":
      return { perUnit: cost.rate, quantity: areaPasses };
    case "per hour":
      return { perUnit: cost.rate.times(cost.hours), quantity: part };
    case "lump sum":
      return { perUnit: cost.rate, quantity: part };
  }
}

/** What a machine costs per area, by kind. */
function kindsOf(machine: string, machines: ReadonlyMap<string, MachineCost>, operation: string): readonly (readonly [Kind, Decimal])[] {
  const cost = machines.get(machine);
  if (cost === undefined) throw new RangeError(`operation ${operation} is by a machine that the season does not have: ${machine}`);
  return [...cost.byKind].filter(([, perArea]) => !perArea.isZero());
}

/** Quantities, each times the days from its row to repayment, and the rows that they came from. */
class Worked {
  readonly quantity = new Tally();
  readonly quantityDays = new Tally();
  readonly rows: Operation[] = [];
}

function costsByKind(
  works: readonly Work<Operation>[],
  daysOf: (row: Operation) => Decimal,
  machines: ReadonlyMap<string, MachineCost>,
  unplanned: boolean,
): readonly Cost[] {
  // Money by kind; area by machine, since a machine costs the same on every acre.
  const byKind = new Map<Kind, Worked>();
  const byMachine = new Map<string, Worked>();
  for (const work of works) {
    const { row, areaPasses } = work;
    const days = daysOf(row);
    const into = row.cost.basis === "machine" ? entry(byMachine, row.cost.machine) : entry(byKind, row.kind);
    const { perUnit, quantity } = row.cost.basis === "machine" ? { perUnit: one, quantity: areaPasses } : atRate(work, row.cost);
    into.quantity.addProduct(perUnit, quantity);
    into.quantityDays.addProduct(perUnit, quantity, days);
    into.rows.push(row);
  }
  const atRates = new Set(byKind.keys());
  for (const [machine, { quantity, quantityDays, rows }] of byMachine) {
    const [area, areaDays] = [quantity.total(), quantityDays.total()];
    for (const [kind, perArea] of kindsOf(machine, machines, rows[0]!.operation)) {
      const into = entry(byKind, kind);
      into.quantity.addProduct(perArea, area);
      into.quantityDays.addProduct(perArea, areaDays);
      into.rows.push(...rows);
    }
  }
  return [...byKind].map(([kind, { quantity, quantityDays, rows }]) => ({
    kind,
    name: rows[0]!.operation,
    cash: atRates.has(kind) || !notPaid.has(kind),
    unplanned,
    amount: money(quantity.total()),
    moneyDays: quantityDays.total(),
    entries: () => rows.map(({ source }) => source),
  }));
}

/** When the money of a kind is paid, row by row. */
const dueOf = (works: readonly Work<Operation>[], machines: ReadonlyMap<string, MachineCost>, kind: Kind, field: Field): readonly Due[] =>
  works.flatMap((work) =>
    partsOf(work, machines)
      .filter((part) => part.kind === kind)
      .map(({ perUnit, quantity }) => ({ on: work.row.date, field, weight: perUnit.times(quantity) })),
  );

function entry<Key>(known: Map<Key, Worked>, key: Key): Worked {
  let worked = known.get(key);
  if (worked === undefined) known.set(key, (worked = new Worked()));
  return worked;
}
