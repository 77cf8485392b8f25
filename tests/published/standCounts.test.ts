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
import { expectPrinted } from "../support/expectPrinted";
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
  it.each(printed.rowLengths)("is $feet ft $inches in for rows of $width in ($source)", ({ width, feet, inches: more }) => {
    expectPrinted(inches(rowLengthOfThousandth(new Decimal(width), "ac")), new Decimal(feet).times("12").plus(more).toString());
  });
  it.each(printed.rowLengthsOff)("is $ours for rows of $width in, where $printed is printed", ({ width, ours }) => {
    expect(feetAndInches(rowLengthOfThousandth(new Decimal(width), "ac"))).toBe(ours);
  });
  it.each(printed.virginia)("has at rows of %s in and one plant a foot %s thousand plants an acre", (width, thousands) => {
    expectPrinted(standAt(count({ rowWidth: width, length: "1" }, "1"), "ac").div("1000"), thousands);
  });
});

describe("plants per acre", () => {
  it.each(printed.hoops)("from a hoop of %s in are %s a plant", (diameter, perPlant) => {
    expectPrinted(plantsPerHoopPlant(new Decimal(diameter), "ac"), perPlant);
  });
  it.each(printed.hoopsOff)("from a hoop of $diameter in are $ours a plant, where $printed is printed", ({ diameter, ours }) => {
    expectPrinted(plantsPerHoopPlant(new Decimal(diameter), "ac"), ours);
  });
  it("from a hoop of 28 1/4 in are ten thousand a plant", () => {
    expectPrinted(plantsPerHoopPlant(new Decimal(printed.hoopOfTenThousand), "ac").div("1000"), "10");
  });
  it("from 150 plants in 94 ft are 27,804", () => {
    const { rowWidth, length, plants } = printed.counts.wheel;
    expectPrinted(standAt(count({ rowWidth, length }, plants), "ac"), printed.counts.wheel.printed);
  });
  it("from 16 plants in a hoop of 30 in are 142 thousand", () => {
    const { diameter, plants, printedThousands } = printed.counts.hoop;
    expectPrinted(standAt(count({ hoopDiameter: diameter }, plants), "ac").div("1000"), printedThousands);
  });
  it("from 12 plants in a hoop of 30 in are 106,488, where 107,000 is printed", () => {
    const { diameter, plants, ours } = printed.counts.hoopOff;
    expectPrinted(standAt(count({ hoopDiameter: diameter }, plants), "ac"), ours);
  });
  it.each([printed.counts.ohio, printed.counts.penn])(
    "from $plants plants in $length ft of $rowWidth-inch row are $printed",
    ({ rowWidth, length, plants, printed: perAcre }) => {
      expectPrinted(standAt(count({ rowWidth, length }, plants), "ac"), perAcre);
    },
  );
  it("are 23 a square foot from 40 plants in 3 ft of wheat", () => {
    const { rowWidth, length, plants, printedPerSquareFoot } = printed.counts.wheat;
    expectPrinted(plantsPerSquare(standAt(count({ rowWidth, length }, plants), "ac"), "ac"), printedPerSquareFoot);
  });
});

describe("five counts", () => {
  it("have a mean, a deviation, a coefficient of variation and an interval", () => {
    // A row of 30 in and 17.424 ft is a thousandth of an acre, so the plants are the thousands.
    const counts = printed.interval.thousands.map((plants) => count({ rowWidth: "30", length: "17.424" }, plants));
    const summary = standSummary(counts, area("20"), "ac")!;
    expectPrinted(summary.mean.div("1000"), printed.interval.mean);
    expectPrinted(summary.standardDeviation!.div("1000"), printed.interval.deviation);
    expectPrinted(summary.coefficientOfVariation!.times("100"), printed.interval.variationPercent);
    expectPrinted(summary.interval!.high.minus(summary.mean).div("1000"), printed.interval.halfWidth);
    expectPrinted(summary.mean.minus(summary.interval!.low).div("1000"), printed.interval.halfWidth);
  });
});

