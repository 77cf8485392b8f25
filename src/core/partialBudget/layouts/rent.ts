import type { MoneyPerArea, Yield } from "../../numbers/units";
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
