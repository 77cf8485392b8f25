import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { tableFor } from "../../src/core/stand/fieldStand";
import { relativeYieldAt, type StandTable } from "../../src/core/stand/standTable";
import { standFrom } from "../../src/core/stand/standUnit";
import { yieldOutlook } from "../../src/core/stand/yieldOutlook";
import { plantsPerArea, yieldPerArea } from "../../src/core/numbers/units";
import { publishedStandTable, publishedStandTables as published } from "../../src/workbook/publishedStandTables";
import {
  centralCornBelt,
  iowa2001,
  iowa2010,
  nebraska2009,
  northernMissouri,
  soybeanDates,
  soybeanNarrowRows,
  soybeanWideRows,
  wheatOntario,
  wheatPennsylvania,
  wisconsinFullSeason,
  wisconsinShortSeason,
} from "../support/publishedStandTables";
import { settings } from "../support/season";
import { check, checkApart, checksPage } from "./checks";
import { sources } from "./sources";
import * as printed from "./standTables";

const at = (monthDay: string | null, stand: string | null) =>
  ({
    date: monthDay === null ? null : `2031-${monthDay}`,
    stand: stand === null ? null : plantsPerArea(stand),
    rowWidth: null,
    areaUnit: "ac",
  }) as const;

function percentAt(table: StandTable, monthDay: string | null, stand: string | null): Decimal {
  const result = relativeYieldAt(table, at(monthDay, stand));
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value.relativeYield.times("100");
}
const refusal = (table: StandTable, monthDay: string | null, stand: string | null) => {
  const result = relativeYieldAt(table, at(monthDay, stand));
  return result.ok ? null : result.problems[0]!;
};
const words = (text: string) => text.split(" ");
const standsOf = words(printed.purdue.stands);

