import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  application,
  corn,
  field,
  harvested,
  item,
  load,
  machine,
  operation,
  otherCost,
  purchase,
  sale,
  seasonOf,
  settings,
} from "../../tests/support/season";
import { Decimal } from "./numbers/decimal";
import type { Charge } from "./figures";
import { seasonFigures, type SeasonFigures } from "./seasonFigures";
import type { Kind } from "./kinds";
import type { Season } from "./season";
import type { StandCount } from "./stand/standCount";
import { area, itemQuantity, money, moneyPerArea, moneyPerUnit, points, share, yieldPerArea } from "./numbers/units";

const figures = (parts: Partial<Season>) => seasonFigures(seasonOf(parts));
const home = field("Home", "100", "200");
const hill = field("Hill", "50", "160");
const of = (season: SeasonFigures, name: string) => season.crops.flatMap((crop) => crop.fields).find((each) => each.field === name)!;
/** The named figures as text, to compare them in one line. */
const texts = (of: object, ...names: readonly string[]) =>
  names.map((name) => `${name} ${String((of as Record<string, unknown>)[name])}`).join(", ");
const amounts = (charges: readonly Charge[]) => charges.map(({ name, amount }) => `${name} ${amount}`);

describe("an item charged as it is used", () => {
  const urea = item("Urea", "0.30");

  it("is planned at the plan price and carried in the outlook at what was paid", () => {
    const home100 = of(
      figures({
        fields: [home],
        items: [urea],
        purchases: [purchase("Urea", "10000", "4000")],
        applications: [application("Urea", "Home", "150", "plan")],
      }),
      "Home",
    );
    expect(amounts(home100.plan.charges)).toEqual(["Urea 4500"]);
    expect(amounts(home100.outlook.charges)).toEqual(["Urea 6000"]);
  });

  it("carries freight and rebate in its price, and a return at what it was taken back for", () => {
    const season = figures({
      fields: [home],
      items: [urea],
      applications: [application("Urea", "Home", "100", "done")],
      purchases: [purchase("Urea", "12000", "3600", { freight: money("240"), rebate: money("40") }), purchase("Urea", "-2000", "-600")],
    });
    expect(amounts(of(season, "Home").outlook.charges)).toEqual(["Urea 3200"]);
    expect(texts(season.items[0]!, "bought", "averagePrice", "left")).toBe("bought 10000, averagePrice 0.32, left 0");
  });

  it("keeps what is left over as stock and does not charge it", () => {
    const season = figures({
      fields: [home],
      items: [urea],
      purchases: [purchase("Urea", "10000", "3000")],
      applications: [application("Urea", "Home", "80", "done")],
    });
    expect(of(season, "Home").outlook.budget.costPerArea.layers.operating.toFixed()).toBe("24");
    expect(season.items[0]!.left.toFixed()).toBe("2000");
  });

  it("takes what is done off the plan, the oldest date first and rows without a date last", () => {
    const season = figures({
      fields: [home],
      items: [urea],
      applications: [
        application("Urea", "Home", "10", "plan"),
        application("Urea", "Home", "30", "plan", { date: "2031-06-10" }),
        application("Urea", "Home", "50", "plan", { date: "2031-04-20" }),
        application("Urea", "Home", "60", "done", { date: "2031-04-25", area: area("120") }),
      ],
    });
    // 7,200 lb done; 100 ac of the April row and 20 ac of the June row are taken off; 80 ac × 30 and 100 ac × 10 remain.
    expect(texts(season.items[0]!, "used", "needed", "short", "shortCost")).toBe("used 7200, needed 3400, short 10600, shortCost 3180");
  });

  it("goes to every field of a crop, a stated area in proportion to theirs", () => {
    const season = figures({
      fields: [home, hill],
      items: [urea],
      applications: [application("Urea", "", "10", "plan", { target: { crop: "Corn" }, area: area("75") })],
    });
    expect(amounts(of(season, "Home").plan.charges)).toEqual(["Urea 150"]);
    expect(amounts(of(season, "Hill").plan.charges)).toEqual(["Urea 75"]);
  });

  it("is reported in packs", () => {
    const seed = item("Seed", "280", { kind: "seed", packName: "bag", packSize: itemQuantity("80000") });
    const season = figures({
      fields: [home],
      items: [seed],
      purchases: [purchase("Seed", "3200000", "10800")],
      applications: [application("Seed", "Home", "34000", "done")],
    });
    expect(texts(season.items[0]!, "unit", "bought", "used", "averagePrice", "short", "shortCost")).toBe(
      "unit bag, bought 40, used 42.5, averagePrice 270, short 2.5, shortCost 675",
    );
  });
});

