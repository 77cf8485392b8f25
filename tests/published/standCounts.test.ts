import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import {
  impliedUnitPrice,
  prairieSeedWeight,
  prairieSeedWeightExact,
  seedCost,
  seedSpacing,
  seedWeight,
  seedingRate,
  seedsForOneUnitOfCrop,
} from "../../src/core/stand/seeding";
import {
  plantsPerHoopPlant,
  plantsPerRowLength,
  plantsPerSquare,
  rowLengthOfThousandth,
  standAt,
  type StandCount,
} from "../../src/core/stand/standCount";
import { standSummary } from "../../src/core/stand/standSummary";
import { lossToSkips } from "../../src/core/tables/uniformityFindings";
import { area, money, moneyPerArea, plantsPerArea, seedsPerArea, share } from "../../src/core/numbers/units";
import { check, checkApart, checksPage } from "./checks";
import { rangeOver } from "./printRange";
import { sources } from "./sources";
import * as printed from "./standCounts";

const count = (place: Record<string, string>, plants: string): StandCount => ({
  field: "East",
  date: "2031-05-20",
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: null,
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
  place: Object.fromEntries(Object.entries(place).map(([key, value]) => [key, new Decimal(value)])) as unknown as StandCount["place"],
});
const inches = (feet: Decimal) => feet.times("12");
const feetAndInches = (feet: Decimal) => `${feet.floor()} ft ${inches(feet.minus(feet.floor())).toFixed(1)} in`;

describe("the row length of a thousandth of an acre", () => {
  it.each(printed.rowLengths)("is $feet ft $inches in for rows of $width in", ({ source, width, feet, inches: more }) => {
    const whole = new Decimal(feet).times("12").plus(more).toString();
    check(inches(rowLengthOfThousandth(new Decimal(width), "ac")), whole, source, rowLengthOfThousandth, "in inches");
  });
  it.each(printed.rowLengthsOff)(
    "is $ours for rows of $width in, where $printed is printed",
    ({ source, width, ours, printedInches: prints, inches: exact }) => {
      const length = rowLengthOfThousandth(new Decimal(width), "ac");
      expect(feetAndInches(length)).toBe(ours);
      checkApart(inches(length), { prints, ours: exact }, source, rowLengthOfThousandth, undefined, "in inches");
    },
  );
  it.each(printed.virginia)("has at rows of %s in and one plant a foot %s thousand plants an acre", (width, thousands) => {
    check(standAt(count({ rowWidth: width, length: "1" }, "1"), "ac").div("1000"), thousands, sources["Virginia soybean stand"], standAt);
  });
});

describe("plants per acre", () => {
  it.each(printed.hoops)("from a hoop of %s in are %s a plant", (diameter, perPlant) => {
    check(plantsPerHoopPlant(new Decimal(diameter), "ac"), perPlant, sources["list of hoop factors"], plantsPerHoopPlant);
  });
  it.each(printed.hoopsOff)(
    "from a hoop of $diameter in are $ours a plant, where $printed is printed",
    ({ diameter, ours, printed: prints }) => {
      checkApart(plantsPerHoopPlant(new Decimal(diameter), "ac"), { prints, ours }, sources["list of hoop factors"], plantsPerHoopPlant);
    },
  );
  it("from a hoop of 28 1/4 in are ten thousand a plant", () => {
    const perPlant = plantsPerHoopPlant(new Decimal(printed.hoopOfTenThousand), "ac").div("1000");
    check(perPlant, "10", sources["28 1/4 in hoop"], plantsPerHoopPlant);
  });
  it("from 150 plants in 94 ft are 27,804", () => {
    const { rowWidth, length, plants } = printed.counts.wheel;
    check(standAt(count({ rowWidth, length }, plants), "ac"), printed.counts.wheel.printed, sources["wheel method"], standAt);
  });
  it("from 16 plants in a hoop of 30 in are 142 thousand", () => {
    const { diameter, plants, printedThousands } = printed.counts.hoop;
    const thousands = standAt(count({ hoopDiameter: diameter }, plants), "ac").div("1000");
    check(thousands, printedThousands, sources["Farm Progress 2023"], standAt);
  });
  it("from 12 plants in a hoop of 30 in are 106,488, where 107,000 is printed", () => {
    const { diameter, plants, ours, printed: prints } = printed.counts.hoopOff;
    checkApart(standAt(count({ hoopDiameter: diameter }, plants), "ac"), { prints, ours }, sources["Farm Progress soybeans"], standAt);
  });
  it.each([printed.counts.ohio, printed.counts.penn])(
    "from $plants plants in $length ft of $rowWidth-inch row are $printed",
    ({ source, rowWidth, length, plants, printed: perAcre }) => {
      check(standAt(count({ rowWidth, length }, plants), "ac"), perAcre, source, standAt);
    },
  );
  it("are 23 a square foot from 40 plants in 3 ft of wheat", () => {
    const { rowWidth, length, plants, printedPerSquareFoot } = printed.counts.wheat;
    const perSquare = plantsPerSquare(standAt(count({ rowWidth, length }, plants), "ac"), "ac");
    check(perSquare, printedPerSquareFoot, sources["Penn State wheat"], plantsPerSquare);
  });
});

