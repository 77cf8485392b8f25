import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { field, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import { area } from "../numbers/units";
import { accounts } from "../accounts";
import { fieldStands } from "./fieldStand";
import { outlookSteps } from "./outlookSteps";
import type { StandCount } from "./standCount";

const thousandth = { rowWidth: new Decimal("30"), length: new Decimal("17.424") };
/** A spot in a part of Mill: so many thousand plants. */
const count = (
  part: string | null,
  plants: string,
  more: { readonly date?: string; readonly acres?: string | null; readonly planted?: string } = {},
): StandCount => ({
  field: "Mill",
  date: more.date ?? "2031-06-08",
  place: thousandth,
  plants: new Decimal(plants),
  weak: new Decimal("0"),
  part: part === null ? null : { name: part, area: more.acres === null ? null : area(more.acres ?? "30"), planted: more.planted ?? null },
  spot: null,
  remark: null,
  source: { table: "Stand counts", row: 1 },
});
const mill = field("Mill", "100", "200", {
  plannedPlanting: "2031-04-25",
  planted: "2031-05-15",
  targetStand: new Decimal("32000"),
  rowWidth: new Decimal("30"),
});
const season = (...standCounts: StandCount[]) => seasonOf({ fields: [mill], standCounts });
const standOf = (...counts: StandCount[]) => fieldStands(season(...counts)).get("Mill")!;
const yieldOf = (...counts: StandCount[]) => accounts(season(...counts)).facts[0]!.outlookYield.toString();
const parts = (...counts: StandCount[]) =>
  standOf(...counts).parts.map(({ name, area: acres, summary, outlook }) => [
    name,
    acres.toString(),
    summary?.places.toString() ?? "0",
    summary?.mean.toString() ?? null,
    outlook?.toString() ?? null,
  ]);

// Purdue 2012, table 1, 15 May: 95 % at 32,000 plants, 94 % at 28,000, 89 % at 22,000; the plan, 25 April and 32,000, is 100 %.
describe("parts of a field", () => {
  it("weigh by their acres, and acres that nobody counted stand at the target", () => {
    // 30 ac at 178 and 70 ac at 190: a thin corner does not thin the field.
    expect(yieldOf(count("low", "22"))).toBe("186.4");
    expect(parts(count("low", "22"))).toEqual([
      ["low", "30", "1", "22000", "178"],
      [null, "70", "0", null, "190"],
    ]);
  });

  it("leave the acres outside of them to the spots that name no part", () => {
    expect(parts(count("low", "22"), count(null, "28"))).toEqual([
      ["low", "30", "1", "22000", "178"],
      [null, "70", "1", "28000", "188"],
    ]);
    expect(yieldOf(count("low", "22"), count(null, "28"))).toBe("185");
  });

  it("keep each its own latest round: one counted later drops no other", () => {
    const both = [count("low", "22", { date: "2031-05-26" }), count("hill", "28", { date: "2031-06-20", acres: "70" })] as const;
    expect(yieldOf(...both)).toBe("185");
    // A second look at the low ground takes the place of the first.
    expect(yieldOf(...both, count("low", "28", { date: "2031-06-21" }))).toBe("188");
  });

  it("weigh the mean stand of what was counted by acres, not by spots", () => {
    // 30 ac at 31,000 and 10 at 22,000 are 28,750, not 26,500 (arithmetic); three spots of the ten change nothing.
    const low = ["21", "22", "23"].map((plants) => count("low", plants, { acres: "10" }));
    const { mean, places, lowest, highest } = standOf(count("hill", "31"), ...low).summary;
    expect([mean, places, lowest, highest].map(String)).toEqual(["28750", "4", "21000", "31000"]);
  });

  it("are counted in no acre twice, whatever acres they say", () => {
    // 60 and 60 acres of 100 weigh alike, until somebody corrects them.
    const beyond = standOf(count("low", "22", { acres: "60" }), count("hill", "28", { acres: "60" }));
    expect(beyond.parts.map(({ area: acres }) => acres.toString())).toEqual(["50", "50"]);
    expect(yieldOf(count("low", "22", { acres: "60" }), count("hill", "28", { acres: "60" }))).toBe("183");
    // Spots of a part without acres are taken with those that name none.
    expect(parts(count("low", "22", { acres: null }))).toEqual([[null, "100", "1", "22000", "178"]]);
  });

  it("have a planted date of their own, and spots counted before it are history", () => {
    // Replanted on 20 May, Purdue 2012: 91 % at 32,000.
    const before = count("low", "8", { date: "2031-05-18" });
    const after = count("low", "32", { date: "2031-06-08", planted: "2031-05-20" });
    expect(yieldOf(after)).toBe(new Decimal("190").times("70").plus(new Decimal("182").times("30")).div("100").toString());
    expect(yieldOf(before, after)).toBe(yieldOf(after));
    expect(standOf(before, after).history).toEqual([before]);
    // So are those of a field that was planted again as a whole.
    const { history, summary } = standOf(count(null, "8", { date: "2031-05-14" }), count(null, "28"));
    expect([history.length, summary.mean.toString()]).toEqual([1, "28000"]);
  });

  it("are steps of the outlook by what was known on each day", () => {
    const counts = [count("low", "22", { date: "2031-05-26" }), count("hill", "28", { date: "2031-06-20", acres: "70" })];
    const steps = outlookSteps(season(...counts), mill).map(({ date, to }) => [date, to.toString()]);
    expect(steps).toEqual([
      ["2031-05-15", "190"],
      ["2031-05-26", "186.4"],
      ["2031-06-20", "185"],
    ]);
  });

  it("say how far their mean may be off only where each was counted twice", () => {
    expect(standOf(count("low", "22"), count("hill", "28"), count("hill", "30")).summary.interval).toBeNull();
    const four = [count("low", "21"), count("low", "23"), count("hill", "28"), count("hill", "30")];
    // Two parts of 30 ac, each s² = 2·10⁶ on two spots: the mean's variance is ¼·10⁶ + ¼·10⁶, so √½ thousand; two degrees of freedom.
    const { low, high } = standOf(...four).summary.interval!;
    const half = new Decimal("0.5").sqrt().times("1000").times("4.302652729911275");
    expect([low.toFixed(3), high.toFixed(3)]).toEqual([new Decimal("25500").minus(half).toFixed(3), half.plus("25500").toFixed(3)]);
  });

  it("of the same stand equal the whole, however it is cut and in whatever order it was counted", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 11, max: 40 }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 99 }),
        fc.boolean(),
        (plants, acres, namesBoth) => {
          const spots = (part: string | null, of = "30") => plants.map((each) => count(part, String(each), { acres: of }));
          const cut = [...spots("east", String(acres)), ...spots(namesBoth ? "west" : null, String(100 - acres))];
          const of = (counts: readonly StandCount[]) => {
            const { summary, outlook } = standOf(...counts);
            return [summary.mean.toFixed(20), outlook?.ok === true ? outlook.value.outlook.toFixed(20) : "none"];
          };
          expect(of(cut)).toEqual(of(spots(null)));
          expect(of([...cut].reverse())).toEqual(of(cut));
        },
      ),
    );
  });
});
