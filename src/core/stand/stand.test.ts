import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centralCornBelt } from "../../../tests/support/publishedStandTables";
import { Decimal } from "../numbers/decimal";
import { area, plantsPerArea, seedsPerArea, share, yieldPerArea } from "../numbers/units";
import { bracket } from "./bracket";
import { dayOfYear, monthDayOf } from "./monthDay";
import { ownStandTable } from "./ownStandTable";
import { seedingRate, seedSpacing, seedsPerPound, seedUnits } from "./seeding";
import { landCounted, standAt, type StandCount } from "./standCount";
import { emergence, lastRound, placesAdvised, standSummary } from "./standSummary";
import { relativeYieldAt } from "./standTable";
import { standFrom, standIn, standUnits } from "./standUnit";
import { outlookHistory } from "./yieldOutlook";

const row = { rowWidth: new Decimal("30"), length: new Decimal("17.424") };
const count = (plants: string, more: Partial<StandCount> = {}): StandCount => ({
  field: "East",
  date: "2031-05-20",
  place: row,
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: null,
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
  ...more,
});

describe("standAt", () => {
  it("counts a weak plant as one half", () => {
    expect(standAt(count("26", { weak: new Decimal("3") }), "ac").toString()).toBe("27500");
  });

  it("is plants per hectare from centimetres and metres", () => {
    // 75 cm × 5.333… m is 4 m²; 30 plants on it are 75,000 a hectare.
    expect(standAt(count("30", { place: { rowWidth: new Decimal("75"), length: new Decimal("16").div("3") } }), "ha").toFixed(10)).toBe(
      "75000.0000000000",
    );
    // A hoop of 112.8379 cm is one square metre.
    expect(standAt(count("7", { place: { hoopDiameter: new Decimal("112.837916709551") } }), "ha").toFixed(6)).toBe("70000.000000");
  });

  it("doubles with the plants and halves with the length", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 50, max: 400 }),
        (plants, length, width) => {
          const at = (n: number, l: number) =>
            standAt(count(String(n), { place: { rowWidth: new Decimal(width).div("10"), length: new Decimal(l) } }), "ac");
          expect(at(2 * plants, length).toFixed(15)).toBe(at(plants, length).times("2").toFixed(15));
          expect(at(plants, 2 * length).toFixed(15)).toBe(at(plants, length).div("2").toFixed(15));
        },
      ),
    );
  });

  it("refuses a place that is nowhere", () => {
    expect(() => landCounted({ rowWidth: new Decimal("0"), length: new Decimal("17") }, "ac")).toThrow(RangeError);
  });
});

describe("standSummary", () => {
  it("has no spread from one place", () => {
    const summary = standSummary([count("27")], area("20"), "ac")!;
    expect([summary.interval, summary.standardDeviation, summary.coefficientOfVariation]).toEqual([null, null, null]);
    expect(summary.mean.toString()).toBe("27000");
  });

  it("does not vary where nothing stands", () => {
    expect(standSummary([count("0"), count("0")], area("20"), "ac")!.coefficientOfVariation).toBeNull();
  });

  it("is nothing from no place", () => expect(standSummary([], area("20"), "ac")).toBeNull());

  it("never puts the low end below nothing", () => {
    const summary = standSummary([count("0"), count("30")], area("20"), "ac")!;
    expect(summary.interval!.low.toString()).toBe("0");
    expect([summary.lowest.toString(), summary.highest.toString()]).toEqual(["0", "30000"]);
  });

  it("leaves an earlier round of counting out", () => {
    const counts = [count("20", { date: "2031-05-13" }), count("26", { date: "2031-05-14" }), count("28", { date: "2031-05-20" })];
    expect(lastRound(counts).map(({ date }) => date)).toEqual(["2031-05-14", "2031-05-20"]);
    expect(standSummary(counts, area("20"), "ac")).toMatchObject({ from: "2031-05-14", to: "2031-05-20" });
  });

  it("advises a place in 5 acres or 2 hectares, and five at least", () => {
    expect(placesAdvised(area("10"), "ac").toString()).toBe("5");
    expect(placesAdvised(area("52"), "ac").toString()).toBe("11");
    expect(placesAdvised(area("52"), "ha").toString()).toBe("26");
    expect(standSummary([count("27")], area("20"), "ac")!.enough).toBe(false);
    expect(
      standSummary(
        ["26", "27", "28", "27", "26"].map((plants) => count(plants)),
        area("20"),
        "ac",
      )!.enough,
    ).toBe(true);
  });

  it("compares what stands with what was dropped", () => {
    expect(emergence(plantsPerArea("30600"), seedsPerArea("34000"))!.toString()).toBe("0.9");
    expect(emergence(plantsPerArea("30600"), seedsPerArea("0"))).toBeNull();
    // Half a plant and a half seed, as of a square foot.
    expect(emergence(plantsPerArea("0.4"), seedsPerArea("0.5"))!.toString()).toBe("0.8");
  });
});

