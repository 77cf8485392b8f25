/**
 * Rough and fine: budget lines, bills charged directly and items that no row takes, worked out again from the definition of the
 * product.
 */
import type { Stage } from "../../src/core/figures";
import type { Kind } from "../../src/core/kinds";
import type { IsoDate } from "../../src/core/row";
import type { Bill, BudgetLine, Field, Season } from "../../src/core/season";
import { daysOut, daysOutOf, noLoan, type Cost } from "./exactCost";
import { landOf, unitsAt } from "./exactFields";
import { allOf, bySelf, operatorPart, quantityOf, type ItemAccount } from "./exactItems";
import { shareOut } from "./exactSplit";
import { compare, divided, fraction, isZero, larger, minus, one, plus, read, times, total, zero, type Fraction } from "./fraction";

type Named = Pick<BudgetLine, "over">;
const rank = ({ over }: Named): number => ("field" in over ? 0 : "crop" in over ? 1 : 2);
const reaches = ({ over }: Named, field: Field): boolean =>
  "all" in over ? true : "crop" in over ? over.crop === field.crop : over.field === field.name;
const fieldNamed = (season: Season, name: string): Field => season.fields.find((field) => field.name === name)!;

/** All that counts of a kind's lines in one field: `whole` with the landlord's part, `ours` without it. */
export type LineHere = {
  readonly kind: Kind;
  readonly entered: readonly BudgetLine[];
  readonly parts: readonly { readonly whole: Fraction; readonly ours: Fraction; readonly paidOn: IsoDate | null }[];
  readonly whole: Fraction;
  readonly ours: Fraction;
  readonly allIn: boolean;
};

const noCash: readonly string[] = ["machine ownership", "land charge", "unpaid labour", "management"];

/** The field's own lines, else its crop's, else those of all: each its share by land of what it says for all the fields that it names. */
export function linesIn(season: Season, field: Field): readonly LineHere[] {
  const reaching = (season.budget ?? []).filter((line) => reaches(line, field));
  return [...new Set(reaching.map(({ kind }) => kind))].map((kind) => {
    const ofKind = reaching.filter((line) => line.kind === kind);
    const nearest = Math.min(...ofKind.map(rank));
    const entered = ofKind.filter((line) => rank(line) === nearest);
    const parts = entered.map((line) => {
      const named = season.fields.filter((each) => reaches(line, each));
      const [land, at] = [landOf(named), named.indexOf(field)];
      const whole = line.basis === "whole" ? shareOut(read(line.amount), land)[at]! : times(read(line.amount), land[at]!);
      return { whole, ours: field.tenure === "crop share" ? times(whole, read(line.operatorCostShare)) : whole, paidOn: line.paidOn };
    });
    return {
      kind,
      entered,
      parts,
      whole: total(parts.map(({ whole }) => whole)),
      ours: total(parts.map(({ ours }) => ours)),
      allIn: entered.every(({ allIn }) => allIn),
    };
  });
}

/** What of the rest of a line is each part's, by the operator's money; where he bears nothing of any of them, all alike. */
export const partsOf = ({ parts, ours }: LineHere) =>
  parts.map((part) => ({ ...part, fraction: isZero(ours) ? fraction(1n, BigInt(parts.length)) : divided(part.ours, ours) }));

/** What falls to a field of a bill: what is paid for it, and what of that the operator bears. */
export type BillHere = { readonly bill: Bill; readonly field: Field; readonly paid: Fraction; readonly ours: Fraction };

/** By acres over the fields that a bill names. Landlords repay their part, or buy it themselves, so that no bill is theirs. */
export const billsHere = (season: Season): readonly BillHere[] =>
  (season.bills ?? []).flatMap((bill) => {
    const named = season.fields.filter((field) => reaches(bill, field));
    if (named.length === 0) return [];
    const parts = named.map((field) => {
      if (field.tenure !== "crop share") return one;
      if (bill.operatorCostShare !== null) return read(bill.operatorCostShare);
      const line = linesIn(season, field).find(({ kind }) => kind === bill.kind);
      return line === undefined || isZero(line.whole) ? one : divided(line.ours, line.whole);
    });
    const land = landOf(named);
    const own = land.map((acres, index) => times(acres, parts[index]!));
    const paid = shareOut(read(bill.amount), bySelf(season) && !own.every(isZero) ? own : land);
    return named.map((field, index) => ({
      bill,
      field,
      paid: paid[index]!,
      ours: bySelf(season) ? paid[index]! : times(paid[index]!, parts[index]!),
    }));
  });

