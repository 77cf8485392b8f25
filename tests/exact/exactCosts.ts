/** What field work, land, other costs and interest charge to each field, worked out again from the definition of the product. */
import type { Stage } from "../../src/core/figures";
import type { Field, Operation, OtherCost, Season } from "../../src/core/season";
import { billCosts, setAgainst, unusedItems, withLines, type Off, type Rest, type Unused } from "./exactBudgetLines";
import { daysOutOf, noLoan, type Cost } from "./exactCost";
import { areaOf, cropOf, landOf, lastLoad, pointsToDry, weightsOver } from "./exactFields";
import { loanCosts } from "./exactLoans";
import { itemCosts, type ItemAccount } from "./exactItems";
import { shareOut } from "./exactSplit";
import { isLate, settled, worksOf, type Work } from "./exactWork";
import { divided, fraction, read, times, total, zero, type Fraction } from "./fraction";

/** The kinds that an operating loan carries: those of the operating layer, its own interest excepted. */
const carried: ReadonlySet<string> = new Set([
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "drying",
  "haul",
  "crop insurance",
  "supplies",
  "irrigation",
  "other operating",
]);

/** What is charged of each field's rows, bills and budget lines, and what is worked out beside them. */
export type Charged = {
  readonly costs: readonly Cost[];
  /** What bills take off costs that were still to come. */
  readonly off: readonly Off[];
  /** What of each item no row takes and budget lines bear. */
  readonly unused: ReadonlyMap<string, Unused>;
  readonly rests: readonly Rest[];
};

/** All costs of all fields at a stage, operating interest included. */
export function chargedAt(season: Season, accounts: readonly ItemAccount[], stage: Stage): Charged {
  const rows = rowCosts(season, accounts, stage);
  const bills = billCosts(season);
  const against = stage === "plan" ? { costs: rows, off: [] } : setAgainst(season, rows, bills, stage);
  const unused =
    stage === "plan"
      ? new Map<string, Unused>()
      : unusedItems(
          season,
          accounts,
          rowCosts(season, accounts, "plan"),
          stage === "outlook" ? against.costs : setAgainst(season, rowCosts(season, accounts, "outlook"), bills, "outlook").costs,
        );
  const { costs, rests } = withLines(season, [...against.costs, ...[...unused.values()].flatMap((each) => each.costs)], stage);
  return { costs: [...costs, ...season.fields.map((field) => interest(season, field, costs))], off: against.off, unused, rests };
}

export const costsAt = (season: Season, accounts: readonly ItemAccount[], stage: Stage): readonly Cost[] =>
  chargedAt(season, accounts, stage).costs;

const rowCosts = (season: Season, accounts: readonly ItemAccount[], stage: Stage): readonly Cost[] => [
  ...accounts.flatMap((account) => itemCosts(season, account, stage)),
  ...workCosts(season, stage),
  ...season.otherCosts.flatMap((cost) => otherCosts(season, cost, stage)),
  ...season.fields.flatMap((field) => [...landCosts(field), ...cropCosts(season, field, stage)]),
  ...loanCosts(season),
];

function workCosts(season: Season, stage: Stage): readonly Cost[] {
  const works = worksOf(season.operations, season);
  const groups = new Map<string, Work<Operation>[]>();
  for (const work of works) {
    const same = `${work.field}\n${work.row.operation.toLowerCase()}`;
    groups.set(same, [...(groups.get(same) ?? []), work]);
  }
  return [...groups.values()]
    .flatMap((group) => {
      const field = season.fields.find(({ name }) => name === group[0]!.field)!;
      const { planned, done, left } = settled(group, lastLoad(season, field), ({ kind }) => isLate(kind));
      const [isDone, isLeft] = [
        done.map((work) => ({ work, progress: "done" as const })),
        left.map((work) => ({ work, progress: "left" as const })),
      ];
      return { plan: planned.map((work) => ({ work, progress: "left" as const })), outlook: [...isDone, ...isLeft], final: isDone }[stage];
    })
    .map(({ work, progress }) => {
      const amount = moneyOf(work);
      const field = season.fields.find(({ name }) => name === work.field)!;
      const amountDays = times(amount, daysOutOf(season, work.row.kind, work.row.date, field));
      return {
        field: work.field,
        kind: work.row.kind,
        amount,
        perUnit: zero,
        loan: { amount, amountDays },
        cash: true,
        progress,
        due: [{ on: work.row.date, field: work.field, weight: fraction(1n) }],
      };
    });
}

