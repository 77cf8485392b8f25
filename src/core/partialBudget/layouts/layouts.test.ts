import { describe, expect, it } from "vitest";
import { centralCornBelt } from "../../../../tests/support/publishedStandTables";
import { Decimal } from "../../numbers/decimal";
import {
  area,
  hours,
  money,
  moneyPerArea,
  moneyPerHour,
  moneyPerUnit,
  moneyPerYear,
  plantsPerArea,
  points,
  seedsPerArea,
  share,
  yearlyRate,
  yieldPerArea,
  years,
} from "../../numbers/units";
import { findingsOn, trialFindings } from "../../tables/trialFindings";
import { reseed, type ReseedQuestion } from "../../reseed";
import { breakEven } from "../breakEvenOfChange";
import { netChange } from "../netChange";
import { closingWheels } from "./closingWheels";
import { anotherHybrid, type AnotherHybrid } from "./hybrid";
import { layoutNames, workCautions, type Circumstances, type Layout } from "./layout";
import { ownOrHireChange } from "./ownOrHireChange";
import { rebuildRowUnits, openerWear, commonOpener } from "./rebuildRowUnits";
import { fixedOrFlexible, flexibleRentAt, higherRent, priceOfEqualRents } from "./rent";
import { reseedChange } from "./reseedChange";
import { anotherSeedingRate } from "./seedingRate";
import { extraPass, secondSite } from "./spraying";

const here: Circumstances = {
  area: area("500"),
  areaUnit: "ac",
  yieldUnit: "bu",
  rate: yearlyRate("0.06"),
  grain: { price: moneyPerUnit("4.20"), moving: moneyPerUnit("0.20"), share: share("1") },
};
const needed = ({ change, lead }: Layout) => {
  const result = breakEven(change, lead);
  return result.found ? result.value.toFixed(4) : result.why;
};
const wheels = {
  ...here,
  rows: new Decimal("12"),
  pricePerRow: money("300"),
  yearsKept: years("5"),
  salvage: null,
  fittingHours: hours("6"),
  wage: moneyPerHour("25"),
  upkeep: moneyPerArea("0.10"),
  yieldGain: null,
};
const rebuild = {
  ...here,
  rows: new Decimal("12"),
  rowsRebuilt: new Decimal("12"),
  partsPerRow: money("250"),
  shopHoursPerRow: hours("1.5"),
  wage: moneyPerHour("25"),
  yearsKept: years("4"),
  repairsSpared: null,
  wear: null,
  badRows: null,
};
const hybrid: AnotherHybrid = {
  ...here,
  yieldNow: yieldPerArea("190"),
  yieldGain: null,
  dryingPerPoint: moneyPerUnit("0.05"),
  wetStandard: null,
  now: {
    seedsPerArea: seedsPerArea("34000"),
    pricePerUnit: money("250"),
    seedsPerUnit: new Decimal("80000"),
    traitFee: null,
    wetPoints: points("4"),
    discount: null,
  },
  other: {
    seedsPerArea: seedsPerArea("34000"),
    pricePerUnit: money("290"),
    seedsPerUnit: new Decimal("80000"),
    traitFee: moneyPerArea("3"),
    wetPoints: points("5"),
    discount: moneyPerUnit("0.02"),
  },
};
const seeding = {
  ...here,
  from: seedsPerArea("32000"),
  to: seedsPerArea("34000"),
  pricePerUnit: money("275"),
  seedsPerUnit: new Decimal("80000"),
  yieldDifference: null,
};
const product = { item: "Second partner", perArea: new Decimal("3"), unit: "fl oz", price: money("2.50") };
const rent = { ...here, from: moneyPerArea("240"), to: moneyPerArea("260"), marginKept: null, yieldGain: null };

describe("every layout that claims a yield", () => {
  const blank = [
    closingWheels(wheels),
    rebuildRowUnits(rebuild),
    anotherHybrid(hybrid),
    anotherSeedingRate(seeding),
    secondSite({ ...here, items: [product], extraPass: null, passSpared: null, laterCostSpared: null, yieldKept: null }),
    extraPass({
      ...here,
      items: [product],
      pass: moneyPerArea("9"),
      trampled: share("0.01"),
      yieldNow: yieldPerArea("190"),
      yieldGain: null,
    }),
    higherRent(rent),
  ];
  it.each(blank.map((each) => [each.name, each] as const))("starts blank and knows the gain needed: %s", (name, { change, lead }) => {
    expect(netChange(change).net.perYear).toBeNull();
    expect(netChange(change).blank).toHaveLength(1);
    const result = breakEven(change, lead);
    expect(result.found && result.value.gt("0")).toBe(true);
    // A name that is blank would be a change without one, which no row of the table Changes can have.
    expect(name).toMatch(/^[A-Z][a-z ]{3,}/);
    // A line without a name would be a row without an item in the table Changes, which is an entry to fix.
    expect(change.lines.map(({ item, quadrant }) => `${quadrant}: ${item.trim()}`)).not.toContainEqual(expect.stringMatching(/: $/));
    expect(new Set(change.lines.map(({ item, quadrant }) => `${quadrant}: ${item}`)).size).toBe(change.lines.length);
  });
});

