import { describe, expect, it } from "vitest";
import { past } from "../../../tests/support/past";
import { cropYears } from "./cropYears";

const show = (value: { toDecimalPlaces: (places: number) => { toFixed: () => string } } | null) =>
  value?.toDecimalPlaces(4).toFixed() ?? null;

describe("a crop in a past year", () => {
  it("is the mean of its fields by acre, its price that of what was harvested", () => {
    const [year] = cropYears([
      past("2030", "Home", "200", { acres: "100", price: "4.50", goal: "190", full: "700", cash: "600", net: "200" }),
      past("2030", "Hill", "140", { acres: "50", price: "4.20", goal: "160", full: "640", cash: "560", net: "-52" }),
    ]);
    // (20,000 × 4.50 + 7,000 × 4.20) ÷ 27,000; (200 × 100 − 52 × 50) ÷ 150; of 116 after full cost 4.4222 − 116 ÷ 180.
    expect([year!.area, year!.goal, year!.yield, year!.price, year!.net, year!.costs.cash, year!.priceNeeded.full].map(show)).toEqual([
      "150",
      "180",
      "180",
      "4.4222",
      "116",
      "586.6667",
      "3.7778",
    ]);
    // Cash cost leaves 116 + 680 − 586.6667.
    expect(show(year!.priceNeeded.cash)).toBe("3.2593");
  });

  it("has no figure that one of its fields lacks", () => {
    const [year] = cropYears([past("2030", "Home", "200", { price: "4.50" }), past("2030", "Hill", null, { price: "4.20", full: "640" })]);
    expect([year!.yield, year!.price, year!.costs.full, year!.net, year!.priceNeeded.full]).toEqual([null, null, null, null, null]);
  });

  it("needs a price for the operator's part: at half the crop a loss of 50 on 200 bu is 0.50 a bu", () => {
    const [year] = cropYears([past("2030", "Home", "200", { share: "0.5", price: "4", full: "450", cash: "400", net: "-50" })]);
    expect([show(year!.priceNeeded.full), show(year!.priceNeeded.cash)]).toEqual(["4.5", "4"]);
  });

  it("asks no price of a field that was lost, and needs none of a lost crop", () => {
    const lost = past("2030", "Hill", "0", { full: "500", net: "-500" });
    const [both] = cropYears([past("2030", "Home", "200", { price: "4", full: "600", net: "200" }), lost]);
    expect([show(both!.price), show(both!.net), show(both!.priceNeeded.full)]).toEqual(["4", "-150", "5.5"]);
    const [alone] = cropYears([lost]);
    expect([show(alone!.yield), alone!.price, alone!.priceNeeded.full]).toEqual(["0", null, null]);
  });

  it("comes newest first, crops by name", () => {
    const rows = [past("2029", "Home", "1"), past("2030", "Home", "1"), past("2030", "Hill", "1", { crop: "Barley" })];
    expect(cropYears(rows).map(({ season, crop }) => `${season} ${crop}`)).toEqual(["2030 Barley", "2030 Corn", "2029 Corn"]);
  });
});
