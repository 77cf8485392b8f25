/** The money of items: bills on the day they are paid, what is still to be bought as it is used, and the landlord's part of both. */
import { nothingUnused, type Unused } from "../budgetLines/unusedItems";
import { larger, one, smaller, sum, zero, type Decimal } from "../numbers/decimal";
import type { FieldFacts } from "../fieldFacts";
import { bestPrice, isCharged, itemWeights, quantityOf, type ItemBook } from "../itemCosts";
import type { Application, Purchase, Season } from "../season";
import { money } from "../numbers/units";
import type { Work } from "../work";
import { monthOf } from "./month";
import type { Flow } from "./cashFlow";
import type { When } from "./whenPaid";

const out = (amount: Decimal) => money(amount.neg());

/**
 * What is bought and still to be bought. The operator pays it all; the landlord's part of what goes on crop-shared land comes
 * back in the month of each payment.
 */
export function itemFlows(
  season: Season,
  facts: readonly FieldFacts[],
  books: readonly ItemBook[],
  unused: UnusedByItem,
  when: When,
): readonly Flow[] {
  const bookOf = new Map(books.map((book) => [book.item.name, book]));
  const landlords = new Map(books.map((book) => [book.item.name, landlordsPart(book, facts, unused.get(book.item.name) ?? nothingUnused)]));
  // A credit without a quantity is no input that a landlord has a part in.
  const isHis = (book: ItemBook | undefined) => book?.average !== null || book.item.charged !== "as used";
  const paid = season.purchases.flatMap((purchase): readonly Flow[] => {
    const book = bookOf.get(purchase.item);
    const part = isHis(book) ? (landlords.get(purchase.item) ?? zero) : zero;
    return withLandlord(
      { month: monthOf(purchase.paidOn), group: book?.item.kind ?? "supplies", amount: out(paidFor(purchase)), entries: [purchase.source] },
      !purchase.isOpening,
      part,
    );
  });
  const toPay = books.flatMap((book) =>
    stillToBuy(book, when).flatMap((flow) => withLandlord(flow, true, landlords.get(book.item.name) ?? zero)),
  );
  return [...paid, ...toPay];
}

/** What is paid, and the landlord's part of it: he repays that of what was left over, too, as it is used. */
function withLandlord(flow: Flow, isPaid: boolean, part: Decimal): readonly Flow[] {
  const paid = isPaid ? [flow] : [];
  return part.isZero() ? paid : [...paid, { ...flow, group: landlordsGroup, amount: out(flow.amount.times(part)) }];
}

/** What a bill comes to with its freight and without its rebate. */
const paidFor = ({ amount, freight, rebate }: Purchase): Decimal =>
  freight.isZero() && rebate.isZero() ? amount : amount.plus(freight).minus(rebate);

/** The group of what landlords pay back. */
export const landlordsGroup = "landlord's part";

export const isShared = (of: FieldFacts): boolean => of.field.tenure === "crop share";

/**
 * The bills of an item, in base units: how much goes to fields that are charged with it, to fields for which machine rows compute
 * the same already, and to nobody, as stock. What is charged is served first.
 */
export function billed({ item, bought, uses }: ItemBook) {
  const taken = (of: ItemBook["uses"]) => quantityOf(of, "done", "left", "nextDone", "nextLeft");
  const [charged, computed] = [uses.filter(({ facts }) => isCharged(item, facts)), uses.filter(({ facts }) => !isCharged(item, facts))];
  const besides = larger(bought.quantity.minus(taken(charged)), zero);
  const all = taken(computed);
  const covered = all.isZero() ? zero : smaller(besides, all).div(all);
  /** What of these uses is paid for: the charged ones to the last unit, the others as far as bills cover them. */
  const paid = (wanted: (facts: FieldFacts) => boolean) =>
    taken(charged.filter(({ facts }) => wanted(facts))).plus(taken(computed.filter(({ facts }) => wanted(facts))).times(covered));
  /** All that is paid for: what is bought and what is still to be bought beyond it. */
  const whole = larger(bought.quantity, taken(charged));
  return {
    paid,
    besides,
    whole,
    computed: (wanted: (facts: FieldFacts) => boolean) => taken(computed.filter(({ facts }) => wanted(facts))).times(covered),
  };
}

