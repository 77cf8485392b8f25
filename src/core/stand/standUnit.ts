/** The units in which stands are published. */
import { Decimal } from "../numbers/decimal";
import { plantsPerArea, type AreaUnit, type PlantsPerArea } from "../numbers/units";
import { plantsPerSquare } from "./standCount";

export const standUnits = ["plants per acre", "plants per hectare", "plants per square foot", "plants per metre of row"] as const;
export type StandUnit = (typeof standUnits)[number];

/** Hectares in an acre, exact from the international foot. */
const hectaresPerAcre = new Decimal("0.40468564224");
const squareFeetPerSquareMetre = new Decimal("1").div(new Decimal("0.3048").pow("2"));
const metresPer: Readonly<Record<AreaUnit, Decimal>> = { ac: new Decimal("0.0254"), ha: new Decimal("0.01") };

/**
 * A stand of the workbook in the unit of a table.
 *
 * @param rowWidth inches, or centimetres with hectares
 * @returns `null` where the unit asks for a row width and none is known
 */
export function standIn(unit: StandUnit, stand: PlantsPerArea, areaUnit: AreaUnit, rowWidth: Decimal | null): Decimal | null {
  switch (unit) {
    case "plants per acre":
      return areaUnit === "ac" ? stand : stand.times(hectaresPerAcre);
    case "plants per hectare":
      return areaUnit === "ha" ? stand : stand.div(hectaresPerAcre);
    case "plants per square foot":
      return areaUnit === "ac" ? plantsPerSquare(stand, "ac") : plantsPerSquare(stand, "ha").div(squareFeetPerSquareMetre);
    case "plants per metre of row": {
      if (rowWidth === null) return null;
      const perSquareMetre =
        areaUnit === "ha" ? plantsPerSquare(stand, "ha") : plantsPerSquare(stand, "ac").times(squareFeetPerSquareMetre);
      return perSquareMetre.times(rowWidth).times(metresPer[areaUnit]);
    }
  }
}

/** The stand of the workbook that a table's stand is: `standIn` the other way. */
export function standFrom(unit: StandUnit, stand: Decimal, areaUnit: AreaUnit, rowWidth: Decimal | null): PlantsPerArea | null {
  const ofOne = standIn(unit, plantsPerArea("1"), areaUnit, rowWidth);
  return ofOne === null || ofOne.isZero() ? null : plantsPerArea(stand.div(ofOne));
}