describe("five counts", () => {
  it("have a mean, a deviation, a coefficient of variation and an interval", () => {
    // A row of 30 in and 17.424 ft is a thousandth of an acre, so the plants are the thousands.
    const counts = printed.interval.thousands.map((plants) => count({ rowWidth: "30", length: "17.424" }, plants));
    const summary = standSummary(counts, area("20"), "ac")!;
    const { mean, deviation, variationPercent, halfWidth } = printed.interval;
    const held = (figure: string, actual: Decimal, of: string) => check(actual, of, sources["five counts"], standSummary, figure);
    held("mean", summary.mean.div("1000"), mean);
    held("deviation", summary.standardDeviation!.div("1000"), deviation);
    held("variation", summary.coefficientOfVariation!.times("100"), variationPercent);
    held("above the mean", summary.interval!.high.minus(summary.mean).div("1000"), halfWidth);
    held("below the mean", summary.mean.minus(summary.interval!.low).div("1000"), halfWidth);
  });
});

describe("seeding", () => {
  it.each(printed.spacings)("at rows of %s in and %s seeds drops one every %s in", (width, rate, spacing) => {
    check(seedSpacing(seedsPerArea(rate), new Decimal(width), "ac"), spacing, sources["Purdue spacing 2015"], seedSpacing);
  });
  const wheat = printed.kentucky.rows.flatMap(([seeds, ...pounds]) =>
    pounds.flatMap((cell, index) => (cell === null ? [] : [{ seeds, per: printed.kentucky.perSquareFoot[index]!, cell }])),
  );
  it.each(wheat)("takes $cell lb of $seeds seeds a pound for $per a square foot", ({ seeds, per, cell }) => {
    const pounds = seedWeight(seedsPerArea(new Decimal(per).times("43560")), new Decimal(seeds));
    check(pounds, cell, sources["Kentucky wheat"], seedWeight);
  });
  it("takes 152 lb where Kentucky prints 150", () => {
    const { seedsPerPound, perSquareFoot, ours, printed: prints } = printed.kentucky.off;
    const pounds = seedWeight(seedsPerArea(new Decimal(perSquareFoot).times("43560")), new Decimal(seedsPerPound));
    checkApart(pounds, { prints, ours }, sources["Kentucky wheat"], seedWeight);
  });
  it.each(printed.kentucky.rowFeet)(
    "in rows of %s in has %s in of row a square foot and %s and %s seeds a row foot",
    (width, length, at35, at30) => {
      check(new Decimal("144").div(width), length, sources["Kentucky wheat"], "144 ÷ row width", "inches of row");
      const perFoot = (per: string) => plantsPerRowLength(plantsPerArea(new Decimal(per).times("43560")), new Decimal(width), "ac");
      check(perFoot("35"), at35, sources["Kentucky wheat"], plantsPerRowLength, "at 35");
      if (at30 !== null) check(perFoot("30"), at30, sources["Kentucky wheat"], plantsPerRowLength, "at 30");
    },
  );
  it("takes 109 lb of small grain where North Dakota prints 110", () => {
    const { target, germination, survival, seedsPerPound, ours, printed: prints } = printed.northDakota;
    const pounds = seedWeight(seedingRate(plantsPerArea(target), share(germination), share(survival)), new Decimal(seedsPerPound));
    checkApart(pounds, { prints, ours }, sources["North Dakota seeding"], seedWeight);
  });
  it("by the Prairie rule is 4.1 % high", () => {
    const { plants, weight, perHundred, exact } = printed.flax;
    const rule = prairieSeedWeight(new Decimal(plants), new Decimal(weight), share(perHundred));
    // The example rounds 42.6 up to 43.
    check(rule, "43", sources["Crop Chatter flax"], prairieSeedWeight, "by the rule");
    const without = prairieSeedWeightExact(new Decimal(plants), new Decimal(weight), share(perHundred));
    checkApart(without, exact, sources["Crop Chatter flax"], prairieSeedWeightExact, undefined, "exact");
    check(rule.div(without).minus("1").times("100"), "4.1", sources["flax, worked out"], prairieSeedWeightExact, "percent high");
    const wheatRule = printed.winterWheat;
    const ofWheat = prairieSeedWeight(new Decimal(wheatRule.plants), new Decimal(wheatRule.weight), share(wheatRule.survival));
    check(ofWheat, wheatRule.rule, sources["growwinterwheat.ca"], prairieSeedWeight, "wheat");
  });
  it("costs what the bags cost", () => {
    const { michigan2025, michigan2011, illinois, manitoba, soybeanRate, unitFromAcre } = printed.seedMoney;
    const cost = (of: { unitPrice: string; rate: string; perUnit: string }) =>
      seedCost(money(of.unitPrice), seedsPerArea(of.rate), new Decimal(of.perUnit));
    check(cost(michigan2025), michigan2025.perAcre, sources["Michigan State 2025"], seedCost, "34,000 seeds");
    check(cost(michigan2011), michigan2011.perAcre, sources["Michigan State 2011"], seedCost, "2,000 seeds");
    const { printedBushels: prints, exactBushels: exact, cropPrice } = michigan2011;
    const range = rangeOver([michigan2011.perAcre, cropPrice], (perAcre, price) => perAcre.div(price));
    checkApart(cost(michigan2011).div(cropPrice), { prints, ours: exact }, sources["Michigan State 2011"], seedCost, range, "in bushels");
    check(cost({ ...illinois, rate: "1000" }), illinois.perThousand, sources["Illinois seed"], seedCost, "a thousand");
    const seeds = seedsForOneUnitOfCrop(money(illinois.cropPrice), money(illinois.unitPrice), new Decimal(illinois.perUnit));
    check(seeds, illinois.seeds, sources["Illinois seed"], seedsForOneUnitOfCrop, "for a bushel");
    for (const [each, source] of [
      [manitoba, sources["Manitoba Pulse 2021"]],
      [unitFromAcre, sources["unit from acre"]],
    ] as const) {
      const unitPrice = impliedUnitPrice(moneyPerArea(each.cost), seedsPerArea(each.rate), new Decimal(each.perUnit));
      check(unitPrice, each.unitPrice, source, impliedUnitPrice, "price of a unit");
    }
    const rate = seedingRate(plantsPerArea(soybeanRate.target), share(soybeanRate.germination), share(soybeanRate.survival));
    check(rate.div("1000"), soybeanRate.thousands, sources["seeding rule"], seedingRate, "seeding rate");
  });
});

describe("skips", () => {
  it("of a tenth cost 16 bu of 200, as the neighbours make up a part", () => {
    const { yield: whole, skipped, printed: bushels } = printed.skips;
    check(lossToSkips(new Decimal(whole), new Decimal(skipped)), bushels, sources["North Dakota skips 2016"], lossToSkips);
  });
});

checksPage("Stand counts and seed");
