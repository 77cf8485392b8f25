import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { Decimal } from "../../core/numbers/decimal";
import { money } from "../../core/numbers/units";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { againstPlan, rowEffect } from "./rowEffect";
import { purchaseCells, withPurchase } from "./withPurchase";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const bill = new Map<string, string | Decimal | { readonly day: string }>([
  ["Date", { day: "2031-05-20" }],
  ["Item", "Urea"],
  ["Quantity", new Decimal("1000")],
  ["Unit", "lb"],
  ["Amount", new Decimal("900")],
]);

const matches = {
  name: "Matches",
  headers: ["Table", "Range", "Column", "Heading"],
  rows: [["Purchases", "A!A1:B9", "Item", "What"]],
  body: { sheet: "M", row: 1, column: 0 },
};
const ownRange = {
  ...countedContent,
  tables: [matches],
  ranges: new Map([["A!A1:B9", { name: "", headers: ["What"], rows: [], body: { sheet: "A", row: 1, column: 0 } }]]),
};

describe("what a bill will do", () => {
  it("is worked out by the reading that follows when it is added", () => {
    const before = seasonReport(countedContent, true);
    const content = withPurchase(countedContent, purchaseCells(bill))!;
    expect(content.tables.find(({ name }) => name === "Purchases")!.rows).toHaveLength(5);
    const after = seasonReport(content, true);
    // 0.285 a lb becomes 9,450 ÷ 31,000: 30,975 lb on 198.5 ac cost 3.0958 an acre more.
    const [from, to] = [before, after].map(({ figures }) => figures.crops[0]!.outlook.costPerArea.layers.cash);
    expect(to!.minus(from!).toFixed(2)).toBe("3.10");
    expect(rowEffect(before, after, "cash", format)).toContain(`Corn ${format.money(from!)} → ${format.money(to!)} an acre, price needed `);
    expect(rowEffect(before, after, "cash", format)).toContain(" (cash cost). One entry to fix or to check would come with it.");
    expect(rowEffect(before, before, "cash", format)).toBe("No cost per acre moves by a cent (cash cost).");
  });

  it("stands where the host would write: above rows that were made blank beforehand", () => {
    const blank = {
      ...countedContent,
      tables: countedContent.tables.map((table) =>
        table.name === "Purchases" ? { ...table, rows: [...table.rows, table.headers.map(() => "")] } : table,
      ),
    };
    const rows = withPurchase(blank, purchaseCells(bill))!.tables.find(({ name }) => name === "Purchases")!.rows;
    expect([rows.length, rows[4]![1]]).toEqual([6, "Urea"]);
  });

  it("is known for the first bill too, whose table is made with it, but not where purchases are read from the grower's own range", () => {
    const without = { ...countedContent, tables: countedContent.tables.filter(({ name }) => name !== "Purchases") };
    expect(withPurchase(without, purchaseCells(bill))!.tables.find(({ name }) => name === "Purchases")!.rows).toEqual([
      expect.arrayContaining(["Urea", 1000, "lb", 900]),
    ]);
    expect(withPurchase(ownRange, purchaseCells(bill))).toBeNull();
  });

  it("is said against the planned price by the cents shown", () => {
    expect(againstPlan(money("266.004"), money("268"), "bag", format)).toBe("Plan price 268.00 a bag: 2.00 lower.");
    expect(againstPlan(money("268.004"), money("268"), "bag", format)).toBe("Plan price 268.00 a bag: as planned.");
    expect(againstPlan(money("300"), money("268"), "bag", format)).toBe("Plan price 268.00 a bag: 32.00 higher.");
    expect(againstPlan(money("300"), null, "bag", format)).toBe("");
  });
});
