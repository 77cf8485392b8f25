import { describe, expect, it } from "vitest";
import { Decimal } from "../core/numbers/decimal";
import { formatOf } from "./format";

const us = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const of = (value: string) => new Decimal(value);

describe("a figure in the pane", () => {
  it.each([
    ["1234.5", "1,234.50"],
    ["0.005", "0.01"],
    ["-0.005", "−0.01"],
    ["-0.004", "0.00"],
    ["2.675", "2.68"],
    ["12345678901234567.885", "12,345,678,901,234,567.89"],
  ])("writes money of %s as %s, a half going away from zero", (value, shown) => {
    expect(us.money(of(value))).toBe(shown);
  });

  it("rounds a price needed up to the cent and a yield needed up to the tenth", () => {
    expect(us.priceNeeded(of("4.3801"))).toBe("4.39");
    expect(us.yieldNeeded(of("181.01"))).toBe("181.1");
    expect(us.yieldNeeded(of("-3"))).toBe("0.0");
  });

  it("shows no trailing decimals of a quantity", () => {
    expect([us.quantity(of("40")), us.quantity(of("12.5")), us.quantity(of("0.333"))]).toEqual(["40", "12.5", "0.33"]);
  });

  it("says where there is no answer", () => {
    expect(us.money(null)).toBe("–");
    expect(us.amount(null)).toBe("–");
  });

  it("names a currency by its code behind, by its sign in front", () => {
    expect(us.amount(of("-1234.5"))).toBe("−1,234.50 USD");
    expect(formatOf({ currency: "$", areaUnit: "ha" }, "en-US").amount(of("-1234.5"))).toBe("−$1,234.50");
  });

  it("takes the change from the two amounts as they are shown, so that the three agree", () => {
    expect(us.change(of("812.104"), of("815.325"))).toBe("+3.23");
    expect(us.change(of("812.10"), of("800"))).toBe("−12.10");
    expect(us.change(of("812.101"), of("812.099"))).toBe("no change");
  });

  it("groups as the reader's language does", () => {
    expect(formatOf({ currency: "EUR", areaUnit: "ha" }, "de-DE").amount(of("1234.5"))).toBe("1.234,50 EUR");
  });
});
