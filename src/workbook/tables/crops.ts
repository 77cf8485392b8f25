/** The table Crops, and quantities of a crop in any unit. */
import { Decimal, zero } from "../../core/numbers/decimal";
import { conversion, measureNamed } from "../../core/numbers/measure";
import type { Crop, Settings } from "../../core/season";
import { moneyPerArea, moneyPerUnit, type YieldUnit } from "../../core/numbers/units";
import type { Column } from "../columns/column";
import { cropColumns } from "../columns/crops";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";

const { crop, yieldUnit, weightPerBushel, standardMoisture, price, lowPrice, highPrice, sellingCost, harvestMoisture, otherIncome } =
  cropColumns.columns;

export function readCrops(table: TableReader, names: Names, settings: Settings): readonly Crop[] {
  if (!table.needs(crop.heading, price.heading)) return [];
  return table.rows(
    (row): Crop | null => {
      const name = names.define(row, crop);
      const expected = row.need(price);
      if (name === null || expected === null) return null;
      const perUnit = (column: Column<Decimal>) => {
        const value = row.of(column);
        return value === null ? null : moneyPerUnit(value);
      };
      return {
        name,
        yieldUnit: row.of(yieldUnit) ?? (settings.areaUnit === "ac" ? "bu" : "t"),
        weightPerBushel: row.of(weightPerBushel),
        standardMoisture: row.of(standardMoisture),
        expectedHarvestMoisture: row.of(harvestMoisture),
        price: moneyPerUnit(expected),
        lowPrice: perUnit(lowPrice),
        highPrice: perUnit(highPrice),
        sellingCostPerUnit: perUnit(sellingCost) ?? moneyPerUnit(zero),
        otherIncomePerArea: moneyPerArea(row.of(otherIncome) ?? zero),
        source: row.source,
      };
    },
    (row) => cropTouched(row, names),
  );
}

const cropTouched = (row: Row, names: Names) => {
  const name = names.spelled(String(row.cell(crop.heading)));
  return name === null ? [{ of: "farm" } as const] : [{ of: "crop", name } as const];
};

const kilogramsPerPound = measureNamed("lb")!.factor;

/** How many of the crop's yield unit are one of `unit`; `null` where a bushel has no weight to go by. */
export function cropFactor(unit: YieldUnit, { yieldUnit, weightPerBushel }: Crop): Decimal | null {
  if (unit === yieldUnit) return new Decimal("1");
  const kilograms = (of: YieldUnit): Decimal | null =>
    of === "bu" ? (weightPerBushel?.times(kilogramsPerPound) ?? null) : conversion(measureNamed(of)!, measureNamed("kg")!, null);
  const [from, to] = [kilograms(unit), kilograms(yieldUnit)];
  return from === null || to === null ? null : from.div(to);
}
