/** The tables Loans and Insurance. */
import { Decimal, one } from "../../core/decimal";
import type { InsurancePolicy, Loan } from "../../core/season";
import { money, moneyPerUnit, share, yieldPerArea } from "../../core/units";
import type { Names, TableReader } from "../tableReader";

export const loanKinds = ["operating", "term"] as const;
export const policyForms = ["revenue", "yield"] as const;
const usualPriceCap = new Decimal("2");

export function readLoans(table: TableReader): readonly Loan[] {
  if (!table.needs("Name", "Balance", "Rate")) return [];
  return table.rows((row): Loan | null => {
    const name = row.needText("Name");
    const kind = row.choice("Kind", loanKinds) ?? "term";
    const balance = row.needNumber("Balance");
    const rate = row.interestRate("Rate");
    const payment = row.number("Payment");
    const nextDue = row.date("Next due");
    if (rate === null) row.missing("Rate");
    if (kind === "term" && (payment === null || nextDue === null)) row.fault("payment-missing");
    if (name === null || balance === null || rate === null) return null;
    return {
      name, kind, balance: money(balance), rate, payment: payment === null ? null : money(payment),
      paymentsAYear: row.number("Payments a year", "above zero") ?? one, nextDue, source: row.source,
    };
  }, () => [{ of: "farm" }]);
}

export function readInsurance(table: TableReader, crops: Names): readonly InsurancePolicy[] {
  if (!table.needs("Crop", "Approved yield", "Coverage", "Projected price")) return [];
  return table.rows((row): InsurancePolicy | null => {
    const crop = row.needName("Crop", crops);
    const approved = row.needNumber("Approved yield");
    const coverage = row.share("Coverage");
    const projected = row.needNumber("Projected price");
    if (coverage === null) row.missing("Coverage");
    const harvest = row.number("Harvest price");
    if (crop === null || approved === null || coverage === null || projected === null) return null;
    return {
      crop, form: row.choice("Form", policyForms) ?? "revenue", approvedYield: yieldPerArea(approved), coverage: share(coverage),
      projectedPrice: moneyPerUnit(projected), harvestPrice: harvest === null ? null : moneyPerUnit(harvest),
      harvestPriceOption: row.choice("Harvest price option", ["yes", "no"]) === "yes", priceCap: row.number("Price cap", "above zero") ?? usualPriceCap, source: row.source,
    };
  }, (row) => {
    const name = crops.spelled(String(row.cell("Crop")));
    return name === null ? [{ of: "farm" }] : [{ of: "crop", name }];
  });
}
