import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { productsOf, productWords } from "./products";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);
const of = (draft: Record<string, string>) => productsOf(draft, report, false);

describe("what goes into the tank", () => {
  it("begins with one blank row, and has one after the last that is filled", () => {
    expect(of({}).rows.map(({ at }) => at)).toEqual(["1"]);
    expect(of({ item1: "Urea", item3: "x" }).rows.map(({ at }) => at)).toEqual(["1", "2", "3", "4"]);
  });

  it("takes the price that was paid from Items, in the unit of the rate", () => {
    // 30,000 lb for 8,550: 0.285 a pound, 570 a ton; 0.05 ton an acre.
    const { rows, faults } = of({ item1: " urea ", rate1: "0.05", unit1: "ton" });
    expect(faults).toEqual({});
    expect(rows[0]!.product).toMatchObject({ item: "Urea", unit: "ton", isFromItems: true });
    expect(productWords(rows[0]!, format)).toBe("570.00 USD a ton, from Items: 28.50 USD an acre");
  });

  it("guesses no unit, since the same rate of another is another cost", () => {
    expect(of({ item1: "Urea", rate1: "12" }).faults).toEqual({ unit1: "Choose its unit." });
    expect(of({ item1: "Urea", rate1: "12", unit1: "fl oz" }).faults).toEqual({ unit1: "Choose its unit." });
  });

  it("asks for the price of what Items does not have", () => {
    const open = of({ item1: "Second partner", rate1: "3", unit1: "fl oz" });
    expect([open.rows[0]!.asksPrice, open.faults]).toEqual([true, { price1: "Enter a number." }]);
    const priced = of({ item1: "Second partner", rate1: "3", unit1: "fl oz", price1: "2.5" });
    expect(productWords(priced.rows[0]!, format)).toBe("2.50 USD a fl oz: 7.50 USD an acre");
  });

  it("drops no row that is half typed: each box that is missing is told", () => {
    expect(of({ item1: "Urea", unit1: "lb" }).faults).toEqual({ rate1: "Enter a number above zero." });
    expect(of({ rate1: "3" }).faults).toEqual({ item1: "Name what goes in." });
    expect(of({ item1: "Second partner", price1: "2" }).faults).toEqual({ rate1: "Enter a number above zero." });
    expect(of({ item1: "Urea", rate1: "0", unit1: "lb" }).faults).toEqual({ rate1: "Enter a number above zero." });
  });
});
