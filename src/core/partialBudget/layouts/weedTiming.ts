import { hundred, type Decimal } from "../../numbers/decimal";
import { weedLoss, weedLossSource, type WeedDensity } from "../../weeds/weedLoss";
import { yieldPerArea, type MoneyPerArea, type Yield } from "../../numbers/units";
import { amountPerAcre } from "../change";
import { given, layout, lines, yieldGain, type Circumstances, type Layout } from "./layout";

export type WeedTiming = Circumstances & {
  readonly density: WeedDensity;
  /** How tall weeds are, cm, when the pass is early and when it is late. */
  readonly early: Decimal;
  readonly late: Decimal;
  /** What the field yields without weeds. */
  readonly yieldNow: Yield;
  /** What the early pass costs more, such as a second one later. */
  readonly extra: MoneyPerArea | null;
  /** What it spares, such as a higher rate. */
  readonly spared: MoneyPerArea | null;
};

/** Yield kept by the early pass: (loss late − loss early) of the yield; `null` where a height is outside the table. */
export function yieldKept({ density, early, late, yieldNow }: Pick<WeedTiming, "density" | "early" | "late" | "yieldNow">): Yield | null {
  const [first, then] = [weedLoss(density, early), weedLoss(density, late)];
  return first === null || then === null ? null : yieldPerArea(then.minus(first).div(hundred).times(yieldNow));
}

/** An early pass against a late one: the yield that a published table says is kept, against what the early one costs more. */
export function earlierPass(of: WeedTiming): Layout {
  const kept = yieldGain(of, yieldKept(of), "Yield kept");
  return layout(
    "An earlier weed pass",
    of,
    lines(
      kept,
      given(of.spared, (spared) => amountPerAcre("reduced costs", "Saved by the early pass", spared, of.areaUnit)),
      given(of.extra, (extra) => amountPerAcre("added costs", "Early pass", extra, of.areaUnit)),
    ),
    {
      lead: { of: "quantity", line: kept },
      findings: [],
      cautions: [
        `Yield kept is read from one table, nine trials in Ontario (${weedLossSource.publisher}, ${weedLossSource.year}); other ` +
          "sources lose more or less. Weeds that come up after an early pass are not in it.",
      ],
    },
  );
}
