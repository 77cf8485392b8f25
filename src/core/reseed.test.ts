import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { centralCornBelt, iowa2010, northernMissouri } from "../../tests/support/publishedStandTables";
import { Decimal } from "./numbers/decimal";
import { fieldOutlook, reseed, reseedNotices, type ReseedQuestion } from "./reseed";
import { lastDatePaying, netOverInterval, reseedGrid, thinnestWorthKeeping } from "./reseedLimits";
import type { StandTable } from "./stand/standTable";
import { area, moneyPerArea, moneyPerUnit, plantsPerArea, points, share, yieldPerArea } from "./numbers/units";

const at = (date: string, stand: string) => ({ date, stand: plantsPerArea(stand), rowWidth: null, areaUnit: "ac" as const });
const question: ReseedQuestion = {
  table: centralCornBelt,
  area: area("40"),
  goal: yieldPerArea("200"),
  planned: at("04-30", "30000"),
  kept: at("04-30", "16000"),
  reseeded: at("05-15", "32000"),
  keptUniformityLoss: null,
  reseedAllowance: null,
  price: moneyPerUnit("4"),
  moving: moneyPerUnit("0"),
  share: share("1"),
  dryingPerPoint: moneyPerUnit("0"),
  keptPoints: points("0"),
  reseededPoints: points("0"),
  insurance: null,
  costs: { endOldStand: null, seed: null, seedCredit: null, pass: null, treatment: null, herbicide: null, other: moneyPerArea("64") },
};
const net = (of: ReseedQuestion) => {
  const answer = reseed(of);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value.net;
};

describe("reseed", () => {
  it("is what the better yield brings less what it costs", () => {
    // 95 % against 84 %: 22 bu at 4, less 64.
    const answer = reseed(question);
    expect(answer).toMatchObject({ ok: true, value: { decision: "reseed" } });
    expect(answer.ok && [answer.value.net, answer.value.netInAll, answer.value.gap, answer.value.gapNeeded!].map(String)).toEqual([
      "24",
      "960",
      "22",
      "16",
    ]);
  });

  it("takes the operator's share, drying, uniformity, allowance and insurance into account", () => {
    const of: ReseedQuestion = {
      ...question,
      share: share("0.5"),
      dryingPerPoint: moneyPerUnit("0.05"),
      keptPoints: points("2"),
      reseededPoints: points("6"),
      moving: moneyPerUnit("0.2"),
      keptUniformityLoss: new Decimal("5"),
      reseedAllowance: new Decimal("10"),
      insurance: moneyPerArea("30"),
      costs: { ...question.costs, seedCredit: moneyPerArea("20") },
    };
    // Kept 168 × 0.95 = 159.6 at (4 − 0.2 − 0.1) ÷ 2; reseeded 190 × 0.9 = 171 at (4 − 0.2 − 0.3) ÷ 2; 64 − 20 − 30.
    expect(net(of).toFixed(12)).toBe(new Decimal("171").times("1.75").minus(new Decimal("159.6").times("1.85")).minus("14").toFixed(12));
  });

  it("needs a gap at which the net is nothing", () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 30_000 }), fc.integer({ min: 0, max: 20_000 }), (stand, cents) => {
        const of = { ...question, kept: at("04-30", String(stand)), costs: { ...question.costs, other: moneyPerArea(`${cents}e-2`) } };
        const answer = reseed(of);
        if (!answer.ok) throw new Error("inside the table");
        const { gap, gapNeeded, net: gain, breakEvenPrice } = answer.value;
        expect(gap.minus(gapNeeded!).times(of.price).toFixed(15)).toBe(gain.toFixed(15));
        if (breakEvenPrice !== null)
          expect(
            net({ ...of, price: breakEvenPrice })
              .abs()
              .lt("1e-20"),
          ).toBe(true);
      }),
    );
  });

  it("breaks even, on a share of the crop, at the price that brings the net to nothing", () => {
    const of = { ...question, share: share("0.5"), moving: moneyPerUnit("0.3") };
    const answer = reseed(of);
    // 22 bu × 0.5 × (p − 0.30) = 64
    expect(answer.ok && answer.value.breakEvenPrice!.toFixed(4)).toBe("6.1182");
    expect(
      answer.ok &&
        net({ ...of, price: answer.value.breakEvenPrice! })
          .abs()
          .lt("1e-20"),
    ).toBe(true);
  });

  it("says of which date and stand the table says nothing", () => {
    expect(reseed({ ...question, kept: at("04-30", "9000"), reseeded: at("06-15", "32000") })).toMatchObject({
      ok: false,
      problems: [
        { of: "kept", reason: "stand outside" },
        { of: "reseeded", reason: "date outside" },
      ],
    });
  });

  it("takes the goal for the planned date and stand, where these are not the best of the table", () => {
    // Planned at 20,000 plants (92 %): 84 and 95 % of 200 ÷ 0.92.
    const answer = reseed({ ...question, goal: yieldPerArea("184"), planned: at("04-30", "20000") });
    expect(answer.ok && [answer.value.keptYield, answer.value.reseededYield].map((each) => each.toFixed(20))).toEqual([
      "168.00000000000000000000",
      "190.00000000000000000000",
    ]);
    expect(reseed({ ...question, planned: at("04-30", "5000") })).toMatchObject({
      ok: false,
      problems: [{ of: "planned", reason: "stand outside" }],
    });
  });

  it("keeps the stand where both come to the same, and reseeds for a gain of cents", () => {
    const costing = (other: string) => reseed({ ...question, costs: { ...question.costs, other: moneyPerArea(other) } });
    expect(costing("88")).toMatchObject({ ok: true, value: { decision: "keep" } });
    expect(costing("87.5")).toMatchObject({ ok: true, value: { decision: "reseed" } });
  });

  it("needs no gap that could be met where a bushel brings nothing home, and a wide one where it brings cents", () => {
    const bringing = (price: string) => reseed({ ...question, moving: moneyPerUnit("3.5"), price: moneyPerUnit(price) });
    const [nothing, cents] = [bringing("3.5"), bringing("4")];
    expect(nothing.ok && nothing.value.gapNeeded).toBeNull();
    expect(cents.ok && cents.value.gapNeeded!.toString()).toBe("128");
  });

  it("tells what the label and the estimate cannot", () => {
    for (const words of ["check strips", "final dates", "label is the law", "what may follow", "averages of trials"])
      expect(
        reseedNotices.some((each) => each.includes(words)),
        words,
      ).toBe(true);
  });

  it("always tells to ask the adjuster first", () => {
    expect(reseedNotices[0]).toMatch(/^Ask your insurer's adjuster before you destroy a stand\. Ask your landlord or lender/);
  });

  it("leaves the rest of the field as it is", () => {
    expect(
      fieldOutlook([
        { area: area("20"), yield: yieldPerArea("190") },
        { area: area("60"), yield: yieldPerArea("200") },
      ])!.toString(),
    ).toBe("197.5");
    expect(fieldOutlook([])).toBeNull();
  });
});

