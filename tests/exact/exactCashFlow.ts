/**
 * The months of the cash flow and the debt test in exact fractions, worked out again from the definition of the product, for
 * seasons without machines.
 */
import type { Kind } from "../../src/core/kinds";
import type { IsoDate } from "../../src/core/row";
import type { Application, Field, Item, OtherCost, Season } from "../../src/core/season";
import { billsHere, partsOf, type Off, type Rest, type Unused } from "./exactBudgetLines";
import { chargedAt } from "./exactCosts";
import { landOf, unitsAt, weightsOver, areaOf, lastLoad } from "./exactFields";
import { itemAccount, type ItemAccount } from "./exactItems";
import { duePayments } from "./exactLoans";
import { rentAboveOf } from "./exactRent";
import { isLate, settled, worksOf, type Work } from "./exactWork";
import {
  compare,
  divided,
  fraction,
  isZero,
  larger,
  minus,
  opposite,
  plus,
  read,
  smaller,
  times,
  total,
  zero,
  type Fraction,
} from "./fraction";

/** Money that comes in, or goes out below zero; without a month where nothing dates it. */
type Flow = { readonly month: string | null; readonly group: string; readonly amount: Fraction };

export type ExactMonth = {
  readonly month: string;
  readonly flows: ReadonlyMap<string, Fraction>;
  readonly interest: Fraction;
  readonly loan: Fraction;
  readonly cash: Fraction;
};

const fieldKinds: readonly string[] = [
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "irrigation",
];
const noCash: readonly string[] = ["machine ownership", "land charge", "unpaid labour", "management"];

const monthOf = (day: string): string => day.slice(0, 7);
/** Months counted from the year 0. */
const numberOf = (month: string): number => Number(month.slice(0, 4)) * 12 + Number(month.slice(5, 7)) - 1;
const monthAt = (number: number): string =>
  `${String(Math.floor(number / 12)).padStart(4, "0")}-${String((number % 12) + 1).padStart(2, "0")}`;

/** The day on which operating money is repaid. */
const repaidOf = ({ settings: { operatingInterest, repaymentDate } }: Season): string | null =>
  operatingInterest?.method === "by date" ? operatingInterest.repaymentDate : repaymentDate;
/** The month of the grain that nobody has bought yet. */
const grainMonth = (season: Season): string => {
  const repaid = repaidOf(season);
  return repaid === null ? `${season.settings.seasonYear!}-11` : monthOf(repaid);
};

function daysWithout(season: Season, kind: Kind, planting: IsoDate | null): readonly string[] {
  const repaid = repaidOf(season) ?? `${grainMonth(season)}-01`;
  if (noCash.includes(kind)) return [];
  if (fieldKinds.includes(kind)) return [planting ?? monthAt(numberOf(monthOf(repaid)) - 6)];
  if (isLate(kind)) return [repaid];
  const months = kind === "cash rent" ? [3, 11] : Array.from({ length: 12 }, (_, month) => month + 1);
  return months.map((month) => `${season.settings.seasonYear!}-${String(month).padStart(2, "0")}-01`);
}

/** Money paid on its day, or in equal parts on the days that the rule gives. */
function spread(
  season: Season,
  group: string,
  amount: Fraction,
  kind: Kind,
  day: IsoDate | null,
  planting: IsoDate | null,
): readonly Flow[] {
  const days = day === null ? daysWithout(season, kind, planting) : [day];
  return days.map((each) => ({ month: monthOf(each), group, amount: divided(amount, fraction(BigInt(days.length))) }));
}

const fieldNamed = (season: Season, name: string): Field => season.fields.find((field) => field.name === name)!;
const sharedBy = (item: Item): Fraction => minus(fraction(1n), read(item.operatorCostShare));

