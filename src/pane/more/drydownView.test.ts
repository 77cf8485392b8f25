import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { netChange } from "../../core/partialBudget/netChange";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { drydownFields, drydownView, emptyDrydown, ownRate, type DrydownDraft } from "./drydownView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);
const [mill] = drydownFields(report);
const draft: DrydownDraft = { ...emptyDrydown(report, mill!, undefined, false), from: "2031-09-20", moisture: "30", charge: "0.05" };
const view = (more: Partial<DrydownDraft> = {}) => drydownView({ ...draft, ...more }, report, mill!, false, format);
const answer = (more: Partial<DrydownDraft> = {}) => view(more).answer!;

describe("when to harvest", () => {
  it("is asked of corn that stands", () => {
    expect(drydownFields(report).map(({ field }) => field)).toEqual(["Mill Road", "Long Eighty"]);
  });

  it("begins at projected maturity, not before the table does, and ends where published losses rise", () => {
    const weather = (date: string) => ({ maturity: { date, early: date, late: date } }) as Parameters<typeof emptyDrydown>[2];
    const begun = (date: string) => emptyDrydown(report, mill!, weather(date), false);
    expect([begun("2031-09-14").from, begun("2031-08-25").from, begun("2031-09-14").moisture]).toEqual(["2031-09-14", "2031-09-01", "35"]);
    expect(emptyDrydown(report, mill!, undefined, false)).toMatchObject({ from: "", moisture: "", lastSafe: "2031-11-15" });
  });

  it("says the cheapest safe day, with what it costs against the first", () => {
    // 14.5 points × 0.05 on 176.1 bu, each 84.5 ÷ 70 wet ones, are 154.13 at once. 30 % falls to 22.9 by 1 October and to 15.5 by
    // the 22nd; seven of 31 days of 2 %.
    expect(answer().says).toBe(
      "Cheapest safe day: Oct 22, 2031, at 15.5 %: 0.00 USD per acre for the dryer and 3.28 lost by waiting, against 154.13 on " +
        "Sep 20, 2031 at 30.0 %. At standard moisture from Oct 22, 2031.",
    );
    expect(answer({ countsLoss: false }).says).not.toContain("lost by waiting");
    expect(answer({ lastSafe: "2031-09-20" }).says).toContain("Waiting does not pay by these figures.");
  });

  it("has every seventh day and the cheapest as figures, and both ends of a printed range", () => {
    const { rows } = answer();
    expect(rows.map(({ name }) => name)).toEqual(expect.arrayContaining(["Sep 20", "Oct 22, cheapest", "Nov 22, not safe"]));
    expect(rows[0]!.cells).toEqual(["30.0", "154.13", "0.00", "154.13"]);
    // Ohio: 0.75 to 1 point a day in September.
    expect(answer({ rate: "Ohio 2023, by half month" }).rows[1]!.cells[0]).toBe("23.0–24.8");
  });

  it("draws the cost from left to right, the cheapest day on its line and the unsafe ones beyond theirs", () => {
    const { cost, cheapest, unsafe, ticks } = answer().plot;
    expect(cost.split(" ")).toContain(`${cheapest.x},${cheapest.y}`);
    expect(unsafe! > cheapest.x).toBe(true);
    expect(ticks[0]).toMatchObject({ x: 6, date: "2031-09-20" });
    expect(answer({ charge: "0", countsLoss: false }).plot.cost).not.toMatch(/NaN/);
  });

  it("is a change that nets the difference, and none where the first day is the cheapest", () => {
    const { wait } = answer();
    expect(netChange(wait!.layout.change).net.perArea!.toFixed(2)).toBe("150.84");
    expect(answer({ lastSafe: "2031-09-20" }).wait).toBeNull();
  });

  it("says at its box what is wrong, and in words where the table says nothing", () => {
    expect(view({ moisture: "70", from: "", charge: "" }).faults).toEqual({
      moisture: "Enter a percentage below 60.",
      from: "Enter a date.",
      charge: "Enter a number.",
    });
    expect(view({ from: "2031-08-20" }).why).toMatch(/^The table begins later than that day\./);
    expect(view({ lastSafe: "2031-12-20" }).why).toMatch(/^What waiting loses is published up to Dec 15\./);
    expect(view({ lastSafe: "2031-09-01" }).why).toMatch(/^The last safe day is before the first/);
    expect([view({ rate: ownRate }).faults.perDay, view({ rate: ownRate, perDay: "0.7", from: "2031-08-20" }).why]).toEqual([
      "Enter a number above zero.",
      null,
    ]);
  });

  it("names where its rates and losses come from", () => {
    expect(answer().sources.join(" ")).toMatch(/Iowa State University Extension, 2022, for Iowa.*Ohio State University Extension, 2023/);
    expect(answer({ countsLoss: false }).sources[1]).toBe("Nothing is counted as lost by waiting.");
  });
});
