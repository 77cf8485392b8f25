/** What two entries would count twice: one of them counts, the other is told with both places. */
import { describe, expect, it } from "vitest";
import { sum, zero } from "../../src/core/numbers/decimal";
import { seasonReport } from "../../src/workbook/report";
import { cashFlowSheet } from "../../src/workbook/sheets/lender/cashFlowSheet";
import { farmCashFlow } from "../../src/workbook/sheets/lender/farmCashFlow";
import { contentFromText } from "../support/tableFromText";

/** 100 acres at rent-free 200 bu; a planter that burns 0.5 gal an acre at 4: 2.00 of fuel and 0.30 of lube, 2.30 an acre. */
const farm = `Season
| Setting | Value |
| Season year | 2031 |
Crops
| Crop | Expected price |
| Corn | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 60 | 200 |
| Birch | Corn | 40 | 200 |
Machines
| Machine | List price | Years kept | Width | Speed | Fuel per acre | Fuel price | Labour per hour | Real interest rate | Repair class |
| Planter | 100000 | 10 | 30 | 5 | 0.5 | 4 | 20 | 4% | |
Items
| Item | Kind | Pack unit | Plan price per pack | Charged |
| Diesel | fuel | gal | 3 | by acres |
| Tank diesel | fuel | gal | 3 | as used |
`;
const planting = (where: string) =>
  `Operations\n| Field or Crop | Operation | Machine | Date | Status |\n| ${where} | Planting | Planter | 2031-05-01 | plan |\n`;
const bill = (item: string) => `Purchases\n| Date | Item | Quantity | Unit | Unit price |\n| 2031-04-01 | ${item} | 500 | gal | 3 |\n`;
const use = (item: string, where: string, status = "plan") =>
  `Applications\n| Field or Crop | Item | Rate | Rate unit | Date | Status |\n| ${where} | ${item} | 5 | gal/ac | 2031-05-01 | ` +
  `${status} |\n`;
const fuelCost = (over = "all") =>
  `Other costs\n| Item | Kind | Amount | Basis | Shared over |\n| Fuel | fuel | 12 | per acre | ${over} |\n`;

const fuelOf = (...tables: readonly string[]) => {
  const report = seasonReport(contentFromText(farm + tables.join("")));
  const told = report.problems.map(({ code, at, other }) => `${code} ${at.table} ${at.row} ${at.column} / ${other?.table} ${other?.row}`);
  const [corn] = report.figures.crops;
  const fuel = (stage: "plan" | "outlook") =>
    corn!.fields.map((field) => field[stage].budget.costPerArea.byKind.get("fuel")?.toFixed(2) ?? "0.00").join(" ");
  return {
    told,
    plan: fuel("plan"),
    outlook: fuel("outlook"),
    isComplete: report.problemsOf({ of: "crop", name: "Corn" }).length === 0,
    report,
  };
};

/** What the year pays for a kind. */
const paidFor = (report: ReturnType<typeof seasonReport>, kind: string) =>
  sum(farmCashFlow(report)!.months.map(({ flows }) => flows.get(kind) ?? zero))
    .neg()
    .toFixed(2);

