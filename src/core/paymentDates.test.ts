import { describe, expect, it } from "vitest";
import { kinds, kindsIn } from "./kinds";
import { paymentDates, sixMonthsBefore } from "./paymentDates";

const season = { year: "2031", repaid: "2031-12-01" };
const planting = "2031-05-01";

describe("money without a date", () => {
  it("is paid at planned planting where it goes into the field, and six months before repayment where no planting is planned", () => {
    for (const kind of ["seed", "fertilizer", "crop protection", "fuel", "repairs", "custom work", "hired labour", "irrigation"] as const) {
      expect([kind, ...paymentDates(kind, null, planting, season)]).toEqual([kind, "2031-05-01"]);
      expect([kind, ...paymentDates(kind, null, null, season)]).toEqual([kind, "2031-06-01"]);
    }
  });

  it("is paid at repayment for drying and haul, whatever is planned", () => {
    expect(paymentDates("drying", null, planting, season)).toEqual(["2031-12-01"]);
    expect(paymentDates("haul", null, null, season)).toEqual(["2031-12-01"]);
  });

  it("is paid half in March and half in November for rent", () => {
    expect(paymentDates("cash rent", null, planting, season)).toEqual(["2031-03-01", "2031-11-01"]);
  });

  it("is paid a twelfth a month for everything else that is cash", () => {
    const days = paymentDates("crop insurance", null, planting, { year: "2031", repaid: "2032-01-15" });
    expect([days.length, days[0], days[4], days[11]]).toEqual([12, "2031-01-01", "2031-05-01", "2031-12-01"]);
    expect(paymentDates("overhead", null, null, season)).toEqual(days);
  });

  it("is never paid where it is no cash, even with a month", () => {
    for (const kind of ["machine ownership", "land charge", "unpaid labour", "management"] as const) {
      expect([kind, ...paymentDates(kind, null, planting, season)]).toEqual([kind]);
      expect([kind, ...paymentDates(kind, "2031-04-01", planting, season)]).toEqual([kind]);
    }
  });

  it("follows the month or day that is entered before any rule", () => {
    for (const kind of kindsIn("cashNeed"))
      expect([kind, ...paymentDates(kind, "2031-02-01", planting, season)]).toEqual([kind, "2031-02-01"]);
  });

  it("has a day for every kind that is cash, so that no money is lost on the way", () => {
    expect(kinds.filter((kind) => paymentDates(kind, null, null, season).length === 0)).toEqual([
      "machine ownership",
      "land charge",
      "unpaid labour",
      "management",
    ]);
  });
});

describe("six months before a day", () => {
  it("is the same day of the month, or the last one where that month is shorter", () => {
    expect(["2031-12-01", "2032-03-15", "2031-08-31", "2032-08-30", "2031-12-31"].map(sixMonthsBefore)).toEqual([
      "2031-06-01",
      "2031-09-15",
      "2031-02-28",
      "2032-02-29",
      "2031-06-30",
    ]);
  });
});
