/** A farm of one field, small enough to be worked out with a pencil. */
import { Decimal } from "../../src/core/numbers/decimal";
import type { Season } from "../../src/core/season";
import { money, moneyPerArea, moneyPerUnit, share, yieldPerArea } from "../../src/core/numbers/units";
import { corn, field, operation, otherCost, sale, seasonOf } from "./season";

export const smallFarm: Season = seasonOf({
  crops: [
    {
      ...corn,
      lowPrice: moneyPerUnit("3.5"),
      highPrice: moneyPerUnit("5"),
      sellingCostPerUnit: moneyPerUnit("0.1"),
      otherIncomePerArea: moneyPerArea("10"),
    },
  ],
  fields: [field("Home", "100", "200", { provenYield: yieldPerArea("180"), tenure: "cash rent", rentPerArea: moneyPerArea("200") })],
  operations: [
    operation("Planting", "Home", "20", "plan", { date: "2031-05-05" }),
    operation("Planting", "Home", "23", "done", { date: "2031-05-06" }),
  ],
  otherCosts: [
    otherCost("Office", "900", { paidOn: "2031-07-01" }),
    otherCost("Living", "22000", { kind: "family living", paidOn: "2031-06-01" }),
    otherCost("Planter", "500", { kind: "machine ownership", cash: false }),
  ],
  sales: [{ ...sale("5000", "4.2"), delivered: "2031-11-01" }],
  loans: [
    {
      name: "Planter",
      kind: "term",
      balance: money("50000"),
      rate: new Decimal("0.02"),
      payment: money("9000"),
      paymentsAYear: new Decimal("1"),
      nextDue: "2031-03-15",
      firstDue: null,
      bornBy: null,
      source: { table: "Loans", row: 1 },
    },
  ],
  insurance: [
    {
      crop: "Corn",
      form: "revenue",
      approvedYield: yieldPerArea("180"),
      coverage: share("0.75"),
      projectedPrice: moneyPerUnit("4.8"),
      harvestPrice: null,
      harvestPriceOption: false,
      priceCap: new Decimal("2"),
      source: { table: "Insurance", row: 1 },
    },
  ],
});
