import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal, sum } from "../numbers/decimal";
import { countsIn } from "../kinds";
import { area, hours, money, moneyPerArea, moneyPerHour, moneyPerYear, share, yearlyRate, years } from "../numbers/units";
import { fieldCapacity } from "./fieldCapacity";
import type { Machine, MachinePart } from "./machine";
import { machineCost } from "./machineCost";
import { ownOrHire } from "./ownOrHire";
import { seasonHours, seasonMachines } from "./seasonMachines";
import { repairsPerYear, salvageValue } from "./machineWear";

const tractor: MachinePart = {
  name: "Tractor",
  listPrice: money("200000"),
  purchasePrice: money("160000"),
  age: years("0"),
  yearsKept: years("10"),
  hoursAYear: hours("400"),
  repairClass: "4WD tractor",
  salvage: { by: "tractor 150 hp up" },
};
const planterPart: MachinePart = {
  name: "Planter",
  listPrice: money("90000"),
  purchasePrice: money("80000"),
  age: years("0"),
  yearsKept: years("10"),
  hoursAYear: hours("100"),
  repairClass: null,
  salvage: { stated: money("30000") },
};
const planter: Machine = {
  name: "Planting",
  main: planterPart,
  tractor,
  power: new Decimal("200"),
  width: new Decimal("30"),
  speed: new Decimal("5.5"),
  fieldEfficiency: share("0.65"),
  tankSize: null,
  realRate: yearlyRate("0.05"),
  taxesInsuranceHousing: yearlyRate("0.01"),
  wage: moneyPerHour("20"),
  labour: "unpaid labour",
  fuelPrice: money("4"),
  fuelPerArea: null,
  source: { table: "Machines", row: 1 },
};
const stated = { main: hours("100"), tractor: hours("400") };
const named = (cost: ReturnType<typeof machineCost>, name: string) => cost.lines.find((line) => line.name === name)!;

describe("machineCost", () => {
  // 5.5 × 30 × 0.65 ÷ 8.25 = 13 acres an hour.
  const cost = machineCost(planter, "ac", stated);

  it("spreads an hour's costs over the acres of that hour", () => {
    expect(cost.capacity.toString()).toBe("13");
    expect(named(cost, "Fuel").perHour.toString()).toBe("35.2");
    expect(named(cost, "Lube").perHour.toString()).toBe("5.28");
    expect(named(cost, "Labour").perHour.toString()).toBe("22");
    expect(named(cost, "Fuel").perArea.toFixed(6)).toBe("2.707692");
  });

  it("repairs the tractor by its class and leaves the planter's repairs to the entries", () => {
    // 0.003 × (4000 ÷ 1000)² × 200,000 = 9,600 in ten years, 2.40 an hour.
    expect(named(cost, "Repairs").perHour.toString()).toBe("2.4");
  });

  it("owns both parts, each over its own hours", () => {
    // Worked apart in binary arithmetic: planter (50,000 × 0.129504575 + 30,000 × 0.05) ÷ 100; tractor's salvage 200,000 ×
    // (0.9756 − 0.1187√10 − 0.0019·20)².
    const salvage = salvageValue(tractor, hours("400"));
    expect(salvage.toFixed(0)).toBe("63222");
    expect(named(cost, "Capital recovery").perHour.toFixed(4)).toBe("118.9880");
    expect(named(cost, "Taxes, insurance, housing").perHour.toFixed(4)).toBe("8.2903");
  });

  it("is running cost and ownership, and each kind is of the layer that its kind says", () => {
    expect(cost.running.plus(cost.ownership).toFixed(20)).toBe(cost.perArea.toFixed(20));
    expect(sum(cost.byKind.values()).toFixed(20)).toBe(cost.perArea.toFixed(20));
    expect([...cost.byKind.keys()].filter((kind) => countsIn(kind, "operating"))).toEqual(["fuel", "repairs"]);
  });

  it("takes measured fuel before the rule of the engine's power", () => {
    const measured = machineCost({ ...planter, fuelPerArea: new Decimal("0.5") }, "ac", stated);
    expect(named(measured, "Fuel").perArea.toString()).toBe("2");
  });

  it("costs the same in hectares and kilowatts as in acres and horsepower", () => {
    const metric = machineCost(
      {
        ...planter,
        power: new Decimal("200").times("0.74569987158227022"),
        width: new Decimal("30").times("0.3048"),
        speed: new Decimal("5.5").times("1.609344"),
        fuelPrice: money(new Decimal("4").div("3.785411784")),
      },
      "ha",
      stated,
    );
    expect(metric.perArea.times("0.40468564224").toFixed(12)).toBe(cost.perArea.toFixed(12));
  });

  it("charges nothing for a part that has no hour to carry it", () => {
    const idle = machineCost(planter, "ac", { main: hours("0"), tractor: hours("0") });
    expect(idle.ownership.toString()).toBe("0");
  });
});

