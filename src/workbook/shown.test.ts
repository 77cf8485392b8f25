import { describe, expect, it } from "vitest";
import { Decimal } from "../core/numbers/decimal";
import { shownMoney, shownPriceAtMost, shownPriceNeeded, shownYieldNeeded } from "./shown";

const shown = (how: (value: Decimal) => Decimal, ...values: readonly string[]) => values.map((value) => how(new Decimal(value)).toFixed());

describe("what is shown", () => {
  it("rounds money half away from zero, on either side, and never shows a negative zero", () => {
    expect(shown(shownMoney, "1.005", "-1.005", "2.675", "-0.004")).toEqual(["1.01", "-1.01", "2.68", "0"]);
  });
  it("rounds a price needed up to the cent, and a negative one towards zero", () => {
    expect(shown(shownPriceNeeded, "4.571", "4.57", "-0.375")).toEqual(["4.58", "4.57", "-0.37"]);
  });
  it("rounds a price below which something pays down to the cent, and not for the end of a division", () => {
    expect(shown(shownPriceAtMost, "4.579", "4.57", "-0.375")).toEqual(["4.57", "4.57", "-0.38"]);
    expect(shownPriceAtMost(new Decimal("4.57").div("3").times("3")).toFixed()).toBe("4.57");
  });
  it("does not take the end of a division for another cent", () => {
    expect(shownPriceNeeded(new Decimal("4.57").div("3").times("3")).toFixed()).toBe("4.57");
  });
  it("rounds a yield needed up to the tenth, and needs none where none is needed", () => {
    expect(shown(shownYieldNeeded, "143.71", "-12")).toEqual(["143.8", "0"]);
  });
});