describe("the central Corn Belt table", () => {
  const cells = printed.purdue.rows.flatMap(([date, row]) => words(row).map((cell, index) => ({ date, stand: standsOf[index]!, cell })));

  it("has all 182 cells", () => expect(cells).toHaveLength(182));

  it.each(cells)("gives $cell % on $date at $stand plants", ({ date, stand, cell }) => {
    check(percentAt(centralCornBelt, date, stand), cell, sources["Purdue 2012"], relativeYieldAt);
  });

  it("gives the mean of four cells in the middle between them, everywhere", () => {
    const middles = ["04-12", "04-17", "04-22", "04-27", "05-02", "05-07", "05-12", "05-17", "05-22", "05-27", "06-01", "06-06"];
    for (const [index, date] of middles.entries()) {
      const rows = [words(printed.purdue.rows[index]![1]), words(printed.purdue.rows[index + 1]![1])];
      for (const [column, stand] of standsOf.slice(0, -1).entries()) {
        const halfway = new Decimal(stand).plus("1000").toString();
        const ends = rows.map((row) => new Decimal(row[column]!).plus(row[column + 1]!).div("2"));
        // Two days of the five (of 30 April to 5 May and so on) have gone by.
        expect(percentAt(centralCornBelt, date, halfway).toFixed(20)).toBe(ends[0]!.times("0.6").plus(ends[1]!.times("0.4")).toFixed(20));
      }
    }
  });

  it.each([
    // By hand: (92 + 95) ÷ 2; (83 + 86 + 79 + 81) ÷ 4 at two days of five: 84.5 × 0.6 + 80 × 0.4; (81 + 75) ÷ 2 leaning 2:3.
    { date: "04-30", stand: "21000", percent: "93.5" },
    { date: "05-22", stand: "21000", percent: "82.7" },
    { date: "06-01", stand: "30000", percent: "78.6" },
  ])("gives $percent % on $date at $stand plants by hand", ({ date, stand, percent }) => {
    check(percentAt(centralCornBelt, date, stand), percent, sources["Purdue 2012, by hand"], relativeYieldAt);
    expect(percentAt(centralCornBelt, date, stand).toString()).toBe(percent);
  });
  it("is 82.2 % on 29 May at a full stand, where the nearest row, 30 May, is printed", () => {
    checkApart(percentAt(centralCornBelt, "05-29", "30000"), { prints: "81", ours: "82.2" }, sources["Penn State 29 May"], relativeYieldAt);
  });
  it.each(printed.minnesota)("is $ours % on $date at $stand plants, where Minnesota prints $prints", ({ date, stand, ...pair }) => {
    checkApart(percentAt(centralCornBelt, date, stand), pair, sources["Minnesota stands"], relativeYieldAt);
  });

  it("is one quadratic surface to within 0.6 point, which also tests the readings in between", () => {
    const surface = (days: Decimal, thousands: Decimal) =>
      new Decimal("99.921")
        .minus(days.times("0.062816"))
        .minus(days.pow("2").times("0.0185115"))
        .plus(thousands.times("0.05094"))
        .minus(thousands.pow("2").times("0.0773722"));
    for (const { date, stand, cell } of cells) {
      const [month, day] = date.split("-") as [string, string];
      const days = new Decimal(day).minus("30").plus({ "04": "0", "05": "30", "06": "61" }[month]!);
      const off = surface(days, new Decimal(stand).div("1000").minus("30")).minus(cell).abs();
      expect(off.lte("0.6"), `${date} ${stand}: ${off}`).toBe(true);
    }
  });

  it.each([
    { date: "04-09", stand: "30000", reason: "date outside" },
    { date: "06-10", stand: "30000", reason: "date outside" },
    { date: "05-01", stand: "9999", reason: "stand outside" },
    { date: "05-01", stand: "36001", reason: "stand outside" },
    { date: null, stand: "30000", reason: "date missing" },
    { date: "05-01", stand: null, reason: "stand missing" },
  ])("refuses $date at $stand plants: $reason", ({ date, stand, reason }) => {
    expect(refusal(centralCornBelt, date, stand)?.reason).toBe(reason);
  });

  it("names its limits where it refuses", () => {
    expect(refusal(centralCornBelt, "06-10", "30000")).toEqual({
      reason: "date outside",
      table: centralCornBelt.name,
      asked: "2031-06-10",
      from: "04-10",
      to: "06-09",
    });
    expect(refusal(centralCornBelt, "05-01", "36001")).toMatchObject({ asked: "36001", from: "10000", to: "36000" });
    expect(refusal(centralCornBelt, "05-01", "9999.9956")?.asked).toBe("10000");
    expect(refusal(iowa2010, "06-01", "25000")?.asked).toBe("05-25 25000");
    expect(refusal({ ...centralCornBelt, dates: null, percent: [[null, null]] }, null, "11000")?.asked).toBe("10000");
    expect(refusal({ ...northernMissouri, percent: [[null]] }, "05-11", null)?.asked).toBe("05-11");
  });

  it("shows the cells that it read", () => {
    const result = relativeYieldAt(centralCornBelt, at("05-29", "30000"));
    expect(result.ok && result.value.cells.map(({ date, percent, part }) => [date?.from, percent.toString(), part.toString()])).toEqual([
      ["05-25", "87", "0.2"],
      ["05-30", "81", "0.8"],
    ]);
  });

  it.each(printed.readings)("reads as printed by $source.id", ({ source, goal, kept, reseeded }) => {
    for (const [date, stand, percent, bushels] of [kept, reseeded]) {
      const found = percentAt(centralCornBelt, date, stand);
      check(found, percent, source, relativeYieldAt, `percent on ${date}`);
      check(found.times(goal).div("100"), bushels, source, relativeYieldAt, `bushels on ${date}`);
    }
  });
});

