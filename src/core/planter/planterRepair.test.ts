import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { field, item, machine, operation, purchase, seasonOf, settings } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import type { Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { hours, itemQuantity, money } from "../numbers/units";
import type { PlanterCheck } from "./planterCheck";
import { stateOf } from "./planterRepair";
import { wearUsed } from "./partWear";

const size = (text: string | null) => (text === null ? null : new Decimal(text));
const sizes = (whenNew: string, measured: string, replaceAt: string) => ({
  whenNew: new Decimal(whenNew),
  measured: new Decimal(measured),
  replaceAt: new Decimal(replaceAt),
});
const check = (part: string, measured: string | null, more: Partial<PlanterCheck> = {}): PlanterCheck => ({
  machine: "Planter",
  row: "1",
  part,
  whenNew: size("15"),
  replaceAt: size("14.5"),
  measured: size(measured),
  unit: "in",
  finding: null,
  item: null,
  quantity: itemQuantity("1"),
  hours: null,
  doneOn: null,
  source: { table: "Planter checks", row: 1 },
  ...more,
});
const blades = { item: "Blade", quantity: itemQuantity("2"), hours: hours("0.5") };
const drill = machine("Planter");
const planter = (more: Partial<Season>) =>
  seasonFigures(
    seasonOf({
      fields: [field("Home", "80", "200")],
      items: [item("Blade", "30")],
      settings: { ...settings, labourPerHour: money("24") },
      ...more,
    }),
  ).planters[0]!;

describe("wear of a part", () => {
  it("is the part of the way from new to worn out: 15 in new, 14.75 measured, replaced at 14.5: half (common practice, an opener)", () => {
    expect(wearUsed(sizes("15", "14.75", "14.5")).toFixed()).toBe("0.5");
  });
  it("goes the other way where play grows: 0 in new, 1.5 in of play, replaced at 2 in: three quarters", () => {
    expect(wearUsed(sizes("0", "1.5", "2")).toFixed()).toBe("0.75");
  });
  it("is refused where the part could not wear at all", () => {
    expect(() => wearUsed(sizes("15", "15", "15"))).toThrow(RangeError);
  });
  it("grows with each bit worn, in any unit: the share is the same in inches and in millimetres", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 0, max: 600 }), (allowed, worn) => {
        const inches = sizes(
          "15",
          new Decimal("15").minus(new Decimal(worn).div("1000")).toFixed(),
          new Decimal("15").minus(new Decimal(allowed).div("1000")).toFixed(),
        );
        const toMillimetres = (value: Decimal) => value.times("25.4").toFixed();
        const metric = sizes(toMillimetres(inches.whenNew), toMillimetres(inches.measured), toMillimetres(inches.replaceAt));
        expect(wearUsed(metric).minus(wearUsed(inches)).abs().lt("1e-30")).toBe(true);
        expect(wearUsed(inches).gte("1")).toBe(worn >= allowed);
      }),
    );
  });
});

describe("what is to be done with a part", () => {
  const state = (measured: string | null, more: Partial<PlanterCheck> = {}) => stateOf(check("Opener disc", measured, more)).state;
  it("is due from the size at which it is replaced, soon from three quarters of the wear, and good before", () => {
    expect([state("14.5"), state("14.4"), state("14.51"), state("14.625"), state("14.63")]).toEqual(["due", "due", "soon", "soon", "good"]);
  });
  it("goes by the worse of size and eye", () => {
    expect([state("14.9", { finding: "replace" }), state("14.4", { finding: "good" }), state("14.55", { finding: "adjust" })]).toEqual([
      "due",
      "due",
      "adjust",
    ]);
  });
  it("is nothing once it is done, and not judged where nobody measured or looked", () => {
    expect([state("14.4", { doneOn: "2031-04-02" }), state(null)]).toEqual(["done", "not judged"]);
  });
});

describe("repair of a planter", () => {
  const due = check("Opener disc", "14.4", blades);
  it("costs the parts that are due and the hours: 2 x 30 + 0.5 h x 24 = 72; over 80 ac 0.90 an acre", () => {
    const { cost, costPerArea, parts } = planter({
      planterChecks: [due, check("Opener disc", "14.9", { ...blades, row: "2" })],
      machines: [drill],
      operations: [operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" } })],
    });
    expect([cost.toFixed(), costPerArea!.toFixed(), parts[1]!.cost!.toFixed()]).toEqual(["72", "0.9", "0"]);
  });
  it("takes the price of the bills once there are some: 4 blades for 100 are 25 each, so 2 x 25 + 12 = 62", () => {
    expect(planter({ planterChecks: [due], purchases: [purchase("Blade", "4", "100")] }).cost.toFixed()).toBe("62");
  });
  it("keeps what is due soon apart, and says what has no price", () => {
    const { cost, soonCost, unpriced, needsWage } = planter({
      items: [item("Blade", "30"), item("Seal", null)],
      settings,
      planterChecks: [check("Opener disc", "14.6", blades), check("Seal", null, { finding: "replace", item: "Seal", hours: hours("1") })],
    });
    expect([cost.toFixed(), soonCost.toFixed(), unpriced, needsWage]).toEqual(["0", "60", ["Seal"], true]);
  });
  it("is no cost of the season", () => {
    const costOf = (planterChecks: readonly PlanterCheck[]) =>
      seasonFigures(
        seasonOf({ fields: [field("Home", "80", "200")], items: [item("Blade", "30")], planterChecks }),
      ).crops[0]!.outlook.costPerArea.layers.cashNeed.toFixed();
    expect(costOf([due])).toBe(costOf([]));
  });
  it("has no figure per acre where no row of Operations names the machine, nor where its rows cover nothing", () => {
    expect(planter({ planterChecks: [due] }).costPerArea).toBeNull();
  });
});