describe("a layout", () => {
  const ownership = {
    ...here,
    customRate: moneyPerArea("25"),
    purchasePrice: money("9000"),
    salvage: money("0"),
    yearsKept: years("10"),
    taxesInsuranceHousing: moneyPerYear("100"),
    running: moneyPerArea("8"),
    timeliness: yieldPerArea("2"),
  };
  it("says what its figures cannot", () => {
    const gain = "The yield gain starts blank";
    const told = [
      [closingWheels(wheels), gain],
      [rebuildRowUnits(rebuild), gain],
      [anotherHybrid(hybrid), gain, "several places and years"],
      [anotherSeedingRate(seeding), gain],
      [
        secondSite({ ...here, items: [product], extraPass: null, passSpared: null, laterCostSpared: null, yieldKept: null }),
        gain,
        "both work on the weeds",
      ],
      [
        extraPass({ ...here, items: [product], pass: moneyPerArea("9"), trampled: null, yieldNow: yieldPerArea("190"), yieldGain: null }),
        gain,
      ],
      [ownOrHireChange(ownership), "ask whether it will still be offered"],
      [higherRent(rent), "whatever the yield"],
    ] as const;
    for (const [{ cautions }, ...words] of told)
      expect(words.filter((each) => !cautions.some((caution) => caution.includes(each)))).toEqual([]);
  });
  it("has no line for what is nothing", () => {
    expect(
      rebuildRowUnits({ ...rebuild, shopHoursPerRow: hours("0"), repairsSpared: moneyPerYear("0") }).change.lines.map(({ item }) => item),
    ).toEqual(["Yield kept", "Parts"]);
  });
  it("counts the yield that doing it in time brings", () => {
    expect(netChange(ownOrHireChange(ownership).change).quadrants["added returns"].perArea!.toString()).toBe("8");
  });
});

describe("closing wheels", () => {
  it("count the fitting with the set", () => {
    // (3,600 + 150) × 0.2373964004 ÷ 500 + 0.10, over 4.00 a bushel
    expect(needed(closingWheels(wheels))).toBe("0.4701");
  });
});

describe("worn row units", () => {
  it("are due when the allowed wear is used up, by common practice 15 to 14.5 inches", () => {
    expect(openerWear({ ...commonOpener, measured: new Decimal("14.75") })).toEqual({ used: new Decimal("0.5"), due: false });
    expect(openerWear({ ...commonOpener, measured: new Decimal("14.5") }).due).toBe(true);
    expect(() => openerWear({ whenNew: new Decimal("14"), measured: new Decimal("14"), replaceAt: new Decimal("14") })).toThrow(RangeError);
  });
  it("bring what bad rows lose once those are told of", () => {
    const told = rebuildRowUnits({
      ...rebuild,
      badRows: { rows: new Decimal("2"), yield: yieldPerArea("200"), loss: share("0.06") },
      repairsSpared: moneyPerYear("200"),
    });
    const result = netChange(told.change);
    expect(result.quadrants["added returns"].perArea!.toString()).toBe("8");
    expect(result.quadrants["reduced costs"].perYear!.toString()).toBe("200");
    // 3,000 + 450 over four years at 6 %: × 0.2885914924
    expect(result.quadrants["added costs"].perYear!.toFixed(2)).toBe("995.64");
  });
  it("say beside the parts how far they are worn, and count the same", () => {
    const worn = rebuildRowUnits({ ...rebuild, wear: { ...commonOpener, measured: new Decimal("14.617") } }).change;
    expect(worn.lines.map(({ item }) => item)).toEqual(["Yield kept", "Parts (openers 77% worn)", "Shop labour"]);
    expect(netChange(worn).netOfKnown.perYear.eq(netChange(rebuildRowUnits(rebuild).change).netOfKnown.perYear)).toBe(true);
  });
});

