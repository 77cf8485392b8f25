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
} from "../../../tests/support/season";
import { notPlanned } from "../notPlanned";
import { Decimal } from "../numbers/decimal";
import type { Operation, Season, Status } from "../season";
import { seasonFigures } from "../seasonFigures";
import { cropQuantity, money, moneyPerUnit, points, share } from "../numbers/units";
import { reasons } from "./reasons";

const typedDry = (bushels: string, moisture: string) =>
  load("Home", "0", null, { quantity: cropQuantity(bushels), wet: cropQuantity(bushels), moisture: points(moisture) });

describe("reasons", () => {
  it("are the largest first whichever way they work, and none where nothing changed", () => {
    const figures = seasonFigures(
      seasonOf({
        settings: { ...settings, dryingChargePerPoint: moneyPerUnit("0.05"), dryingCountedOn: "dry" },
        crops: [{ ...corn, expectedHarvestMoisture: points("20.5") }],
        fields: [harvested(field("Home", "100", "200"))],
        harvest: [typedDry("19000", "16.5")],
        operations: [
          operation("Spraying", "Home", "9", "plan"),
          operation("Spraying", "Home", "7", "done"),
          operation("Planting", "Home", "20", "plan"),
          operation("planting", "Home", "23", "done"),
          operation("Mowing", "Home", "12", "plan"),
        ],
      }),
    );
    // 25 cents of drying planned, 5 to pay on 190 bu an acre, counted on dry bushels; 10 bu less at 3.75. The mowing was never done.
    expect(
      reasons(figures.crops[0]!, "operating").map(({ of, effect }) => `${typeof of === "string" ? of : `${of.kind} ${of.name}`} ${effect}`),
    ).toEqual([
      "cost that moves with yield 3800",
      "yield -3750",
      "custom work Mowing 1200",
      "custom work planting -300",
      "custom work Spraying 200",
    ]);
  });

  it("tell a kind with a budget line as one cost, which moved by what line, bills and rows come to", () => {
    const bill = (amount: string) => ({
      over: { field: "Home" },
      kind: "seed" as const,
      name: "Seed corn",
      amount: money(amount),
      paidOn: "2031-04-01",
      isOpening: false,
      operatorCostShare: null,
      source: { table: "Purchases", row: 1 },
    });
    const line = {
      over: { crop: "Corn" },
      kind: "seed" as const,
      amount: new Decimal("120"),
      basis: "per acre" as const,
      paidOn: null,
      operatorCostShare: share("1"),
      allIn: false,
      source: { table: "Budget", row: 1 },
    };
    const moved = (amount: string, more: Partial<Season> = {}) =>
      reasons(
        seasonFigures(seasonOf({ fields: [field("Home", "100", "200")], budget: [line], bills: [bill(amount)], ...more })).crops[0]!,
        "operating",
      ).map(({ of, effect }) => `${typeof of === "string" ? of : `${of.kind} ${of.name}${of.unplanned ? ", not planned" : ""}`} ${effect}`);
    // 5,000 of 12,000 is billed and nothing has moved; 15,000 is 3,000 over it.
    expect([moved("5000"), moved("15000"), moved("5000", { budget: [{ ...line, allIn: true }] })]).toEqual([
      [],
      ["seed seed -3000"],
      ["seed seed 7000"],
    ]);
    expect(moved("5000", { budget: [] })).toEqual(["seed Seed corn, not planned -5000"]);
  });

  it("tell what was done without a plan apart from what the plan has too, field by field", () => {
    const pass = (name: string, where: string, rate: string, status: Status) => operation(name, where, rate, status);
    const of = (operations: readonly Operation[]) => {
      const [crop] = seasonFigures(seasonOf({ fields: [field("Home", "100", "200"), field("Hill", "50", "200")], operations })).crops;
      return {
        moved: reasons(crop!, "operating").map((reason) =>
          typeof reason.of === "string" ? reason.of : `${reason.of.name}${reason.of.unplanned ? ", not planned" : ""} ${reason.effect}`,
        ),
        notPlanned: notPlanned(crop!, "operating").map(
          ({ kind, name, amount, fields }) => `${kind} ${name} ${amount} on ${fields.join(", ")}`,
        ),
      };
    };
    // A plan of 20 that was typed over with "done" leaves no plan: the move of 20 an acre is told as not planned.
    expect(of([pass("Planting", "Home", "20", "done")])).toEqual({
      moved: ["Planting, not planned -2000"],
      notPlanned: ["custom work Planting 2000 on Home"],
    });
    // Done as planned, nothing has moved.
    expect(of([pass("Planting", "Home", "20", "done as planned")])).toEqual({ moved: [], notPlanned: [] });
    // Planned on one field for 20 and done for 23; on the other nobody planned it.
    expect(
      of([
        pass("Planting", "Home", "20", "plan"),
        pass("Planting", "Home", "23", "done"),
        pass("planting", "Hill", "24", "done"),
        pass("Mowing", "Home", "1", "done"),
      ]),
    ).toEqual({
      moved: ["planting, not planned -1200", "Planting -300", "Mowing, not planned -100"],
      notPlanned: ["custom work planting 1200 on Hill", "custom work Mowing 100 on Home"],
    });
  });

  it("tell what was bought without a plan, and not what other costs or another yield charge", () => {
    const [crop] = seasonFigures(
      seasonOf({
        fields: [field("Home", "100", "200")],
        items: [item("Twine", "10", { kind: "supplies", charged: "by acres" }), item("Urea", "0.5")],
        purchases: [purchase("Twine", "50", "500"), purchase("Urea", "100", "50")],
        otherCosts: [otherCost("Office", "900")],
        applications: [application("Urea", "Home", "1", "done")],
      }),
    ).crops;
    expect(notPlanned(crop!, "cash").map(({ name, amount }) => `${name} ${amount}`)).toEqual(["Twine 500", "Urea 50"]);
    expect(notPlanned(crop!, "full")).toHaveLength(2);
  });

  it("count a cost as planned that another entry of its kind and name plans", () => {
    const [crop] = seasonFigures(
      seasonOf({
        fields: [field("Home", "100", "200")],
        operations: [operation("Scouting", "Home", "4", "done")],
        otherCosts: [otherCost("scouting", "900", { kind: "custom work" })],
      }),
    ).crops;
    // 900 planned, and 400 more done: a rise of what was planned.
    expect(notPlanned(crop!, "cash")).toEqual([]);
    expect(reasons(crop!, "cash").map(({ effect }) => effect.toFixed())).toEqual(["-400"]);
  });
});