describe("the Iowa tables", () => {
  const windows = words(printed.iowa2001.windows).map((each) => each.split(".."));
  const cells = printed.iowa2001.rows.flatMap(([stand, row]) =>
    words(row).flatMap((cell, index) => stand.split("-").flatMap((end) => windows[index]!.map((date) => ({ date, stand: end, cell })))),
  );

  it.each(cells)("of 2001 give $cell % on $date at $stand plants", ({ date, stand, cell }) => {
    check(percentAt(iowa2001, date, stand), cell, sources["Iowa PM 1885"], relativeYieldAt);
  });
  it("of 2001 have one value all through a window and straight lines between windows", () => {
    expect(percentAt(iowa2001, "05-16", "30000").toString()).toBe("99");
    // 5 May has 100, 13 May 99: four days of eight on.
    expect(percentAt(iowa2001, "05-09", "28000").toString()).toBe("99.5");
    // Between 12,000 (68) and 16,000 (74), and halfway to the next window's 67 and 73.
    expect(percentAt(iowa2001, "05-09", "14000").toString()).toBe("70.5");
  });
  it.each([
    ["04-19", "30000", "date outside"],
    ["06-29", "30000", "date outside"],
    ["05-01", "11999", "stand outside"],
    ["05-01", "32001", "stand outside"],
  ])("of 2001 refuse %s at %s plants: %s", (date, stand, reason) => expect(refusal(iowa2001, date, stand)?.reason).toBe(reason));
  it("of 2001 are stand × date to within half a point", () => {
    const full = words(printed.iowa2001.rows[0]![1]);
    for (const [, row] of printed.iowa2001.rows) {
      const [first, ...rest] = words(row);
      rest.forEach((cell, index) => {
        const off = new Decimal(first!)
          .times(full[index + 1]!)
          .div("100")
          .minus(cell)
          .abs();
        expect(off.lte("0.5"), `${row}: ${off}`).toBe(true);
      });
    }
  });
  it("differ from Nebraska's reprint in one cell of the full stand", () => {
    words(printed.nebraskaFullStand).forEach((prints, index) => {
      const from = windows[index]![0]!;
      check(percentAt(nebraska2009, from, "30000"), prints, sources["Nebraska 2009"], relativeYieldAt, `its own table on ${from}`);
      const ofIowa = percentAt(iowa2001, from, "30000");
      if (index !== 1) check(ofIowa, prints, sources["Nebraska 2009"], relativeYieldAt, `the Iowa table on ${from}`);
      else checkApart(ofIowa, { prints, ours: "99" }, sources["Nebraska 2009"], relativeYieldAt, undefined, `the Iowa table on ${from}`);
    });
    expect(words(printed.iowa2001.rows[1]![1]).map((_, index) => percentAt(nebraska2009, windows[index]![0]!, "24000").toString())).toEqual(
      words(printed.iowa2001.rows[1]![1]),
    );
  });
  it.each(printed.iowa2010.rows)("of 2010 give at %s plants %s", (stand, row) => {
    words(row).forEach((cell, index) => {
      const date = words(printed.iowa2010.inside)[index]!;
      check(percentAt(iowa2010, date, stand), cell, sources["Iowa 2010"], relativeYieldAt, date);
    });
  });
  it("of 2010 refuse the cells that could not be read, and what leans on them", () => {
    expect(refusal(iowa2010, "06-01", "25000")?.reason).toBe("not printed");
    expect(refusal(iowa2010, "06-01", "27000")?.reason).toBe("not printed");
    expect(percentAt(iowa2010, "06-01", "30000").toString()).toBe("69");
    expect(refusal(iowa2010, "05-01", "24999")?.reason).toBe("stand outside");
  });
});

describe("the other tables", () => {
  it.each([
    ...printed.wisconsin.full.map((row) => [wisconsinFullSeason, ...row] as const),
    ...printed.wisconsin.short.map((row) => [wisconsinShortSeason, ...row] as const),
  ])("%# of Wisconsin reads back", (table, stand, row) => {
    words(row).forEach((cell, index) => {
      const date = words(printed.wisconsin.dates)[index]!;
      check(percentAt(table, date, stand), cell, sources["Wisconsin 2003"], relativeYieldAt, `${stand} plants on ${date}`);
    });
  });
  it.each([
    [northernMissouri, printed.northernMissouri, sources["Missouri 2013"]],
    [soybeanDates, printed.soybeanDates, sources["Penn State soybeans 2012"]],
  ] as const)("%# by date only reads back and asks for no stand", (table, { dates, percent }, source) => {
    words(dates).forEach((date, index) => check(percentAt(table, date, null), words(percent)[index]!, source, relativeYieldAt, date));
  });
  it("by date only take a straight line between two dates", () => {
    expect(percentAt(northernMissouri, "05-26", null).toString()).toBe("80");
    expect(refusal(northernMissouri, "05-10", null)?.reason).toBe("date outside");
  });
  it.each(printed.wheatOntario)("of Ontario wheat give %s plants a metre %s %", (perMetre, percent, bushels) => {
    const rowWidth = new Decimal("19");
    const stand = standFrom("plants per metre of row", new Decimal(perMetre), "ha", rowWidth)!;
    const result = relativeYieldAt(wheatOntario, { date: null, stand, rowWidth, areaUnit: "ha" });
    const relative = result.ok ? result.value.relativeYield : null;
    check(relative?.times("100") ?? null, percent, sources["Ontario wheat 2012"], relativeYieldAt, "percent");
    check(relative?.times("80") ?? null, bushels, sources["Ontario wheat 2012"], relativeYieldAt, "bushels");
    expect(relativeYieldAt(wheatOntario, { date: null, stand, rowWidth: null, areaUnit: "ha" })).toMatchObject({
      ok: false,
      problems: [{ reason: "row width missing" }],
    });
  });
  it("of Pennsylvania wheat give the middle of the printed range", () => {
    const perAcre = (perSquareFoot: string) => new Decimal(perSquareFoot).times("43560").toString();
    expect(percentAt(wheatPennsylvania, null, perAcre("13")).toString()).toBe("65");
    expect(percentAt(wheatPennsylvania, null, perAcre("25")).toString()).toBe("100");
    expect(refusal(wheatPennsylvania, null, perAcre("11.9"))?.reason).toBe("stand outside");
  });
  it("of Ohio soybeans are full in narrow rows at 100,000 plants and in 30-inch rows at 80,000", () => {
    expect(percentAt(soybeanNarrowRows, null, "100000").toString()).toBe("100");
    expect(percentAt(soybeanWideRows, null, "80000").toString()).toBe("100");
    expect(percentAt(soybeanWideRows, null, "52000").toString()).toBe("86");
  });
  it("of Ontario keep 95 % until the reported date", () => {
    for (const [place, date] of [
      ["Elora", "05-20"],
      ["Exeter", "05-25"],
      ["Ridgetown", "05-30"],
    ] as const) {
      const table = published.tables.find((each) => each.name.includes(place))!;
      expect(percentAt(table, date, "30000").toString()).toBe("95");
      expect(table.limits[0]).toContain("Not a published table");
    }
  });
});