/** Bills when they are paid, the rest of the plan as it is used, and what landlords pay back of both. */
function itemFlows(season: Season, account: ItemAccount, unused: Unused | undefined): readonly Flow[] {
  const { item, bought, paid, planned } = account;
  const price = paid ?? planned ?? zero;
  const lots = season.purchases.filter((purchase) => purchase.item === item.name);
  const bills = lots.map((bill): Flow => ({
    month: monthOf(bill.paidOn),
    group: item.kind,
    amount: opposite(minus(plus(read(bill.amount), read(bill.freight)), read(bill.rebate))),
  }));
  const asUsed = item.charged === "as used";
  const of = (...names: readonly ("done" | "left" | "due" | "nextDone" | "nextLeft" | "nextPlanned")[]): readonly Work<Application>[] =>
    [...account.uses].filter(([field]) => isCharged(item, field)).flatMap(([, use]) => names.flatMap((name) => use[name]));
  const quantity = (works: readonly Work<Application>[]) => total(works.map(({ row, extent }) => times(read(row.rate), extent)));
  const has = larger(bought.quantity, zero);
  // Bills serve what is done, then what is done for the next crop, then what is left; what they do not reach is bought as it is used.
  const groups = asUsed ? [of("done"), of("nextDone"), of("left", "nextLeft")] : [of("due", "nextPlanned")];
  let served = has;
  const toBuy = groups.flatMap((works) => {
    const needs = quantity(works);
    const missing = larger(minus(needs, served), zero);
    served = larger(minus(served, needs), zero);
    if (isZero(missing)) return [];
    return works.flatMap(({ row, extent, field }) =>
      spread(
        season,
        item.kind,
        opposite(times(divided(times(read(row.rate), extent), needs), missing, price)),
        item.kind,
        row.date,
        fieldNamed(season, field).plannedPlanting,
      ),
    );
  });
  return [...bills.filter((_, index) => !lots[index]!.isOpening), ...toBuy, ...backFrom(season, account, unused, bills, toBuy)];
}

/** What something else counts in a field is not bought for it again. */
const isCharged = (item: Item, field: Field): boolean => item.unchargedIn?.has(field.name) !== true;

/**
 * The landlords' part of what their fields take: of bills beyond what is charged, as far as these reach fields that something
 * else counts.
 */
function backFrom(
  season: Season,
  { item, bought, paid, uses }: ItemAccount,
  unused: Unused | undefined,
  bills: readonly Flow[],
  toBuy: readonly Flow[],
): readonly Flow[] {
  if (season.settings.landlordsInputs === "bought by the landlord") return [];
  const isShared = ({ tenure }: Field): boolean => tenure === "crop share";
  const back = (flow: Flow, part: Fraction): Flow => ({
    ...flow,
    group: "landlord's part",
    amount: opposite(times(flow.amount, part, sharedBy(item))),
  });
  if (item.charged === "as used") {
    const taken = (wanted: (field: Field) => boolean) =>
      total(
        [...uses]
          .filter(([field]) => wanted(field))
          .flatMap(([, { done, left, nextDone, nextLeft }]) => [...done, ...left, ...nextDone, ...nextLeft])
          .map(({ row, extent }) => times(read(row.rate), extent)),
      );
    const [charged, besides] = [taken((field) => isCharged(item, field)), taken((field) => !isCharged(item, field))];
    const whole = larger(bought.quantity, charged);
    if (compare(whole, zero) <= 0n) return [];
    const reached = isZero(besides) ? zero : divided(smaller(larger(minus(bought.quantity, charged), zero), besides), besides);
    const shares = [...(unused?.shares ?? [])];
    const value = total(shares.map(([, share]) => share));
    const ofLines = isZero(value)
      ? zero
      : divided(
          times(unused!.quantity, total(shares.filter(([name]) => isShared(fieldNamed(season, name))).map(([, share]) => share))),
          value,
        );
    const theirs = total([
      taken((field) => isShared(field) && isCharged(item, field)),
      times(
        taken((field) => isShared(field) && !isCharged(item, field)),
        reached,
      ),
      ofLines,
    ]);
    return [...(paid === null ? [] : bills), ...toBuy].map((flow) => back(flow, divided(theirs, whole)));
  }
  const weights = weightsOver(season, season.fields, item.charged === "by revenue" ? "revenue" : "acres", "outlook");
  const all = total(weights);
  const part = isZero(all) ? zero : divided(total(weights.filter((_, index) => isShared(season.fields[index]!))), all);
  return [...bills, ...toBuy].map((flow) => back(flow, part));
}