describe("a machine of little", () => {
  it("burns no fuel where neither power nor fuel is told", () => {
    expect(named(machineCost({ ...planter, power: null }, "ac", stated), "Fuel").perHour.toString()).toBe("0");
  });
  it("charges a part to its half hour", () => {
    const half = machineCost({ ...planter, tractor: null }, "ac", { main: hours("0.5"), tractor: null });
    // (80,000 + 30,000) ÷ 2 × 1 % a year, in half an hour.
    expect(named(half, "Taxes, insurance, housing").perHour.toString()).toBe("1100");
  });
  it("is worth nothing in the end where no salvage value is told", () => {
    expect(salvageValue({ ...planterPart, salvage: null }, hours("100")).toString()).toBe("0");
  });
});

describe("fieldCapacity", () => {
  it.each([
    ["0", "30", "0.65"],
    ["5.5", "0", "0.65"],
    ["5.5", "30", "0"],
  ])("refuses speed %s, width %s, efficiency %s: such a machine gets nowhere", (speed, width, efficiency) => {
    expect(() => fieldCapacity("ac", new Decimal(speed), new Decimal(width), share(efficiency))).toThrow(RangeError);
  });
});

describe("ownOrHire", () => {
  const against = (customRate: string, perYear = "100") =>
    ownOrHire(moneyPerYear("1000"), moneyPerArea("8"), moneyPerArea(customRate), area(perYear));
  it("never pays where hiring costs no more than running one's own", () => {
    expect(against("8").breakEvenArea).toBeNull();
    expect(against("8.5").breakEvenArea!.toString()).toBe("2000");
  });
  it("asks for an area, however small", () => {
    expect(() => against("25", "0")).toThrow(RangeError);
    expect(against("25", "0.5").own.toString()).toBe("2008");
  });
});

describe("wear", () => {
  it("starts an older machine higher on the repair curve", () => {
    const old = repairsPerYear({ ...tractor, age: years("10") }, hours("400"));
    // 0.003 × (8² − 4²) × 200,000 ÷ 10
    expect(old.toString()).toBe("2880");
  });

  it("leaves a machine nothing once the curve is used up, rather than a value that grows again", () => {
    const ancient = { ...tractor, age: years("90"), yearsKept: years("10") };
    expect(salvageValue(ancient, hours("400")).toString()).toBe("0");
  });

  it("never leaves more after more years", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 29 }), fc.integer({ min: 0, max: 2000 }), (kept, used) => {
        const of = (n: number) => salvageValue({ ...tractor, yearsKept: years(String(n)) }, hours(String(used)));
        expect(of(kept + 1).lte(of(kept))).toBe(true);
      }),
    );
  });
});

describe("seasonMachines", () => {
  const unstated: Machine = { ...planter, main: { ...planterPart, hoursAYear: null }, tractor: { ...tractor, hoursAYear: null } };
  const cultivating: Machine = {
    ...unstated,
    name: "Cultivating",
    main: { ...planterPart, name: "Cultivator", hoursAYear: null },
    tractor: { ...tractor, name: "TRACTOR ", hoursAYear: null },
  };
  const worked = new Map([
    ["Planting", area("1300")],
    ["Cultivating", area("650")],
  ]);

  it("takes hours from the season's passes where none are stated, one tractor before two implements counting both", () => {
    const costs = seasonMachines([unstated, cultivating], "ac", worked);
    const both = machineCost(unstated, "ac", { main: hours("100"), tractor: hours("150") });
    expect(costs.get("Planting")!.perArea.toString()).toBe(both.perArea.toString());
  });

  it("gives no hours to a machine that does no work", () => {
    expect(seasonHours({ ...planter, name: "Rolling" }, "ac", worked).toString()).toBe("0");
    expect(seasonHours(cultivating, "ac", worked).toString()).toBe("50");
  });

  it("keeps to the hours that are stated", () => {
    expect(seasonMachines([planter], "ac", worked).get("Planting")!.perArea.toString()).toBe(
      machineCost(planter, "ac", stated).perArea.toString(),
    );
  });
});
