/** The money that a season moves, from its entries: paid invoices as they are dated, the rest as the plan dates it. */
import { larger, one, sum, zero, type Decimal } from "../decimal";
import { fieldFacts, sharingWeights, type FieldFacts } from "../fieldFacts";
import type { SeasonFigures } from "../seasonFigures";
import { countsIn, type Kind } from "../kinds";
import { bestPrice, isCharged, itemBooks, quantityOf, type ItemBook } from "../itemCosts";
import { landArea } from "../land";
import { partsOf, workAt } from "../operationCosts";
import { loanYear } from "../loanYear";
import { fieldKinds, paymentDates, repaidOn } from "../paymentDates";
import { boughtByItem } from "../purchases";
import type { IsoDate } from "../row";
import type { Application, Field, Loan, OtherCost, Season } from "../season";
import { money } from "../units";
import { seasonMachineCosts } from "../seasonMachineCosts";
import { seasonWork } from "../seasonWork";
import { isOfSeason } from "../sales";
import type { Work } from "../work";
import type { Flow } from "./cashFlow";
import { monthOf, type Month } from "./month";
import { operatingRate } from "./operatingRate";

/**
 * Every flow of the season: purchases on the day they are paid, what is still to be bought and done in its planned
 * month, other cash costs in their month, grain sold in its month of delivery, unsold grain and other income in the month of
 * `grainSold`, costs that move with yield with the grain. Money without a date is paid as for operating interest.
 *
 * @param grainSold the month in which grain not sold yet is expected to be paid
 */
export function seasonFlows(season: Season, figures: SeasonFigures, loans: readonly Loan[], grainSold: Month): readonly Flow[] {
  const facts = fieldFacts(season);
  const when = whenPaid(season, grainSold);
  const books = itemBooks(season.items, facts, boughtByItem(season.purchases, () => zero), seasonWork(season, facts).ofItems);
  return [
    ...grainFlows(season, figures, grainSold),
    ...itemFlows(season, facts, books, when),
    ...operationFlows(season, facts, unchargedBills(books), when),
    ...rentFlows(season, when),
    ...otherCostFlows(season, facts, when, !operatingRate(season.settings, loans).isZero()),
    ...loans.flatMap((loan) => termPayments(loan, season.settings)),
  ].filter((flow) => !flow.amount.isZero());
}

/** A flow in the months in which it is paid: on the day entered, else as money of its kind without a date is. */
type When = (flow: Omit<Flow, "month">, kind: Kind, entered: IsoDate | null, field: Pick<Field, "plannedPlanting"> | null) => readonly Flow[];

function whenPaid({ settings }: Season, grainSold: Month): When {
  const year = { year: settings.seasonYear ?? grainSold.slice(0, 4), repaid: repaidOn(settings) ?? `${grainSold}-01` };
  return (flow, kind, entered, field) => {
    const days = entered === null ? paymentDates(kind, null, field?.plannedPlanting ?? null, year) : [entered];
    // Everybody knows when rent is due.
    const isUndated = entered === null && kind !== "cash rent";
    return days.map((day) => ({ ...flow, ...(isUndated ? { isUndated } : {}), month: monthOf(day), amount: days.length === 1 ? flow.amount : money(flow.amount.div(String(days.length))) }));
  };
}

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
function itemFlows(season: Season, facts: readonly FieldFacts[], books: readonly ItemBook[], when: When): readonly Flow[] {
  const bookOf = new Map(books.map((book) => [book.item.name, book]));
  const landlords = new Map(books.map((book) => [book.item.name, landlordsPart(book, facts)]));
  const paid = season.purchases.map((purchase) => ({
    month: monthOf(purchase.paidOn), group: (bookOf.get(purchase.item)?.item.kind ?? "supplies") as string,
    amount: out(purchase.amount.plus(purchase.freight).minus(purchase.rebate)), entries: [purchase.source], item: purchase.item,
  }));
  const toPay = books.flatMap((book) => stillToBuy(book, when).map((flow) => ({ ...flow, item: book.item.name })));
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
    const used = quantityOf(uses.filter(({ facts }) => isCharged(item, facts)), "done", "nextDone", "left", "nextLeft").times(average ?? zero);
    const uncharged = item.charged === "as used" ? larger(bought.value.minus(used), zero) : (item.unchargedIn?.size ?? 0) > 0 ? bought.value : zero;
    byKind.set(item.kind, (byKind.get(item.kind) ?? zero).plus(uncharged));
  }
  return byKind;
}

