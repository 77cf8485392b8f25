import { describe, expect, it } from "vitest";
import { corn, field, otherCost, sale, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../numbers/decimal";
import type { Loan, Season } from "../season";
import { seasonFigures } from "../seasonFigures";
import { money, moneyPerArea, moneyPerUnit } from "../numbers/units";
import { farmYear } from "./farmYear";

const loan = (balance: string, payment: string, more: Partial<Loan> = {}): Loan => ({
  name: "Loan",
  kind: "term",
  balance: money(balance),
  rate: new Decimal("0.06"),
  payment: money(payment),
  paymentsAYear: new Decimal("2"),
  nextDue: "2031-03-15",
  firstDue: null,
  bornBy: null,
  source: { table: "Loans", row: 1 },
  ...more,
});
const season = seasonOf({
  crops: [corn, { ...corn, name: "Soybeans", price: moneyPerUnit("11") }],
  fields: [field("Home", "100", "200"), field("Hill", "50", "60", { crop: "Soybeans" })],
  otherCosts: [
    otherCost("Office", "4500"),
    otherCost("Tax", "1500", { kind: "income tax" }),
    otherCost("Living", "30000", { kind: "family living" }),
    otherCost("Combine", "15000", { kind: "machine ownership", cash: false }),
  ],
});
const year = (more: Partial<Season> = {}, costs: readonly ReturnType<typeof otherCost>[] = []) =>
  Object.fromEntries(
    Object.entries(farmYear(seasonFigures({ ...season, ...more, otherCosts: [...season.otherCosts, ...costs] }))).map(([name, value]) => [
      name,
      value.toDecimalPlaces(20).toFixed(),
    ]),
  );

describe("farmYear", () => {
  it("takes term debt from other costs where no loan is entered", () => {
    // 80,000 of corn and 33,000 of soybeans, less 4,500 overhead and 3,000 interest.
    expect(year({}, [otherCost("Bank", "3000", { kind: "term interest" }), otherCost("Bank", "6000", { kind: "term principal" })])).toEqual(
      {
        income: "113000",
        cashCosts: "7500",
        operatingInterest: "0",
        netIncome: "105500",
        incomeTax: "1500",
        termInterest: "3000",
        depreciation: "0",
        familyLiving: "30000",
        termPrincipal: "6000",
        replacement: "15000",
      },
    );
  });

  it("takes term debt from the loans: what falls due in the year", () => {
    // 3 % of 50,000 and of 42,500 are 2,775 of the 18,000.
    expect(year({ loans: [loan("50000", "9000")] })).toMatchObject({ netIncome: "105725", termInterest: "2775", termPrincipal: "15225" });
    // An operating loan of 10,000 at 6 % carried all the year.
    expect(year({ loans: [loan("50000", "9000"), loan("10000", "0", { kind: "operating", payment: null, nextDue: null })] })).toMatchObject(
      { netIncome: "105125", termInterest: "3375", termPrincipal: "15225" },
    );
  });

  it("counts grain that is sold at its own price and the rest at the price entered", () => {
    // 5,000 of the 20,000 bu of corn at 4.20 instead of 4.00: 1,000 more; other income on 100 acres.
    expect(year({ sales: [sale("5000", "4.2")] })).toMatchObject({ income: "114000" });
    expect(
      year({ crops: [{ ...corn, otherIncomePerArea: moneyPerArea("10") }, season.crops[1]!], sales: [sale("5000", "3.5")] }),
    ).toMatchObject({ income: "111500" });
    // 21,000 sold where 20,000 grow: nothing is left at the price entered, and nothing comes off.
    expect(year({ sales: [sale("21000", "4")] })).toMatchObject({ income: "117000" });
  });

  it("does not take off as cash what is not paid in cash", () => {
    const notPaid = { cash: false };
    // 500 in all, 2 an acre on 150 acres and 10 cents on 20,000 bu of corn are borne and not paid.
    const costs = [
      otherCost("Shop", "500", notPaid),
      otherCost("Tools", "2", { basis: "per acre", ...notPaid }),
      otherCost("Bin", "0.1", { basis: "per unit of yield", over: { crop: "Corn" }, kind: "haul", ...notPaid }),
      otherCost("Living of our own", "900", { kind: "family living", ...notPaid }),
      otherCost("Owed to father", "700", { kind: "term principal", ...notPaid }),
    ];
    expect(year({}, costs)).toMatchObject({ cashCosts: "4500", netIncome: "108500", familyLiving: "30000", termPrincipal: "0" });
    expect(
      year(
        {},
        costs.map((cost) => ({ ...cost, cash: true })),
      ),
    ).toMatchObject({ cashCosts: "7300", netIncome: "105700", familyLiving: "30900", termPrincipal: "700" });
  });
});
