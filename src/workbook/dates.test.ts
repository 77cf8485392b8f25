import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthNamed, monthOfYear, readDate, shortDate } from "./dates";
import type { Cell, DateSystem } from "./cell";

const read = (cell: Cell, dayFirst = false, dateSystem: DateSystem = "1900") => readDate(cell, { dateSystem, dayFirst });

describe("a date cell", () => {
  // Excel's help on DATEVALUE prints 40777 for 22 August 2011 and on date systems 39448 for 1 January 2008 (from memory).
  it("counts days as Excel does in both date systems, which are 1,462 days apart", () => {
    expect([read(40777), read(39448), read(40777 - 1462, false, "1904")]).toEqual(["2011-08-22", "2008-01-01", "2011-08-22"]);
  });

  it("is cut to the day, and is no date where it names none that a season can have", () => {
    expect([read(47000.75), read(1), read(60), read(2031), read(-5), read(Number.NaN), read(true)]).toEqual([
      "2028-09-04",
      null,
      null,
      null,
      null,
      null,
      null,
    ]);
  });

  it("is of the years 1950 to 2199", () => {
    expect(["1949-12-31", "1950-01-01", "2199-12-31", "2200-01-01"].map((text) => read(text))).toEqual([
      null,
      "1950-01-01",
      "2199-12-31",
      null,
    ]);
  });

  it("moves on by a day for each serial", () => {
    fc.assert(
      fc.property(fc.integer({ min: 20_000, max: 100_000 }), (serial) => {
        expect(Date.parse(read(serial + 1)!) - Date.parse(read(serial)!)).toBe(86_400_000);
      }),
    );
  });
});

describe("a date typed as text", () => {
  it.each([
    ["2031-05-06", "2031-05-06"],
    ["2031-5-6 10:00", "2031-05-06"],
    ["May 6, 2031", "2031-05-06"],
    ["6 May 2031", "2031-05-06"],
    ["6-May-31", "2031-05-06"],
    ["Sept. 5, 2031", "2031-09-05"],
    ["14/6/2031", "2031-06-14"],
    ["6/14/31 10:00 AM", "2031-06-14"],
    ["5.6.2031", "2031-06-05"],
  ])("%s is %s", (text, date) => expect(read(text)).toBe(date));

  it("has the month first between strokes, and the day first where the workbook has decimal commas", () => {
    expect([read("5/6/2031"), read("5/6/2031", true), read("6/14/2031", true)]).toEqual(["2031-05-06", "2031-06-05", "2031-06-14"]);
  });

  it.each(["31/6/2031", "2031-02-29", "13/13/2031", "May 6", "2031", "Maybe 5, 2031", "47000", "spring"])("%s is none", (text) =>
    expect(read(text)).toBeNull(),
  );

  it("comes out as it went in, however it is written", () => {
    const days = fc
      .date({ min: new Date("1990-01-01"), max: new Date("2099-12-31"), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(days, (iso) => {
        const [year, month, day] = iso.split("-").map(Number) as [number, number, number];
        for (const text of [iso, `${month}/${day}/${year}`, `${day}.${month}.${year}`]) expect(read(text)).toBe(iso);
        expect(read(`${day}/${month}/${year}`, true)).toBe(iso);
      }),
    );
  });
});

describe("a date without its year", () => {
  it.each([
    ["14 June", "2031-06-14"],
    ["4 June", "2031-06-04"],
    ["June 14", "2031-06-14"],
    ["14-Jun", "2031-06-14"],
    ["6/14", "2031-06-14"],
    ["14 June 2030", null],
    ["114 June", null],
    ["June", null],
  ])("%s of the season 2031 is %s", (text, date) => {
    expect(shortDate(text, { dayFirst: false, seasonYear: "2031" })).toBe(date);
    expect(shortDate(text, { dayFirst: false, seasonYear: null })).toBeNull();
  });
});

describe("a month", () => {
  it("is known by its first three letters, the year round", () => {
    expect("jan feb mar apr may jun jul aug sep oct nov dec".split(" ").map(monthNamed)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  });

  it("is named by word or number, with or without its year", () => {
    expect([
      monthNamed("March"),
      monthNamed("mar"),
      monthNamed("Sept."),
      monthNamed("3"),
      monthNamed("13"),
      monthNamed("ma"),
      monthNamed("maybe"),
    ]).toEqual([3, 3, 9, 3, null, null, null]);
    expect([monthOfYear("Mar 2031"), monthOfYear("2031-03"), monthOfYear("3/2031"), monthOfYear("March")]).toEqual([
      "2031-03-01",
      "2031-03-01",
      "2031-03-01",
      null,
    ]);
  });
});