export const billCosts = (season: Season): readonly Cost[] =>
  billsHere(season)
    .filter(({ bill, field }) => bill.unchargedIn?.has(field.name) !== true)
    .map(({ bill, field, ours }): Cost => ({
      field: field.name,
      kind: bill.kind,
      amount: ours,
      perUnit: zero,
      loan: bill.isOpening ? noLoan : { amount: ours, amountDays: times(ours, daysOut(season, bill.paidOn)) },
      cash: true,
      progress: "bill",
    }));

/** What bills take off a cost that was still to come: money of the operator. */
export type Off = { readonly cost: Cost; readonly amount: Fraction };

const scaled = (cost: Cost, part: Fraction): Cost => ({
  ...cost,
  amount: times(cost.amount, part),
  perUnit: times(cost.perUnit, part),
  loan: { amount: times(cost.loan.amount, part), amountDays: times(cost.loan.amountDays, part) },
});

/** Bills of a field and kind beside what is left of it: that is less by them, and no less than nothing; what is done or bought stays. */
export function setAgainst(
  season: Season,
  rows: readonly Cost[],
  bills: readonly Cost[],
  stage: Stage,
): { readonly costs: readonly Cost[]; readonly off: readonly Off[] } {
  const kept = new Map<string, Fraction>();
  const keyOf = ({ field, kind }: Pick<Cost, "field" | "kind">): string => `${field}\n${kind}`;
  for (const { field, kind } of bills) {
    const here = (costs: readonly Cost[]) => costs.filter((cost) => cost.field === field && cost.kind === kind);
    const units = unitsAt(season, fieldNamed(season, field), stage);
    const billed = total(here(bills).map(({ amount }) => amount));
    const left = total(
      here(rows)
        .filter(({ progress }) => progress === "left")
        .map(({ amount, perUnit }) => plus(amount, times(perUnit, units))),
    );
    if (compare(billed, zero) > 0n && compare(left, zero) > 0n)
      kept.set(keyOf({ field, kind }), divided(larger(minus(left, billed), zero), left));
  }
  const partOf = (cost: Cost): Fraction => (cost.progress === "left" ? (kept.get(keyOf(cost)) ?? one) : one);
  return {
    costs: [...rows.map((cost) => scaled(cost, partOf(cost))), ...bills],
    off: rows.map((cost) => ({ cost, amount: times(cost.amount, minus(one, partOf(cost))) })).filter(({ amount }) => !isZero(amount)),
  };
}

/** What of an item no row takes and budget lines bear: `shares` before the landlord's part. */
export type Unused = { readonly quantity: Fraction; readonly shares: ReadonlyMap<string, Fraction>; readonly costs: readonly Cost[] };

/**
 * Items charged as used that are bought beyond all use, on the fields that have only a line of their kind, by what is left of
 * those lines.
 */
export function unusedItems(
  season: Season,
  accounts: readonly ItemAccount[],
  plan: readonly Cost[],
  outlook: readonly Cost[],
): ReadonlyMap<string, Unused> {
  return new Map(
    accounts.flatMap((account): readonly (readonly [string, Unused])[] => {
      const { item, bought, paid } = account;
      const quantity = larger(minus(bought.quantity, quantityOf(allOf(account, "done", "left", "nextDone", "nextLeft"))), zero);
      if (item.charged !== "as used" || isZero(quantity) || paid === null) return [];
      const rough = season.fields.flatMap((field) => {
        const line = linesIn(season, field).find(({ kind }) => kind === item.kind);
        const here = (costs: readonly Cost[]) =>
          costs.filter((cost) => cost.field === field.name && cost.kind === item.kind && !isNothingPerUnit(cost));
        if (
          line === undefined ||
          here(plan).length > 0 ||
          here(outlook).some(({ progress }) => progress !== "bill") ||
          item.unchargedIn?.has(field.name) === true
        )
          return [];
        const left = larger(minus(line.ours, total(here(outlook).map(({ amount }) => amount))), zero);
        // The operator buys the landlord's part with his own, and has it back.
        const buys = bySelf(season) ? left : isZero(line.ours) ? line.whole : divided(times(left, line.whole), line.ours);
        return [{ field, line: bySelf(season) ? line.ours : line.whole, buys }];
      });
      if (rough.length === 0) return [];
      const weights = [rough.map(({ buys }) => buys), rough.map(({ line }) => line), landOf(rough.map(({ field }) => field))].find(
        (all) => !all.every(isZero),
      )!;
      const shares = shareOut(times(quantity, paid), weights);
      const costs = rough.map(({ field }, index): Cost => {
        const amount = times(shares[index]!, bySelf(season) ? one : operatorPart(item, field));
        return {
          field: field.name,
          kind: item.kind,
          amount,
          perUnit: zero,
          loan: { amount: times(amount, bought.fresh), amountDays: times(amount, bought.days) },
          cash: true,
          progress: "bill",
        };
      });
      return [[item.name, { quantity, shares: new Map(rough.map(({ field }, index) => [field.name, shares[index]!])), costs }]];
    }),
  );
}

