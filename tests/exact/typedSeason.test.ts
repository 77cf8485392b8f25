import fc from "fast-check";
import { describe, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { countedOnce } from "./countedOnce";
import { judge } from "./judge";
import { growingSeason, harvestedSeason, underFlexibleRent } from "./randomSeason";
import { repaidOn } from "../../src/core/paymentDates";
import type { Season } from "../../src/core/season";
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

describe("a season typed into a workbook", () => {
  it.each([
    ["growing", growingSeason],
    ["harvested", harvestedSeason],
    ["flexibly rented", underFlexibleRent(growingSeason)],
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