describe("seeding", () => {
  it.each(printed.spacings)("at rows of %s in and %s seeds drops one every %s in", (width, rate, spacing) => {
    expectPrinted(seedSpacing(seedsPerArea(rate), new Decimal(width), "ac"), spacing);
  });
  const wheat = printed.kentucky.rows.flatMap(([seeds, ...pounds]) =>
    pounds.flatMap((cell, index) => (cell === null ? [] : [{ seeds, per: printed.kentucky.perSquareFoot[index]!, cell }])),
  );
  it.each(wheat)("takes $cell lb of $seeds seeds a pound for $per a square foot", ({ seeds, per, cell }) => {
    expectPrinted(seedWeight(seedsPerArea(new Decimal(per).times("43560")), new Decimal(seeds)), cell);
  });
  it("takes 152 lb where Kentucky prints 150", () => {
    const { seedsPerPound, perSquareFoot, ours } = printed.kentucky.off;
    expectPrinted(seedWeight(seedsPerArea(new Decimal(perSquareFoot).times("43560")), new Decimal(seedsPerPound)), ours);
  });
  it.each(printed.kentucky.rowFeet)(
    "in rows of %s in has %s in of row a square foot and %s and %s seeds a row foot",
    (width, length, at35, at30) => {
      expectPrinted(new Decimal("144").div(width), length);
      const perFoot = (per: string) => plantsPerRowLength(plantsPerArea(new Decimal(per).times("43560")), new Decimal(width), "ac");
      expectPrinted(perFoot("35"), at35);
      if (at30 !== null) expectPrinted(perFoot("30"), at30);
    },
  );
  it("takes 109 lb of small grain where North Dakota prints 110", () => {
    const { target, germination, survival, seedsPerPound, ours } = printed.northDakota;
    expectPrinted(seedWeight(seedingRate(plantsPerArea(target), share(germination), share(survival)), new Decimal(seedsPerPound)), ours);
  });
  it("by the Prairie rule is 4.1 % high", () => {
    const { plants, weight, perHundred, exact } = printed.flax;
    const rule = prairieSeedWeight(new Decimal(plants), new Decimal(weight), share(perHundred));
    // The example rounds 42.6 up to 43.
    expectPrinted(rule, "43");
    const without = prairieSeedWeightExact(new Decimal(plants), new Decimal(weight), share(perHundred));
    expectPrinted(without, exact);
    expectPrinted(rule.div(without).minus("1").times("100"), "4.1");
    const wheatRule = printed.winterWheat;
    expectPrinted(
      prairieSeedWeight(new Decimal(wheatRule.plants), new Decimal(wheatRule.weight), share(wheatRule.survival)),
      wheatRule.rule,
    );
  });
  it("costs what the bags cost", () => {
    const { michigan2025, michigan2011, illinois, manitoba, soybeanRate, unitFromAcre } = printed.seedMoney;
    const cost = (of: { unitPrice: string; rate: string; perUnit: string }) =>
      seedCost(money(of.unitPrice), seedsPerArea(of.rate), new Decimal(of.perUnit));
    expectPrinted(cost(michigan2025), michigan2025.perAcre);
    expectPrinted(cost(michigan2011), michigan2011.perAcre);
    expectPrinted(cost(michigan2011).div(michigan2011.cropPrice), michigan2011.exactBushels);
    expectPrinted(cost({ ...illinois, rate: "1000" }), illinois.perThousand);
    expectPrinted(
      seedsForOneUnitOfCrop(money(illinois.cropPrice), money(illinois.unitPrice), new Decimal(illinois.perUnit)),
      illinois.seeds,
    );
    for (const each of [manitoba, unitFromAcre])
      expectPrinted(impliedUnitPrice(moneyPerArea(each.cost), seedsPerArea(each.rate), new Decimal(each.perUnit)), each.unitPrice);
    expectPrinted(
      seedingRate(plantsPerArea(soybeanRate.target), share(soybeanRate.germination), share(soybeanRate.survival)).div("1000"),
      soybeanRate.thousands,
    );
  });
});

describe("skips", () => {
  it("of a tenth cost 16 bu of 200, as the neighbours make up a part", () => {
    const { yield: whole, skipped, printed: bushels } = printed.skips;
    expectPrinted(lossToSkips(new Decimal(whole), new Decimal(skipped)), bushels);
  });
});
