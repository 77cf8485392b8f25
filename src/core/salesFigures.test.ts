import { describe, expect, it } from "vitest";
import { corn, field, operation, sale, seasonOf, settings } from "../../tests/support/season";
import type { Season } from "./season";
import { seasonFigures } from "./seasonFigures";
import { moneyPerArea, share } from "./numbers/units";

const salesOf = (sold: readonly (readonly [string, string])[]) =>
  seasonFigures(
    seasonOf({
      crops: [{ ...corn, otherIncomePerArea: moneyPerArea("100") }],
      fields: [field("Home", "100", "200", { tenure: "crop share", operatorShare: share("0.5") })],
      operations: [operation("All work", "Home", "400", "plan")],
      sales: sold.map(([quantity, price]) => sale(quantity, price)),
    }),
  ).crops[0]!.sales;

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

/** 800 an acre on 100 acres of 200 bu, at the price entered of 4.00. */
const pays = (parts: Partial<Season> = {}) =>
  seasonFigures(seasonOf({ fields: [field("Home", "100", "200")], operations: [operation("All work", "Home", "800", "plan")], ...parts }))
    .crops[0]!;

describe("net return", () => {
  it("is nothing at the price entered and 100 an acre with what is sold: 10,000 bu at 5.00 and 10,000 at 4.00 less 80,000", () => {
    const { plan, outlook, final, sales } = pays({ sales: [sale("10000", "5")] });
    expect([plan, outlook].map(({ netPerArea }) => netPerArea.cash.toFixed())).toEqual(["0", "0"]);
    expect(
      [sales.withSold.plan, sales.withSold.outlook].map(({ netPerArea, incomePerArea }) => [
        netPerArea.cash.toFixed(),
        incomePerArea.toFixed(),
      ]),
    ).toEqual([
      ["100", "900"],
      ["100", "900"],
    ]);
    expect([final, sales.withSold.final]).toEqual([null, null]);
  });

  it("with what is sold is that at the price entered where nothing is sold", () => {
    const { outlook, sales } = pays();
    expect(sales.withSold.outlook.netPerArea).toEqual(outlook.netPerArea);
  });

  it("with more sold than grows has all of the sale and nothing at the price entered: 21,000 bu at 5.00", () => {
    expect(pays({ sales: [sale("21000", "5")] }).sales.withSold.outlook.netPerArea.cash.toFixed()).toBe("250");
  });

  it("and all else of the crop are untouched by grain of an older crop, which is in the cash flow alone", () => {
    const season = { settings, sales: [{ ...sale("10000", "5"), cropYear: "2030" }] };
    const { sales } = pays(season);
    expect([sales.sold, sales.unsold, sales.averagePrice, sales.withSold.outlook.netPerArea.cash].map(String)).toEqual([
      "0",
      "20000",
      "null",
      "0",
    ]);
    expect(pays({ ...season, sales: [{ ...sale("10000", "5"), cropYear: "2031" }] }).sales.sold.toFixed()).toBe("10000");
  });
});
