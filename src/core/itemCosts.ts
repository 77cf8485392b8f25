/** What the items cost each field: charged as they are used, or as they are bought. */
import { larger, one, smaller, zero, type Decimal } from "./numbers/decimal";
import type { Cost, Due, Entries, StageCosts } from "./cost";
import { sharingWeights, type FieldFacts } from "./fieldFacts";
import type { ItemFigures, Stage } from "./figures";
import type { DaysOut } from "./operatingInterest";
import { averageDays, averagePrice, nothingBought, partBorrowed, type Bought } from "./boughtByItem";
import type { Application, Field, Item, LandlordsInputs, Season } from "./season";
import { splitToTheCent } from "./numbers/split";
import { Tally, tallied } from "./numbers/tally";
import { money, type Money } from "./numbers/units";
import { type FieldWork, type Work, type WorkByField } from "./work";

/**
 * The use of an item in one field: its rows, and the quantity that the rows of each sort take together. `due` is what the
 * plan still takes in all, done or not; the next crop's quantities stand apart.
 */
type Use = {
  readonly facts: FieldFacts;
  readonly work: FieldWork<Application>;
  /**
   * The part of the rows' quantities that the operator buys: all of it, unless a landlord buys his own. The quantities below are
   * that part.
   */
  readonly ours: Decimal;
  readonly planned: Decimal;
  readonly done: Decimal;
  readonly left: Decimal;
  readonly due: Decimal;
  readonly nextPlanned: Decimal;
  readonly nextDone: Decimal;
  readonly nextLeft: Decimal;
};
export type UseOf = Exclude<keyof Use, "facts" | "work" | "ours">;

/** Everything about one item that its charges and its figures rest on. */
export type ItemBook = {
  readonly item: Item;
  readonly bought: Bought;
  /** Per base unit; `null` where it is not known. */
  readonly average: Decimal | null;
  readonly planPrice: Decimal | null;
  /** Its use field by field; only fields that use it. */
  readonly uses: readonly Use[];
  /** Whether landlords buy their part themselves. */
  readonly landlordsInputs: LandlordsInputs;
};

export function itemBooks(
  { items, settings: { landlordsInputs } }: Pick<Season, "items" | "settings">,
  facts: readonly FieldFacts[],
  bought: ReadonlyMap<string, Bought>,
  work: WorkByField<Application>,
): readonly ItemBook[] {
  const uses = new Map<string, Use[]>(items.map((item) => [item.name, []]));
  const itemOf = new Map(items.map((item) => [item.name, item]));
  for (const each of facts) {
    for (const [item, of] of work.get(each.field.name) ?? new Map<string, FieldWork<Application>>()) {
      const known = itemOf.get(item);
      if (known === undefined) continue;
      const ours = operatorBuys({ item: known, landlordsInputs }, each);
      const oursOf = (works: readonly Work<Application>[]) => (ours === one ? taken(works) : taken(works).times(ours));
      const planned = oursOf(of.planned);
      const orPlanned = (works: readonly Work<Application>[]) => (works === of.planned ? planned : oursOf(works));
      uses
        .get(item)!
        .push({
          facts: each,
          work: of,
          ours,
          planned,
          done: oursOf(of.done),
          left: orPlanned(of.left),
          due: orPlanned(of.due),
          nextPlanned: oursOf(of.next.planned),
          nextDone: oursOf(of.next.done),
          nextLeft: oursOf(of.next.left),
        });
    }
  }
  return items.map((item) => {
    const purchases = bought.get(item.name) ?? nothingBought;
    return {
      item,
      landlordsInputs,
      bought: purchases,
      average: averagePrice(purchases),
      planPrice: item.planPricePerPack === null ? null : item.planPricePerPack.div(item.packSize),
      uses: uses.get(item.name)!,
    };
  });
}

/** The quantity that rows of use take. */
function taken(works: readonly Work<Application>[]): Decimal {
  if (works.length === 0) return zero;
  const tally = new Tally();
  for (const { row, areaPasses } of works) tally.addProduct(row.rate, areaPasses);
  return tally.total();
}

/** The same times the days that each row, paid for as it is used, waits for repayment. */
type TakenDays = (works: readonly Work<Application>[], field: Field) => Decimal;
const takenDaysOf =
  ({ kind }: Item, daysOut: DaysOut): TakenDays =>
  (works, field) => {
    const tally = new Tally();
    for (const { row, areaPasses } of works) tally.addProduct(row.rate, areaPasses, daysOut.of(kind, row.date, field));
    return tally.total();
  };

const sourcesOf = (works: readonly Work<Application>[]) => works.map(({ row }) => row.source);

