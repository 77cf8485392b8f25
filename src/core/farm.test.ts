import { describe, expect, it } from "vitest";
import { reportOf } from "../../tests/support/paneSeason";
import { layers } from "./kinds";
import { farmFigures, newestStage } from "./farm";

const { figures } = reportOf();

describe("the whole farm", () => {
  it("counts sold grain at its own price and the rest at the price entered", () => {
    // Corn: 12,000 bu at 4.62 and the rest of 120 × 195 + 78.5 × 185 = 37,922.5 bu at 4.35: 168,202.875.
    // Soybeans: 0.6 of the 3,520 bu weighed at 10.40: 21,964.80.
    expect(farmFigures(figures, newestStage).income.toFixed(4)).toBe("190167.6750");
    // In the plan the beans yield 58 bu on 64 acres: 23,162.88.
    expect(farmFigures(figures, () => "plan").income.toFixed(4)).toBe("191365.7550");
  });

  it("leaves over income less cost in every layer, crop by crop", () => {
    const farm = farmFigures(figures, newestStage);
    for (const layer of layers) {
      expect(farm.leftOver[layer].toFixed(6)).toBe(farm.income.minus(farm.costs[layer]).toFixed(6));
      expect(farm.crops[0]!.leftOver[layer].plus(farm.crops[1]!.leftOver[layer]).toFixed(6)).toBe(farm.leftOver[layer].toFixed(6));
    }
    // 198.5 acres of corn at 425.6901 of cash cost, of which the hand computation stands beside the view of a crop.
    expect(farm.costs.cash.minus(figures.crops[1]!.final!.costPerArea.layers.cash.times("64")).div("198.5").toFixed(2)).toBe("425.69");
  });
});
