/** The points of moisture that a unit of a field's crop is charged drying on: of the loads as weighed, and of the rest as expected. */
import { larger, zero, type Decimal } from "./numbers/decimal";
import { yieldAt, type FieldFacts } from "./fieldFacts";
import type { Stage } from "./figures";
import { pointsAbove } from "./weighed";

/**
 * Points for each dry unit of the crop. The plan takes the expected harvest moisture for all of it. Afterwards each load
 * brings its own points on its own units, wet or dry as the setting says, and what is still standing the expected ones on
 * its dry units; once the harvest is done nothing is standing any more.
 */
export function pointsPerUnit(facts: FieldFacts, stage: Stage): Decimal {
  const { crop, field, weighed, harvested } = facts;
  const expected = pointsAbove(crop.expectedHarvestMoisture, crop.standardMoisture);
  if (stage === "plan" || weighed === null) return expected;
  const whole = yieldAt(facts, stage).times(field.area);
  // A lost crop has nothing to dry.
  if (whole.isZero()) return zero;
  const standing = harvested === null ? larger(whole.minus(weighed.quantity), zero) : zero;
  return weighed.unitPoints.plus(standing.times(expected)).div(whole);
}