function moneyOf({ row: { cost }, part, extent }: Work<Operation>): Fraction {
  if (cost.basis === "machine") throw new RangeError("machine costs have no exact fraction: their formulas take roots and powers");
  if (cost.basis === "per acre") return times(read(cost.rate), extent);
  return cost.basis === "per hour" ? times(read(cost.rate), read(cost.hours), part) : times(read(cost.rate), part);
}

function otherCosts(season: Season, cost: OtherCost, stage: Stage): readonly Cost[] {
  const { over, basis, kind } = cost;
  const fields = season.fields.filter((field) => "all" in over || ("crop" in over ? field.crop === over.crop : field.name === over.field));
  if (fields.length === 0) return [];
  const amount = read(cost.amount);
  if (basis === "per unit of yield")
    return fields.map((field) => ({
      field: field.name,
      kind,
      amount: zero,
      perUnit: amount,
      loan: noLoan,
      cash: cost.cash,
      progress: "left",
    }));
  const amounts =
    basis === "per acre"
      ? landOf(fields).map((land) => times(amount, land))
      : shareOut(amount, weightsOver(season, fields, cost.by, stage));
  return fields.map((field, index) => {
    const borne = amounts[index]!;
    const loan = cost.cash ? { amount: borne, amountDays: times(borne, daysOutOf(season, kind, cost.paidOn, field)) } : noLoan;
    return {
      field: field.name,
      kind,
      amount: borne,
      perUnit: zero,
      loan,
      cash: cost.cash,
      progress: "left",
      due: [{ on: cost.paidOn, field: field.name, weight: fraction(1n) }],
    };
  });
}

/** Rent and land charge, each where it is entered. */
function landCosts(field: Field): readonly Cost[] {
  const perAcre = (kind: "cash rent" | "land charge", rate: typeof field.rentPerArea): readonly Cost[] =>
    rate === null
      ? []
      : [
          {
            field: field.name,
            kind,
            amount: times(read(rate), areaOf(field)),
            perUnit: zero,
            loan: noLoan,
            cash: kind === "cash rent",
            progress: "left",
          },
        ];
  return [...perAcre("cash rent", field.rentPerArea), ...perAcre("land charge", field.landChargePerArea)];
}

/** Selling cost and drying, per unit of the operator's crop. */
function cropCosts(season: Season, field: Field, stage: Stage): readonly Cost[] {
  const perPoint = season.settings.dryingChargePerPoint;
  const drying = perPoint === null ? zero : times(read(perPoint), pointsToDry(season, field, stage));
  const perUnit = (kind: "haul" | "drying", rate: Fraction): Cost => ({
    field: field.name,
    kind,
    amount: zero,
    perUnit: rate,
    loan: noLoan,
    cash: true,
    progress: "left",
  });
  return [perUnit("haul", read(cropOf(season, field).sellingCostPerUnit)), perUnit("drying", drying)];
}

/** Simple interest on what an operating loan carries of one field. */
function interest({ settings: { operatingInterest } }: Season, field: Field, costs: readonly Cost[]): Cost {
  const loans = costs.filter((cost) => cost.field === field.name && carried.has(cost.kind)).map(({ loan }) => loan);
  const amount =
    operatingInterest === null
      ? zero
      : operatingInterest.method === "by date"
        ? divided(times(total(loans.map(({ amountDays }) => amountDays)), read(operatingInterest.rate)), fraction(365n))
        : divided(
            times(total(loans.map((loan) => loan.amount)), read(operatingInterest.rate), read(operatingInterest.months)),
            fraction(12n),
          );
  return { field: field.name, kind: "operating interest", amount, perUnit: zero, loan: noLoan, cash: true, progress: "left" };
}