describe("an item charged as it is bought", () => {
  const diesel = item("Diesel", "3", { kind: "fuel", charged: "by acres" });

  it("is spread by acres so that the cents add up to what was paid", () => {
    const fields = [field("A", "33", "200"), field("B", "33", "200"), field("C", "33", "200")];
    const season = figures({ fields, items: [diesel], purchases: [purchase("Diesel", "30", "100")] });
    const shares = fields.map(({ name }) => of(season, name).outlook.charges[0]!.amount.toFixed());
    expect(shares).toEqual(["33.34", "33.33", "33.33"]);
    expect(season.items[0]!.left.isZero()).toBe(true);
  });

  it("adds what the plan takes beyond what is bought, at the price paid", () => {
    const season = figures({
      fields: [home],
      items: [diesel],
      purchases: [purchase("Diesel", "400", "1400")],
      applications: [application("Diesel", "Home", "6", "plan")],
    });
    expect(amounts(of(season, "Home").plan.charges)).toEqual(["Diesel 1800"]);
    expect(amounts(of(season, "Home").outlook.charges)).toEqual(["Diesel 2100"]);
  });

  it("is spread by revenue where the item says so", () => {
    const season = figures({
      fields: [home, hill],
      items: [{ ...diesel, charged: "by revenue" }],
      purchases: [purchase("Diesel", "1", "280")],
    });
    // 100 ac × 200 bu against 50 ac × 160 bu.
    expect(amounts(of(season, "Home").outlook.charges)).toEqual(["Diesel 200"]);
  });
});

describe("an operation", () => {
  it("costs its rate on each acre and pass, by the hour for its hours, or a lump sum for the row", () => {
    const season = figures({
      fields: [home],
      operations: [
        operation("Spraying", "Home", "8.50", "plan", { passes: new Decimal("2") }),
        operation("Scouting", "Home", "0", "plan", {
          cost: { basis: "per hour", rate: money("40"), hours: new Decimal("5") },
          kind: "hired labour",
        }),
        operation("Tile repair", "Home", "0", "plan", { cost: { basis: "lump sum", rate: money("650") }, kind: "repairs" }),
      ],
    });
    expect(amounts(of(season, "Home").plan.charges)).toEqual(["Spraying 1700", "Scouting 200", "Tile repair 650"]);
  });

  it("keeps the rest of the plan after a part is done, its name in any case", () => {
    const season = figures({
      fields: [home],
      operations: [
        operation("Planting", "Home", "20", "plan"),
        operation("planting", "Home", "22", "done", { area: area("60"), date: "2031-05-01" }),
      ],
    });
    expect(amounts(of(season, "Home").outlook.charges)).toEqual(["planting 2120"]);
  });
});

