/** The money that a season moves, from its entries: paid invoices as they are dated, the rest as the plan dates it. */
import { larger, one, sum, zero, type Decimal } from "../decimal";
import { fieldFacts, sharingWeights, type FieldFacts } from "../fieldFacts";
import type { SeasonFigures } from "../seasonFigures";
import { countsIn, type Kind } from "../kinds";
import { bestPrice, isCharged, itemBooks, quantityOf, type ItemBook } from "../itemCosts";
import { landArea } from "../land";
import { partsOf, workAt } from "../operationCosts";
import { loanYear } from "../loanYear";
import { boughtByItem } from "../purchases";
import type { IsoDate } from "../row";
import type { Loan, OtherCost, Season } from "../season";
import { money } from "../units";
import { seasonMachineCosts } from "../seasonMachineCosts";
import { seasonWork } from "../seasonWork";
import { isOfSeason } from "../sales";
import type { Flow } from "./cashFlow";
import { monthOf, type Month } from "./month";

/**
 * Every flow of the season: purchases on the day they are paid, what is still to be bought and done in its planned
 * month, cash rent half in March and half in November, other cash costs in their month, grain sold in its month of
 * delivery, unsold grain and other income in the month of `grainSold`, costs that move with yield with the grain.
 *
 * @param grainSold the month in which grain not sold yet is expected to be paid
 */
export function seasonFlows(season: Season, figures: SeasonFigures, loans: readonly Loan[], grainSold: Month): readonly Flow[] {
  const facts = fieldFacts(season);
  const books = itemBooks(season.items, facts, boughtByItem(season.purchases, () => zero), seasonWork(season, facts).ofItems);
  return [
    ...grainFlows(season, figures, grainSold),
    ...itemFlows(season, facts, books),
    ...operationFlows(season, facts, unchargedBills(books)),
    ...rentFlows(season, grainSold),
    ...otherCostFlows(season),
    ...loans.flatMap((loan) => termPayments(loan, season.settings)),
  ].filter((flow) => !flow.amount.isZero());
}

const monthOrNone = (date: IsoDate | null): Month | null => (date === null ? null : monthOf(date));
const out = (amount: Decimal) => money(amount.neg());

function grainFlows(season: Season, figures: SeasonFigures, grainSold: Month): readonly Flow[] {
  return figures.crops.flatMap(({ crop, outlook, sales }) => {
    const all = season.sales.filter((sale) => sale.crop === crop);
    const sold = all.filter((sale) => isOfSeason(sale, season.settings.seasonYear));
    const older = all.filter((sale) => !sold.includes(sale));
    const unsold = sales.unsold.gt("0") ? sales.unsold : zero;
    const moving = outlook.moving.layers.cashNeed;
    const grain = [
      ...sold.map((sale) => ({ month: monthOf(sale.delivered ?? sale.date), quantity: sale.quantity as Decimal, price: sale.price, entries: [sale.source] })),
      { month: grainSold, quantity: unsold, price: outlook.price, entries: [] },
    ];
    return [
      ...grain.map(({ month, quantity, price, entries }) => ({ month, group: "grain sales", amount: money(quantity.times(price)), entries })),
      ...older.map(({ delivered, date, quantity, price, source }) => ({ month: monthOf(delivered ?? date), group: "older grain", amount: money(quantity.times(price)), entries: [source] })),
      ...grain.map(({ month, quantity, entries }) => ({ month, group: "drying, haul and selling", amount: out(quantity.times(moving)), entries })),
      { month: grainSold, group: "other income", amount: money(outlook.otherIncomePerArea.times(outlook.area)), entries: [] },
    ];
  });
}

/**
 * What is bought and still to be bought. The operator pays it all; the landlord's part of what goes on crop-shared land comes
 * back in the month of each payment.
 */
function itemFlows(season: Season, facts: readonly FieldFacts[], books: readonly ItemBook[]): readonly Flow[] {
  const bookOf = new Map(books.map((book) => [book.item.name, book]));
  const landlords = new Map(books.map((book) => [book.item.name, landlordsPart(book, facts)]));
  const paid = season.purchases.map((purchase) => ({
    month: monthOf(purchase.paidOn), group: (bookOf.get(purchase.item)?.item.kind ?? "supplies") as string,
    amount: out(purchase.amount.plus(purchase.freight).minus(purchase.rebate)), entries: [purchase.source], item: purchase.item,
  }));
  const toPay = books.flatMap((book) => stillToBuy(book).map((flow) => ({ ...flow, item: book.item.name })));
  return [...paid, ...toPay].flatMap(({ item, ...flow }): readonly Flow[] => {
    const part = landlords.get(item) ?? zero;
    return part.isZero() ? [flow] : [flow, { ...flow, group: "landlord's part", amount: out(flow.amount.times(part)) }];
  });
}

/** The fraction of what is paid for an item that the landlords of crop-shared fields bear. */
function landlordsPart({ item, bought, uses }: ItemBook, facts: readonly FieldFacts[]): Decimal {
  if (item.operatorCostShare.eq("1")) return zero;
  const ofLandlord = one.minus(item.operatorCostShare);
  const isShared = (of: FieldFacts) => of.field.tenure === "crop share";
  if (item.charged !== "as used") {
    const weights = sharingWeights(facts, item.charged === "by revenue" ? "revenue" : "acres", "outlook");
    const all = sum(weights);
    return all.isZero() ? zero : sum(weights.filter((_, index) => isShared(facts[index]!))).div(all).times(ofLandlord);
  }
  const taken = (of: ItemBook["uses"]) => quantityOf(of, "done", "left", "nextDone", "nextLeft");
  // What is bought beyond its use is the operator's stock.
  const whole = larger(taken(uses), bought.quantity);
  return whole.lte("0") ? zero : taken(uses.filter(({ facts: of }) => isShared(of))).div(whole).times(ofLandlord);
}

