/** Costs on their way from the entries to a budget. */
import { sum, zero, type Decimal } from "./decimal";
import type { Charge, Stage } from "./figures";
import { countsIn, type Kind } from "./kinds";
import type { EntryRef } from "./season";
import { money, moneyPerUnit, type Money, type MoneyPerUnit } from "./units";

/** A cost of one field that does not move with yield. */
export type Cost = {
  readonly kind: Kind;
  readonly name: string;
  /** Money on the whole field. */
  readonly amount: Money;
  /** Days from payment to the repayment of the operating loan, weighted by value; zero where no date is known. */
  readonly days: Decimal;
  /** Whether money is paid, so that an operating loan may carry it. */
  readonly cash: boolean;
  readonly entries: readonly EntryRef[];
};

/** A cost of one field per unit of the operator's crop. */
export type MovingCost = { readonly kind: Kind; readonly name: string; readonly perUnit: MoneyPerUnit; readonly entries: readonly EntryRef[] };

/** The costs of one field at each stage. */
export type StageCosts<Of = Cost> = { readonly [S in Stage]: readonly Of[] };

/** Whether operating interest is charged on a cost: cash, of the operating layer, and not itself interest. */
export const bearsInterest = (cost: Cost): boolean =>
  cost.cash && countsIn(cost.kind, "operating") && cost.kind !== "operating interest";

/** Costs of one kind and name as one charge each, with all their entries; costs of nothing are left out. */
export function charges(costs: readonly Cost[], moving: readonly MovingCost[]): readonly Charge[] {
  const groups = new Map<string, { first: { kind: Kind; name: string }; amounts: Decimal[]; perUnit: Decimal[]; entries: readonly EntryRef[] }>();
  const into = (cost: { kind: Kind; name: string; entries: readonly EntryRef[] }) => {
    const key = `${cost.kind}\n${cost.name.toLowerCase()}`;
    const group = groups.get(key) ?? { first: cost, amounts: [], perUnit: [], entries: [] };
    group.entries = group.entries.length === 0 ? cost.entries : [...group.entries, ...cost.entries];
    groups.set(key, group);
    return group;
  };
  for (const cost of costs) if (!cost.amount.isZero()) into(cost).amounts.push(cost.amount);
  for (const cost of moving) if (!cost.perUnit.isZero()) into(cost).perUnit.push(cost.perUnit);
  return [...groups.values()].map(({ first, amounts, perUnit, entries }) => ({
    kind: first.kind, name: first.name, amount: money(sum(amounts)), perUnit: moneyPerUnit(sum(perUnit)), entries,
  }));
}

/** A weighted mean; zero where the weights add up to nothing. */
export function weightedMean(values: readonly { readonly value: Decimal; readonly weight: Decimal }[]): Decimal {
  const whole = sum(values.map(({ weight }) => weight));
  return whole.isZero() ? zero : sum(values.map(({ value, weight }) => value.times(weight))).div(whole);
}