describe("work by machine", () => {
  const planter = machine("Planter");
  const planting = operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" } });

  it("runs in the operating layer and is owned in the full layer, its hours those of the season's own passes", () => {
    const { costPerArea } = of(figures({ fields: [home], machines: [planter], operations: [planting] }), "Home").plan.budget;
    // 13 acres an hour; fuel 0.5 gal × 4 and 15 % lube; labour 26 × 1.1 ÷ 13; ownership 8,000 a year on 100 acres.
    expect(["fuel", "hired labour", "machine ownership"].map((kind) => costPerArea.byKind.get(kind as Kind)!.toFixed(10))).toEqual([
      "2.3000000000",
      "2.2000000000",
      "80.0000000000",
    ]);
    expect([costPerArea.layers.operating, costPerArea.layers.full].map((cost) => cost.toFixed(10))).toEqual([
      "4.5000000000",
      "84.5000000000",
    ]);
  });

  it("spreads ownership over all passes of a stage, planned and done", () => {
    const season = figures({
      fields: [home, hill],
      machines: [planter],
      operations: [planting, { ...planting, target: { field: "Hill" }, status: "done" }],
    });
    expect(of(season, "Home").plan.budget.costPerArea.byKind.get("machine ownership")!.toFixed(10)).toBe("80.0000000000");
    expect(of(season, "Home").outlook.budget.costPerArea.byKind.get("machine ownership")!.times("150").toFixed(10)).toBe("8000.0000000000");
  });

  it("spreads ownership over the passes for the next crop as well, which carry their own part", () => {
    const after = { ...planting, operation: "Cover crop", status: "done" as const, date: "2031-11-01" };
    const season = figures({
      fields: [harvested(home)],
      machines: [planter],
      operations: [{ ...planting, status: "done", date: "2031-05-01" }, after],
      harvest: [load("Home", "19000")],
    });
    // 8,000 a year over 200 acres: 40 on each pass, one of which is the next crop's.
    const { outlook, final, nextCrop } = of(season, "Home");
    expect([outlook, final].map((each) => each!.budget.costPerArea.byKind.get("machine ownership")!.toFixed(10))).toEqual([
      "40.0000000000",
      "40.0000000000",
    ]);
    expect(nextCrop.find(({ kind }) => kind === "machine ownership")!.amount.toFixed(8)).toBe("4000.00000000");
  });

  it("does so too where a hired pass of the same name stands beside it", () => {
    const hired = operation("Planting", "Home", "5", "plan");
    const season = figures({
      fields: [home, hill],
      machines: [planter],
      operations: [hired, planting, { ...planting, target: { field: "Hill" }, status: "done" }],
    });
    expect(of(season, "Home").plan.budget.costPerArea.byKind.get("custom work")!.toFixed()).toBe("5");
    expect(of(season, "Home").outlook.budget.costPerArea.byKind.get("machine ownership")!.times("150").toFixed(10)).toBe("8000.0000000000");
  });
});

describe("stand counts", () => {
  const sown = {
    ...home,
    plannedPlanting: "2031-04-25",
    planted: "2031-05-15",
    targetStand: new Decimal("32000"),
    rowWidth: new Decimal("30"),
  };
  const counted = (plants: string): StandCount => ({
    field: "Home",
    date: "2031-06-01",
    place: { rowWidth: new Decimal("30"), length: new Decimal("17.424") },
    plants: new Decimal(plants),
    weak: new Decimal("0"),
    part: null,
    spot: null,
    remark: null,
    source: { table: "Stand counts", row: 1 },
  });

  it("turn the goal into an outlook that every figure follows, and leave the goal alone", () => {
    const season = figures({
      fields: [sown],
      standCounts: [counted("20"), counted("28")],
      operations: [operation("All work", "Home", "400", "plan")],
    });
    const { plan, outlook } = season.crops[0]!;
    // 24,000 plants on 15 May: 92 % of the best against 100 % for 32,000 on 25 April (Purdue's central Corn Belt table).
    expect(outlook.yields.outlook.toFixed(10)).toBe("184.0000000000");
    expect(outlook.netPerArea.operating.toFixed(10)).toBe("336.0000000000");
    expect([plan.yields.used, plan.netPerArea.operating, outlook.yields.goal].map(String)).toEqual(["200", "400", "200"]);
  });

  it("give way to the harvest", () => {
    const season = figures({ fields: [harvested(sown)], standCounts: [counted("20")], harvest: [load("Home", "19000")] });
    expect(season.crops[0]!.outlook.yields.used.toFixed()).toBe("190");
  });

  it("change nothing outside the table", () => {
    const season = figures({ fields: [{ ...sown, planted: "2031-07-04" }], standCounts: [counted("20")] });
    expect(season.crops[0]!.outlook.yields.used.toFixed()).toBe("200");
  });
});

