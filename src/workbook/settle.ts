/** What two entries both charge counts once: which of them gives way, and the problem that names both places. */
import type { EntryRef, Target } from "../core/row";
import type { Machine } from "../core/machines/machine";
import { isOver } from "../core/over";
import type { Bill, Item, OtherCost, Season } from "../core/season";
import { applicationColumns } from "./columns/applications";
import type { Named } from "./columns/column";
import { itemColumns } from "./columns/items";
import { otherCostColumns } from "./columns/otherCosts";
import { purchaseColumns } from "./columns/purchases";
import type { Place, Problem, Subject } from "./problem";

export type Settled = { readonly season: Season; readonly problems: readonly Problem[] };

/** Kinds that machine rows compute. */
const computedKinds = ["fuel", "repairs"] as const;
type ComputedKind = (typeof computedKinds)[number];

/** Where machine rows compute a kind: a machine that does, and the fields that such machines work. */
type Computed = { readonly by: EntryRef; readonly fields: ReadonlySet<string> };

/**
 * Fuel and repairs count once. What machines compute counts before anything that is bought or entered for the same kind
 * and field, and fuel that is bought before fuel among the other costs. What gives way is shown and not charged.
 */
export function settled(season: Season): Settled {
  const problems: Problem[] = [];
  const computed = new Map(computedKinds.map((kind) => [kind as string, computedBy(season, kind)]));
  const items = season.items.map((item) => settledItem(season, item, computed.get(item.kind) ?? null, problems));
  const otherCosts = season.otherCosts.filter((cost) => !givesWay({ ...season, items }, cost, computed.get(cost.kind) ?? null, problems));
  const bills = season.bills?.map((bill) => settledBill(season, bill, computed.get(bill.kind) ?? null, problems));
  return problems.length === 0
    ? { season, problems }
    : { season: { ...season, items, otherCosts, ...(bills === undefined ? {} : { bills }) }, problems };
}

const computes: Readonly<Record<ComputedKind, (machine: Machine) => boolean>> = {
  fuel: ({ power, fuelPerArea, fuelPrice }) => !fuelPrice.isZero() && (fuelPerArea === null ? power !== null : !fuelPerArea.isZero()),
  repairs: ({ main, tractor }) => main.repairClass !== null || (tractor?.repairClass ?? null) !== null,
};

function computedBy(season: Season, kind: ComputedKind): Computed | null {
  const able = new Map(season.machines.filter(computes[kind]).map((machine) => [machine.name, machine.source]));
  const fields = new Set<string>();
  let by: EntryRef | null = null;
  for (const { cost, target } of able.size === 0 ? [] : season.operations) {
    const machine = cost.basis === "machine" ? able.get(cost.machine) : undefined;
    if (machine === undefined) continue;
    by ??= machine;
    for (const field of fieldsOf(season, target)) fields.add(field);
  }
  return by === null || fields.size === 0 ? null : { by, fields };
}

const fieldsOf = ({ fields }: Season, target: Target): readonly string[] =>
  fields.filter((field) => ("field" in target ? field.name === target.field : field.crop === target.crop)).map(({ name }) => name);

const placeOf = ({ table, row }: EntryRef, column?: Named): Place => ({
  table,
  row,
  ...(column === undefined ? {} : { column: column.heading }),
});
const farm: readonly Subject[] = [{ of: "farm" }];

/** An item of a computed kind, not charged where machines compute it. */
function settledItem(season: Season, item: Item, computed: Computed | null, problems: Problem[]): Item {
  if (computed === null) return item;
  const uses = season.applications.filter((row) => row.item === item.name);
  const twice = (at: Place, like: string) =>
    problems.push({ code: "fuel-twice", at, other: placeOf(computed.by), found: item.name, like, touches: farm });
  if (item.charged !== "as used") {
    const isBought = season.purchases.some((purchase) => purchase.item === item.name);
    if (!isBought && uses.length === 0) return item;
    twice(placeOf(item.source, itemColumns.columns.charged), `is charged ${item.charged} as it is ${isBought ? "bought" : "planned"}`);
    return { ...item, unchargedIn: new Set(season.fields.map(({ name }) => name)) };
  }
  const inside = (target: Target) => fieldsOf(season, target).some((field) => computed.fields.has(field));
  const first = uses.find(({ target }) => inside(target));
  if (first === undefined) return item;
  twice(placeOf(first.source, applicationColumns.columns.item), "is charged as it is used");
  return { ...item, unchargedIn: computed.fields };
}

/** A bill of a computed kind, not charged where machines compute it. */
function settledBill(season: Season, bill: Bill, computed: Computed | null, problems: Problem[]): Bill {
  if (computed === null || !season.fields.some((field) => isOver(bill.over, field) && computed.fields.has(field.name))) return bill;
  problems.push({
    code: "cost-twice",
    at: placeOf(bill.source, purchaseColumns.columns.kind),
    other: placeOf(computed.by),
    found: bill.kind,
    like: "The machine counts in its fields, and this is paid and not charged there.",
    touches: farm,
  });
  return { ...bill, unchargedIn: computed.fields };
}

/** Whether a cost of a computed kind is counted by something else already; fuel that is bought and not charged is told beside it. */
function givesWay(season: Season, cost: OtherCost, computed: Computed | null, problems: Problem[]): boolean {
  const { kind, over, source } = cost;
  if (cost.amount.isZero() || !(computedKinds as readonly string[]).includes(kind)) return false;
  const fields = "all" in over ? season.fields.map(({ name }) => name) : fieldsOf(season, over);
  const twice = (other: EntryRef, like: string) =>
    problems.push({
      code: "cost-twice",
      at: placeOf(source, otherCostColumns.columns.kind),
      other: placeOf(other),
      found: kind,
      like,
      touches: farm,
    });
  if (computed !== null && fields.some((field) => computed.fields.has(field))) {
    twice(computed.by, "The machine counts, and this is left out.");
    return true;
  }
  if (kind !== "fuel") return false;
  const ofKind = new Map(season.items.filter((item) => item.kind === kind).map((item) => [item.name, item]));
  const bill = season.purchases.find(({ item }) => ofKind.has(item));
  if (bill === undefined) return false;
  const isCharged = [...ofKind.values()].some((item) => fields.some((field) => chargedIn(season, item, field)));
  twice(
    bill.source,
    isCharged
      ? "What is bought counts, and this is left out."
      : "This counts; what is bought is stock until it is used, and is paid as well.",
  );
  return isCharged;
}

/** Whether a field bears any of an item. */
function chargedIn(season: Season, item: Item, field: string): boolean {
  if (item.unchargedIn?.has(field) === true) return false;
  if (item.charged !== "as used") return season.purchases.some((purchase) => purchase.item === item.name);
  return season.applications.some((row) => row.item === item.name && fieldsOf(season, row.target).includes(field));
}