function workFlows(season: Season): readonly Flow[] {
  const groups = new Map<string, Work<Season["operations"][number]>[]>();
  for (const work of worksOf(season.operations, season)) {
    const key = `${work.field}\n${work.row.operation.toLowerCase()}`;
    groups.set(key, [...(groups.get(key) ?? []), work]);
  }
  return [...groups.values()].flatMap((group) => {
    const field = fieldNamed(season, group[0]!.field);
    const { done, left, nextDone, nextLeft } = settled(group, lastLoad(season, field), ({ kind }) => isLate(kind));
    return [...done, ...left, ...nextDone, ...nextLeft].flatMap(({ row, part, extent }) => {
      if (row.cost.basis === "machine") throw new RangeError("machine costs have no exact fraction");
      const amount =
        row.cost.basis === "per acre"
          ? times(read(row.cost.rate), extent)
          : times(read(row.cost.rate), part, row.cost.basis === "per hour" ? read(row.cost.hours) : fraction(1n));
      return spread(season, row.kind, opposite(amount), row.kind, row.date, field.plannedPlanting);
    });
  });
}

const isOver = ({ over }: OtherCost, field: Field): boolean =>
  "all" in over ? true : "crop" in over ? field.crop === over.crop : field.name === over.field;
/** Whether a kind is money of the farm: what is no cash, and what only stands for the farm's own means, is never paid. */
const isPaid = ({ cash, kind }: Pick<OtherCost, "cash" | "kind">): boolean => cash && !noCash.includes(kind);

function otherFlows(season: Season, byBalance: boolean): readonly Flow[] {
  return season.otherCosts
    .filter((cost) => isPaid(cost) && cost.basis !== "per unit of yield" && !(byBalance && cost.kind === "operating interest"))
    .flatMap((cost) => {
      const fields = season.fields.filter((field) => isOver(cost, field));
      const amount = opposite(cost.basis === "per acre" ? times(read(cost.amount), total(landOf(fields))) : read(cost.amount));
      if (cost.paidOn !== null || !fieldKinds.includes(cost.kind) || fields.length === 0)
        return spread(season, cost.kind, amount, cost.kind, cost.paidOn, null);
      const weights = weightsOver(season, fields, cost.by, "outlook");
      return fields.flatMap((field, index) =>
        spread(season, cost.kind, divided(times(amount, weights[index]!), total(weights)), cost.kind, null, field.plannedPlanting),
      );
    });
}

/** Bills charged directly on the day they are paid, the landlord's part back in the same month; and what need not be paid beside them. */
function directFlows(season: Season, off: readonly Off[], byBalance: boolean): readonly Flow[] {
  const bills = billsHere(season).flatMap(({ bill, paid, ours }): readonly Flow[] => [
    ...(bill.isOpening ? [] : [{ month: monthOf(bill.paidOn), group: bill.kind, amount: opposite(paid) }]),
    { month: monthOf(bill.paidOn), group: "landlord's part", amount: minus(paid, ours) },
  ]);
  const saved = off
    .filter(({ cost }) => isPaid(cost) && !(byBalance && cost.kind === "operating interest"))
    .flatMap(({ cost, amount }) => {
      const ours = cost.ours ?? fraction(1n);
      const due = cost.due ?? [{ on: null, field: cost.field, weight: fraction(1n) }];
      const weight = total(due.map((each) => each.weight));
      return due.flatMap((each) => {
        const [part, planting] = [
          divided(times(divided(amount, ours), each.weight), weight),
          fieldNamed(season, each.field).plannedPlanting,
        ];
        return [
          ...spread(season, cost.kind, part, cost.kind, each.on, planting),
          ...spread(season, "landlord's part", opposite(times(part, minus(fraction(1n), ours))), cost.kind, each.on, planting),
        ];
      });
    });
  return [...bills, ...saved];
}

