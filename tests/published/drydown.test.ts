import { describe, it } from "vitest";
import { daysBetween } from "../../src/core/numbers/day";
import { Decimal } from "../../src/core/numbers/decimal";
import { dryQuantity } from "../../src/core/drying";
import { area, cropQuantity, moneyPerUnit, points, share, yearlyRate, yieldPerArea } from "../../src/core/numbers/units";
import { laterHarvest } from "../../src/core/partialBudget/layouts/laterHarvest";
import { netChange } from "../../src/core/partialBudget/netChange";
import { drydownTables } from "../../src/core/tables/drydownTables";
import { drydown, dryingPerUnit, keptOn, type DrydownQuestion } from "../../src/core/weather/drydown";
import { check, checkApart, checksPage } from "./checks";
import { dated, datedOff, lossesThatPay, lostByWaiting, moreDays, wetCharges } from "./drydown";
import { sourceSaid } from "./sources";

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
  it.each(dated)("is $prints % on $to, from $moisture on $from ($source)", ({ source, from, moisture, to, prints }) => {
    check(moistureOn(from, moisture, to), prints, sourceSaid(source), drydown, {
      name: `moisture on ${to}, from ${moisture} % on ${from}`,
    });
  });

  it.each(datedOff)("parts from $prints % on $to, where we get $ours, and is listed", ({ source, from, moisture, to, prints, ours }) => {
    const name = `moisture on ${to}, from ${moisture} % on ${from}`;
    checkApart(moistureOn(from, moisture, to), { prints, ours }, sourceSaid(source), drydown, undefined, { name });
  });

  it.each(moreDays)("takes $prints days more for $points points ($source)", ({ source, points: wetter, perDay, prints }) => {
    const dryOn = (moisture: Decimal) => {
      const answer = drydown({ ...question, moisture: points(moisture), rate: { perDay: new Decimal(perDay) } });
      return typeof answer === "string" ? null : answer.dry;
    };
    const more = daysBetween(dryOn(new Decimal("20"))!, dryOn(new Decimal("20").plus(wetter))!);
    check(more, prints, sourceSaid(source), drydown, { name: `days more for ${wetter} points` });
  });

  it.each(lostByWaiting.steps)("loses $prints % from $from to $to by waiting", ({ from, to, prints }) => {
    const lost = new Decimal("1").minus(keptOn(`2031-${to}`).div(keptOn(`2031-${from}`))).times("100");
    check(lost, prints, sourceSaid(lostByWaiting.source), keptOn);
  });
});

describe("the published dryer", () => {
  it.each(wetCharges)(
    "takes $prints for $wetBushels wet bushels ($source)",
    ({ source, wetBushels, moisture, standard, perPoint, prints }) => {
      const dry = dryQuantity(cropQuantity(wetBushels), points(moisture), points(standard));
      const charge = dry.times(dryingPerUnit(points(moisture), points(standard), moneyPerUnit(perPoint), "wet"));
      check(charge, prints, sourceSaid(source), dryingPerUnit, { name: `drying of ${wetBushels} wet bushels` });
    },
  );

  it.each(lossesThatPay)("is worth a loss of $prints % in the field ($source)", ({ source, perPoint, points: spared, price, prints }) => {
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
    const pays = none.div(none.minus(all)).times("100");
    check(pays, prints, sourceSaid(source), laterHarvest, { name: `loss that pays at ${price}` });
  });
});

checksPage("Drying in the field");
