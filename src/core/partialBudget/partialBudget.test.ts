import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal, one } from "../numbers/decimal";
import { area, money, moneyPerUnit, share, yearlyRate, years } from "../numbers/units";
import { breakEven } from "./breakEvenOfChange";
import { amountPerAcre, netOfGrain, outlay, perAcre, perYear, type Change, type ChangeLine } from "./change";
import { withEntries, type ChangeEntry } from "./changeEntry";
import { netChange } from "./netChange";
import { payback, paybackOfFlows } from "./payback";
import { strip } from "./strip";

const grain = { price: moneyPerUnit("4.20"), moving: moneyPerUnit("0.30"), share: share("0.5") };
const gain = perAcre("added returns", { item: "Yield gain", unit: "bu/ac", quantity: null, price: grain });
const wheels = outlay(
  "added costs",
  { item: "Wheels", unit: "rows", quantity: new Decimal("12"), price: money("300") },
  years("6"),
  money("600"),
);
const upkeep = amountPerAcre("added costs", "Upkeep", new Decimal("0.40"), "ac");
const insurance = perYear("added costs", { item: "Insurance", unit: "year", quantity: one, price: money("90") });
const change: Change = { name: "Wheels", area: area("900"), rate: yearlyRate("0.08"), lines: [gain, wheels, upkeep, insurance] };
const known = withEntries(change, [{ entry: { of: "quantity", line: gain }, value: new Decimal("1") }]);

describe("netOfGrain", () => {
  it("is (price − what moves) × the operator's share", () => expect(netOfGrain(grain).toString()).toBe("1.95"));
});

describe("netChange", () => {
  it("is not known while a yield gain is blank, but says what it must make up for", () => {
    const result = netChange(change);
    expect([result.net.perYear, result.quadrants["added returns"].perYear]).toEqual([null, null]);
    // (3600 − 600 ÷ 1.08⁶) × 0.2163153862 + 360 + 90, worked apart
    expect(result.netOfKnown.perYear.toFixed(2)).toBe("-1146.95");
    expect(result.netOfKnown.perArea.times("900").toFixed(20)).toBe(result.netOfKnown.perYear.toFixed(20));
  });

  it("adds the quadrants that speak for the change and takes the others off", () => {
    const result = netChange(known);
    const of = (quadrant: ChangeLine["quadrant"]) => result.quadrants[quadrant].perYear!;
    expect(of("added returns").plus(of("reduced costs")).minus(of("added costs")).minus(of("reduced returns")).toString()).toBe(
      result.net.perYear!.toString(),
    );
  });

  it("spreads an outlay per acre over its years, its salvage per acre too", () => {
    const tile: ChangeLine = {
      ...perAcre("added costs", { item: "Tile", unit: "ac", quantity: one, price: money("900") }),
      yearsKept: years("30"),
      salvage: money("0"),
    };
    const result = netChange({ ...change, rate: yearlyRate("0"), lines: [tile] });
    expect(result.net.perArea!.toString()).toBe("-30");
    const withSalvage = netChange({ ...change, rate: yearlyRate("0"), lines: [{ ...tile, salvage: money("300") }] });
    expect(withSalvage.net.perArea!.toString()).toBe("-20");
  });

  it("charges a lump sum without years to the one year", () => {
    const once: ChangeLine = { ...wheels, yearsKept: null };
    expect(netChange({ ...change, lines: [once] }).net.perYear!.toString()).toBe("-3600");
  });

  it("does not spread what is paid every year, whatever years it is kept", () => {
    expect(netChange({ ...change, lines: [{ ...insurance, yearsKept: years("5") }] }).net.perYear!.toString()).toBe("-90");
  });

  it("refuses an area of nothing", () => expect(() => netChange({ ...change, area: area("0") })).toThrow(RangeError));
});

