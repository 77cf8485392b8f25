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
import * as printed from "./changes";
import { check, checkApart, checksPage } from "./checks";
import { rangeOver } from "./printRange";
import { sources } from "./sources";

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
    const source = sources["Southeast Farm Press"];
    check(of("added returns"), beansToCorn.addedReturns, source, netChange, "added returns");
    check(of("reduced returns"), beansToCorn.reducedReturns, source, netChange, "reduced returns");
    check(of("added returns").plus(of("reduced costs")), beansToCorn.positive, source, netChange, "for the change");
    const { closingSentence: prints, positive } = beansToCorn;
    const ours = positive.replace(",", "");
    checkApart(of("added returns").plus(of("reduced costs")), { prints, ours }, source, netChange, undefined, "in the closing sentence");
    check(of("added costs").plus(of("reduced returns")), beansToCorn.negative, source, netChange, "against the change");
    check(result.net.perYear, beansToCorn.net, source, netChange, "net");
    check(result.net.perArea, beansToCorn.netPerAcre, source, netChange, "net an acre");
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
    check(result.quadrants["added costs"].perYear, treatment.total, sources["ISRN Agronomy 2012"], netChange, "cost");
    check(result.net.perYear, treatment.net, sources["ISRN Agronomy 2012"], netChange, "net");
  });
  it("return 213.4 % on what A costs beyond B", () => {
    const [a, b] = printed.kenya.treatments;
    const step = of(a)
      .net.perYear!.minus(of(b).net.perYear!)
      .div(of(a).quadrants["added costs"].perYear!.minus(of(b).quadrants["added costs"].perYear!));
    check(step.times("100"), printed.kenya.marginalReturnOfAOverB, sources["ISRN Agronomy 2012, worked out"], netChange);
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
    const source = sources["attachment at 5,000"];
    check(value(breakEven(change(attachment.acres, lines(null)), { of: "area" })), attachment.breakEvenAcres, source, breakEven, "acres");
    check(payback(change(attachment.acres, lines("10")))!.simple, attachment.paybackYears, source, payback, "years");
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
    const source = sources["attachment on 800 acres"];
    check(result.quadrants["added costs"].perArea, own.costPerAcre, source, netChange, "cost");
    check(result.net.perArea, own.net, source, netChange, "net");
    check(value(breakEven(whole, { of: "area" })), own.breakEvenArea, source, breakEven, "area");
    check(value(breakEven(whole, { of: "quantity", line: gain })), own.breakEvenGain, source, breakEven, "gain");
  });
});

