import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal } from "../numbers/decimal";
import { area, moneyPerUnit, points, share, yearlyRate, yieldPerArea } from "../numbers/units";
import { netChange } from "../partialBudget/netChange";
import { laterHarvest } from "../partialBudget/layouts/laterHarvest";
import { drydownTables } from "../tables/drydownTables";
import { drydown, dryingPerUnit, keptOn, type Drydown, type DrydownQuestion } from "./drydown";

const [iowa, ohio] = drydownTables as readonly [(typeof drydownTables)[number], (typeof drydownTables)[number]];
const question: DrydownQuestion = {
  from: "2031-09-20",
  moisture: points("30"),
  standard: points("15.5"),
  rate: iowa,
  lastSafe: "2031-11-15",
  until: "2031-11-29",
  yield: yieldPerArea("200"),
  price: moneyPerUnit("4"),
  moving: moneyPerUnit("0.5"),
  share: share("1"),
  chargePerPoint: moneyPerUnit("0.05"),
  countedOn: "dry",
  countsLoss: true,
};
const found = (more: Partial<DrydownQuestion> = {}): Drydown => {
  const answer = drydown({ ...question, ...more });
  if (typeof answer === "string") throw new Error(answer);
  return answer;
};
const on = (date: string, more: Partial<DrydownQuestion> = {}) => found(more).days.find((day) => day.date === date)!;

describe("corn that dries in the field", () => {
  it("dries by the rate of each day, September into October", () => {
    // Eleven days at 4.5 and ten at 2.5 points a week: 49.5 ÷ 7 + 25 ÷ 7 = 10.642857.
    expect(on("2031-10-11").moisture.toFixed(6)).toBe("19.357143");
  });

  it("is never drier than it is sold: nobody pays for that", () => {
    // Twenty days reach November at 15.5 and no less.
    const { days, dry } = found({ moisture: points("18") });
    expect(days.every(({ moisture }) => moisture.gte("15.5"))).toBe(true);
    expect(dry).toBe("2031-09-24");
    // A crop that is drier already stays as it is.
    expect(on("2031-10-11", { moisture: points("14") }).moisture.toString()).toBe("14");
  });

  it("shows both ends of a printed range", () => {
    // Ohio: 0.5 to 0.75 points a day in early and mid October.
    const day = on("2031-10-11", { from: "2031-10-01", rate: ohio, until: "2031-11-15" });
    expect([day.wettest, day.moisture, day.driest].map(String)).toEqual(["25", "23.75", "22.5"]);
  });

  it("is charged for the dryer by its points on what still stands, on wet units where they count", () => {
    // 14.5 points at 0.05 on 200 bu.
    expect(on("2031-09-20").drying.toString()).toBe("145");
    // A dry bushel is 84.5 ÷ 70 wet ones.
    expect(on("2031-09-20", { countedOn: "wet" }).drying.toFixed(6)).toBe("175.035714");
    expect(on("2031-09-20", { share: share("0.5") }).drying.toString()).toBe("72.5");
  });

  it("loses by waiting what eight experiments lost, and nothing before mid October", () => {
    // Ohio State University Extension, 2023: 2 % to mid November and 11 % more to mid December, 13 % in all.
    expect(["2031-10-15", "2031-11-15", "2031-12-15"].map((date) => keptOn(date).toString())).toEqual(["1", "0.98", "0.8722"]);
    expect(new Decimal("1").minus(keptOn("2031-12-15")).times("100").toFixed(0)).toBe("13");
    expect([keptOn("2031-09-01").toString(), keptOn("2031-10-30").toFixed(6)]).toEqual(["1", "0.990323"]);
    expect(on("2031-11-15").lost.toString()).toBe("14");
    expect(on("2031-11-15", { countsLoss: false }).lost.toString()).toBe("0");
    // Counting starts at the day of the question: what was lost before is no choice any more.
    expect(on("2031-11-15", { from: "2031-11-15" }).lost.toString()).toBe("0");
  });

  it("is cheapest on the safe day on which dryer and losses cost least", () => {
    const { cheapest, days } = found();
    const safe = days.filter(({ date }) => date <= "2031-11-15");
    expect(safe.every(({ cost }) => cost.gte(cheapest.cost))).toBe(true);
    expect([cheapest.date, cheapest.isSafe]).toEqual(["2031-10-22", true]);
    expect(days.filter(({ isSafe }) => !isSafe).map(({ date }) => date)[0]).toBe("2031-11-16");
    // Without losses the field dries for nothing: the first day at standard moisture.
    const free = found({ countsLoss: false });
    expect([free.cheapest.date, free.dry]).toEqual(["2031-10-22", "2031-10-22"]);
    expect(found({ lastSafe: "2031-10-01" }).cheapest.date).toBe("2031-10-01");
  });

  it("says nothing where the table or the losses say nothing", () => {
    expect([
      drydown({ ...question, from: "2031-08-28" }),
      drydown({ ...question, rate: ohio, until: "2031-12-05" }),
      drydown({ ...question, until: "2031-12-16" }),
      drydown({ ...question, lastSafe: "2031-09-19" }),
    ]).toEqual(["before the table", "after the table", "after the losses", "no safe day"]);
    // A rate of one's own knows no end.
    expect(typeof drydown({ ...question, from: "2031-08-28", rate: { perDay: new Decimal("0.7") } })).toBe("object");
  });
});

describe("a later harvest as a change", () => {
  it("nets what the picture says: the cost of the first day less that of the later one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 160, max: 340 }),
        fc.integer({ min: 1, max: 56 }),
        fc.constantFrom("wet" as const, "dry" as const),
        fc.boolean(),
        (tenths, day, countedOn, countsLoss) => {
          const moisture = points(new Decimal(String(tenths)).div("10"));
          const { days } = found({ moisture, countedOn, countsLoss, share: share("0.6"), from: "2031-10-01" });
          const [now, later] = [days[0]!, days[Math.min(day, days.length - 1)]!];
          const { change } = laterHarvest({
            area: area("80"),
            areaUnit: "ac",
            yieldUnit: "bu",
            rate: yearlyRate("0"),
            grain: { price: question.price, moving: question.moving, share: share("0.6") },
            yieldNow: question.yield,
            now: now.moisture,
            later: later.moisture,
            standard: question.standard,
            chargePerPoint: question.chargePerPoint,
            countedOn,
            lost: share(new Decimal("1").minus(later.kept)),
          });
          expect(netChange(change).net.perArea!.toFixed(20)).toBe(now.cost.minus(later.cost).toFixed(20));
        },
      ),
    );
  });

  it("counts the dryer on wet units by the wet ones in a dry one", () => {
    expect(dryingPerUnit(points("20"), points("15"), moneyPerUnit("0.048"), "wet").toFixed(6)).toBe("0.255000");
    expect(dryingPerUnit(points("14"), points("15"), moneyPerUnit("0.048"), "wet").toString()).toBe("0");
  });
});
