import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";
import { rentNotes } from "./rentNotes";

const notes = (fields: string, more = "") => {
  const report = seasonReport(
    contentFromText(
      "Crops\n| Crop | Expected price |\n| Corn | 4.5 |\nFields\n| Field | Crop | Acres | Yield goal | Tenure | Rent per acre | " +
        `Base gross per acre | Share above base % | Most rent |\n${fields}\n${more}`,
    ),
  );
  return rentNotes(report, report.figures.crops[0]!);
};

describe("what is said of flexible rent", () => {
  it("names the terms once for the fields that share them, and what the rent of each comes to", () => {
    expect(
      notes(
        "| Home | Corn | 100 | 200 | flexible rent | 200 | 720 | 40 | 550 |\n" +
          "| Hill | Corn | 60 | 160 | flexible rent | 200 | 720 | 40 | 550 |\n" +
          "| Brook | Corn | 40 | 200 | flexible rent | 0 | 0 | 30 | |\n| Creek | Corn | 40 | 200 | cash rent | 240 | | | |",
      ),
    ).toEqual([
      "Flexible rent, 200.00 per acre and 40 % of price × yield above 720, at most 550.00: Home 272.00 at 4.50 and 200.0 bu; " +
        "Hill 200.00 at 4.50 and 160.0 bu.",
      "Flexible rent, 0.00 per acre and 30 % of price × yield above 0: Brook 270.00 at 4.50 and 200.0 bu.",
    ]);
  });
  it("says nothing where no rent is flexible", () => {
    expect(notes("| Home | Corn | 100 | 200 | cash rent | 200 | | | |")).toEqual([]);
  });
  it("tells that grain sold at another price does not move it", () => {
    const sales = (price: string) => `Sales\n| Crop | Date | Quantity | Price |\n| Corn | 2031-06-01 | 100 | ${price} |`;
    const home = "| Home | Corn | 100 | 200 | flexible rent | 200 | 720 | 40 | |";
    expect(notes(home, sales("4.5"))).toHaveLength(1);
    expect(notes(home, sales("4.7")).at(-1)).toBe(
      "Flexible rent goes by the expected price of 4.50, not by the 4.70 that grain is sold at: " +
        "keep Expected price at what the lease will use.",
    );
  });
});
