import { blankGainCaution } from "../../cautions";
import type { Decimal } from "../../numbers/decimal";
import { findingsOn } from "../../tables/trialFindings";
import type { Money, MoneyPerArea, Share, Yield } from "../../numbers/units";
import { amountPerAcre, perAcre, type ChangeLine } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

/** What goes into the tank, as the grower names it and as the grower's label allows it. */
export type TankItem = { readonly item: string; readonly perArea: Decimal; readonly unit: string; readonly price: Money };

const tank = (items: readonly TankItem[], areaUnit: string): readonly ChangeLine[] =>
  items.map(({ item, perArea, unit, price }) => perAcre("added costs", { item, unit: `${unit}/${areaUnit}`, quantity: perArea, price }));

export type SecondSite = Circumstances & {
  readonly items: readonly TankItem[];
  /** A pass of its own, where it does not go along with another. */
  readonly extraPass: MoneyPerArea | null;
  /** A later pass that is no longer needed. */
  readonly passSpared: MoneyPerArea | null;
  /** What weeds that escape would cost in later years, a year; the grower's own estimate. */
  readonly laterCostSpared: MoneyPerArea | null;
  /** Yield that is kept from weeds. */
  readonly yieldKept: Yield | null;
};

/** A second site of action in the tank: its cost against yield kept now and trouble spared later. */
export function secondSite(of: SecondSite): Layout {
  const kept = yieldGain(of, of.yieldKept, "Yield kept");
  return layout(
    "A second site of action in the tank",
    of,
    lines(
      kept,
      given(of.passSpared, (spared) => amountPerAcre("reduced costs", "Later pass saved", spared, of.areaUnit)),
      given(of.laterCostSpared, (spared) => amountPerAcre("reduced costs", "Cost of escapes in later years", spared, of.areaUnit)),
      tank(of.items, of.areaUnit),
      given(of.extraPass, (pass) => amountPerAcre("added costs", "Pass", pass, of.areaUnit)),
    ),
    {
      lead: { of: "quantity", line: kept },
      findings: [],
      cautions: [
        blankGainCaution,
        "Two group numbers in the tank are two sites of action only where both work on the weeds that are there.",
      ],
    },
  );
}

export type ExtraPass = Circumstances & {
  readonly items: readonly TankItem[];
  /** Custom rate, or what the own machine costs. */
  readonly pass: MoneyPerArea;
  /** Share of the yield under the wheels. */
  readonly trampled: Share | null;
  readonly yieldNow: Yield;
  readonly yieldGain: Yield | null;
};

/** An extra pass, such as a fungicide. */
export function extraPass(of: ExtraPass): Layout {
  const gain = yieldGain(of, of.yieldGain);
  return layout(
    "An extra pass",
    of,
    lines(
      gain,
      tank(of.items, of.areaUnit),
      amountPerAcre("added costs", "Pass", of.pass, of.areaUnit),
      given(of.trampled, (trampled) =>
        perAcre("reduced returns", {
          item: "Wheel-track loss",
          unit: `${of.yieldUnit}/${of.areaUnit}`,
          quantity: of.yieldNow.times(trampled),
          price: of.grain,
        }),
      ),
    ),
    { lead: { of: "quantity", line: gain }, findings: findingsOn("fungicide"), cautions: [blankGainCaution] },
  );
}
