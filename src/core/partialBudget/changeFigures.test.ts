import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { corn, field, operation, otherCost, seasonOf } from "../../../tests/support/season";
import { Decimal, sum } from "../numbers/decimal";
import type { Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { area, money, moneyPerUnit, points, share, yearlyRate, years } from "../numbers/units";
import { type breakEven } from "./breakEvenOfChange";
import { amountPerAcre, outlay, perAcre, type ChangeLine } from "./change";
import { withEntries } from "./changeEntry";
import { netChange } from "./netChange";
import type { SeasonChange } from "./seasonChange";

const entered = (line: ChangeLine) => ({ ...line, sellsCrop: false });
const gain = (quantity: string | null) => ({
  ...perAcre("added returns", {
    item: "Yield gain",
    unit: "bu/ac",
    quantity: quantity === null ? null : new Decimal(quantity),
    price: null,
  }),
  sellsCrop: true,
});
const wheels = entered(
  outlay("added costs", { item: "Wheels", unit: "row", quantity: new Decimal("16"), price: money("300") }, years("5"), money("400")),
);
const upkeep = entered(amountPerAcre("added costs", "Upkeep", new Decimal("0.5"), "ac"));
const change = (more: Partial<SeasonChange>): SeasonChange => ({
  name: "Wheels",
  area: area("200"),
  rate: yearlyRate("0.06"),
  target: { crop: "Corn" },
  layout: null,
  countedIn: false,
  lines: [gain(null), wheels, upkeep],
  ...more,
});

const beans = { ...corn, name: "Soybeans", price: moneyPerUnit("10") };
const season = (...changes: readonly SeasonChange[]): Season =>
  seasonOf({
    crops: [
      {
        ...corn,
        price: moneyPerUnit("4.40"),
        lowPrice: moneyPerUnit("3.80"),
        sellingCostPerUnit: moneyPerUnit("0.20"),
        expectedHarvestMoisture: points("20.5"),
      },
      beans,
    ],
    settings: { ...seasonOf({}).settings, dryingChargePerPoint: moneyPerUnit("0.04") },
    fields: [
      field("Alder", "120", "200"),
      field("Birch", "80", "150", { operatorShare: share("0.5"), tenure: "crop share" }),
      field("Cedar", "100", "50", { crop: "Soybeans" }),
    ],
    operations: [operation("Planting", "Alder", "24", "plan")],
    otherCosts: [otherCost("Office", "3000")],
    changes,
  });

describe("changeFigures", () => {
  it("prices grain of a field by its own share, drying at its expected moisture taken off", () => {
    const [alder, birch] = seasonFigures(season(change({ target: { field: "Alder" } }), change({ target: { field: "Birch" } }))).changes;
    // 4.40 − 0.20 − 5 points × 0.04, and half of it.
    const perUnit = (of: typeof alder) =>
      netChange(withEntries(of!.change, [{ entry: { of: "quantity", line: of!.change.lines[0]! }, value: new Decimal("1") }])).quadrants[
        "added returns"
      ].perArea!.toString();
    expect([perUnit(alder), perUnit(birch)]).toEqual(["4", "2"]);
  });

  it("weighs the share of a crop by what its fields grow", () => {
    const [corn200] = seasonFigures(season(change({}))).changes;
    const grain = corn200!.change.lines[0]!.price as { share: Decimal };
    // (24,000 + 12,000 × 0.5) ÷ 36,000
    expect(grain.share.times("6").toFixed(12)).toBe("5.000000000000");
  });

  it("leads with the gain that pays, at each price, and takes the expected price where no high one is entered", () => {
    const [figures] = seasonFigures(season(change({ target: { field: "Alder" } }))).changes;
    const { breakEven: needed, gainNeeded, net, payback } = figures!;
    // (4800 − 400 ÷ 1.06⁵) × 0.23739640 + 100 = 1168.54416, worked apart in exact fractions; ÷ 200 ac ÷ 4.00
    expect(needed.yieldGain).toMatchObject({ found: true, pays: "above" });
    expect(needed.yieldGain!.found && needed.yieldGain!.value.toFixed(6)).toBe("1.460680");
    const at = (key: "low" | "expected" | "high") => {
      const answer = gainNeeded![key];
      return answer.found ? answer.value : null;
    };
    expect(at("low")!.times("3.4").toFixed(20)).toBe(at("expected")!.times("4").toFixed(20));
    expect(at("high")!.eq(at("expected")!)).toBe(true);
    expect([net.net.perYear, payback]).toEqual([null, null]);
  });

  it("has no strip without grain, and none without another price", () => {
    const { changes } = seasonFigures(season(change({ lines: [wheels] }), change({ target: { crop: "Soybeans" } })));
    expect(changes.map(({ strip, gainNeeded }) => [strip, gainNeeded])).toEqual([
      [null, null],
      [null, null],
    ]);
  });

  it("moves price and yield together once the gain is entered: none, as entered, half as much again", () => {
    const [figures, open] = seasonFigures(
      season(change({ target: { field: "Alder" }, lines: [gain("2"), upkeep] }), change({ target: { field: "Alder" } })),
    ).changes;
    const { grid } = figures!;
    const net = (of: "low" | "expected" | "high") =>
      [grid!.net[of].low, grid!.net[of].expected, grid!.net[of].high].map((each) => each.net.perArea!.toString());
    // Brought home at 3.80 and 4.40: 3.40 and 4.00 a bushel; less 0.50. No high price is entered.
    expect([net("low"), net("expected"), net("high")]).toEqual([
      ["-0.5", "-0.5", "-0.5"],
      ["6.3", "7.5", "7.5"],
      ["9.7", "11.5", "11.5"],
    ]);
    expect(open!.grid).toBeNull();
  });

  it("does not take a whole crop for a difference in yield, as in a reseeding", () => {
    const kept = { ...gain("170"), quadrant: "reduced returns" as const };
    const [swap, loss] = seasonFigures(
      season(
        change({ target: { field: "Alder" }, lines: [gain("176"), kept, upkeep] }),
        change({ target: { field: "Alder" }, lines: [gain("176"), { ...kept, quantity: new Decimal("9") }] }),
      ),
    ).changes;
    expect([swap!.grid, swap!.strip === null]).toEqual([null, false]);
    expect(loss!.grid!.line.quadrant).toBe("reduced returns");
  });

  it("takes no cost, no payment and no gain of nothing for a difference in yield", () => {
    const payment = entered({ ...amountPerAcre("added returns", "Payment", new Decimal("1"), "ac") });
    const inGrain = { ...gain("2"), quadrant: "added costs" as const };
    const at = (...lines: SeasonChange["lines"]) => seasonFigures(season(change({ target: { field: "Alder" }, lines }))).changes[0]!.grid;
    expect(at(payment, gain("2"))!.line.item).toBe("Yield gain");
    expect(at(inGrain, gain("2"))!.line.quadrant).toBe("added returns");
    expect([at(inGrain), at(payment), at(gain("0")), at(gain("-176"), upkeep)]).toEqual([null, null, null, null]);
    // Half of the 200 of the field is still a difference, a bushel more is a crop.
    expect([at(gain("100")) === null, at(gain("101"))]).toEqual([false, null]);
  });

  it("has no grid while another entry is blank, and goes by the high price where that is the only other one", () => {
    const blank = { ...upkeep, price: null };
    const high = (of: Season): Season => ({
      ...of,
      crops: of.crops.map((each) => ({ ...each, lowPrice: null, highPrice: moneyPerUnit("5") })),
    });
    const of = season(
      change({ target: { field: "Alder" }, lines: [gain("2"), blank] }),
      change({ target: { field: "Alder" }, lines: [gain("2"), upkeep] }),
    );
    const [open, closed] = seasonFigures(high(of)).changes;
    expect(open!.grid).toBeNull();
    // 4.00 and 4.60 a bushel brought home.
    expect([closed!.strip!.low, closed!.strip!.high, closed!.grid!.net.expected.high].map(({ net }) => net.perArea!.toString())).toEqual([
      "7.5",
      "8.7",
      "8.7",
    ]);
  });

  it("is about the crop of its field", () => {
    const { changes } = seasonFigures(season(change({ target: { field: "Cedar" } }), change({ target: { field: "Alder" } })));
    expect(changes.map(({ crop }) => crop)).toEqual(["Soybeans", "Corn"]);
  });

  it("takes the blank return for the gain, before grain that is known", () => {
    const payment = entered({ ...amountPerAcre("added returns", "Payment", new Decimal("1"), "ac"), quantity: null });
    const [open, known] = seasonFigures(
      season(change({ lines: [gain("2"), payment, upkeep] }), change({ lines: [{ ...payment, quantity: new Decimal("1") }, gain("2")] })),
    ).changes;
    expect([open!.gain!.item, known!.gain!.item]).toEqual(["Payment", "Yield gain"]);
  });

  it("solves the price of the gain's own line where it has one", () => {
    const priced = { ...gain("2"), price: money("5"), sellsCrop: false };
    const [figures] = seasonFigures(season(change({ target: null, lines: [priced, upkeep] }))).changes;
    expect(figures!.crop).toBeNull();
    expect(figures!.breakEven.price).toMatchObject({ found: true });
    expect(figures!.breakEven.price!.found && figures!.breakEven.price!.value.toString()).toBe("0.25");
  });

  it("refuses a crop that no field grows, and grain of no crop", () => {
    expect(() => seasonFigures(season(change({ target: { crop: "Oats" } })))).toThrow(RangeError);
    expect(() => seasonFigures(season(change({ target: null })))).toThrow(RangeError);
  });

  it("adds up by quadrants, and every break-even brings the net change to nothing", () => {
    const amounts = fc.integer({ min: 1, max: 100_000 }).map((cents) => new Decimal(`${cents}e-2`));
    fc.assert(
      fc.property(amounts, amounts, fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 10 }), (price, upkeepCost, acres, kept) => {
        const lines = [
          gain("2"),
          entered({ ...wheels, price: money(price), yearsKept: years(String(kept)) }),
          entered({ ...upkeep, price: money(upkeepCost) }),
          entered(amountPerAcre("reduced costs", "Spared", new Decimal("1"), "ac")),
        ];
        const [figures] = seasonFigures(season(change({ area: area(String(acres)), lines }))).changes;
        const { net, change: priced, gain: led, breakEven: needed } = figures!;
        const of = (quadrant: keyof typeof net.quadrants) => net.quadrants[quadrant].perYear!;
        expect(
          of("added returns")
            .plus(of("reduced costs"))
            .minus(of("added costs"))
            .minus(of("reduced returns"))
            .minus(net.net.perYear!)
            .abs()
            .lt("1e-20"),
        ).toBe(true);
        expect(net.net.perArea!.times(priced.area).minus(net.net.perYear!).abs().lt("1e-20")).toBe(true);
        const nothing = (entry: Parameters<typeof breakEven>[1], answer: ReturnType<typeof breakEven>) =>
          !answer.found ||
          netChange(withEntries(priced, [{ entry, value: answer.value }]))
            .net.perYear!.abs()
            .lt("1e-15");
        expect(nothing({ of: "quantity", line: led! }, needed.yieldGain!)).toBe(true);
        expect(nothing({ of: "grain price" }, needed.price!)).toBe(true);
        expect(nothing({ of: "area" }, needed.area)).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});

describe("overlays", () => {
  it("share a change of the whole farm by land, an acre under two crops half to each", () => {
    // 100 acres of corn with 60 of beans after it: 70 and 30 of 100.
    const fields = [field("Alder", "100", "200"), field("Alder beans", "60", "30", { crop: "Soybeans", sameLandAs: "Alder" })];
    const farm = change({ name: "Farm", target: null, countedIn: true, area: area("100"), lines: [upkeep] });
    const [corn, beans] = seasonFigures({ ...season(farm), fields }).overlays.map(({ added }) => added[0]!.inAll!);
    expect(corn!.times("3").toFixed(20)).toBe(beans!.times("7").toFixed(20));
    expect(corn!.isZero()).toBe(false);
  });

  const known = (name: string, more: Partial<SeasonChange>) =>
    change({ name, countedIn: true, lines: [gain("2"), wheels, upkeep], ...more });

  it("leaves the budgets alone, and says nothing where no change is counted in", () => {
    const [bare, weighed, countedIn] = [season(), season(change({})), season(known("Counted", {}))].map(seasonFigures);
    expect(weighed!.overlays).toEqual([]);
    expect(countedIn!.crops.map(({ outlook }) => outlook.netPerArea.full.toString())).toEqual(
      bare!.crops.map(({ outlook }) => outlook.netPerArea.full.toString()),
    );
  });

  it("add up: outlook and changes to the crop, and all crops to all changes", () => {
    const changes = [
      known("Corn", {}),
      known("One field", { target: { field: "Birch" }, area: area("40") }),
      known("Farm", { target: null, area: area("300"), lines: [wheels, upkeep] }),
      change({ name: "Only weighed" }),
    ];
    const { overlays: laid, changes: answers, crops } = seasonFigures(season(...changes));
    expect(laid.map(({ crop, added }) => [crop, added.map((each) => each.change)])).toEqual([
      ["Corn", ["Corn", "One field", "Farm"]],
      ["Soybeans", ["Farm"]],
    ]);
    for (const overlay of laid) {
      const crop = crops.find((each) => each.crop === overlay.crop)!;
      expect(overlay.outlook.perArea.eq(crop.outlook.netPerArea.full)).toBe(true);
      const total = overlay.outlook.inAll.plus(sum(overlay.added.map(({ inAll }) => inAll!)));
      expect(overlay.withChanges!.inAll.minus(total).abs().lt("1e-20")).toBe(true);
      expect(overlay.withChanges!.perArea.times(overlay.area).minus(total).abs().lt("1e-20")).toBe(true);
    }
    const added = sum(laid.flatMap((overlay) => overlay.added.map(({ inAll }) => inAll!)));
    const countedIn = sum(answers.filter((each) => each.change.countedIn).map(({ net }) => net.net.perYear!));
    expect(added.minus(countedIn).abs().lt("1e-20")).toBe(true);
    // The farm's change falls by area: 200 of 300 acres to corn.
    const farm = laid.map((overlay) => overlay.added.find((each) => each.change === "Farm")!.inAll!);
    expect(farm[0]!.minus(farm[1]!.times("2")).abs().lt("1e-20")).toBe(true);
  });

  it("know no outcome while a change that is counted in has a blank entry", () => {
    const [overlay] = seasonFigures(season(change({ countedIn: true }))).overlays;
    expect(overlay).toMatchObject({ withChanges: null, added: [{ change: "Wheels", inAll: null, perArea: null }] });
    expect(seasonFigures(season(change({ countedIn: true }), known("Known", {}))).overlays[0]!.withChanges).toBeNull();
  });
});