describe("relativeYieldAt", () => {
  const days = fc.integer({ min: 100, max: 160 }).map((day) => `2031-${monthDayOf(new Decimal(day))}`);
  const stands = fc.integer({ min: 10_000, max: 36_000 }).map((stand) => plantsPerArea(String(stand)));

  it("stays between the cells that it read, whose parts add up to one", () => {
    fc.assert(
      fc.property(days, stands, (date, stand) => {
        const result = relativeYieldAt(centralCornBelt, { date, stand, rowWidth: null, areaUnit: "ac" });
        if (!result.ok) throw new Error("inside the table");
        const { cells, relativeYield } = result.value;
        const percents = cells.map(({ percent }) => percent);
        expect(relativeYield.times("100").gte(Decimal.min(...percents).minus("1e-25"))).toBe(true);
        expect(relativeYield.times("100").lte(Decimal.max(...percents).plus("1e-25"))).toBe(true);
        expect(cells.reduce((all, { part }) => all.plus(part), new Decimal("0")).toFixed(25)).toBe(new Decimal("1").toFixed(25));
      }),
    );
  });

  it("reads the same stand in plants per hectare", () => {
    const perHectare = plantsPerArea(new Decimal("21000").div("0.40468564224"));
    const result = relativeYieldAt(centralCornBelt, { date: "2031-04-30", stand: perHectare, rowWidth: null, areaUnit: "ha" });
    expect(result.ok && result.value.relativeYield.toFixed(20)).toBe("0.93500000000000000000");
  });

  it("takes a value where two windows meet from the first", () => {
    const windows = [
      ["1", "2"],
      ["2", "3"],
    ].map(([from, to]) => ({ from: new Decimal(from!), to: new Decimal(to!) }));
    expect(bracket(windows, new Decimal("2"))).toMatchObject([{ index: 0 }]);
    expect(bracket(windows, new Decimal("2.1"))).toMatchObject([{ index: 1 }]);
    expect(bracket(windows, new Decimal("3.1"))).toBeNull();
  });
});

describe("days of the season", () => {
  it("are the same in every year", () => {
    expect(dayOfYear("2032-05-01").toString()).toBe(dayOfYear("05-01").toString());
    expect(dayOfYear("01-01").toString()).toBe("1");
    expect(dayOfYear("12-31").toString()).toBe("365");
  });
  it("turn back into their dates", () => {
    for (let day = 1; day <= 365; day += 1) expect(dayOfYear(monthDayOf(new Decimal(day))).toNumber()).toBe(day);
    expect(() => monthDayOf(new Decimal("366"))).toThrow(RangeError);
  });
});

describe("units of stands", () => {
  it("turn back into the workbook's own", () => {
    for (const unit of standUnits) {
      for (const areaUnit of ["ac", "ha"] as const) {
        const width = new Decimal("19");
        const there = standIn(unit, plantsPerArea("80000"), areaUnit, width)!;
        expect(standFrom(unit, there, areaUnit, width)!.toFixed(15)).toBe("80000.000000000000000");
      }
    }
  });
  it("ask for a row width where the table counts by the row", () => {
    const read = relativeYieldAt(
      { ...centralCornBelt, standUnit: "plants per metre of row" },
      { date: "05-01", stand: plantsPerArea("32000"), rowWidth: null, areaUnit: "ac" },
    );
    expect(read).toMatchObject({ ok: false, problems: [{ reason: "row width missing", asked: "32000" }] });
  });
  it("are not known without a row width, nor turned back at a width of nothing", () => {
    expect(standIn("plants per metre of row", plantsPerArea("80000"), "ac", null)).toBeNull();
    expect(standFrom("plants per metre of row", new Decimal("20"), "ac", null)).toBeNull();
    expect(standFrom("plants per metre of row", new Decimal("20"), "ac", new Decimal("0"))).toBeNull();
  });
  it("are the same per acre and per hectare", () => {
    expect(standIn("plants per hectare", plantsPerArea("40468.564224"), "ac", null)!.toString()).toBe("100000");
    expect(standIn("plants per hectare", plantsPerArea("100000"), "ha", null)!.toString()).toBe("100000");
    expect(standIn("plants per acre", plantsPerArea("100000"), "ha", null)!.toString()).toBe("40468.564224");
    expect(standIn("plants per square foot", plantsPerArea("43560"), "ac", null)!.toString()).toBe("1");
    expect(standIn("plants per square foot", plantsPerArea(new Decimal("43560").div("0.40468564224")), "ha", null)!.toFixed(20)).toBe(
      "1.00000000000000000000",
    );
    expect(standIn("plants per metre of row", plantsPerArea("1000000"), "ha", new Decimal("20"))!.toString()).toBe("20");
    expect(
      standIn(
        "plants per metre of row",
        plantsPerArea(new Decimal("1000000").times("0.40468564224")),
        "ac",
        new Decimal("20").div("2.54"),
      )!.toFixed(15),
    ).toBe("20.000000000000000");
  });
});

