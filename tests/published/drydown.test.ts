import { describe, expect, it } from "vitest";
import { daysBetween } from "../../src/core/numbers/day";
import { Decimal } from "../../src/core/numbers/decimal";
import { dryQuantity } from "../../src/core/drying";
import { area, cropQuantity, moneyPerUnit, points, share, yearlyRate, yieldPerArea } from "../../src/core/numbers/units";
import { laterHarvest } from "../../src/core/partialBudget/layouts/laterHarvest";
import { netChange } from "../../src/core/partialBudget/netChange";
import { drydownTables } from "../../src/core/tables/drydownTables";
import { drydown, dryingPerUnit, keptOn, type DrydownQuestion } from "../../src/core/weather/drydown";
import { expectPrinted } from "../support/expectPrinted";
import { isListed } from "./disagreements";
import { dated, datedOff, lossesThatPay, lostByWaiting, moreDays, wetCharges } from "./drydown";

const iowa = drydownTables[0]!;
const question: DrydownQuestion = {
  from: "2031-10-01",
  moisture: points("30"),
  standard: points("15.5"),
  rate: iowa,
  lastSafe: "2031-12-10",
  until: "2031-12-10",
  yield: yieldPerArea("100"),
  price: moneyPerUnit("4"),
  moving: moneyPerUnit("0"),
  share: share("1"),
  chargePerPoint: moneyPerUnit("0.05"),
  countedOn: "dry",
  countsLoss: false,
};
const moistureOn = (from: string, moisture: string, to: string): Decimal => {
  const answer = drydown({ ...question, from: `2031-${from}`, moisture: points(moisture) });
  if (typeof answer === "string") throw new Error(answer);
  return answer.days.find(({ date }) => date === `2031-${to}`)!.moisture;
};

describe("published drying in the field", () => {
  it.each(dated)("is $prints % on $to, from $moisture on $from ($source)", ({ from, moisture, to, prints }) => {
    expectPrinted(moistureOn(from, moisture, to), prints);
  });

  it.each(datedOff)("parts from $prints % on $to, where we get $ours, and is listed", ({ source, from, moisture, to, prints, ours }) => {
    expectPrinted(moistureOn(from, moisture, to), ours);
    expect(isListed(source, prints, ours)).toBe(true);
  });

  it.each(moreDays)("takes $prints days more for $points points ($source)", ({ points: wetter, perDay, prints }) => {
    const dryOn = (moisture: Decimal) => {
      const answer = drydown({ ...question, moisture: points(moisture), rate: { perDay: new Decimal(perDay) } });
      return typeof answer === "string" ? null : answer.dry;
    };
    expectPrinted(daysBetween(dryOn(new Decimal("20"))!, dryOn(new Decimal("20").plus(wetter))!), prints);
  });

  it.each(lostByWaiting.steps)("loses $prints % from $from to $to by waiting", ({ from, to, prints }) => {
    expectPrinted(new Decimal("1").minus(keptOn(`2031-${to}`).div(keptOn(`2031-${from}`))).times("100"), prints);
  });
});

describe("the published dryer", () => {
  it.each(wetCharges)("takes $prints for $wetBushels wet bushels ($source)", ({ wetBushels, moisture, standard, perPoint, prints }) => {
    const dry = dryQuantity(cropQuantity(wetBushels), points(moisture), points(standard));
    expectPrinted(dry.times(dryingPerUnit(points(moisture), points(standard), moneyPerUnit(perPoint), "wet")), prints);
  });

  it.each(lossesThatPay)("is worth a loss of $prints % in the field ($source)", ({ perPoint, points: spared, price, prints }) => {
    const net = (lost: string) =>
      netChange(
        laterHarvest({
          area: area("1"),
          areaUnit: "ac",
          yieldUnit: "bu",
          rate: yearlyRate("0"),
          grain: { price: moneyPerUnit(price), moving: moneyPerUnit("0"), share: share("1") },
          yieldNow: yieldPerArea("100"),
          now: points(new Decimal("15.5").plus(spared)),
          later: points("15.5"),
          standard: points("15.5"),
          chargePerPoint: moneyPerUnit(perPoint),
          countedOn: "dry",
          lost: share(lost),
        }).change,
      ).net.perArea!;
    // The net falls in a straight line with the loss: where it is nothing follows from two of its points.
    const [none, all] = [net("0"), net("1")];
    expectPrinted(none.div(none.minus(all)).times("100"), prints);
  });
});
