/** The table Insurance. */
import { Decimal } from "../../core/numbers/decimal";
import type { InsurancePolicy } from "../../core/season";
import { moneyPerUnit, share, yieldPerArea } from "../../core/numbers/units";
import { insuranceColumns } from "../columns/insurance";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";

const { columns } = insuranceColumns;
const usualPriceCap = new Decimal("2");

export function readInsurance(table: TableReader, crops: Names): readonly InsurancePolicy[] {
  if (!table.hasNeeded(insuranceColumns)) return [];
  const insured = new Set<string>();
  return table.rows(
    (row): InsurancePolicy | null => {
      const crop = row.needName(columns.crop, crops);
      const approved = row.need(columns.approvedYield);
      const coverage = row.of(columns.coverage);
      const projected = row.need(columns.projectedPrice);
      if (coverage === null) row.missing(columns.coverage);
      const harvest = row.of(columns.harvestPrice);
      if (crop === null || approved === null || coverage === null || projected === null) return null;
      // A second policy of a crop would be left aside without a word.
      if (insured.has(crop)) return row.lose("duplicate-name", columns.crop);
      insured.add(crop);
      return {
        crop,
        form: row.of(columns.form) ?? "revenue",
        approvedYield: yieldPerArea(approved),
        coverage: share(coverage),
        projectedPrice: moneyPerUnit(projected),
        harvestPrice: harvest === null ? null : moneyPerUnit(harvest),
        harvestPriceOption: row.of(columns.harvestPriceOption) === "yes",
        priceCap: row.of(columns.priceCap) ?? usualPriceCap,
        source: row.source,
      };
    },
    (row) => {
      const name = crops.spelled(String(row.cell(columns.crop)));
      return name === null ? [{ of: "farm" }] : [{ of: "crop", name }];
    },
  );
}