/** What is left of budget lines, part by part; the landlord's part of a line is paid with it and comes back in the same month. */
function lineFlows(season: Season, rests: readonly Rest[], byBalance: boolean): readonly Flow[] {
  return rests
    .filter(({ line: { kind } }) => isPaid({ cash: true, kind }) && !(byBalance && kind === "operating interest"))
    .flatMap(({ field, line, amount, isMoving }) => {
      if (isZero(amount)) return [];
      return partsOf(line).flatMap(({ whole, ours, paidOn, fraction: part }) => {
        const flow = (group: string, money: Fraction) =>
          spread(season, group, money, line.kind, paidOn, fieldNamed(season, field).plannedPlanting);
        const theirs =
          season.settings.landlordsInputs === "repaid" && !isZero(line.ours) ? divided(times(amount, minus(whole, ours)), line.ours) : zero;
        return [
          ...flow(isMoving ? "drying, haul and selling" : line.kind, opposite(plus(times(amount, part), theirs))),
          ...flow("landlord's part", theirs),
        ];
      });
    });
}

/** @param perUnit money per unit sold of a field's crop that is paid with the grain */
function grainFlows(season: Season, perUnit: (field: Field) => Fraction): readonly Flow[] {
  const { seasonYear } = season.settings;
  const soldIn = (sale: Season["sales"][number]) => monthOf(sale.delivered ?? sale.date);
  const older = season.sales
    .filter(({ cropYear = null }) => cropYear !== null && cropYear !== seasonYear)
    .map((sale): Flow => ({ month: soldIn(sale), group: "older grain", amount: times(read(sale.quantity), read(sale.price)) }));
  const ofCrops = season.crops.flatMap((crop) => {
    const fields = season.fields.filter((field) => field.crop === crop.name);
    if (fields.length === 0) return [];
    const units = fields.map((field) => unitsAt(season, field, "outlook"));
    const weights = units.every(isZero) ? fields.map(areaOf) : units;
    const moving = divided(total(fields.map((field, index) => times(perUnit(field), weights[index]!))), total(weights));
    const own = season.sales.filter(({ crop: of, cropYear = null }) => of === crop.name && (cropYear === null || cropYear === seasonYear));
    const rest = larger(minus(total(units), total(own.map(({ quantity }) => read(quantity)))), zero);
    const grain = [
      ...own.map((sale) => ({ month: soldIn(sale), quantity: read(sale.quantity), price: read(sale.price) })),
      { month: grainMonth(season), quantity: rest, price: read(crop.price) },
    ];
    return [
      ...grain.map(({ month, quantity, price }): Flow => ({ month, group: "grain sales", amount: times(quantity, price) })),
      ...grain.map(({ month, quantity }): Flow => ({
        month,
        group: "drying, haul and selling",
        amount: opposite(times(quantity, moving)),
      })),
      ...rentWith(season, fields, grain),
      { month: grainMonth(season), group: "other income", amount: times(read(crop.otherIncomePerArea), total(fields.map(areaOf))) },
    ];
  });
  return [...ofCrops, ...older];
}

/** What fields pay above their base rents goes out as the grain comes in. */
function rentWith(
  season: Season,
  fields: readonly Field[],
  grain: readonly { readonly month: string; readonly quantity: Fraction }[],
): readonly Flow[] {
  const rent = total(fields.map((field) => rentAboveOf(season, field, "outlook")));
  const all = total(grain.map(({ quantity }) => quantity));
  const paid = (month: string, amount: Fraction): Flow => ({ month, group: "cash rent", amount: opposite(amount) });
  if (isZero(all)) return [paid(grainMonth(season), rent)];
  return grain.map(({ month, quantity }) => paid(month, divided(times(rent, quantity), all)));
}

