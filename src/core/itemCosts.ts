/** What the items cost each field: charged as they are used, or as they are bought. */
import { one, sum, zero, larger, type Decimal } from "./decimal";
import { weightedMean, type Cost, type StageCosts } from "./cost";
import { sharingWeights, type FieldFacts } from "./fieldFacts";
import type { ItemFigures, Stage } from "./figures";
import type { DaysOut } from "./operatingInterest";
import { averageDays, averagePrice, nothingBought, type Bought } from "./purchases";
import type { Application, Item } from "./season";
import { splitToTheCent } from "./split";
import { money, type Money } from "./units";
import { workLeft, type FieldWork, type Work, type WorkByField } from "./work";

/** Rows of use with the quantity that each takes, multiplied once. */
type Lot = { readonly work: Work<Application>; readonly quantity: Decimal };
type Use = { readonly facts: FieldFacts; readonly planned: readonly Lot[]; readonly done: readonly Lot[]; readonly left: readonly Lot[] };

/** Everything about one item that its charges and its figures rest on. */
export type ItemBook = {
  readonly item: Item;
  readonly bought: Bought;
  /** Per base unit; `null` where it is not known. */
  readonly average: Decimal | null;
  readonly planPrice: Decimal | null;
  /** Its use field by field; only fields that use it. */
  readonly uses: readonly Use[];
};

export function itemBooks(
  items: readonly Item[], facts: readonly FieldFacts[], bought: ReadonlyMap<string, Bought>, work: WorkByField<Application>,
): readonly ItemBook[] {
  const uses = new Map<string, Use[]>(items.map((item) => [item.name, []]));
  for (const each of facts) {
    for (const [item, of] of work.get(each.field.name) ?? new Map<string, FieldWork<Application>>()) {
      const planned = of.planned.map(lot);
      const left = workLeft(of);
      uses.get(item)?.push({ facts: each, planned, done: of.done.map(lot), left: left === of.planned ? planned : left.map(lot) });
    }
  }
  return items.map((item) => {
    const purchases = bought.get(item.name) ?? nothingBought;
    return {
      item, bought: purchases, average: averagePrice(purchases),
      planPrice: item.planPricePerPack === null ? null : item.planPricePerPack.div(item.packSize),
      uses: uses.get(item.name)!,
    };
  });
}

const lot = (work: Work<Application>): Lot => ({ work, quantity: work.row.rate.times(work.areaPasses) });
const quantityOf = (lots: readonly Lot[]): Decimal => sum(lots.map(({ quantity }) => quantity));
const sourcesOf = (lots: readonly Lot[]) => lots.map(({ work }) => work.row.source);
const total = (uses: readonly Use[], of: "planned" | "done" | "left"): Decimal => sum(uses.map((use) => quantityOf(use[of])));

/** Real price where something is bought, else the plan's; nothing where neither is known, which the reader reports. */
const bestPrice = ({ average, planPrice }: ItemBook): Decimal => average ?? planPrice ?? zero;
const plannedPrice = ({ average, planPrice }: ItemBook): Decimal => planPrice ?? average ?? zero;

/** The costs of one item in the fields that bear them. */
export function itemCosts(book: ItemBook, facts: readonly FieldFacts[], daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  return book.item.charged === "as used" ? costsAsUsed(book, daysOut) : costsAsBought(book, facts, daysOut);
}

function costsAsUsed(book: ItemBook, daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  return new Map(book.uses.map(({ facts, planned, done, left }) => {
    const cost = (lots: readonly Lot[], price: Decimal, stage: Stage): readonly Cost[] => lots.length === 0 ? [] : [{
      kind: book.item.kind, name: book.item.name, cash: true,
      amount: money(quantityOf(lots).times(price).times(costShare(book.item, facts))),
      days: stage !== "plan" && book.average !== null ? averageDays(book.bought) : applicationDays(lots, daysOut),
      sources: stage === "plan" ? [sourcesOf(lots)] : [sourcesOf(lots), book.bought.entries],
    }];
    return [facts.field.name, {
      plan: cost(planned, plannedPrice(book), "plan"),
      outlook: cost([...done, ...left], bestPrice(book), "outlook"),
      final: facts.harvested === null ? [] : cost(done, bestPrice(book), "final"),
    }] as const;
  }));
}

