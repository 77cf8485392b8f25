/** Prices of items and what the fields are charged for them, worked out again from the definition of the product. */
import type { Stage } from "../../src/core/figures";
import type { Application, Field, Item, Season } from "../../src/core/season";
import { daysOut, daysOutOf, type Cost } from "./exactCost";
import { lastLoad, weightsOver } from "./exactFields";
import { shareOut } from "./exactSplit";
import { isLate, settled, worksOf, type Settled, type Work } from "./exactWork";
import { compare, divided, isZero, larger, minus, one, plus, read, smaller, times, total, zero, type Fraction } from "./fraction";

type Use = Work<Application>;

/** An item with what was bought of it and where it is used, in base units. */
export type ItemAccount = {
  readonly item: Item;
  readonly bought: { readonly quantity: Fraction; readonly value: Fraction; readonly days: Fraction };
  /** Per base unit; `null` where nothing is bought or all of it went back, and where no plan price is entered. */
  readonly paid: Fraction | null;
  readonly planned: Fraction | null;
  readonly uses: ReadonlyMap<Field, Settled<Application>>;
};

export function itemAccount(season: Season, item: Item): ItemAccount {
  const lots = season.purchases.filter((purchase) => purchase.item === item.name)
    .map((lot) => ({ quantity: read(lot.quantity), value: minus(plus(read(lot.amount), read(lot.freight)), read(lot.rebate)), days: daysOut(season, lot.paidOn) }));
  const quantity = total(lots.map((lot) => lot.quantity));
  const value = total(lots.map((lot) => lot.value));
  const works = worksOf(season.applications.filter((row) => row.item === item.name), season)
    .map((work) => ({ ...work, extent: times(work.extent, bySelf(season) ? operatorPart(item, season.fields.find(({ name }) => name === work.field)!) : one) }));
  return {
    item,
    bought: { quantity, value, days: isZero(value) ? zero : divided(total(lots.map((lot) => times(lot.value, lot.days))), value) },
    paid: compare(quantity, zero) > 0n ? divided(value, quantity) : null,
    planned: item.planPricePerPack === null ? null : divided(read(item.planPricePerPack), read(item.packSize)),
    uses: new Map(season.fields.map((field) => [field, settled(works.filter((work) => work.field === field.name), lastLoad(season, field), () => isLate(item.kind))])),
  };
}

const quantityOf = (uses: readonly Use[]): Fraction => total(uses.map(({ row, extent }) => times(read(row.rate), extent)));
const allOf = ({ uses }: ItemAccount, ...of: readonly (keyof Settled<Application>)[]): readonly Use[] => [...uses.values()].flatMap((each) => of.flatMap((name) => each[name]));
const stillToBuy = (account: ItemAccount, ...of: readonly (keyof Settled<Application>)[]): Fraction => larger(minus(quantityOf(allOf(account, ...of)), account.bought.quantity), zero);
/** Landlords buy their own part, so that all that is bought here is the operator's. */
const bySelf = ({ settings }: Season): boolean => settings.landlordsInputs === "bought by the landlord";
/** A landlord bears the rest, on crop-shared land. */
const operatorPart = (item: Item, field: Field): Fraction => (field.tenure === "crop share" ? read(item.operatorCostShare) : one);

/** How much of what is done and of what is left the bills cover: what is done first, this crop before the next, and of neither more than all of it. */
function coveredOf(account: ItemAccount): Record<"done" | "left", Fraction> {
  const [done, doneForNext, left] = [quantityOf(allOf(account, "done")), quantityOf(allOf(account, "nextDone")), quantityOf(allOf(account, "left", "nextLeft"))];
  const of = (has: Fraction, needs: Fraction): Fraction => (isZero(needs) ? zero : divided(smaller(larger(has, zero), needs), needs));
  const has = account.bought.quantity;
  return { done: of(has, done), left: of(minus(minus(has, done), doneForNext), left) };
}