describe("land and crop share", () => {
  it("charges rent in the cash layer and owned land in the full layer alone", () => {
    const season = figures({
      fields: [
        { ...home, tenure: "cash rent", rentPerArea: moneyPerArea("250") },
        { ...hill, landChargePerArea: moneyPerArea("180") },
      ],
    });
    expect(texts(of(season, "Home").plan.budget.costPerArea.layers, "operating", "cash", "full", "cashNeed")).toBe(
      "operating 0, cash 250, full 250, cashNeed 250",
    );
    expect(texts(of(season, "Hill").plan.budget.costPerArea.layers, "cash", "full", "cashNeed")).toBe("cash 0, full 180, cashNeed 0");
  });

  it("charges the operator's share of an item on crop-shared land only, and takes the operator's share of the crop", () => {
    const urea = item("Urea", "1", { operatorCostShare: share("0.5") });
    const shared = { ...home, tenure: "crop share", operatorShare: share("0.6") } as const;
    const season = figures({
      fields: [shared, hill],
      items: [urea],
      applications: [application("Urea", "Home", "90", "plan"), application("Urea", "Hill", "90", "plan")],
    });
    const budget = of(season, "Home").plan.budget;
    expect(budget.costPerArea.layers.operating.toFixed()).toBe("45");
    expect(budget.incomePerArea.toFixed()).toBe("480");
    expect(budget.breakEvenPrice.operating!.toFixed()).toBe("0.375");
    expect(of(season, "Hill").plan.budget.costPerArea.layers.operating.toFixed()).toBe("90");
  });
});

describe("costs that move with yield", () => {
  const wet = { ...corn, sellingCostPerUnit: moneyPerUnit("0.20"), expectedHarvestMoisture: points("20.5") };
  const drying = { ...settings, dryingChargePerPoint: moneyPerUnit("0.05") };

  it("are charged on the yield of the stage, and drying on the points above standard", () => {
    const budget = of(figures({ settings: drying, crops: [wet], fields: [home] }), "Home").plan.budget;
    expect(budget.costPerArea.byKind.get("haul")!.toFixed()).toBe("40");
    expect(budget.costPerArea.byKind.get("drying")!.toFixed()).toBe("50");
    expect(budget.breakEvenPrice.operating!.toFixed()).toBe("0.45");
  });

  it("dry load by load as weighed, once there are loads", () => {
    // 10,000 wet bushels at 16.5 %, a point above standard: 500. They are 9,881.66 dry; the 11,000 at 15.5 % pay nothing.
    const season = figures({
      settings: drying,
      crops: [wet],
      fields: [harvested(home)],
      harvest: [load("Home", "10000", "16.5"), load("Home", "11000", "15.5")],
    });
    const { yields, moving } = of(season, "Home").final!.budget;
    expect(moving.byKind.get("drying")!.times(yields.used).times("100").toFixed(10)).toBe("500.0000000000");
  });
});

describe("the final", () => {
  it("has done work only, waits for the harvest of the field, and for the whole crop for the crop", () => {
    const season = figures({
      fields: [harvested(home), hill],
      harvest: [load("Home", "19000")],
      operations: [operation("Planting", "Home", "20", "done"), operation("Spraying", "Home", "9", "plan")],
    });
    expect(of(season, "Home").final!.budget.costPerArea.layers.operating.toFixed()).toBe("20");
    expect(of(season, "Home").final!.budget.yields.used.toFixed()).toBe("190");
    // The spraying without a date was never done.
    expect(of(season, "Home").outlook.budget.costPerArea.layers.operating.toFixed()).toBe("20");
    expect(of(season, "Hill").final).toBeNull();
    expect(season.crops[0]!.final).toBeNull();
  });
});

