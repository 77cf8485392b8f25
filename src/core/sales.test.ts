import { describe, expect, it } from "vitest";
import { corn, field, operation, sale, seasonOf } from "../../tests/support/season";
import { seasonFigures } from "./seasonFigures";
import { moneyPerArea, share } from "./units";

const salesOf = (sold: readonly (readonly [string, string])[]) => seasonFigures(seasonOf({
  crops: [{ ...corn, otherIncomePerArea: moneyPerArea("100") }], fields: [field("Home", "100", "200", { tenure: "crop share", operatorShare: share("0.5") })],
  operations: [operation("All work", "Home", "400", "plan")], sales: sold.map(([quantity, price]) => sale(quantity, price)),
})).crops[0]!.sales;

describe("sales", () => {
  it("leave to the operator's share what other income and the grain sold do not pay", () => {
    const { averagePrice, unsold, priceNeeded } = salesOf([["4000", "4.5"]]);
    // (40,000 − 10,000 − 18,000) ÷ 6,000
    expect([averagePrice, unsold, priceNeeded.operating].map(String)).toEqual(["4.5", "6000", "2"]);
  });
  it("have no average where nothing is sold", () => {
    const { averagePrice, priceNeeded } = salesOf([]);
    expect([averagePrice, priceNeeded.operating?.toFixed()]).toEqual([null, "3"]);
  });
});
