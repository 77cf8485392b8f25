import { describe, expect, it } from "vitest";
import { contentFromText } from "../../tests/support/tableFromText";
import { seasonReport } from "./report";

const farm = `
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
Fields
| Field | Crop | Acres | Yield goal |
| Alder | Corn | 100 | 200 |`;
const examples = (text: string) =>
  seasonReport(contentFromText(farm + text))
    .problems.filter(({ code }) => code === "example-row")
    .map(({ at }) => [at.table, at.row, at.column]);
const reportOf = (text: string) => seasonReport(contentFromText(farm + text));

describe("rows that tables once came with", () => {
  const overhead = `
Other costs
| Item | Kind | Amount | Basis |
| Example: replace | overhead | 2500 | whole farm |
| Office | overhead | 900 | whole farm |`;

  it("are left out of every figure: 900 of overhead on 100 acres are 9.00, and the 2,500 that nobody typed are not among them", () => {
    expect(reportOf(overhead).figures.crops[0]!.outlook.costPerArea.layers.cash.toFixed()).toBe("9");
  });

  it("are told where they stand, as entries to fix, since a row may have been half typed over", () => {
    expect(examples(overhead)).toEqual([["Other costs", 1, "Item"]]);
    expect(reportOf(overhead).problemsOf({ of: "crop", name: "Corn" })).toHaveLength(1);
    expect(examples(overhead.replace("Example: replace", " EXAMPLE: Replace "))).toEqual([["Other costs", 1, "Item"]]);
    expect(examples(overhead.replace("Example: replace", "Example: fence"))).toEqual([]);
  });

  it("are known in any column: a year typed over beside the words is not taken for the grower's", () => {
    const season = "\nSeason\n| Setting | Value | Note |\n| Season year | 2031 | Example: replace |";
    expect(examples(season)).toEqual([["Season", 1, "Note"]]);
    expect(reportOf(season).season.settings.seasonYear).toBeNull();
  });

  it("are known as a whole where no cell said so: the sale and the policy as they came, and not when one figure is another", () => {
    const sale = "\nSales\n| Crop | Date | Quantity | Price | Delivery month | Kind |\n| Corn | 47909 | 5000 | 4.45 | November | forward |";
    const policy =
      "\nInsurance\n| Crop | Form | Approved yield | Coverage | Projected price | Harvest price | Harvest price option | Price cap |\n" +
      "| Corn | revenue | 182 | 0.8 | 4.4 | | yes | |";
    expect(examples(sale + policy)).toEqual([
      ["Insurance", 1, "Crop"],
      ["Sales", 1, "Crop"],
    ]);
    expect(reportOf(sale + policy).season).toMatchObject({ sales: [], insurance: [] });
    expect(examples(sale.replace("5000", "6000") + policy.replace("4.4 ", "4.5 "))).toEqual([]);
  });
});