describe("a crop", () => {
  it("has no yield that pays where its price is just what selling costs, on fields of any size", () => {
    const season = figures({
      crops: [{ ...corn, price: moneyPerUnit("0.55"), sellingCostPerUnit: moneyPerUnit("0.359") }],
      fields: [harvested(field("Home", "279.79", "0"))],
      harvest: [load("Home", "3402.2")],
      otherCosts: [otherCost("Storage", "0.191", { basis: "per unit of yield" }), otherCost("Office", "900")],
    });
    expect(season.crops[0]!.outlook.breakEvenYield.full).toBeNull();
  });

  it("weights costs by acres, and its yield and share by the crop of each field", () => {
    const season = figures({
      fields: [
        { ...home, provenYield: yieldPerArea("190") },
        { ...hill, tenure: "crop share", operatorShare: share("0.5") },
      ],
      operations: [operation("Planting", "Home", "30", "plan"), operation("Planting", "Hill", "15", "plan")],
    });
    const plan = season.crops[0]!.plan;
    expect(plan.fixed.layers.operating.toFixed()).toBe("25");
    expect(plan.yields.goal.times("3").toFixed(20)).toBe(new Decimal("560").toFixed(20));
    expect(plan.operatorShare.times("28000").toFixed(20)).toBe(new Decimal("24000").toFixed(20));
    expect(plan.yields.proven).toBeNull();
  });

  it("nets what its fields net together, on every layer", () => {
    const price = fc.integer({ min: 1, max: 900 }).map((cents) => moneyPerUnit(`${cents}e-2`));
    const cost = fc.integer({ min: 0, max: 90_000 }).map((cents) => `${cents}e-2`);
    const acres = fc.integer({ min: 1, max: 4000 }).map((tenths) => `${tenths}e-1`);
    fc.assert(
      fc.property(price, cost, cost, acres, acres, fc.integer({ min: 0, max: 100 }), (p, a, b, firstAcres, secondAcres, percent) => {
        const season = figures({
          crops: [{ ...corn, price: p, sellingCostPerUnit: moneyPerUnit("0.31") }],
          fields: [
            field("A", firstAcres, "187.3"),
            field("B", secondAcres, "143.9", { tenure: "crop share", operatorShare: share(new Decimal(percent.toString()).div("100")) }),
          ],
          operations: [operation("Work", "A", a, "plan"), operation("Work", "B", b, "plan")],
        });
        const crop = season.crops[0]!;
        const together = crop.fields.map(({ plan }) => plan.budget.netPerArea.cash.times(plan.budget.area)).reduce((x, y) => x.plus(y));
        expect(crop.plan.netPerArea.cash.times(crop.area).toFixed(20)).toBe(together.toFixed(20));
      }),
    );
  });
});

describe("sales", () => {
  it("leave the price that the unsold grain must bring", () => {
    const season = figures({
      fields: [home],
      operations: [operation("All work", "Home", "700", "plan")],
      sales: [sale("8000", "4.50"), sale("2000", "3.50")],
    });
    const { sold, averagePrice, unsold, priceNeeded } = season.crops[0]!.sales;
    expect([sold, averagePrice, unsold].map(String)).toEqual(["10000", "4.3", "10000"]);
    // (70,000 − 43,000) ÷ 10,000
    expect(priceNeeded.operating!.toFixed()).toBe("2.7");
  });

  it("leave no price where nothing is left to sell", () => {
    expect(figures({ fields: [home], sales: [sale("20000", "4")] }).crops[0]!.sales.priceNeeded.full).toBeNull();
  });
});
