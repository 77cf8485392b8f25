import { describe, expect, it } from "vitest";
import { paneSeason, reportOf } from "../../../tests/support/paneSeason";
import { purchase } from "../../../tests/support/season";
import { formatOf } from "../format";
import { matching } from "../parts/matching";
import { emptyDraft, itemNamed, lastPrice, notYet, purchaseView, type PurchaseDraft } from "./purchaseDraft";
import { typedNumber } from "../parts/typed";
import { whatChanged } from "./whatChanged";

const format = formatOf(paneSeason.settings, "en-US");
const draft = (parts: Partial<PurchaseDraft>): PurchaseDraft => ({
  ...emptyDraft("2031-04-20"),
  item: "Corn seed A",
  quantity: "10",
  unit: "bag",
  price: "270",
  ...parts,
});
const view = (parts: Partial<PurchaseDraft> = {}) => purchaseView(draft(parts), { items: paneSeason.items, decimalComma: false }, format);

describe("a purchase that is being typed", () => {
  it("says what it costs, per pack too, freight and rebate included", () => {
    expect(view().says).toBe("10 bag of Corn seed A for 2,700.00 USD: 270.00 USD per bag.");
    expect(view({ freight: "60", rebate: "10" }).says).toBe(
      "10 bag of Corn seed A for 2,700.00 USD, 2,750.00 USD with freight and rebate: 275.00 USD per bag.",
    );
  });

  it("turns another unit into packs", () => {
    // 800,000 seeds are 10 bags of 80,000.
    expect(view({ quantity: "800 000", unit: "seeds", price: "", amount: "2,700" }).says).toContain("270.00 USD per bag");
  });

  it("writes a row by heading, what was left blank left out, under the item's own spelling", () => {
    const { row, faults } = view({ item: " corn SEED a ", supplier: " A supplier " });
    expect(faults).toEqual({});
    expect(
      [...row!].map(([heading, value]) => [heading, typeof value === "object" && "toFixed" in value ? value.toFixed() : value]),
    ).toEqual([
      ["Date", { day: "2031-04-20" }],
      ["Item", "Corn seed A"],
      ["Quantity", "10"],
      ["Unit", "bag"],
      ["Unit price", "270"],
      ["Supplier", "A supplier"],
    ]);
  });

  it.each<[string, Partial<PurchaseDraft>, keyof PurchaseDraft, RegExp]>([
    ["no item", { item: "" }, "item", /Choose what was bought/],
    ["an item that Items does not have", { item: "Ureah" }, "item", /no “Ureah”/],
    ["no quantity", { quantity: "" }, "quantity", /how much/],
    ["a quantity of nothing", { quantity: "0" }, "quantity", /other than zero/],
    ["words for a quantity", { quantity: "two loads" }, "quantity", /a number/],
    ["a unit that the item is not counted in", { unit: "gal" }, "unit", /unit/],
    ["neither price nor amount", { price: "" }, "price", /price per unit, or the amount/],
    ["a negative price", { price: "-270" }, "price", /zero or more/],
    ["a price and an amount that disagree by a cent", { amount: "2700.01" }, "amount", /10 × 270.00 USD is 2,700.00 USD/],
    ["a return whose amount is not negative", { quantity: "-2", price: "", amount: "540" }, "amount", /negative/],
    ["no date", { date: "" }, "date", /date/],
    ["a freight in words", { freight: "free" }, "freight", /a number/],
  ])("finds fault with %s", (_, parts, field, words) => {
    const { faults, row, says } = view(parts);
    expect(Object.keys(faults)).toEqual([field]);
    expect(faults[field]).toMatch(words);
    expect([row, says]).toEqual([null, ""]);
  });

  it("accepts a price and an amount that agree to the cent, and a return", () => {
    expect(view({ quantity: "3", price: "33.333", amount: "100.00" }).faults).toEqual({});
    expect(view({ quantity: "-2" }).says).toBe("−2 bag of Corn seed A for −540.00 USD: 270.00 USD per bag.");
  });

  it("charges a bill to a field or crop directly, for which an amount and a kind are enough", () => {
    const tarps = { item: "Tarps", quantity: "", unit: "", price: "", amount: "300" };
    expect(Object.keys(view({ ...tarps, over: "Corn" }).faults)).toEqual(["kind"]);
    expect(Object.keys(view({ kind: "supplies" }).faults)).toEqual(["over"]);
    const direct = view({ ...tarps, over: "Corn", kind: "supplies" });
    expect([direct.faults, direct.says, direct.perPack]).toEqual([{}, "Tarps for 300.00 USD, charged to Corn.", null]);
    expect([...direct.row!].map(([heading, value]) => [heading, String(value)])).toEqual([
      ["Date", "[object Object]"],
      ["Item", "Tarps"],
      ["Amount", "300"],
      ["Kind", "supplies"],
      ["For", "Corn"],
    ]);
    expect(view({ ...tarps, amount: "", over: "Corn", kind: "supplies" }).faults).toEqual({ price: "Enter the amount." });
    expect(Object.keys(view({ ...tarps, amount: "", price: "100", over: "Corn", kind: "supplies" }).faults)).toEqual(["quantity"]);
  });

  it("is an amount of a kind for a crop or field where nothing stands in Items yet", () => {
    const first = (parts: Partial<PurchaseDraft>) =>
      purchaseView({ ...emptyDraft("2031-04-20"), item: "Seed corn", ...parts }, { items: [], decimalComma: false }, format);
    expect(first({}).faults).toEqual({
      over: "Choose the crop or field that it is for.",
      kind: "Choose what kind of cost it is: the table Items does not have it.",
      amount: "Enter the amount.",
    });
    const { faults, row } = first({ over: "Corn", kind: "seed", amount: "3900" });
    expect(faults).toEqual({});
    expect([...row!.keys()]).toEqual(["Date", "Item", "Amount", "Kind", "For"]);
  });

  it("knows what a unit cost when it was bought last, by whatever unit it is bought now", () => {
    const item = itemNamed(paneSeason.items, "Corn seed A")!;
    const bought = [purchase("Corn seed A", "800000", "2600"), purchase("Corn seed A", "-80000", "-300")];
    expect(lastPrice({ purchases: bought }, item, "bag")!.price.toFixed()).toBe("260");
    expect(lastPrice({ purchases: bought }, item, "thousand seeds")!.price.toFixed()).toBe("3.25");
    expect(lastPrice({ purchases: [] }, item, "bag")).toBeNull();
  });

  it("offers the pack first, then the units that convert to it", () => {
    expect(view().units).toEqual(["bag", "seeds", "thousand seeds"]);
    expect(view({ item: "Urea" }).units).toEqual(["lb", "oz", "cwt", "ton", "t", "kg", "g"]);
  });
});

