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
  /** `opening`: of the value, what was paid last season; `fresh`: the part of the value that was not. */
  readonly bought: {
    readonly quantity: Fraction;
    readonly value: Fraction;
    readonly valueDays: Fraction;
    readonly days: Fraction;
    readonly opening: Fraction;
    readonly fresh: Fraction;
  };
  /** Per base unit; `null` where nothing is bought or all of it went back, and where no plan price is entered. */
  readonly paid: Fraction | null;
  readonly planned: Fraction | null;
  readonly uses: ReadonlyMap<Field, Settled<Application>>;
};

export function itemAccount(season: Season, item: Item): ItemAccount {
  const lots = season.purchases
    .filter((purchase) => purchase.item === item.name)
    .map((lot) => ({
      quantity: read(lot.quantity),
      value: minus(plus(read(lot.amount), read(lot.freight)), read(lot.rebate)),
      days: lot.isOpening ? zero : daysOut(season, lot.paidOn),
      isOpening: lot.isOpening,
    }));
  const quantity = total(lots.map((lot) => lot.quantity));
  const value = total(lots.map((lot) => lot.value));
  const opening = total(lots.filter((lot) => lot.isOpening).map((lot) => lot.value));
  const valueDays = total(lots.map((lot) => times(lot.value, lot.days)));
  const works = worksOf(
    season.applications.filter((row) => row.item === item.name),
    season,
  ).map((work) => ({
    ...work,
    extent: times(
      work.extent,
      bySelf(season)
        ? operatorPart(
            item,
            season.fields.find(({ name }) => name === work.field)!,
          )
        : one,
    ),
  }));
  return {
    item,
    bought: {
      quantity,
      value,
      valueDays,
      days: isZero(value) ? zero : divided(valueDays, value),
      opening,
      fresh: isZero(value) ? one : divided(minus(value, opening), value),
    },
    paid: compare(quantity, zero) > 0n ? divided(value, quantity) : null,
    planned: item.planPricePerPack === null ? null : divided(read(item.planPricePerPack), read(item.packSize)),
    uses: new Map(
      season.fields.map((field) => [
        field,
        settled(
          works.filter((work) => work.field === field.name),
          lastLoad(season, field),
          () => isLate(item.kind),
        ),
      ]),
    ),
  };
}

export const quantityOf = (uses: readonly Use[]): Fraction => total(uses.map(({ row, extent }) => times(read(row.rate), extent)));
export const allOf = ({ uses }: ItemAccount, ...of: readonly (keyof Settled<Application>)[]): readonly Use[] =>
  [...uses.values()].flatMap((each) => of.flatMap((name) => each[name]));
const stillToBuy = (account: ItemAccount, ...of: readonly (keyof Settled<Application>)[]): Fraction =>
  larger(minus(quantityOf(allOf(account, ...of)), account.bought.quantity), zero);
/** Landlords buy their own part, so that all that is bought here is the operator's. */
export const bySelf = ({ settings }: Season): boolean => settings.landlordsInputs === "bought by the landlord";
/** A landlord bears the rest, on crop-shared land. */
export const operatorPart = (item: Item, field: Field): Fraction => (field.tenure === "crop share" ? read(item.operatorCostShare) : one);

/**
 * How much of what is done and of what is left the bills cover: what is done first, this crop before the next, and of neither
 * more than all of it.
 */
function coveredOf(account: ItemAccount): Record<"done" | "left", Fraction> {
  const [done, doneForNext, left] = [
    quantityOf(allOf(account, "done")),
    quantityOf(allOf(account, "nextDone")),
    quantityOf(allOf(account, "left", "nextLeft")),
  ];
  const of = (has: Fraction, needs: Fraction): Fraction => (isZero(needs) ? zero : divided(smaller(larger(has, zero), needs), needs));
  const has = account.bought.quantity;
  return { done: of(has, done), left: of(minus(minus(has, done), doneForNext), left) };
}