describe("thinnestWorthKeeping", () => {
  it("is where the net falls to nothing, between two stands of the table", () => {
    const found = thinnestWorthKeeping(question);
    // 95 % less 8 points of cost is 87 %: between 16,000 (84) and 18,000 (88), three quarters on.
    expect(found).toMatchObject({ found: true });
    expect(found.found && found.stand.toString()).toBe("17500");
    expect(found.found && net({ ...question, kept: { ...question.kept, stand: found.stand } }).toString()).toBe("0");
  });
  it("says that every stand is worth keeping, or none", () => {
    expect(thinnestWorthKeeping({ ...question, costs: { ...question.costs, other: moneyPerArea("900") } })).toEqual({
      found: false,
      why: "every stand of the table is worth keeping",
    });
    expect(thinnestWorthKeeping({ ...question, insurance: moneyPerArea("900") })).toEqual({
      found: false,
      why: "no stand of the table is worth keeping",
    });
  });
  it("says nothing by a table without stands", () => {
    expect(
      thinnestWorthKeeping({
        ...question,
        table: northernMissouri,
        planned: at("05-11", "1"),
        kept: at("05-11", "1"),
        reseeded: at("05-21", "1"),
      }),
    ).toEqual({ found: false, why: "the table says nothing" });
  });
  it("steps over what a table does not print", () => {
    // At 1 June the 2010 table prints nothing at 25,000; at 30,000 keeping is better.
    const of = { ...question, table: iowa2010, kept: at("06-01", "30000"), reseeded: at("06-10", "30000") };
    expect(thinnestWorthKeeping(of)).toEqual({ found: false, why: "every stand of the table is worth keeping" });
  });
});