describe("fuel that machines compute, 2.30 an acre", () => {
  it("counts, and not the diesel that is bought by acres: 500 gal at 3 are 15.00 an acre", () => {
    expect(fuelOf(planting("Corn"), bill("Diesel"))).toMatchObject({
      told: ["fuel-twice Items 1 Charged / Machines 1"],
      plan: "2.30 2.30",
      outlook: "2.30 2.30",
      isComplete: false,
    });
    expect(fuelOf(bill("Diesel"))).toMatchObject({ told: [], plan: "0.00 0.00", outlook: "15.00 15.00", isComplete: true });
  });

  it("counts where the machine works, and a bill that is charged directly in the other fields: 300 on 100 acres are 3.00", () => {
    const direct = "Purchases\n| Date | Amount | Kind | For |\n| 2031-04-01 | 300 | fuel | Corn |\n";
    const { report, ...figures } = fuelOf(planting("Alder"), direct);
    expect(figures).toEqual({
      told: ["cost-twice Purchases 1 Kind / Machines 1"],
      plan: "2.30 0.00",
      outlook: "2.30 3.00",
      isComplete: false,
    });
    // Of the bill 180 are for the 138 that the machine burns: the year pays the bill and no more.
    expect(paidFor(report, "fuel")).toBe("300.00");
    expect(fuelOf(direct)).toMatchObject({ told: [], outlook: "3.00 3.00", isComplete: true });
  });

  it("counts, and not the diesel that is planned by acres and not bought: 5 gal at 3 are 15.00 an acre", () => {
    expect(fuelOf(planting("Corn"), use("Diesel", "Corn"))).toMatchObject({
      told: ["fuel-twice Items 1 Charged / Machines 1"],
      plan: "2.30 2.30",
      outlook: "2.30 2.30",
      isComplete: false,
    });
    expect(fuelOf(use("Diesel", "Corn"))).toMatchObject({ told: [], plan: "15.00 15.00", outlook: "15.00 15.00" });
  });

  it("counts, and not the diesel that is applied as used in the same field", () => {
    expect(fuelOf(planting("Corn"), use("Tank diesel", "Corn", "done"))).toMatchObject({
      told: ["fuel-twice Applications 1 Item / Machines 1"],
      outlook: "2.30 2.30",
      isComplete: false,
    });
  });

  it("leaves diesel that is applied where no machine works: Alder by machine, Birch 5 gal at 3", () => {
    expect(fuelOf(planting("Alder"), use("Tank diesel", "Birch"))).toMatchObject({
      told: [],
      plan: "2.30 15.00",
      outlook: "2.30 15.00",
      isComplete: true,
    });
    expect(fuelOf(planting("Alder"), use("Tank diesel", "Corn"))).toMatchObject({
      told: ["fuel-twice Applications 1 Item / Machines 1"],
      plan: "2.30 15.00",
    });
  });

  it("leaves diesel that is bought and not charged: it stands among the items", () => {
    const { told, outlook, report } = fuelOf(planting("Corn"), bill("Tank diesel"));
    expect({ told, outlook }).toEqual({ told: [], outlook: "2.30 2.30" });
    expect(report.figures.items.find(({ item }) => item === "Tank diesel")!.left.toFixed()).toBe("500");
  });

  it("is not paid once more with diesel that is only planned", () => {
    const fuelPaid = (tables: string) =>
      cashFlowSheet(fuelOf(planting("Corn"), tables).report)
        .rows.filter((row) => row[0]?.value === "fuel")
        .map((row) => row.map(({ value }) => value));
    expect(fuelPaid(use("Diesel", "Corn"))).toEqual(fuelPaid(""));
  });
});

describe("fuel among the other costs, 12.00 an acre", () => {
  it("gives way to machines that burn it in the same field", () => {
    expect(fuelOf(planting("Corn"), fuelCost())).toMatchObject({
      told: ["cost-twice Other costs 1 Kind / Machines 1"],
      plan: "2.30 2.30",
      outlook: "2.30 2.30",
      isComplete: false,
    });
    expect(fuelOf(planting("Alder"), fuelCost("Birch"))).toMatchObject({ told: [], plan: "2.30 12.00", isComplete: true });
  });

  it("gives way to diesel that is bought and charged, 15.00 an acre", () => {
    expect(fuelOf(bill("Diesel"), fuelCost())).toMatchObject({
      told: ["cost-twice Other costs 1 Kind / Purchases 1"],
      outlook: "15.00 15.00",
      isComplete: false,
    });
    expect(fuelOf(bill("Tank diesel"), use("Tank diesel", "Corn", "done"), fuelCost())).toMatchObject({
      told: ["cost-twice Other costs 1 Kind / Purchases 1"],
      outlook: "15.00 15.00",
    });
  });

  it("counts beside diesel that is bought and charged nowhere, and is told", () => {
    const { told, outlook, report } = fuelOf(bill("Tank diesel"), fuelCost());
    expect({ told, outlook }).toEqual({ told: ["cost-twice Other costs 1 Kind / Purchases 1"], outlook: "12.00 12.00" });
    expect(report.problems[0]!.like).toContain("This counts");
  });

  it("counts alone where nothing else is entered", () => {
    expect(fuelOf(fuelCost())).toMatchObject({ told: [], plan: "12.00 12.00", outlook: "12.00 12.00", isComplete: true });
  });
});

describe("repairs that machines compute", () => {
  it("count before parts charged by acres and repairs among the other costs", () => {
    const tables = farm
      .replace("| 4% | |", "| 4% | planter |")
      .replace("| Tank diesel | fuel | gal | 3 | as used |", "| Openers | repairs | each | 3 | by acres |");
    const other = "Other costs\n| Item | Kind | Amount | Basis |\n| Shop | repairs | 12 | per acre |\n";
    const { problems } = seasonReport(contentFromText(tables + planting("Corn") + bill("Openers").replace("gal", "each") + other));
    expect(problems.map(({ code, at, other: beside }) => [code, at.table, beside?.table])).toEqual([
      ["fuel-twice", "Items", "Machines"],
      ["cost-twice", "Other costs", "Machines"],
    ]);
  });
});

