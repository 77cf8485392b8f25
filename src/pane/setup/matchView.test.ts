import { describe, expect, it } from "vitest";
import type { InputTable } from "../../workbook/inputTable";
import { firstMatching, matchView } from "./matchView";

const column = (heading: string, required: boolean) => ({ heading, required, width: 10, hint: "" });
const table: InputTable = {
  name: "Other_costs",
  sheet: "Other costs",
  columns: [column("Item", true), column("Amount", true), column("Month", false)],
};

describe("matching a range of one's own", () => {
  it("matches headings that are alike at once", () => {
    expect([...firstMatching(table, ["ITEM ", "Amount (USD)", "When"])]).toEqual([
      ["Item", "ITEM "],
      ["Amount", "Amount (USD)"],
      ["Month", ""],
    ]);
  });

  it("becomes one row for each matched column", () => {
    const { missing, rows } = matchView(
      table,
      "My costs!A3:D40",
      new Map([
        ["Item", "What"],
        ["Amount", "Cost"],
        ["Month", ""],
      ]),
    );
    expect(missing).toBe("");
    expect(rows.map((row) => Object.fromEntries(row))).toEqual([
      { Table: "Other costs", Range: "My costs!A3:D40", Column: "Item", Heading: "What" },
      { Table: "Other costs", Range: "My costs!A3:D40", Column: "Amount", Heading: "Cost" },
    ]);
  });

  it("needs no item and quantity of bills that say their kind and field", () => {
    const bills: InputTable = {
      name: "Purchases",
      sheet: "Purchases",
      columns: [
        column("Date", true),
        column("Item", true),
        column("Quantity", true),
        column("Unit", true),
        column("Kind", false),
        column("For", false),
      ],
    };
    expect(matchView(bills, "A1:B2", new Map([["Date", "Day"]])).missing).toBe(
      "Match Item, Quantity, Unit as well: an entry of Purchases needs them, or Kind and For in their place.",
    );
    expect(
      matchView(
        bills,
        "A1:B2",
        new Map([
          ["Date", "Day"],
          ["Kind", "Category"],
          ["For", "(always all)"],
        ]),
      ).missing,
    ).toBe("");
  });

  it("waits for the columns that a row needs, and for each heading to be used once", () => {
    expect(matchView(table, "A1:B2", new Map([["Item", "What"]])).missing).toBe("Match Amount as well: an entry of Other costs needs it.");
    expect(
      matchView(
        table,
        "A1:B2",
        new Map([
          ["Item", "What"],
          ["Amount", "What"],
        ]),
      ).missing,
    ).toBe("“What” is matched twice.");
  });
});