/**
 * The fraction of what is paid for an item that the landlords of crop-shared fields pay back; what is bought beyond its use is
 * the operator's stock.
 */
function landlordsPart(book: ItemBook, facts: readonly FieldFacts[], unused: Unused): Decimal {
  const { item } = book;
  if (item.operatorCostShare.eq("1") || book.landlordsInputs === "bought by the landlord") return zero;
  const ofLandlord = one.minus(item.operatorCostShare);
  if (item.charged === "as used") {
    const { paid, whole } = billed(book);
    return whole.lte("0")
      ? zero
      : paid(isShared)
          .plus(toLines(unused, facts.filter(isShared)))
          .div(whole)
          .times(ofLandlord);
  }
  return partOf(book, facts, isShared).times(ofLandlord);
}

export type UnusedByItem = ReadonlyMap<string, Unused>;

/** What of an item budget lines bear in some fields, in base units. */
const toLines = ({ quantity, shares }: Unused, facts: readonly FieldFacts[]): Decimal => {
  const all = sum([...shares.values()]);
  return all.isZero() ? zero : quantity.times(sum(facts.map(({ field }) => shares.get(field.name) ?? zero))).div(all);
};

/** The part of a bill that is charged as it is bought which falls to some of the fields. */
export function partOf(book: ItemBook, facts: readonly FieldFacts[], wanted: (facts: FieldFacts) => boolean): Decimal {
  const weights = itemWeights(book, facts, book.item.charged === "by revenue" ? "revenue" : "acres", "outlook");
  const all = sum(weights);
  return all.isZero() ? zero : sum(weights.filter((_, index) => wanted(facts[index]!))).div(all);
}

/** The operator's part of what is bought for crop-shared land. */
export const sharedCost = ({ item, landlordsInputs }: ItemBook): Decimal => (landlordsInputs === "repaid" ? item.operatorCostShare : one);

/**
 * What use takes beyond what is bought, in the months of its applications: bills cover what is done, then what is done for the
 * next crop, then what is left to do.
 */
function stillToBuy(book: ItemBook, when: When): readonly Flow[] {
  const { item, bought } = book;
  const uses = book.uses.filter(({ facts }) => isCharged(item, facts));
  const asUsed = item.charged === "as used";
  // What the next crop takes is paid this season as well.
  const used = asUsed ? quantityOf(uses, "done", "nextDone") : zero;
  const needed = asUsed ? quantityOf(uses, "left", "nextLeft") : quantityOf(uses, "due", "nextPlanned");
  // What was sent back beyond what was bought need not be bought again.
  const short = used.plus(needed).minus(larger(bought.quantity, zero));
  const price = bestPrice(book);
  if (short.lte("0")) return [];
  const worksOf = (of: (work: ItemBook["uses"][number]["work"]) => readonly Work<Application>[]) =>
    uses.flatMap(({ facts: { field }, work, ours }) => of(work).map((each) => ({ ...each, field, ours })));
  const over = (works: ReturnType<typeof worksOf>, whole: Decimal, part: Decimal): readonly Flow[] =>
    whole.isZero() || part.isZero()
      ? []
      : works.flatMap(({ row, areaPasses, field, ours }) =>
          when(
            {
              group: item.kind,
              amount: out(row.rate.times(areaPasses).times(ours).div(whole).times(part).times(price)),
              entries: [row.source],
            },
            item.kind,
            row.date,
            field,
          ),
        );
  const next = asUsed ? quantityOf(uses, "nextDone") : zero;
  const ofPlan = smaller(short, needed);
  const ofNext = smaller(short.minus(ofPlan), next);
  return [
    ...over(
      worksOf((work) => work.done),
      used.minus(next),
      short.minus(ofPlan).minus(ofNext),
    ),
    ...over(
      worksOf((work) => work.next.done),
      next,
      ofNext,
    ),
    ...over(
      worksOf((work) => (asUsed ? [...work.left, ...work.next.left] : [...work.due, ...work.next.planned])),
      needed,
      ofPlan,
    ),
  ];
}