describe("the choice of a table", () => {
  it("finds each by its name, which is its own", () => {
    expect(new Set(published.tables.map(({ name }) => name)).size).toBe(published.tables.length);
    for (const table of published.tables) expect(publishedStandTable(` ${table.name.toUpperCase()} `)).toBe(table);
    expect(publishedStandTable("none such")).toBeNull();
    // A table that was moved says so first, and then what it was moved from.
    expect(publishedStandTable("Corn, Ontario, Elora (central Corn Belt 5 days later)")!.limits.slice(1)).toEqual(centralCornBelt.limits);
  });
  it("is the central Corn Belt's for corn and nothing for other crops", () => {
    expect(tableFor({ settings, standTables: [], published }, { name: "Corn after soybeans" })).toBe(centralCornBelt);
    expect(tableFor({ settings, standTables: [], published }, { name: "Soybeans" })).toBeNull();
    expect(
      tableFor({ settings: { ...settings, standResponse: soybeanDates.name }, standTables: [], published }, { name: "Soybeans" }),
    ).toBe(soybeanDates);
  });
});

describe("yield outlook", () => {
  const ask = (real: readonly [string, string]) =>
    yieldOutlook({
      table: centralCornBelt,
      goal: yieldPerArea("200"),
      planned: at("04-30", "30000"),
      real: at(...real),
      uniformityLoss: null,
    });

  it("is 184 of a goal of 200 at 20,000 plants of 30 April (Purdue Field Guide)", () => {
    const result = ask(["04-30", "20000"]);
    check(result.ok ? result.value.outlook : null, "184", sources["Farm Progress 2018"], yieldOutlook);
  });
  it("is goal × R(real) ÷ R(planned) where the plan is not the best of the table", () => {
    const result = yieldOutlook({
      table: centralCornBelt,
      goal: yieldPerArea("190"),
      planned: at("05-15", "32000"),
      real: at("05-25", "24000"),
      uniformityLoss: new Decimal("2"),
    });
    // 190 × 84 ÷ 95 × 0.98
    expect(result.ok && [result.value.byDateAndStand.toString(), result.value.outlook.toString()]).toEqual(["168", "164.64"]);
  });
  it("says of which of the two the table says nothing", () => {
    expect(ask(["06-20", "5000"])).toMatchObject({ ok: false, problems: [{ of: "real", reason: "date outside" }] });
    const unplanned = yieldOutlook({
      table: centralCornBelt,
      goal: yieldPerArea("200"),
      planned: at(null, "30000"),
      real: at("04-30", "5000"),
      uniformityLoss: null,
    });
    expect(unplanned).toMatchObject({
      ok: false,
      problems: [
        { of: "planned", reason: "date missing" },
        { of: "real", reason: "stand outside" },
      ],
    });
  });
});

checksPage("Yield by date and stand");
