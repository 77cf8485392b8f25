import { describe, expect, it } from "vitest";
import { Decimal, one, zero } from "../numbers/decimal";
import { money } from "../numbers/units";
import { levelPayment, schedule } from "./amortisation";

const most = new Decimal("1200");

describe("levelPayment", () => {
  it("divides evenly without interest", () => {
    expect(levelPayment(money("1200"), zero, new Decimal("12")).toFixed()).toBe("100");
  });
  it("pays all with its interest in a single period, and in no less", () => {
    expect(levelPayment(money("1000"), new Decimal("0.05"), one).toFixed(20)).toBe(new Decimal("1050").toFixed(20));
    expect(() => levelPayment(money("1000"), zero, new Decimal("0.5"))).toThrow(RangeError);
  });
});

describe("schedule", () => {
  it("has no payments of a loan that is paid", () => {
    expect(schedule({ balance: money("0"), ratePerPeriod: new Decimal("0.05"), payment: money("0") }, most)).toEqual([]);
  });
  it("pays the last half dollar, and has no end where even its interest is not paid", () => {
    expect(
      schedule({ balance: money("100.5"), ratePerPeriod: zero, payment: money("100") }, most)!.map(({ payment }) => payment.toFixed()),
    ).toEqual(["100", "0.5"]);
    expect(schedule({ balance: money("0.5"), ratePerPeriod: new Decimal("0.1"), payment: money("0.05") }, most)).toBeNull();
  });
  it("is cut off where it is too long", () => {
    const cut = schedule({ balance: money("1000"), ratePerPeriod: zero, payment: money("100") }, new Decimal("3"))!;
    expect(cut.map(({ balance }) => balance.toFixed())).toEqual(["900", "800", "700"]);
  });
});
