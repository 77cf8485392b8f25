/** Hybrids held against a check, worked out a second time in exact fractions. */
import fc from "fast-check";
import { it } from "vitest";
import { hybridComparisons } from "../../src/core/hybrids/comparison";
import type { HybridTrial } from "../../src/core/hybrids/hybridEntries";
import { tQuantile } from "../../src/core/stand/tQuantile";
import { Decimal } from "../../src/core/numbers/decimal";
import { money, moneyPerArea, moneyPerUnit, points, yieldPerArea } from "../../src/core/numbers/units";
import type { Season } from "../../src/core/season";
import { corn, field, hybrid, seasonOf, settings } from "../support/season";
import { agree, compare, divided, fraction, minus, plus, read, times, total, type Fraction } from "./fraction";
import { judge } from "./judge";

const names = ["Check", "Ash", "Elm"] as const;
const digits = (least: number, most: number, places: number) =>
  fc.integer({ min: least * 10 ** places, max: most * 10 ** places }).map((value) => new Decimal(String(value)).div(String(10 ** places)));

const row = fc.record({
  trial: fc.constantFrom("North", "South", "East", "West"),
  year: fc.constantFrom("2029", "2030", null),
  hybrid: fc.constantFrom(...names),
  yield: digits(80, 260, 1).map((value) => yieldPerArea(value)),
  moisture: fc.option(
    digits(10, 30, 1).map((value) => points(value)),
    { freq: 6 },
  ),
  dock: fc.oneof(
    { weight: 4, arbitrary: digits(0, 1, 2).map((value) => moneyPerUnit(value)) },
    { weight: 1, arbitrary: fc.constant("unknown" as const) },
  ),
});

const cases = fc
  .record({
    rows: fc.array(row, { maxLength: 24 }),
    charge: fc.option(digits(0, 1, 3), { freq: 4 }),
    countedOn: fc.constantFrom("wet" as const, "dry" as const),
    rates: fc.tuple(digits(20000, 40000, 0), digits(20000, 40000, 0)),
    acres: fc.tuple(digits(1, 300, 1), digits(1, 300, 1)),
    prices: fc.tuple(...names.map(() => fc.option(digits(100, 400, 2), { freq: 8 }))),
    fee: digits(0, 12, 2),
  })
  .map(({ rows, charge, countedOn, rates, acres, prices, fee }): Season => {
    const [first, second] = [0, 1].map((index) => field(`Field ${index}`, acres[index]!.toFixed(), "200", { seedsDropped: rates[index]! }));
    return seasonOf({
      settings: { ...settings, dryingChargePerPoint: charge === null ? null : moneyPerUnit(charge), dryingCountedOn: countedOn },
      fields: [first!, second!],
      hybrids: names.map((name, index) =>
        hybrid(name, {
          isCheck: index === 0,
          pricePerBag: prices[index] === null ? null : money(prices[index]!),
          seedsPerBag: new Decimal("80000"),
          traitFee: index === 1 ? moneyPerArea(fee) : null,
        }),
      ),
      hybridTrials: rows.map((each): HybridTrial => ({
        ...each,
        crop: "Corn",
        testWeight: null,
        stand: null,
        lodged: null,
        lsd: null,
        by: null,
        source: { table: "Hybrid trials", row: 1 },
      })),
    });
  });

const whole = (value: number): Fraction => fraction(BigInt(value));
const mean = (values: readonly Fraction[]): Fraction => divided(total(values), whole(values.length));

/** What a row is worth an acre before seed: `null` where drying is charged and its moisture is not known. */
function worth({ settings: { dryingChargePerPoint, dryingCountedOn } }: Season, each: HybridTrial, takesDock: boolean): Fraction | null {
  const [dry, charge, standard] = [read(each.yield), dryingChargePerPoint, read(corn.standardMoisture!)];
  const off = takesDock && each.dock !== null && each.dock !== "unknown" ? read(each.dock) : whole(0);
  const income = times(dry, minus(read(corn.price), off));
  if (charge === null || charge.isZero()) return income;
  if (each.moisture === null) return null;
  const above = minus(read(each.moisture), standard);
  if (compare(above, whole(0)) <= 0n) return income;
  const wet = divided(times(dry, minus(whole(100), standard)), minus(whole(100), read(each.moisture)));
  return minus(income, times(above, read(charge), dryingCountedOn === "wet" ? wet : dry));
}

/** The rows of a name by trial and year. */
const byTrial = ({ hybridTrials }: Season, name: string) =>
  new Map(
    [...new Set(hybridTrials.map(({ trial, year }) => `${trial} ${year}`))]
      .map((key) => [key, hybridTrials.filter((each) => each.hybrid === name && `${each.trial} ${each.year}` === key)] as const)
      .filter(([, rows]) => rows.length > 0),
  );

function seedOf({ fields, hybrids }: Season, name: string): Fraction | null {
  const { pricePerBag, traitFee } = hybrids.find((each) => each.name === name)!;
  if (pricePerBag === null) return null;
  const acres = fields.map(({ area }) => read(area));
  const rate = divided(total(fields.map(({ seedsDropped, area }) => times(read(seedsDropped!), read(area)))), total(acres));
  return plus(divided(times(rate, read(pricePerBag)), whole(80000)), traitFee === null ? whole(0) : read(traitFee));
}