describe("another hybrid", () => {
  it("charges the present yield for the difference and the gain for all of it", () => {
    const mine = anotherHybrid({ ...hybrid, yieldGain: yieldPerArea("10") });
    const result = netChange(mine.change);
    // Gain 10 × (4.20 − 0.20 − 0.25 − 0.02); seed 17.00 and fee 3 dearer; drying 0.05 × 190; discount 0.02 × 190.
    expect(result.quadrants["added returns"].perArea!.toString()).toBe("37.3");
    expect(result.quadrants["added costs"].perArea!.minus(result.quadrants["reduced costs"].perArea!).toString()).toBe("29.5");
    expect(result.quadrants["reduced returns"].perArea!.toString()).toBe("3.8");
    expect(result.net.perArea!.toFixed(10)).toBe("4.0000000000");
  });
  it("charges the operator's share of the crop's drying, to the cent, and spares the trait fee of the present one", () => {
    const shared = {
      ...hybrid,
      grain: { ...here.grain, share: share("0.5") },
      dryingPerPoint: moneyPerUnit("0.01"),
      now: { ...hybrid.now, traitFee: moneyPerArea("5") },
      yieldGain: yieldPerArea("0"),
    };
    const lines = netChange(anotherHybrid(shared).change).quadrants;
    // A point of a cent on 190 bushels, half of them: 0.95; discount 2 cents on as many.
    expect(lines["added costs"].lines.find(({ line }) => line.item.startsWith("Drying"))!.perArea!.toString()).toBe("0.95");
    expect(lines["reduced returns"].perArea!.toString()).toBe("1.9");
    expect(lines["reduced costs"].lines.find(({ line }) => line.item.startsWith("Trait"))!.perArea!.toString()).toBe("5");
  });
  it("turns a drier and heavier one to its credit", () => {
    const other = { ...hybrid.other, wetPoints: points("2"), discount: null, traitFee: null };
    const result = netChange(
      anotherHybrid({ ...hybrid, now: { ...hybrid.now, discount: moneyPerUnit("0.01") }, other, yieldGain: yieldPerArea("0") }).change,
    );
    expect(result.quadrants["reduced costs"].lines.map(({ line }) => line.item)).toContain("Drying of the present yield");
    expect(result.quadrants["added returns"].perArea!.toString()).toBe("1.9");
  });
});

describe("another seeding rate", () => {
  it("needs the bushels that the seed costs", () => {
    // 2,000 × 275 ÷ 80,000 = 6.875, over 4.00
    expect(needed(anotherSeedingRate(seeding))).toBe("1.7188");
    expect(anotherSeedingRate(seeding).change.lines.map(({ item }) => item)).toEqual(["Yield gain", "More seed"]);
    expect(anotherSeedingRate({ ...seeding, to: seeding.from }).change.lines.map(({ quadrant }) => quadrant)).toEqual([
      "added returns",
      "added costs",
    ]);
  });
  it("asks for a lower one how much yield may be given up", () => {
    const lower = anotherSeedingRate({ ...seeding, from: seedsPerArea("34000"), to: seedsPerArea("32000") });
    expect(breakEven(lower.change, lower.lead)).toMatchObject({ found: true, pays: "below" });
    expect(lower.change.lines.map(({ item }) => item)).toEqual(["Yield given up", "Seed saved"]);
    expect(needed(lower)).toBe("1.7188");
  });
});

describe("spraying", () => {
  it("counts the second partner, its pass and what it spares", () => {
    const second = secondSite({
      ...here,
      items: [product],
      extraPass: moneyPerArea("8"),
      passSpared: moneyPerArea("4"),
      laterCostSpared: moneyPerArea("2"),
      yieldKept: yieldPerArea("0"),
    });
    // 7.50 + 8 − 4 − 2
    expect(netChange(second.change).net.perArea!.toString()).toBe("-9.5");
  });
  it("counts the yield under the wheels", () => {
    const pass = extraPass({
      ...here,
      items: [product],
      pass: moneyPerArea("9"),
      trampled: share("0.01"),
      yieldNow: yieldPerArea("190"),
      yieldGain: yieldPerArea("0"),
    });
    // 7.50 + 9 + 1.9 × 4.00
    expect(netChange(pass.change).net.perArea!.toString()).toBe("-24.1");
  });
});

describe("own or hire", () => {
  it("leads with the area above which owning is cheaper", () => {
    const layout = ownOrHireChange({
      ...here,
      customRate: moneyPerArea("25"),
      purchasePrice: money("9000"),
      salvage: money("0"),
      yearsKept: years("10"),
      taxesInsuranceHousing: moneyPerYear("100"),
      running: moneyPerArea("8"),
      timeliness: null,
      rate: yearlyRate("0"),
    });
    expect(layout.change.lines.filter(({ quadrant }) => quadrant === "added returns")).toEqual([]);
    expect(needed(layout)).toBe("58.8235");
  });
});

describe("a higher rent", () => {
  it("is carried by the rise over what a bushel nets", () => {
    expect(needed(higherRent(rent))).toBe("5.0000");
    expect(needed(higherRent({ ...rent, marginKept: moneyPerArea("12") }))).toBe("2.0000");
  });
});

