import { rentAbove, stepsOfField, type FlexibleRent } from "../../flexibleRent";
import type { Decimal } from "../../numbers/decimal";
import { moneyPerArea, moneyPerUnit, type MoneyPerArea, type MoneyPerUnit, type Yield } from "../../numbers/units";
import { amountPerAcre } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

export type HigherRent = Circumstances & {
  readonly from: MoneyPerArea;
  readonly to: MoneyPerArea;
  /** What the ground leaves beyond its own costs and the present rent, and would be lost with it; `null`: not asked. */
  readonly marginKept: MoneyPerArea | null;
  /** Yield that would carry the rise; blank asks how much it takes. */
  readonly yieldGain: Yield | null;
};

/** A higher rent: pay it and keep the ground, or let it go. */
export function higherRent(of: HigherRent): Layout {
  const gain = yieldGain(of, of.yieldGain, "Yield that carries the rise");
  return layout(
    "A higher rent",
    of,
    lines(
      gain,
      given(of.marginKept, (margin) => amountPerAcre("added returns", "Margin kept with the ground", margin, of.areaUnit)),
      amountPerAcre("added costs", "Rise in rent", of.to.minus(of.from), of.areaUnit),
    ),
    {
      lead: { of: "quantity", line: gain },
      findings: [],
      cautions: ["Rent is paid whatever the yield: look at it with the low price too."],
    },
  );
}

/** A fixed rent and a flexible one, of which the field has one now and may have the other. */
export type FixedOrFlexible = Circumstances & {
  readonly isFlexibleNow: boolean;
  readonly fixed: MoneyPerArea;
  readonly base: MoneyPerArea;
  readonly terms: FlexibleRent;
  /** The yield that the flexible rent goes by, at the price of the grain. */
  readonly yieldNow: Yield;
};

type Terms = Pick<FixedOrFlexible, "base" | "terms">;
const stepsOf = ({ base, terms }: Terms) => stepsOfField({ rentPerArea: base, flexibleRent: terms });

/** What a flexible rent comes to at a price and yield, its base included. */
export const flexibleRentAt = (of: Terms, price: MoneyPerUnit, at: Yield): MoneyPerArea =>
  moneyPerArea(of.base.plus(rentAbove(stepsOf(of), price.times(at))));

/** The price at which a flexible rent is just a fixed one at a yield; `null` where the one is always more than the other. */
export function priceOfEqualRents(of: Terms, fixed: MoneyPerArea, at: Yield): MoneyPerUnit | null {
  const over = fixed.minus(of.base);
  const { baseGross, shareAbove, most } = of.terms;
  if (over.lte("0") || shareAbove.isZero() || at.isZero() || most?.lt(fixed) === true) return null;
  return moneyPerUnit(baseGross.plus(over.div(shareAbove)).div(at));
}

/** From a flexible rent to a fixed one or back, at the price and yield that are projected. */
export function fixedOrFlexible(of: FixedOrFlexible): Layout {
  const above = flexibleRentAt(of, of.grain.price, of.yieldNow).minus(of.base);
  const [flexible, fixed] = of.isFlexibleNow ? (["reduced costs", "added costs"] as const) : (["added costs", "reduced costs"] as const);
  const line = (quadrant: typeof flexible, item: string, amount: Decimal) => amountPerAcre(quadrant, item, amount, of.areaUnit);
  const fixedLine = line(fixed, "Fixed rent", of.fixed);
  return layout(
    "Fixed or flexible rent",
    of,
    lines(
      line(flexible, "Base rent", of.base),
      given(above, (amount) => line(flexible, "Rent above the base", amount)),
      fixedLine,
    ),
    {
      lead: { of: "price", line: fixedLine },
      findings: [],
      cautions: [
        "Flexible rent is counted at the projected price and yield: look at it with the low and the high price too.",
        "A lease with a floor may count as cash rent to farm programs and insurers: ask before you sign.",
      ],
    },
  );
}
