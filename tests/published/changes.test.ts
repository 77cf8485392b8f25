import { describe, expect, it } from "vitest";
import { Decimal, one, sum } from "../../src/core/numbers/decimal";
import { dryQuantity, dryingPerPoint, propanePerBushelPoint, shrinkPerPoint, wetQuantity } from "../../src/core/drying";
import { breakEven } from "../../src/core/partialBudget/breakEvenOfChange";
import { amountPerAcre, outlay, perAcre, type Change, type ChangeLine } from "../../src/core/partialBudget/change";
import { withEntries } from "../../src/core/partialBudget/changeEntry";
import { closingWheels } from "../../src/core/partialBudget/layouts/closingWheels";
import { lossToBadRows } from "../../src/core/partialBudget/layouts/rebuildRowUnits";
import { netChange } from "../../src/core/partialBudget/netChange";
import { netPresentValue, payback, paybackOfFlows, presentValue, yearsToRepay } from "../../src/core/partialBudget/payback";
import {
  area,
  cropQuantity,
  money,
  moneyPerHour,
  moneyPerUnit,
  points,
  share,
  yearlyRate,
  yieldPerArea,
  years,
} from "../../src/core/numbers/units";
import { expectPrinted } from "../support/expectPrinted";
import * as printed from "./changes";

const change = (acres: string, lines: readonly ChangeLine[], rate = "0"): Change => ({
  name: "Change",
  area: area(acres),
  rate: yearlyRate(rate),
  lines,
});
const crop = (quadrant: ChangeLine["quadrant"], item: string, [quantity, price]: readonly [string, string]) =>
  perAcre(quadrant, { item, unit: "per ac", quantity: new Decimal(quantity), price: money(price) });
const grain = (price: string) => ({ price: moneyPerUnit(price), moving: moneyPerUnit("0"), share: share("1") });
const value = (result: ReturnType<typeof breakEven>) => (result.found ? result.value : null);

describe("from dry beans to corn", () => {
  const { beansToCorn } = printed;
  const result = netChange(
    change(beansToCorn.area, [
      crop("added returns", "Corn", beansToCorn.corn),
      amountPerAcre("reduced costs", "Costs of beans", new Decimal(beansToCorn.reducedCost), "ac"),
      amountPerAcre("added costs", "Costs of corn", new Decimal(beansToCorn.addedCost), "ac"),
      crop("reduced returns", "Beans", beansToCorn.beans),
    ]),
  );
  const of = (quadrant: ChangeLine["quadrant"]) => result.quadrants[quadrant].perYear!;

  it("has its four quadrants and its net change", () => {
    expectPrinted(of("added returns"), beansToCorn.addedReturns);
    expectPrinted(of("reduced returns"), beansToCorn.reducedReturns);
    expectPrinted(of("added returns").plus(of("reduced costs")), beansToCorn.positive);
    expectPrinted(of("added costs").plus(of("reduced returns")), beansToCorn.negative);
    expectPrinted(result.net.perYear, beansToCorn.net);
    expectPrinted(result.net.perArea, beansToCorn.netPerAcre);
  });
});

describe("four treatments of maize in Kenya", () => {
  const of = (treatment: (typeof printed.kenya.treatments)[number]) =>
    netChange(
      change("1", [
        amountPerAcre("added returns", "Maize", new Decimal(treatment.gross), "ha"),
        ...treatment.costs.map((cost, index) => amountPerAcre("added costs", printed.kenya.lines[index]!, new Decimal(cost), "ha")),
      ]),
    );
  it.each(printed.kenya.treatments)("$name cost $total and leave $net", (treatment) => {
    const result = of(treatment);
    expectPrinted(result.quadrants["added costs"].perYear, treatment.total);
    expectPrinted(result.net.perYear, treatment.net);
  });
  it("return 213.4 % on what A costs beyond B", () => {
    const [a, b] = printed.kenya.treatments;
    const step = of(a)
      .net.perYear!.minus(of(b).net.perYear!)
      .div(of(a).quadrants["added costs"].perYear!.minus(of(b).quadrants["added costs"].perYear!));
    expectPrinted(step.times("100"), printed.kenya.marginalReturnOfAOverB);
  });
});

