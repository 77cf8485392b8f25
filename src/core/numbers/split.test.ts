import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal, sum } from "./decimal";
import { splitToTheCent } from "./split";
import { money } from "./units";

const cents = fc.integer({ min: -10_000_000, max: 10_000_000 }).map((value) => money(`${value}e-2`));
const weights = fc
  .array(
    fc.integer({ min: 0, max: 50_000 }).map((value) => new Decimal(`${value}e-2`)),
    { minLength: 1, maxLength: 20 },
  )
  .filter((all) => all.some((weight) => weight.gt("0")));

describe("splitToTheCent", () => {
  it("gives the cents that are left to the largest parts cut off", () => {
    // 0.335, 0.334 and 0.331 of a dollar.
    expect(
      splitToTheCent(
        money("1"),
        ["335", "334", "331"].map((weight) => new Decimal(weight)),
      ).map(String),
    ).toEqual(["0.34", "0.33", "0.33"]);
    expect(
      splitToTheCent(
        money("1"),
        ["331", "334", "335"].map((weight) => new Decimal(weight)),
      ).map(String),
    ).toEqual(["0.33", "0.33", "0.34"]);
  });

  it("gives the cent to the earlier of two equal parts, however many digits their shares have", () => {
    // 83.333…, 8.333… and 8.333… dollars: each is cut by a third of a cent.
    expect(
      splitToTheCent(
        money("100"),
        ["100", "10", "10"].map((weight) => new Decimal(weight)),
      ).map(String),
    ).toEqual(["83.34", "8.33", "8.33"]);
  });

  it("lets the rounding of a price or of a yield break no tie", () => {
    // Half a bushel at 5.31 on 160.19 acres and on 10: the same revenue, but for the last digit of the yield.
    const revenues = ["160.19", "10"].map((area) => new Decimal("5.31").times(new Decimal("0.5").div(area)).times(area)) as [
      Decimal,
      Decimal,
    ];
    expect(revenues[0].lt(revenues[1])).toBe(true);
    expect(splitToTheCent(money("5890.51"), revenues).map(String)).toEqual(["2945.26", "2945.25"]);
    // 579 of what costs 258.15 for 7, on 20 and 160 acres: each share is cut by 0.142857… of a cent, and that again is what is left.
    const amount = money(new Decimal("579").times(new Decimal("258.15").div("7")));
    expect(
      splitToTheCent(
        amount,
        ["20", "160"].map((each) => new Decimal(each)),
      )[1]!.toFixed(),
    ).toBe("18980.17");
  });

  it("adds up to the amount, each share within a cent of its proportion, in whole cents", () => {
    fc.assert(
      fc.property(cents, weights, (amount, parts) => {
        const shares = splitToTheCent(amount, parts);
        expect(sum(shares).toFixed()).toBe(amount.toFixed());
        shares.forEach((share, index) => {
          expect(share.decimalPlaces()).toBeLessThanOrEqual(2);
          expect(
            share
              .minus(amount.times(parts[index]!).div(sum(parts)))
              .abs()
              .lt("0.01"),
          ).toBe(true);
        });
      }),
    );
  });

  it("loses no part of a cent that the amount itself has", () => {
    expect(splitToTheCent(money("0.015"), [new Decimal("1"), new Decimal("1")]).map(String)).toEqual(["0.01", "0.005"]);
  });

  it("refuses to share over nothing", () => {
    expect(() => splitToTheCent(money("1"), [new Decimal("0")])).toThrow(/add up to nothing/);
  });
});