describe("payback", () => {
  const { courseProblem, combine } = printed;
  it("of the course problem is 2.6 years, and its present value −923.15", () => {
    const flows = Array.from({ length: courseProblem.years }, () => money(courseProblem.inflow));
    const simple = yearsToRepay(new Decimal(courseProblem.outlay), new Decimal(courseProblem.inflow), yearlyRate("0"));
    check(simple, courseProblem.payback, sources["accounting problem"], yearsToRepay, "payback");
    const { netPresentValue: ours, printedPresentValue: prints } = courseProblem;
    const present = netPresentValue(money(courseProblem.outlay), flows, yearlyRate(courseProblem.rate));
    const byFactor = (factor: Decimal) => new Decimal(courseProblem.inflow).times(factor).minus(courseProblem.outlay);
    const range = rangeOver([courseProblem.factor], byFactor);
    checkApart(present, { prints, ours }, sources["accounting problem"], netPresentValue, range, "net present value");
    const worked = sources["accounting problem, worked out"];
    check(byFactor(new Decimal(courseProblem.factor)), courseProblem.withFactor, worked, "inflow × factor − outlay", "by the factor");
  });
  it("of the combine is 3.1 years with interest", () => {
    const flows = combine.flows.map((flow) => money(flow));
    const rate = yearlyRate(combine.rate);
    const source = sources["textbook combine"];
    flows.forEach((flow, index) => {
      const year = String(index + 1);
      check(presentValue(flow, years(year), rate), combine.present[index]!, source, presentValue, `year ${year}`);
    });
    check(paybackOfFlows(money(combine.outlay), flows, rate), combine.payback, source, paybackOfFlows, "payback");
    check(netPresentValue(money(combine.outlay), flows, rate), combine.netPresentValue, source, netPresentValue, "net present value");
    expect(paybackOfFlows(money("900000"), flows, rate)).toBeNull();
  });
  it.each(printed.levelPaybacks)(
    "of $outlay at $yearly a year is $simple, $straightLine with interest",
    ({ outlay: out, yearly, rate, simple, straightLine, closedForm }) => {
      const source = sources["textbook paybacks"];
      check(yearsToRepay(new Decimal(out), new Decimal(yearly), yearlyRate("0")), simple, source, yearsToRepay, "simple");
      const flows = Array.from({ length: 12 }, () => money(yearly));
      check(paybackOfFlows(money(out), flows, yearlyRate(rate)), straightLine, source, paybackOfFlows, "by a straight line");
      // The closed form is a little sooner than the straight line, in the same year.
      const closed = yearsToRepay(new Decimal(out), new Decimal(yearly), yearlyRate(rate))!;
      checkApart(closed, { prints: straightLine, ours: closedForm }, source, yearsToRepay, undefined, "in closed form");
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
    const source = sources["closing wheels on 12 rows"];
    check(result.quadrants["added costs"].perYear, own.perYear, source, closingWheels, "a year");
    check(result.quadrants["added costs"].perArea, own.perAcre, source, closingWheels, "an acre");
    check(value(breakEven(proposed.change, proposed.lead)), own.breakEvenGain, source, breakEven, "gain needed");
  });
  it.each(own.nets)("net at a gain of %s bushels %s an acre", (gain, net) => {
    const changed = netChange(withEntries(proposed.change, [{ entry: proposed.lead, value: new Decimal(gain) }]));
    check(changed.net.perArea, net, sources["closing wheels on 12 rows"], netChange);
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
    const source = sources["Messenger-Inquirer 2020"];
    const worked = sources["Messenger-Inquirer 2020, worked out"];
    check(good, row.good, worked, "ears × kernels ÷ kernels a bushel", "a good row");
    check(good.times(one.minus(row.loss)), row.bad, worked, "good × (1 − loss)", "the bad row");
    check(new Decimal(row.acres).div(row.rows), row.acresPerRow, worked, "acres ÷ rows", "acres a row");
    const lost = lossToBadRows(yieldPerArea(good), one, new Decimal(row.rows), share(row.loss));
    check(lost, row.lost, source, lossToBadRows, "lost");
    check(good.minus(lost), row.field, source, lossToBadRows, "the field");
    check(lost.times(row.price), row.money, worked, lossToBadRows, "money");
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
  const source = sources["No-Till Farmer 8919"];
  const { misprint } = printed.fungicide;
  it.each(cells.filter(({ cost, price }) => cost !== misprint.cost || price !== misprint.price))(
    "of $cost at $price needs $cell bushels",
    ({ cost, price, cell }) => check(needed(cost, price), cell, source, breakEven),
  );
  it("of 20 at 3.50 needs 5.7 bushels where 5.1 is printed", () => {
    const pair = { prints: misprint.printed, ours: cells[0]!.cell };
    checkApart(needed(misprint.cost, misprint.price)!, pair, source, breakEven);
  });
  it.each(printed.fungicide.single)("of %s at %s needs %s bushels", (cost, price, cell) =>
    check(needed(cost, price), cell, source, breakEven),
  );
  it("that adds 19 and costs 28 loses 9", () => {
    const { addedReturns, cost, net } = printed.stripTrial;
    const trial = change("1", [
      amountPerAcre("added returns", "Corn", new Decimal(addedReturns), "ac"),
      amountPerAcre("added costs", "Fungicide", new Decimal(cost), "ac"),
    ]);
    check(netChange(trial).net.perArea, net, sources["strip trial"], netChange);
  });
});

describe("drying", () => {
  const { northDakota, southDakota, propaneCouncil, illinois, purdue, shrink } = printed.drying;
  it("costs the propane of a point and a bushel", () => {
    const north = dryingPerPoint(money(northDakota.propane), propanePerBushelPoint.northDakota);
    check(north.times("100"), northDakota.centsPerPoint, sources["North Dakota drying"], dryingPerPoint, "cents a point");
    const northBushel = north.times(northDakota.points).times("100");
    check(northBushel, northDakota.centsPerBushel, sources["North Dakota drying"], dryingPerPoint, "cents a bushel");
    const south = dryingPerPoint(money(southDakota.propane), propanePerBushelPoint.southDakota);
    check(south, southDakota.perPoint, sources["South Dakota drying"], dryingPerPoint, "a point");
    check(south.times(southDakota.points), southDakota.perBushel, sources["South Dakota drying"], dryingPerPoint, "a bushel");
    const perPoint = dryingPerPoint(money(propaneCouncil.propane), propanePerBushelPoint.northDakota);
    const cost = perPoint.times(propaneCouncil.points).times(propaneCouncil.bushels);
    check(cost, propaneCouncil.cost, sources["Propane council 2019"], dryingPerPoint, "120 bushels");
  });
  it("shrinks by the water alone", () => {
    const wet = wetQuantity(cropQuantity(illinois.dry), points(illinois.moisture), points(illinois.base), share(illinois.handlingLoss));
    check(wet, illinois.wet, sources["farmdoc shrink 2009"], wetQuantity, "wet bushels");
    const dry = dryQuantity(cropQuantity(purdue.wet), points(purdue.moisture), points(purdue.base));
    check(dry, purdue.dry, sources["Purdue shrink"], dryQuantity, "dry bushels");
    for (const [base, perPoint] of shrink)
      check(shrinkPerPoint(points(base)), perPoint, sources["Iowa shrink factors"], shrinkPerPoint, base);
    expect(sum([dryQuantity(cropQuantity("100"), points("15"), points("15"))]).toString()).toBe("100");
  });
});

checksPage("Changes, drying and shrink");