/** The rate of the operating loan's balance: those of the balances carried in, else the season's, else that of an empty line. */
export function balanceRate({ settings: { operatingInterest }, loans = [] }: Season): Fraction {
  const lines = loans.filter(({ kind }) => kind === "operating");
  const carried = total(lines.map(({ balance }) => read(balance)));
  if (!isZero(carried)) return divided(total(lines.map(({ balance, rate }) => times(read(balance), read(rate)))), carried);
  return operatingInterest !== null ? read(operatingInterest.rate) : lines.length > 0 ? read(lines[0]!.rate) : zero;
}

const termFlows = (season: Season): readonly Flow[] =>
  (season.loans ?? [])
    .filter(({ kind }) => kind === "term")
    .flatMap((loan) =>
      duePayments(season, loan).map(({ month, amount }): Flow => ({ month, group: "term loans", amount: opposite(amount) })),
    );

/** Every month of the season of a year that is known, and of what is paid before and after it. */
export function exactCashFlow(season: Season): readonly ExactMonth[] {
  const year = Number(season.settings.seasonYear!);
  const rate = balanceRate(season);
  const clamp = (month: string | null): string | null =>
    month === null ? null : monthAt(Math.min(Math.max(numberOf(month), (year - 2) * 12), (year + 2) * 12 + 11));
  const rents = season.fields.flatMap((field) =>
    field.rentPerArea === null
      ? []
      : spread(season, "cash rent", opposite(times(read(field.rentPerArea), areaOf(field))), "cash rent", null, null),
  );
  const accounts = season.items.map((item) => itemAccount(season, item));
  const { costs, off, unused, rests } = chargedAt(season, accounts, "outlook");
  // Of what moves with yield the rest of a budget line is paid on its own day.
  const perUnit = (field: Field): Fraction =>
    minus(
      total(costs.filter((cost) => cost.field === field.name && isPaid(cost)).map((cost) => cost.perUnit)),
      total(rests.filter((rest) => rest.field === field.name && rest.isMoving).map((rest) => rest.perUnit)),
    );
  const flows = [
    ...grainFlows(season, perUnit),
    ...accounts.flatMap((account) => itemFlows(season, account, unused.get(account.item.name))),
    ...workFlows(season),
    ...rents,
    ...otherFlows(season, !isZero(rate)),
    ...season.otherSeasons.map(({ kind, paidOn, amount }): Flow => ({
      month: monthOf(paidOn),
      group: kind,
      amount: opposite(read(amount)),
    })),
    ...directFlows(season, off, !isZero(rate)),
    ...lineFlows(season, rests, !isZero(rate)),
    ...termFlows(season),
  ]
    .filter(({ amount }) => !isZero(amount))
    .map((flow) => ({ ...flow, month: clamp(flow.month) }));
  const numbers = flows.flatMap(({ month, group }) => (month === null || group === "term loans" ? [] : [numberOf(month)]));
  const [first, last] = [Math.min(year * 12, ...numbers), Math.max(year * 12 + 11, ...numbers)];
  const months = Array.from({ length: last - first + 1 }, (_, index) => monthAt(first + index));
  let owed = total((season.loans ?? []).filter(({ kind }) => kind === "operating").map(({ balance }) => read(balance)));
  let cash = zero;
  return months.map((month) => {
    const moved = new Map<string, Fraction>();
    for (const { month: of, group, amount } of flows) {
      if (of !== null && of !== month) continue;
      moved.set(group, plus(moved.get(group) ?? zero, of === null ? divided(amount, fraction(BigInt(months.length))) : amount));
    }
    const interest = divided(times(owed, rate), fraction(12n));
    const atHand = plus(cash, total([...moved.values()]));
    const due = plus(owed, interest);
    const draw = larger(opposite(atHand), zero);
    const repaid = larger(zero, smaller(atHand, due));
    owed = minus(plus(due, draw), repaid);
    cash = minus(plus(atHand, draw), repaid);
    return { month, flows: moved, interest, loan: owed, cash };
  });
}
