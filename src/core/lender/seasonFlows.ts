/** The money that a season moves, from its entries: paid invoices as they are dated, the rest as the plan dates it. */
import { larger, sum, zero, type Decimal } from "../numbers/decimal";
import { accounts } from "../accounts";
import { sharingWeights, type FieldFacts } from "../fieldFacts";
import type { FieldFigures } from "../figures";
import type { SeasonFigures } from "../seasonFigures";
import { countsIn, type Kind } from "../kinds";
import { landArea } from "../land";
import { partsOf, workAt } from "../operationCosts";
import { isOver } from "../over";
import { loanYear } from "../loanYear";
import { fieldKinds } from "../paymentDates";
import type { Loan, Season } from "../season";
import { money } from "../numbers/units";
import { docked, isOfSeason } from "../salesFigures";
import { billFlows } from "./billFlows";
import { budgetFlows } from "./budgetFlows";
import type { Flow } from "./cashFlow";
import { itemFlows } from "./itemFlows";
import { monthOf, type Month } from "./month";
import { operatingRate } from "./operatingRate";
import { linesPerUnit, paidPerUnit } from "./paidPerUnit";
import { unchargedBills } from "./unchargedBills";
import { whenPaid, type When } from "./whenPaid";

/**
 * Every flow of the season: purchases on the day they are paid, what is still to be bought and done in its planned
 * month, other cash costs in their month, grain sold in its month of delivery, unsold grain and other income in the month of
 * `grainSold`, costs that move with yield and rent above its base with the grain, and what is left of budget lines. Money without a
 * date is paid as for operating interest.
 *
 * @param grainSold the month in which grain not sold yet is expected to be paid
 */
export function seasonFlows(season: Season, figures: SeasonFigures, loans: readonly Loan[], grainSold: Month): readonly Flow[] {
  const { facts, books } = accounts(season);
  const when = whenPaid(season, grainSold);
  const isInterestByBalance = !operatingRate(season.settings, loans).isZero();
  return [
    ...grainFlows(season, figures, grainSold),
    ...itemFlows(season, facts, books, figures.unused, when),
    ...operationFlows(season, unchargedBills(books, facts, figures), when),
    ...rentFlows(season, when),
    ...otherCostFlows(season, facts, when, isInterestByBalance),
    ...season.otherSeasons.map(({ kind, amount, paidOn, source }) => ({
      month: monthOf(paidOn),
      group: kind as string,
      amount: out(amount),
      entries: [source],
    })),
    ...billFlows(season, figures, when, isInterestByBalance),
    ...budgetFlows(season, figures.crops, when, isInterestByBalance),
    ...loans.flatMap((loan) => termPayments(loan, season.settings)),
  ].filter((flow) => !flow.amount.isZero());
}

const out = (amount: Decimal) => money(amount.neg());

function grainFlows(season: Season, figures: SeasonFigures, grainSold: Month): readonly Flow[] {
  // Grain of an older year may be of a crop that is not grown this year.
  const older = season.sales
    .filter((sale) => !isOfSeason(sale, season.settings.seasonYear))
    .map(({ delivered, date, quantity, price, source }) => ({
      month: monthOf(delivered ?? date),
      group: "older grain",
      amount: money(quantity.times(price)),
      entries: [source],
    }));
  const ofCrops = figures.crops.flatMap(({ crop, outlook, sales, fields }) => {
    const sold = season.sales.filter((sale) => sale.crop === crop && isOfSeason(sale, season.settings.seasonYear));
    const unsold = sales.unsold.gt("0") ? sales.unsold : zero;
    const moving = paidPerUnit({ fields }).minus(linesPerUnit({ fields }));
    const grain = [
      ...sold.map((sale) => ({
        month: monthOf(sale.delivered ?? sale.date),
        quantity: sale.quantity as Decimal,
        price: sale.price,
        entries: [sale.source],
      })),
      { month: grainSold, quantity: unsold, price: outlook.price, entries: [] },
    ];
    // Light grain is docked as it is paid for, so much of it with each part of the grain.
    const [off, all] = [docked(outlook), sum(grain.map(({ quantity }) => quantity))];
    const offUnit = off.isZero() ? zero : off.div(all);
    return [
      ...grain.map(({ month, quantity, price, entries }) => ({
        month,
        group: "grain sales",
        amount: money(quantity.times(price.minus(offUnit))),
        entries,
      })),
      ...grain.map(({ month, quantity, entries }) => ({
        month,
        group: "drying, haul and selling",
        amount: out(quantity.times(moving)),
        entries,
      })),
      { month: grainSold, group: "other income", amount: money(outlook.otherIncomePerArea.times(outlook.area)), entries: [] },
      ...rentWithGrain(season, fields, grain, grainSold),
    ];
  });
  return [...ofCrops, ...older];
}

