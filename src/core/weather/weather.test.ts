import { describe, expect, it } from "vitest";
import { field, hybrid, load, seasonOf, settings } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import type { Season } from "../season";
import { fieldWeather } from "./fieldWeather";
import { firstFrosts, frostOf } from "./frost";
import { nextDay } from "../numbers/day";
import type { WeatherDay } from "./record";
import { maturingFields } from "./maturing";
import { leafStage, ratingWhenPlanted, stageAt } from "./stage";

const day = (date: string, high: string | null, low: string | null, more: Partial<WeatherDay> = {}): WeatherDay => ({
  date,
  place: null,
  high: high === null ? null : new Decimal(high),
  low: low === null ? null : new Decimal(low),
  rain: null,
  source: { table: "Weather", row: 1 },
  ...more,
});
/** Days of one sort from one date to another. */
function days(from: string, to: string, high: string, low: string): readonly WeatherDay[] {
  const all: WeatherDay[] = [];
  for (let date = from; date <= to; date = nextDay(date)) all.push(day(date, high, low));
  return all;
}
const home = field("Home", "100", "200", { planted: "2031-05-10", variety: "Early one" });
const hybrids = [hybrid("early one", { heatUnits: new Decimal("2600") })];
const told = (weather: readonly WeatherDay[], more: Partial<Season> = {}) =>
  fieldWeather(seasonOf({ fields: [home], hybrids, weather, ...more }));

describe("the sum of a field", () => {
  it("begins on the day after planting and ends with the record, its gaps told", () => {
    const [home1] = told([
      day("2031-05-10", "80", "60"),
      day("2031-05-11", "80", "60"),
      day("2031-05-12", null, "60"),
      day("2031-05-14", "90", "70", { rain: new Decimal("0.4") }),
    ]);
    expect([home1!.from, home1!.to, home1!.days, home1!.missing, home1!.heatUnits, home1!.rain, home1!.rainMissing].map(String)).toEqual([
      "2031-05-11",
      "2031-05-14",
      "2",
      "2",
      "48",
      "0.4",
      "3",
    ]);
    expect(home1!.normal).toBeNull();
  });

  it("is held against the same days of earlier years alone, those that are missing left out of both", () => {
    const [home1] = told([
      day("2029-05-11", "70", "50"),
      day("2030-05-11", "80", "60"),
      day("2030-05-12", "86", "86"),
      day("2030-05-13", "60", "50"),
      day("2031-05-11", "80", "60"),
      day("2031-05-13", "70", "60"),
    ]);
    // (10 + 20) ÷ 2 + 5; the 12th, hot in 2030 and missing now, is in neither.
    expect([home1!.heatUnits, home1!.normal, home1!.earlierYears].map(String)).toEqual(["35", "20", "2"]);
  });

  it("takes the 28th for the 29th of February of a year that has none", () => {
    const leap = field("Home", "100", "200", { planted: "2032-02-27" });
    const [home1] = told(
      [
        day("2031-02-28", "70", "50"),
        day("2031-03-01", "80", "60"),
        ...["2032-02-28", "2032-02-29", "2032-03-01"].map((date) => day(date, "80", "60")),
      ],
      { fields: [leap], settings: { ...settings, seasonYear: "2032" } },
    );
    expect(home1!.normal!.toFixed()).toBe("40");
  });

  it("has no normal where a day of it has none", () => {
    expect(told([day("2030-05-11", "80", "60"), day("2031-05-11", "80", "60"), day("2031-05-12", "80", "60")])[0]!.normal).toBeNull();
  });

  it("ends with the last load once the harvest is done, and counts no day beyond the season", () => {
    const record = days("2031-05-11", "2031-10-20", "80", "60");
    expect(told(record, { fields: [{ ...home, harvestDone: { on: null } }], harvest: [load("Home", "900")] })[0]!.to).toBe("2031-10-10");
    expect(told([...record, day("2062-06-01", "80", "60")])[0]!.to).toBe("2031-10-20");
  });

  it("is the same at a place of its own and where one record is split over two places of equal weather", () => {
    const one = days("2031-05-11", "2031-06-20", "82", "61");
    const fields = [
      { ...home, weatherPlace: "North" },
      { ...home, name: "Hill", weatherPlace: "south" },
    ];
    const both = told([...one.map((each) => ({ ...each, place: "North" })), ...one.map((each) => ({ ...each, place: "South" }))], {
      fields,
    });
    expect(both.map(({ heatUnits }) => heatUnits.toFixed())).toEqual(Array(2).fill(told(one)[0]!.heatUnits.toFixed()));
  });

  it("is of no field without a place, or not planted", () => {
    const record = days("2031-05-11", "2031-05-20", "80", "60");
    expect(
      told(
        record.flatMap((each) => [
          { ...each, place: "A" },
          { ...each, place: "B" },
        ]),
      ),
    ).toEqual([]);
    expect(told(record, { fields: [{ ...home, planted: null }] })).toEqual([]);
  });
});