/** What all fields together take of an item, in its base unit. */
export const quantityOf = (uses: ItemBook["uses"], ...of: readonly UseOf[]): Decimal =>
  tallied(uses.flatMap((use) => of.map((each) => use[each])));

/** Real price where something is bought, else the plan's; nothing where neither is known, which the reader reports. */
export const bestPrice = ({ average, planPrice }: ItemBook): Decimal => average ?? planPrice ?? zero;
const plannedPrice = ({ average, planPrice }: ItemBook): Decimal => planPrice ?? average ?? zero;

/** The costs of one item in the fields that bear them. */
export function itemCosts(book: ItemBook, facts: readonly FieldFacts[], daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  return book.item.charged === "as used" ? costsAsUsed(book, daysOut) : costsAsBought(book, facts, daysOut);
}

function costsAsUsed(book: ItemBook, daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  const {
    item: { kind, name },
    bought,
  } = book;
  const [atPlan, atBest, daysBought] = [plannedPrice(book), bestPrice(book), averageDays(bought)];
  const takenDays = takenDaysOf(book.item, daysOut);
  const unbought = unboughtParts(book);
  const part = partBorrowed(bought);
  /** Of a cost of which a part is not bought yet. */
  const borrowed = (toBuy: Decimal) => (part === one ? {} : { borrowed: toBuy.plus(one.minus(toBuy).times(part)) });
  return new Map(
    book.uses
      .filter((use) => isCharged(book.item, use.facts))
      .map((use) => {
        const { facts, work } = use;
        const { field } = facts;
        const share = costShare(book, facts);
        const unplanned = work.planned.length === 0;
        const daysTaken = (works: readonly Work<Application>[]) => takenDays(works, field).times(use.ours);
        const cost = (amount: Money, moneyDays: Decimal, entries: Entries): Cost => ({
          kind,
          name,
          cash: true,
          amount,
          moneyDays,
          unplanned,
          ...(share === one ? {} : { ours: share }),
          entries,
        });
        const ours = (price: Decimal) => (share === one ? price : price.times(share));
        const inPlan = () => {
          const price = ours(atPlan);
          return cost(money(use.planned.times(price)), daysTaken(work.planned).times(price), () => sourcesOf(work.planned));
        };
        // What is bought is paid when it was bought; the rest when it is used.
        const quantityDays = (): Decimal => {
          const part = unbought.done;
          if (part.isZero()) return use.done.times(daysBought);
          return use.done.times(one.minus(part)).times(daysBought).plus(daysTaken(work.done).times(part));
        };
        const atBestPrice = (quantity: Decimal, days: Decimal, works: readonly Work<Application>[]) => {
          const price = ours(atBest);
          return cost(money(quantity.times(price)), days.times(price), () => [...sourcesOf(works), ...bought.entries]);
        };
        const done = work.done.length === 0 ? none : [{ ...atBestPrice(use.done, quantityDays(), work.done), ...borrowed(unbought.done) }];
        const left =
          work.left.length === 0
            ? none
            : leftCosts(unbought.left, (part, isBought): Cost =>
                isBought
                  ? {
                      ...atBestPrice(use.left.times(part), use.left.times(part).times(daysBought), work.left),
                      ...borrowed(zero),
                      progress: "left",
                      billed: true,
                    }
                  : {
                      ...atBestPrice(use.left.times(part), daysTaken(work.left).times(part), work.left),
                      progress: "left",
                      due: () => dueOf(work.left, field),
                    },
              );
        return [
          field.name,
          {
            plan: work.planned.length === 0 ? none : [inPlan()],
            outlook: left.length === 0 ? done : done.length === 0 ? left : [...done, ...left],
            final: facts.harvested === null ? none : done,
          },
        ] as const;
      }),
  );
}

/** What is left of the plan: bought already, still to be bought, or in two parts. */
function leftCosts(unbought: Decimal, cost: (part: Decimal, isBought: boolean) => Cost): readonly Cost[] {
  if (unbought.isZero()) return [cost(one, true)];
  return unbought === one ? [cost(one, false)] : [cost(one.minus(unbought), true), cost(unbought, false)];
}

const dueOf = (works: readonly Work<Application>[], field: Field): readonly Due[] =>
  works.map(({ row, areaPasses }) => ({ on: row.date, field, weight: row.rate.times(areaPasses) }));

/**
 * The part of what is done, and of what is left to do, that no bill covers. What is bought serves what is done first, for
 * this crop and then for the next; all fields fall short alike.
 */
