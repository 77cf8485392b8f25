import { blankGainCaution } from "../../cautions";
import type { Decimal } from "../../numbers/decimal";
import { findingsOn } from "../../tables/trialFindings";
import { money, type Hours, type Money, type MoneyPerArea, type MoneyPerHour, type Years, type Yield } from "../../numbers/units";
import { amountPerAcre, outlay } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

export type ClosingWheels = Circumstances & {
  readonly rows: Decimal;
  readonly pricePerRow: Money;
  readonly yearsKept: Years;
  /** What the set is worth in the end; `null`: nothing. */
  readonly salvage: Money | null;
  readonly fittingHours: Hours | null;
  readonly wage: MoneyPerHour;
  /** Bearings, teeth and the like beyond those of the present wheels. */
  readonly upkeep: MoneyPerArea | null;
  readonly yieldGain: Yield | null;
};

/** Other closing wheels: what the set costs a year against a yield gain that must be shown, not assumed. */
export function closingWheels(of: ClosingWheels): Layout {
  const gain = yieldGain(of, of.yieldGain);
  return layout(
    "Other closing wheels",
    of,
    lines(
      gain,
      outlay(
        "added costs",
        { item: "Closing wheels", unit: "rows", quantity: of.rows, price: of.pricePerRow },
        of.yearsKept,
        of.salvage ?? money("0"),
      ),
      given(of.fittingHours, (hours) =>
        outlay("added costs", { item: "Fitting", unit: "h", quantity: hours, price: money(of.wage) }, of.yearsKept),
      ),
      given(of.upkeep, (upkeep) => amountPerAcre("added costs", "Upkeep", upkeep, of.areaUnit)),
    ),
    { lead: { of: "quantity", line: gain }, findings: findingsOn("closing wheels"), cautions: [blankGainCaution] },
  );
}