describe("projected maturity", () => {
  /** 20 a day in 2029, 25 in 2030; this year to 30 June. */
  const record = [
    ...days("2029-05-01", "2029-12-31", "80", "60"),
    ...days("2030-05-01", "2030-12-31", "86", "64"),
    ...days("2031-05-01", "2031-06-30", "80", "60"),
  ];

  it("is from the sum so far by the mean, with each earlier year as its spread", () => {
    const [home1] = told(record, { settings: { ...settings, firstFrosts: ["2029-10-01", "2030-10-11", "2028-10-05"] } });
    // Planted nine days after 1 May: 2,600 − 61.2 = 2,538.8. 51 days of 20 = 1,020. 1,518.8 left: at 22.5 a day 68 days, at 25
    // 61, at 20 76.
    expect([home1!.rating!.toFixed(), home1!.heatUnits.toFixed()]).toEqual(["2538.8", "1020"]);
    expect(home1!.maturity).toEqual({ date: "2031-09-06", early: "2031-08-30", late: "2031-09-14" });
    expect([
      home1!.frost!.earliest,
      home1!.frost!.median,
      home1!.frostMargin!.median.toFixed(),
      home1!.frostMargin!.earliest.toFixed(),
    ]).toEqual(["10-01", "10-05", "29", "25"]);
  });

  it("is the very day on which what is left comes out even, and not the next", () => {
    // Rated 2,661.2, so 2,600 when planted; 1,020 are there, and 1,580 are 79 days of 20.
    const even = hybrid("early one", { heatUnits: new Decimal("2661.2") });
    const alike = record.map((each) => (each.date.startsWith("2030") ? day(each.date, "80", "60") : each));
    expect(told(alike, { hybrids: [even] })[0]!.maturity).toEqual({ date: "2031-09-17", early: "2031-09-17", late: "2031-09-17" });
  });

  it("is the day itself once the sum is there", () => {
    const [home1] = told([...record, ...days("2031-07-01", "2031-09-20", "86", "86")]);
    // 1,518.8 at 36 a day: 43 days.
    expect(home1!.maturity).toEqual({ date: "2031-08-12", early: "2031-08-12", late: "2031-08-12" });
    expect(home1!.stage).toBe("R6");
  });

  it("has no latest day where a year never came to it, and is none where the mean does not, or nothing is earlier", () => {
    const cold = record
      .filter(({ date }) => date < "2029-08-01" || date >= "2030-01-01")
      .concat(days("2029-08-01", "2029-12-31", "50", "40"));
    expect(told(cold)[0]!.maturity!.late).toBeNull();
    expect(told(record.filter(({ date }) => date >= "2031"))[0]!.maturity).toBeNull();
    expect(told(record, { hybrids: [] })[0]!.maturity).toBeNull();
  });
});