describe("a number in the form", () => {
  it.each([
    ["1,234.50", "1234.5"],
    ["1.234,50", "1234.5"],
    ["1 234,5", "1234.5"],
    ["$1,250", "1250"],
    ["12,5", "12.5"],
    ["1.5", "1.5"],
    ["−3", "-3"],
  ])("reads %s as %s", (text, value) => {
    expect(typedNumber(text, false)?.toFixed()).toBe(value);
  });
  it("reads a lone comma or point as the workbook does", () => {
    expect([typedNumber("1,250", false)?.toFixed(), typedNumber("1,250", true)?.toFixed(), typedNumber("1.250", true)?.toFixed()]).toEqual([
      "1250",
      "1.25",
      "1250",
    ]);
  });
  it.each(["", "abc", "1,2,3", "1.2.3", "12%"])("does not read “%s”", (text) => {
    expect(typedNumber(text, false)).toBeNull();
  });
});

describe("the list of items", () => {
  it("has first what begins with what is typed", () => {
    expect(matching(["Water conditioner", "Diesel", "Urea"], "di")).toEqual(["Diesel", "Water conditioner"]);
  });
});

describe("what keeps a purchase from being added", () => {
  it("is marked at its box, and named again only where the box may be folded away", () => {
    expect(notYet({ quantity: "Enter a number." })).toBe("Not added yet. Fix the boxes marked.");
    expect(notYet({ item: "Choose what was bought.", freight: "Enter a number." })).toBe(
      "Not added yet. Fix the boxes marked. Freight: Enter a number.",
    );
  });
});

describe("what an entry changed", () => {
  const before = reportOf();
  it("is the cost per area of each crop that moved, before and after", () => {
    const after = reportOf({ ...paneSeason, purchases: [...paneSeason.purchases, purchase("Urea", "1000", "900")] });
    // 0.285 a lb becomes 9,450 ÷ 31,000; 30,975 lb on 198.5 ac: 44.4729 → 47.5687.
    expect(whatChanged(before, after, { layer: "cash", format, item: null })).toBe(
      "Cost per acre of Corn: 425.69 → 428.79 (USD, cash cost, projected).",
    );
  });
  it("is told also when no cost moved, and when a problem came with it", () => {
    const said = (item: string) => whatChanged(before, before, { layer: "cash", format, item: itemNamed(paneSeason.items, item) });
    expect(said("Diesel")).toBe("No cost per acre changed by a cent.");
    expect(said("Urea")).toBe("No cost per acre changed by a cent: Urea is charged as it is used, and what is left over is stock.");
    const after = reportOf(paneSeason, [{ code: "not-a-number", at: { table: "Purchases", row: 5 }, found: "x", touches: [] }]);
    expect(whatChanged(before, after, { layer: "cash", format, item: null })).toBe(
      "No cost per acre changed by a cent. 1 new entry to fix or to check: see the line at the top.",
    );
  });
});