/** What the fields are charged for an item at a stage. */
export function itemCosts(season: Season, account: ItemAccount, stage: Stage): readonly Cost[] {
  const { item, bought, paid, planned } = account;
  const planPrice = planned ?? paid ?? zero;
  const bestPrice = paid ?? planned ?? zero;
  const cost = (field: Field, amount: Fraction, days: Fraction): Cost => {
    // Where something else counts it, nothing is charged.
    const borne = item.unchargedIn?.has(field.name) === true ? zero : times(amount, bySelf(season) ? one : operatorPart(item, field));
    return { field: field.name, kind: item.kind, amount: borne, perUnit: zero, loan: { amount: borne, amountDays: times(borne, days) } };
  };
  if (item.charged === "as used") {
    return [...account.uses].flatMap(([field, { planned: inPlan, done, left }]) => {
      const uses = { plan: inPlan, outlook: [...done, ...left], final: done }[stage];
      const price = stage === "plan" ? planPrice : bestPrice;
      return uses.map((use) => {
        const ownDay = daysOutOf(season, item.kind, use.row.date, field);
        const covered = stage === "plan" || paid === null ? zero : done.includes(use) ? coveredOf(account).done : coveredOf(account).left;
        return cost(field, times(read(use.row.rate), use.extent, price), plus(times(covered, bought.days), times(minus(one, covered), ownDay)));
      });
    });
  }
  const inPlan = allOf(account, "planned");
  const plannedQuantity = quantityOf(inPlan);
  const daysOf = (of: "planned" | "due") => {
    const quantity = quantityOf(allOf(account, of));
    return isZero(quantity) ? zero : divided(total([...account.uses].flatMap(([field, { [of]: here }]) =>
      here.map((use) => times(read(use.row.rate), use.extent, daysOutOf(season, item.kind, use.row.date, field))))), quantity);
  };
  const invoices = { amount: bought.value, days: bought.days };
  const parts = {
    plan: [{ amount: times(plannedQuantity, planPrice), days: daysOf("planned") }],
    outlook: [invoices, { amount: times(stillToBuy(account, "due"), bestPrice), days: daysOf("due") }],
    final: [invoices],
  }[stage];
  const whole = total(parts.map(({ amount }) => amount));
  if (isZero(whole)) return [];
  const days = divided(total(parts.map((part) => times(part.amount, part.days))), whole);
  const weights = weightsOver(season, season.fields, item.charged === "by revenue" ? "revenue" : "acres", stage);
  const ours = weights.map((weight, index) => (bySelf(season) ? times(weight, operatorPart(item, season.fields[index]!)) : weight));
  return shareOut(whole, ours.every(isZero) ? weights : ours).map((amount, index) => cost(season.fields[index]!, amount, days));
}

/** Bought, used, needed, short and left of an item, in packs, with its price. */
export function itemFigures(account: ItemAccount): Record<"averagePrice" | "bought" | "used" | "needed" | "short" | "shortCost" | "left", Fraction | null> {
  const { item, bought, paid, planned } = account;
  const asUsed = item.charged === "as used";
  const used = asUsed ? quantityOf(allOf(account, "done", "nextDone")) : bought.quantity;
  const needed = asUsed ? quantityOf(allOf(account, "left", "nextLeft")) : stillToBuy(account, "due", "nextPlanned");
  const short = larger(minus(plus(used, needed), bought.quantity), zero);
  const left = larger(minus(bought.quantity, plus(used, needed)), zero);
  const price = paid ?? planned;
  const packs = (quantity: Fraction): Fraction => divided(quantity, read(item.packSize));
  return {
    averagePrice: price === null ? null : times(price, read(item.packSize)),
    bought: packs(bought.quantity), used: packs(used), needed: packs(needed), short: packs(short),
    shortCost: price === null ? null : times(price, short), left: packs(left),
  };
}