describe("an attachment", () => {
  it("of 5,000 is paid by 1,000 acres, in 0.833 years of 1,200", () => {
    const { attachment } = printed;
    const lines = (yearsKept: string | null) => [
      amountPerAcre("added returns", "Benefit", new Decimal(attachment.benefit), "ac"),
      {
        ...outlay("added costs", { item: "Attachment", unit: "piece", quantity: one, price: money(attachment.price) }, years("1")),
        yearsKept: yearsKept === null ? null : years(yearsKept),
      },
    ];
    expectPrinted(value(breakEven(change(attachment.acres, lines(null)), { of: "area" })), attachment.breakEvenAcres);
    expectPrinted(payback(change(attachment.acres, lines("10")))!.simple, attachment.paybackYears);
  });

  it("of 18,000 on 800 acres breaks even where the own example says", () => {
    const { ownAttachment: own } = printed;
    const gain = perAcre("added returns", { item: "Yield gain", unit: "bu/ac", quantity: new Decimal(own.gain), price: grain(own.grain) });
    const whole = change(
      own.area,
      [
        gain,
        outlay(
          "added costs",
          { item: "Attachment", unit: "piece", quantity: one, price: money(own.price) },
          years(own.years),
          money(own.salvage),
        ),
        amountPerAcre("added costs", "Repairs", new Decimal(own.repairs), "ac"),
      ],
      own.rate,
    );
    const result = netChange(whole);
    expectPrinted(result.quadrants["added costs"].perArea, own.costPerAcre);
    expectPrinted(result.net.perArea, own.net);
    expectPrinted(value(breakEven(whole, { of: "area" })), own.breakEvenArea);
    expectPrinted(value(breakEven(whole, { of: "quantity", line: gain })), own.breakEvenGain);
  });
});

describe("payback", () => {
  const { courseProblem, combine } = printed;
  it("of the course problem is 2.6 years, and its present value −923.15", () => {
    const flows = Array.from({ length: courseProblem.years }, () => money(courseProblem.inflow));
    expectPrinted(
      yearsToRepay(new Decimal(courseProblem.outlay), new Decimal(courseProblem.inflow), yearlyRate("0")),
      courseProblem.payback,
    );
    expectPrinted(netPresentValue(money(courseProblem.outlay), flows, yearlyRate(courseProblem.rate)), courseProblem.netPresentValue);
    expectPrinted(new Decimal(courseProblem.inflow).times(courseProblem.factor).minus(courseProblem.outlay), courseProblem.withFactor);
  });
  it("of the combine is 3.1 years with interest", () => {
    const flows = combine.flows.map((flow) => money(flow));
    const rate = yearlyRate(combine.rate);
    flows.forEach((flow, index) => expectPrinted(presentValue(flow, years(String(index + 1)), rate), combine.present[index]!));
    expectPrinted(paybackOfFlows(money(combine.outlay), flows, rate), combine.payback);
    expectPrinted(netPresentValue(money(combine.outlay), flows, rate), combine.netPresentValue);
    expect(paybackOfFlows(money("900000"), flows, rate)).toBeNull();
  });
  it.each(printed.levelPaybacks)(
    "of $outlay at $yearly a year is $simple, $straightLine with interest",
    ({ outlay: out, yearly, rate, simple, straightLine }) => {
      expectPrinted(yearsToRepay(new Decimal(out), new Decimal(yearly), yearlyRate("0")), simple);
      const flows = Array.from({ length: 12 }, () => money(yearly));
      expectPrinted(paybackOfFlows(money(out), flows, yearlyRate(rate)), straightLine);
      // The closed form is a little sooner than the straight line, in the same year.
      const closed = yearsToRepay(new Decimal(out), new Decimal(yearly), yearlyRate(rate))!;
      expect(closed.lt(straightLine) && closed.gt("8")).toBe(true);
    },
  );
  it("never comes where the interest takes all", () => {
    expect(yearsToRepay(new Decimal("1000"), new Decimal("80"), yearlyRate("0.08"))).toBeNull();
  });
});