/** What the fields are charged for an item at a stage. */
export function itemCosts(season: Season, account: ItemAccount, stage: Stage): readonly Cost[] {
  const { item, bought, paid, planned } = account;
  const planPrice = planned ?? paid ?? zero;
  const bestPrice = paid ?? planned ?? zero;
  type Progress = Pick<Cost, "progress" | "due">;
  const cost = (field: Field, amount: Fraction, amountDays: Fraction, progress: Progress, lent = amount): readonly Cost[] => {
    // Where something else counts it, nothing is charged.
    if (item.unchargedIn?.has(field.name) === true) return [];
    const ours = bySelf(season) ? one : operatorPart(item, field);
    const borne = times(amount, ours);
    return [
      {
        field: field.name,
        kind: item.kind,
        amount: borne,
        perUnit: zero,
        loan: { amount: times(lent, ours), amountDays: times(amountDays, ours) },
        cash: true,
        ours,
        ...progress,
      },
    ];
  };
  const dueOf = (field: string, use: Use) => ({ on: use.row.date, field, weight: times(read(use.row.rate), use.extent) });
  if (item.charged === "as used") {
    return [...account.uses].flatMap(([field, { planned: inPlan, done, left }]) => {
      const uses = { plan: inPlan, outlook: [...done, ...left], final: done }[stage];
      const price = stage === "plan" ? planPrice : bestPrice;
      return uses.flatMap((use) => {
        const ownDay = daysOutOf(season, item.kind, use.row.date, field);
        const [isDone, amount] = [stage !== "plan" && done.includes(use), times(read(use.row.rate), use.extent, price)];
        const covered = stage === "plan" || paid === null ? zero : isDone ? coveredOf(account).done : coveredOf(account).left;
        const due = [dueOf(field.name, use)];
        return [
          ...cost(
            field,
            times(amount, covered),
            times(amount, covered, bought.days),
            { progress: isDone ? "done" : "bought", due },
            times(amount, covered, stage === "plan" ? one : bought.fresh),
          ),
          ...cost(field, times(amount, minus(one, covered)), times(amount, minus(one, covered), ownDay), {
            progress: isDone ? "done" : "left",
            due,
          }),
        ];
      });
    });
  }
  const inPlan = allOf(account, "planned");
  const plannedQuantity = quantityOf(inPlan);
  const daysOf = (of: "planned" | "due") => {
    const quantity = quantityOf(allOf(account, of));
    return isZero(quantity)
      ? zero
      : divided(
          total(
            [...account.uses].flatMap(([field, { [of]: here }]) =>
              here.map((use) => times(read(use.row.rate), use.extent, daysOutOf(season, item.kind, use.row.date, field))),
            ),
          ),
          quantity,
        );
  };
  // What was sent back beyond what was bought is charged, and nobody will buy it again.
  const [short, sentBack] = [stillToBuy(account, "due"), larger(minus(zero, bought.quantity), zero)];
  const [inPlanMoney, again, rest] = [
    times(plannedQuantity, planPrice),
    times(smaller(sentBack, short), bestPrice),
    times(larger(minus(short, sentBack), zero), bestPrice),
  ];
  const invoices = {
    amount: bought.value,
    lent: minus(bought.value, bought.opening),
    amountDays: bought.valueDays,
    progress: "bill" as const,
  };
  const parts = {
    plan: [{ amount: inPlanMoney, amountDays: times(inPlanMoney, daysOf("planned")), progress: "left" as const }],
    outlook: [
      invoices,
      { amount: again, amountDays: times(again, daysOf("due")), progress: "bill" as const },
      { amount: rest, amountDays: times(rest, daysOf("due")), progress: "left" as const },
    ],
    final: [invoices],
  }[stage];
  const whole = total(parts.map(({ amount }) => amount));
  const lentOf = (part: { readonly amount: Fraction; readonly lent?: Fraction }) => part.lent ?? part.amount;
  if (isZero(whole)) return [];
  const due = [...account.uses].flatMap(([field, { due: here }]) => here.map((use) => dueOf(field.name, use)));
  const weights = weightsOver(season, season.fields, item.charged === "by revenue" ? "revenue" : "acres", stage);
  const ours = weights.map((weight, index) => (bySelf(season) ? times(weight, operatorPart(item, season.fields[index]!)) : weight));
  return shareOut(whole, ours.every(isZero) ? weights : ours).flatMap((amount, index) =>
    parts
      .filter((part) => part.progress === "bill" || !isZero(part.amount))
      .flatMap((part) =>
        cost(
          season.fields[index]!,
          times(amount, divided(part.amount, whole)),
          times(amount, divided(part.amountDays, whole)),
          { progress: part.progress, due },
          times(amount, divided(lentOf(part), whole)),
        ),
      ),
  );
}

/** Bought, used, needed, short and left of an item, in packs, with its price. @param toLines what budget lines bear of it */
export function itemFigures(
  account: ItemAccount,
  toLines: Fraction,
): Record<"averagePrice" | "bought" | "used" | "needed" | "short" | "shortCost" | "left", Fraction | null> {
  const { item, bought, paid, planned } = account;
  const asUsed = item.charged === "as used";
  const used = asUsed ? plus(quantityOf(allOf(account, "done", "nextDone")), toLines) : bought.quantity;
  const needed = asUsed ? quantityOf(allOf(account, "left", "nextLeft")) : stillToBuy(account, "due", "nextPlanned");
  const short = larger(minus(plus(used, needed), bought.quantity), zero);
  const left = larger(minus(bought.quantity, plus(used, needed)), zero);
  const price = paid ?? planned;
  const packs = (quantity: Fraction): Fraction => divided(quantity, read(item.packSize));
  return {
    averagePrice: price === null ? null : times(price, read(item.packSize)),
    bought: packs(bought.quantity),
    used: packs(used),
    needed: packs(needed),
    short: packs(short),
    shortCost: price === null ? null : times(price, short),
    left: packs(left),
  };
}