describe("entries of one row of which one counts", () => {
  const operations = (row: string) =>
    fuelOf(
      `Operations\n| Field or Crop | Operation | Rate | Basis | Hours | Machine | Date | Status |\n| Corn | Planting | ${row} | ` +
        "2031-05-01 | plan |\n",
    );
  const workCost = ({ report }: ReturnType<typeof fuelOf>) =>
    report.figures.crops[0]!.plan.costPerArea.byKind.get("custom work")?.toFixed(2) ?? "0.00";

  it("are told where a rate stands beside a machine: the machine counts", () => {
    const both = operations("22 | per acre | | Planter");
    expect(both).toMatchObject({ told: ["entry-beside Operations 1 Rate / Operations 1"], plan: "2.30 2.30" });
    expect(workCost(both)).toBe("0.00");
    expect(operations(" | | 3 | Planter").told).toEqual(["entry-beside Operations 1 Hours / Operations 1"]);
  });

  it("are told where hours stand beside a rate that is not per hour: 40 an acre, not 40 × 6 ÷ 100", () => {
    const blankBasis = operations("40 | | 6 | ");
    expect(blankBasis.told).toEqual(["entry-beside Operations 1 Hours / Operations 1"]);
    expect(workCost(blankBasis)).toBe("40.00");
    const hourly = operations("40 | per hour | 6 | ");
    expect([hourly.told, workCost(hourly)]).toEqual([[], "2.40"]);
  });
});

describe("rent on a crop-shared field", () => {
  const land = (row: string) =>
    seasonReport(
      contentFromText(
        "Crops\n| Crop | Expected price |\n| Corn | 4 |\nFields\n| Field | Crop | Acres | Yield goal | Tenure | Operator share of " +
          `crop % | Rent per acre |\n| Alder | Corn | 100 | 200 | ${row} |\n`,
      ),
    );

  it("is told, and the share counts: 0.6 × 200 × 4 = 480 of income and no rent", () => {
    for (const row of ["crop share | 60 | 250", " | 60 | 250"]) {
      const { problems, figures } = land(row);
      expect(problems.filter(({ code }) => code === "tenure-conflict").map(({ at, other }) => [at.column, other?.column])).toEqual([
        ["Rent per acre", "Operator share of crop %"],
      ]);
      const { budget } = figures.crops[0]!.fields[0]!.plan;
      expect([budget.incomePerArea.toFixed(), budget.costPerArea.byKind.get("cash rent") ?? null]).toEqual(["480", null]);
    }
    expect(land("crop share | 60 | 0").problems.filter(({ code }) => code === "tenure-conflict")).toEqual([]);
  });
});

describe("one tractor on two rows", () => {
  const machines = (first: string, second: string) =>
    seasonReport(
      contentFromText(`${farm.replace(
        /Machines[^]*?Items/,
        `Machines
| Machine | List price | Years kept | Width | Speed | Labour per hour | Real interest rate | Tractor | Tractor list price | Tractor years kept | Tractor salvage value |
| Planter | 100000 | 10 | 30 | 5 | 20 | 0 | Big one | ${first} |
| Harrow | 50000 | 10 | 30 | 5 | 20 | 0 | big one | ${second} |
Items`,
      )}Operations
| Field or Crop | Operation | Machine | Date | Status |
| Corn | Planting | Planter | 2031-05-01 | plan |
| Corn | Harrowing | Harrow | 2031-04-20 | plan |
`),
    );
  const ownership = ({ figures }: ReturnType<typeof machines>) =>
    figures.crops[0]!.plan.costPerArea.byKind.get("machine ownership")!.toFixed(6);

  it("counts as the first has it, and is told where the second says something else", () => {
    const alike = machines("200000 | 10 | 60000", "200,000 | 10 | 60000");
    expect(alike.problems).toEqual([]);
    const apart = machines("200000 | 10 | 60000", "210000 | 12 | 60000");
    expect(apart.problems.map(({ code, at, other }) => `${code} ${at.row} ${at.column} / ${other?.row} ${other?.column}`)).toEqual([
      "tractor-disagrees 2 Tractor list price / 1 Tractor list price",
      "tractor-disagrees 2 Tractor years kept / 1 Tractor years kept",
    ]);
    expect(ownership(apart)).toBe(ownership(alike));
  });

  it("needs its figures on one row only", () => {
    const once = machines("200000 | 10 | 60000", " | | ");
    expect(once.problems).toEqual([]);
    expect(ownership(once)).toBe(ownership(machines("200000 | 10 | 60000", "200000 | 10 | 60000")));
  });
});