function unboughtParts({ bought, average, uses }: ItemBook): Record<"done" | "left", Decimal> {
  const [done, doneSoFar, left] = [quantityOf(uses, "done"), quantityOf(uses, "done", "nextDone"), quantityOf(uses, "left", "nextLeft")];
  const has = average === null ? zero : bought.quantity;
  const part = (quantity: Decimal, covered: Decimal): Decimal => {
    if (covered.gte(quantity)) return zero;
    return covered.lte("0") ? one : one.minus(covered.div(quantity));
  };
  return { done: part(done, has), left: part(left, has.minus(doneSoFar)) };
}

const none: readonly Cost[] = [];

function costsAsBought(book: ItemBook, facts: readonly FieldFacts[], daysOut: DaysOut): ReadonlyMap<string, StageCosts> {
  const {
    item: { kind, name, charged },
    bought,
  } = book;
  const unplanned = book.uses.every(({ work }) => work.planned.length === 0);
  const sourcesIn = (of: "planned" | "due") => book.uses.flatMap(({ work }) => sourcesOf(work[of]));
  const takenDays = takenDaysOf(book.item, daysOut);
  const [quantity, quantityDue] = [quantityOf(book.uses, "planned"), quantityOf(book.uses, "due")];
  const daysOf = (of: "planned" | "due", whole: Decimal) =>
    whole.isZero() ? zero : tallied(book.uses.map(({ work, ours, facts: { field } }) => takenDays(work[of], field).times(ours))).div(whole);
  const plannedDays = daysOf("planned", quantity);
  const dueDays = quantityDue.eq(quantity) ? plannedDays : daysOf("due", quantityDue);
  const plan = money(quantity.times(plannedPrice(book)));
  const rest = money(stillToBuy(book).times(bestPrice(book)));
  const costs: Record<Stage, { amount: Money; entries: Cost["entries"] }> = {
    plan: { amount: plan, entries: () => sourcesIn("planned") },
    outlook: {
      amount: money(bought.value.plus(rest)),
      entries: () => (rest.isZero() ? bought.entries : [...bought.entries, ...sourcesIn("due")]),
    },
    final: { amount: bought.value, entries: () => bought.entries },
  };
  const shared = (stage: Stage): readonly (readonly Cost[])[] => {
    const { amount, entries } = costs[stage];
    // Before any harvest nobody is shown a final.
    const isShown = stage !== "final" || facts.some(({ harvested }) => harvested !== null);
    // A season of bills alone has no field to bear them yet.
    if (amount.isZero() || !isShown || facts.length === 0) return facts.map(() => none);
    const by = charged === "by revenue" ? "revenue" : "acres";
    return splitToTheCent(amount, itemWeights(book, facts, by, stage)).map((part, index) => {
      if (!isCharged(book.item, facts[index]!)) return none;
      const share = costShare(book, facts[index]!);
      const ours = money(part.times(share));
      return progressOf(stage).map(([progress, fraction, days]) => {
        // What was paid last season is among the bills.
        const billed = amount.times(fraction);
        const borrowed = progress === "left" || bought.opening.isZero() || billed.isZero() ? one : one.minus(bought.opening.div(billed));
        const progressed = money(fraction === one ? ours : ours.times(fraction));
        return {
          kind,
          name,
          cash: true,
          amount: progressed,
          moneyDays: ours.times(days),
          unplanned,
          progress,
          due,
          ...(share === one ? {} : { ours: share }),
          ...(borrowed === one ? {} : { borrowed }),
          entries,
        };
      });
    });
  };
  const due = () =>
    book.uses.flatMap(({ work, ours, facts: { field } }) =>
      dueOf(work.due, field).map((each) => ({ ...each, weight: each.weight.times(ours) })),
    );
  /**
   * What of the cost of a stage is billed, and what is still to be bought; and the days that it waits for repayment, times money,
   * of a unit of money of the whole.
   */
  const progressOf = (stage: Stage): readonly (readonly ["bill" | "left", Decimal, Decimal])[] => {
    if (stage === "plan") return [["left", one, plannedDays]];
    const { amount } = costs[stage];
    if (stage === "final" || rest.isZero()) return [["bill", one, bought.valueDays.div(amount)]];
    // What was sent back beyond what was bought is charged with the bills: nobody will buy it again.
    const again = smaller(larger(bought.quantity.neg(), zero), stillToBuy(book)).times(bestPrice(book));
    const toBuy = rest.minus(again).div(amount);
    const billed = ["bill", one.minus(toBuy), bought.valueDays.plus(again.times(dueDays)).div(amount)] as const;
    // Nothing left to buy is no row of its kind: a budget line beside it still bears what no row takes.
    return toBuy.isZero() ? [billed] : [billed, ["left", toBuy, toBuy.times(dueDays)]];
  };
  const [inPlan, inOutlook, inFinal] = [shared("plan"), shared("outlook"), shared("final")];
  return new Map(
    facts.map(({ field }, index) => [field.name, { plan: inPlan[index]!, outlook: inOutlook[index]!, final: inFinal[index]! }]),
  );
}

