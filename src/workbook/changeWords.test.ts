import { describe, expect, it } from "vitest";
import { item, seasonOf } from "../../tests/support/season";
import { type Decimal, one } from "../core/decimal";
import { amountPerAcre } from "../core/partialBudget/change";
import type { SeasonChange } from "../core/partialBudget/seasonChange";
import { area, yearlyRate } from "../core/units";
import { changeCautions, changeFindings } from "./changeWords";

const named = (name: string, ...items: readonly string[]): SeasonChange => ({
  name, area: area("100"), rate: yearlyRate("0"), target: null, active: false,
  lines: items.map((each) => ({ ...amountPerAcre("added costs", each, one, "ac"), sellsCrop: false })),
});
const season = seasonOf({ items: [item("Partner B", "9", { kind: "crop protection" }), item("Urea", "0.3")] });
const cautions = (change: SeasonChange, quantity: Decimal | null = one) => changeCautions({ change, gain: { ...amountPerAcre("added returns", "Gain", one, "ac"), quantity } }, season).map((words) => words.split(" ").slice(0, 3).join(" "));

describe("the cautions beside a change", () => {
  it("are those of the work that its words tell of, and the one for planning always", () => {
    const planning = "Figures are for";
    expect(cautions(named("Lime", "Urea"))).toEqual([planning]);
    expect(cautions(named("Lime"), null)).toEqual(["The yield gain", planning]);
    expect(cautions(named("Parts", "Gauge wheels"))).toEqual(["The operator's manual", "Lower or block", planning]);
    expect(cautions(named("Fungicide"))).toEqual(["The label is", planning]);
    expect(cautions(named("Tank", "partner b"))).toEqual(["The label is", planning]);
    expect(cautions(named("Replant Home"))).toEqual(["Ask your insurer's", planning]);
  });
});

describe("the findings beside a change", () => {
  it.each([
    ["Closing wheels", "closing wheels"], ["Down force", "down force"], ["Openers", "row unit wear"], ["Another seeding rate", "seeding rate"], ["Another hybrid", "hybrid"], ["Fungicide", "fungicide"], ["Pinch rows", "wheel traffic"],
  ])("of %s are on %s", (name, subject) => {
    const found = changeFindings(named(name));
    expect(found.length).toBeGreaterThan(0);
    expect(new Set(found.map((each) => each.subject))).toEqual(new Set([subject]));
  });
  it("are none where no trial is known", () => {
    expect(changeFindings(named("A shed"))).toEqual([]);
  });
});
