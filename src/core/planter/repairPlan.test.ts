import { describe, expect, it } from "vitest";
import { corn, field, item, machine, operation, seasonOf, settings } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import { itemQuantity, share } from "../numbers/units";
import type { BudgetLine, Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import type { PlanterCheck } from "./planterCheck";
import { repairPlan } from "./repairPlan";

const blade: PlanterCheck = {
  machine: "Planter",
  row: "1",
  part: "Opener",
  whenNew: null,
  replaceAt: null,
  measured: null,
  unit: null,
  finding: "replace",
  item: "Blade",
  quantity: itemQuantity("2"),
  hours: null,
  doneOn: null,
  source: { table: "Planter checks", row: 1 },
};
const drilled = (where: string, acres: string) => ({
  ...operation("Planting", where, "0", "plan"),
  cost: { basis: "machine", machine: "Planter" } as const,
  area: new Decimal(acres) as Season["fields"][number]["area"],
});
const line = (over: BudgetLine["over"], amount: string, basis: BudgetLine["basis"] = "whole"): BudgetLine => ({
  over,
  kind: "repairs",
  amount: new Decimal(amount),
  basis,
  paidOn: null,
  operatorCostShare: share("1"),
  allIn: false,
  source: { table: "Budget", row: 1 },
});
const beans = { ...corn, name: "Soybeans" };
const plan = (more: Partial<Season> = {}) => {
  const season = seasonOf({
    settings,
    crops: [corn, beans],
    fields: [field("Home", "100", "200"), { ...field("Hill", "50", "60"), crop: "Soybeans" }],
    items: [item("Blade", "30.05")],
    operations: [drilled("Home", "100"), drilled("Hill", "50")],
    planterChecks: [blade],
    machines: [machine("Planter")],
    ...more,
  });
  const figures = seasonFigures(season);
  const found = repairPlan(season, figures.crops, figures.planters[0]!);
  return typeof found === "string" ? found : found.map(({ crop, amount }) => `${crop} ${amount.toFixed()}`);
};

describe("what is due on a planter, as lines of the Budget", () => {
  it("goes by the acres that it plants of each crop, in cents that add up", () => {
    expect(plan()).toEqual(["Corn 40.07", "Soybeans 20.03"]);
    expect(plan({ operations: [drilled("Home", "100")] })).toEqual(["Corn 60.1"]);
  });

  it("is none where nothing is due, and nothing where a price, a wage or the acres are not known", () => {
    expect(plan({ planterChecks: [{ ...blade, finding: "good" }] })).toEqual([]);
    expect(plan({ items: [item("Blade", null)] })).toBe("not priced");
    expect(plan({ operations: [] })).toBe("no acres");
  });

  it("is refused where money would count twice, be dropped, or take the place of other money", () => {
    expect(plan({ budget: [line({ crop: "Corn" }, "500")] })).toEqual(["Corn 40.07", "Soybeans 20.03"]);
    const planter = machine("Planter");
    expect(plan({ machines: [{ ...planter, main: { ...planter.main, repairClass: "planter" } }] })).toBe("computed");
    expect(plan({ budget: [line({ all: true }, "500")] })).toBe("planned otherwise");
    expect(plan({ budget: [line({ field: "Hill" }, "500")] })).toBe("planned otherwise");
    const rows = [drilled("Home", "100"), drilled("Hill", "50"), { ...operation("Tiling", "Home", "9", "plan"), kind: "repairs" as const }];
    expect(plan({ operations: rows })).toBe("planned otherwise");
  });

  it("is not offered a second time", () => {
    const lines = [line({ crop: "Corn" }, "40.07"), line({ crop: "Soybeans" }, "20.03")];
    expect(plan({ budget: lines })).toBe("planned already");
    expect(plan({ budget: [line({ crop: "Corn" }, "40.07", "per acre"), lines[1]!] })).toEqual(["Corn 40.07", "Soybeans 20.03"]);
  });
});
