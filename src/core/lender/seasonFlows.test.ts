import { describe, expect, it } from "vitest";
import {
  application,
  corn,
  field,
  item,
  machine,
  operation,
  otherCost,
  purchase,
  sale,
  seasonOf,
  settings,
} from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import type { Loan, Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { area, money, moneyPerArea, moneyPerUnit, share } from "../numbers/units";
import { seasonFlows, termPayments } from "./seasonFlows";

const home = field("Home", "100", "200");
const hill = field("Hill", "50", "60", { crop: "Soybeans" });
const soybeans = { ...corn, name: "Soybeans", price: moneyPerUnit("11") };
const loan = (more: Partial<Loan> = {}): Loan => ({
  name: "Planter",
  kind: "term",
  balance: money("50000"),
  rate: new Decimal("0.06"),
  payment: money("9000"),
  paymentsAYear: new Decimal("2"),
  nextDue: "2031-03-15",
  firstDue: null,
  bornBy: null,
  source: { table: "Loans", row: 1 },
  ...more,
});

/** The flows of one group as month and amount. */
function flows(group: string, parts: Partial<Season>, loans: readonly Loan[] = [], grainSold = "2031-12"): readonly string[] {
  const season = seasonOf({ fields: [home], ...parts });
  return seasonFlows(season, seasonFigures(season), loans, grainSold)
    .filter((flow) => flow.group === group)
    .map(({ month, amount }) => `${month} ${amount}`);
}

describe("the money of an item", () => {
  it("goes out with its freight and comes back with its rebate", () => {
    expect(
      flows("fertilizer", {
        items: [item("Urea", "0.30")],
        purchases: [purchase("Urea", "10000", "3500", { freight: money("200"), rebate: money("50"), paidOn: "2031-02-10" })],
      }),
    ).toEqual(["2031-02 -3650"]);
  });

  it("takes what is used and what is left of the plan, beyond what is bought", () => {
    const applications = [
      application("Urea", "Home", "150", "plan", { date: "2031-05-01" }),
      application("Urea", "Home", "150", "done", { date: "2031-04-20", area: area("40") }),
    ];
    // 6,000 lb used and 9,000 to go, 10,000 bought: 5,000 lb at 35 cents.
    expect(flows("fertilizer", { items: [item("Urea", "0.30")], purchases: [purchase("Urea", "10000", "3500")], applications })).toEqual([
      "2031-04 -3500",
      "2031-05 -1750",
    ]);
  });

  it("takes the planned use of what is charged as bought, done or not", () => {
    const diesel = item("Diesel", "3", { kind: "fuel", charged: "by acres" });
    const applications = [
      application("Diesel", "Home", "5", "plan", { date: "2031-06-01" }),
      application("Diesel", "Home", "2", "done", { date: "2031-05-01" }),
    ];
    // 500 gal planned, 200 bought at 4.00.
    expect(flows("fuel", { items: [diesel], purchases: [purchase("Diesel", "200", "800")], applications })).toEqual([
      "2031-04 -800",
      "2031-06 -1200",
    ]);
  });

  it("is spread over the months of its use in proportion", () => {
    const applications = [
      application("Urea", "Home", "100", "plan", { date: "2031-05-01" }),
      application("Urea", "Home", "50", "plan", { date: "2031-06-20" }),
    ];
    expect(flows("fertilizer", { items: [item("Urea", "0.30")], purchases: [purchase("Urea", "7500", "2250")], applications })).toEqual([
      "2031-04 -2250",
      "2031-05 -1500",
      "2031-06 -750",
    ]);
  });

  it("is asked for in the month of its use where nothing plans it, to the last half unit", () => {
    const urea = (bought: readonly string[], status: "plan" | "done") =>
      flows("fertilizer", {
        items: [item("Urea", "0.30")],
        purchases: bought.map((quantity) => purchase("Urea", quantity, new Decimal(quantity).times("0.3").toFixed())),
        applications: [application("Urea", "Home", "50", status, { date: "2031-05-01" })],
      });
    expect(urea([], "done")).toEqual(["2031-05 -1500"]);
    expect(urea(["6000"], "done")).toEqual(["2031-04 -1800"]);
    expect(urea(["4999.5"], "done")).toEqual(["2031-04 -1499.85", "2031-05 -0.15"]);
    // Planned, it falls in its month; what is bought beyond the plan is no money back.
    expect(urea(["4999.5"], "plan")).toEqual(["2031-04 -1499.85", "2031-05 -0.15"]);
    expect(urea(["6000"], "plan")).toEqual(["2031-04 -1800"]);
  });
});

describe("the money of work by machine", () => {
  const drill = machine("Planter");
  const planter = { ...drill, main: { ...drill.main, salvage: null } };
  const work = {
    machines: [planter],
    operations: [
      operation("Planting", "Home", "0", "plan", { cost: { basis: "machine", machine: "Planter" }, date: "2031-05-02" }),
      operation("Fuel truck", "Home", "1", "plan", { kind: "fuel", date: "2031-06-01" }),
    ],
  };
  const bought = {
    items: [item("Diesel", "4", { kind: "fuel", charged: "by acres" }), item("Oil", "9", { kind: "supplies", charged: "by acres" })],
    purchases: [purchase("Diesel", "100", "400")],
  };

  it("is its fuel and lube, and its hours where they are hired; owning it moves none", () => {
    // 0.5 gal × 4.00 and 15 % lube; 26 × 1.1 ÷ 13 acres an hour.
    expect(flows("fuel", work)).toEqual(["2031-05 -230", "2031-06 -100"]);
    expect(flows("hired labour", work)).toEqual(["2031-05 -220"]);
    expect(flows("machine ownership", work)).toEqual([]);
    expect(flows("unpaid labour", { ...work, machines: [{ ...planter, labour: "unpaid labour" }] })).toEqual([]);
  });

  it("is paid beside bills that no field is charged with for what they do not cover: the year pays the larger of the two once", () => {
    const uncharged = { ...bought, items: bought.items.map((each) => ({ ...each, unchargedIn: new Set(["Home"]) })) };
    // 230 computed beside a bill of 400: 400. Beside one of 30: 30 and the other 200. Work at a rate is paid all the same.
    expect(flows("fuel", { ...work, ...uncharged })).toEqual(["2031-04 -400", "2031-06 -100"]);
    expect(flows("fuel", { ...work, ...uncharged, purchases: [purchase("Diesel", "7.5", "30")] })).toEqual([
      "2031-04 -30",
      "2031-05 -200",
      "2031-06 -100",
    ]);
    expect(flows("hired labour", { ...work, ...uncharged })).toEqual(["2031-05 -220"]);
    expect(flows("fuel", { ...work, ...bought, purchases: [purchase("Oil", "10", "90")] })).toEqual(["2031-05 -230", "2031-06 -100"]);
  });

  it(
    "takes no bill for cover whose item the plan still uses elsewhere: 230 by machine and 400 for another field are 630, planned or " +
      "done",
    () => {
      for (const status of ["plan", "done"] as const) {
        const elsewhere = {
          crops: [corn, soybeans],
          fields: [home, hill],
          machines: work.machines,
          operations: work.operations.slice(0, 1),
          items: [item("Propane", "4", { kind: "fuel", charged: "as used" as const })],
          purchases: [purchase("Propane", "100", "400")],
          applications: [application("Propane", "Hill", "2", status, { date: "2031-06-01" })],
        };
        expect(flows("fuel", elsewhere)).toEqual(["2031-04 -400", "2031-05 -230"]);
      }
    },
  );

  it("takes of a bill by acres only what falls to the acres that the machine works: 300 of 600 beside 460 computed are 600 and 160", () => {
    const two = {
      fields: [home, field("East", "100", "200")],
      machines: [{ ...planter, fuelPerArea: new Decimal("1") }],
      operations: work.operations.slice(0, 1),
      items: [item("Diesel", "4", { kind: "fuel", charged: "by acres", unchargedIn: new Set(["Home"]) })],
      purchases: [purchase("Diesel", "150", "600")],
    };
    expect(flows("fuel", two)).toEqual(["2031-04 -600", "2031-05 -160"]);
  });

  it("takes a bill for cover without what landlords pay back: 600 less 300, beside 460 computed, are 460 in the end", () => {
    const parts = {
      fields: [{ ...home, tenure: "crop share" as const, operatorShare: share("0.5") }],
      machines: [{ ...planter, fuelPerArea: new Decimal("1") }],
      operations: work.operations.slice(0, 1),
      items: [item("Diesel", "4", { kind: "fuel", charged: "by acres", operatorCostShare: share("0.5"), unchargedIn: new Set(["Home"]) })],
      purchases: [purchase("Diesel", "150", "600")],
    };
    const all = [...flows("fuel", parts), ...flows("landlord's part", parts)].map((flow) => new Decimal(flow.slice(8)));
    expect(all.reduce((a, b) => a.plus(b)).toFixed()).toBe("-460");
  });

  it("takes stock of an item charged as used for a bill that covers it, and a bill that is charged for none", () => {
    const stock = {
      items: [item("Belts", "10", { kind: "fuel", charged: "as used" as const })],
      purchases: [purchase("Belts", "1", "10")],
    };
    expect(flows("fuel", { ...work, ...stock })).toEqual(["2031-04 -10", "2031-05 -220", "2031-06 -100"]);
    expect(flows("fuel", { ...work, ...bought })).toEqual(["2031-04 -400", "2031-05 -230", "2031-06 -100"]);
  });
});

describe("the landlord's part", () => {
  const shared = { ...home, tenure: "crop share" as const, operatorShare: share("0.5") };
  const urea = (charged: "as used" | "by acres") => item("Urea", "0.5", { operatorCostShare: share("0.5"), charged });

  it("of 50 an acre on 100 acres at half share comes back in the month of the bill, so that the operator bears 2,500 of 5,000", () => {
    const parts = {
      fields: [shared],
      items: [urea("as used")],
      purchases: [purchase("Urea", "10000", "5000", { paidOn: "2031-02-10" })],
      applications: [application("Urea", "Home", "100", "done", { date: "2031-05-01" })],
    };
    expect(flows("fertilizer", parts)).toEqual(["2031-02 -5000"]);
    expect(flows("landlord's part", parts)).toEqual(["2031-02 2500"]);
  });

  it("of what is still to be bought comes back as it is bought, and of stock none does", () => {
    const parts = {
      fields: [shared],
      items: [urea("as used")],
      applications: [application("Urea", "Home", "100", "plan", { date: "2031-05-01" })],
    };
    // 4,000 lb of 10,000 are bought: half of each payment. Of 20,000 bought for 10,000 lb a quarter.
    expect(flows("landlord's part", { ...parts, purchases: [purchase("Urea", "4000", "2000")] })).toEqual(["2031-04 1000", "2031-05 1500"]);
    expect(flows("landlord's part", { ...parts, purchases: [purchase("Urea", "20000", "10000")] })).toEqual(["2031-04 2500"]);
  });

  it("of what is charged by acres goes by the crop-shared acres", () => {
    // 100 of 150 acres are shared by half: a third of 900.
    const parts = {
      crops: [corn, soybeans],
      fields: [shared, hill],
      items: [urea("by acres")],
      purchases: [purchase("Urea", "1800", "900")],
    };
    expect(flows("landlord's part", parts).map((flow) => flow.slice(0, 14))).toEqual(["2031-04 300.00"]);
  });
});

describe("grain of an older year", () => {
  it("is paid whether its crop grows this year or not", () => {
    const season = {
      crops: [corn, soybeans],
      settings: { ...settings, seasonYear: "2031" },
      sales: [
        { ...sale("100", "5"), cropYear: "2030" },
        { ...sale("10", "11"), crop: "Soybeans", cropYear: "2030" },
      ],
    };
    expect(flows("older grain", season)).toEqual(["2031-06 500", "2031-06 110"]);
  });
});

describe("inputs that landlords buy themselves", () => {
  const shared = { ...home, tenure: "crop share" as const, operatorShare: share("0.5") };
  const own = { ...settings, landlordsInputs: "bought by the landlord" as const };
  const urea = (charged: "as used" | "by acres") => item("Urea", "0.5", { operatorCostShare: share("0.5"), charged });
  const season = (parts: Partial<Season>) => seasonOf({ fields: [shared], settings: own, ...parts });

  it(
    "are no part of what is needed: of 100 lb on 100 acres at half share 5,000 lb are bought for 2,500, nothing is short, nothing " +
      "comes back",
    () => {
      const parts = {
        settings: own,
        fields: [shared],
        items: [urea("as used")],
        purchases: [purchase("Urea", "5000", "2500", { paidOn: "2031-02-10" })],
        applications: [application("Urea", "Home", "100", "done", { date: "2031-05-01" })],
      };
      expect([flows("fertilizer", parts), flows("landlord's part", parts)]).toEqual([["2031-02 -2500"], []]);
      const {
        items: [of],
        crops: [crop],
      } = seasonFigures(season(parts));
      expect([of!.used, of!.short, of!.left, crop!.outlook.costPerArea.layers.operating].map(String)).toEqual(["5000", "0", "0", "25"]);
    },
  );

  it("cost the field the same whoever buys first: 25 an acre either way, at plan and as bought", () => {
    for (const settingsOf of [settings, own]) {
      const {
        crops: [crop],
      } = seasonFigures(
        season({
          settings: settingsOf,
          items: [urea("as used")],
          applications: [application("Urea", "Home", "100", "plan", { date: "2031-05-01" })],
        }),
      );
      expect([crop!.plan, crop!.outlook].map(({ costPerArea }) => costPerArea.layers.operating.toFixed())).toEqual(["25", "25"]);
    }
  });

  it("are still to be bought for the operator's part alone: 4,000 of 5,000 lb are bought, 1,000 at 0.50 remain", () => {
    const parts = {
      settings: own,
      fields: [shared],
      items: [urea("as used")],
      purchases: [purchase("Urea", "4000", "2000")],
      applications: [application("Urea", "Home", "100", "plan", { date: "2031-05-01" })],
    };
    expect(flows("fertilizer", parts)).toEqual(["2031-04 -2000", "2031-05 -500"]);
  });

  it("leave a bill charged by acres whole with the operator: 900 over 50 acres of his own and 100 at half share are 450 and 450", () => {
    const parts = {
      crops: [corn, soybeans],
      fields: [shared, hill],
      items: [urea("by acres")],
      purchases: [purchase("Urea", "1800", "900")],
    };
    const of = (where: Season) =>
      seasonFigures(where).crops.map(({ outlook, area: acres }) => outlook.costPerArea.layers.operating.times(acres).toFixed(2));
    expect(of(season(parts))).toEqual(["450.00", "450.00"]);
    expect(flows("fertilizer", { ...parts, settings: own })).toEqual(["2031-04 -900"]);
    // Repaid: 600 fall to the shared field, 300 of them come back.
    expect(of(season({ ...parts, settings }))).toEqual(["300.00", "300.00"]);
  });

  it("stay with the operator where he bears nothing of them anywhere, because he paid the bill", () => {
    const parts = {
      items: [item("Urea", "0.5", { operatorCostShare: share("0"), charged: "by acres" })],
      purchases: [purchase("Urea", "1800", "900")],
    };
    expect(seasonFigures(season(parts)).crops[0]!.outlook.costPerArea.layers.operating.toFixed()).toBe("9");
  });

  it("bear interest from the day of use on the operator's part", () => {
    // 2,500 planned for 1 May, repaid 30 June: 60 days at 7.3 % are 30.
    const byDate = {
      ...own,
      operatingInterest: { method: "by date" as const, rate: new Decimal("0.073"), repaymentDate: "2031-06-30" },
      repaymentDate: "2031-06-30",
    };
    for (const landlords of ["repaid", "bought by the landlord"] as const) {
      const {
        crops: [crop],
      } = seasonFigures(
        season({
          settings: { ...byDate, landlordsInputs: landlords },
          items: [urea("as used")],
          applications: [application("Urea", "Home", "100", "plan", { date: "2031-05-01" })],
        }),
      );
      expect(crop!.outlook.costPerArea.byKind.get("operating interest")!.times("100").toFixed()).toBe("30");
    }
  });
});

describe("the money of other costs", () => {
  const crops = { crops: [corn, soybeans], fields: [home, hill] };
  const of = (
    kind: "overhead" | "term interest" | "term principal" | "operating interest" | "management",
    parts: Parameters<typeof otherCost>[2] = {},
    loans: readonly Loan[] = [],
  ) => flows(kind, { ...crops, otherCosts: [otherCost("Cost", "10", { kind, paidOn: "2031-07-01", ...parts })] }, loans);

  it("is as much as is entered, or so much on each acre of the farm, the crop or the field", () => {
    expect(of("overhead")).toEqual(["2031-07 -10"]);
    expect(of("overhead", { basis: "per acre" })).toEqual(["2031-07 -1500"]);
    expect(of("overhead", { basis: "per acre", over: { crop: "Corn" } })).toEqual(["2031-07 -1000"]);
    expect(of("overhead", { basis: "per acre", over: { field: "Hill" } })).toEqual(["2031-07 -500"]);
  });

  it("holds operating interest that is entered as long as no loan's balance bears any, so that it is paid once", () => {
    const rated = (settings: Partial<Season["settings"]>, loans: readonly Loan[] = []) =>
      flows(
        "operating interest",
        {
          ...crops,
          settings: { ...seasonOf({}).settings, ...settings },
          otherCosts: [otherCost("Line", "10", { kind: "operating interest", basis: "per acre", paidOn: "2031-07-01" })],
        },
        loans,
      );
    const line = (rate: string) => ({
      ...loan(),
      kind: "operating" as const,
      balance: money("500"),
      rate: new Decimal(rate),
      payment: null,
      nextDue: null,
    });
    expect(rated({})).toEqual(["2031-07 -1500"]);
    expect(rated({}, [line("0")])).toEqual(["2031-07 -1500"]);
    expect(rated({}, [line("0.08")])).toEqual([]);
    expect(rated({ operatingInterest: { method: "months", rate: new Decimal("0.08"), months: new Decimal("6") } })).toEqual([]);
  });

  it("leaves out what goes with the grain, what is not paid and what is no cash need", () => {
    expect(of("overhead", { basis: "per unit of yield" })).toEqual([]);
    expect(of("overhead", { cash: false })).toEqual([]);
    expect(of("management")).toEqual([]);
  });
});

describe("the money of grain", () => {
  const crops = { crops: [{ ...corn, otherIncomePerArea: moneyPerArea("10") }, soybeans], fields: [home, hill] };

  it("comes from each crop's own sales, and other income from its acres", () => {
    // 5,000 of 20,000 bu of corn at 4.20, the rest at 4.00; 3,000 bu of soybeans at 11.00.
    expect(flows("grain sales", { ...crops, sales: [sale("5000", "4.2")] })).toEqual(["2031-06 21000", "2031-12 60000", "2031-12 33000"]);
    expect(flows("other income", crops)).toEqual(["2031-12 1000"]);
  });

  it("of an older crop is paid, and takes nothing from what this one has to sell: 5,000 bu at 4.20 beside all 20,000 at 4.00", () => {
    const older = { sales: [{ ...sale("5000", "4.2"), cropYear: "2030" }] };
    expect(flows("older grain", older)).toEqual(["2031-06 21000"]);
    expect(flows("grain sales", older)).toEqual(["2031-12 80000"]);
  });

  it("has nothing unsold where more is sold than grows", () => {
    expect(flows("grain sales", { sales: [sale("20100", "4")] })).toEqual(["2031-06 80400"]);
    expect(flows("grain sales", { sales: [sale("19999.5", "4")] })).toEqual(["2031-06 79998", "2031-12 2"]);
  });
});

describe("cash rent", () => {
  it("falls in the year of the grain where no season year is entered", () => {
    const rented = {
      settings: { ...settings, seasonYear: null },
      fields: [{ ...home, tenure: "cash rent" as const, rentPerArea: moneyPerArea("200") }],
    };
    expect(flows("cash rent", rented)).toEqual(["2031-03 -10000", "2031-11 -10000"]);
    expect(flows("cash rent", { ...rented, settings }, [], "2032-01")).toEqual(["2031-03 -10000", "2031-11 -10000"]);
  });
});

describe("a term loan", () => {
  const shown = (more: Partial<Loan>) => termPayments(loan(more), settings).map(({ month, amount }) => `${month} ${amount}`);

  it("is paid in the season's year alone, and as much as is left of it in the end", () => {
    expect(shown({})).toEqual(["2031-03 -9000", "2031-09 -9000"]);
    expect(shown({ nextDue: "2032-03-15" })).toEqual(["2031-03 -9000", "2031-09 -9000"]);
    expect(shown({ paymentsAYear: new Decimal("12"), payment: money("500") })).toHaveLength(12);
    // 3 % a half year on 10,181.48 leaves 1,486.92 after 9,000, and 44.61 of interest on them.
    expect(shown({ balance: money("10181.481425") })).toEqual(["2031-03 -9000", "2031-09 -1531.5336437825"]);
  });

  it("is paid as entered below its interest", () => {
    // 8,000 of interest are due on 100,000 at 8 %, and 5,000 are paid.
    const low = { balance: money("100000"), rate: new Decimal("0.08"), payment: money("5000"), paymentsAYear: new Decimal("1") };
    expect(shown(low)).toEqual(["2031-03 -5000"]);
  });

  it("takes its interest without a month where its payment or its day is not entered; an operating loan takes nothing", () => {
    expect(shown({ payment: null })).toEqual(["null -3000"]);
    expect(shown({ nextDue: null })).toEqual(["null -3000"]);
    expect(shown({ kind: "operating" })).toEqual([]);
  });

  it("is among the flows of the season", () => {
    expect(flows("term loans", {}, [loan()])).toHaveLength(2);
  });
});

describe("money without a date", () => {
  const planted = { ...home, plannedPlanting: "2031-04-20" };
  const undated = { fields: [planted, { ...hill, plannedPlanting: "2031-05-10" }], crops: [corn, soybeans] };

  it("is paid at planned planting where it goes into the field: 400 an acre of work on 100 acres in April", () => {
    expect(flows("custom work", { fields: [planted], operations: [operation("Planting", "Home", "400", "plan", { date: null })] })).toEqual(
      ["2031-04 -40000"],
    );
  });

  it("of a cost shared over fields is paid as each of them is planted: 1,500 over 100 and 50 acres", () => {
    expect(flows("custom work", { ...undated, otherCosts: [otherCost("Tiling", "1500", { kind: "custom work", paidOn: null })] })).toEqual([
      "2031-04 -1000",
      "2031-05 -500",
    ]);
  });

  it("of any other kind is paid a twelfth a month", () => {
    const paid = flows("overhead", { ...undated, otherCosts: [otherCost("Office", "1200", { paidOn: null })] });
    expect([paid.length, paid[0], paid[11]]).toEqual([12, "2031-01 -100", "2031-12 -100"]);
  });
});

describe("every flow", () => {
  it("that is entered names its row, and none is of nothing", () => {
    const season = seasonOf({
      fields: [{ ...home, tenure: "cash rent", rentPerArea: moneyPerArea("200") }],
      items: [item("Urea", "0.30")],
      purchases: [purchase("Urea", "10000", "3500")],
      applications: [application("Urea", "Home", "150", "plan")],
      operations: [operation("Planting", "Home", "20", "plan")],
      otherCosts: [otherCost("Office", "900", { paidOn: "2031-03-01" })],
      sales: [sale("5000", "4")],
    });
    const all = seasonFlows(season, seasonFigures(season), [loan()], "2031-12");
    const tables = (group: string) =>
      all.filter((flow) => flow.group === group).map(({ entries }) => entries.map(({ table }) => table).join());
    expect(["fertilizer", "custom work", "cash rent", "overhead", "grain sales"].map(tables)).toEqual([
      ["Purchases", "Applications"],
      ["Operations"],
      ["Fields", "Fields"],
      ["Other costs"],
      ["Sales", ""],
    ]);
    expect(tables("term loans")[0]).toBe("Loans");
    expect(all.every(({ amount }) => !amount.isZero())).toBe(true);
  });
});
