/** The money that a season moves, from its entries: paid invoices as they are dated, the rest as the plan dates it. */
import { zero, type Decimal } from "../decimal";
import { fieldFacts, type FieldFacts } from "../fieldFacts";
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
  return [
    ...grainFlows(season, figures, grainSold),
    ...itemFlows(season, facts),
    ...operationFlows(season, facts),
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

function itemFlows(season: Season, facts: readonly FieldFacts[]): readonly Flow[] {
  const bought = boughtByItem(season.purchases, () => zero);
  const books = itemBooks(season.items, facts, bought, seasonWork(season, facts).ofItems);
  const kindOf = new Map(season.items.map((item) => [item.name, item.kind]));
  return [
    ...season.purchases.map((purchase) => ({
      month: monthOf(purchase.paidOn), group: kindOf.get(purchase.item) ?? "supplies",
      amount: out(purchase.amount.plus(purchase.freight).minus(purchase.rebate)), entries: [purchase.source],
    })),
    ...books.flatMap(stillToBuy),
  ];
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
 * Work at a rate, and what machines cost in money: fuel and repairs of a kind that is bought this season are paid with
 * the purchases and not once more.
 */
function operationFlows(season: Season, facts: readonly FieldFacts[]): readonly Flow[] {
  const byField = seasonWork(season, facts).ofOperations;
  const machines = seasonMachineCosts(season, byField).outlook;
  const kindOf = new Map(season.items.map((item) => [item.name, item.kind]));
  const bought = new Set<Kind | undefined>(season.purchases.map((purchase) => kindOf.get(purchase.item)));
  return [...byField.values()].flatMap((works) => [...works.values()]).flatMap((work) => [...workAt(work, "outlook"), ...work.next.done, ...work.next.left]).flatMap((work) => {
    return partsOf(work, machines).filter(({ cash, kind }) => cash && !(work.row.cost.basis === "machine" && bought.has(kind)))
      .map(({ kind, perUnit, quantity }) => ({ month: monthOrNone(work.row.date), group: kind, amount: out(perUnit.times(quantity)), entries: [work.row.source] }));
  });
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