function costsAsBought(book: ItemBook, facts: readonly FieldFacts[], daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  const planned = book.uses.flatMap((use) => use.planned);
  const plan = money(total(book.uses, "planned").times(plannedPrice(book)));
  const rest = money(stillToBuy(book).times(bestPrice(book)));
  const plannedDays = applicationDays(planned, daysOut);
  const amounts: Record<Stage, { amount: Money; days: Decimal; sources: Cost["sources"] }> = {
    plan: { amount: plan, days: plannedDays, sources: [sourcesOf(planned)] },
    outlook: {
      amount: money(book.bought.value.plus(rest)),
      days: weightedMean([{ value: averageDays(book.bought), weight: book.bought.value }, { value: plannedDays, weight: rest }]),
      sources: [book.bought.entries, ...(rest.isZero() ? [] : [sourcesOf(planned)])],
    },
    final: { amount: book.bought.value, days: averageDays(book.bought), sources: [book.bought.entries] },
  };
  const shared = (stage: Stage): readonly (readonly Cost[])[] => {
    const { amount, days, sources } = amounts[stage];
    // Before any harvest nobody is shown a final.
    const isShown = stage !== "final" || facts.some(({ harvested }) => harvested !== null);
    if (amount.isZero() || !isShown) return facts.map(() => []);
    const by = book.item.charged === "by revenue" ? "revenue" : "acres";
    return splitToTheCent(amount, sharingWeights(facts, by, stage)).map((part, index) => [{
      kind: book.item.kind, name: book.item.name, cash: true, days, sources,
      amount: money(part.times(costShare(book.item, facts[index]!))),
    }]);
  };
  const [inPlan, inOutlook, inFinal] = [shared("plan"), shared("outlook"), shared("final")];
  return new Map(facts.map(({ field }, index) => [field.name, { plan: inPlan[index]!, outlook: inOutlook[index]!, final: inFinal[index]! }]));
}

/** The operator's part of what an item costs: a landlord bears the rest, on crop-shared land only. */
const costShare = (item: Item, { field }: FieldFacts): Decimal => (field.tenure === "crop share" ? item.operatorCostShare : one);

function applicationDays(lots: readonly Lot[], daysOut: DaysOut): Decimal {
  return weightedMean(lots.map(({ work, quantity }) => ({ value: daysOut(work.row.date), weight: quantity })));
}

/** What the plan takes beyond what is bought, of an item that is charged as it is bought. */
const stillToBuy = (book: ItemBook): Decimal => larger(total(book.uses, "planned").minus(book.bought.quantity), zero);

/** Bought, used, needed and left of one item, in packs. */
export function itemFigures(book: ItemBook): ItemFigures {
  const { item, bought, average, planPrice, uses } = book;
  const asUsed = item.charged === "as used";
  // What is charged as it is bought counts as used when it is bought: nothing of it is stock.
  const used = asUsed ? total(uses, "done") : bought.quantity;
  const needed = asUsed ? total(uses, "left") : stillToBuy(book);
  const balance = used.plus(needed).minus(bought.quantity);
  const short = larger(balance, zero);
  const price = average ?? planPrice;
  const packs = (base: Decimal): Decimal => base.div(item.packSize);
  const perPack = (perBase: Decimal | null): Money | null => (perBase === null ? null : money(perBase.times(item.packSize)));
  return {
    item: item.name, kind: item.kind, unit: item.packName,
    averagePrice: perPack(price), planPrice: item.planPricePerPack,
    bought: packs(bought.quantity), used: packs(used), needed: packs(needed), short: packs(short),
    shortCost: price === null ? null : money(short.times(price)),
    left: packs(larger(balance.neg(), zero)),
    get entries() { return [...bought.entries, ...new Set(uses.flatMap((use) => sourcesOf([...use.planned, ...use.done])))]; },
  };
}