describe("ownStandTable", () => {
  const source = { title: "Own trial", publisher: "this farm", year: "2031", address: "", where: "sheet Trials" };
  const cells = (...rows: readonly (readonly string[])[]) => rows.map((each) => each.map((cell) => new Decimal(cell)));
  const own = {
    name: "Own",
    crop: "corn",
    standUnit: "plants per acre" as const,
    dates: ["05-01", "05-15"],
    stands: [new Decimal("20000"), new Decimal("30000")],
  };

  it("takes the place of a published one", () => {
    const result = ownStandTable({ ...own, percent: cells(["90", "100"], ["80", "90"]) }, source);
    if (!result.ok) throw new Error("sound table");
    const read = relativeYieldAt(result.value, { date: "2031-05-08", stand: plantsPerArea("25000"), rowWidth: null, areaUnit: "ac" });
    expect(read.ok && read.value.relativeYield.toString()).toBe("0.9");
  });

  it("may be of dates or of stands alone, and says that it is entered", () => {
    expect(ownStandTable({ ...own, stands: null, percent: cells(["100"], ["90"]) }, source)).toMatchObject({
      ok: true,
      value: { stands: null },
    });
    expect(ownStandTable({ ...own, dates: null, percent: cells(["90", "100"]) }, source)).toMatchObject({
      ok: true,
      value: { dates: null, limits: ["Entered in this workbook."] },
    });
  });

  it("goes from 0 to 120 percent, cells left blank aside", () => {
    const faults = (...cell: readonly string[]) => {
      const of = ownStandTable({ ...own, dates: null, percent: cells(cell) }, source);
      return of.ok ? [] : of.problems.map(({ fault }) => fault);
    };
    expect([faults("0", "120"), faults("0.5", "100")]).toEqual([[], []]);
    expect([faults("-0.5", "100"), faults("100", "120.5")]).toEqual([["percent outside 0 to 120"], ["percent outside 0 to 120"]]);
    expect(ownStandTable({ ...own, dates: null, percent: [[null, new Decimal("100")]] }, source).ok).toBe(true);
  });

  it("names every fault at once", () => {
    const result = ownStandTable(
      { ...own, dates: ["05-15", "05-01"], stands: [new Decimal("20000"), new Decimal("20000")], percent: cells(["90", "130"], ["80"]) },
      source,
    );
    expect(result).toEqual({
      ok: false,
      problems: [
        { fault: "dates not ascending", where: 2 },
        { fault: "stands not ascending", where: 2 },
        { fault: "percent outside 0 to 120", where: 1 },
        { fault: "row of another length", where: 2 },
      ],
    });
    expect(ownStandTable({ ...own, dates: null, stands: null, percent: cells(["90"]) }, source)).toEqual({
      ok: false,
      problems: [{ fault: "no axis", where: 1 }],
    });
    expect(ownStandTable({ ...own, percent: cells(["90", "100"]) }, source)).toEqual({
      ok: false,
      problems: [{ fault: "row of another length", where: 1 }],
    });
  });
});

describe("seed and history", () => {
  it("orders whole units", () => {
    const units = seedUnits(area("120"), seedsPerArea("34000"), new Decimal("80000"));
    expect([units.exact.toString(), units.whole.toString()]).toEqual(["51", "51"]);
    expect(seedUnits(area("121"), seedsPerArea("34000"), new Decimal("80000")).whole.toString()).toBe("52");
  });

  it("needs seed that germinates and lives", () => {
    expect(() => seedingRate(plantsPerArea("30000"), share("0"), share("0.95"))).toThrow(RangeError);
    expect(() => seedingRate(plantsPerArea("30000"), share("0.95"), share("0"))).toThrow(RangeError);
  });

  it("is weighed and spaced in metres and grams", () => {
    // 100,000 seeds on a hectare in rows of 50 cm: 20 cm from seed to seed. A pound is 453.59237 g.
    expect(seedSpacing(seedsPerArea("100000"), new Decimal("50"), "ha").toString()).toBe("20");
    expect(seedsPerPound(new Decimal("453.59237")).toString()).toBe("1000");
  });

  it("tells how the outlook came about", () => {
    const history = outlookHistory(yieldPerArea("200"), [
      { date: "2031-06-20", reason: "gaps", outlook: yieldPerArea("178") },
      { date: "2031-05-20", reason: "stand count", outlook: yieldPerArea("184") },
    ]);
    expect(history.map(({ date, from, to }) => [date, from.toString(), to.toString()])).toEqual([
      ["2031-05-20", "200", "184"],
      ["2031-06-20", "184", "178"],
    ]);
  });
});