describe("reseeding as a change", () => {
  const at = (date: string, stand: string) => ({ date, stand: plantsPerArea(stand), rowWidth: null, areaUnit: "ac" as const });
  const question: ReseedQuestion = {
    table: centralCornBelt,
    area: area("60"),
    goal: yieldPerArea("190"),
    planned: at("04-30", "32000"),
    kept: at("05-02", "17000"),
    reseeded: at("05-22", "31000"),
    keptUniformityLoss: new Decimal("3"),
    reseedAllowance: new Decimal("5"),
    price: moneyPerUnit("4.10"),
    moving: moneyPerUnit("0.25"),
    share: share("0.6"),
    dryingPerPoint: moneyPerUnit("0.05"),
    keptPoints: points("4"),
    reseededPoints: points("7"),
    insurance: moneyPerArea("20"),
    costs: {
      endOldStand: moneyPerArea("12"),
      seed: moneyPerArea("100"),
      seedCredit: moneyPerArea("40"),
      pass: moneyPerArea("18"),
      treatment: moneyPerArea("5"),
      herbicide: moneyPerArea("9"),
      other: moneyPerArea("3"),
    },
  };
  it("comes to the same net change, quadrant by quadrant", () => {
    const answer = reseed(question);
    if (!answer.ok) throw new Error("inside the table");
    const result = netChange(reseedChange(question, answer.value, { areaUnit: "ac", yieldUnit: "bu", rate: yearlyRate("0.06") }).change);
    expect(result.net.perArea!.toFixed(20)).toBe(answer.value.net.toFixed(20));
    expect(result.quadrants["added costs"].perArea!.toString()).toBe("147");
  });
});

describe("trial findings", () => {
  it("of a subject are told once each, those that found no difference first", () => {
    for (const subject of new Set(trialFindings.map((each) => each.subject))) {
      const told = findingsOn(subject);
      expect(new Set(told)).toEqual(new Set(trialFindings.filter((each) => each.subject === subject)));
      expect(told.map(({ noDifference }) => noDifference)).toEqual(
        told
          .map(({ noDifference }) => noDifference)
          .sort()
          .reverse(),
      );
    }
  });

  it("name their source, and those of makers are marked", () => {
    for (const { source, kind, difference } of trialFindings) {
      expect(source.title).not.toBe("");
      if (difference !== null && difference.low.gte("10")) expect(kind).toBe("maker");
    }
  });
});

describe("the cautions of the work", () => {
  it("are those of the planter and the tank, where the layout is such work", () => {
    const cautioned = (words: string) => layoutNames.filter((name) => workCautions(name).some((each) => each.includes(words)));
    expect(cautioned("engine off, key out")).toEqual(["Other closing wheels", "Rebuild worn row units"]);
    expect(cautioned("manual")).toEqual(cautioned("engine off"));
    expect(cautioned("The label is the law")).toEqual(["A second site of action in the tank", "An extra pass", "An earlier weed pass"]);
    expect(cautioned("Ask your insurer's adjuster before you destroy a stand")).toEqual(["Reseed"]);
    expect(cautioned("Dryer")).toEqual(["A later harvest"]);
    expect(cautioned("Long hours")).toEqual(["Own or hire"]);
  });
});

describe("a fixed or a flexible rent", () => {
  const lease = {
    base: moneyPerArea("200"),
    terms: { baseGross: moneyPerArea("720"), shareAbove: share("0.4"), most: moneyPerArea("400") },
  };
  const of = { ...here, ...lease, isFlexibleNow: true, fixed: moneyPerArea("250"), yieldNow: yieldPerArea("200") };

  it("costs the same at a fixed rent of what the flexible one comes to, from either side", () => {
    // 200 + 0.4 × (4.20 × 200 − 720) = 248.
    expect(needed(fixedOrFlexible(of))).toBe("248.0000");
    expect(needed(fixedOrFlexible({ ...of, isFlexibleNow: false }))).toBe("248.0000");
    expect(netChange(fixedOrFlexible(of).change).net.perArea!.toFixed()).toBe("-2");
    expect(netChange(fixedOrFlexible({ ...of, isFlexibleNow: false }).change).net.perArea!.toFixed()).toBe("2");
  });
  it("is the same at a price that gives it at the yield, and at none where the one is always more", () => {
    // 720 + 50 ÷ 0.4 = 845 of gross.
    expect(priceOfEqualRents(lease, of.fixed, of.yieldNow)!.toFixed()).toBe("4.225");
    expect(flexibleRentAt(lease, moneyPerUnit("4.225"), of.yieldNow).toFixed()).toBe("250");
    expect(priceOfEqualRents(lease, moneyPerArea("200"), of.yieldNow)).toBeNull();
    expect(priceOfEqualRents(lease, moneyPerArea("401"), of.yieldNow)).toBeNull();
    expect(priceOfEqualRents(lease, of.fixed, yieldPerArea("0"))).toBeNull();
  });
});