/** What use takes beyond what is bought, in the months of its applications: bills cover what is done, then what is done for the next crop, then what is left to do. */
function stillToBuy(book: ItemBook, when: When): readonly Flow[] {
  const { item, bought } = book;
  const uses = book.uses.filter(({ facts }) => isCharged(item, facts));
  const asUsed = item.charged === "as used";
  // What the next crop takes is paid this season as well.
  const used = asUsed ? quantityOf(uses, "done", "nextDone") : zero;
  const needed = asUsed ? quantityOf(uses, "left", "nextLeft") : quantityOf(uses, "due", "nextPlanned");
  const short = used.plus(needed).minus(bought.quantity);
  const price = bestPrice(book);
  if (short.lte("0")) return [];
  const worksOf = (of: (work: ItemBook["uses"][number]["work"]) => readonly Work<Application>[]) => uses.flatMap(({ facts: { field }, work }) => of(work).map((each) => ({ ...each, field })));
  const over = (works: ReturnType<typeof worksOf>, whole: Decimal, part: Decimal): readonly Flow[] => (whole.isZero() || part.isZero() ? [] : works.flatMap(({ row, areaPasses, field }) =>
    when({ group: item.kind, amount: out(row.rate.times(areaPasses).div(whole).times(part).times(price)), entries: [row.source] }, item.kind, row.date, field)));
  const next = asUsed ? quantityOf(uses, "nextDone") : zero;
  const smaller = (one: Decimal, other: Decimal) => (one.lt(other) ? one : other);
  const ofPlan = smaller(short, needed);
  const ofNext = smaller(short.minus(ofPlan), next);
  return [
    ...over(worksOf((work) => work.done), used.minus(next), short.minus(ofPlan).minus(ofNext)),
    ...over(worksOf((work) => work.next.done), next, ofNext),
    ...over(worksOf((work) => (asUsed ? [...work.left, ...work.next.left] : [...work.due, ...work.next.planned])), needed, ofPlan),
  ];
}

/**
 * Work at a rate, and what machines cost in money. Fuel and repairs that machines compute are paid, in the months of their work,
 * for what bills of that kind that no field is charged with do not cover: the year pays the larger of the two, once.
 *
 * @param bills of each kind that are paid and charged to no field
 */
function operationFlows(season: Season, facts: readonly FieldFacts[], bills: ReadonlyMap<Kind, Decimal>, when: When): readonly Flow[] {
  const byField = seasonWork(season, facts).ofOperations;
  const machines = seasonMachineCosts(season, byField).outlook;
  const parts = season.fields.flatMap((field) => [...(byField.get(field.name)?.values() ?? [])]
    .flatMap((work) => [...workAt(work, "outlook"), ...work.next.done, ...work.next.left])
    .flatMap((work) => partsOf(work, machines).filter(({ cash }) => cash)
      .map(({ kind, perUnit, quantity }) => ({ kind, amount: perUnit.times(quantity), row: work.row, field, isComputed: work.row.cost.basis === "machine" }))));
  const computed = new Map<Kind, Decimal>();
  for (const { kind, amount, isComputed } of parts) if (isComputed) computed.set(kind, (computed.get(kind) ?? zero).plus(amount));
  const uncovered = (kind: Kind): Decimal => {
    const all = computed.get(kind)!;
    return all.isZero() ? zero : larger(all.minus(bills.get(kind) ?? zero), zero).div(all);
  };
  return parts.flatMap(({ kind, amount, row, field, isComputed }) =>
    when({ group: kind, amount: out(isComputed ? amount.times(uncovered(kind)) : amount), entries: [row.source] }, kind, row.date, field));
}

const rentFlows = (season: Season, when: When): readonly Flow[] => season.fields.flatMap((field) => field.rentPerArea === null ? []
  : when({ group: "cash rent", amount: out(field.rentPerArea.times(field.area)), entries: [field.source] }, "cash rent", null, field));

/** @param isInterestByBalance the operating loan's balance bears interest, so that none is paid as it was entered */
function otherCostFlows(season: Season, facts: readonly FieldFacts[], when: When, isInterestByBalance: boolean): readonly Flow[] {
  const ofField = ({ over }: OtherCost) => ({ field }: FieldFacts) => ("all" in over ? true : "crop" in over ? field.crop === over.crop : field.name === over.field);
  return season.otherCosts
    .filter((cost) => cost.cash && cost.basis !== "per unit of yield" && countsIn(cost.kind, "cashNeed"))
    .filter((cost) => !isInterestByBalance || cost.kind !== "operating interest")
    .flatMap((cost) => {
      const over = facts.filter(ofField(cost));
      const amount = cost.basis === "per acre" ? cost.amount.times(landArea(over.map(({ field }) => field))) : cost.amount;
      const flow = { group: cost.kind, amount: out(amount), entries: [cost.source] };
      // What is put into fields without a date is paid as each of them is planted.
      if (cost.paidOn !== null || !fieldKinds.has(cost.kind) || over.length === 0) return when(flow, cost.kind, cost.paidOn, null);
      const weights = sharingWeights(over, cost.by, "outlook");
      const whole = sum(weights);
      return over.flatMap(({ field }, index) => when({ ...flow, amount: money(flow.amount.times(weights[index]!).div(whole)) }, cost.kind, null, field));
    });
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
