import { describe, expect, it } from "vitest";
import { paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { formatOf } from "../format";
import { itemsView } from "./itemsView";
import { salesView } from "./salesView";

const format = formatOf(paneSeason.settings, "en-US");
const { items, crops } = reportOf().figures;

describe("the items", () => {
  it("say what is bought, used, needed, short and left, and what the shortfall will cost", () => {
    const view = itemsView(items, format);
    // Seed: 34,000 × 120 ÷ 80,000 = 51 used, 33,000 × 78.5 ÷ 80,000 = 32.38 needed, 70 bought: 13.38 short at 268.
    expect(view.items[0]).toMatchObject({
      item: "Corn seed A",
      price: "bag, average 268.00 USD",
      bought: "70",
      used: "51",
      needed: "32.38",
      short: "13.38",
      left: "0",
      isShort: true,
      shortCost: "short, will cost 3,586.18 USD",
      paid: "paid 268.00, planned 268.00: as planned",
      isDear: false,
      // 70 ÷ 83.38
      boughtPart: 84,
    });
    // 8,550 ÷ 30,000 = 0.285 against 0.26 planned: 9.6 % above it, 0.29 as shown.
    expect(view.items[1]).toMatchObject({ paid: "paid 0.29, planned 0.26: 0.03 higher", isDear: false, boughtPart: 97 });
    // Soybean seed: 140,000 × 64 ÷ 140,000 = 64 of 70 bags used.
    expect(view.items[2]).toMatchObject({ used: "64", needed: "0", short: "0", left: "6", isShort: false, shortCost: "" });
    // With urea: 30,975 lb needed, 30,000 bought: 975 short at 0.285 = 277.875.
    expect(view.summary).toBe("2 of 4 items are short; buying the rest will cost 3,864.05 USD.");
  });

  it("owns up to a price that is not known", () => {
    const unpriced = items.map((item) => ({ ...item, averagePrice: null, shortCost: null }));
    const view = itemsView(unpriced, format);
    expect(view.summary).toContain(", and 2 without a price");
    expect(view.items[0]).toMatchObject({ price: "bag, no price known", shortCost: "short, at a price not known yet" });
  });

  it("say when nothing is short", () => {
    expect(
      itemsView(
        items.filter(({ short }) => short.isZero()),
        format,
      ).summary,
    ).toBe("Everything that the plan still needs is bought.");
  });
});

describe("the grain sales", () => {
  it("say what is sold, what is left and what price the rest needs, naming the layer", () => {
    const { lines, note, entries } = salesView(crops[0]!, "cash", format);
    // 195 × 120 + 185 × 78.5 = 37,922.5 bu; (425.6901 × 198.5 − 12,000 × 4.62) ÷ 25,922.5 = 1.1210, rounded up.
    expect(lines.map(({ name, figure, unit }) => [name, figure, unit])).toEqual([
      ["Sold and contracted", "12,000", "bu"],
      ["Average price", "4.62", "USD per bu"],
      ["Unsold of the projected crop", "25,922.5", "bu"],
      ["Price needed on unsold bushels, cash cost", "1.13", "USD per bu"],
      ["Expected price", "4.35", "USD per bu"],
    ]);
    expect(note).toBe("");
    expect(entries).toEqual([{ table: "Sales", row: 1 }]);
  });

  it("say when more is sold than there will be", () => {
    const sales = { ...crops[0]!.sales, unsold: crops[0]!.sales.unsold.neg() as (typeof crops)[0]["sales"]["unsold"] };
    const { lines, note } = salesView({ ...crops[0]!, sales }, "cash", format);
    expect(lines[2]).toEqual({ name: "Sold beyond the projected crop", figure: "25,922.5", unit: "bu" });
    expect(note).toContain("More is sold");
  });
});
