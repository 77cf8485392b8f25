/** The table Crops, and quantities of a crop in any unit. */
import { Decimal, zero } from "../../core/decimal";
import { conversion, measureNamed } from "../../core/measure";
import type { Crop, Settings } from "../../core/season";
import { moneyPerArea, moneyPerUnit, points, type Points, type YieldUnit } from "../../core/units";
import type { Names, Row, TableReader } from "../tableReader";
import { plain } from "../words";

export const yieldUnits = ["bu", "t", "lb", "cwt", "ton", "kg"] as const satisfies readonly YieldUnit[];

export function readCrops(table: TableReader, names: Names, settings: Settings): readonly Crop[] {
  if (!table.needs("Crop", "Expected price")) return [];
  return table.rows((row): Crop | null => {
    const name = names.define(row, "Crop");
    const price = row.needNumber("Expected price");
    if (name === null || price === null) return null;
    const perUnit = (column: string) => { const value = row.number(column); return value === null ? null : moneyPerUnit(value); };
    return {
      name, yieldUnit: yieldUnitOf(row) ?? (settings.areaUnit === "ac" ? "bu" : "t"), weightPerBushel: row.number("Weight per bu", "above zero"),
      standardMoisture: pointsOf(row, "Standard moisture"), expectedHarvestMoisture: pointsOf(row, "Expected harvest moisture"),
      price: moneyPerUnit(price), lowPrice: perUnit("Low price"), highPrice: perUnit("High price"),
      sellingCostPerUnit: perUnit("Per-unit selling cost") ?? moneyPerUnit(zero),
      otherIncomePerArea: moneyPerArea(row.number("Other income per acre", "any") ?? zero), source: row.source,
    };
  }, (row) => cropTouched(row, names));
}

const cropTouched = (row: Row, names: Names) => {
  const name = names.spelled(String(row.cell("Crop")));
  return name === null ? [{ of: "farm" } as const] : [{ of: "crop", name } as const];
};

/** The yield unit that is typed, an area after it aside: "bu/ac" is bu. */
function yieldUnitOf(row: Row): YieldUnit | null {
  const typed = row.text("Yield unit");
  if (typed === null) return null;
  return cropUnitNamed(typed) ?? row.fault("not-in-list", "Yield unit", { choices: yieldUnits });
}

export function cropUnitNamed(typed: string): YieldUnit | null {
  const word = plain(typed.split(/\/| per /i)[0]!);
  if (/^(bu|bushels?|bus|bu\.)$/.test(word)) return "bu";
  const measure = measureNamed(typed.split(/\/| per /i)[0]!);
  return yieldUnits.find((unit) => unit === measure?.name) ?? null;
}

/** Points of moisture: 15.5, 15.5% and 0.155 are the same. */
export function pointsOf(row: Row, column: string): Points | null {
  const share = row.share(column);
  return share === null ? null : points(share.times("100"));
}

const kilogramsPerPound = measureNamed("lb")!.factor;

/** How many of the crop's yield unit are one of `unit`; `null` where a bushel has no weight to go by. */
export function cropFactor(unit: YieldUnit, { yieldUnit, weightPerBushel }: Crop): Decimal | null {
  if (unit === yieldUnit) return new Decimal("1");
  const kilograms = (of: YieldUnit): Decimal | null =>
    of === "bu" ? weightPerBushel?.times(kilogramsPerPound) ?? null : conversion(measureNamed(of)!, measureNamed("kg")!, null);
  const [from, to] = [kilograms(unit), kilograms(yieldUnit)];
  return from === null || to === null ? null : from.div(to);
}
