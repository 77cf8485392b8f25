import fc from "fast-check";
import { describe, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { judge } from "./judge";
import { growingSeason, harvestedSeason } from "./randomSeason";
import type { Kind } from "../../src/core/kinds";
import { repaidOn } from "../../src/core/paymentDates";
import type { Bill, Season } from "../../src/core/season";
import { typedSeason } from "./typedSeason";
import { Habits } from "./typing";
import { readSeason } from "../../src/workbook/readSeason";

/** What stands in another place than the core season has it: rows by their order, since blank rows lie between. */
const leftOut = new Set(["source", "published", "standTables", "wet", "asTyped"]);

/** Every difference of two plain values, decimals by their value; what is absent, null or an empty list is the same. */
function* differences(read: unknown, meant: unknown, at: string): Generator<string> {
  const [a, b] = [nothing(read) ? null : read, nothing(meant) ? null : meant];
  if (a === null && b === null) return;
  if (a instanceof Decimal && b instanceof Decimal) {
    if (!a.eq(b)) yield `${at}: read ${a.toFixed()}, meant ${b.toFixed()}`;
  } else if (
    typeof a === "object" &&
    typeof b === "object" &&
    a !== null &&
    b !== null &&
    !(a instanceof Decimal) &&
    !(b instanceof Decimal)
  ) {
    const names = new Set([...Object.keys(a), ...Object.keys(b)]);
    for (const name of names) {
      if (!leftOut.has(name))
        yield* differences((a as Record<string, unknown>)[name], (b as Record<string, unknown>)[name], `${at}/${name}`);
    }
  } else if (a !== b) yield `${at}: read ${String(a)}, meant ${String(b)}`;
}

const nothing = (value: unknown): boolean => value === undefined || value === null || (Array.isArray(value) && value.length === 0);

/** A rate of nothing is no rate. */
const asTyped = (season: Season): Season => {
  const { operatingInterest } = season.settings;
  return {
    ...season,
    settings: {
      ...season.settings,
      operatingInterest: operatingInterest?.rate.isZero() ? null : operatingInterest,
      repaymentDate: repaidOn(season.settings),
    },
  };
};

/** What is for a crop that grows nowhere is told elsewhere. */
const grown = ({ fields }: Season, over: Bill["over"]): Bill["over"] =>
  "crop" in over && !fields.some(({ crop }) => crop === over.crop) ? { all: true } : over;

/** Kinds of budget lines that give way to another table are told elsewhere. */
function lineKind({ settings, crops }: Season, kind: Kind): Kind {
  const elsewhere: readonly Kind[] = ["cash rent", "land charge", "term interest", "term principal", "operating interest"];
  if (elsewhere.includes(kind)) return "overhead";
  const isCharged =
    kind === "drying"
      ? settings.dryingChargePerPoint !== null
      : kind === "haul" && crops.some(({ sellingCostPerUnit }) => !sellingCostPerUnit.isZero());
  return isCharged ? "supplies" : kind;
}

/** A bill of an item is the operator's as the item says; one that is of no item says nothing of that. */
function billsAsTyped(season: Season): readonly Bill[] {
  const { bills = [], items, applications } = season;
  const stocked = items.find(({ name }) => !applications.some((row) => row.item === name));
  return bills
    .map(({ unchargedIn: _uncharged, ...each }) => ({ ...each, over: grown(season, each.over) }))
    .map((bill) =>
      bill.operatorCostShare === null || stocked === undefined
        ? { ...bill, operatorCostShare: null }
        : { ...bill, name: stocked.name, operatorCostShare: stocked.operatorCostShare },
    );
}

/**
 * Two entries that would count one cost twice are told elsewhere: here no fuel is bought and also among the other costs,
 * nor are loans and interest. A loan, a budget line and a bill are for what grows somewhere.
 */
function countedOnce(season: Season): Season {
  const { loans = [], fields } = season;
  const counted = (kind: Kind): Kind => {
    const ofLoans = loans.length > 0 && (kind === "term interest" || kind === "term principal");
    return ofLoans || kind === "operating interest" ? "overhead" : kind;
  };
  const isBought = season.items.some(({ kind, name }) => kind === "fuel" && season.purchases.some(({ item }) => item === name));
  return {
    // Without its year a season is asked for it, which is judged elsewhere.
    ...season,
    settings: { ...season.settings, seasonYear: "2031" },
    items: season.items.map(({ unchargedIn: _uncharged, ...item }) => item),
    budget: (season.budget ?? []).map((line) => ({ ...line, over: grown(season, line.over), kind: lineKind(season, line.kind) })),
    bills: billsAsTyped(season),
    otherCosts: season.otherCosts.map((cost) =>
      isBought && cost.kind === "fuel" ? { ...cost, kind: "supplies" } : { ...cost, kind: counted(cost.kind) },
    ),
    loans: loans.map((loan) => {
      const { bornBy = null } = loan;
      return bornBy !== null && "crop" in bornBy && !fields.some(({ crop }) => crop === bornBy.crop) ? { ...loan, bornBy: null } : loan;
    }),
  };
}

describe("a season typed into a workbook", () => {
  it.each([
    ["growing", growingSeason],
    ["harvested", harvestedSeason],
  ] as const)("is read as it was meant (%s)", { timeout: 900_000 }, (sort, seasons) => {
    judge(
      `typed workbooks of ${sort} seasons`,
      fc.tuple(seasons, fc.nat(), fc.boolean(), fc.constantFrom("1900", "1904")),
      ([random, seed, comma, dates]) => {
        const season = countedOnce(random);
        const content = typedSeason(season, new Habits(seed, comma, dates));
        return [...differences(readSeason(content).season, asTyped(season), "season")];
      },
    );
  });
});
