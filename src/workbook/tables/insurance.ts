/** The table Insurance. */
import { Decimal } from "../../core/decimal";
import type { InsurancePolicy } from "../../core/season";
import { moneyPerUnit, share, yieldPerArea } from "../../core/units";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";

export const policyForms = ["revenue", "yield"] as const;
const usualPriceCap = new Decimal("2");

export function readInsurance(table: TableReader, crops: Names): readonly InsurancePolicy[] {
  if (!table.needs("Crop", "Approved yield", "Coverage", "Projected price")) return [];
  const insured = new Set<string>();
  return table.rows((row): InsurancePolicy | null => {
    const crop = row.needName("Crop", crops);
    const approved = row.needNumber("Approved yield");
    const coverage = row.share("Coverage");
    const projected = row.needNumber("Projected price");
    if (coverage === null) row.missing("Coverage");
    const harvest = row.number("Harvest price");
    if (crop === null || approved === null || coverage === null || projected === null) return null;
    // A second policy of a crop would be left aside without a word.
    if (insured.has(crop)) return row.lose("duplicate-name", "Crop");
    insured.add(crop);
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