describe("breakEven", () => {
  const entries: readonly (readonly [string, Change, ChangeEntry])[] = [
    ["the yield gain", change, { of: "quantity", line: gain }],
    ["the price of the wheels", known, { of: "price", line: wheels }],
    ["their salvage value", known, { of: "salvage", line: wheels }],
    ["the grain price", known, { of: "grain price" }],
    ["the area", known, { of: "area" }],
    ["the years", known, { of: "years kept", line: wheels }],
  ];
  const sameLine = (on: Change, entry: ChangeEntry): ChangeEntry =>
    "line" in entry ? { ...entry, line: on.lines.find(({ item }) => item === entry.line.item)! } : entry;

  it.each(entries)("for %s brings the net change to nothing, and pays on the side that it names", (_, on, asked) => {
    const entry = sameLine(on, asked);
    const result = breakEven(on, entry);
    if (!result.found) throw new Error(result.why);
    const netAt = (value: Decimal) => netChange(withEntries(on, [{ entry, value }])).net.perYear!;
    expect(netAt(result.value).abs().lt("1e-20")).toBe(true);
    const better = result.value.times(result.pays === "above" ? "1.01" : "0.99");
    expect(netAt(result.value.gt("0") ? better : result.value.times(result.pays === "above" ? "0.99" : "1.01")).gt("0")).toBe(true);
  });

  it("brings any change to nothing, whatever its entries", () => {
    const amounts = fc.integer({ min: 1, max: 500_000 }).map((cents) => new Decimal(`${cents}e-2`));
    fc.assert(
      fc.property(
        amounts,
        amounts,
        amounts,
        fc.integer({ min: 1, max: 5_000 }),
        fc.integer({ min: 0, max: 1_500 }),
        fc.integer({ min: 1, max: 20 }),
        (price, cost, spared, acres, basisPoints, kept) => {
          const buy = outlay("added costs", { item: "Buy", unit: "piece", quantity: one, price: money(price) }, years(String(kept)));
          const of: Change = {
            name: "Any",
            area: area(String(acres)),
            rate: yearlyRate(`${basisPoints}e-4`),
            lines: [
              { ...gain, quantity: new Decimal("2") },
              buy,
              amountPerAcre("added costs", "Cost", cost, "ac"),
              perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money(spared) }),
            ],
          };
          for (const entry of [
            { of: "quantity", line: of.lines[0]! },
            { of: "price", line: buy },
            { of: "grain price" },
            { of: "area" },
            { of: "years kept", line: buy },
          ] as const satisfies readonly ChangeEntry[]) {
            const result = breakEven(of, entry);
            if (result.found)
              expect(
                netChange(withEntries(of, [{ entry, value: result.value }]))
                  .net.perYear!.abs()
                  .lt("1e-15"),
              ).toBe(true);
            else expect(["area", "years kept"]).toContain(entry.of);
          }
        },
      ),
    );
  });

  it("says that another entry is blank", () => {
    expect(breakEven(change, { of: "area" })).toEqual({ found: false, why: "another entry is blank" });
    expect(breakEven(change, { of: "years kept", line: wheels })).toEqual({ found: false, why: "another entry is blank" });
  });

  it("says that an entry makes no difference", () => {
    expect(breakEven({ ...known, lines: [upkeep] }, { of: "grain price" })).toEqual({ found: false, why: "makes no difference" });
    expect(breakEven(known, { of: "years kept", line: upkeep })).toEqual({ found: false, why: "makes no difference" });
  });

  it("finds no area where every acre loses, or where every acre gains and nothing stands against it", () => {
    const free: Change = { ...known, lines: [{ ...gain, quantity: one }, upkeep] };
    expect(breakEven(free, { of: "area" })).toEqual({ found: false, why: "pays at any value" });
    expect(breakEven({ ...known, lines: [upkeep, insurance] }, { of: "area" })).toEqual({ found: false, why: "pays at no value" });
  });

  it("finds no years where even the interest costs more than comes back", () => {
    const dear = withEntries(known, [{ entry: { of: "price", line: wheels }, value: new Decimal("5000") }]);
    expect(breakEven(dear, { of: "years kept", line: dear.lines[1]! })).toEqual({ found: false, why: "pays at no value" });
  });

  it("finds no years where what comes back is just the interest", () => {
    const buy = outlay("added costs", { item: "Buy", unit: "piece", quantity: one, price: money("1000") }, years("5"));
    const back = (amount: string) => perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money(amount) });
    expect(breakEven({ ...change, lines: [buy, back("80")] }, { of: "years kept", line: buy })).toEqual({
      found: false,
      why: "pays at no value",
    });
    const spared = outlay("reduced costs", { item: "Old", unit: "piece", quantity: one, price: money("1000") }, years("5"));
    expect(breakEven({ ...change, lines: [spared, back("5")] }, { of: "years kept", line: spared })).toEqual({
      found: false,
      why: "pays at any value",
    });
  });

  it("solves the years of an outlay on every acre, and of less than a dollar", () => {
    const none = { ...change, rate: yearlyRate("0") };
    const tile: ChangeLine = { ...amountPerAcre("added costs", "Tile", new Decimal("900"), "ac"), yearsKept: years("30") };
    const spared = perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money("27000") });
    // 900 acres × 900 come back in 30 years of 27,000.
    const on = breakEven({ ...none, lines: [tile, spared] }, { of: "years kept", line: tile });
    expect(on).toMatchObject({ found: true, pays: "above" });
    expect(on.found && on.value.toFixed(20)).toBe("30.00000000000000000000");
    const withSalvage = { ...tile, salvage: money("300") };
    const half = breakEven({ ...none, lines: [withSalvage, spared] }, { of: "years kept", line: withSalvage });
    expect(half.found && half.value.toFixed(20)).toBe("20.00000000000000000000");
    const clip = outlay("added costs", { item: "Clip", unit: "piece", quantity: one, price: money("0.9") }, years("3"));
    const cents = perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money("0.3") });
    expect(breakEven({ ...none, lines: [clip, cents] }, { of: "years kept", line: clip })).toMatchObject({ found: true, pays: "above" });
  });

  it("finds an area of half an acre, and says which side pays where every acre gains cents", () => {
    const of = (perAcreGain: string, once: string): Change => ({
      ...change,
      lines: [
        amountPerAcre("added returns", "Gain", new Decimal(perAcreGain), "ac"),
        perYear("added costs", { item: "Once", unit: "year", quantity: one, price: money(once) }),
      ],
    });
    const small = breakEven(of("0.8", "0.4"), { of: "area" });
    expect(small).toMatchObject({ found: true, pays: "above" });
    expect(small.found && small.value.toString()).toBe("0.5");
    expect(breakEven({ ...of("0.8", "0.4"), lines: of("0.8", "0.4").lines.slice(0, 1) }, { of: "area" })).toEqual({
      found: false,
      why: "pays at any value",
    });
  });

  it("solves the years of an outlay that is spared: the fewer, the better", () => {
    const spared = outlay("reduced costs", { item: "Old set", unit: "piece", quantity: one, price: money("1000") }, years("5"));
    const cost = perYear("added costs", { item: "Hire", unit: "year", quantity: one, price: money("200") });
    const of: Change = { ...change, rate: yearlyRate("0"), lines: [spared, cost] };
    expect(breakEven(of, { of: "years kept", line: spared })).toMatchObject({ found: true, pays: "below" });
    const result = breakEven(of, { of: "years kept", line: spared });
    expect(result.found && result.value.toString()).toBe("5");
  });
});

