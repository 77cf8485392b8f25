import { describe, expect, it } from "vitest";
import { paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { operation } from "../../../tests/support/season";
import type { Operation } from "../../core/season";
import { formatOf } from "../format";
import { breakEvenView, cropView } from "./cropView";

const format = formatOf(paneSeason.settings, "en-US");
const [corn, soybeans] = reportOf().figures.crops as [
  ReturnType<typeof reportOf>["figures"]["crops"][number],
  ReturnType<typeof reportOf>["figures"]["crops"][number],
];

describe("the card of a crop", () => {
  it("sets the stages beside each other, and says what they rest on", () => {
    const view = cropView(corn, "cash", format);
    // Worked by hand from the entries: rent 235 × 120 ÷ 198.5 = 142.0655; insurance 4,200 ÷ 262.5 = 16; haul 0.22 × 191.0453 = 42.0300;
    // seed (18,620 + 140) ÷ 70 = 268 a bag, 34,000 ÷ 80,000 on 120 ac and 33,000 ÷ 80,000 on 78.5 ac = 112.5752; urea 0.285 a lb,
    // (160 × 120 + 150 × 78.5) lb = 44.4729; planting 26 × 120 + combining 41 × 198.5 = 56.7179; diesel 3,105 ÷ 262.5 = 11.8286.
    expect(view).toMatchObject({
      restsOn: "at projected yield 191.0 bu per acre and expected price 4.35 USD per bu",
      stages: ["plan", "projected"],
    });
    expect(view.rows[1]).toEqual({ name: "Cost per acre", cells: ["408.75", "425.69"] });
  });

  it("says what is in the cost although the plan has nothing of it, three by name", () => {
    // 3,105 of diesel over 262.5 acres, of which no row plans anything.
    expect(cropView(corn, "cash", format).notPlanned).toBe("Not in the plan, USD per acre: Diesel 11.83.");
    const passes = ["Mowing", "Rolling", "Scouting"].map((name, index) => operation(name, "Mill Road", `${index + 1}`, "done"));
    const of = (operations: readonly Operation[]) =>
      cropView(reportOf({ ...paneSeason, purchases: [], operations }).figures.crops[0]!, "cash", format).notPlanned;
    // On 120 of 198.5 acres: 3, 2 and 1 an acre there.
    expect(of(passes)).toBe("Not in the plan, USD per acre: Scouting 1.81, Rolling 1.21, Mowing 0.60.");
    expect(of([...passes, operation("Hauling water", "Long Eighty", "0.50", "done")])).toBe(
      "Not in the plan, USD per acre: Scouting 1.81, Rolling 1.21, Mowing 0.60 and 1 more, 3.82 in all.",
    );
    expect(of([])).toBe("");
  });

  it("shows the final once every field is harvested, and rests on the harvested yield", () => {
    const view = cropView(soybeans, "cash", format);
    expect(view.stages).toEqual(["plan", "projected", "final"]);
    expect(view.restsOn).toBe("at harvested yield 55.0 bu per acre and expected price 10.40 USD per bu");
    expect(view.rows[0]).toEqual({ name: "Yield, bu per acre", cells: ["58.0", "55.0", "55.0"] });
  });

  it("changes every figure with the layer, and lists every layer", () => {
    const full = cropView(corn, "full", format);
    // Own labour 30 an acre and the land charge 210 × 78.5 ÷ 198.5 = 83.0479 come on top of the cash cost.
    expect(full.rows[1]!.cells[1]).toBe("538.74");
    expect(full.byLayer.map(({ name }) => name)).toEqual(["operating", "cash", "full", "cash need"]);
  });

  it("shows the break-evens at each yield and price once, per layer", () => {
    const { prices, yields, net, columns } = breakEvenView(corn, format);
    expect(columns).toEqual(["operating", "cash", "full", "cash need"]);
    expect(prices.map(({ name }) => name)).toEqual(["goal 191.0", "projected 191.0", "proven 180.4"]);
    expect(yields.map(({ name }) => name)).toEqual(["expected 4.35", "low 3.90"]);
    // 0.22 + (425.6901 − 42.0300) ÷ 191.0453 = 2.2282, rounded up.
    expect(prices[1]!.cells[1]).toBe("2.23");
    // (425.6901 − 42.0300) ÷ (4.35 − 0.22) = 92.8959, rounded up.
    expect(yields[0]!.cells[1]).toBe("92.9");
    expect(net.map(({ name }) => name)).toEqual([
      "goal, expected",
      "goal, low",
      "projected, expected",
      "projected, low",
      "proven, expected",
      "proven, low",
    ]);
    // Proven yield (182 × 120 + 178 × 78.5) ÷ 198.5 = 180.4181; (3.90 − 0.22) × 180.4181 − (425.6901 − 42.0300) = 280.2787.
    expect(net[5]!.cells[1]).toBe("280.28");
  });
});
