import { describe, expect, it } from "vitest";
import { corn, field, otherCost, seasonOf } from "../../../tests/support/season";
import { Decimal } from "../decimal";
import type { Loan } from "../season";
import { seasonFigures } from "../seasonFigures";
import { money, moneyPerUnit } from "../units";
import { farmYear, termDebtOfYear } from "./farmYear";

const loan = (balance: string, payment: string | null, more: Partial<Loan> = {}): Loan => ({
  name: "Loan", kind: "term", balance: money(balance), rate: new Decimal("0.06"), payment: payment === null ? null : money(payment),
  paymentsAYear: new Decimal("2"), nextDue: "2031-03-15", source: { table: "Loans", row: 1 }, ...more,
});
const figures = seasonFigures(seasonOf({
  crops: [corn, { ...corn, name: "Soybeans", price: moneyPerUnit("11") }], fields: [field("Home", "100", "200"), field("Hill", "50", "60", { crop: "Soybeans" })],
  otherCosts: [
    otherCost("Office", "4500"), otherCost("Bank", "3000", { kind: "term interest" }), otherCost("Bank", "6000", { kind: "term principal" }),
    otherCost("Tax", "1500", { kind: "income tax" }), otherCost("Living", "30000", { kind: "family living" }), otherCost("Combine", "15000", { kind: "machine ownership", cash: false }),
  ],
}));
const texts = (of: object) => Object.fromEntries(Object.entries(of).map(([name, value]) => [name, (value as Decimal).toDecimalPlaces(20).toFixed()]));

describe("farmYear", () => {
  it("takes term debt from other costs where there is no term loan", () => {
    // 80,000 of corn and 33,000 of soybeans, less 4,500 overhead and 3,000 interest.
    expect(texts(farmYear(figures, [loan("9000", "500", { kind: "operating" })]))).toEqual({
      netIncome: "105500", incomeTax: "1500", termInterest: "3000", depreciation: "0", familyLiving: "30000", termPrincipal: "6000", replacement: "15000",
    });
  });
  it("takes term debt from the loans where there is one, and its interest in place of the other", () => {
    // 3 % of 50,000 and of 42,500.
    expect(texts(farmYear(figures, [loan("50000", "9000")]))).toMatchObject({ netIncome: "105725", termInterest: "2775", termPrincipal: "15225" });
  });
});

describe("termDebtOfYear", () => {
  it("adds up the term loans that are paid, and is not known without any", () => {
    expect(texts(termDebtOfYear([loan("50000", "9000"), loan("10000", "1000"), loan("70000", null), loan("8000", "900", { kind: "operating" })])!)).toEqual({
      interest: "3354", principal: "16646", // 300 + 279 and 700 + 721 of the second
    });
    expect(termDebtOfYear([loan("70000", null), loan("8000", "900", { kind: "operating" })])).toBeNull();
  });
  it("counts payments that do not cover the interest as interest alone", () => {
    expect(texts(termDebtOfYear([loan("50000", "1200")])!)).toEqual({ interest: "2400", principal: "0" });
  });
});