describe("a field that is still to be planted", () => {
  const earlier = [...days("2029-05-01", "2029-12-31", "78", "60"), ...days("2030-05-01", "2030-12-31", "82", "60")];
  const toPlant = field("Home", "100", "200", { plannedPlanting: "2031-05-10", variety: "Early one" });
  const maturing = (weather: readonly WeatherDay[], of = toPlant) => {
    const season = seasonOf({ fields: [of], hybrids, weather });
    return maturingFields(season, fieldWeather(season));
  };

  it("matures from its planned planting on as if it were planted then and every day came as in the mean", () => {
    const [planned] = maturing(earlier);
    // 2,600 less 6.8 for each of nine days after 1 May are 2,538.8: at 20 a day on the 127th day after the 10th.
    expect(planned).toEqual({ field: "Home", date: "2031-09-14", byPlan: true });
    const [planted] = maturing([...earlier, day("2031-05-11", "80", "60")], home);
    expect(planted).toEqual({ field: "Home", date: "2031-09-14", byPlan: false });
  });

  it("matures from the end of the record on where its planned day has gone by", () => {
    const [late] = maturing([...earlier, ...days("2031-05-01", "2031-06-20", "80", "60")]);
    // 2,600 less 6.8 for 50 days are 2,260: the 113th day after 20 June.
    expect(late).toEqual({ field: "Home", date: "2031-10-11", byPlan: true });
  });

  it("is not projected without a planned day, a rating or an earlier year", () => {
    expect(maturing(earlier, { ...toPlant, plannedPlanting: null })).toEqual([]);
    expect(maturing(earlier, { ...toPlant, variety: "Another" })).toEqual([]);
    expect(maturing(days("2031-05-01", "2031-06-20", "80", "60"))).toEqual([]);
  });
});

describe("stages", () => {
  it("go by leaves, and from silking on by what the rating leaves", () => {
    expect(["100", "130", "785", "940", "1100", "1500"].map((sum) => stageAt(new Decimal(sum), null))).toEqual([
      "not up",
      "VE",
      "V8",
      "V10",
      "V13",
      "past V18",
    ]);
    expect(["1399", "1400", "2449", "2450", "2700"].map((sum) => stageAt(new Decimal(sum), new Decimal("2700")))).toEqual([
      "past V18",
      "R1",
      "R4.5",
      "R5",
      "R6",
    ]);
    expect(leafStage(new Decimal("99"), new Decimal("100"))).toBeNull();
  });

  it("and a rating is as it stands for a planting before May", () => {
    expect(ratingWhenPlanted(new Decimal("2700"), new Decimal("-8")).toFixed()).toBe("2700");
  });
});

describe("the first killing frost", () => {
  it("is the first low of 28 °F after 1 July of each earlier year", () => {
    const lows = [
      day("2029-05-02", "50", "20"),
      day("2029-10-02", "50", "28.1"),
      day("2029-10-09", "50", "28"),
      day("2029-10-20", "50", "20"),
      day("2030-09-28", "50", "27"),
      day("2031-09-20", "50", "10"),
    ];
    expect(firstFrosts(lows, "F", "2031")).toEqual(["2029-10-09", "2030-09-28"]);
    expect(firstFrosts([day("2029-10-09", "10", "-2.1")], "C", "2031")).toEqual([]);
    // 28 °F as a station in Celsius writes it.
    expect(firstFrosts([day("2029-10-09", "10", "-2.2")], "C", "2031")).toEqual(["2029-10-09"]);
  });

  it("has an earliest and a middle one", () => {
    expect(frostOf([])).toBeNull();
    expect(frostOf(["2029-10-09", "2030-09-28", "2028-10-13"])!).toMatchObject({ earliest: "09-28", median: "10-09" });
    expect(frostOf(["2029-10-09", "2030-09-28"])!.median).toBe("10-03");
  });
});
