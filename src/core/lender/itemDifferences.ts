/** Why the year pays another amount for an item than its fields are charged with, each reason worked out on its own. */
import type { Unused } from "../budgetLines/unusedItems";
import { larger, one, sum, zero, type Decimal } from "../numbers/decimal";
import type { FieldFacts } from "../fieldFacts";
import { bestPrice, isCharged, itemWeights, quantityOf, type ItemBook } from "../itemCosts";
import { splitToTheCent } from "../numbers/split";
import { money } from "../numbers/units";
import { billed, isShared, sharedCost } from "./itemFlows";
import type { Differences } from "./differences";

/** Of an item: what is paid beyond what its fields bear. */
export const itemDifferences = (book: ItemBook, facts: readonly FieldFacts[], unused: Unused): Differences => ({
  ...(book.item.charged === "as used" ? ofUse(book, unused) : ofBills(book, facts)),
  "opening stock": book.bought.opening.neg(),
});

const oursOf = (book: ItemBook, facts: FieldFacts): Decimal => (isShared(facts) ? sharedCost(book) : one);

/**
 * Charged by what is used: stock is paid and not charged, and so is what the next crop takes; the landlord's part is paid before
 * it comes back.
 */
function ofUse(book: ItemBook, unused: Unused): Differences {
  const { item, bought, average, uses } = book;
  const price = bestPrice(book);
  const charged = uses.filter(({ facts }) => isCharged(item, facts));
  const { besides, computed } = billed(book);
  const byMachine = computed(() => true).times(price);
  const landlord = sum(charged.map(({ facts, done, left }) => done.plus(left).times(one.minus(oursOf(book, facts))))).times(price);
  // What budget lines bear is no stock, and of what they bear on shared land the landlord's part comes back.
  const value = sum([...unused.shares.values()]);
  const landlordOfLines = value.minus(sum([...unused.costs.values()].map(({ amount }) => amount)));
  return {
    // More sent back than bought, or a credit alone, leaves money without a quantity.
    stock: average === null ? bought.value : besides.times(price).minus(byMachine).minus(value),
    landlord: landlord.plus(landlordOfLines),
    "next crop": quantityOf(charged, "nextDone", "nextLeft").times(price),
    "machine work": byMachine,
  };
}

/** Charged as it is bought, to the cent: what falls to fields whose machine rows count it is paid and not charged there. */
function ofBills(book: ItemBook, facts: readonly FieldFacts[]): Differences {
  const { item, bought, uses } = book;
  const price = bestPrice(book);
  const short = (quantity: Decimal) => larger(quantity.minus(bought.quantity), zero);
  const beyond = (quantity: Decimal) => short(quantity).times(price);
  // What was sent back beyond what was bought is charged as if it were to be bought again, and is not.
  const again = (quantity: Decimal) => larger(short(quantity).minus(quantity), zero).times(price);
  const charged = uses.filter(({ facts: of }) => isCharged(item, of));
  const [rest, restCharged] = [beyond(quantityOf(uses, "due")), beyond(quantityOf(charged, "due"))];
  const amount = money(bought.value.plus(rest));
  const parts =
    amount.isZero() || facts.length === 0
      ? []
      : splitToTheCent(amount, itemWeights(book, facts, item.charged === "by revenue" ? "revenue" : "acres", "outlook"));
  const over = (wanted: (of: FieldFacts) => boolean, part: (of: FieldFacts) => Decimal) =>
    sum(parts.map((value, index) => (wanted(facts[index]!) ? value.times(part(facts[index]!)) : zero)));
  return {
    landlord: over(
      (of) => isCharged(item, of),
      (of) => one.minus(oursOf(book, of)),
    ),
    stock: again(quantityOf(charged, "due", "nextPlanned")).neg(),
    "next crop": beyond(quantityOf(charged, "due", "nextPlanned")).minus(restCharged),
    "machine work": over(
      (of) => !isCharged(item, of),
      () => one,
    )
      .minus(rest)
      .plus(restCharged),
    "no field": facts.length === 0 ? amount : zero,
  };
}