describe("withEntries", () => {
  it("sets several entries at once and leaves the others as they are", () => {
    const at = withEntries(change, [
      { entry: { of: "quantity", line: gain }, value: new Decimal("2") },
      { entry: { of: "grain price" }, value: new Decimal("5") },
      { entry: { of: "area" }, value: new Decimal("100") },
    ]);
    expect(at.area.toString()).toBe("100");
    expect(at.lines[0]).toMatchObject({ quantity: new Decimal("2"), price: { price: new Decimal("5"), moving: grain.moving } });
    expect(at.lines.slice(1)).toEqual(change.lines.slice(1));
    expect(at.lines[1]).toBe(wheels);
  });
});

describe("strip", () => {
  it("shows the change at low, expected and high", () => {
    const at = (bushels: string) => [{ entry: { of: "quantity", line: gain } as const, value: new Decimal(bushels) }];
    const { low, expected, high } = strip(change, { low: at("0"), expected: at("1"), high: at("3") });
    expect(low.net.perYear!.toString()).toBe(low.netOfKnown.perYear.toString());
    expect(expected.net.perArea!.minus(low.net.perArea!).toFixed(20)).toBe("1.95000000000000000000");
    expect(high.net.perArea!.minus(low.net.perArea!).toFixed(20)).toBe("5.85000000000000000000");
  });
});

describe("payback", () => {
  it("is what is laid out over what comes back, and longer with interest", () => {
    const result = payback(known)!;
    expect([result.outlay.toString(), result.yearly.toString()]).toEqual(["3600", "1305"]);
    expect(result.simple.toFixed(4)).toBe("2.7586");
    expect(result.withInterest!.gt(result.simple)).toBe(true);
  });
  it("takes off an outlay that the change spares", () => {
    const spared = outlay("reduced costs", { item: "Old set", unit: "piece", quantity: one, price: money("1000") }, years("6"));
    const result = payback({ ...known, lines: [...known.lines, spared] })!;
    expect([result.outlay.toString(), result.yearly.toString()]).toEqual(["2600", "1305"]);
  });
  it("counts an outlay on every acre, and one of less than a dollar", () => {
    const tile: ChangeLine = { ...amountPerAcre("added costs", "Tile", new Decimal("9"), "ac"), yearsKept: years("30") };
    expect(payback({ ...known, lines: [known.lines[0]!, tile] })!.outlay.toString()).toBe("8100");
    const clip = outlay("added costs", { item: "Clip", unit: "piece", quantity: one, price: money("0.9") }, years("3"));
    expect(
      payback({
        ...known,
        lines: [clip, perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money("0.3") })],
      })!.simple.toString(),
    ).toBe("3");
  });
  it("is none where what comes back is used up to the cent", () => {
    expect(
      payback({
        ...known,
        lines: [wheels, insurance, perYear("reduced costs", { item: "Spared", unit: "year", quantity: one, price: money("90") })],
      }),
    ).toBeNull();
  });
  it("of uneven amounts may take all of the last year, and nothing takes no time", () => {
    expect(paybackOfFlows(money("300"), [money("100"), money("200")], yearlyRate("0"))!.toString()).toBe("2");
    expect(paybackOfFlows(money("0"), [money("0")], yearlyRate("0"))!.toString()).toBe("0");
  });
  it("is none where nothing is laid out, a gain is blank or nothing comes back", () => {
    expect(payback({ ...known, lines: [{ ...gain, quantity: one }, upkeep] })).toBeNull();
    expect(payback(change)).toBeNull();
    expect(payback({ ...known, lines: [wheels, upkeep] })).toBeNull();
  });
});