function faults(season: Season): readonly string[] {
  const all = hybridComparisons(season, []);
  return names.flatMap((name): readonly string[] => {
    const told = all.find((each) => each.hybrid === name)!;
    const [own, checks] = [byTrial(season, name), byTrial(season, "Check")];
    const pairs = name === "Check" ? [] : [...own].flatMap(([key, rows]) => (checks.has(key) ? [[rows, checks.get(key)!] as const] : []));
    const isPaired = pairs.length > 0;
    const sides = isPaired ? pairs : [...own.values()].map((rows) => [rows, []] as const);
    const yields = (rows: readonly HybridTrial[]) => mean(rows.map((each) => read(each.yield)));
    const differences = isPaired ? sides.map(([here, there]) => minus(yields(here), yields(there))) : [];
    const nets = sides.flatMap(([here, there]) => {
      const takesDock = [...here, ...there].every(({ dock }) => dock !== "unknown");
      const of = (rows: readonly HybridTrial[]) => rows.map((each) => worth(season, each, takesDock));
      const [mine, theirs] = [of(here), of(there)];
      const isKnown = (values: readonly (Fraction | null)[]): values is readonly Fraction[] => values.every((value) => value !== null);
      return isKnown(mine) && isKnown(theirs) ? [[mean(mine), theirs.length === 0 ? null : mean(theirs)] as const] : [];
    });
    const [seed, checkSeed] = [seedOf(season, name), seedOf(season, "Check")];
    const netDifferences =
      isPaired && seed !== null && checkSeed !== null
        ? nets.map(([mine, theirs]) => minus(minus(mine, seed), minus(theirs!, checkSeed)))
        : [];
    const same = (what: string, actual: Decimal | null, exact: Fraction | null) =>
      (actual === null) === (exact === null) && (exact === null || agree(actual!, exact)) ? [] : [`${name}: ${what} is ${actual}`];
    /** The interval by its square: half ÷ t is the root of the variance ÷ n. */
    const interval = (
      what: string,
      of: { mean: Decimal; low: Decimal | null; high: Decimal | null } | null,
      values: readonly Fraction[],
    ) => {
      if (values.length === 0) return of === null ? [] : [`${name}: ${what} has a mean of nothing`];
      if (of === null) return [`${name}: ${what} is missing`];
      const center = same(what, of.mean, mean(values));
      if (values.length === 1)
        return [...center, ...(of.low === null && of.high === null ? [] : [`${name}: ${what} has bounds by one trial`])];
      const squares = values.map((value) => times(minus(value, mean(values)), minus(value, mean(values))));
      const variance = divided(total(squares), whole(values.length * (values.length - 1)));
      const t = tQuantile(new Decimal(String(values.length - 1)), new Decimal("0.95"));
      const sides = [of.high!.minus(of.mean), of.mean.minus(of.low!)].map((half) => half.div(t).pow("2"));
      const isOff = sides.some((square) =>
        square
          .minus(new Decimal(String(variance.over)).div(String(variance.under)))
          .abs()
          .gt("1e-20"),
      );
      return [...center, ...(isOff ? [`${name}: the interval of ${what} is ${of.low} to ${of.high}`] : [])];
    };
    return [
      ...(told.trials.eq(String(sides.length)) && told.netTrials.eq(String(nets.length)) ? [] : [`${name}: ${told.trials} trials`]),
      ...interval("the yield difference", told.yieldDifference, differences),
      ...interval("the net difference", told.netDifference, netDifferences),
      ...same("the net", told.netPerArea, seed === null || nets.length === 0 ? null : minus(mean(nets.map(([mine]) => mine)), seed)),
      ...same("the yield", told.yield, sides.length === 0 ? null : mean(sides.map(([here]) => yields(here)))),
    ];
  });
}

it("hybrids of random trials differ, net and spread as exact fractions have it", { timeout: 900_000 }, () => {
  judge("hybrids", cases, faults);
});

it("trials in any order say the same, and a trial that the check is not in changes no difference", { timeout: 900_000 }, () => {
  const shown = (season: Season) =>
    JSON.stringify(
      hybridComparisons(season, [])
        .filter(({ isCheck }) => !isCheck)
        .map(({ hybrid: name, trials, yieldDifference, netDifference }) => [
          name,
          trials,
          ...[yieldDifference, netDifference].flatMap((of) =>
            [of?.mean, of?.low, of?.high].map((each) => each?.toSignificantDigits(20).toFixed()),
          ),
        ]),
    );
  judge("hybrids in any order", cases, (season) => {
    const turned = { ...season, hybridTrials: [...season.hybridTrials].reverse() };
    const before = shown(season);
    const far = season.hybridTrials.filter((each) => each.hybrid === "Ash").map((each) => ({ ...each, trial: "Far away" }));
    const hasPairs = hybridComparisons(season, []).every(({ yieldDifference, isCheck }) => isCheck || yieldDifference !== null);
    return [
      ...(shown(turned) === before ? [] : ["another order"]),
      ...(!hasPairs || shown({ ...season, hybridTrials: [...season.hybridTrials, ...far] }) === before ? [] : ["a far trial"]),
    ];
  });
});
