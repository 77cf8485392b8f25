/** Moisture, dryer and losses of every day of a fall, against exact fractions read from the printed points a week and percents. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { moneyPerUnit, points, share, yieldPerArea } from "../../src/core/numbers/units";
import { drydownTables } from "../../src/core/tables/drydownTables";
import { drydown } from "../../src/core/weather/drydown";
import { agree, divided, fraction, larger, minus, one, plus, read, times, total, zero, type Fraction } from "./fraction";

/** Iowa State University Extension, 2022: points a week in September, October, November and December. */
const perWeek: Readonly<Record<string, string>> = { "09": "4.5", "10": "2.5", "11": "1", "12": "0.5" };
const day = (number: number): string => new Date(Date.UTC(2031, 8, 1 + number)).toISOString().slice(0, 10);
/** Ohio State University Extension, 2023: 2 % in the 31 days from 15 October, then 11 % in the 30 to 15 December. */
const keptOf = (number: number): Fraction => {
  const since = number - 44;
  if (since <= 0) return one;
  const first = read("0.02");
  if (since <= 31) return minus(one, times(first, fraction(BigInt(since), 31n)));
  const second = minus(one, times(read("0.11"), fraction(BigInt(since - 31), 30n)));
  return times(read("0.98"), second);
};

it("is what exact fractions give", { timeout: 900_000 }, () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 80 }),
      fc.integer({ min: 120, max: 400 }),
      fc.integer({ min: 1, max: 100 }),
      fc.integer({ min: 0, max: 12 }),
      fc.constantFrom("wet" as const, "dry" as const),
      (from, tenths, percent, cents, countedOn) => {
        const [moisture, ofOperator, charge] = [
          String(tenths / 10),
          new Decimal(String(percent)).div("100"),
          new Decimal(String(cents)).div("100"),
        ];
        const answer = drydown({
          from: day(from),
          until: "2031-12-15",
          lastSafe: "2031-12-15",
          moisture: points(moisture),
          standard: points("15.5"),
          rate: drydownTables[0]!,
          yield: yieldPerArea("187.3"),
          price: moneyPerUnit("4.35"),
          moving: moneyPerUnit("0.22"),
          share: share(ofOperator),
          chargePerPoint: moneyPerUnit(charge),
          countedOn,
          countsLoss: true,
        });
        if (typeof answer === "string") throw new Error(answer);
        expect(answer.days).toHaveLength(105 - from + 1);
        for (const [index, of] of answer.days.entries()) {
          const gone = total(Array.from({ length: index }, (_, at) => divided(read(perWeek[day(from + at).slice(5, 7)]!), fraction(7n))));
          const start = read(moisture);
          const wet = Number(moisture) <= 15.5 ? start : larger(minus(start, gone), read("15.5"));
          const above = larger(minus(wet, read("15.5")), zero);
          const wetInDry = countedOn === "dry" || Number(moisture) <= 15.5 ? one : divided(read("84.5"), minus(fraction(100n), wet));
          const kept = divided(keptOf(from + index), keptOf(from));
          const crop = times(read("187.3"), read(ofOperator));
          const drying = times(crop, kept, above, read(charge), wetInDry);
          const lost = times(crop, minus(one, kept), read("4.13"));
          expect(agree(of.moisture, wet)).toBe(true);
          expect(agree(of.drying, drying)).toBe(true);
          expect(agree(of.lost, lost)).toBe(true);
          expect(agree(of.cost, plus(drying, lost))).toBe(true);
        }
      },
    ),
    { numRuns: 60 },
  );
});