/** What is paid for items of each kind that no field is charged with: stock, and what machines compute already. */
function unchargedBills(books: readonly ItemBook[]): ReadonlyMap<Kind, Decimal> {
  const byKind = new Map<Kind, Decimal>();
  for (const { item, bought, average, uses } of books) {
    const used = quantityOf(uses.filter(({ facts }) => isCharged(item, facts)), "done", "nextDone").times(average ?? zero);
    const uncharged = item.charged === "as used" ? larger(bought.value.minus(used), zero) : (item.unchargedIn?.size ?? 0) > 0 ? bought.value : zero;
    byKind.set(item.kind, (byKind.get(item.kind) ?? zero).plus(uncharged));
  }
  return byKind;
}

/** What the rest of the plan takes beyond what is bought, in the months of its applications. */
function stillToBuy(book: ItemBook): readonly Flow[] {
  const { item, bought } = book;
  const uses = book.uses.filter(({ facts }) => isCharged(item, facts));
  const asUsed = item.charged === "as used";
  // What the next crop takes is paid this season as well.
  const used = asUsed ? quantityOf(uses, "done", "nextDone") : zero;
  const needed = asUsed ? quantityOf(uses, "left", "nextLeft") : quantityOf(uses, "due", "nextPlanned");
  const short = used.plus(needed).minus(bought.quantity);
  const price = bestPrice(book);
  if (short.lte("0") || needed.isZero()) {
    // Used without being bought or planned on: it has to be paid some day all the same.
    return short.gt("0") ? [{ month: null, group: item.kind, amount: out(short.times(price)), entries: [] }] : [];
  }
  return uses.flatMap(({ work }) => (asUsed ? [...work.left, ...work.next.left] : [...work.due, ...work.next.planned])).map(({ row, areaPasses }) => ({
    month: monthOrNone(row.date), group: item.kind, entries: [row.source],
    amount: out(row.rate.times(areaPasses).div(needed).times(short).times(price)),
  }));
}

/**
 * Work at a rate, and what machines cost in money. Fuel and repairs that machines compute are paid, in the months of their work,
 * for what bills of that kind that no field is charged with do not cover: the year pays the larger of the two, once.
 *
 * @param bills of each kind that are paid and charged to no field
 */
function operationFlows(season: Season, facts: readonly FieldFacts[], bills: ReadonlyMap<Kind, Decimal>): readonly Flow[] {
  const byField = seasonWork(season, facts).ofOperations;
  const machines = seasonMachineCosts(season, byField).outlook;
  const works = [...byField.values()].flatMap((of) => [...of.values()]).flatMap((work) => [...workAt(work, "outlook"), ...work.next.done, ...work.next.left]);
  const parts = works.flatMap((work) => partsOf(work, machines).filter(({ cash }) => cash)
    .map(({ kind, perUnit, quantity }) => ({ kind, amount: perUnit.times(quantity), row: work.row, isComputed: work.row.cost.basis === "machine" })));
  const computed = new Map<Kind, Decimal>();
  for (const { kind, amount, isComputed } of parts) if (isComputed) computed.set(kind, (computed.get(kind) ?? zero).plus(amount));
  const uncovered = (kind: Kind): Decimal => {
    const all = computed.get(kind)!;
    return all.isZero() ? zero : larger(all.minus(bills.get(kind) ?? zero), zero).div(all);
  };
  return parts.map(({ kind, amount, row, isComputed }) =>
    ({ month: monthOrNone(row.date), group: kind, amount: out(isComputed ? amount.times(uncovered(kind)) : amount), entries: [row.source] }));
}

function rentFlows(season: Season, grainSold: Month): readonly Flow[] {
  const year = season.settings.seasonYear ?? grainSold.slice(0, 4);
  return season.fields.flatMap((field) => field.rentPerArea === null ? [] : ["03", "11"].map((month) => ({
    month: `${year}-${month}`, group: "cash rent", amount: out(field.rentPerArea!.times(field.area).div("2")), entries: [field.source],
  })));
}

function otherCostFlows(season: Season): readonly Flow[] {
  const areaOf = ({ over }: OtherCost) => landArea(season.fields
    .filter((field) => ("all" in over ? true : "crop" in over ? field.crop === over.crop : field.name === over.field)));
  return season.otherCosts
    .filter((cost) => cost.cash && cost.basis !== "per unit of yield" && countsIn(cost.kind, "cashNeed"))
    .filter((cost) => cost.kind !== "operating interest")
    .map((cost) => ({
      month: monthOrNone(cost.paidOn), group: cost.kind, entries: [cost.source],
      amount: out(cost.basis === "per acre" ? cost.amount.times(areaOf(cost)) : cost.amount),
    }));
}

/**
 * What a term loan takes of the season's year, month by month: each payment as it is entered, also one below its interest.
 * Where the payment or its day is not entered, the year's interest without a month.
 */
export function termPayments(loan: Loan, settings: Season["settings"]): readonly Flow[] {
  if (loan.kind !== "term") return [];
  const entries = [loan.source];
  if (loan.payment === null || loan.nextDue === null) return [{ month: null, group: "term loans", amount: out(loanYear(loan, settings).interest), entries }];
  return loanYear(loan, settings).payments.map(({ month, payment }) => ({ month, group: "term loans", amount: out(payment), entries }));
}
