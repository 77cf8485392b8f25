import { describe, expect, it } from "vitest";
import {
  application,
  corn,
  field,
  harvested,
  item,
  load,
  operation,
  otherCost,
  purchase,
  seasonOf,
  settings,
} from "../../tests/support/season";
import { wetAndDry } from "./drying";
import { seasonFlows } from "./lender/seasonFlows";
import { landArea, landWeights } from "./land";
import type { HarvestLoad, Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { area, cropQuantity, moneyPerArea, moneyPerUnit, points } from "./numbers/units";

const home = field("Home", "100", "200");
const drying = { ...settings, dryingChargePerPoint: moneyPerUnit("0.04") };
const dry = { ...settings, dryingChargePerPoint: moneyPerUnit("0.04"), dryingCountedOn: "dry" as const };
const only = (parts: Partial<Season>) => seasonFigures(seasonOf({ fields: [harvested(home)], ...parts })).crops[0]!.fields[0]!;
/** What drying costs the whole field. */
const dryingOf = (parts: Partial<Season>, stage: "plan" | "outlook" | "final" = "final") => {
  const { moving, yields, area: acres } = only(parts)[stage]!.budget;
  return (moving.byKind.get("drying") ?? moneyPerUnit("0")).times(yields.used).times(acres).toFixed(6);
};

describe("drying by load", () => {
  const loads = [load("Home", "1000", "20"), load("Home", "1000", "14")];

  it("charges each load's points on its own wet bushels: a dry load pays for no wet one", () => {
    // Equal loads of 1,000 bu at 20 % and 14 %: 4.5 points × 0.04 × 1,000 = 180. On the mean of 17 % it would be 1.5 × 0.04 × 2,000 = 120.
    expect(dryingOf({ settings: drying, harvest: loads })).toBe("180.000000");
  });

  it("charges them on the load's dry bushels where the setting says so", () => {
    // 1,000 × 80 ÷ 84.5 = 946.745562 dry: × 4.5 × 0.04 = 170.414201.
    expect(dryingOf({ settings: dry, harvest: loads })).toBe("170.414201");
  });

  it("does not shrink bushels again that are typed as dry, and charges their drying all the same", () => {
    // 946.745562 dry bushels came in as 1,000 wet at 20 %.
    const typed = wetAndDry(cropQuantity("946.745562"), "dry", points("20"), points("15.5"));
    expect(typed.dry.toFixed()).toBe("946.745562");
    expect(typed.wet.toFixed(4)).toBe("1000.0000");
    const asDry: HarvestLoad = { ...load("Home", "0", "20"), quantity: typed.dry, wet: typed.wet };
    expect(only({ harvest: [asDry] }).final!.budget.yields.used.toFixed(8)).toBe("9.46745562");
    expect(dryingOf({ settings: drying, harvest: [asDry] })).toBe("180.000000");
  });

  it("is planned on the yield's own dry bushels whatever the setting says", () => {
    // 200 bu × 100 ac × 4 points × 0.04 = 3,200.
    const crops = [{ ...corn, expectedHarvestMoisture: points("19.5") }];
    for (const each of [drying, dry]) expect(dryingOf({ settings: each, crops }, "plan")).toBe("3200.000000");
  });

  it("is that of the loads as weighed and of the rest as expected while the harvest is under way", () => {
    const crops = [{ ...corn, expectedHarvestMoisture: points("19.5") }];
    // 10,000 wet at 20 %: 4.5 × 0.04 × 10,000 = 1,800, and 9,467.455621 bu dry. Still standing 20,000 − 9,467.455621 =
    // 10,532.544379 at 4 points: 1,685.207101.
    expect(dryingOf({ settings: drying, crops, fields: [home], harvest: [load("Home", "10000", "20")] }, "outlook")).toBe("3485.207101");
    expect(dryingOf({ settings: drying, crops, harvest: [load("Home", "10000", "20")] })).toBe("1800.000000");
  });

  it("can be opened down to its loads", () => {
    const { charges } = only({ settings: drying, harvest: loads }).final!;
    expect(charges.find(({ kind }) => kind === "drying")!.entries.map(({ table }) => table)).toEqual(["Crops", "Harvest", "Harvest"]);
  });
});

describe("a harvest under way", () => {
  it("does not make one load of 900 bu from 100 ac the harvest", () => {
    const under = only({ fields: [home], harvest: [load("Home", "900")] });
    expect([under.final, under.outlook.budget.yields.used.toFixed(), under.weighed!.quantity.toFixed()]).toEqual([null, "200", "900"]);
    const over = only({ harvest: [load("Home", "900")] });
    expect([over.final!.budget.yields.used.toFixed(), over.outlook.budget.yields.used.toFixed()]).toEqual(["9", "9"]);
  });

  it("never looks for less than is weighed already", () => {
    expect(only({ fields: [home], harvest: [load("Home", "21000")] }).outlook.budget.yields.used.toFixed()).toBe("210");
  });

  it("has no final without a load, and a lost crop is a load of 0", () => {
    expect(only({}).final).toBeNull();
    expect(only({ harvest: [load("Home", "0")] }).final!.budget.yields.used.toFixed()).toBe("0");
  });
});

describe("work once the harvest is done", () => {
  const month = "2031-12";
  const flowsOf = (season: Season) =>
    seasonFlows(season, seasonFigures(season), [], month)
      .filter(({ group }) => group === "custom work" || group === "fertilizer")
      .map(({ month: in_, amount }) => `${in_} ${amount}`);
  const pass = (name: string, date: string | null, status: "plan" | "done" = "plan", rate = "20") =>
    operation(name, "Home", rate, status, { date });

  it(
    "leaves out what was planned without a date or before the last load and not done, of outlook and cash flow, with a note; the " +
      "plan stays",
    () => {
      // 40 planned and done; 20 + 20 never done.
      const season = seasonOf({
        fields: [harvested(home)],
        harvest: [load("Home", "19000")],
        operations: [
          pass("Planting", "2031-05-05", "plan", "40"),
          pass("Planting", "2031-05-06", "done", "40"),
          pass("Spraying", "2031-07-01"),
          pass("Scouting", null),
        ],
      });
      const { plan, outlook, final, neverDone } = seasonFigures(season).crops[0]!.fields[0]!;
      expect([plan, outlook, final].map((each) => each!.budget.costPerArea.layers.operating.toFixed())).toEqual(["80", "40", "40"]);
      expect(neverDone.map(({ name, areaPasses }) => `${name} ${areaPasses}`)).toEqual(["Spraying 100", "Scouting 100"]);
      expect(flowsOf(season)).toEqual(["2031-05 -4000"]);
      const growing = seasonFigures({ ...season, fields: [home] }).crops[0]!.fields[0]!;
      expect([growing.outlook.budget.costPerArea.layers.operating.toFixed(), growing.neverDone.length]).toEqual(["80", 0]);
    },
  );

  it("keeps what is planned for the day of the last load", () => {
    expect(
      only({
        harvest: [load("Home", "19000")],
        operations: [pass("Combining", "2031-10-10")],
      }).outlook.budget.costPerArea.layers.operating.toFixed(),
    ).toBe("20");
  });

  it("pays for passes after the last load and leaves them to the next crop, drying and haul apart", () => {
    const season = seasonOf({
      fields: [harvested(home)],
      harvest: [load("Home", "19000")],
      operations: [
        pass("Fall tillage", "2031-11-03", "done"),
        pass("Lime", "2031-11-20"),
        { ...pass("Trucking", "2031-12-01", "done", "7"), kind: "haul" },
      ],
    });
    const { outlook, final, nextCrop, neverDone } = seasonFigures(season).crops[0]!.fields[0]!;
    expect([outlook, final].map((each) => each!.budget.costPerArea.layers.operating.toFixed())).toEqual(["7", "7"]);
    expect(nextCrop.map(({ name, amount }) => `${name} ${amount}`)).toEqual(["Fall tillage 2000", "Lime 2000"]);
    expect(neverDone).toEqual([]);
    expect(flowsOf(season)).toEqual(["2031-11 -2000", "2031-11 -2000"]);
  });

  it("takes a pass that was planned before the last load and done after it as done, once", () => {
    const season = seasonOf({
      fields: [harvested(home)],
      harvest: [load("Home", "19000")],
      operations: [pass("Tillage", "2031-10-01"), pass("Tillage", "2031-11-03", "done")],
    });
    const { outlook, nextCrop, neverDone } = seasonFigures(season).crops[0]!.fields[0]!;
    expect([outlook.budget.costPerArea.layers.operating.toFixed(), nextCrop.map(({ amount }) => amount.toFixed()), neverDone]).toEqual([
      "0",
      ["2000"],
      [],
    ]);
    expect(flowsOf(season)).toEqual(["2031-11 -2000"]);
  });

  it("takes a pass that was planned after the last load and done before it off the plan", () => {
    const season = seasonOf({
      fields: [harvested(home)],
      harvest: [load("Home", "19000")],
      operations: [pass("Combining", "2031-10-20"), pass("Combining", "2031-10-10", "done")],
    });
    const { outlook, nextCrop } = seasonFigures(season).crops[0]!.fields[0]!;
    expect([outlook.budget.costPerArea.layers.operating.toFixed(), nextCrop]).toEqual(["20", []]);
    expect(flowsOf(season)).toEqual(["2031-10 -2000"]);
  });

  it("does the same with what is spread: used after the last load is used, and in no cost of this crop", () => {
    const season = seasonOf({
      fields: [harvested(home)],
      harvest: [load("Home", "19000")],
      items: [item("Urea", "0.30")],
      purchases: [purchase("Urea", "20000", "8000")],
      applications: [
        application("Urea", "Home", "150", "done", { date: "2031-05-01" }),
        application("Urea", "Home", "30", "plan", { date: "2031-07-01" }),
        application("Urea", "Home", "80", "done", { date: "2031-11-10" }),
      ],
    });
    const figures = seasonFigures(season);
    const { outlook, final, nextCrop, neverDone } = figures.crops[0]!.fields[0]!;
    // 0.40 paid: 150 lb = 60 an acre. 80 lb × 100 ac × 0.40 = 3,200 for the next crop, which also took the 30 lb that were planned in July.
    expect([outlook, final].map((each) => each!.budget.costPerArea.layers.operating.toFixed())).toEqual(["60", "60"]);
    expect(nextCrop.map(({ name, amount }) => `${name} ${amount}`)).toEqual(["Urea 3200"]);
    expect(neverDone).toEqual([]);
    // 23,000 lb used of 20,000 bought: the bills cover this crop first, and 3,000 lb of November are still to be paid.
    expect([figures.items[0]!.used, figures.items[0]!.needed, figures.items[0]!.short].map(String)).toEqual(["23000", "0", "3000"]);
    expect(flowsOf(season)).toEqual(["2031-04 -8000", "2031-11 -1200"]);
  });

  it("buys no more for a plan that was never done, of an item that is charged as it is bought", () => {
    const season = seasonOf({
      fields: [harvested(home)],
      harvest: [load("Home", "19000")],
      items: [item("Fuel", "3", { charged: "by acres" })],
      purchases: [purchase("Fuel", "400", "1200")],
      applications: [
        application("Fuel", "Home", "5", "plan", { date: "2031-06-01" }),
        application("Fuel", "Home", "2", "plan", { date: "2031-11-01" }),
      ],
    });
    const figures = seasonFigures(season);
    expect(figures.crops[0]!.fields[0]!.outlook.budget.costPerArea.layers.operating.toFixed()).toBe("12");
    expect(figures.items[0]!.needed.toFixed()).toBe("0");
    expect(flowsOf(season)).toEqual(["2031-04 -1200"]);
  });

  it("touches no field whose harvest is not done", () => {
    const season = seasonOf({
      fields: [harvested(home), field("Hill", "50", "160")],
      harvest: [load("Home", "19000")],
      operations: [operation("Spraying", "Corn", "10", "plan", { target: { crop: "Corn" }, date: "2031-07-01" })],
    });
    expect(seasonFigures(season).crops[0]!.fields.map(({ outlook }) => outlook.budget.costPerArea.layers.operating.toFixed())).toEqual([
      "0",
      "10",
    ]);
  });
});

describe("land that grows two crops", () => {
  const wheat = field("Home", "100", "80", { tenure: "cash rent", rentPerArea: moneyPerArea("240") });
  const beans = field("Home beans", "60", "30", { sameLandAs: "Home" });
  const hill = field("Hill", "100", "200");

  it("counts its acres once, and half of an acre with two crops to each", () => {
    // 100 + 60 + 100 acres of crops lie on 200 acres: 70 of wheat (40 alone, 60 with beans), 30 of beans, 100 of corn.
    expect(landWeights([wheat, beans, hill]).map(String)).toEqual(["70", "30", "100"]);
    expect(landArea([wheat, beans, hill]).toFixed()).toBe("200");
    // Beans on the land of a field that bears no part of a cost bear it on all their acres.
    expect(landWeights([beans, hill]).map(String)).toEqual(["60", "100"]);
  });

  it("splits what is shared by acres, bears an amount per acre once, and rents each acre once", () => {
    const season = seasonOf({
      fields: [wheat, beans, hill],
      otherCosts: [otherCost("Office", "2000"), otherCost("Scouting", "10", { basis: "per acre", kind: "supplies", paidOn: "2031-06-01" })],
      items: [item("Fuel", "1", { kind: "fuel", charged: "by acres" })],
      purchases: [purchase("Fuel", "500", "1000")],
    });
    const figures = seasonFigures(season);
    const ofKind = (kind: "overhead" | "supplies" | "fuel" | "cash rent") =>
      figures.crops[0]!.fields.map(({ outlook }) => String(outlook.amountByKind.get(kind) ?? 0));
    expect([ofKind("overhead"), ofKind("supplies"), ofKind("fuel"), ofKind("cash rent")]).toEqual([
      ["700", "300", "1000"],
      ["700", "300", "1000"],
      ["350", "150", "500"],
      ["24000", "0", "0"],
    ]);
    expect(
      seasonFlows(season, figures, [], "2031-12")
        .filter(({ group }) => group === "supplies")
        .map(({ amount }) => amount.toFixed()),
    ).toEqual(["-2000"]);
    expect(figures.crops[0]!.land.toFixed()).toBe("200");
  });

  it("has no acre less than none where the second crop is larger than the field", () => {
    expect(landWeights([wheat, { ...beans, area: area("250") }]).map(String)).toEqual(["0", "125"]);
  });
});
