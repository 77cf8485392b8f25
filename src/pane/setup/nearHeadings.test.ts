import { describe, expect, it } from "vitest";
import { inputTables } from "../../workbook/templates";
import { firstMatching } from "./matchView";
import { alsoCalled, nearHeadings, proposalWords } from "./nearHeadings";

const near = (table: string, headings: readonly string[]) => {
  const model = inputTables.find(({ name }) => name === table)!;
  return Object.fromEntries(nearHeadings(model, headings, firstMatching(model, headings)));
};

describe("headings that may mean a column of ours", () => {
  it("are the words that farm records use, whatever their signs and capitals", () => {
    expect(near("Purchases", ["Date", "Product", "Qty.", "U.O.M.", "Unit cost ($)", "Total", "Vendor", "Comments"])).toEqual({
      Item: "Product", Quantity: "Qty.", Unit: "U.O.M.", "Unit price": "Unit cost ($)", Amount: "Total", Supplier: "Vendor", Note: "Comments",
    });
    expect(near("Fields", ["Field name", "Crop", "Ac", "Target yield", "Cash rent", "APH"])).toEqual({
      Field: "Field name", "Yield goal": "Target yield", "Rent per acre": "Cash rent", "Proven yield": "APH",
    });
  });

  it("are slips of the pen, and no short words", () => {
    expect(near("Purchases", ["Dat", "Quantitiy", "Frieght", "Iten", "Unot price"])).toEqual({ Quantity: "Quantitiy", Freight: "Frieght", Item: "Iten", "Unit price": "Unot price" });
    expect(near("Purchases", ["Delivered", "Lot", "Field"])).toEqual({});
  });

  it("are left to the grower where two may mean the same, or one two columns", () => {
    expect(near("Purchases", ["Price", "Unit cost"])).toEqual({});
    expect(near("Applications", ["Crop", "Field", "Unit"])).toEqual({ "Rate unit": "Unit" });
    expect(near("Crops", ["Prices"])).toEqual({});
  });

  it("are none that stand for a column already", () => {
    expect(near("Purchases", ["Unit price", "Price", "Amount", "Total"])).toEqual({});
  });
});

it("gives other words only to headings that a table has", () => {
  const known = new Set(inputTables.flatMap(({ columns }) => columns.map(({ heading }) => heading)));
  expect(Object.keys(alsoCalled).filter((heading) => !known.has(heading))).toEqual([]);
});

it("says what it proposes in words", () => {
  expect(proposalWords(new Map([["Quantity", "Qty"], ["Supplier", "Vendor"]]))).toBe("“Qty” for Quantity, “Vendor” for Supplier");
});
