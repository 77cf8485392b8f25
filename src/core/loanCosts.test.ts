import { describe, expect, it } from "vitest";
import { corn, field, operation, otherCost, seasonOf } from "../../tests/support/season";
import { Decimal } from "./numbers/decimal";
import { layers } from "./kinds";
import { reasons } from "./lender/reasons";
import type { Loan, Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { money, moneyPerArea, moneyPerUnit } from "./numbers/units";

/** 8 % of 100,000: 8,000 of interest and 12,000 of principal. */
const loan = (more: Partial<Loan> = {}): Loan => ({
  name: "Note",
  kind: "term",
  balance: money("100000"),
  rate: new Decimal("0.08"),
  payment: money("20000"),
  paymentsAYear: new Decimal("1"),
  nextDue: "2031-03-01",
  firstDue: null,
  bornBy: null,
  source: { table: "Loans", row: 1 },
  ...more,
});
const soybeans = { ...corn, name: "Soybeans", price: moneyPerUnit("11") };
const farm = {
  crops: [corn, soybeans],
  fields: [field("Home", "100", "200"), field("Hill", "50", "60", { crop: "Soybeans" }), field("Low", "50", "180")],
};
const figures = (parts: Partial<Season>) => seasonFigures(seasonOf({ ...farm, ...parts }));

/** Charges of a loan's kinds by field, at each stage. */
function charged(parts: Partial<Season>) {
  return figures(parts)
    .crops.flatMap(({ fields }) => fields)
    .flatMap(({ field: name, plan, outlook }) => {
      expect(outlook.charges.map(String)).toEqual(plan.charges.map(String));
      return plan.charges.map(
        ({ kind, amount, cash, entries }) =>
          `${name} ${kind} ${amount.toFixed()}${cash ? "" : " unpaid"} ${entries.map(({ table, row }) => `${table} ${row}`).join()}`,
      );
    });
}

describe("a loan", () => {
  it("is borne by all land, by acres and to the cent", () => {
    expect(charged({ loans: [loan()] })).toEqual([
      "Home term interest 4000 Loans 1",
      "Home term principal 6000 Loans 1",
      "Low term interest 2000 Loans 1",
      "Low term principal 3000 Loans 1",
      "Hill term interest 2000 Loans 1",
      "Hill term principal 3000 Loans 1",
    ]);
    // 100 of interest over three fields of an acre each: a cent is left for the first.
    const thirds = ["A", "B", "C"].map((name) => field(name, "1", "200"));
    expect(
      charged({ fields: thirds, loans: [loan({ balance: money("1250"), payment: money("100") })] }).map((line) => line.split(" ")[3]),
    ).toEqual(["33.34", "33.33", "33.33"]);
  });

  it("is borne by the field or the crop that it is for", () => {
    expect(charged({ loans: [loan({ bornBy: { field: "Low" } })] })).toEqual([
      "Low term interest 8000 Loans 1",
      "Low term principal 12000 Loans 1",
    ]);
    // 100 and 50 acres of corn.
    expect(charged({ loans: [loan({ bornBy: { crop: "Corn" }, payment: money("8000") })] }).map((line) => line.split(" Loans")[0])).toEqual(
      ["Home term interest 5333.33", "Low term interest 2666.67"],
    );
    // What grows nowhere bears nothing: then all land does.
    expect(
      charged({
        crops: [corn, soybeans, { ...corn, name: "Wheat" }],
        loans: [loan({ bornBy: { crop: "Wheat" }, payment: money("8000") })],
      }),
    ).toHaveLength(3);
  });

  it("is in the cash layer with its interest and in the cash need with its principal as well", () => {
    const { layers: of } = figures({ loans: [loan()] }).crops[0]!.plan.costPerArea;
    // 6,000 and 9,000 on 150 acres of corn.
    expect(layers.map((layer) => of[layer].toFixed())).toEqual(["0", "40", "40", "100"]);
  });
});

describe("term interest in the full layer", () => {
  const layersOf = (parts: Partial<Season>) => {
    const { costPerArea, interestInFull, netPerArea } = figures({ fields: [field("Home", "100", "200")], crops: [corn], ...parts })
      .crops[0]!.outlook;
    return {
      cash: costPerArea.layers.cash.toFixed(),
      full: costPerArea.layers.full.toFixed(),
      kept: interestInFull.toFixed(),
      net: netPerArea.full.toFixed(),
    };
  };
  const costs = [
    otherCost("Inputs", "580", { basis: "per acre", kind: "supplies" }),
    otherCost("Note", "20", { basis: "per acre", kind: "term interest" }),
  ];

  it("stays where neither machine ownership nor a land charge is entered", () => {
    // Cash 600, 20 of it term interest; 200 bu at 4.00 bring 800.
    expect(layersOf({ otherCosts: costs })).toEqual({ cash: "600", full: "600", kept: "20", net: "200" });
  });

  it("leaves where one of them is", () => {
    expect(
      layersOf({ otherCosts: [...costs, otherCost("Combine", "30", { basis: "per acre", kind: "machine ownership", cash: false })] }),
    ).toEqual({ cash: "600", full: "610", kept: "0", net: "190" });
    expect(layersOf({ otherCosts: costs, fields: [field("Home", "100", "200", { landChargePerArea: moneyPerArea("50") })] })).toEqual({
      cash: "600",
      full: "630",
      kept: "0",
      net: "170",
    });
    // 0 says that there is none to charge: the interest stays.
    expect(layersOf({ otherCosts: [...costs, otherCost("None", "0", { kind: "machine ownership" })] })).toMatchObject({
      full: "600",
      kept: "20",
    });
  });

  it("leaves field by field, and moves with yield where it is entered so; the crop adds its fields up", () => {
    const fields = [field("Home", "100", "200", { landChargePerArea: moneyPerArea("50") }), field("Low", "50", "180")];
    // Home: 20 of interest leave, 50 of land charge come. Low keeps 20 and 10 cents on 180 bu.
    const perBushel = otherCost("Bin note", "0.1", { basis: "per unit of yield", kind: "term interest", over: { field: "Low" } });
    const [crop] = figures({ crops: [corn], fields, otherCosts: [...costs, perBushel] }).crops;
    expect(crop!.fields.map(({ outlook: { budget } }) => budget.costPerArea.layers.full.toFixed())).toEqual(["630", "618"]);
    expect(crop!.outlook.costPerArea.layers.full.toFixed(20)).toBe(new Decimal("93900").div("150").toFixed(20)); // 63,000 and 30,900
    expect(crop!.outlook.interestInFull.toFixed(20)).toBe(new Decimal("1900").div("150").toFixed(20)); // 38 on 50 acres
  });

  it("is among the reasons of the full layer where it stays", () => {
    const byRevenue = otherCost("Note", "2000", { by: "revenue", kind: "term interest" });
    const parts = {
      crops: [corn],
      fields: [
        field("Home", "100", "200", { uniformityLoss: new Decimal("40") }),
        field("Low", "100", "200", { landChargePerArea: moneyPerArea("50") }),
      ],
      otherCosts: [byRevenue],
      operations: [operation("Planting", "Home", "5", "plan")],
    };
    const season = seasonOf(parts);
    const [crop] = seasonFigures(season).crops;
    // Of 2,000 by revenue, Home bears 1,000 at 200 bu and 750 at 120.
    // It stays in the full layer of Home alone, whose part is 250 less than planned; over both it is what it was.
    const ofInterest = (layer: "cash" | "full") =>
      reasons(crop!, layer)
        .filter(({ of }) => typeof of === "object" && of.kind === "term interest")
        .map(({ effect }) => effect.toFixed());
    expect([ofInterest("cash"), ofInterest("full")]).toEqual([[], ["250"]]);
    expect(crop!.fields.map(({ outlook }) => outlook.amountByKind.get("term interest")!.toFixed())).toEqual(["750", "1250"]);
    for (const layer of layers) {
      const difference = crop!.outlook.netPerArea[layer].minus(crop!.plan.netPerArea[layer]).times("200");
      expect(
        reasons(crop!, layer)
          .reduce((total, { effect }) => total.plus(effect), new Decimal("0"))
          .minus(difference)
          .abs()
          .lt("1e-20"),
      ).toBe(true);
    }
  });
});