describe("closing wheels on 12 rows", () => {
  const { closingWheels: own } = printed;
  const proposed = closingWheels({
    area: area(own.area),
    areaUnit: "ac",
    yieldUnit: "bu",
    grain: grain(own.grain),
    rate: yearlyRate(own.rate),
    rows: new Decimal(own.rows),
    pricePerRow: money(own.perRow),
    yearsKept: years(own.years),
    salvage: null,
    fittingHours: null,
    wage: moneyPerHour("0"),
    upkeep: null,
    yieldGain: null,
  });
  it("leave the net change open until a gain is entered, and lead with the gain needed", () => {
    const result = netChange(proposed.change);
    expect(result.net.perArea).toBeNull();
    expect(result.blank.map(({ item }) => item)).toEqual(["Yield gain"]);
    expectPrinted(result.quadrants["added costs"].perYear, own.perYear);
    expectPrinted(result.quadrants["added costs"].perArea, own.perAcre);
    expectPrinted(value(breakEven(proposed.change, proposed.lead)), own.breakEvenGain);
  });
  it.each(own.nets)("net at a gain of %s bushels %s an acre", (gain, net) => {
    expectPrinted(netChange(withEntries(proposed.change, [{ entry: proposed.lead, value: new Decimal(gain) }])).net.perArea, net);
  });
  it("show first the trials that found no difference", () => {
    expect(proposed.findings.slice(0, 2).map(({ noDifference, kind }) => [noDifference, kind])).toEqual([
      [true, "replicated"],
      [true, "replicated"],
    ]);
  });
});

describe("one bad row of 16", () => {
  it("takes 3.87 bushels and 15.08 an acre from the whole field", () => {
    const { oneBadRow: row } = printed;
    const good = new Decimal(row.ears).times(row.kernels).div(row.perBushel);
    expectPrinted(good, row.good);
    expectPrinted(good.times(one.minus(row.loss)), row.bad);
    expectPrinted(new Decimal(row.acres).div(row.rows), row.acresPerRow);
    const lost = lossToBadRows(yieldPerArea(good), one, new Decimal(row.rows), share(row.loss));
    expectPrinted(lost, row.lost);
    expectPrinted(good.minus(lost), row.field);
    expectPrinted(lost.times(row.price), row.money);
  });
});

describe("a treatment", () => {
  const needed = (cost: string, price: string) => {
    const gain = perAcre("added returns", { item: "Yield gain", unit: "bu/ac", quantity: null, price: grain(price) });
    return value(
      breakEven(change("1", [gain, amountPerAcre("added costs", "Treatment", new Decimal(cost), "ac")]), { of: "quantity", line: gain }),
    );
  };
  const cells = printed.fungicide.rows.flatMap(([cost, ...row]) =>
    row.map((cell, index) => ({ cost, price: printed.fungicide.prices[index]!, cell })),
  );
  it.each(cells)("of $cost at $price needs $cell bushels", ({ cost, price, cell }) => expectPrinted(needed(cost, price), cell));
  it.each(printed.fungicide.single)("of %s at %s needs %s bushels", (cost, price, cell) => expectPrinted(needed(cost, price), cell));
  it("that adds 19 and costs 28 loses 9", () => {
    const { addedReturns, cost, net } = printed.stripTrial;
    expectPrinted(
      netChange(
        change("1", [
          amountPerAcre("added returns", "Corn", new Decimal(addedReturns), "ac"),
          amountPerAcre("added costs", "Fungicide", new Decimal(cost), "ac"),
        ]),
      ).net.perArea,
      net,
    );
  });
});

describe("drying", () => {
  const { northDakota, southDakota, propaneCouncil, illinois, purdue, shrink } = printed.drying;
  it("costs the propane of a point and a bushel", () => {
    const north = dryingPerPoint(money(northDakota.propane), propanePerBushelPoint.northDakota);
    expectPrinted(north.times("100"), northDakota.centsPerPoint);
    expectPrinted(north.times(northDakota.points).times("100"), northDakota.centsPerBushel);
    const south = dryingPerPoint(money(southDakota.propane), propanePerBushelPoint.southDakota);
    expectPrinted(south, southDakota.perPoint);
    expectPrinted(south.times(southDakota.points), southDakota.perBushel);
    expectPrinted(
      dryingPerPoint(money(propaneCouncil.propane), propanePerBushelPoint.northDakota)
        .times(propaneCouncil.points)
        .times(propaneCouncil.bushels),
      propaneCouncil.cost,
    );
  });
  it("shrinks by the water alone", () => {
    expectPrinted(
      wetQuantity(cropQuantity(illinois.dry), points(illinois.moisture), points(illinois.base), share(illinois.handlingLoss)),
      illinois.wet,
    );
    expectPrinted(dryQuantity(cropQuantity(purdue.wet), points(purdue.moisture), points(purdue.base)), purdue.dry);
    for (const [base, perPoint] of shrink) expectPrinted(shrinkPerPoint(points(base)), perPoint);
    expect(sum([dryQuantity(cropQuantity("100"), points("15"), points("15"))]).toString()).toBe("100");
  });
});
