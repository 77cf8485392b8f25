/** Tanks, wear, weed loss and past years against exact fractions, each worked out a second time from its definition. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { cropYears } from "../../src/core/history/cropYears";
import { fieldHistory } from "../../src/core/history/provenYield";
import { Decimal } from "../../src/core/numbers/decimal";
import { moneyPerArea, moneyPerUnit, share, yieldPerArea, area } from "../../src/core/numbers/units";
import { soonFrom, wearUsed } from "../../src/core/planter/partWear";
import { stateOf } from "../../src/core/planter/planterRepair";
import { fieldWeather } from "../../src/core/weather/fieldWeather";
import type { WeatherDay } from "../../src/core/weather/record";
import { loadsOf } from "../../src/core/weeds/tankMix";
import { weedLoss, weedLosses } from "../../src/core/weeds/weedLoss";
import { past } from "../support/past";
import { field, hybrid, seasonOf } from "../support/season";
import { agree, compare, divided, floor, fraction, isZero, minus, plus, read, times, total, type Fraction } from "./fraction";
import { judge } from "./judge";

const tenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((value) => new Decimal(value).div("10"));
const faultsOf = (pairs: readonly (readonly [what: string, actual: Decimal, exact: Fraction])[]): readonly string[] =>
  pairs.flatMap(([what, actual, exact]) => (agree(actual, exact) ? [] : [`${what}: ${actual.toFixed()}`]));

it("full loads and the last one are what exact fractions give", { timeout: 900_000 }, () => {
  judge("tanks", fc.tuple(tenths(1, 9_999), tenths(20, 400), tenths(500, 20_000)), ([acres, carrier, tank]) => {
    const volume = times(read(acres), read(carrier));
    const full = floor(divided(volume, read(tank)));
    const { full: ours, last } = loadsOf(acres, carrier, tank);
    return faultsOf([
      ["full", ours, fraction(full)],
      ["last", last, minus(volume, times(fraction(full), read(tank)))],
    ]);
  });
});

it("wear and what is due are what exact fractions give, of blades that shrink and gaps that grow", { timeout: 900_000 }, () => {
  const sizes = fc.tuple(tenths(5, 400), tenths(1, 100), tenths(0, 150), fc.boolean());
  judge("planter wear", sizes, ([whenNew, allowed, gone, shrinks]) => {
    const away = (by: Decimal) => (shrinks ? whenNew.minus(by) : whenNew.plus(by));
    const part = { whenNew, replaceAt: away(allowed), measured: away(gone) };
    const exact = divided(read(gone), read(allowed));
    const state = compare(exact, fraction(1n)) >= 0n ? "due" : compare(exact, read(soonFrom)) >= 0n ? "soon" : "good";
    const told = stateOf({ ...part, finding: null, doneOn: null } as Parameters<typeof stateOf>[0]);
    return [...faultsOf([["wear", wearUsed(part), exact]]), ...(told.state === state ? [] : [`${told.state} for ${state}`])];
  });
});

it("yield lost to weeds left to grow lies on the lines between the printed heights", { timeout: 900_000 }, () => {
  judge("weed loss", fc.tuple(fc.constantFrom("thick" as const, "thin" as const), tenths(0, 600)), ([density, height]) => {
    const points = weedLosses[density];
    const ours = weedLoss(density, height);
    const above = points.findIndex((point) => compare(read(point.height), read(height)) >= 0n);
    const [upper, lower] = [points[above], points[above - 1]];
    if (upper === undefined || (lower === undefined && !upper.height.eq(height)))
      return ours === null ? [] : ["an answer beyond the print"];
    if (ours === null) return ["no answer"];
    if (lower === undefined) return faultsOf([["loss", ours, read(upper.loss)]]);
    const part = divided(minus(read(height), read(lower.height)), minus(read(upper.height), read(lower.height)));
    return faultsOf([["loss", ours, plus(read(lower.loss), times(part, minus(read(upper.loss), read(lower.loss))))]]);
  });
});

const pastYear = fc.record({
  acres: tenths(10, 3_000),
  harvested: tenths(0, 2_600),
  price: fc.integer({ min: 100, max: 900 }).map((cents) => new Decimal(cents).div("100")),
  full: tenths(1_000, 9_000),
  cash: tenths(500, 8_000),
  net: tenths(-4_000, 4_000),
  ofOperator: fc.integer({ min: 1, max: 100 }).map((percent) => new Decimal(percent).div("100")),
});

it("a crop's past year is the mean of its fields by area, and its price needed what leaves nothing", { timeout: 900_000 }, () => {
  judge("past years", fc.array(pastYear, { minLength: 1, maxLength: 6 }), (typed) => {
    const rows = typed.map(({ acres, harvested, price, full, cash, net, ofOperator }, index) => ({
      ...past("2030", `Field ${index}`, harvested.toFixed()),
      area: area(acres),
      price: moneyPerUnit(price),
      costs: { operating: null, cash: moneyPerArea(cash), full: moneyPerArea(full), cashNeed: null },
      net: moneyPerArea(net),
      operatorShare: share(ofOperator),
    }));
    const [year] = cropYears(rows);
    type Typed = (typeof typed)[number];
    const acres = total(typed.map((each) => read(each.acres)));
    const byArea = (of: (each: Typed) => Fraction) => divided(total(typed.map((each) => times(read(each.acres), of(each)))), acres);
    const grain = (each: Typed) => times(read(each.acres), read(each.harvested), read(each.ofOperator));
    const allGrain = total(typed.map(grain));
    const means = faultsOf([
      ["yield", year!.yield!, byArea((each) => read(each.harvested))],
      ["net", year!.net!, byArea((each) => read(each.net))],
      ["cash", year!.costs.cash!, byArea((each) => read(each.cash))],
    ]);
    if (isZero(allGrain)) return [...means, ...(year!.priceNeeded.full === null ? [] : ["a price needed of nothing harvested"])];
    const price = divided(total(typed.map((each) => times(grain(each), read(each.price)))), allGrain);
    const ours = divided(allGrain, acres);
    const needed = (cost: (each: Typed) => Fraction) =>
      minus(
        price,
        divided(
          plus(
            byArea((each) => read(each.net)),
            minus(
              byArea((each) => read(each.full)),
              byArea(cost),
            ),
          ),
          ours,
        ),
      );
    return [
      ...means,
      ...faultsOf([
        ["price", year!.price!, price],
        ["needed, full", year!.priceNeeded.full!, needed((each) => read(each.full))],
        ["needed, cash", year!.priceNeeded.cash!, needed((each) => read(each.cash))],
      ]),
    ];
  });
});

it("a proven yield is the mean of the last four to ten years, each counting alike", { timeout: 900_000 }, () => {
  judge("proven yields", fc.array(tenths(0, 2_600), { minLength: 1, maxLength: 14 }), (yields) => {
    const rows = yields.map((harvested, index) => ({ ...past(String(2030 - index), "Home", "0"), yield: yieldPerArea(harvested) }));
    const { proven } = fieldHistory(rows, "Home", "Corn", "2031");
    const counted = yields.slice(0, 10);
    if (counted.length < 4) return proven === null ? [] : ["proven by fewer than four"];
    return faultsOf([["proven", proven!, divided(total(counted.map(read)), fraction(BigInt(counted.length)))]]);
  });
});

it("weather told twice, at two places of the same days, changes nothing for the fields of either", () => {
  const temperatures = fc.array(fc.tuple(tenths(300, 1_000), tenths(0, 300), tenths(0, 30)), { minLength: 5, maxLength: 40 });
  fc.assert(
    fc.property(temperatures, (days) => {
      const at = (place: string | null): readonly WeatherDay[] =>
        ["2030", "2031"].flatMap((year) =>
          days.map(([low, range, rain], index) => ({
            date: new Date(Date.UTC(Number(year), 4, 1 + index)).toISOString().slice(0, 10),
            place,
            high: low.plus(range),
            low,
            rain,
            source: { table: "Weather", row: 1 },
          })),
        );
      const planted = { planted: "2031-05-01", variety: "Early" };
      const told = (weather: readonly WeatherDay[], places: readonly (string | null)[]) =>
        fieldWeather(
          seasonOf({
            weather,
            hybrids: [hybrid("Early", { heatUnits: new Decimal("400") })],
            fields: places.map((weatherPlace, index) => ({ ...field(`F${index}`, "10", "200"), ...planted, weatherPlace })),
          }),
        ).map(({ place: _place, ...rest }) => JSON.stringify(rest));
      expect(told([...at("North"), ...at("South")], ["North", "South"])).toEqual(told(at(null), [null, null]));
    }),
    { numRuns: 50 },
  );
});