/** Drying and selling cost of a crop that has none. */
const isNothingPerUnit = ({ amount, perUnit, due }: Cost): boolean => due === undefined && isZero(amount) && isZero(perUnit);

/** What a line still adds in a field beyond rows and bills. */
export type Rest = {
  readonly field: string;
  readonly line: LineHere;
  readonly amount: Fraction;
  readonly perUnit: Fraction;
  readonly isMoving: boolean;
};

/**
 * The plan is the line. Afterwards the line adds what it has beyond all that is done, billed and left, and nothing once it is all in.
 * Drying and haul move with yield, at line ÷ (share × goal), where there is a goal and a share.
 */
export function withLines(
  season: Season,
  before: readonly Cost[],
  stage: Stage,
): { readonly costs: readonly Cost[]; readonly rests: readonly Rest[] } {
  const all = season.fields.flatMap((field) => linesIn(season, field).map((line) => ({ field, line })));
  const costs = before.filter(
    (cost) => stage !== "plan" || !all.some(({ field, line }) => field.name === cost.field && line.kind === cost.kind),
  );
  const added = all.map(({ field, line }) =>
    addedBy(
      season,
      field,
      line,
      before.filter((cost) => cost.field === field.name && cost.kind === line.kind),
      stage,
    ),
  );
  return { costs: [...costs, ...added.map(({ cost }) => cost)], rests: added.map(({ rest }) => rest) };
}

function addedBy(
  season: Season,
  field: Field,
  line: LineHere,
  rows: readonly Cost[],
  stage: Stage,
): { readonly cost: Cost; readonly rest: Rest } {
  const { kind, ours } = line;
  const [goalUnits, units] = [unitsAt(season, field, "plan"), unitsAt(season, field, stage)];
  const isMoving = (kind === "drying" || kind === "haul") && !isZero(goalUnits);
  const perUnit = isMoving ? divided(ours, goalUnits) : zero;
  const beyond = (): Fraction => {
    // Of no crop nothing is left to move, whatever was credited.
    if (line.allIn || (isMoving && isZero(units))) return zero;
    const other = total(rows.map((cost) => plus(cost.amount, times(cost.perUnit, units))));
    return larger(minus(isMoving ? times(perUnit, units) : ours, other), zero);
  };
  const amount = stage === "plan" ? ours : beyond();
  const restPerUnit = (): Fraction => {
    if (stage === "plan") return perUnit;
    if (line.allIn) return zero;
    if (!isZero(units)) return divided(amount, units);
    // No crop moves anything; a price is judged by what a unit would cost.
    return rows.some((cost) => !isZero(cost.amount)) ? zero : larger(minus(perUnit, total(rows.map((cost) => cost.perUnit))), zero);
  };
  const days = total(partsOf(line).map(({ fraction: part, paidOn }) => times(part, daysOutOf(season, kind, paidOn, field))));
  const cash = !noCash.includes(kind);
  const ofUnit = isMoving ? restPerUnit() : zero;
  const loan = !cash ? noLoan : { amount: isMoving ? zero : amount, amountDays: times(amount, days) };
  return {
    cost: { field: field.name, kind, amount: isMoving ? zero : amount, perUnit: ofUnit, loan, cash, progress: "left" },
    rest: { field: field.name, line, amount, perUnit: ofUnit, isMoving },
  };
}
