import { one } from "../../numbers/decimal";
import { money, type Money, type MoneyPerArea, type MoneyPerYear, type Years, type Yield } from "../../numbers/units";
import { amountPerAcre, outlay, perYear } from "../change";
import { layout, lines, given, yieldGain, type Layout, type Circumstances } from "./layout";

export type OwnOrHireChange = Circumstances & {
  readonly customRate: MoneyPerArea;
  readonly purchasePrice: Money;
  readonly salvage: Money;
  readonly yearsKept: Years;
  readonly taxesInsuranceHousing: MoneyPerYear;
  /** Fuel, lube, labour and repairs. */
  readonly running: MoneyPerArea;
  /** Yield that doing it in time brings; `null`: none is claimed. */
  readonly timeliness: Yield | null;
};

/** Buy a machine in place of hiring the work; it leads with the area above which owning is cheaper. */
export function ownOrHireChange(of: OwnOrHireChange): Layout {
  return layout(
    "Own or hire",
    of,
    lines(
      given(of.timeliness, () => yieldGain(of, of.timeliness, "Yield from doing it in time")),
      amountPerAcre("reduced costs", "Custom rate", of.customRate, of.areaUnit),
      outlay("added costs", { item: "Machine", unit: "machine", quantity: one, price: of.purchasePrice }, of.yearsKept, of.salvage),
      given(of.taxesInsuranceHousing, (amount) =>
        perYear("added costs", { item: "Taxes, insurance, housing", unit: "year", quantity: one, price: money(amount) }),
      ),
      amountPerAcre("added costs", "Fuel, labour, repairs", of.running, of.areaUnit),
    ),
    {
      lead: { of: "area" },
      findings: [],
      cautions: ["A custom rate may be less than what the work costs its owner; ask whether it will still be offered."],
    },
  );
}
