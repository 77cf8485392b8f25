import { describe, expect, it } from "vitest";
import { paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { Decimal, sum } from "../../core/numbers/decimal";
import { layers } from "../../core/kinds";
import type { Kind } from "../../core/kinds";
import { moneyPerArea, moneyPerUnit } from "../../core/numbers/units";
import { formatOf } from "../format";
import { cropBlock } from "./cropBlock";
import { farmView } from "./farmView";
import { movedView } from "./movedView";
import { lineWidth, needLine } from "./needLine";

const format = formatOf(paneSeason.settings, "en-US");
const report = reportOf();
const [corn, soybeans] = [report.figures.crops[0]!, report.figures.crops[1]!];
const at = (price: string) => ({ ...corn, outlook: { ...corn.outlook, price: moneyPerUnit(price) } });
const number = (signed: string) => new Decimal(signed.replace("−", "-").replace(/[+,]/g, ""));

describe("the block of a crop", () => {
  it("leads with the cost of the chosen layer and what it moved by", () => {
    // 425.69 against 408.75 of the plan, worked by hand in the test of the crop's tables.
    expect(cropBlock(corn, "cash", paneSeason, format)).toMatchObject({
      crop: "Corn",
      area: "198.5 ac",
      figure: "425.69",
      unit: "USD per acre, cash cost, projected",
      since: "+16.94 since plan",
      isHigher: true,
    });
    expect(cropBlock(soybeans, "cash", paneSeason, format).unit).toBe("USD per acre, cash cost, final");
  });

  it("says what the price covers, and what each layer that it does not cover needs", () => {
    expect(cropBlock(corn, "cash", paneSeason, format)).toMatchObject({ covers: "4.35 a bushel covers every layer.", lacks: "" });
    // Cash needs 2.2282, shown as 2.23, cash need 2.41 and full 2.82.
    const needed = (layer: "cash" | "full" | "cashNeed") => format.priceNeeded(corn.outlook.breakEvenPrice[layer]);
    expect(cropBlock(at(needed("cashNeed")), "cash", paneSeason, format)).toMatchObject({
      covers: `${needed("cashNeed")} a bushel covers all but full cost.`,
      lacks: `Needed for full cost ${needed("full")}.`,
    });
    expect(cropBlock(at("2.22"), "cash", paneSeason, format)).toMatchObject({
      covers: "2.22 a bushel covers operating cost.",
      lacks: `Needed for cash cost 2.23, full cost ${needed("full")}, cash need ${needed("cashNeed")}.`,
    });
    expect(cropBlock(at("0.50"), "cash", paneSeason, format).covers).toBe("0.50 a bushel covers no layer.");
  });

  it("does not praise a price while only land is entered", () => {
    const costing = (...kinds: readonly Kind[]) => ({
      ...corn,
      outlook: {
        ...corn.outlook,
        costPerArea: { ...corn.outlook.costPerArea, byKind: new Map(kinds.map((kind) => [kind, moneyPerArea("200")])) },
      },
    });
    expect(cropBlock(costing("cash rent"), "cash", paneSeason, format).covers).toMatch(/^Only land is entered yet: /);
    expect(cropBlock(costing(), "cash", paneSeason, format).covers).toMatch(/^No cost is entered yet: /);
    expect(cropBlock(costing("cash rent", "seed"), "cash", paneSeason, format).covers).toMatch(/covers every layer/);
  });

  it("says every figure of its two lines in words too", () => {
    const block = cropBlock(at("2.22"), "cash", paneSeason, format);
    expect(block.price!.says).toMatch(
      /^Price of Corn, USD per bu: expected 2\.22, low 3\.90; needed: operating [\d.]+, cash 2\.23, not covered, full [\d.]+, not covered, cash need [\d.]+, not covered\.$/,
    );
    expect(block.priceCaption).toBe("Price, USD per bu: low 3.90");
    expect(block.yieldCaption).toBe("Yield, bu per acre: goal 191.0, proven 180.4");
    expect(block.yield!.says).toContain("projected 191.0, goal 191.0, proven 180.4; needed: operating ");
  });
});

describe("the line of what is needed", () => {
  const mark = (words: string, value: string) => ({ name: words, words, value: new Decimal(value) });

  it("keeps positions in proportion and labels inside and apart", () => {
    const line = needLine(
      "Price",
      ["2", "2.1", "3", "4"].map((value) => ({ ...mark(`operating ${value}`, value), isShort: value === "4" })),
      [mark("expected 3", "3")],
      null,
    )!;
    expect(line.needs.map(({ x }) => x)).toEqual([6, 19.2, 138, 270]);
    for (const label of line.below)
      expect(label.x - (label.words.length * 6.5) / 2 >= 0 && label.x + (label.words.length * 6.5) / 2 <= lineWidth).toBe(true);
    for (const [index, one] of line.below.entries()) {
      for (const other of line.below.slice(index + 1))
        if (one.row === other.row)
          expect(Math.abs(one.x - other.x)).toBeGreaterThanOrEqual(((one.words.length + other.words.length) * 6.5) / 2);
    }
  });

  it("stands in the middle where all is one value, and is none without anything needed", () => {
    expect(needLine("Price", [{ ...mark("cash 3", "3"), isShort: false }], [mark("expected 3", "3")], null)!.needs[0]!.x).toBe(
      lineWidth / 2,
    );
    expect(needLine("Price", [], [mark("expected 3", "3")], null)).toBeNull();
  });
});

describe("what moved a crop", () => {
  it.each(layers)("adds up to the difference of the net returns as they are shown, %s", (layer) => {
    for (const crop of [corn, soybeans]) {
      const view = movedView(crop, layer, format)!;
      const now = crop.final ?? crop.outlook;
      expect(number(view.total).toFixed(2)).toBe(
        new Decimal(now.netPerArea[layer].toFixed(2)).minus(crop.plan.netPerArea[layer].toFixed(2)).toFixed(2),
      );
      expect(
        sum([...view.lines.map(({ amount }) => number(amount)), ...(view.rest === null ? [] : [number(view.rest.amount)])]).toFixed(2),
      ).toBe(number(view.total).toFixed(2));
    }
  });

  it("names the largest with their direction, and leads to their entries", () => {
    const { lines } = movedView(corn, "cash", format)!;
    expect(lines[0]).toMatchObject({
      words: "Diesel, not planned",
      amount: "−11.83",
      isLoss: true,
      entries: [{ table: "Purchases", row: 4 }],
    });
    expect(movedView(soybeans, "cash", format)!.lines.map(({ words }) => words)).toContain("Yield below the goal, 1 field");
  });

  it("says nothing where nothing moved", () => {
    expect(
      movedView({ ...corn, fields: corn.fields.map((field) => ({ ...field, outlook: field.plan })), outlook: corn.plan }, "cash", format),
    ).toBeNull();
  });
});

describe("the strip of the whole farm", () => {
  it("says what is left over, against the plan, and which crop falls short", () => {
    const view = farmView(report, "cash", format);
    expect(view).toMatchObject({ isLoss: false, income: "income 190,168", short: "No crop falls short of any layer." });
    const cheap = reportOf({
      ...paneSeason,
      sales: [],
      crops: paneSeason.crops.map((crop) => (crop.name === "Corn" ? { ...crop, price: moneyPerUnit("2.30") } : crop)),
    });
    expect(farmView(cheap, "cash", format).short).toMatch(/^Every crop covers its cash cost\. Short of full cost: Corn/);
    // 2.30 × 191.0453 less 538.74 of full cost is 99.34 short an acre: 19,719 on 198.5 acres.
    expect(farmView(cheap, "full", format).short).toMatch(/^Short of full cost: Corn by 19,71\d/);
  });

  it("marks a farm that falls short, with its bar no longer than the strip", () => {
    const poor = reportOf({ ...paneSeason, sales: [], crops: paneSeason.crops.map((crop) => ({ ...crop, price: moneyPerUnit("0.40") })) });
    const view = farmView(poor, "full", format);
    expect(view.isLoss).toBe(true);
    expect(view.bar.cost).toBe("100.0");
    expect(new Decimal(view.bar.income).lt("100")).toBe(true);
  });
});