/**
 * What each field bears of an item that is charged as it is bought: a landlord who buys his own part bears none of these bills.
 * Bills for fields of which the operator bears nothing are his all the same, because he paid them.
 */
export function itemWeights(book: Sharing, facts: readonly FieldFacts[], by: "acres" | "revenue", stage: Stage): readonly Decimal[] {
  const weights = sharingWeights(facts, by, stage);
  const ours = weights.map((weight, index) => weight.times(operatorBuys(book, facts[index]!)));
  return ours.every((weight) => weight.isZero()) ? weights : ours;
}

/** Whether a field bears an item; what machine rows compute for it already is not charged again. */
export const isCharged = ({ unchargedIn }: Item, { field }: FieldFacts): boolean => unchargedIn?.has(field.name) !== true;

type Sharing = Pick<ItemBook, "item" | "landlordsInputs">;
const operatorsPart = (item: Item, { field }: FieldFacts): Decimal => (field.tenure === "crop share" ? item.operatorCostShare : one);

/** The operator's part of what is bought for a field: a landlord who is to repay his part bears the rest, on crop-shared land only. */
export const costShare = ({ item, landlordsInputs }: Sharing, facts: FieldFacts): Decimal =>
  landlordsInputs === "repaid" ? operatorsPart(item, facts) : one;

/** The part of what a field takes that the operator buys: his own part where landlords buy theirs, and else all of it. */
const operatorBuys = ({ item, landlordsInputs }: Sharing, facts: FieldFacts): Decimal =>
  landlordsInputs === "repaid" ? one : operatorsPart(item, facts);

/** What the plan takes for this crop beyond what is bought, of an item that is charged as it is bought. */
const stillToBuy = (book: ItemBook): Decimal => larger(quantityOf(book.uses, "due").minus(book.bought.quantity), zero);

/** What the next crop is to be charged for this item in each field that it is used in after the last load, at the best known price. */
export function nextCropCosts(book: ItemBook): ReadonlyMap<string, readonly Cost[]> {
  if (book.item.charged !== "as used") return new Map();
  const { kind, name } = book.item;
  const uses = book.uses.filter(({ facts, work: { next } }) => next.done.length + next.left.length > 0 && isCharged(book.item, facts));
  return new Map(
    uses.map((use) => {
      const amount = money(use.nextDone.plus(use.nextLeft).times(bestPrice(book)).times(costShare(book, use.facts)));
      return [
        use.facts.field.name,
        [{ kind, name, cash: true, amount, moneyDays: zero, entries: () => sourcesOf([...use.work.next.done, ...use.work.next.left]) }],
      ];
    }),
  );
}

/**
 * Bought, used, needed and left of one item, in packs.
 *
 * @param toLines what no row takes and budget lines bear, in base units: it is used and no stock
 */
export function itemFigures(book: ItemBook, toLines: Decimal): ItemFigures {
  const { item, bought, average, planPrice, uses } = book;
  const asUsed = item.charged === "as used";
  // What is charged as it is bought counts as used when it is bought: nothing of it is stock.
  const used = asUsed ? quantityOf(uses, "done", "nextDone").plus(toLines) : bought.quantity;
  const needed = asUsed
    ? quantityOf(uses, "left", "nextLeft")
    : larger(quantityOf(uses, "due", "nextPlanned").minus(bought.quantity), zero);
  const balance = used.plus(needed).minus(bought.quantity);
  const short = larger(balance, zero);
  const price = average ?? planPrice;
  const packs = (base: Decimal): Decimal => base.div(item.packSize);
  const perPack = (perBase: Decimal | null): Money | null => (perBase === null ? null : money(perBase.times(item.packSize)));
  return {
    item: item.name,
    kind: item.kind,
    unit: item.packName,
    averagePrice: perPack(price),
    planPrice: item.planPricePerPack,
    bought: packs(bought.quantity),
    used: packs(used),
    needed: packs(needed),
    short: packs(short),
    shortCost: price === null ? null : money(short.times(price)),
    left: packs(larger(balance.neg(), zero)),
    get entries() {
      return [...bought.entries, ...new Set(uses.flatMap(({ work }) => sourcesOf([...work.planned, ...work.done, ...work.next.done])))];
    },
  };
}
