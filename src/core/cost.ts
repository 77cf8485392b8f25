/** Costs on their way from the entries to a budget. */
import { zero, type Decimal } from "./numbers/decimal";
import type { Charge, Stage } from "./figures";
import { countsIn, type Kind } from "./kinds";
import type { EntryRef, IsoDate } from "./row";
import type { Field } from "./season";
import { money, moneyPerUnit, type Money, type MoneyPerUnit } from "./numbers/units";

/**
 * The entries that made a cost, put together when somebody asks for them: all of them at once would be as many as fields
 * times purchases.
 */
export type Entries = () => readonly EntryRef[];

/** A part of a cost that is paid on a day: as entered, or where nothing is, as is usual for its kind in a field. */
export type Due = { readonly on: IsoDate | null; readonly field: Pick<Field, "plannedPlanting">; readonly weight: Decimal };

/** A cost of one field that does not move with yield. */
export type Cost = {
  readonly kind: Kind;
  readonly name: string;
  /** Money on the whole field. */
  readonly amount: Money;
  /** Money times the days from its payment to the repayment of the operating loan; zero where no date is known. */
  readonly moneyDays: Decimal;
  /** Whether money is paid, so that an operating loan may carry it. */
  readonly cash: boolean;
  /** Whether it was done or bought although the plan of the field has nothing of it. */
  readonly unplanned?: boolean;
  /** How far it is: of work that is done where nothing is said, of a bill that is charged as it came, or still to come. */
  readonly progress?: "bill" | "left";
  /** Of what is still to come: whether it is bought already. */
  readonly billed?: true;
  /** Of what is still to come and not bought: when its parts are paid. Left out: as is usual for its kind in the field. */
  readonly due?: () => readonly Due[];
  /** The operator's fraction of what is paid for it, where landlords repay the rest; left out: all of it. */
  readonly ours?: Decimal;
  /** The part of the amount that this season's money pays, where some was paid last season; left out: all of it. */
  readonly borrowed?: Decimal;
  readonly entries: Entries;
};

/** What is still to come of some costs, and what is done or billed. */
export const isLeft = ({ progress }: Pick<Cost, "progress">): boolean => progress === "left";

/** A cost of one field per unit of the operator's crop. */
export type MovingCost = {
  readonly kind: Kind;
  readonly name: string;
  readonly perUnit: MoneyPerUnit;
  readonly cash: boolean;
  readonly entries: Entries;
};

/** The costs of one field at each stage. */
export type StageCosts<Of = Cost> = { readonly [S in Stage]: readonly Of[] };

/** Whether operating interest is charged on a cost: cash, of the operating layer, and not itself interest. */
export const bearsInterest = (cost: Cost): boolean => cost.cash && countsIn(cost.kind, "operating") && cost.kind !== "operating interest";

type ChargeGroup = {
  readonly kind: Kind;
  readonly name: string;
  readonly cash: boolean;
  amount: Decimal;
  perUnit: Decimal;
  unplanned: boolean;
  isNothing: boolean;
  readonly entries: Entries[];
};

/**
 * Costs of one kind and name as one charge each, what is paid apart from what is not. Where all of them are nothing there is no
 * charge; a row that costs nothing is among the entries of a charge of others.
 */
export function charges(costs: readonly Cost[], moving: readonly MovingCost[]): readonly Charge[] {
  const groups: ChargeGroup[] = [];
  const known = { cash: new Map<Kind, Map<string, ChargeGroup>>(), other: new Map<Kind, Map<string, ChargeGroup>>() };
  const into = ({ kind, name, cash, entries, unplanned = false }: Cost | (MovingCost & { readonly unplanned?: boolean })) => {
    const ofCash = cash ? known.cash : known.other;
    let ofKind = ofCash.get(kind);
    if (ofKind === undefined) ofCash.set(kind, (ofKind = new Map()));
    let group = ofKind.get(name);
    if (group === undefined) {
      // Most are spelled as they were before, so the case of letters is looked at once a spelling.
      const spelled = name.toLowerCase();
      group = ofKind.get(spelled);
      if (group === undefined) {
        group = { kind, name, cash, amount: zero, perUnit: zero, unplanned, isNothing: true, entries: [] };
        groups.push(group);
        ofKind.set(spelled, group);
      }
      ofKind.set(name, group);
    }
    group.unplanned &&= unplanned;
    group.entries.push(entries);
    return group;
  };
  for (const cost of costs) {
    const group = into(cost);
    if (cost.amount.isZero()) continue;
    group.isNothing = false;
    group.amount = group.amount === zero ? cost.amount : group.amount.plus(cost.amount);
  }
  for (const cost of moving) {
    if (cost.perUnit.isZero()) continue;
    const group = into(cost);
    group.isNothing = false;
    group.perUnit = group.perUnit === zero ? cost.perUnit : group.perUnit.plus(cost.perUnit);
  }
  return groups
    .filter(({ isNothing }) => !isNothing)
    .map(({ kind, name, cash, amount, perUnit, unplanned, entries }) => ({
      kind,
      name,
      cash,
      amount: money(amount),
      perUnit: moneyPerUnit(perUnit),
      unplanned,
      // What is done and what is left of an item name the same bills.
      get entries() {
        return [...new Set(entries.flatMap((of) => of()))];
      },
    }));
}