describe("thinnestWorthKeeping by windows of stands", () => {
  const plants = (from: string, to: string) => ({ from: new Decimal(from), to: new Decimal(to) });
  const windows: StandTable = {
    ...centralCornBelt,
    name: "Windows",
    dates: null,
    stands: [plants("10000", "12000"), plants("20000", "22000"), plants("30000", "32000")],
    percent: [["50", "80", "100"].map((percent) => new Decimal(percent))],
  };
  const of = { ...question, table: windows };
  const costing = (other: string) => thinnestWorthKeeping({ ...of, costs: { ...of.costs, other: moneyPerArea(other) } });

  it("is between the windows, or where a window begins", () => {
    const stand = (other: string) => {
      const found = costing(other);
      return found.found ? found.stand.toString() : found.why;
    };
    // Reseeding gives all 200 bu: a cost of 60, 15 bu of them, is met at 92.5 %, five eighths of the way from 22,000 to 30,000.
    expect([stand("60"), stand("280"), stand("160"), stand("0")]).toEqual(["27000", "16000", "20000", "30000"]);
    // At the first stand the gain is just nothing.
    expect(stand("400")).toBe("every stand of the table is worth keeping");
  });
  it("goes by cents", () => {
    // At 10,000 plants a gain of 50 cents is left.
    expect(costing("399.5")).toMatchObject({ found: true });
  });
});

describe("lastDatePaying", () => {
  it("goes by the day and by cents", () => {
    // From 15 May (95 %) to 20 May (91 %) a day takes 1.6 bu, 6.40: 81.60 are left to pay with on the 16th, 62.40 on the 19th.
    const costing = (other: string) => lastDatePaying({ ...question, costs: { ...question.costs, other: moneyPerArea(other) } });
    expect(["81.6", "81.5", "68.5", "62.4", "62"].map(costing)).toEqual(["05-15", "05-16", "05-18", "05-18", "05-19"]);
  });
  it("may be the last day of the table, and is none where only days before the planting would pay", () => {
    const span = (day: string) => ({ from: day, to: day });
    const table: StandTable = {
      ...centralCornBelt,
      name: "Dates",
      dates: [span("05-01"), span("05-11")],
      stands: null,
      percent: [[new Decimal("100")], [new Decimal("80")]],
    };
    const of = { ...question, table, planned: at("05-01", "1"), kept: at("05-11", "1") };
    // 160 kept: 40 bu, 160.00, are won on the first day and 16.00 less every day after.
    expect(lastDatePaying({ ...of, costs: { ...of.costs, other: moneyPerArea("150") } })).toBeNull();
    expect(lastDatePaying({ ...of, costs: { ...of.costs, other: null }, insurance: moneyPerArea("10") })).toBe("05-11");
  });
  it("is none where it lies before today or the planting of the kept crop", () => {
    // The last day with a gain is 18 May; on the 19th nothing pays any more.
    expect([null, "05-18", "05-19"].map((today) => lastDatePaying(question, today))).toEqual(["05-18", "05-18", null]);
    expect(lastDatePaying({ ...question, kept: { ...question.kept, date: "05-19" } })).not.toBe("05-18");
  });
  it("is none by a table without dates", () => {
    expect(lastDatePaying({ ...question, table: { ...centralCornBelt, dates: [], percent: [] } })).toBeNull();
  });
  it("is the last day with a gain", () => {
    const day = lastDatePaying(question)!;
    expect(net({ ...question, reseeded: at(day, "32000") }).gt("0")).toBe(true);
    // 84 % kept + 8 points of cost = 92 % of 15 May (95) to 20 May (91): 3.75 days on, so the third.
    expect(day).toBe("05-18");
    expect(net({ ...question, reseeded: at("05-19", "32000") }).lte("0")).toBe(true);
  });
  it("is none where no day pays", () => {
    expect(lastDatePaying({ ...question, kept: at("04-30", "30000") })).toBeNull();
  });
});

describe("the grid", () => {
  it("has the net of every stand and date, and nothing outside the table", () => {
    const stands = ["9000", "14000", "16000"].map((stand) => plantsPerArea(stand));
    const grid = reseedGrid(question, stands, ["05-10", "05-15", "06-20"]);
    // 14,000 keep 79 %, 16,000 keep 84 %; reseeding gives 97 % on 10 May and 95 % on 15 May; 8 bushels a point less 64.
    expect(grid.net.map((row) => row.map((cell) => cell?.toString() ?? null))).toEqual([
      [null, null, null],
      ["80", "64", null],
      ["40", "24", null],
    ]);
  });
});

describe("netOverInterval", () => {
  it("tells whether the answer holds for the whole spread of the count", () => {
    const { atLow, atHigh } = netOverInterval(question, plantsPerArea("15000"), plantsPerArea("19000"));
    expect([atLow!.gt("0"), atHigh!.gt("0")]).toEqual([true, false]);
    expect(netOverInterval(question, plantsPerArea("5000"), plantsPerArea("19000")).atLow).toBeNull();
  });
});