/** Rent above its base is paid with the grain that it goes by, so much of it with each part; where none is sold, in the month for it. */
function rentWithGrain(
  season: Season,
  fields: readonly FieldFigures[],
  grain: readonly { readonly month: Month; readonly quantity: Decimal }[],
  grainSold: Month,
): readonly Flow[] {
  const above = fields.filter(({ outlook: { budget } }) => !budget.rentAboveBase.isZero());
  if (above.length === 0) return [];
  const amount = sum(above.map(({ outlook: { budget }, area }) => budget.rentAboveBase.times(area)));
  const names = new Set(above.map(({ field }) => field));
  const entries = season.fields.filter(({ name }) => names.has(name)).map(({ source }) => source);
  const all = sum(grain.map(({ quantity }) => quantity));
  const paid = (month: Month, part: Decimal): Flow => ({ month, group: "cash rent", amount: out(part), entries });
  return all.isZero() ? [paid(grainSold, amount)] : grain.map(({ month, quantity }) => paid(month, amount.times(quantity).div(all)));
}

/**
 * Work at a rate, and what machines cost in money. Fuel and repairs that machines compute are paid, in the months of their work,
 * for what bills of that kind that no field is charged with do not cover: the year pays the larger of the two, once.
 *
 * @param bills of each kind that are paid and charged to no field
 */
function operationFlows(season: Season, bills: ReadonlyMap<Kind, Decimal>, when: When): readonly Flow[] {
  const { work, machines } = accounts(season);
  const byField = work.ofOperations;
  const parts = season.fields.flatMap((field) =>
    [...(byField.get(field.name)?.values() ?? [])]
      .flatMap((work) => [...workAt(work, "outlook"), ...work.next.done, ...work.next.left])
      .flatMap((work) =>
        partsOf(work, machines.outlook)
          .filter(({ cash }) => cash)
          .map(({ kind, perUnit, quantity }) => ({
            kind,
            amount: perUnit.times(quantity),
            row: work.row,
            field,
            isComputed: work.row.cost.basis === "machine",
          })),
      ),
  );
  const computed = new Map<Kind, Decimal>();
  for (const { kind, amount, isComputed } of parts) if (isComputed) computed.set(kind, (computed.get(kind) ?? zero).plus(amount));
  const uncovered = (kind: Kind): Decimal => {
    const all = computed.get(kind)!;
    return all.isZero() ? zero : larger(all.minus(bills.get(kind) ?? zero), zero).div(all);
  };
  return parts.flatMap(({ kind, amount, row, field, isComputed }) =>
    when({ group: kind, amount: out(isComputed ? amount.times(uncovered(kind)) : amount), entries: [row.source] }, kind, row.date, field),
  );
}

const rentFlows = (season: Season, when: When): readonly Flow[] =>
  season.fields.flatMap((field) =>
    field.rentPerArea === null
      ? []
      : when({ group: "cash rent", amount: out(field.rentPerArea.times(field.area)), entries: [field.source] }, "cash rent", null, field),
  );

/** @param isInterestByBalance the operating loan's balance bears interest, so that none is paid as it was entered */
function otherCostFlows(season: Season, facts: readonly FieldFacts[], when: When, isInterestByBalance: boolean): readonly Flow[] {
  return season.otherCosts
    .filter((cost) => cost.cash && cost.basis !== "per unit of yield" && countsIn(cost.kind, "cashNeed"))
    .filter((cost) => !isInterestByBalance || cost.kind !== "operating interest")
    .flatMap((cost) => {
      const over = facts.filter(({ field }) => isOver(cost.over, field));
      const amount = cost.basis === "per acre" ? cost.amount.times(landArea(over.map(({ field }) => field))) : cost.amount;
      const flow = { group: cost.kind, amount: out(amount), entries: [cost.source] };
      // What is put into fields without a date is paid as each of them is planted.
      if (cost.paidOn !== null || !fieldKinds.has(cost.kind) || over.length === 0) return when(flow, cost.kind, cost.paidOn, null);
      const weights = sharingWeights(over, cost.by, "outlook");
      const whole = sum(weights);
      return over.flatMap(({ field }, index) =>
        when({ ...flow, amount: money(flow.amount.times(weights[index]!).div(whole)) }, cost.kind, null, field),
      );
    });
}

/**
 * What a term loan takes of the season's year, month by month: each payment as it is entered, also one below its interest.
 * Where the payment or its day is not entered, the year's interest without a month.
 */
export function termPayments(loan: Loan, settings: Season["settings"]): readonly Flow[] {
  if (loan.kind !== "term") return [];
  const entries = [loan.source];
  if (loan.payment === null || loan.nextDue === null)
    return [{ month: null, group: "term loans", amount: out(loanYear(loan, settings).interest), entries }];
  return loanYear(loan, settings).payments.map(({ month, payment }) => ({ month, group: "term loans", amount: out(payment), entries }));
}
